//! Why: a phone ends an app whenever it likes. What was shown as written must
//! be there, and what was not must not be half there.

use crate::growing::{open_tray, sow, tomatoes};
use crate::real::story;

#[test]
fn what_was_confirmed_survives_kill_9() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        window.kill_9();

        let window = world.open(&[]).await;
        open_tray(&window, &code).await;
        window.sees("12 seeds of tomato").await;
        window.press("moist").await;
        window.sees(&format!("{code} felt moist")).await;
        window.kill_9();

        let window = world.open(&[]).await;
        open_tray(&window, &code).await;
        window.sees(&format!("{code} felt moist")).await;
        let next = sow(&window, "Ruby Lantern", 6, "6 cells", "Kitchen sill").await;
        assert_ne!(next, code, "a code was given twice");
        window.kill_9();

        let window = world.open(&[]).await;
        open_tray(&window, &next).await;
        window.sees("6 seeds of tomato").await;
        window.close().await;
    });
}

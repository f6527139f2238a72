//! Why: wet fingers press the wrong thing. Every answer can be taken back at
//! once, brought back again, and withdrawn later from the tray's page.

use crate::growing::{open_tray, tomatoes, tray};
use crate::real::story;

#[test]
fn an_answer_is_undone_and_brought_back() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        world.it_is("2026-03-04T08:30:00+01:00");
        window.go("Round").await;
        let feel = [tray(&code), ("section", "feel the compost")];
        window.press_in(&feel, "wet").await;
        window.sees("Nothing is due").await;
        window.press("Undo").await;
        window.sees("Undone").await;
        // The job is there again, as if nothing had been said.
        window.await_one("button", "moist", &feel).await;
        window.press("Bring back").await;
        window.sees("Nothing is due").await;
        window.close().await;
    });
}

#[test]
fn a_line_is_withdrawn_and_stays_readable() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        open_tray(&window, &code).await;
        window.press("wet").await;
        window.sees(&format!("{code} felt wet")).await;
        window.press(&format!("Withdraw: {code} felt wet")).await;
        window.sees("Withdraw this line?").await;
        window.press("Withdraw").await;
        window.sees(&format!("Withdrawn: {code} felt wet")).await;
        window.close().await;

        let window = world.open(&[]).await;
        open_tray(&window, &code).await;
        window.sees(&format!("Withdrawn: {code} felt wet")).await;
        window.close().await;
    });
}

//! Why: habits belong to the person. What is set stays set, and changes what is
//! read everywhere.

use crate::growing::tomatoes;
use crate::real::story;

#[test]
fn settings_stay_after_a_restart() {
    story(async |world| {
        let (window, _) = tomatoes(world).await;
        window.go_to_settings().await;
        window.fill("Initials", "AB").await;
        window.go("Round").await;
        window.go_to_settings().await;
        window.choose("Dark").await;
        window.choose("°F").await;
        window.sees("68 to 75 °F").await;
        window.close().await;

        let window = world.open(&[]).await;
        window.go_to_settings().await;
        // The propagator's usual 20 to 24 °C.
        window.sees("68 to 75 °F").await;
        assert!(window.is_chosen("Dark").await);
        assert_eq!(window.value("Initials").await, "AB");
        window.close().await;
    });
}

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

/// A grower reads in the language they garden in; what they wrote stays theirs.
#[test]
fn german_is_spoken_at_once_and_after_a_restart() {
    story(async |world| {
        let (window, _) = tomatoes(world).await;
        window.go_to_settings().await;
        window.choose("°F").await;
        window.choose("12 hours").await;
        window.pick("Language", "Deutsch").await;
        window.sees("Einstellungen").await;
        window.go("Runde").await;
        window.sees("Montag, 2. März, 8:30 AM").await;
        let bench = [("section", "Warm bench")];
        window.press_in(&bench, "Ablesen").await;
        window.fill("Tiefster", "64").await;
        window.fill("Höchster", "75").await;
        window.press("Ablesung eintragen").await;
        window.sees_in(&bench, &["64 bis 75 °F, Luft"]).await;
        window.sees("Warm bench: 64 °F bis 75 °F (Luft)").await;
        window.close().await;

        let window = world.open(&[]).await;
        window.sees("Montag, 2. März, 8:30 AM").await;
        window.sees_in(&bench, &["64 bis 75 °F, Luft"]).await;
        for screen in ["Säen", "Schalen", "Saatgut"] {
            window.go(screen).await;
        }
        window.sees("Tomate ‚Ruby Lantern‘").await;
        window.close().await;
    });
}

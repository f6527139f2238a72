//! Why: the demo is how people find out what this is. It must open, show every
//! screen, and leave nothing behind.

use crate::growing::MONDAY;
use crate::real::story;
use crate::real::window::{ENTER, TAB, until};

#[test]
fn the_demo_is_looked_round_and_thrown_away() {
    story(async |world| {
        world.it_is("2026-04-18T08:30:00+02:00");
        let window = world.open(&[]).await;
        window.press("Open the demo").await;
        let home = world.journals().join("demo");
        window.await_one("heading", "Round", &[]).await;
        assert!(home.is_dir());
        for screen in ["Sow", "Trays", "Seed", "Round"] {
            window.go(screen).await;
        }
        window.close().await;

        // It is there again until it is left, and no own journal was begun.
        let window = world.open(&[]).await;
        window.await_one("heading", "Round", &[]).await;
        window.go_to_settings().await;
        window.press("Leave the demo").await;
        window.press("Throw it away").await;
        window.sees("Start my journal").await;
        assert!(!home.exists(), "the demo is still on disk");
        assert!(!world.journals().join("own").exists());
        window.close().await;
    });
}

/// Why: not everybody can point. All screens can be reached by keys alone.
#[test]
fn every_screen_is_reached_by_keyboard() {
    story(async |world| {
        world.it_is(MONDAY);
        let window = world.open(&["--demo"]).await;
        for screen in ["Sow", "Trays", "Seed", "Round", "Settings"] {
            until(&format!("{screen} has the focus"), async || {
                if window.focused().await == screen {
                    return Some(());
                }
                window.keys(TAB).await;
                None
            })
            .await;
            window.keys(ENTER).await;
            window.await_one("heading", screen, &[]).await;
        }
        window.close().await;
    });
}

//! Why: a computer shows nothing while the app does not run. It can be there
//! from the login on, without its window, and comes to the front when asked.

use crate::growing::tomatoes;
use crate::real::desk::{self, close_windows, press_sign, signs};
use crate::real::notices::Notices;
use crate::real::story;
use crate::real::window::until;
use std::fs;

const STAY: &str = "Keep running when the window is closed";
const AT_LOGIN: &str = "Start at login, without the window";

#[test]
fn started_at_login_it_tells_without_a_window_and_shows_it_when_asked() {
    story(async |world| {
        let (window, _) = tomatoes(world).await;
        window.go_to_settings().await;
        assert!(!window.is_ticked(AT_LOGIN).await);
        window.tick(AT_LOGIN).await;
        let entry = until("the desktop is told", async || {
            fs::read_to_string(world.at_login()).ok()
        })
        .await;
        assert!(entry.ends_with("/plumule\" --unseen\n"), "{entry}");
        window.close().await;

        let notices = Notices::on(world.bus());
        world.it_is("2026-03-04T07:59:00+01:00");
        let window = world.open(&["--unseen"]).await;
        assert!(!window.is_in_sight().await);
        assert_eq!(notices.shown(), [], "before the round");
        world.it_is("2026-03-04T08:00:00+01:00");
        until("a notice arrives", async || notices.shown().pop()).await;
        assert!(!window.is_in_sight().await);

        world.open_again();
        until("the window is there", async || {
            window.is_in_sight().await.then_some(())
        })
        .await;
        window.go_to_settings().await;
        assert!(window.is_ticked(AT_LOGIN).await);
        window.tick(AT_LOGIN).await;
        until("the desktop is told", async || {
            (!world.at_login().exists()).then_some(())
        })
        .await;
        window.close().await;
    });
}

#[test]
fn closed_it_keeps_running_and_its_sign_brings_the_window_back() {
    story(async |world| {
        let notices = Notices::on(world.bus());
        let (window, _) = tomatoes(world).await;
        let bus = desk::on(world.bus());
        assert!(signs(&bus).is_empty());
        window.go_to_settings().await;
        window.tick(STAY).await;
        let sign = window
            .until("a sign is up", async || signs(&bus).pop())
            .await;

        close_windows(world.display(), "Plumule");
        until("the window is gone", async || {
            (!window.is_in_sight().await).then_some(())
        })
        .await;
        world.it_is("2026-03-04T08:00:00+01:00");
        until("a notice arrives", async || notices.shown().pop()).await;

        press_sign(&bus, &sign);
        until("the window is there", async || {
            window.is_in_sight().await.then_some(())
        })
        .await;
        window.tick(STAY).await;
        until("the sign is down", async || {
            signs(&bus).is_empty().then_some(())
        })
        .await;
        // Now closing it is the end.
        close_windows(world.display(), "Plumule");
        window.ends().await;
    });
}

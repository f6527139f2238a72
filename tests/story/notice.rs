//! Why: the app promises to remind. A notice has to leave it, at the round
//! time, once, and never in quiet hours.

use crate::growing::{open_tray, tomatoes};
use crate::real::notices::Notices;
use crate::real::story;
use crate::real::window::until;

#[test]
fn a_notice_comes_at_the_round_time_and_once() {
    story(async |world| {
        let notices = Notices::on(world.bus());
        let (window, _) = tomatoes(world).await;
        assert_eq!(notices.shown(), [], "nothing is due");

        // Due since Tuesday night: not before the round on Wednesday.
        window.go("Round").await;
        world.it_is("2026-03-04T07:57:00+01:00");
        window.sees("Wednesday 4 March, 07:57").await;
        // The window is told of this jump by the timer that delivered, or did
        // not, at the one before: it has looked.
        world.it_is("2026-03-04T07:59:00+01:00");
        window.sees("Wednesday 4 March, 07:59").await;
        assert_eq!(notices.shown(), [], "before the round");

        world.it_is("2026-03-04T08:00:00+01:00");
        let shown = until("a notice arrives", async || notices.shown().pop()).await;
        assert!(shown.body.contains("Warm bench"), "{shown:?}");
        assert!(shown.body.contains("feel"), "{shown:?}");

        // Neither a minute later nor after a restart.
        world.it_is("2026-03-04T08:01:00+01:00");
        window.close().await;
        world.it_is("2026-03-04T08:02:00+01:00");
        let window = world.open(&[]).await;
        window.sees("08:02").await;
        window.go("Trays").await;
        window.go("Round").await;
        assert_eq!(notices.shown().len(), 1, "the same came twice");
        window.close().await;
    });
}

#[test]
fn none_comes_in_quiet_hours() {
    story(async |world| {
        let notices = Notices::on(world.bus());
        let (window, code) = tomatoes(world).await;
        // Dry and not watered is for the evening's round, at 18:00.
        open_tray(&window, &code).await;
        window.press("dry").await;
        window.sees(&format!("{code} felt dry")).await;
        window.close().await;

        // The device was off then, and wakes in quiet hours, 22:00 to 07:00.
        world.it_is("2026-03-02T22:30:00+01:00");
        let window = world.open(&[]).await;
        window.sees("22:30").await;
        world.it_is("2026-03-03T06:57:00+01:00");
        window.sees("Tuesday 3 March, 06:57").await;
        // As above: the timer has looked at 06:57 before it tells of 06:59.
        world.it_is("2026-03-03T06:59:00+01:00");
        window.sees("Tuesday 3 March, 06:59").await;
        assert_eq!(notices.shown(), [], "in quiet hours");

        world.it_is("2026-03-03T08:00:00+01:00");
        until("a notice arrives", async || notices.shown().pop()).await;
        window.sees("08:00").await;
        assert_eq!(notices.shown().len(), 1);
        window.close().await;
    });
}

#[test]
fn a_notice_is_answered_where_it_is_or_opens_its_tray() {
    story(async |world| {
        let notices = Notices::on(world.bus());
        let (window, code) = tomatoes(world).await;
        window.go("Round").await;
        world.it_is("2026-03-04T08:00:00+01:00");
        let first = until("a notice arrives", async || notices.shown().pop()).await;
        assert_eq!(first.title, "This morning’s round");
        assert_eq!(first.body, "Warm bench: 1 tray to feel");
        // The last is pressing the notice itself, which has no title.
        let actions = ["dry", "Dry", "moist", "Moist", "wet", "Wet", "default", ""];
        assert_eq!(first.actions, actions);

        // Pressed, it is in the journal, and said in the window with its undo.
        notices.press(&first, "moist");
        window.sees(&format!("{code} felt moist")).await;
        until("the notice is taken back", async || {
            notices.is_closed(&first).then_some(())
        })
        .await;
        window.sees("Nothing is due").await;

        // The next, pressed itself, opens its tray; there is the line.
        world.it_is("2026-03-07T08:00:00+01:00");
        let next = until("the next arrives", async || {
            notices.shown().into_iter().nth(1)
        })
        .await;
        notices.press(&next, "default");
        let heading = format!("Tray {code}");
        window.await_one("heading", &heading, &[]).await;
        window.sees(&format!("{code} felt moist")).await;
        window.close().await;
    });
}

#[test]
fn after_days_of_sleep_one_digest_comes_and_not_five() {
    story(async |world| {
        let notices = Notices::on(world.bus());
        let (window, _) = tomatoes(world).await;
        window.go("Round").await;
        world.it_is("2026-03-07T09:00:00+01:00");
        until("a notice arrives", async || notices.shown().pop()).await;
        window.sees("Saturday 7 March, 09:00").await;
        // The window is told of this by the timer after it has delivered.
        world.it_is("2026-03-07T09:02:00+01:00");
        window.sees("Saturday 7 March, 09:02").await;
        assert_eq!(notices.shown().len(), 1, "{:?}", notices.shown());
        window.close().await;
    });
}

#[test]
fn the_settings_tell_how_notices_stand() {
    story(async |world| {
        let (window, _) = tomatoes(world).await;
        window.go_to_settings().await;
        window.sees("Nothing on this system shows notices").await;
        window.go("Round").await;
        window.sees("Notices do not reach you here").await;

        let notices = Notices::on(world.bus());
        window.go_to_settings().await;
        window.sees("They are allowed").await;
        window
            .sees("The next comes on Wednesday 4 March, 08:00")
            .await;
        window.press("Send a test notice").await;
        let test = until("it arrives", async || notices.shown().pop()).await;
        assert_eq!(test.title, "Notices come through");
        window.close().await;
    });
}

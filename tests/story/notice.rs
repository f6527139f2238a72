//! Why: the app promises to remind. A notice has to leave it, at the round
//! time, once, and never in quiet hours.

use crate::growing::tomatoes;
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
        world.it_is("2026-03-04T07:59:00+01:00");
        window.go("Round").await;
        window.sees("Wednesday 4 March, 07:59").await;
        assert_eq!(notices.shown(), [], "before the round");

        world.it_is("2026-03-04T08:00:00+01:00");
        let shown = until("a notice arrives", async || notices.shown().pop()).await;
        assert!(shown.body.contains("Warm bench"), "{shown:?}");
        assert!(shown.body.contains("feel"), "{shown:?}");

        // Neither a minute later nor after a restart.
        world.it_is("2026-03-04T08:01:00+01:00");
        window.sees("08:01").await;
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
fn none_comes_in_quiet_hours_and_what_was_missed_comes_after() {
    story(async |world| {
        let notices = Notices::on(world.bus());
        let (window, _) = tomatoes(world).await;
        window.go_to_settings().await;
        window.set_time("Quiet until", "09:15").await;
        window.close().await;

        // The device was off over a round time, and wakes in quiet hours.
        world.it_is("2026-03-04T09:14:00+01:00");
        let window = world.open(&[]).await;
        window.sees("09:14").await;
        assert_eq!(notices.shown(), [], "in quiet hours");

        world.it_is("2026-03-04T09:15:00+01:00");
        until("a notice arrives", async || notices.shown().pop()).await;
        window.sees("09:15").await;
        assert_eq!(notices.shown().len(), 1);
        window.close().await;
    });
}

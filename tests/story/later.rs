//! Why: a reminder that cannot be put off is nagging. Put off, a job is gone
//! until its day; dismissed, until something changes.

use crate::growing::{tomatoes, tray};
use crate::real::story;

#[test]
fn a_job_is_put_off_and_dismissed() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        world.it_is("2026-03-04T08:30:00+01:00");
        window.go("Round").await;
        let card = [tray(&code)];
        window.press_in(&card, "Later: feel the compost").await;
        window.press("Tomorrow").await;
        window.sees("Put off until").await;
        window.sees("Nothing is due").await;

        world.it_is("2026-03-05T08:30:00+01:00");
        window.press_in(&card, "Later: feel the compost").await;
        window.press("Not this one").await;
        window.sees("Not again: feel the compost").await;
        window.sees("Nothing is due").await;

        world.it_is("2026-03-06T08:30:00+01:00");
        window.sees("Friday 6 March").await;
        assert_eq!(window.count("button", "moist", &card).await, 0);
        window.close().await;
    });
}

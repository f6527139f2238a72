//! Why: plants for a certain day are lost weeks before it, on the day nobody
//! thought of sowing. A plan is made in winter; the round asks on its day, with
//! the reckoning; what is sown from there answers it, and the plan counts it.

use crate::growing::{add_packet, add_place, begin};
use crate::real::story;

#[test]
fn a_plan_asks_on_its_day_and_counts_what_is_sown_for_it() {
    story(async |world| {
        let window = begin(world).await;
        add_place(&window, "Heated propagator", "Warm bench").await;
        add_packet(&window, "Tomato", "Ruby Lantern").await;

        window.go("Year").await;
        window.press("Make a plan").await;
        window.fill("Plant", "Tomato").await;
        window.choose("For a sale").await;
        window.fill("Plants wanted", "20").await;
        window.fill_day("Day of the sale", "2026-05-16").await;
        // Eight weeks before that: Saturday 21 March.
        window.fill("Weeks from sowing to ready", "8").await;
        window.press("Save the plan").await;
        window
            .sees("20 plants for the sale on Saturday 16 May; 23 to raise")
            .await;
        window.sees("Sow from Saturday 21 March").await;

        window.go("Round").await;
        window.has_no("button", "Sow now").await;

        world.it_is("2026-03-21T08:30:00+01:00");
        window.sees("By your own word that takes 56 days").await;
        window.press("Sow now").await;
        window.sees("This answers your plan for 23 plants").await;
        window.fill("Seeds", "40").await;
        window.choose("Warm bench").await;
        window.pick("Kind", "84 cells").await;
        window.press("Save the sowing").await;
        window
            .await_one("heading", "It is in the journal", &[])
            .await;

        window.go("Round").await;
        window.has_no("button", "Sow now").await;
        window.go("Year").await;
        window.sees("Sown once: 0 there, about").await;
        window.sees("Enough is sown").await;
        window.close().await;
    });
}

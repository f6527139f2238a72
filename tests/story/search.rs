//! Why: after some seasons a tray is found by what one remembers of it, not by
//! leafing; and how the trays are looked through belongs to the grower, so it
//! outlasts the day.

use crate::growing::{add_packet, sow, tomatoes};
use crate::real::story;
use crate::real::window::until;

#[test]
fn what_is_looked_for_is_there_again_and_a_list_stays_narrowed_after_a_restart() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        add_packet(&window, "Leek", "Long Winter").await;
        sow(&window, "Long Winter", 12, "12 cells", "Kitchen sill").await;

        window.go("Trays").await;
        window.follow("Search everything").await;
        let field = "What are you looking for?";
        window.fill(field, "ruby march").await;
        window.sees("Found: one tray and one sowing.").await;
        window.follow(&code).await;
        window
            .await_one("heading", &format!("Tray {code}"), &[])
            .await;
        window.keys("/").await;
        window.sees("Found: one tray and one sowing.").await;
        assert_eq!(window.value(field).await, "ruby march");
        window.fill(field, "ruby april").await;
        window.sees("Nothing fits “ruby april”.").await;

        window.go("Year").await;
        window.press("Make a plan").await;
        window.fill("Plant", "Leek").await;
        window.choose("For a sale").await;
        window.fill("Plants wanted", "20").await;
        window.fill_day("Day of the sale", "2026-08-15").await;
        window.press("Save the plan").await;
        window.sees("20 plants for the sale on").await;
        window.keys("/").await;
        // What was looked for is there, and typed over.
        window.fill(field, "leek sale").await;
        window.sees("Found: one plan.").await;
        window.follow_in(&[("section", "Plans")], "").await;
        until("the plan has the focus", async || {
            (window.focused().await == "Leek").then_some(())
        })
        .await;

        window.go("Trays").await;
        window.pick("Plant", "Tomato").await;
        window.sees("1 of 2 shown").await;
        // What is chosen is kept when the screen is left, at the latest.
        window.go("Round").await;
        window.sees("Warm bench").await;
        window.close().await;

        let window = world.open(&[]).await;
        window.go("Trays").await;
        window.sees("1 of 2 shown").await;
        window.press("Show all").await;
        window.sees_no_more("1 of 2 shown").await;
        window.sees("Long Winter").await;
        window.close().await;
    });
}

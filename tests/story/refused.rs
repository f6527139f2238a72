//! Why: wrong numbers poison every forecast after them. What cannot be is
//! refused with a sentence, what is odd is asked about, and neither writes
//! anything before it is settled.

use crate::growing::{open_tray, tomatoes};
use crate::real::{Window, story};

async fn entries(window: &Window) -> String {
    window.go("Round").await;
    window.go_to_settings().await;
    let text = window.await_text("in the journal.").await;
    let entries = text.split_whitespace().next().unwrap().to_owned();
    window.go("Round").await;
    entries
}

#[test]
fn what_cannot_be_is_refused_and_not_written() {
    story(async |world| {
        let (window, _) = tomatoes(world).await;
        let before = entries(&window).await;

        let bench = [("section", "Warm bench")];
        window.press_in(&bench, "Read").await;
        window.fill("Lowest", "18").await;
        window.fill("Highest", "80").await;
        window.press("Write down the reading").await;
        window.sees("Not done:").await;
        window.sees("80 °C").await;
        window.fill("Lowest", "24").await;
        window.fill("Highest", "18").await;
        window.press("Write down the reading").await;
        window.sees_no_more("80 °C").await;
        window.sees("Not done:").await;
        window.press("Close").await;
        assert_eq!(entries(&window).await, before);

        window.press_in(&bench, "Read").await;
        window.fill("Lowest", "18").await;
        window.fill("Highest", "24").await;
        window.press("Write down the reading").await;
        window.sees("Warm bench: 18").await;
        assert_ne!(entries(&window).await, before, "a good reading was kept");
        window.close().await;
    });
}

#[test]
fn what_is_odd_is_asked_about_first() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        let before = entries(&window).await;
        world.it_is("2026-03-09T08:30:00+01:00");
        for (answer, kept) in [("No, go back", false), ("Yes, write it down", true)] {
            open_tray(&window, &code).await;
            let look = [("section", "look for seedlings")];
            window.fill_in(&look, "Up now", "15").await;
            window.press_in(&look, "Count").await;
            window.sees("Is that right?").await;
            window.press(answer).await;
            if !kept {
                assert_eq!(entries(&window).await, before);
            }
        }
        window.sees(&format!("Counted in {code}: 15")).await;
        window.close().await;
    });
}

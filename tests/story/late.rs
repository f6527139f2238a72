//! Why: what does not come up costs the season. A late tray says by its odds
//! what to do and names a number; so many are sown with one tap more, and from
//! then on each of the two trays leads to the other.

use crate::growing::open_tray;
use crate::real::{Window, story};

const BESIDE: &str = "more beside it";

/// A tray whose page offers to sow more beside it: its code, and what the button
/// says.
async fn late(window: &Window) -> (String, String) {
    window.go("Trays").await;
    let line = [("section", ""), ("line", "")];
    window.await_one("link", "", &line).await;
    let mut codes = Vec::new();
    for link in window.all("link", "", &line).await {
        let name = link.text().await.unwrap();
        codes.extend(name.split_whitespace().next().map(str::to_owned));
    }
    for code in codes {
        open_tray(window, &code).await;
        if let Some(button) = window.all("button", BESIDE, &[]).await.first() {
            return (code, button.text().await.unwrap());
        }
    }
    panic!("no tray is late. On the screen:\n{}", window.text().await)
}

#[test]
fn a_late_tray_names_a_number_and_so_many_are_sown_beside_it() {
    story(async |world| {
        world.it_is("2026-04-18T08:30:00+02:00");
        let window = world.open(&[]).await;
        window.press("Open the demo").await;
        window.await_one("heading", "Round", &[]).await;
        let (old, choice) = late(&window).await;
        window.sees("odds that any").await;
        window.sees("wanted").await;
        let seeds: u32 = choice
            .split_whitespace()
            .find_map(|word| word.parse().ok())
            .unwrap();

        window.press(&choice).await;
        window.await_one("heading", "Sow", &[]).await;
        assert_eq!(window.value("Seeds").await, seeds.to_string());
        window.press("Save the sowing").await;
        window.sees("It is in the journal").await;
        let label = window.await_one("group", "The label", &[]).await;
        let label = label.text().await.unwrap();
        let new = label.split_whitespace().next().unwrap();
        assert_ne!(new, old);

        open_tray(&window, new).await;
        window.sees(&format!("{seeds} seeds")).await;
        let back = format!("Sown again or beside what was sown in {old} on");
        window.follow(&back).await;
        let heading = format!("Tray {old}");
        window.await_one("heading", &heading, &[]).await;
        let there = format!("Sown again or beside it in {new} on 18 Apr: {seeds}");
        window.await_one("link", &there, &[]).await;
        window.close().await;

        // The number stands in the journal, not only on the screen.
        let window = world.open(&[]).await;
        open_tray(&window, &old).await;
        window.follow(&there).await;
        let heading = format!("Tray {new}");
        window.await_one("heading", &heading, &[]).await;
        window.sees(&format!("{seeds} seeds")).await;
        window.close().await;
    });
}

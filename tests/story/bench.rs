//! Why: at the bench there is compost on the fingers. A known packet is down in
//! at most six taps from an opened app, and several packets share a tray
//! without its cells being minded. How many to sow is what anybody can reckon
//! again with the workings.

use crate::growing::{add_packet, add_packet_of, add_place, begin, open_tray};
use crate::real::{Window, story};
use plumule_tests::answer_all;
use serde_json::{Value, json};

/// Counts what is pressed from now on.
const COUNT: &str = "window.taps = 0; addEventListener('pointerdown', () => window.taps++, true)";

async fn taps(window: &Window) -> u64 {
    let taps = window.client.execute("return window.taps", Vec::new());
    taps.await.unwrap().as_u64().unwrap()
}

#[test]
fn a_known_packet_is_sown_in_six_taps_at_most() {
    story(async |world| {
        let window = begin(world).await;
        add_place(&window, "Heated propagator", "Warm bench").await;
        add_place(&window, "Shed", "Cold shed").await;
        add_packet(&window, "Tomato", "Ruby Lantern").await;
        window.close().await;

        let window = world.open(&[]).await;
        window.client.execute(COUNT, Vec::new()).await.unwrap();
        window.go("Sow").await;
        window.press("Ruby Lantern").await;
        window.sees("6 plants or more, 9 times in 10").await;
        window.press("Save the sowing").await;
        window.sees("It is in the journal").await;
        let needed = taps(&window).await;
        assert!((3..=6).contains(&needed), "{needed} taps");

        let label = [("group", "The label")];
        window
            .sees_in(&label, &["Tomato ‘Ruby Lantern’", "2 Mar"])
            .await;
        let label = window.await_one("group", "The label", &[]).await;
        let label = label.text().await.unwrap();
        let code = label.split_whitespace().next().unwrap();
        open_tray(&window, code).await;
        window.sees("Warm bench").await;
        window.sees("Sown in").await;

        // The same again is one tap from the bench.
        window.go("Sow").await;
        let before = taps(&window).await;
        window.press("Same again").await;
        window.sees("It is in the journal").await;
        assert_eq!(taps(&window).await, before + 1);
        window.press("Undo").await;
        window.sees("It was taken back").await;
        window.close().await;
    });
}

#[test]
fn three_packets_share_a_tray() {
    story(async |world| {
        let window = begin(world).await;
        add_place(&window, "Windowsill", "Kitchen sill").await;
        for (plant, variety) in [
            ("Tomato", "Ruby Lantern"),
            ("Cabbage", "Round Early"),
            ("Pepper", "Little Bell"),
        ] {
            add_packet(&window, plant, variety).await;
        }
        window.go("Sow").await;
        // With a slip, and no capital.
        window.fill("Find a packet", "lantren").await;
        window.press("Ruby Lantern").await;
        window.fill("Plants wanted", "2").await;
        window.pick("Kind", "24 cells").await;
        window.press("Save the sowing").await;
        let label = window.await_one("group", "The label", &[]).await;
        let label = label.text().await.unwrap();
        let code = label.split_whitespace().next().unwrap().to_owned();

        let beside = format!("Next packet into {code} too");
        for variety in ["Round Early", "Little Bell"] {
            window.press(&beside).await;
            window.press(variety).await;
            window
                .sees(&format!("{code} stands in: Kitchen sill"))
                .await;
            window.sees("2 plants or more, 9 times in 10").await;
            if variety == "Little Bell" {
                window.sees("the cabbage in this tray wants").await;
            }
            window.press("Save the sowing").await;
            let label = [("group", "The label")];
            window.sees_in(&label, &[variety, &code]).await;
        }

        open_tray(&window, &code).await;
        // Each in cells of its own.
        for variety in ["Ruby Lantern", "Round Early", "Little Bell"] {
            window.sees_in(&[("line", variety)], &["cells"]).await;
        }
        window.sees_no_more("hold two things").await;
        window.close().await;
    });
}

/// The answer of the workings.
fn workings(question: &Value) -> Value {
    let mut output = Vec::new();
    answer_all(&mut question.to_string().as_bytes(), &mut output).unwrap();
    serde_json::from_slice(&output).unwrap()
}

#[test]
fn how_many_to_sow_is_what_the_workings_say() {
    story(async |world| {
        let window = begin(world).await;
        add_place(&window, "Windowsill", "Kitchen sill").await;
        add_packet_of(&window, "Tomato", "Old Lantern", 2019).await;
        let packet = workings(&json!({
            "ask": "packet_outlook", "crop": "tomato", "packed": "2019-01-01", "on": "2026-03-02",
            "stated": null, "storage": "cool_cupboard",
        }));
        let enough = |ask: &str, wanted: u32, confidence: f64, each: u32| {
            let answer = workings(&json!({
                "ask": ask, "wanted": wanted, "confidence": confidence, "beta": packet["beta"],
                "seeds_per_cell": each,
            }));
            let number = answer["cells"].as_u64().or(answer["seeds"].as_u64());
            number.unwrap_or_else(|| panic!("{ask}: {answer}"))
        };

        window.go("Sow").await;
        window.press("Old Lantern").await;
        let cells = enough("cells_to_sow", 6, 0.9, 1);
        assert!(cells > 6, "the seed is old: {cells}");
        let says = format!("{cells} cells with one seed in each give 6 plants or more");
        window.sees(&format!("{says}, 9 times in 10.")).await;
        window.fill("Plants wanted", "9").await;
        window.choose("19 in 20").await;
        window.fill("Seeds in each cell", "2").await;
        let cells = enough("cells_to_sow", 9, 0.95, 2);
        let says = format!("{cells} cells with 2 seeds in each give 9 plants or more");
        window.sees(&format!("{says}, 19 times in 20.")).await;
        // So many are sown if nothing else is said.
        let sown = format!("{} seeds, {cells} cells of", 2 * cells);
        window.sees(&sown).await;
        window.pick("Kind", "Open tray").await;
        let seeds = enough("seeds_to_sow", 9, 0.95, 1);
        let says = format!("{seeds} seeds give 9 plants or more, 19 times in 20.");
        window.sees(&says).await;
        window.close().await;
    });
}

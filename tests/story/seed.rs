//! Why: a box of old packets is kept in somebody's table, and what they are
//! still worth is not known by their age alone. The table comes in with its bad
//! lines named and nothing twice; a germination test then moves what is said.

use crate::growing::begin;
use crate::real::{Window, story};
use std::fs;
use std::path::Path;

const TABLE: &str = "Plant;Variety;Year packed;Seeds;Shelf\r\n\
    Leek;\"Stout; Blue\";2017;120;3\r\n\
    Leek;Odd;last spring;10;3\r\n\
    ;Nameless;2024;10;3\r\n\
    Scorzonera;'=1+1;2025;;4\r\n";

async fn choose(window: &Window, file: &Path) {
    let field = window.await_one("field", "Choose a table", &[]).await;
    field.send_keys(file.to_str().unwrap()).await.unwrap();
}

/// How many in 10 are likely to come up, as the page says it.
async fn likely(window: &Window) -> (u32, u32) {
    window.sees("in 10 come up").await;
    let text = window.text().await;
    let before = text.split(" in 10 come up").next().unwrap();
    let mut numbers = before.rsplit(|it: char| !it.is_ascii_digit());
    let mut next = || numbers.find_map(|it| it.parse().ok()).unwrap();
    let high = next();
    let spans = before.trim_end_matches(char::is_numeric).ends_with(" to ");
    (if spans { next() } else { high }, high)
}

#[test]
fn a_table_comes_in_and_a_test_tells_what_a_packet_is_worth() {
    story(async |world| {
        let window = begin(world).await;
        let file = world.saved().join("packets.csv");
        fs::write(&file, TABLE).unwrap();

        window.go("Seed").await;
        window.follow("From a table").await;
        choose(&window, &file).await;
        window
            .sees("2 packets to add; 2 lines cannot be read.")
            .await;
        window.sees("Line 3: “last spring” is no year").await;
        window.sees("Line 4: No plant is named").await;
        window.press("Add 2 packets").await;
        window.sees("2 packets noted").await;
        choose(&window, &file).await;
        window.sees("2 packets are here already").await;
        window.sees("No packet to add").await;

        window.follow("Packets").await;
        window.sees("‘=1+1’").await;
        window.follow("Leek ‘Stout; Blue’").await;
        let (_, before) = likely(&window).await;
        window.press("Start a germination test").await;
        window.press("Start it").await;
        window.sees("started: 20 seeds").await;
        window.sees("100 seeds left").await;

        // The first count of leek is on day 6, the last on day 14 (rules of
        // testing, from memory; the crop book).
        world.it_is("2026-03-08T08:30:00+01:00");
        window.go("Round").await;
        let count = [
            ("section", "Seed"),
            ("section", "count the germination test"),
        ];
        window.fill_in(&count, "Sprouted, of 20", "12").await;
        window.press_in(&count, "Count").await;
        window.sees("12 of 20 sprouted so far").await;
        window.sees("Nothing is due|No trays yet").await;

        world.it_is("2026-03-16T08:30:00+01:00");
        window.sees("count once more, then close the test").await;
        window.follow("To the packet").await;
        window.fill("Sprouted in all, of 20", "19").await;
        window.press("Close the test").await;
        // Clopper and Pearson for 19 of 20 (SciPy): 0.7513 to 0.9987.
        let says = "19 of 20 sprouted: of the whole packet between 75 % and 100 %";
        window.sees(says).await;
        let (after, _) = likely(&window).await;
        assert!(after > before, "{before} in 10 before, {after} after");
        window.close().await;

        let window = world.open(&[]).await;
        window.go("Seed").await;
        window.follow("Leek ‘Stout; Blue’").await;
        window.sees(says).await;
        assert_eq!(likely(&window).await.0, after);
        window.close().await;
    });
}

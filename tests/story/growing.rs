//! What growers do on the screens, as the stories need it.

use crate::real::{Window, World};

/// The morning on which most stories begin: a Monday in winter time.
pub const MONDAY: &str = "2026-03-02T08:30:00+01:00";

/// A tray's card in the round, or its line elsewhere, by the code on its label.
pub fn tray(code: &str) -> (&str, &str) {
    ("article", code)
}

/// First start with an empty journal.
pub async fn begin(world: &World) -> Window {
    world.it_is(MONDAY);
    let window = world.open(&[]).await;
    window.press("Start my journal").await;
    window.sees("No trays yet").await;
    window
}

/// Adds a place with the warmth usual for its kind, not covered.
pub async fn add_place(window: &Window, kind: &str, name: &str) {
    window.go_to_settings().await;
    window.press("Add a place").await;
    window.pick("Kind of place", kind).await;
    window.fill("Name", name).await;
    if window.is_ticked("Closed or covered").await {
        window.tick("Closed or covered").await;
    }
    window.press("Save the place").await;
    window.sees(&format!("Place noted: {name}")).await;
}

/// Adds a packet of this year's seed.
pub async fn add_packet(window: &Window, plant: &str, variety: &str) {
    add_packet_of(window, plant, variety, 2026).await;
}

/// Adds a packet packed in a year.
pub async fn add_packet_of(window: &Window, plant: &str, variety: &str, year: i32) {
    window.go("Seed").await;
    window.press("Add packets").await;
    window.fill("Plant", plant).await;
    window.fill("Variety", variety).await;
    window.fill("Year", &year.to_string()).await;
    window.press("Add this packet").await;
    window.sees(&format!("{plant} ‘{variety}’ is in.")).await;
    window.press("Close").await;
}

/// Sows so many seeds into all cells of a new tray, and gives the code on its
/// label.
pub async fn sow(window: &Window, variety: &str, seeds: u32, kind: &str, place: &str) -> String {
    window.go("Sow").await;
    window.press(variety).await;
    window.fill("Seeds", &seeds.to_string()).await;
    window.choose(place).await;
    window.pick("Kind", kind).await;
    window.press("Save the sowing").await;
    window
        .await_one("heading", "It is in the journal", &[])
        .await;
    let label = window.await_one("group", "The label", &[]).await;
    let text = label.text().await.unwrap();
    text.split_whitespace().next().unwrap().to_owned()
}

/// A journal with a heated propagator, a kitchen sill, and twelve tomatoes sown
/// in the propagator on Monday. Gives the tray's code too.
pub async fn tomatoes(world: &World) -> (Window, String) {
    let window = begin(world).await;
    add_place(&window, "Heated propagator", "Warm bench").await;
    add_place(&window, "Windowsill", "Kitchen sill").await;
    add_packet(&window, "Tomato", "Ruby Lantern").await;
    let code = sow(&window, "Ruby Lantern", 12, "12 cells", "Warm bench").await;
    (window, code)
}

/// Opens a tray's page from the list of trays.
pub async fn open_tray(window: &Window, code: &str) {
    window.go("Trays").await;
    window.follow(code).await;
    window
        .await_one("heading", &format!("Tray {code}"), &[])
        .await;
}

//! Why: this is what the app is for. A packet becomes seedlings and seedlings
//! become potted plants, and at each step the grower is told what is due and
//! finds every number again, also after a restart.

use crate::growing::{open_tray, tomatoes, tray};
use crate::real::window::Spot;
use crate::real::{Window, World, story};

#[test]
fn from_packet_to_pot() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        let card = tray(&code);

        window.go("Round").await;
        window.sees("Nothing is due").await;

        // Two days later: every 2 days before emergence (common practice).
        world.it_is("2026-03-04T08:30:00+01:00");
        let feel = [card, ("section", "feel the compost")];
        window.press_in(&feel, "moist").await;
        window.sees(&format!("{code} felt moist")).await;
        window.sees("Nothing is due").await;

        // Tomatoes take 8 days at 20 °C and 6 at 25 °C (Harrington and Minges),
        // half of them; the first of a dozen may be up in half that time.
        let look = [card, ("section", "look for seedlings")];
        let day = until_due(world, &window, &look, &feel).await;
        assert!((3..=8).contains(&day), "looked for on day {day}");
        count(&window, &look, 3).await;
        window.sees(&format!("Counted in {code}: 3")).await;

        // Out of the heat on emergence (common practice).
        let light = [card, ("section", "into the light")];
        window.press_in(&light, "Kitchen sill").await;
        window.sees(&format!("{code} moved to Kitchen sill")).await;

        world.it_is(&format!("2026-03-{:02}T08:30:00+01:00", 3 + day));
        let sill = [("section", "Kitchen sill"), card, look[1]];
        count(&window, &sill, 9).await;
        window.sees(&format!("Counted in {code}: 9")).await;

        world.it_is("2026-03-24T08:30:00+01:00");
        open_tray(&window, &code).await;
        window.press("Prick out").await;
        // No device gives codes with a B: it looks like an 8.
        let (first, second) = (("group", "Part 1"), ("group", "Part 2"));
        window.fill_in(&[first], "Plants into this one", "5").await;
        window.pick_in(&[first], "Kind", "6 cells").await;
        window.pick_in(&[first], "Place", "Kitchen sill").await;
        window.fill_in(&[first], "Code on the label", "B1").await;
        window.press("Into one more tray").await;
        window.fill_in(&[second], "Plants into this one", "4").await;
        window.pick_in(&[second], "Kind", "6 cells").await;
        window.pick_in(&[second], "Place", "Kitchen sill").await;
        window.fill_in(&[second], "Code on the label", "B2").await;
        window.sees("9 go on, 0 stay").await;
        window.tick("The rest is done with").await;
        window.press("Write down").await;
        window.sees("B1 and B2").await;

        // Told to pot on: half-way to planting out, 6 to 8 weeks after sowing.
        world.it_is("2026-04-14T08:30:00+02:00");
        window.go("Round").await;
        let pot_on = [tray("B1"), ("section", "pot on")];
        window.press_in(&pot_on, "Pot on").await;
        window.fill("Plants into this one", "4").await;
        window.pick("Place", "Kitchen sill").await;
        window.fill("Code on the label", "G1").await;
        window.press("Write down").await;
        window.sees("Potted on from B1: 4").await;

        all_is_there(&window, &code).await;
        window.close().await;
        let window = world.open(&[]).await;
        all_is_there(&window, &code).await;
        window.close().await;
    });
}

/// Goes round every morning after the feeling on day 2, feels what is to be
/// felt, and tells on which day after sowing the other thing falls due.
async fn until_due(world: &World, window: &Window, due: &[Spot<'_>], feel: &[Spot<'_>]) -> u32 {
    for day in 3..=12 {
        world.it_is(&format!("2026-03-{:02}T08:30:00+01:00", 2 + day));
        window.sees(&format!(" {} March, 08:30", 2 + day)).await;
        if window.count("button", "moist", feel).await > 0 {
            window.press_in(feel, "moist").await;
            window.sees("felt moist").await;
        }
        if window.count("button", "Count", due).await > 0 {
            return day;
        }
    }
    panic!("never due. On the screen:\n{}", window.text().await)
}

async fn count(window: &Window, within: &[(&str, &str)], up: u32) {
    window.fill_in(within, "Up now", &up.to_string()).await;
    window.press_in(within, "Count").await;
}

/// 12 sown, 9 up; 5 and 4 pricked out; of the 5, 4 potted on and 1 left.
async fn all_is_there(window: &Window, code: &str) {
    window.go("Trays").await;
    window
        .sees_in(&[("line", "B1")], &["Ruby Lantern", "1 there"])
        .await;
    window
        .sees_in(&[("line", "B2")], &["Ruby Lantern", "4 there"])
        .await;
    window
        .sees_in(&[("line", "G1")], &["Ruby Lantern", "4 there"])
        .await;
    window.follow(code).await;
    let table = ("table", "how many are where");
    for (name, number) in [("Came up", "9"), ("Went on", "9"), ("Still there", "0")] {
        window.sees_in(&[table, ("line", name)], &[number]).await;
    }
    for line in [
        "Sown in",
        "12 seeds",
        "felt moist",
        "Counted in",
        "moved to Kitchen sill",
        "Pricked out from",
    ] {
        window.sees(line).await;
    }
    open_tray(window, "B1").await;
    for (name, number) in [("Came up", "5"), ("Went on", "4"), ("Still there", "1")] {
        window.sees_in(&[table, ("line", name)], &[number]).await;
    }
    window.follow("potted on into G1").await;
    window.sees_in(&[("line", "Came up")], &["4"]).await;
}

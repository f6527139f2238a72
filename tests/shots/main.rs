//! Pictures of every screen of the real app, to look at: the demo journal at a
//! fixed hour, in light, dark and at 200 % text. Writes PNGs to the folder
//! named by `PLUMULE_SHOTS`; without it there is nothing to do.

#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::print_stdout,
    clippy::unwrap_used,
    reason = "a tool for the house, with the means of a test: it stops where it cannot go on"
)]

#[path = "../story/real/mod.rs"]
#[expect(dead_code, reason = "the stories use more of it")]
mod real;

use real::{Window, World, telling};
use serde_json::json;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::Duration;

/// A Saturday in spring, at the end of the morning's round.
const NOW: &str = "2026-04-18T08:30:00+02:00";

/// What a phone shows, in CSS pixels.
const SIZE: (u32, u32) = (412, 915);

/// Until what was scrolled to is drawn: these are pictures to look at, nothing
/// is asserted of them but their size.
const DRAWN: Duration = Duration::from_millis(400);

/// At most so many pictures of one screen, from the top down.
const LONGEST: u32 = 12;

/// Trays of the demo on which judgement is to be seen: the picture, the place,
/// the plant, and what is said there.
const JUDGED: [(&str, &str, &str, &str); 4] = [
    ("tray-on-time", "Propagator", "Slipway", "nearly all"),
    ("tray-late-and-cold", "Shed", "Fogbell", "no pepper"),
    (
        "tray-dead",
        "Propagator",
        "Night Ferry",
        "nothing more is likely",
    ),
    (
        "tray-poor",
        "Greenhouse",
        "Broadsheet",
        "possibly damped off",
    ),
];

fn main() {
    let Some(folder) = std::env::var_os("PLUMULE_SHOTS").map(PathBuf::from) else {
        println!("PLUMULE_SHOTS names no folder: no pictures taken");
        return;
    };
    for look in ["light", "dark", "large"] {
        let folder = folder.join(look);
        fs::create_dir_all(&folder).unwrap();
        telling(async |world| take(world, look, &folder).await);
    }
}

async fn take(world: &World, look: &str, folder: &Path) {
    world.it_is(NOW);
    let window = world.open(&[]).await;
    let camera = Camera {
        world,
        window: &window,
        folder,
        large: look == "large",
    };
    if look == "dark" {
        // Nothing is set yet: what the device says would decide.
        let script = "document.documentElement.dataset.theme = 'dark'";
        window.client.execute(script, Vec::new()).await.unwrap();
    }
    camera.shoot("start").await;
    window.press("Open the demo").await;
    window.await_one("heading", "Round", &[]).await;
    window.go_to_settings().await;
    window
        .choose(if look == "dark" { "Dark" } else { "Light" })
        .await;

    window.go("Round").await;
    window.await_one("article", "", &[]).await;
    camera.shoot("round").await;
    window.press("Later:").await;
    camera.shoot("later-sheet").await;
    window.press("Close").await;

    window.go("Sow").await;
    window.await_one("button", "", &[("line", "")]).await;
    camera.shoot("sow-packet").await;
    let packet = window.await_one("button", "", &[("line", "")]).await;
    packet.click().await.unwrap();
    window.await_one("button", "Save the sowing", &[]).await;
    camera.shoot("sow").await;

    window.go("Trays").await;
    let line = [("section", ""), ("line", "")];
    window.await_one("link", "", &line).await;
    camera.shoot("trays").await;
    for (name, place, plant, says) in JUDGED {
        window.go("Trays").await;
        let line = [("section", place), ("line", plant)];
        window.follow_in(&line, "").await;
        window.await_one("heading", "Journal", &[]).await;
        if name == "tray-dead" {
            // Nobody has looked for some days.
            let late = [("section", "It is late")];
            window.fill_in(&late, "Up now", "0").await;
            window.press_in(&late, "Count").await;
        }
        window.sees(says).await;
        camera.shoot(name).await;
    }
    window.go("Trays").await;
    window.await_one("link", "", &line).await;
    for number in 0..window.count("link", "", &line).await {
        window.go("Trays").await;
        window.await_one("link", "", &line).await;
        let trays = window.all("link", "", &line).await;
        let tray = trays.get(number).unwrap();
        window.bring_clear(tray).await.unwrap();
        tray.click().await.unwrap();
        window.await_one("heading", "Journal", &[]).await;
        camera.shoot(&format!("tray-{:02}", number + 1)).await;
    }

    window.go("Seed").await;
    window.await_one("link", "Sow it:", &[]).await;
    camera.shoot("seed").await;
    window.press("Add packets").await;
    camera.shoot("packet-sheet").await;
    window.press("Close").await;

    window.go_to_settings().await;
    window.await_one("button", "Add a place", &[]).await;
    camera.shoot("settings").await;
    window.close().await;
}

struct Camera<'a> {
    world: &'a World,
    window: &'a Window,
    folder: &'a Path,
    large: bool,
}

impl Camera<'_> {
    /// The screen from the top down, a picture a windowful.
    async fn shoot(&self, name: &str) {
        let client = &self.window.client;
        let size = if self.large { "200%" } else { "" };
        let script = "document.documentElement.style.fontSize = arguments[0]";
        client.execute(script, vec![json!(size)]).await.unwrap();
        for part in 0..LONGEST {
            let more = client.execute(SCROLL, vec![json!(part)]).await.unwrap();
            if more != json!(true) {
                break;
            }
            tokio::time::sleep(DRAWN).await;
            let png = self.world.picture(SIZE);
            assert_eq!(size_of(&png), SIZE, "{name} is not as large as a phone");
            let file = self.folder.join(format!("{name}-{}.png", part + 1));
            fs::write(file, png).unwrap();
        }
    }
}

/// Scrolls what can be scrolled to a part of it; false when it has no such
/// part.
const SCROLL: &str = "
    const part = arguments[0];
    const box = document.querySelector('dialog[open]') ?? document.querySelector('main');
    const step = box.clientHeight - 48;
    if (part > 0 && (part - 1) * step + box.clientHeight >= box.scrollHeight - 1) return false;
    box.scrollTo(0, part * step);
    return true;
";

/// Width and height from a PNG's header (PNG specification, 11.2.2).
fn size_of(png: &[u8]) -> (u32, u32) {
    let number = |at: usize| {
        let bytes = png.get(at..at + 4).and_then(|bytes| bytes.try_into().ok());
        bytes.map_or(0, u32::from_be_bytes)
    };
    (number(16), number(20))
}

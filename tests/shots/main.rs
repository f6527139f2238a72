//! Pictures of every screen of the real app, to look at: the demo journal at a
//! fixed hour and a journal with nothing in it, in every theme, at 200 % text
//! and in every language. Writes PNGs to the folder named by `PLUMULE_SHOTS`,
//! only in the look named by `PLUMULE_LOOK` if one is; without a folder there
//! is nothing to do.

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

use plumule_app::words::Language;
use real::walk::{NOW, Walk};
use real::{Window, World, telling};
use serde_json::json;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::Duration;

/// What a phone shows, in CSS pixels.
const SIZE: (u32, u32) = (412, 915);

/// Until what was scrolled to is drawn: these are pictures to look at, nothing
/// is asserted of them but their size.
const DRAWN: Duration = Duration::from_millis(250);

/// At most so many pictures of one screen, from the top down.
const LONGEST: u32 = 6;

/// A way in which the screens are looked at.
struct Look {
    name: &'static str,
    language: Language,
    theme: &'static str,
    text: &'static str,
}

const fn look(
    name: &'static str,
    language: Language,
    theme: &'static str,
    text: &'static str,
) -> Look {
    Look {
        name,
        language,
        theme,
        text,
    }
}

const LOOKS: [Look; 7] = [
    look("light", Language::EnGb, "light", "100%"),
    look("dark", Language::EnGb, "dark", "100%"),
    look("bright", Language::EnGb, "bright", "100%"),
    look("large", Language::EnGb, "light", "200%"),
    look("en-US", Language::EnUs, "light", "100%"),
    look("de", Language::De, "light", "100%"),
    look("de-large", Language::De, "light", "200%"),
];

fn main() {
    let Some(folder) = std::env::var_os("PLUMULE_SHOTS").map(PathBuf::from) else {
        println!("PLUMULE_SHOTS names no folder: no pictures taken");
        return;
    };
    let only = std::env::var("PLUMULE_LOOK").ok();
    let wanted = |look: &&Look| only.as_ref().is_none_or(|only| look.name == only);
    let looks: Vec<&Look> = LOOKS.iter().filter(wanted).collect();
    let names = LOOKS.map(|look| look.name).join(", ");
    assert!(!looks.is_empty(), "there are these looks: {names}");
    for language in Language::ALL {
        let mut looks = looks.clone();
        looks.retain(|look| look.language == *language);
        if looks.is_empty() {
            continue;
        }
        for empty in [false, true] {
            telling(language.tag(), async |world| {
                world.it_is(NOW);
                let window = world.open(&[]).await;
                let mut walk = Walk {
                    window: &window,
                    language: *language,
                    look: async |screen| {
                        for look in &looks {
                            shoot(world, &window, look, &folder, screen).await;
                        }
                    },
                };
                if empty {
                    walk.through_an_empty_journal().await;
                } else {
                    walk.through_the_demo().await;
                }
                window.close().await;
            });
        }
    }
}

/// The screen from the top down, a picture a windowful.
async fn shoot(world: &World, window: &Window, look: &Look, folder: &Path, screen: &str) {
    let folder = folder.join(look.name);
    fs::create_dir_all(&folder).unwrap();
    let name = screen.replace(", ", "-").replace(' ', "-");
    let worn = vec![json!(look.theme), json!(look.text)];
    window.client.execute(WEAR, worn).await.unwrap();
    for part in 0..LONGEST {
        let part_of_it = vec![json!(part)];
        let more = window.client.execute(SCROLL, part_of_it).await.unwrap();
        if more != json!(true) {
            break;
        }
        tokio::time::sleep(DRAWN).await;
        let png = world.picture(SIZE);
        assert_eq!(size_of(&png), SIZE, "{name} is not as large as a phone");
        fs::write(folder.join(format!("{name}-{}.png", part + 1)), png).unwrap();
    }
    // As it was, for whoever goes on.
    let usual = vec![json!("light"), json!("100%")];
    window.client.execute(WEAR, usual).await.unwrap();
}

const WEAR: &str = "
    document.documentElement.dataset.theme = arguments[0];
    document.documentElement.style.fontSize = arguments[1];
";

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

//! Why: years of records, on a phone that gets lost. All of it comes back from
//! one file, and what a second device wrote comes in beside it.

use crate::growing::{add_place, begin, open_tray, tomatoes};
use crate::real::window::until;
use crate::real::{Window, World, story};
use std::fs;

/// Opens the screen of backups and other devices.
pub async fn keep(window: &Window) {
    window.go("Round").await;
    window.go_to_settings().await;
    window.follow("Open").await;
    window
        .await_one("heading", "Backup and other devices", &[])
        .await;
}

/// The file that was saved, as the one that will be chosen next.
fn hand_over(world: &World) {
    let saved: Vec<_> = fs::read_dir(world.saved())
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect();
    assert_eq!(saved.len(), 1, "{saved:?}");
    fs::rename(&saved[0], world.chosen()).unwrap();
}

#[test]
fn all_is_there_again_from_a_file_and_another_journal_comes_in() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        open_tray(&window, &code).await;
        window.press("wet").await;
        window.sees(&format!("{code} felt wet")).await;
        keep(&window).await;
        window.press("Save to a file").await;
        window.sees("Saved and read back").await;
        hand_over(world);
        window.close().await;

        // Everything is lost.
        fs::remove_dir_all(world.journals()).unwrap();
        let window = begin(world).await;
        add_place(&window, "Shed", "Back shed").await;
        keep(&window).await;
        window
            .press_in(&[("section", "Take in another")], "Choose a file")
            .await;
        window.sees("one sowing").await;
        window.press("Take it in").await;
        window.sees("Taken in.").await;
        open_tray(&window, &code).await;
        window.sees(&format!("{code} felt wet")).await;
        window.go("Round").await;
        window.go_to_settings().await;
        window.sees("Back shed").await;
        window.sees("Warm bench").await;
        window.close().await;

        // And on a new device, from the first screen.
        fs::remove_dir_all(world.journals()).unwrap();
        let window = world.open(&[]).await;
        window.press("I have a file").await;
        window.press("Choose a file").await;
        window.sees("No photos").await;
        window.press("Restore this").await;
        window.await_one("heading", "Round", &[]).await;
        open_tray(&window, &code).await;
        window.sees(&format!("{code} felt wet")).await;
        window.sees("12 seeds of tomato").await;
        window.close().await;
    });
}

/// Why: a file system that failed must not cost the grower the journal.
#[test]
fn a_damaged_journal_is_set_aside_and_comes_back() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        keep(&window).await;
        window.press("Back up now").await;
        window.sees("Backed up and read back").await;
        window.close().await;
        let journal = world.journals().join("own/journal");
        // The log beside the file may hold the whole of a young journal: both
        // have to be lost before anything is.
        for name in ["journal.db", "journal.db-wal"] {
            fs::write(journal.join(name), b"spilt over").unwrap();
        }

        let window = world.open(&[]).await;
        window.sees("The journal is damaged").await;
        window.press("Bring the journal back").await;
        window.sees("The journal is back").await;
        window.press("Open it").await;
        open_tray(&window, &code).await;
        window.sees("12 seeds of tomato").await;
        window.close().await;
        let aside = fs::read_dir(journal.join("set-aside")).unwrap().next();
        let aside = aside.unwrap().unwrap().path().join("journal.db");
        assert_eq!(fs::read(aside).unwrap(), b"spilt over");
    });
}

/// Why: the system ends an app whenever it likes, also over half a sentence.
#[test]
fn half_a_note_survives_kill_9() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        open_tray(&window, &code).await;
        window.press("Note").await;
        window.fill("Note", "The lid drips on").await;
        let home = world.journals().join("own");
        until("the draft is on disk", async || {
            let kept = ["device.db", "device.db-wal"].map(|name| fs::read(home.join(name)));
            let words = b"The lid drips on";
            let has = |bytes: &Vec<u8>| bytes.windows(words.len()).any(|it| it == words);
            kept.iter().flatten().any(has).then_some(())
        })
        .await;
        window.kill_9();

        let window = world.open(&[]).await;
        open_tray(&window, &code).await;
        window.press("Note").await;
        window.sees("Kept from before").await;
        window.press("Write down").await;
        window.sees("The lid drips on").await;
        window.close().await;
    });
}

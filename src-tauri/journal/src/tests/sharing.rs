//! Several devices through a folder.

use crate::content::*;
use crate::shared::{self, ReadReport, WriteReport};
use crate::testing::*;
use crate::words::Feel;
use crate::{Progress, archive};
use std::fs;
use std::path::{Path, PathBuf};
use tempfile::TempDir;

fn on(_: Progress) -> bool {
    true
}

/// Reads the others' and writes its own.
fn sync(world: &mut World, folder: &Path) -> (ReadReport, WriteReport) {
    let stamp = world.stamp(9);
    let read = shared::read_others(&mut world.journal, &stamp, folder, &mut on).unwrap();
    let wrote = shared::write_own(&world.journal, folder, &mut on).unwrap();
    (read, wrote)
}

fn segments(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for device in fs::read_dir(folder).unwrap() {
        let device = device.unwrap().path();
        found.extend(
            fs::read_dir(device)
                .unwrap()
                .map(|file| file.unwrap().path()),
        );
    }
    found.retain(|path| path.extension().is_some_and(|it| it == "jsonl"));
    found.sort();
    found
}

fn two() -> (TempDir, World, World) {
    let folder = tempfile::tempdir().unwrap();
    (folder, World::new(), World::empty(0xD0))
}

fn lines(world: &World) -> Vec<String> {
    let mut lines = world.journal.lines().unwrap();
    lines.sort();
    lines
}

#[test]
fn what_one_writes_the_other_reads_and_nothing_twice() {
    let (folder, mut here, mut there) = two();
    let photo = super::archives::photo(&here, b"a seedling");
    here.at(2, vec![photo]);
    let entries = here.journal.count().unwrap();
    let (_, wrote) = sync(&mut here, folder.path());
    assert_eq!((wrote.entries, wrote.photos), (entries, 1));
    let (read, wrote) = sync(&mut there, folder.path());
    assert_eq!(
        (read.union.new, read.devices, read.waiting),
        (entries, 1, 0)
    );
    assert_eq!((read.photos_new, wrote.entries, wrote.photos), (1, 0, 0));
    assert_eq!(there.states(), here.states());
    assert!(there.journal.check(&mut on).all_well());
    // There and back.
    there.at(5, vec![felt(10, Feel::Dry)]);
    assert_eq!(sync(&mut there, folder.path()).1.entries, 1);
    assert_eq!(sync(&mut here, folder.path()).0.union.new, 1);
    assert_eq!(there.states(), here.states());
    for world in [&mut here, &mut there] {
        let (read, wrote) = sync(world, folder.path());
        assert_eq!((read.union, wrote), Default::default());
    }
}

#[test]
fn a_line_is_json_with_the_hash_of_what_it_holds() {
    let (folder, mut here, _) = two();
    sync(&mut here, folder.path());
    let text = fs::read_to_string(&segments(folder.path())[0]).unwrap();
    for (line, want) in text.lines().zip(here.journal.lines().unwrap()) {
        let json: serde_json::Value = serde_json::from_str(line).unwrap();
        let held: serde_json::Value = serde_json::from_str(&want).unwrap();
        assert_eq!(json["line"], held);
        assert!(line.contains(&want));
    }
    assert_eq!(text.lines().count() as u64, here.journal.count().unwrap());
}

#[test]
fn half_a_file_is_read_as_far_as_it_goes_and_the_rest_when_it_is_there() {
    let (folder, mut here, mut there) = two();
    sync(&mut here, folder.path());
    let path = segments(folder.path()).remove(0);
    let whole = fs::read(&path).unwrap();
    let mut had = 0;
    for cut in [
        0,
        1,
        whole.len() / 3,
        whole.len() / 2,
        whole.len() - 1,
        whole.len(),
    ] {
        fs::write(&path, &whole[..cut]).unwrap();
        let stamp = there.stamp(9);
        let read = shared::read_others(&mut there.journal, &stamp, folder.path(), &mut on);
        let read = read.unwrap();
        let complete = cut == whole.len() || cut == 0;
        assert_eq!(read.waiting, usize::from(!complete), "{cut}");
        assert_eq!(read.union.known, 0, "nothing is read twice");
        had += read.union.new;
        let ends = whole[..cut].iter().filter(|byte| **byte == b'\n').count();
        assert_eq!(had, ends as u64);
    }
    assert_eq!(there.states(), here.states());
}

#[test]
fn a_hole_in_a_file_is_passed_over_and_filled_later() {
    let (folder, mut here, mut there) = two();
    sync(&mut here, folder.path());
    let path = segments(folder.path()).remove(0);
    let whole = fs::read(&path).unwrap();
    let mut holed = whole.clone();
    holed[700..1_400].fill(0);
    fs::write(&path, &holed).unwrap();
    let (read, _) = sync(&mut there, folder.path());
    assert_eq!(read.waiting, 1);
    assert!(read.union.new > 3 && read.union.new < here.journal.count().unwrap());
    fs::write(&path, &whole).unwrap();
    let (read, _) = sync(&mut there, folder.path());
    assert_eq!(read.waiting, 0);
    assert_eq!(there.states(), here.states());
}

#[test]
fn copies_of_a_conflict_and_strangers_are_passed_over() {
    let (folder, mut here, mut there) = two();
    sync(&mut here, folder.path());
    let path = segments(folder.path()).remove(0);
    let device = path.parent().unwrap();
    let bad = "{\"sha256\":\"no\"}\n";
    for name in [
        "000001 (conflict).jsonl",
        "000001.jsonl.tmp",
        "1.jsonl",
        "000002.json",
    ] {
        fs::write(device.join(name), bad).unwrap();
    }
    fs::create_dir(folder.path().join("holiday")).unwrap();
    fs::write(folder.path().join("holiday/000001.jsonl"), bad).unwrap();
    fs::write(folder.path().join("notes.txt"), bad).unwrap();
    fs::create_dir(device.join("000009.jsonl")).unwrap();
    let (read, _) = sync(&mut there, folder.path());
    assert_eq!(read.devices, 1);
    assert_eq!(there.states(), here.states());
}

#[test]
fn what_is_deleted_there_is_deleted_nowhere_and_written_again_by_its_own() {
    let (folder, mut here, mut there) = two();
    sync(&mut here, folder.path());
    sync(&mut there, folder.path());
    there.at(5, vec![felt(10, Feel::Dry)]);
    sync(&mut there, folder.path());
    sync(&mut here, folder.path());
    let all = lines(&here);
    for path in segments(folder.path()) {
        fs::remove_dir_all(path.parent().unwrap()).unwrap();
    }
    sync(&mut here, folder.path());
    sync(&mut there, folder.path());
    assert_eq!((lines(&here), lines(&there)), (all.clone(), all.clone()));
    let mut third = World::empty(0xC0);
    sync(&mut third, folder.path());
    assert_eq!(lines(&third), all);
}

#[test]
fn what_came_by_an_archive_goes_on_through_the_folder() {
    let (folder, mut here, mut there) = two();
    sync(&mut here, folder.path());
    sync(&mut there, folder.path());
    let mut far = World::empty(0xC0);
    far.at(1, vec![Content::PlaceDescribed(place(70))]);
    let path = super::archives::written(&mut far, 8, None);
    let now = here.stamp(9);
    archive::take_in(&mut here.journal, &now, &path, None, &mut on).unwrap();
    assert_eq!(sync(&mut here, folder.path()).1.entries, 1);
    assert_eq!(sync(&mut there, folder.path()).0.union.new, 1);
    assert_eq!(there.states(), here.states());
}

#[test]
fn a_segment_is_only_added_to_and_a_full_one_followed_by_another() {
    let (folder, mut here, mut there) = two();
    let mut before: Vec<(PathBuf, Vec<u8>)> = Vec::new();
    for n in 0..6 {
        for m in 0..8 {
            let text = format!("{n} {m} {}", "compost ".repeat(1_200));
            let about = crate::subject::Subject::Garden;
            here.at(3, vec![Content::Noted(Noted { about, text })]);
        }
        sync(&mut here, folder.path());
        for (path, bytes) in &before {
            assert!(fs::read(path).unwrap().starts_with(bytes));
        }
        let all = segments(folder.path()).into_iter();
        before = all
            .map(|path| (path.clone(), fs::read(path).unwrap()))
            .collect();
    }
    assert_eq!(before.len(), 2, "{:?}", before[0].1.len());
    // Whatever was added by another hand is left alone.
    let last = before[1].0.clone();
    let mut bytes = before[1].1.clone();
    bytes.extend(b"{\"sha2");
    fs::write(&last, &bytes).unwrap();
    here.at(4, vec![felt(10, Feel::Dry)]);
    sync(&mut here, folder.path());
    assert_eq!(fs::read(&last).unwrap(), bytes);
    assert_eq!(segments(folder.path()).len(), 3);
    sync(&mut there, folder.path());
    assert_eq!(there.states(), here.states());
}

#[test]
fn a_half_photo_is_waited_for_and_a_wrong_one_never_taken() {
    let (folder, mut here, mut there) = two();
    let photo = super::archives::photo(&here, b"a seedling");
    here.at(2, vec![photo]);
    sync(&mut here, folder.path());
    let device = segments(folder.path()).remove(0);
    let photos = device.parent().unwrap().join("photos");
    let path = fs::read_dir(&photos)
        .unwrap()
        .next()
        .unwrap()
        .unwrap()
        .path();
    let whole = fs::read(&path).unwrap();
    for bytes in [&whole[..4], b"something else"] {
        fs::write(&path, bytes).unwrap();
        assert_eq!(sync(&mut there, folder.path()).0.photos_new, 0);
    }
    // One that nobody names is not brought either.
    fs::write(photos.join("ab".repeat(32)), b"x").unwrap();
    fs::write(&path, &whole).unwrap();
    assert_eq!(sync(&mut there, folder.path()).0.photos_new, 1);
    assert!(there.journal.check(&mut on).all_well());
}

#[test]
fn an_identity_that_two_devices_share_is_noticed_and_nothing_is_lost() {
    let (folder, mut here, mut there) = two();
    sync(&mut here, folder.path());
    // The system's own backup put the same device on a second phone.
    let copy = tempfile::tempdir().unwrap();
    let home = here.close();
    fs::create_dir_all(copy.path().join("journal/photos")).unwrap();
    for name in ["device.db", "journal/journal.db"] {
        fs::copy(home.path().join(name), copy.path().join(name)).unwrap();
    }
    let mut one = crate::Journal::open(home.path(), &stamp(1)).unwrap();
    let mut two = crate::Journal::open(copy.path(), &stamp(1)).unwrap();
    assert_eq!(one.device(), two.device());
    for (journal, feel, n) in [(&mut one, Feel::Dry, 20), (&mut two, Feel::Wet, 21)] {
        let contents = vec![felt(10, feel)];
        let wish = crate::Wish {
            contents,
            happened: None,
            hand: String::new(),
            confirmed: true,
        };
        journal.write(&stamp(n), wish).unwrap();
    }
    for n in 30..34 {
        for journal in [&mut one, &mut two] {
            shared::read_others(journal, &stamp(n), folder.path(), &mut on).unwrap();
            shared::write_own(journal, folder.path(), &mut on).unwrap();
        }
    }
    assert_ne!(one.device(), two.device());
    assert_eq!(dump(&one, true), dump(&two, true));
    sync(&mut there, folder.path());
    assert_eq!(there.states(), dump(&one, true));
}

//! Archives: written, looked into, restored, taken in.

use crate::archive::{self, Matter};
use crate::content::*;
use crate::files::hex;
use crate::id::*;
use crate::subject::Subject;
use crate::testing::*;
use crate::words::Feel;
use crate::{Device, Error, HABITS, Journal, Progress, backup};
use sha2::{Digest, Sha256};
use std::fs;
use std::path::{Path, PathBuf};

const WORDS: Option<&str> = Some("four plain words together");

fn on(_: Progress) -> bool {
    true
}

/// A photo in a home, and the content that names it.
pub(super) fn photo(world: &World, bytes: &[u8]) -> Content {
    let photo = hex(&Sha256::digest(bytes));
    fs::write(photos(world).join(&photo), bytes).unwrap();
    Content::PhotoTaken(PhotoTaken {
        photo,
        taken: None,
        about: None,
    })
}

pub(super) fn photos(world: &World) -> PathBuf {
    world.home.path().join("journal/photos")
}

pub(super) fn written(world: &mut World, n: u8, passphrase: Option<&str>) -> PathBuf {
    let path = world.home.path().join(format!("out-{n}"));
    let stamp = world.stamp(n);
    archive::write(&world.journal, &stamp, &path, passphrase, &mut on).unwrap();
    path
}

fn with_photos() -> World {
    let mut world = World::new();
    let taken = vec![photo(&world, b"a seedling"), photo(&world, b"a tray")];
    world.at(3, taken);
    let gone = Content::PhotoTaken(PhotoTaken {
        photo: "ab".repeat(32),
        taken: None,
        about: None,
    });
    world.at(4, vec![gone, felt(10, Feel::Dry)]);
    world
}

#[test]
fn what_is_inside_is_told_and_no_identity_is_in_it() {
    let mut world = with_photos();
    let path = world.home.path().join("journal.zip");
    let now = world.stamp(9);
    let written = archive::write(&world.journal, &now, &path, None, &mut on).unwrap();
    assert_eq!(written.left_out, 0);
    let inside = archive::look_inside(&path, None, &mut on).unwrap();
    assert_eq!(inside, written.inside);
    let contents = &inside.contents;
    assert_eq!(contents.entries, world.journal.count().unwrap());
    let day = |n| stamp(n).happened().local.date();
    assert_eq!(contents.days, Some((day(0), day(4))));
    assert_eq!((contents.photos.len(), contents.photos_found), (3, 2));
    assert_eq!((inside.written, inside.sealed), (now.now, false));
    assert_eq!(inside.app, env!("CARGO_PKG_VERSION"));
    let left: Vec<_> = fs::read_dir(world.home.path())
        .unwrap()
        .map(|file| file.unwrap().file_name())
        .filter(|name| name.to_string_lossy().contains("part"))
        .collect();
    assert!(left.is_empty(), "{left:?}");
}

#[test]
fn the_same_journal_gives_the_same_bytes() {
    let mut world = with_photos();
    let (one, two) = (written(&mut world, 8, None), written(&mut world, 8, None));
    assert_eq!(one, two);
    let bytes = fs::read(&one).unwrap();
    written(&mut world, 8, None);
    assert_eq!(fs::read(&one).unwrap(), bytes);
}

#[test]
fn restored_elsewhere_all_is_there_under_a_new_identity() {
    let mut world = with_photos();
    for passphrase in [None, WORDS] {
        let path = written(&mut world, 9, passphrase);
        let home = tempfile::tempdir().unwrap();
        let done = archive::restore(home.path(), &stamp(20), &path, passphrase, &mut on).unwrap();
        assert_eq!(done.set_aside, None);
        assert_eq!(done.contents.photos_found, 2);
        let journal = Journal::open(home.path(), &stamp(21)).unwrap();
        assert_eq!(journal.lines().unwrap(), world.journal.lines().unwrap());
        assert_eq!(dump(&journal, true), world.states());
        assert_ne!(journal.device(), world.journal.device());
        let findings = journal.check(&mut on);
        let codes: Vec<_> = findings.found.iter().map(|it| it.code).collect();
        assert_eq!((codes, findings.photos), (vec!["photo_missing"], 2));
    }
}

#[test]
fn restored_over_a_journal_that_is_set_aside_first() {
    let mut world = with_photos();
    let path = written(&mut world, 9, None);
    let mut other = World::empty(0xD0);
    other.at(1, vec![Content::PlaceDescribed(place(70))]);
    let kept = photo(&other, b"of the old one");
    other.at(2, vec![kept]);
    let home = other.close();
    let done = archive::restore(home.path(), &stamp(20), &path, None, &mut on).unwrap();
    assert!(done.set_aside.unwrap().join("journal.db").exists());
    let journal = Journal::open(home.path(), &stamp(21)).unwrap();
    assert_eq!(journal.lines().unwrap(), world.journal.lines().unwrap());
    let files = fs::read_dir(home.path().join("journal/photos")).unwrap();
    assert_eq!(files.count(), 3, "photos that were there stay");
}

#[test]
fn taken_in_it_is_previewed_reported_and_backed_up_and_twice_changes_nothing() {
    let mut here = World::new();
    let lines = here.journal.lines().unwrap();
    let mut there = World::empty(0xD0);
    let first = there.stamp(1);
    let lines = lines.iter().map(String::as_str);
    there.journal.take_in(&first, lines).unwrap();
    let taken = photo(&there, b"of there");
    there.at(5, vec![taken, felt(10, Feel::Dry), felt(11, Feel::Wet)]);
    let path = written(&mut there, 9, None);
    let known = here.journal.count().unwrap();
    let before = here.dump();

    let preview = archive::preview(&here.journal, &path, None, &mut on).unwrap();
    let want = [("felt".to_owned(), 2), ("photo_taken".to_owned(), 1)];
    assert_eq!(preview.new, want.into());
    assert_eq!((preview.known, preview.photos_new), (known, 1));
    assert!(preview.conflicts.is_empty() && !preview.nothing_new());
    assert_eq!(here.dump(), before);

    let now = here.stamp(10);
    let done = archive::take_in(&mut here.journal, &now, &path, None, &mut on).unwrap();
    assert_eq!(done.report.kinds, preview.new);
    assert_eq!((done.report.new, done.report.known), (3, known));
    assert_eq!((done.photos_new, done.photos_missing), (1, 0));
    assert_eq!(here.states(), there.states());
    assert_eq!(backup::list(here.home.path()).unwrap().len(), 1);
    assert!(here.journal.check(&mut on).all_well());

    let preview = archive::preview(&here.journal, &path, None, &mut on).unwrap();
    assert!(preview.nothing_new());
    let before = here.dump();
    let done = archive::take_in(&mut here.journal, &now, &path, None, &mut on).unwrap();
    assert_eq!((done.report.new, done.photos_new), (0, 0));
    assert_eq!(here.dump(), before);
}

#[test]
fn where_both_changed_the_same_the_later_holds_and_both_are_kept() {
    let mut here = World::new();
    let noted = here.at(2, vec![felt(10, Feel::Dry)]);
    let lines = here.journal.lines().unwrap();
    let mut there = World::empty(0xD0);
    let first = there.stamp(1);
    let lines = lines.iter().map(String::as_str);
    there.journal.take_in(&first, lines).unwrap();
    // Both change the packet and the entry, only one the place.
    let named = |variety: &str| {
        let mut packet = packet(PACKET);
        packet.variety = variety.into();
        Content::PacketDescribed(packet)
    };
    here.at(5, vec![named("Here")]);
    there.at(
        5,
        vec![named("There"), Content::PlaceDescribed(place(PLACE))],
    );
    there.undo(6, noted);
    let stamp = here.stamp(6);
    let correct = |world: &mut World, feel| {
        let to = felt(10, feel);
        world.journal.correct(&stamp, noted, to, None, "", true)
    };
    correct(&mut here, Feel::Moist).unwrap();
    let path = written(&mut there, 9, None);

    let preview = archive::preview(&here.journal, &path, None, &mut on).unwrap();
    let matters: Vec<_> = preview.conflicts.iter().map(|it| it.matter).collect();
    let packet = Subject::Packet(PacketId(id(PACKET)));
    assert_eq!(matters, [Matter::Described(packet), Matter::Amended(noted)]);
    let now = here.stamp(10);
    let done = archive::take_in(&mut here.journal, &now, &path, None, &mut on).unwrap();
    assert_eq!(done.conflicts, preview.conflicts);
    let state = here.journal.packet(PacketId(id(PACKET))).unwrap().unwrap();
    let theirs = done.conflicts[0].theirs_holds;
    assert_eq!(
        state.described.variety,
        if theirs { "There" } else { "Here" }
    );
    let line = here.journal.entry(noted).unwrap().unwrap();
    assert_eq!(line.withdrawn, done.conflicts[1].theirs_holds);
    for conflict in &done.conflicts {
        let all = here.journal.lines().unwrap().join("\n");
        assert!(all.contains(&conflict.here.to_string()));
        assert!(all.contains(&conflict.there.to_string()));
    }
}

#[test]
fn a_missing_or_damaged_photo_is_healed_by_a_later_import() {
    let mut world = with_photos();
    let path = written(&mut world, 9, None);
    let names: Vec<_> = fs::read_dir(photos(&world))
        .unwrap()
        .map(|file| file.unwrap().path())
        .collect();
    let kept = fs::read(&names[0]).unwrap();
    fs::remove_file(&names[0]).unwrap();
    fs::write(&names[1], b"not what it was").unwrap();
    assert_eq!(world.journal.check(&mut on).found.len(), 3);
    let now = world.stamp(10);
    let done = archive::take_in(&mut world.journal, &now, &path, None, &mut on).unwrap();
    assert_eq!((done.report.new, done.photos_missing), (0, 1));
    assert_eq!(fs::read(&names[0]).unwrap(), kept);
    assert_eq!(world.journal.check(&mut on).found.len(), 1);
}

#[test]
fn a_passphrase_is_asked_for_and_a_wrong_one_refused() {
    let mut world = World::new();
    let path = written(&mut world, 9, WORDS);
    assert!(archive::is_sealed(&path).unwrap());
    let bytes = fs::read(&path).unwrap();
    assert!(!bytes.windows(6).any(|window| window == b"tomato"));
    let code = |words| {
        archive::look_inside(&path, words, &mut on)
            .unwrap_err()
            .code()
    };
    assert_eq!(code(None), "passphrase_wanted");
    assert_eq!(code(Some("four plain words")), "passphrase_wrong");
    assert_eq!(code(Some("")), "passphrase_empty");
    assert!(archive::look_inside(&path, WORDS, &mut on).unwrap().sealed);
    let stamp = world.stamp(9);
    let empty = archive::write(&world.journal, &stamp, &path, Some(""), &mut on);
    assert_eq!(empty.unwrap_err().code(), "passphrase_empty");
    assert_eq!(fs::read(&path).unwrap(), bytes, "what was there stays");
}

#[test]
fn cancelled_at_any_moment_nothing_is_changed() {
    let mut world = with_photos();
    let other = written(&mut with_photos(), 9, None);
    let taken_from = {
        let mut there = World::empty(0xD0);
        let taken = photo(&there, b"of there");
        there.at(1, vec![taken, Content::PlaceDescribed(place(70))]);
        let path = written(&mut there, 9, None);
        fs::read(path).unwrap()
    };
    fs::write(world.home.path().join("in.zip"), taken_from).unwrap();
    let from = world.home.path().join("in.zip");
    let to = world.home.path().join("out.zip");
    let listed = |world: &World| {
        let mut names: Vec<_> = fs::read_dir(world.home.path())
            .unwrap()
            .chain(fs::read_dir(photos(world)).unwrap())
            .map(|file| file.unwrap().file_name())
            .collect();
        names.sort();
        names
    };
    drop(other);
    let stamp = world.stamp(9);
    let lines = world.journal.lines().unwrap();
    let names = listed(&world);
    for work in ["write", "take in"] {
        let mut stop = 0;
        loop {
            let mut n = 0;
            let mut watch = |_: Progress| {
                n += 1;
                n <= stop
            };
            let done = match work {
                "write" => archive::write(&world.journal, &stamp, &to, None, &mut watch).map(drop),
                _ => {
                    archive::take_in(&mut world.journal, &stamp, &from, None, &mut watch).map(drop)
                }
            };
            match done {
                Ok(()) => break,
                Err(error) => assert!(matches!(error, Error::Cancelled), "{error}"),
            }
            assert_eq!(listed(&world), names, "{work} {stop}");
            assert_eq!(world.journal.lines().unwrap(), lines);
            stop += 1;
        }
        assert!(stop >= 6, "{work}: {stop}");
        let _ = fs::remove_file(&to);
    }
    assert_eq!(world.journal.count().unwrap(), lines.len() as u64 + 2);
}

#[test]
fn a_damaged_journal_is_written_as_far_as_it_is_whole() {
    let mut world = with_photos();
    let entries = world.journal.count().unwrap();
    world
        .journal
        .connection()
        .execute_batch("UPDATE entries SET line = replace(line, 'South', 'North')")
        .unwrap();
    let path = world.home.path().join("journal.zip");
    let stamp = world.stamp(9);
    let written = archive::write(&world.journal, &stamp, &path, None, &mut on).unwrap();
    assert_eq!(written.left_out, 1);
    assert_eq!(written.inside.contents.entries, entries - 1);
}

#[test]
fn habits_go_along_to_a_new_device_and_into_no_others() {
    let mut world = with_photos();
    let kept = |home: &Path| {
        let device = Device::open(home, &stamp(1)).unwrap();
        device.get(HABITS).unwrap()
    };
    let dark = r#"{"theme":"dark"}"#;
    let device = Device::open(world.home.path(), &stamp(1)).unwrap();
    device.set(HABITS, dark).unwrap();
    let path = written(&mut world, 9, WORDS);

    let new = tempfile::tempdir().unwrap();
    archive::restore(new.path(), &stamp(10), &path, WORDS, &mut on).unwrap();
    assert_eq!(kept(new.path()).as_deref(), Some(dark));

    // Neither a restore nor a merge changes what a device does already.
    let mut other = World::new();
    let light = r#"{"theme":"light"}"#;
    let device = Device::open(other.home.path(), &stamp(1)).unwrap();
    device.set(HABITS, light).unwrap();
    archive::take_in(&mut other.journal, &stamp(10), &path, WORDS, &mut on).unwrap();
    assert_eq!(kept(other.home.path()).as_deref(), Some(light));
    let home = other.home;
    drop(other.journal);
    archive::restore(home.path(), &stamp(11), &path, WORDS, &mut on).unwrap();
    assert_eq!(kept(home.path()).as_deref(), Some(light));

    // Nor does one that has none.
    device.forget(HABITS).unwrap();
    let mut bare = World::new();
    let path = written(&mut bare, 9, None);
    archive::take_in(&mut world.journal, &stamp(12), &path, None, &mut on).unwrap();
    assert_eq!(kept(world.home.path()).as_deref(), Some(dark));
}

//! Photos: what the entries say of them, and which files stay.

use crate::content::*;
use crate::id::EntryId;
use crate::photos::{is_name, keep, path};
use crate::subject::Subject;
use crate::testing::*;
use crate::{Answer, backup};
use chrono::Duration;
use std::fs::File;
use std::time::SystemTime;

fn taken(photo: &str, about: Option<Subject>) -> Content {
    Content::PhotoTaken(PhotoTaken {
        photo: photo.to_owned(),
        taken: None,
        about,
    })
}

fn named(taken: EntryId, about: Subject) -> Content {
    Content::PhotoNamed(PhotoNamed { taken, about })
}

/// Makes a file look as if it had been written on day 1.
fn age(world: &World, photo: &str) {
    let path = path(world.home.path(), photo).unwrap();
    let file = File::options().write(true).open(path).unwrap();
    file.set_modified(SystemTime::from(stamp(1).now)).unwrap();
}

fn is_there(world: &World, photo: &str) -> bool {
    path(world.home.path(), photo).unwrap().exists()
}

/// What is swept up so many days after the season began.
fn swept(world: &World, days: i64) -> Vec<String> {
    let now = stamp(0).now + Duration::days(days);
    world.journal.sweep_photos(now).unwrap()
}

#[test]
fn a_name_is_a_hash_and_nothing_else() {
    let good = "0123456789abcdef".repeat(4);
    assert!(is_name(&good));
    for bad in [
        "",
        "../../etc/passwd",
        good.trim_start_matches('0'),
        &good.to_uppercase(),
    ] {
        assert!(!is_name(bad), "{bad}");
        assert_eq!(path("home".as_ref(), bad), None);
    }
}

#[test]
fn a_file_is_named_by_what_is_in_it_and_kept_once() {
    let world = World::new();
    let home = world.home.path();
    // FIPS 180-2, appendix B.1.
    let abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    assert_eq!(keep(home, b"abc").unwrap(), abc);
    assert_eq!(keep(home, b"abc").unwrap(), abc);
    let files = std::fs::read_dir(home.join("journal/photos")).unwrap();
    assert_eq!(files.count(), 1);
    assert_eq!(std::fs::read(path(home, abc).unwrap()).unwrap(), b"abc");
}

#[test]
fn a_photo_without_a_subject_is_listed_until_it_is_named() {
    let mut world = World::new();
    let photo = keep(world.home.path(), b"a leaf").unwrap();
    let tray = Subject::Tray(crate::id::TrayId(id(10)));
    let entry = world.at(2, vec![taken(&photo, None)]);
    let listed = |world: &World| -> Vec<EntryId> {
        let unnamed = world.journal.unnamed_photos().unwrap();
        unnamed.iter().map(|photo| photo.entry).collect()
    };
    assert_eq!(listed(&world), [entry]);
    assert!(world.journal.photos(tray).unwrap().is_empty());

    let naming = world.at(3, vec![named(entry, tray)]);
    assert!(listed(&world).is_empty());
    let there = world.journal.photos(tray).unwrap();
    assert_eq!(there.len(), 1);
    assert_eq!((there[0].entry, &there[0].photo), (entry, &photo));

    world.undo(4, naming);
    assert_eq!(listed(&world), [entry]);
    assert!(world.journal.photos(tray).unwrap().is_empty());
    world.journal.rebuild().unwrap();
    assert_eq!(listed(&world), [entry]);
}

#[test]
fn what_names_a_withdrawn_photo_goes_with_it() {
    let mut world = World::new();
    let photo = keep(world.home.path(), b"a leaf").unwrap();
    let tray = Subject::Tray(crate::id::TrayId(id(10)));
    let entry = world.at(2, vec![taken(&photo, None)]);
    world.at(3, vec![named(entry, tray)]);
    let gone = world.journal.withdraw(&stamp(4), entry, "", false);
    assert!(matches!(gone, Ok(Answer::AsksFirst(_))));
    let Ok(Answer::Written { act, .. }) = world.journal.withdraw(&stamp(4), entry, "", true) else {
        panic!("it was confirmed");
    };
    assert!(world.journal.photos(tray).unwrap().is_empty());
    assert!(world.journal.unnamed_photos().unwrap().is_empty());
    world.undo(5, act);
    assert_eq!(world.journal.photos(tray).unwrap().len(), 1);
}

#[test]
fn the_file_of_a_withdrawn_photo_stays_thirty_days() {
    let mut world = World::new();
    let photo = keep(world.home.path(), b"a leaf").unwrap();
    let entry = world.at(2, vec![taken(&photo, None)]);
    age(&world, &photo);
    assert!(swept(&world, 400).is_empty());
    let gone = world.journal.withdraw(&stamp(3), entry, "", false);
    assert!(matches!(gone, Ok(Answer::Written { .. })));
    assert!(swept(&world, 32).is_empty());
    assert!(is_there(&world, &photo));
    assert_eq!(swept(&world, 33), std::slice::from_ref(&photo));
    assert!(!is_there(&world, &photo));
}

#[test]
fn a_photo_taken_twice_stays_for_the_other() {
    let mut world = World::new();
    let photo = keep(world.home.path(), b"a leaf").unwrap();
    let entry = world.at(2, vec![taken(&photo, None)]);
    world.at(3, vec![taken(&photo, None)]);
    world.journal.withdraw(&stamp(4), entry, "", false).unwrap();
    assert!(swept(&world, 400).is_empty());
}

#[test]
fn a_file_that_no_entry_names_goes_after_thirty_days() {
    let world = World::new();
    let photo = keep(world.home.path(), b"a leaf").unwrap();
    age(&world, &photo);
    assert!(swept(&world, 30).is_empty());
    assert_eq!(swept(&world, 31), [photo]);
}

#[test]
fn what_was_begun_and_never_finished_goes_after_a_day() {
    let world = World::new();
    let part = world.home.path().join("journal/photos/x.part");
    std::fs::write(&part, b"half").unwrap();
    let file = File::options().write(true).open(&part).unwrap();
    file.set_modified(SystemTime::from(stamp(1).now)).unwrap();
    swept(&world, 1);
    assert!(part.exists());
    swept(&world, 2);
    assert!(!part.exists());
}

#[test]
fn what_a_backup_names_stays() {
    let mut world = World::new();
    let photo = keep(world.home.path(), b"a leaf").unwrap();
    let entry = world.at(2, vec![taken(&photo, None)]);
    let made = backup::make(&world.journal, &stamp(3), &mut |_| true).unwrap();
    world.journal.withdraw(&stamp(4), entry, "", false).unwrap();
    assert!(swept(&world, 100).is_empty());
    // One that cannot be read may name anything.
    std::fs::write(&made.path, b"not a journal").unwrap();
    assert!(swept(&world, 100).is_empty());
    std::fs::remove_file(&made.path).unwrap();
    assert_eq!(swept(&world, 100), [photo]);
}

//! Backups: made whole, looked into, brought back.

use crate::backup::{self, Backup};
use crate::content::*;
use crate::testing::*;
use crate::words::Feel;
use crate::{Error, Journal};
use chrono::Duration;
use std::fs;

fn make(world: &mut World, n: u8) -> Backup {
    let stamp = world.stamp(n);
    backup::make(&world.journal, &stamp, &mut |_| true).unwrap()
}

#[test]
fn a_backup_is_brought_back_with_a_new_identity_and_what_was_there_is_kept() {
    let mut world = World::new();
    world.at(3, vec![felt(10, Feel::Dry)]);
    let kept = world.journal.lines().unwrap();
    let made = make(&mut world, 3);
    assert_eq!(made.at, stamp(3).now);
    world.at(4, vec![felt(10, Feel::Wet)]);
    let device = world.journal.device();
    let later = world.stamp(5);
    let home = world.close();

    let restored = backup::restore(home.path(), &later, &made.name, &mut |_| true).unwrap();
    assert_eq!(restored.contents.entries, kept.len() as u64);
    let journal = Journal::open(home.path(), &later).unwrap();
    assert_eq!(journal.lines().unwrap(), kept);
    assert_ne!(journal.device(), device);
    assert!(journal.check(&mut |_| true).all_well());

    // What was set aside opens, with all that was written.
    let aside = restored.set_aside.unwrap();
    let elsewhere = tempfile::tempdir().unwrap();
    fs::create_dir(elsewhere.path().join("journal")).unwrap();
    for name in fs::read_dir(&aside).unwrap() {
        let name = name.unwrap().file_name();
        fs::copy(
            aside.join(&name),
            elsewhere.path().join("journal").join(&name),
        )
        .unwrap();
    }
    let old = Journal::open(elsewhere.path(), &later).unwrap();
    assert_eq!(old.count().unwrap(), kept.len() as u64 + 1);
}

#[test]
fn inside_are_the_days_and_the_photos() {
    let mut world = World::new();
    let photo = "ab".repeat(32);
    let taken = |photo: &str| {
        Content::PhotoTaken(PhotoTaken {
            photo: photo.to_owned(),
            taken: None,
            about: None,
        })
    };
    world.at(7, vec![taken(&photo), taken(&"cd".repeat(32))]);
    fs::write(world.home.path().join("journal/photos").join(&photo), b"x").unwrap();
    let made = make(&mut world, 8);
    let inside = backup::look_inside(world.home.path(), &made, &mut |_| true).unwrap();
    assert_eq!(inside.entries, world.journal.count().unwrap());
    let day = |n| stamp(n).happened().local.date();
    assert_eq!(inside.days, Some((day(0), day(7))));
    assert_eq!((inside.photos.len(), inside.photos_found), (2, 1));
    // The identity of the device is in no backup.
    let bytes = fs::read(&made.path).unwrap();
    assert!(!bytes.windows(5).any(|window| window == b"kept "));
}

#[test]
fn it_is_due_when_something_changed_and_the_last_is_an_hour_old() {
    let mut world = World::empty(1);
    let now = stamp(1).now;
    assert!(
        !backup::due(&world.journal, now).unwrap(),
        "nothing is in it"
    );
    world.at(1, vec![Content::PlaceDescribed(place(PLACE))]);
    assert!(backup::due(&world.journal, now).unwrap());
    make(&mut world, 1);
    assert!(!backup::due(&world.journal, now + Duration::hours(9)).unwrap());
    world.at(1, vec![Content::PlaceDescribed(place(71))]);
    assert!(!backup::due(&world.journal, now + Duration::minutes(59)).unwrap());
    assert!(backup::due(&world.journal, now + Duration::minutes(60)).unwrap());
    assert!(backup::due(&world.journal, now - Duration::days(900)).unwrap());
}

#[test]
fn before_each_taking_in_there_is_a_backup_of_what_was() {
    let mut here = World::new();
    let other = World::empty(0xD0);
    let mut there = other;
    there.at(1, vec![Content::PlaceDescribed(place(70))]);
    let lines = there.journal.lines().unwrap();
    let before = here.journal.count().unwrap();
    for _ in 0..2 {
        let stamp = here.stamp(9);
        let lines = lines.iter().map(String::as_str);
        here.journal.take_in(&stamp, lines).unwrap();
    }
    // The second time changed nothing, but what the first took in was in none.
    let all = backup::list(here.home.path()).unwrap();
    let entries: Vec<_> = all
        .iter()
        .map(|backup| {
            let inside = backup::look_inside(here.home.path(), backup, &mut |_| true);
            inside.unwrap().entries
        })
        .collect();
    assert_eq!(entries, [before + 1, before]);
    let names: Vec<_> = all.iter().map(|backup| backup.name.as_str()).collect();
    assert_eq!(names, ["20260410T070000Z-2.db", "20260410T070000Z-1.db"]);
}

#[test]
fn a_damaged_journal_makes_no_backup_and_harms_none() {
    let mut world = World::new();
    let good = make(&mut world, 1);
    world
        .journal
        .connection()
        .execute_batch("UPDATE entries SET line = replace(line, 'South', 'North')")
        .unwrap();
    let stamp = world.stamp(2);
    let error = backup::make(&world.journal, &stamp, &mut |_| true).unwrap_err();
    assert_eq!(error.code(), "journal_damaged");
    assert_eq!(backup::list(world.home.path()).unwrap(), [good]);
    assert_eq!(files(&world), ["20260402T070000Z-1.db"]);
}

fn files(world: &World) -> Vec<String> {
    let listed = fs::read_dir(world.home.path().join("journal/backups")).unwrap();
    listed
        .map(|file| file.unwrap().file_name().into_string().unwrap())
        .collect()
}

#[test]
fn cancelled_at_any_moment_nothing_is_left() {
    let mut world = World::new();
    let stamp = world.stamp(1);
    let mut stop = 0;
    loop {
        let mut n = 0;
        let made = backup::make(&world.journal, &stamp, &mut |_| {
            n += 1;
            n <= stop
        });
        if made.is_ok() {
            break;
        }
        assert!(matches!(made, Err(Error::Cancelled)));
        assert_eq!(files(&world), [""; 0]);
        stop += 1;
    }
    assert!(stop >= 4, "{stop}");
}

#[test]
fn a_damaged_or_unknown_backup_is_not_brought_back() {
    let mut world = World::new();
    let made = make(&mut world, 1);
    let copy = rusqlite::Connection::open(&made.path).unwrap();
    copy.execute_batch("UPDATE entries SET line = replace(line, 'South', 'North')")
        .unwrap();
    drop(copy);
    let lines = world.journal.lines().unwrap();
    let stamp = world.stamp(2);
    let home = world.close();
    let mut watch = |_| true;
    let error = backup::restore(home.path(), &stamp, &made.name, &mut watch).unwrap_err();
    assert_eq!(error.code(), "journal_damaged");
    let error = backup::restore(home.path(), &stamp, "../journal.db", &mut watch).unwrap_err();
    assert_eq!(error.code(), "backup_unknown");
    let journal = Journal::open(home.path(), &stamp).unwrap();
    assert_eq!(journal.lines().unwrap(), lines);
}

#[test]
fn what_a_backup_adds_up_to_is_made_anew() {
    let mut world = World::new();
    let states = world.states();
    let made = make(&mut world, 1);
    let copy = rusqlite::Connection::open(&made.path).unwrap();
    copy.execute_batch("UPDATE states SET state = replace(state, 'South', 'North')")
        .unwrap();
    drop(copy);
    let stamp = world.stamp(2);
    let home = world.close();
    backup::restore(home.path(), &stamp, &made.name, &mut |_| true).unwrap();
    let journal = Journal::open(home.path(), &stamp).unwrap();
    assert_eq!(dump(&journal, true), states);
}

#[test]
fn old_backups_are_thinned_out() {
    let mut world = World::new();
    for hour in 0..30 {
        let mut stamp = world.stamp(1);
        stamp.now += Duration::hours(hour);
        backup::make(&world.journal, &stamp, &mut |_| true).unwrap();
    }
    assert_eq!(backup::list(world.home.path()).unwrap().len(), 30);
    make(&mut world, 30);
    // The last of the two days, and the one just made.
    let left = backup::list(world.home.path()).unwrap();
    let left: Vec<_> = left.iter().map(|backup| backup.name.as_str()).collect();
    assert_eq!(
        left,
        [
            "20260501T070000Z-1.db",
            "20260403T120000Z-1.db",
            "20260402T230000Z-1.db"
        ]
    );
}

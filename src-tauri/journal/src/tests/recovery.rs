//! A damaged journal: noticed, set aside untouched, salvaged.

use crate::content::*;
use crate::subject::Subject;
use crate::testing::*;
use crate::words::Feel;
use crate::{Journal, backup, recover};
use std::fs;
use std::path::Path;

fn code(home: &Path) -> &'static str {
    Journal::open(home, &stamp(9)).unwrap_err().code()
}

fn database(home: &Path) -> std::path::PathBuf {
    home.join("journal/journal.db")
}

/// Enough notes for several pages.
fn many(world: &mut World, number: u32) {
    for n in 0..number {
        let text = format!("Note {n}: {}", "compost ".repeat(20));
        let noted = Noted {
            text,
            about: Subject::Garden,
        };
        world.at(3, vec![Content::Noted(noted)]);
    }
}

#[test]
fn a_missing_or_empty_file_is_damage_once_there_was_a_journal() {
    let home = World::new().close();
    fs::write(database(home.path()), b"").unwrap();
    assert_eq!(code(home.path()), "journal_damaged");
    fs::remove_file(database(home.path())).unwrap();
    assert_eq!(code(home.path()), "journal_damaged");
    assert!(!database(home.path()).exists(), "nothing takes its place");
}

#[test]
fn a_truncated_file_is_salvaged_beside_its_backup() {
    let mut world = World::new();
    many(&mut world, 10);
    let stamp_of_backup = world.stamp(4);
    let made = backup::make(&world.journal, &stamp_of_backup, &mut |_| true).unwrap();
    let in_backup = world.journal.count().unwrap();
    many(&mut world, 110);
    let lines = world.journal.lines().unwrap();
    let device = world.journal.device();
    let home = world.close();
    let path = database(home.path());
    let whole = fs::read(&path).unwrap();
    let cut = &whole[..whole.len() * 2 / 3];
    fs::write(&path, cut).unwrap();
    assert_eq!(code(home.path()), "journal_damaged");

    let looked = crate::look_over(home.path(), &mut |_| true).unwrap();
    assert_eq!(fs::read(&path).unwrap(), cut, "looking changes nothing");
    let done = recover(home.path(), &stamp(9), &mut |_| true).unwrap();
    let said = crate::Recovery {
        set_aside: done.set_aside.clone(),
        ..looked
    };
    assert_eq!(said, done);
    assert_eq!(
        fs::read(done.set_aside.unwrap().join("journal.db")).unwrap(),
        cut
    );
    assert_eq!(done.backup, Some(made.name));
    assert_eq!(done.in_backup, in_backup);
    assert!(
        done.salvaged > 0 && done.altered <= 1,
        "{} salvaged",
        done.salvaged
    );
    assert_eq!(done.entries, done.in_backup + done.salvaged);
    let journal = Journal::open(home.path(), &stamp(9)).unwrap();
    assert_ne!(journal.device(), device);
    let now = journal.lines().unwrap();
    assert_eq!(now.len() as u64, done.entries);
    assert!(now.iter().all(|line| lines.contains(line)));
    // What is lost is told: numbers that cannot be read and, of the page that
    // was cut, lines that are not whole.
    let lost = lines.len() as u64 - done.entries;
    let unread: i64 = done.unread.iter().map(|(from, to)| to - from + 1).sum();
    let told = u64::try_from(unread).unwrap() + done.altered;
    assert!(lost > 0 && told >= lost, "{told} told of {lost}");
}

#[test]
fn without_a_backup_and_without_a_header_the_lines_are_found_in_the_bytes() {
    let mut world = World::new();
    many(&mut world, 60);
    let lines = world.journal.lines().unwrap();
    let home = world.close();
    let path = database(home.path());
    let mut bytes = fs::read(&path).unwrap();
    bytes[..100].fill(0xA5);
    fs::write(&path, &bytes).unwrap();
    assert_eq!(code(home.path()), "journal_damaged");
    let done = recover(home.path(), &stamp(9), &mut |_| true).unwrap();
    assert_eq!((done.backup, done.in_backup), (None, 0));
    assert_eq!(done.salvaged, lines.len() as u64);
    let mut now = Journal::open(home.path(), &stamp(9))
        .unwrap()
        .lines()
        .unwrap();
    let mut lines = lines;
    now.sort();
    lines.sort();
    assert_eq!(now, lines);
}

#[test]
fn what_is_only_in_the_wal_is_salvaged_too() {
    let mut world = World::new();
    many(&mut world, 20);
    let lines = world.journal.lines().unwrap();
    // As after a kill: the WAL is still there.
    let copy = tempfile::tempdir().unwrap();
    fs::create_dir(copy.path().join("journal")).unwrap();
    for name in ["journal.db", "journal.db-wal"] {
        let name = Path::new("journal").join(name);
        fs::copy(world.home.path().join(&name), copy.path().join(&name)).unwrap();
    }
    let done = recover(copy.path(), &stamp(9), &mut |_| true).unwrap();
    assert_eq!(done.salvaged, lines.len() as u64);
    assert!(done.set_aside.unwrap().join("journal.db-wal").exists());
    let journal = Journal::open(copy.path(), &stamp(9)).unwrap();
    assert_eq!(journal.lines().unwrap(), lines);
}

#[test]
fn a_damaged_wal_is_noticed_before_anything_is_dropped_and_salvaged() {
    let mut world = World::new();
    many(&mut world, 20);
    let lines = world.journal.lines().unwrap();
    let copy = tempfile::tempdir().unwrap();
    fs::create_dir(copy.path().join("journal")).unwrap();
    for name in ["journal.db", "journal.db-wal"] {
        let name = Path::new("journal").join(name);
        fs::copy(world.home.path().join(&name), copy.path().join(&name)).unwrap();
    }
    let wal = copy.path().join("journal/journal.db-wal");
    let mut bytes = fs::read(&wal).unwrap();
    let middle = bytes.len() / 2;
    bytes[middle] ^= 1;
    fs::write(&wal, &bytes).unwrap();
    assert_eq!(code(copy.path()), "journal_damaged");
    assert_eq!(fs::read(&wal).unwrap(), bytes);
    let done = recover(copy.path(), &stamp(9), &mut |_| true).unwrap();
    assert_eq!(done.salvaged, lines.len() as u64);
    let mut now = Journal::open(copy.path(), &stamp(9))
        .unwrap()
        .lines()
        .unwrap();
    let mut lines = lines;
    now.sort();
    lines.sort();
    assert_eq!(now, lines);
}

#[test]
fn an_altered_line_is_left_out_and_told() {
    let mut world = World::new();
    many(&mut world, 5);
    let lines = world.journal.lines().unwrap();
    let db = world.journal.connection();
    db.execute_batch("UPDATE entries SET line = replace(line, 'Note 2', 'Note 7')")
        .unwrap();
    // A hash that is damaged itself costs nothing: the index has it as well.
    let home = world.close();
    let done = recover(home.path(), &stamp(9), &mut |_| true).unwrap();
    assert_eq!((done.altered, done.salvaged), (1, lines.len() as u64 - 1));
    assert_eq!(done.missing.len(), 1);
    let now = Journal::open(home.path(), &stamp(9))
        .unwrap()
        .lines()
        .unwrap();
    let lost: Vec<_> = lines.iter().filter(|line| !now.contains(line)).collect();
    assert!(lost.len() == 1 && lost[0].contains("Note 2"));
}

#[test]
fn cut_short_between_setting_aside_and_putting_in_place_it_is_done_again() {
    let mut world = World::new();
    world.at(3, vec![felt(10, Feel::Dry)]);
    let lines = world.journal.lines().unwrap();
    let home = world.close();
    let aside = home.path().join("journal/set-aside/20260402T070000Z-1");
    fs::create_dir_all(&aside).unwrap();
    fs::rename(database(home.path()), aside.join("journal.db")).unwrap();
    fs::write(home.path().join("journal/journal.db-wal"), b"left").unwrap();
    assert_eq!(code(home.path()), "journal_damaged");
    let done = recover(home.path(), &stamp(9), &mut |_| true).unwrap();
    assert_eq!(done.set_aside.as_deref(), Some(aside.as_path()));
    assert_eq!(fs::read(aside.join("journal.db-wal")).unwrap(), b"left");
    let journal = Journal::open(home.path(), &stamp(9)).unwrap();
    assert_eq!(journal.lines().unwrap(), lines);
}

#[test]
fn cancelled_at_any_moment_all_is_as_it_was() {
    let mut world = World::new();
    let stamp_of_backup = world.stamp(4);
    backup::make(&world.journal, &stamp_of_backup, &mut |_| true).unwrap();
    many(&mut world, 5);
    let device = world.journal.device();
    let home = world.close();
    let before = fs::read(database(home.path())).unwrap();
    let mut stop = 0;
    while let Err(error) = {
        let mut n = 0;
        recover(home.path(), &stamp(9), &mut |_| {
            n += 1;
            n <= stop
        })
    } {
        assert_eq!(error.code(), "cancelled");
        let mut left: Vec<_> = fs::read_dir(home.path().join("journal"))
            .unwrap()
            .map(|file| file.unwrap().file_name())
            .collect();
        left.sort();
        assert_eq!(left, ["backups", "journal.db", "photos"]);
        assert_eq!(fs::read(database(home.path())).unwrap(), before);
        let journal = Journal::open(home.path(), &stamp(9)).unwrap();
        assert_eq!(journal.device(), device);
        stop += 1;
    }
    assert!(stop >= 3, "{stop}");
}

#[test]
fn a_damaged_device_database_is_set_aside_too() {
    let world = World::new();
    let lines = world.journal.lines().unwrap();
    let home = world.close();
    fs::write(home.path().join("device.db"), b"no database, only words").unwrap();
    assert_eq!(code(home.path()), "journal_damaged");
    let done = recover(home.path(), &stamp(9), &mut |_| true).unwrap();
    assert!(done.device_made_anew);
    let journal = Journal::open(home.path(), &stamp(9)).unwrap();
    assert_eq!(journal.lines().unwrap(), lines);
}

#[test]
fn a_table_or_version_that_is_gone_is_damage() {
    for sql in [
        "PRAGMA user_version = 0",
        "PRAGMA foreign_keys = OFF; ALTER TABLE entries RENAME COLUMN line TO lime",
        "UPDATE entries SET line = replace(line, 'Note 4', 'Note 5')",
    ] {
        let mut world = World::new();
        many(&mut world, 5);
        world.journal.connection().execute_batch(sql).unwrap();
        let home = world.close();
        assert_eq!(code(home.path()), "journal_damaged", "{sql}");
    }
}

//! A journal that a newer version wrote: read, never written.

use crate::testing::*;
use crate::words::Feel;
use crate::{Journal, archive, backup};
use std::fs;
use std::path::Path;

/// The digests of some files of a home.
fn digests(home: &Path, names: &[&str]) -> Vec<String> {
    let path = names.iter().map(|name| home.join(name));
    path.map(|path| crate::files::sha256(&path).unwrap())
        .collect()
}

/// What a database of a newer version may have.
const LATER: &str = "PRAGMA user_version = 2; CREATE TABLE of_later (x TEXT) STRICT";

fn refuses_all(journal: &mut Journal) {
    let now = stamp(50);
    let wish = crate::Wish {
        contents: vec![felt(10, Feel::Dry)],
        happened: None,
        hand: String::new(),
        confirmed: true,
    };
    let act = journal.lines().unwrap()[0].clone();
    let act = crate::Entry::parse(&act).unwrap().act;
    let outcomes = [
        journal.write(&now, wish.clone()).map(drop),
        journal.write_all([(now.clone(), wish)]).map(drop),
        journal.undo(&now, act, "", true).map(drop),
        journal.withdraw(&now, act, "", true).map(drop),
        journal
            .correct(&now, act, felt(10, Feel::Wet), None, "", true)
            .map(drop),
        journal.rebuild(),
        journal.take_in(&now, std::iter::empty()).map(drop),
        backup::make(journal, &now, &mut |_| true).map(drop),
    ];
    for outcome in outcomes {
        assert_eq!(outcome.unwrap_err().code(), "journal_newer");
    }
    assert!(!backup::due(journal, now.now).unwrap());
}

#[test]
fn a_newer_journal_is_read_and_nothing_of_it_is_touched() {
    for newer in ["journal/journal.db", "device.db"] {
        let mut world = World::new();
        world.at(3, vec![felt(10, Feel::Dry)]);
        let (states, lines) = (world.states(), world.journal.lines().unwrap());
        assert!(!world.journal.read_only());
        let home = world.close();
        let db = rusqlite::Connection::open(home.path().join(newer)).unwrap();
        db.execute_batch(LATER).unwrap();
        drop(db);
        let before = digests(home.path(), &[newer, "journal/journal.db"]);
        let mut journal = Journal::open(home.path(), &stamp(50)).unwrap();
        assert!(journal.read_only());
        assert_eq!(dump(&journal, true), states);
        assert_eq!(journal.lines().unwrap(), lines);
        refuses_all(&mut journal);
        // What it holds can still be taken elsewhere.
        let to = home.path().join("out.zip");
        let written = archive::write(&journal, &stamp(50), &to, None, &mut |_| true).unwrap();
        assert_eq!(written.inside.contents.entries, lines.len() as u64);
        drop(journal);
        let after = digests(home.path(), &[newer, "journal/journal.db"]);
        assert_eq!(after, before, "{newer}");
    }
}

#[test]
fn what_a_newer_one_left_in_its_wal_is_read_too() {
    let mut world = World::new();
    world.at(3, vec![felt(10, Feel::Dry)]);
    world
        .journal
        .connection()
        .execute_batch("PRAGMA user_version = 2")
        .unwrap();
    let lines = world.journal.lines().unwrap();
    let copy = tempfile::tempdir().unwrap();
    fs::create_dir(copy.path().join("journal")).unwrap();
    for name in ["device.db", "journal/journal.db", "journal/journal.db-wal"] {
        fs::copy(world.home.path().join(name), copy.path().join(name)).unwrap();
    }
    let both = ["journal/journal.db", "journal/journal.db-wal"];
    let before = digests(copy.path(), &both);
    let journal = Journal::open(copy.path(), &stamp(50)).unwrap();
    assert!(journal.read_only());
    assert_eq!(journal.lines().unwrap(), lines);
    drop(journal);
    assert_eq!(digests(copy.path(), &both), before);
}

#[test]
fn one_of_which_nothing_can_be_read_is_refused() {
    let world = World::new();
    let db = world.journal.connection();
    db.execute_batch("PRAGMA user_version = 2; ALTER TABLE entries RENAME COLUMN line TO lime")
        .unwrap();
    let home = world.close();
    let error = Journal::open(home.path(), &stamp(50)).unwrap_err();
    assert_eq!(error.code(), "journal_newer");
}

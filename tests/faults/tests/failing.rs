//! A disk that fails at the first, second, third … deed of a piece of work
//! until it completes (the method of <https://sqlite.org/testing.html>,
//! section 3.2); a full disk; a folder that cannot be written. Each time the
//! work is done whole or not at all, and nothing that was there is lost.

use plumule_faults::machine::{Fault, Machine};
use plumule_faults::{home, writes};
use plumule_journal::{Error, Journal, backup, recover};
use rusqlite::ffi;
use std::fs;
use std::path::Path;
use tempfile::TempDir;

/// Acts that are in the journal before.
const BEFORE: u64 = 12;

fn lines(journal: &Journal) -> Vec<String> {
    journal.lines().unwrap()
}

/// Fails `work` at each of its deeds in turn; how many there were.
fn at_each_deed(code: i32, work: impl Fn(&mut Journal) -> Result<(), Error>) -> u64 {
    let base = home::with_acts(BEFORE);
    let undisturbed = home::copied(base.path());
    let mut journal = Journal::open(undisturbed.path(), &writes::stamp(0)).unwrap();
    let before = lines(&journal);
    work(&mut journal).unwrap();
    let after = lines(&journal);
    for n in 1.. {
        let home = home::copied(base.path());
        let machine = Machine::watch(home.path());
        let mut journal = Journal::open(home.path(), &writes::stamp(0)).unwrap();
        machine.fail(Fault::Once(n, code));
        let done = work(&mut journal);
        let failed = machine.failed();
        machine.fail(Fault::None);
        match done {
            Ok(()) => assert_eq!(lines(&journal), after, "deed {n}"),
            Err(_) => assert_eq!(lines(&journal), before, "deed {n}"),
        }
        drop(journal);
        let mut journal = home::whole(home.path()).unwrap();
        let found = lines(&journal);
        // A commit that failed at its last sync may be there after all.
        assert!(found == before || found == after, "deed {n}");
        for backup in backup::list(home.path()).unwrap() {
            backup::look_inside(home.path(), &backup, &mut |_| true).unwrap();
        }
        // It works when the cause is gone.
        work(&mut journal).unwrap();
        assert_eq!(lines(&journal), after, "deed {n}");
        if failed == 0 {
            assert!(done.is_ok());
            return n - 1;
        }
    }
    unreachable!("it returns when nothing failed")
}

fn with_each_code(name: &str, least: u64, work: impl Fn(&mut Journal) -> Result<(), Error>) {
    for code in [ffi::SQLITE_IOERR, ffi::SQLITE_FULL] {
        let deeds = at_each_deed(code, &work);
        println!("{name}: failed with {code} at each of {deeds} deeds");
        assert!(deeds >= least, "{name}: only {deeds} deeds");
    }
}

#[test]
fn saving() {
    with_each_code("saving", 5, |journal| {
        // Twice the same when it is done again, so that there is one result.
        if writes::is_there(journal, BEFORE)? {
            return Ok(());
        }
        writes::act(journal, BEFORE)
    });
}

#[test]
fn taking_in() {
    let other = home::with_acts(0);
    let mut there = Journal::open(other.path(), &writes::stamp(900)).unwrap();
    for n in 900..905 {
        writes::act(&mut there, n).unwrap();
    }
    let lines = lines(&there);
    with_each_code("taking in", 20, |journal| {
        let lines = lines.iter().map(String::as_str);
        journal.take_in(&writes::stamp(50), lines).map(drop)
    });
}

#[test]
fn rebuilding() {
    with_each_code("rebuilding", 5, Journal::rebuild);
}

#[test]
fn backing_up() {
    with_each_code("backing up", 5, |journal| {
        backup::make(journal, &writes::stamp(50), &mut |_| true).map(drop)
    });
}

/// The lines of a journal, in any order.
fn sorted(home: &Path) -> Vec<String> {
    let mut lines = lines(&home::whole(home).unwrap());
    lines.sort();
    lines
}

/// A home with a backup in it, and later acts.
fn with_backup() -> TempDir {
    let home = home::with_acts(BEFORE);
    let mut journal = Journal::open(home.path(), &writes::stamp(0)).unwrap();
    backup::make(&journal, &writes::stamp(50), &mut |_| true).unwrap();
    for n in BEFORE..BEFORE + 6 {
        writes::act(&mut journal, n).unwrap();
    }
    home
}

#[test]
fn recovering() {
    let base = with_backup();
    let want = sorted(base.path());
    let path = base.path().join("journal/journal.db");
    let mut bytes = fs::read(&path).unwrap();
    bytes[..100].fill(0);
    fs::write(&path, &bytes).unwrap();
    let later = writes::stamp(90);
    let mut n = 0;
    loop {
        n += 1;
        let home = home::copied(base.path());
        let machine = Machine::watch(home.path());
        machine.fail(Fault::Once(n, ffi::SQLITE_IOERR));
        let first = recover(home.path(), &later, &mut |_| true);
        let failed = machine.failed();
        machine.fail(Fault::None);
        if first.is_err() {
            recover(home.path(), &later, &mut |_| true).unwrap();
        }
        assert_eq!(sorted(home.path()), want, "deed {n}");
        let aside = home.path().join("journal/set-aside");
        let aside: Vec<_> = fs::read_dir(aside).unwrap().collect();
        assert_eq!(aside.len(), 1, "deed {n}");
        let aside = aside[0].as_ref().unwrap().path().join("journal.db");
        assert_eq!(fs::read(aside).unwrap(), bytes, "deed {n}");
        if failed == 0 {
            break;
        }
    }
    println!("recovering: failed at each of {} deeds", n - 1);
    assert!(n > 20);
}

#[test]
fn restoring() {
    let base = with_backup();
    let all = sorted(base.path());
    let made = backup::list(base.path()).unwrap().remove(0);
    let later = writes::stamp(90);
    let mut n = 0;
    loop {
        n += 1;
        let home = home::copied(base.path());
        let machine = Machine::watch(home.path());
        machine.fail(Fault::Once(n, ffi::SQLITE_IOERR));
        let first = backup::restore(home.path(), &later, &made.name, &mut |_| true);
        let failed = machine.failed();
        machine.fail(Fault::None);
        match first {
            // What failed changed nothing.
            Err(_) => assert_eq!(sorted(home.path()), all, "deed {n}"),
            Ok(done) => {
                let found = sorted(home.path());
                assert_eq!(found.len() as u64, done.contents.entries, "deed {n}");
                assert!(found.iter().all(|line| all.contains(line)));
            }
        }
        if failed == 0 {
            break;
        }
    }
    println!("restoring: failed at each of {} deeds", n - 1);
    assert!(n > 20);
}

#[test]
fn a_file_cut_at_any_length_is_noticed_and_salvaged() {
    let base = with_backup();
    let all = sorted(base.path());
    let bytes = fs::read(base.path().join("journal/journal.db")).unwrap();
    for part in 0..40 {
        let home = home::copied(base.path());
        let cut = &bytes[..bytes.len() * part / 40];
        fs::write(home.path().join("journal/journal.db"), cut).unwrap();
        let noticed = home::whole(home.path()).is_err();
        assert!(noticed, "{} bytes", cut.len());
        let done = recover(home.path(), &writes::stamp(90), &mut |_| true).unwrap();
        assert_eq!(done.in_backup, BEFORE, "{} bytes", cut.len());
        let after = Journal::open(home.path(), &writes::stamp(90)).unwrap();
        let after = lines(&after);
        assert_eq!(after.len() as u64, done.in_backup + done.salvaged);
        assert!(after.iter().all(|line| all.contains(line)));
    }
}

#[test]
fn a_full_disk_is_said_and_nothing_is_lost() {
    let home = home::with_acts(BEFORE);
    let machine = Machine::watch(home.path());
    let mut journal = Journal::open(home.path(), &writes::stamp(0)).unwrap();
    let before = lines(&journal);
    machine.fail(Fault::Always(ffi::SQLITE_FULL));
    let error = writes::act(&mut journal, BEFORE).unwrap_err();
    assert_eq!(error.code(), "disk_full");
    let error = backup::make(&journal, &writes::stamp(50), &mut |_| true).unwrap_err();
    assert_eq!(error.code(), "disk_full");
    let other = lines(&journal);
    let stamp = writes::stamp(50);
    let error = journal.take_in(&stamp, other.iter().map(String::as_str));
    assert_eq!(error.unwrap_err().code(), "disk_full");
    assert_eq!(lines(&journal), before);
    machine.fail(Fault::None);
    writes::act(&mut journal, BEFORE).unwrap();
    drop(journal);
    let journal = home::whole(home.path()).unwrap();
    assert_eq!(journal.count().unwrap(), BEFORE + 1);
}

#[test]
fn a_locked_file_is_waited_for_then_said_and_nothing_is_lost() {
    let home = home::with_acts(BEFORE);
    let mut journal = home::opened(home.path());
    let before = lines(&journal);
    let other = rusqlite::Connection::open(home.path().join("journal/journal.db")).unwrap();
    other.execute_batch("BEGIN IMMEDIATE").unwrap();
    let error = writes::act(&mut journal, BEFORE).unwrap_err();
    assert_eq!(error.code(), "journal_busy");
    assert_eq!(lines(&journal), before);
    other.execute_batch("ROLLBACK").unwrap();
    writes::act(&mut journal, BEFORE).unwrap();
    assert_eq!(journal.count().unwrap(), BEFORE + 1);
}

#[test]
fn a_folder_that_cannot_be_written_is_said_and_nothing_is_lost() {
    let home = home::with_acts(BEFORE);
    let machine = Machine::watch(home.path());
    machine.fail(Fault::ReadOnly);
    let error = Journal::open(home.path(), &writes::stamp(0)).unwrap_err();
    assert_eq!(error.code(), "journal_read_only");
    machine.fail(Fault::None);
    let mut journal = home::whole(home.path()).unwrap();
    assert_eq!(journal.count().unwrap(), BEFORE);
    machine.fail(Fault::Always(ffi::SQLITE_READONLY));
    let error = writes::act(&mut journal, BEFORE).unwrap_err();
    assert_eq!(error.code(), "journal_read_only");
    machine.fail(Fault::None);
    writes::act(&mut journal, BEFORE).unwrap();
}

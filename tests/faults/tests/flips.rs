//! One byte changed in each of 200 places: it is found and named, or every
//! entry and every state is as it was. Then what is damaged is recovered. And
//! in a WAL that was left behind.

use plumule_faults::chance::Chance;
use plumule_faults::{home, writes};
use plumule_journal::content::{Content, PhotoTaken};
use plumule_journal::{Journal, Wish, backup, recover};
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use tempfile::TempDir;

const ACTS: u64 = 120;
const BACKUP_AFTER: u64 = 90;
const IN_DATABASE: u64 = 160;
const IN_PHOTOS: u64 = 40;
const IN_WAL: u64 = 80;

/// Bytes that stand for a photo, 3 to 5 kB.
fn photo(home: &Path, n: u64) -> String {
    let mut chance = Chance(n);
    let bytes: Vec<u8> = (0..3_000 + chance.below(2_000))
        .map(|_| chance.draw().to_le_bytes()[0])
        .collect();
    let digest = Sha256::digest(&bytes);
    let name: String = digest.iter().map(|byte| format!("{byte:02x}")).collect();
    fs::write(home.join("journal/photos").join(&name), bytes).unwrap();
    name
}

fn base() -> TempDir {
    let home = home::empty();
    let mut journal = Journal::open(home.path(), &writes::stamp(0)).unwrap();
    for n in 0..ACTS {
        if n == BACKUP_AFTER {
            backup::make(&journal, &writes::stamp(n), &mut |_| true).unwrap();
        }
        writes::act(&mut journal, n).unwrap();
        if n % 30 == 0 {
            let photo = photo(home.path(), n);
            let contents = vec![Content::PhotoTaken(PhotoTaken {
                photo,
                taken: None,
                about: None,
            })];
            let wish = Wish {
                contents,
                happened: None,
                hand: String::new(),
                confirmed: true,
            };
            journal.write(&writes::stamp(1_000 + n), wish).unwrap();
        }
    }
    home
}

/// Entries and states, all of them.
fn all(journal: &Journal) -> (Vec<String>, String) {
    let states = format!(
        "{:?} {:?} {:?} {:?}",
        journal.garden().unwrap(),
        journal.places().unwrap(),
        journal.packets().unwrap(),
        journal.living_trays(None).unwrap()
    );
    (journal.lines().unwrap(), states)
}

/// Changes the byte at a place to another.
fn flip(path: &Path, chance: &mut Chance) -> u64 {
    let mut bytes = fs::read(path).unwrap();
    let at = chance.below(bytes.len() as u64);
    bytes[at as usize] ^= 1 + chance.below(255) as u8;
    fs::write(path, bytes).unwrap();
    at
}

#[test]
fn a_flipped_byte_of_a_photo_is_found_and_named() {
    let base = base();
    let mut chance = Chance(6);
    let photos: Vec<_> = fs::read_dir(base.path().join("journal/photos"))
        .unwrap()
        .map(|file| file.unwrap().file_name().into_string().unwrap())
        .collect();
    for _ in 0..IN_PHOTOS {
        let home = home::copied(base.path());
        let name = &photos[chance.below(photos.len() as u64) as usize];
        flip(&home.path().join("journal/photos").join(name), &mut chance);
        let journal = Journal::open(home.path(), &writes::stamp(0)).unwrap();
        let findings = journal.check(&mut |_| true);
        assert_eq!(findings.found.len(), 1);
        assert_eq!(findings.found[0].code, "photo_altered");
        assert!(format!("{:?}", findings.found[0].args).contains(name));
    }
}

#[test]
fn a_flipped_byte_of_the_database_is_found_or_changes_nothing() {
    let base = base();
    let whole = all(&home::whole(base.path()).unwrap());
    let before: BTreeSet<_> = whole.0.iter().cloned().collect();
    let in_backup = backup::list(base.path()).unwrap().remove(0);
    let in_backup = backup::look_inside(base.path(), &in_backup, &mut |_| true).unwrap();
    let mut chance = Chance(5);
    let (mut at_opening, mut by_check, mut harmless) = (0, 0, 0);
    let (mut lossless, mut lost, mut most_lost) = (0, 0, 0);
    for _ in 0..IN_DATABASE {
        let home = home::copied(base.path());
        let at = flip(&home.path().join("journal/journal.db"), &mut chance);
        match Journal::open(home.path(), &writes::stamp(0)) {
            Err(error) => {
                let known = ["journal_damaged", "journal_newer", "not_a_journal"];
                assert!(known.contains(&error.code()), "at {at}: {error}");
                at_opening += 1;
            }
            Ok(journal) if journal.check(&mut |_| true).all_well() => {
                assert_eq!(all(&journal), whole, "at {at}");
                harmless += 1;
                continue;
            }
            Ok(_) => by_check += 1,
        }
        let done = recover(home.path(), &writes::stamp(2_000), &mut |_| true).unwrap();
        let journal = Journal::open(home.path(), &writes::stamp(2_000)).unwrap();
        let after: BTreeSet<_> = journal.lines().unwrap().into_iter().collect();
        assert!(
            after.is_subset(&before),
            "at {at}: an entry that was never written"
        );
        assert_eq!(done.in_backup, in_backup.entries);
        assert_eq!(done.entries, done.in_backup + done.salvaged);
        assert!(done.set_aside.is_some());
        let well = journal.check(&mut |_| true);
        let only_missing = |it: &plumule_journal::Finding| it.code == "entries_missing";
        assert!(well.found.iter().all(only_missing), "at {at}: {well:?}");
        let gone = before.len() - after.len();
        lossless += u32::from(gone == 0);
        lost += gone;
        most_lost = most_lost.max(gone);
    }
    println!(
        "{IN_DATABASE} flipped bytes: {at_opening} found at opening, {by_check} by the check, \
         {harmless} changed nothing; of {} entries ({} in the backup) {lossless} recoveries lost \
         none, all together {lost}, one at most {most_lost}",
        before.len(),
        in_backup.entries
    );
    // One byte is in one entry, and looking for lines gets past broken pages.
    assert!(most_lost <= 1, "{most_lost}");
}

/// What was confirmed last is in frames that look the same when power goes
/// while they are written; a changed byte there cannot be told from that.
#[test]
fn a_flipped_byte_of_a_wal_is_found_or_costs_at_most_the_last_act() {
    let open = home::empty();
    let mut journal = Journal::open(open.path(), &writes::stamp(0)).unwrap();
    for n in 0..40 {
        writes::act(&mut journal, n).unwrap();
    }
    let whole = journal.lines().unwrap();
    let before: BTreeSet<_> = whole.iter().cloned().collect();
    // As it is when the system ends the app: the WAL is still there.
    let base = home::copied(open.path());
    drop(journal);
    let mut chance = Chance(4);
    let (mut found, mut last_lost, mut harmless) = (0, 0, 0);
    for _ in 0..IN_WAL {
        let home = home::copied(base.path());
        fs::remove_file(home.path().join("journal/journal.db-shm")).unwrap();
        let at = flip(&home.path().join("journal/journal.db-wal"), &mut chance);
        match Journal::open(home.path(), &writes::stamp(0)) {
            Err(error) => {
                assert_eq!(error.code(), "journal_damaged", "at {at}");
                found += 1;
            }
            Ok(journal) => {
                let lines = journal.lines().unwrap();
                assert!(lines == whole || lines[..] == whole[..whole.len() - 1]);
                if lines == whole {
                    harmless += 1;
                } else {
                    last_lost += 1;
                }
                continue;
            }
        }
        recover(home.path(), &writes::stamp(2_000), &mut |_| true).unwrap();
        let journal = Journal::open(home.path(), &writes::stamp(2_000)).unwrap();
        let after: BTreeSet<_> = journal.lines().unwrap().into_iter().collect();
        assert!(after.is_subset(&before), "at {at}");
        assert!(
            before.len() - after.len() <= 1,
            "at {at}: {} left",
            after.len()
        );
    }
    println!(
        "{IN_WAL} flipped bytes of a WAL: {found} found at opening, {last_lost} cost the last \
         act, {harmless} changed nothing"
    );
    assert!(found > IN_WAL * 3 / 4, "{found}");
}

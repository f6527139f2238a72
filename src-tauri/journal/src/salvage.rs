//! What a damaged journal still gives: through SQLite as far as that goes,
//! then by looking for lines in the bytes of the file. An entry is taken only
//! with its hash, so nothing altered comes in.

use crate::entry::{Entry, MAX_LINE};
use crate::error::Error;
use crate::files;
use crate::finding::{Progress, Step, Watch};
use crate::id::DeviceId;
use crate::merge::Union;
use crate::store::open;
use crate::store::walk::{Found, last, walk};
use rusqlite::{Connection, OptionalExtension};
use serde::de::IgnoredAny;
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// How every line begins (`entry::Envelope`).
const LINE_BEGINS: &[u8] = b"{\"id\":\"";
/// A row's hash stands before its line with three ids, two numbers and a kind
/// in between: at most so many bytes.
const HASH_BEFORE: usize = 160;
/// How often the way through is told, entries.
const EVERY: u64 = 1_000;

/// What was salvaged.
#[derive(Debug, Default)]
pub(crate) struct Salvaged {
    /// Entries with the right hash, each once.
    pub read: u64,
    /// Of those, new to the journal they went into.
    pub new: u64,
    /// Lines whose hash is not theirs.
    pub altered: u64,
    /// Numbers that SQLite could not read, first and last.
    pub unread: Vec<(i64, i64)>,
}

/// Salvages from the journal in a folder, or from where it was set aside last
/// if it is not there any more, into a database. Works on a copy: reading a
/// file with a WAL would change it.
pub(crate) fn into(
    db: &mut Connection,
    journal: &Path,
    watch: &mut Watch,
) -> Result<Salvaged, Error> {
    let mut salvaged = Salvaged::default();
    let Some(source) = source(journal)? else {
        return Ok(salvaged);
    };
    let work = journal.join("salvage.part");
    files::remove_part(&work)?;
    let wal = with_ending(&work, "-wal");
    for (from, to) in [("journal.db", &work), ("journal.db-wal", &wal)] {
        let from = source.join(from);
        if from.exists() {
            files::copy(&from, to)?;
        }
    }
    let mut bytes = read(&work)?;
    bytes.extend(read(&wal)?);
    let lines = lines(&work, &bytes, &mut salvaged, watch);
    files::remove_part(&work)?;
    let lines = lines?;
    salvaged.read = u64::try_from(lines.len()).unwrap_or(u64::MAX);
    let tx = db.transaction()?;
    let nobody = DeviceId(uuid::Uuid::nil());
    let mut union = Union::into(&tx, nobody)?;
    union.lines(lines.iter().map(String::as_str))?;
    salvaged.new = union.finish()?.new;
    tx.commit()?;
    Ok(salvaged)
}

fn source(journal: &Path) -> Result<Option<PathBuf>, Error> {
    if journal.join("journal.db").exists() {
        return Ok(Some(journal.to_owned()));
    }
    files::last_set_aside(journal)
}

fn with_ending(path: &Path, ending: &str) -> PathBuf {
    let mut path = path.as_os_str().to_owned();
    path.push(ending);
    PathBuf::from(path)
}

fn read(path: &Path) -> Result<Vec<u8>, Error> {
    if path.exists() {
        fs::read(path).map_err(files::at(path))
    } else {
        Ok(Vec::new())
    }
}

/// The good lines of a file, in the order of arrival as far as known.
fn lines(
    path: &Path,
    bytes: &[u8],
    salvaged: &mut Salvaged,
    watch: &mut Watch,
) -> Result<Vec<String>, Error> {
    let mut good: BTreeSet<[u8; 32]> = BTreeSet::new();
    let mut lines = Vec::new();
    if let Ok(db) = open::tolerant(path) {
        through_sqlite(&db, &mut good, &mut lines, salvaged, watch)?;
    }
    for line in in_bytes(bytes) {
        let hash = Sha256::digest(&line).into();
        if good.insert(hash) {
            lines.push(line);
        }
    }
    Ok(lines)
}

fn through_sqlite(
    db: &Connection,
    good: &mut BTreeSet<[u8; 32]>,
    lines: &mut Vec<String>,
    salvaged: &mut Salvaged,
    watch: &mut Watch,
) -> Result<(), Error> {
    let of = u64::try_from(last(db)).unwrap_or(0);
    let step = Step::Salvage;
    let mut done: u64 = 0;
    let mut on = watch(Progress { step, done, of });
    let mut unread = BTreeSet::new();
    let mut met = BTreeSet::new();
    walk(db, &mut |found| {
        match found {
            Found::Unread(first, last) => unread.extend(first..=last),
            Found::Row(row) => {
                met.insert(row.nr);
                let entry = row.entry;
                match entry.filter(|entry| row.hash_right || hash_is_known(db, entry)) {
                    Some(entry) => {
                        good.insert(entry.hash());
                        lines.push(entry.line);
                    }
                    None => salvaged.altered += 1,
                }
            }
        }
        done += 1;
        on = on && (!done.is_multiple_of(EVERY) || watch(Progress { step, done, of }));
        on
    });
    // A damaged page can hide rows without an error; an index still has them.
    unread.extend(indexed(db).difference(&met));
    salvaged.unread = ranges(&unread);
    if on { Ok(()) } else { Err(Error::Cancelled) }
}

/// The numbers that an index has, as far as it can be read.
fn indexed(db: &Connection) -> BTreeSet<i64> {
    let mut numbers = BTreeSet::new();
    let sql = "SELECT nr FROM entries INDEXED BY entries_lamport";
    if let Ok(mut query) = db.prepare(sql)
        && let Ok(mut rows) = query.query([])
    {
        while let Ok(Some(row)) = rows.next() {
            numbers.extend(row.get::<_, i64>(0));
        }
    }
    numbers
}

/// Whether the index of the hashes has it, so that it is the row's own hash
/// that was damaged and not the line.
fn hash_is_known(db: &Connection, entry: &Entry) -> bool {
    db.query_row(
        "SELECT 1 FROM entries INDEXED BY sqlite_autoindex_entries_1 WHERE hash = ?1",
        [&entry.hash()[..]],
        |_| Ok(()),
    )
    .optional()
    .is_ok_and(|found| found.is_some())
}

/// Numbers as ranges, first and last.
fn ranges(numbers: &BTreeSet<i64>) -> Vec<(i64, i64)> {
    let mut ranges: Vec<(i64, i64)> = Vec::new();
    for number in numbers {
        match ranges.last_mut() {
            Some((_, last)) if *last + 1 == *number => *last = *number,
            _ => ranges.push((*number, *number)),
        }
    }
    ranges
}

/// Lines that stand whole in the bytes, with their hash before them.
fn in_bytes(bytes: &[u8]) -> Vec<String> {
    let mut lines = Vec::new();
    let mut from = 0;
    while let Some(start) = find(bytes, LINE_BEGINS, from) {
        from = start + 1;
        let end = bytes.len().min(start + MAX_LINE);
        let rest = bytes.get(start..end).unwrap_or_default();
        let mut json = serde_json::Deserializer::from_slice(rest).into_iter::<IgnoredAny>();
        if !matches!(json.next(), Some(Ok(_))) {
            continue;
        }
        let Some(Ok(line)) = rest.get(..json.byte_offset()).map(std::str::from_utf8) else {
            continue;
        };
        let before = bytes.get(start.saturating_sub(HASH_BEFORE)..start);
        let hash = Sha256::digest(line);
        if before.is_some_and(|before| find(before, &hash, 0).is_some())
            && Entry::parse(line).is_ok()
        {
            from = start + line.len();
            lines.push(line.to_owned());
        }
    }
    lines
}

fn find(bytes: &[u8], what: &[u8], from: usize) -> Option<usize> {
    let rest = bytes.get(from..)?;
    rest.windows(what.len())
        .position(|window| window == what)
        .map(|at| from + at)
}

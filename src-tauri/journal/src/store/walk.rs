//! Reading entries from a file that may be damaged: what can be read is, and
//! what cannot is told by its range.

use crate::entry::Entry;
use crate::store::add;
use rusqlite::types::ValueRef;
use rusqlite::{Connection, Row};

/// Rows read at once.
const CHUNK: i64 = 256;
/// No entry takes less of a file, bytes: its hash and three ids alone are 80.
const LEAST_BYTES: i64 = 80;

/// A row of the entries as it is in the file.
#[derive(Debug)]
pub(crate) struct Stored {
    /// Its number.
    pub nr: i64,
    /// What the line says; none if it is no entry.
    pub entry: Option<Entry>,
    /// The stored hash is the line's.
    pub hash_right: bool,
    /// Other columns that are not what the line says.
    pub differ: Vec<&'static str>,
}

/// What a walk comes upon.
#[derive(Debug)]
pub(crate) enum Found {
    /// A row.
    Row(Box<Stored>),
    /// Numbers that cannot be read, first and last.
    Unread(i64, i64),
}

/// The highest number there may be, by whatever still tells.
pub(crate) fn last(db: &Connection) -> i64 {
    told(db).min(most(db))
}

/// How many entries fit into the file.
fn most(db: &Connection) -> i64 {
    let ask = |sql| ask(db, sql).unwrap_or(0);
    ask("PRAGMA page_count").saturating_mul(ask("PRAGMA page_size")) / LEAST_BYTES
}

fn told(db: &Connection) -> i64 {
    let tells = [
        "SELECT nr FROM entries ORDER BY nr DESC LIMIT 1",
        "SELECT seq FROM sqlite_sequence WHERE name = 'entries'",
        "SELECT MAX(nr) FROM entries INDEXED BY entries_lamport",
    ];
    let told = tells.iter().filter_map(|sql| ask(db, sql)).max();
    told.unwrap_or(0)
}

fn ask(db: &Connection, sql: &str) -> Option<i64> {
    db.query_row(sql, [], |row| row.get(0)).ok()
}

/// Walks all entries in the order of their numbers, until told to stop.
pub(crate) fn walk(db: &Connection, each: &mut dyn FnMut(Found) -> bool) {
    let last = told(db);
    // Numbers that nothing vouches for are tried, as many as can be there.
    let mut untold = most(db);
    let mut from = 1;
    while from <= last {
        match next(db, from) {
            Ok(Some(nr)) if nr >= from => from = nr,
            Ok(_) => return,
            Err(_) if untold <= 0 => return,
            Err(_) => untold -= CHUNK,
        }
        let to = last.min(from.saturating_add(CHUNK - 1));
        if !range(db, from, to, each) {
            return;
        }
        from = to.saturating_add(1);
    }
}

/// The first number from another on: they may be far apart.
fn next(db: &Connection, from: i64) -> rusqlite::Result<Option<i64>> {
    db.prepare_cached("SELECT MIN(nr) FROM entries WHERE nr >= ?1")?
        .query_row([from], |row| row.get(0))
}

/// Reads a range from both ends, and what is between them in halves.
fn range(db: &Connection, from: i64, to: i64, each: &mut dyn FnMut(Found) -> bool) -> bool {
    let (front, whole) = read(db, from, to, "ASC");
    let reached = front.last().map_or(from, |row| row.nr + 1);
    if !front.into_iter().all(|row| each(Found::Row(Box::new(row)))) {
        return false;
    }
    if whole || reached > to {
        return true;
    }
    let (back, _) = read(db, reached, to, "DESC");
    let until = back.last().map_or(to, |row| row.nr - 1);
    let middle = reached + (until - reached) / 2;
    let between = if until <= reached {
        until < reached || each(Found::Unread(reached, until))
    } else {
        range(db, reached, middle, each) && range(db, middle + 1, until, each)
    };
    between
        && back
            .into_iter()
            .rev()
            .all(|row| each(Found::Row(Box::new(row))))
}

/// The rows of a range up to the first that cannot be read, and whether that
/// was all.
fn read(db: &Connection, from: i64, to: i64, order: &str) -> (Vec<Stored>, bool) {
    let mut rows = Vec::new();
    let sql = format!(
        "SELECT nr, hash, id, act, device, seq, lamport, kind, line FROM entries
         WHERE nr BETWEEN ?1 AND ?2 ORDER BY nr {order}"
    );
    let whole = (|| -> rusqlite::Result<bool> {
        let mut query = db.prepare_cached(&sql)?;
        let mut found = query.query([from, to])?;
        let mut last = None;
        while let Some(row) = found.next()? {
            let nr: i64 = row.get(0)?;
            let onward = last.is_none_or(|last| if order == "ASC" { nr > last } else { nr < last });
            if !onward || !(from..=to).contains(&nr) {
                return Ok(false);
            }
            last = Some(nr);
            rows.push(stored(nr, row)?);
        }
        Ok(true)
    })();
    (rows, whole.unwrap_or(false))
}

fn stored(nr: i64, row: &Row) -> rusqlite::Result<Stored> {
    let line = match row.get_ref(8)? {
        ValueRef::Text(bytes) => std::str::from_utf8(bytes).ok(),
        _ => None,
    };
    let entry = line.and_then(|line| Entry::parse(line).ok());
    let mut differ = Vec::new();
    let mut hash_right = false;
    if let Some(entry) = &entry {
        hash_right = row.get_ref(1)? == ValueRef::Blob(&entry.hash());
        let columns = [
            ("id", ValueRef::Blob(&add::blob(entry.id))),
            ("act", ValueRef::Blob(&add::blob(entry.act))),
            ("device", ValueRef::Blob(&add::device(entry.device))),
            ("seq", ValueRef::Integer(entry.seq)),
            ("lamport", ValueRef::Integer(entry.lamport)),
            ("kind", ValueRef::Text(entry.kind.as_bytes())),
        ];
        for (column, (name, value)) in (2..).zip(columns) {
            if row.get_ref(column)? != value {
                differ.push(name);
            }
        }
    }
    Ok(Stored {
        nr,
        entry,
        hash_right,
        differ,
    })
}

//! Adding an entry to the truth.

use crate::entry::Entry;
use crate::error::Error;
use crate::id::{DeviceId, EntryId};
use rusqlite::{CachedStatement, Connection, OptionalExtension};

/// The number of the next entry. Numbers follow one another: a line that is
/// there already must not use one up, as the number that AUTOINCREMENT gives
/// would be.
pub(crate) fn next(db: &Connection) -> Result<i64, Error> {
    Ok(db
        .prepare_cached("SELECT COALESCE(MAX(nr), 0) + 1 FROM entries")?
        .query_row([], |row| row.get(0))?)
}

/// Adds entries, one or many.
pub(crate) struct Adding<'c>(CachedStatement<'c>);

impl<'c> Adding<'c> {
    pub fn to(db: &'c Connection) -> Result<Self, Error> {
        Ok(Self(db.prepare_cached(include_str!("add.sql"))?))
    }

    /// Adds an entry under a number, with the hash of its line; false if the
    /// same line is there already.
    pub fn entry(&mut self, nr: i64, entry: &Entry, hash: &[u8; 32]) -> Result<bool, Error> {
        let added = self.0.execute(rusqlite::params![
            nr,
            &hash[..],
            blob(entry.id),
            blob(entry.act),
            device(entry.device),
            entry.seq,
            entry.lamport,
            entry.kind,
            entry.line,
        ])?;
        Ok(added == 1)
    }
}

/// Whether a line with this hash is there.
pub(crate) fn is_there(db: &Connection, hash: &[u8; 32]) -> Result<bool, Error> {
    Ok(number_of(db, hash)?.is_some())
}

/// The number of the line with this hash.
pub(crate) fn number_of(db: &Connection, hash: &[u8; 32]) -> Result<Option<i64>, Error> {
    Ok(db
        .prepare_cached("SELECT nr FROM entries WHERE hash = ?1")?
        .query_row([&hash[..]], |row| row.get(0))
        .optional()?)
}

/// An id as it is stored.
pub(crate) fn blob(id: EntryId) -> [u8; 16] {
    *id.0.as_bytes()
}

/// A device id as it is stored.
pub(crate) fn device(id: DeviceId) -> [u8; 16] {
    *id.0.as_bytes()
}

/// The last number the device gave.
pub(crate) fn last_seq(db: &Connection, of: DeviceId) -> Result<i64, Error> {
    Ok(db
        .prepare_cached("SELECT MAX(seq) FROM entries WHERE device = ?1")?
        .query_row([device(of)], |row| row.get::<_, Option<i64>>(0))?
        .unwrap_or(0))
}

/// The highest lamport seen.
pub(crate) fn highest_lamport(db: &Connection) -> Result<i64, Error> {
    Ok(db
        .prepare_cached("SELECT MAX(lamport) FROM entries")?
        .query_row([], |row| row.get::<_, Option<i64>>(0))?
        .unwrap_or(0))
}

/// Whether another entry has this device and number.
pub(crate) fn number_taken(db: &Connection, of: DeviceId, seq: i64) -> Result<bool, Error> {
    Ok(db
        .prepare_cached("SELECT 1 FROM entries WHERE device = ?1 AND seq = ?2 LIMIT 1")?
        .query_row(rusqlite::params![device(of), seq], |_| Ok(()))
        .optional()?
        .is_some())
}

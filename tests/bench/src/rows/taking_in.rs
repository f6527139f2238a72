//! Taking in another journal's entries against a bulk INSERT of the same rows.

use super::{Outcome, Row, paired, seconds};
use crate::world::{World, stamp};
use plumule_journal::Journal;
use rusqlite::{Connection, params};
use std::path::Path;
use tempfile::TempDir;

pub(super) const ENTRIES: usize = 100_000;

/// The first lines of a journal, and where they are taken in.
pub(super) struct Taking {
    folder: TempDir,
    lines: Vec<String>,
}

impl Taking {
    pub(super) fn of(world: &Path, most: usize) -> Outcome<Self> {
        let mut lines = Journal::open(world, &stamp(1))?.lines()?;
        lines.truncate(most);
        let folder = tempfile::tempdir()?;
        Ok(Self { folder, lines })
    }

    /// The seconds that an empty journal takes for them.
    pub(super) fn ours(&self) -> Outcome<f64> {
        let home = self.folder.path().join("ours");
        let mut journal = Journal::open(&home, &stamp(2))?;
        let lines = self.lines.iter().map(String::as_str);
        let took = seconds(|| Ok(journal.take_in(&stamp(2), lines)?))?;
        if journal.count()? != self.lines.len() as u64 {
            return Err("not all was taken in".into());
        }
        drop(journal);
        std::fs::remove_dir_all(home)?;
        Ok(took)
    }
}

pub fn rows(runs: usize, worlds: &Path) -> Outcome<Vec<Row>> {
    let from = World::of(50, 200).kept_in(worlds)?;
    let taking = Taking::of(&from, ENTRIES)?;
    if taking.lines.len() < ENTRIES {
        return Err(format!("only {} lines", taking.lines.len()).into());
    }
    let table = table(&from)?;
    let columns = columns(&from)?;
    let file = taking.folder.path().join("theirs");
    let ratios = paired(
        runs,
        || taking.ours(),
        || {
            let took = seconds(|| bulk(&file, &table, &columns))?;
            std::fs::remove_file(&file)?;
            Ok(took)
        },
    )?;
    Ok(vec![Row {
        name: "taking in 100,000 entries against a bulk INSERT",
        ratios,
        note: "the same table and indices, one transaction, synchronous = FULL".to_owned(),
    }])
}

/// A row of the table of entries.
type Columns = (Vec<u8>, Vec<u8>, Vec<u8>, Vec<u8>, i64, i64, String, String);

fn columns(home: &Path) -> Outcome<Vec<Columns>> {
    let db = Connection::open(home.join("journal/journal.db"))?;
    let mut query = db.prepare(&format!(
        "SELECT hash, id, act, device, seq, lamport, kind, line FROM entries ORDER BY nr LIMIT {ENTRIES}"
    ))?;
    let rows = query.query_map([], |row| {
        Ok((
            row.get(0)?,
            row.get(1)?,
            row.get(2)?,
            row.get(3)?,
            row.get(4)?,
            row.get(5)?,
            row.get(6)?,
            row.get(7)?,
        ))
    })?;
    Ok(rows.collect::<Result<_, _>>()?)
}

/// The table of entries with its indices, as the journal has them.
fn table(home: &Path) -> Outcome<String> {
    let db = Connection::open(home.join("journal/journal.db"))?;
    let mut query = db.prepare(
        "SELECT sql FROM sqlite_schema WHERE tbl_name = 'entries' AND sql IS NOT NULL
         ORDER BY type DESC",
    )?;
    let parts = query.query_map([], |row| row.get::<_, String>(0))?;
    Ok(parts.collect::<Result<Vec<_>, _>>()?.join(";\n"))
}

fn bulk(file: &Path, table: &str, rows: &[Columns]) -> Outcome<()> {
    let mut db = Connection::open(file)?;
    db.execute_batch("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;")?;
    db.execute_batch(table)?;
    let tx = db.transaction()?;
    {
        let mut insert = tx.prepare(
            "INSERT INTO entries (hash, id, act, device, seq, lamport, kind, line)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
        )?;
        for (hash, id, act, device, seq, lamport, kind, line) in rows {
            insert.execute(params![hash, id, act, device, seq, lamport, kind, line])?;
        }
    }
    Ok(tx.commit()?)
}

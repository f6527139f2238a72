//! One confirmed entry against one INSERT of its like by rusqlite alone, into
//! the same table of a copy of the same journal; both are on disk when they
//! answer.

use super::{Outcome, Row, median, seconds};
use crate::world::{World, copy, stamp};
use chrono::TimeDelta;
use plumule_journal::content::{Content, Felt};
use plumule_journal::id::TrayId;
use plumule_journal::stamp::Stamp;
use plumule_journal::words::Feel;
use plumule_journal::{Journal, Wish};
use rusqlite::{Connection, params};
use std::path::Path;
use tempfile::TempDir;

/// Writes of a run, of which the median counts. A disk is quick and slow by
/// turns, so one of ours and one of theirs follow each other.
const WRITES: usize = 60;

/// A copy of a journal, to write in.
pub(super) struct Ours {
    _folder: TempDir,
    journal: Journal,
    trays: Vec<TrayId>,
    number: usize,
}

impl Ours {
    pub(super) fn of(world: &Path) -> Outcome<Self> {
        let folder = tempfile::tempdir()?;
        copy(world, folder.path())?;
        let journal = Journal::open(folder.path(), &stamp(1))?;
        let trays = journal.living_trays(None)?;
        Ok(Self {
            _folder: folder,
            journal,
            trays: trays.iter().map(|tray| tray.described.tray).collect(),
            number: 0,
        })
    }

    /// The seconds that one entry takes, of one tray after the other.
    pub(super) fn write(&mut self) -> Outcome<f64> {
        self.number += 1;
        let tray = self.trays[self.number % self.trays.len()];
        seconds(|| Ok(self.journal.write(&later(self.number), felt(tray))?))
    }
}

pub fn rows(runs: usize, worlds: &Path) -> Outcome<Vec<Row>> {
    let world = World::of(1, 200).kept_in(worlds)?;
    let mut ours = Ours::of(&world)?;
    let folder = tempfile::tempdir()?;
    copy(&world, folder.path())?;
    let mut alone = Alone::open(folder.path())?;
    let mut ratios = Vec::new();
    // The first run only warms up.
    for run in 0..=runs {
        let (mut a, mut b) = (Vec::new(), Vec::new());
        for _ in 0..WRITES {
            a.push(ours.write()?);
            b.push(seconds(|| alone.insert())?);
        }
        if run > 0 {
            ratios.push(median(a) / median(b));
        }
    }
    Ok(vec![Row {
        name: "one confirmed entry against one INSERT",
        ratios,
        note: format!(
            "medians of {WRITES} writes each, in turn; a row of the same table of the same journal, synchronous = FULL"
        ),
    }])
}

/// A stamp of its own time, as a grower goes from tray to tray.
fn later(number: usize) -> Stamp {
    let stamp = stamp(number as u64);
    Stamp {
        now: stamp.now + TimeDelta::seconds(5 * number as i64),
        ..stamp
    }
}

fn felt(tray: TrayId) -> Wish {
    let felt = Felt {
        tray,
        feel: Some(Feel::Moist),
        water: None,
    };
    Wish {
        contents: vec![Content::Felt(felt)],
        happened: None,
        hand: String::new(),
        confirmed: true,
    }
}

/// The table of entries without what keeps it.
struct Alone {
    db: Connection,
    nr: i64,
    line: String,
}

impl Alone {
    fn open(home: &Path) -> Outcome<Self> {
        let db = Connection::open(home.join("journal/journal.db"))?;
        db.execute_batch("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;")?;
        let (nr, line) = db.query_row(
            "SELECT nr, line FROM entries WHERE kind = 'felt' ORDER BY nr DESC LIMIT 1",
            [],
            |row| Ok((row.get(0)?, row.get(1)?)),
        )?;
        Ok(Self { db, nr, line })
    }

    /// A row as new as an entry is: its hash anywhere, its numbers the last.
    fn insert(&mut self) -> Outcome<()> {
        self.nr += 1;
        let scattered = (self.nr as u64).wrapping_mul(0x9e37_79b9_7f4a_7c15);
        let mut hash = [0; 32];
        hash[..8].copy_from_slice(&scattered.to_be_bytes());
        let mut id = [0xff; 16];
        id[8..].copy_from_slice(&self.nr.to_be_bytes());
        self.db
            .prepare_cached(
                "INSERT INTO entries (hash, id, act, device, seq, lamport, kind, line)
                 VALUES (?1, ?2, ?2, zeroblob(16), ?3, ?3, 'felt', ?4)",
            )?
            .execute(params![hash, id, self.nr, self.line])?;
        Ok(())
    }
}

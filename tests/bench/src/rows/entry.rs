//! One confirmed entry against one INSERT by rusqlite alone, both on disk when
//! they answer.

use super::{Outcome, Row, median, paired, seconds};
use crate::world::{World, copy, stamp};
use plumule_journal::content::{Content, Felt};
use plumule_journal::words::Feel;
use plumule_journal::{Journal, Wish};
use rusqlite::{Connection, params};
use std::path::Path;

/// Writes a run, of which the median counts.
const WRITES: usize = 60;

pub fn rows(runs: usize, worlds: &Path) -> Outcome<Vec<Row>> {
    let folder = tempfile::tempdir()?;
    let home = folder.path().join("journal");
    copy(&World::of(1, 200).kept_in(worlds)?, &home)?;
    let mut journal = Journal::open(&home, &stamp(1))?;
    let trays = journal.living_trays(None)?;
    let line = "x".repeat(420);
    let alone = Connection::open(folder.path().join("alone.db"))?;
    alone.execute_batch(
        "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;
         CREATE TABLE entries (nr INTEGER PRIMARY KEY, hash BLOB NOT NULL UNIQUE, line TEXT NOT NULL);",
    )?;
    let mut number = 0_u64;
    let mut next = 0_u64;
    let ratios = paired(
        runs,
        || {
            let mut took = Vec::new();
            for _ in 0..WRITES {
                number += 1;
                let tray = trays[number as usize % trays.len()].described.tray;
                let felt = Felt {
                    tray,
                    feel: Some(Feel::Moist),
                    water: None,
                };
                let wish = Wish {
                    contents: vec![Content::Felt(felt)],
                    happened: None,
                    hand: String::new(),
                    confirmed: true,
                };
                took.push(seconds(|| Ok(journal.write(&stamp(number), wish)?))?);
            }
            Ok(median(took))
        },
        || {
            let mut took = Vec::new();
            for _ in 0..WRITES {
                next += 1;
                let mut hash = [0_u8; 32];
                hash[..8].copy_from_slice(&next.wrapping_mul(0x9e37_79b9_7f4a_7c15).to_be_bytes());
                took.push(seconds(|| {
                    Ok(alone
                        .prepare_cached("INSERT INTO entries (hash, line) VALUES (?1, ?2)")?
                        .execute(params![hash, line])?)
                })?);
            }
            Ok(median(took))
        },
    )?;
    Ok(vec![Row {
        name: "one confirmed entry against one INSERT",
        ratios,
        note: format!("medians of {WRITES} writes each, synchronous = FULL in both"),
    }])
}

//! Every line against its hash, its columns against the line, and the numbers
//! of each device without a gap.

use crate::audit::{Met, told};
use crate::error::Error;
use crate::finding::{Finding, Findings, Step, Watch};
use crate::id::DeviceId;
use crate::store::walk::{Found, Stored, last, walk};
use rusqlite::Connection;

/// How often the way through is told, entries.
const EVERY: u64 = 1_000;

/// Entries of a device that are not here, though later ones are.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Gap {
    /// The device that wrote them.
    pub device: DeviceId,
    /// The first number that is missing.
    pub first: i64,
    /// The last.
    pub last: i64,
}

pub(super) fn check(db: &Connection, findings: &mut Findings, met: &mut Met, watch: &mut Watch) {
    let of = u64::try_from(last(db)).unwrap_or(0);
    walk(db, &mut |found| {
        match found {
            Found::Unread(first, last) => findings.found.push(
                Finding::new("entries_unread")
                    .number("first", first)
                    .number("last", last),
            ),
            Found::Row(row) => {
                findings.entries += 1;
                if let Some(entry) = &row.entry {
                    met.entry(entry);
                }
                findings.found.extend(of_row(&row));
            }
        }
        !findings.entries.is_multiple_of(EVERY)
            || told(findings, watch, Step::Entries, findings.entries, of)
    });
    if findings.cancelled {
        return;
    }
    match gaps(db) {
        Ok(gaps) => findings.found.extend(gaps.into_iter().map(|gap| {
            Finding::new("entries_missing")
                .text("device", gap.device.to_string())
                .number("first", gap.first)
                .number("last", gap.last)
        })),
        Err(error) => findings
            .found
            .push(Finding::new("file_damaged").text("fault", error.to_string())),
    }
}

fn of_row(row: &Stored) -> Option<Finding> {
    if row.entry.is_none() {
        Some(Finding::new("entry_unreadable").number("entry", row.nr))
    } else if !row.hash_right {
        Some(Finding::new("entry_altered").number("entry", row.nr))
    } else if !row.differ.is_empty() {
        Some(
            Finding::new("entry_misfiled")
                .number("entry", row.nr)
                .text("columns", row.differ.join(", ")),
        )
    } else {
        None
    }
}

/// Numbers that each device skipped.
pub(crate) fn gaps(db: &Connection) -> Result<Vec<Gap>, Error> {
    let mut query = db.prepare("SELECT DISTINCT device, seq FROM entries ORDER BY device, seq")?;
    let mut rows = query.query([])?;
    let mut gaps = Vec::new();
    let mut at: Option<(DeviceId, i64)> = None;
    while let Some(row) = rows.next()? {
        let device = uuid::Uuid::from_slice(row.get_ref(0)?.as_blob().unwrap_or_default());
        let device = DeviceId(device.map_err(|error| Error::Damaged(error.to_string()))?);
        let seq: i64 = row.get(1)?;
        let before = at.filter(|(of, _)| *of == device).map_or(0, |(_, seq)| seq);
        if seq > before + 1 {
            gaps.push(Gap {
                device,
                first: before + 1,
                last: seq - 1,
            });
        }
        at = Some((device, seq));
    }
    Ok(gaps)
}

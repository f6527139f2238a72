//! Codes for labels: short for a pencil, with the mark of the device that
//! gave them.

use crate::error::Error;
use crate::id::DeviceId;
use crate::state::TrayState;
use crate::store::read;
use rusqlite::Connection;
use std::collections::BTreeSet;

/// Letters that are not mistaken for a digit or one another when written with
/// a pencil. Judgement.
const MARKS: &[u8; 16] = b"ACDEFHJKMNPRTWXY";
/// Numbers stay short: after this one they start again.
const LAST: u32 = 999;
/// A number is not given again while it is among this many trays last past:
/// their labels may still lie about.
const RECENT: usize = 100;

/// The next free code.
pub(crate) fn next(db: &Connection, device: DeviceId) -> Result<String, Error> {
    let mark = mark(device, &read::devices(db)?);
    let mut trays: Vec<TrayState> = read::living(db, "tray", i64::MIN)?;
    trays.extend(read::past::<TrayState>(db, "tray", RECENT)?);
    let used: BTreeSet<u32> = trays
        .iter()
        .filter_map(|tray| {
            let code = tray.described.code.trim().to_uppercase();
            code.strip_prefix(mark)?.parse().ok()
        })
        .collect();
    let highest = used
        .iter()
        .copied()
        .filter(|number| *number <= LAST)
        .max()
        .unwrap_or(0);
    let number = if highest < LAST {
        highest + 1
    } else {
        (1..u32::MAX)
            .find(|number| !used.contains(number))
            .unwrap_or(u32::MAX)
    };
    Ok(format!("{mark}{number}"))
}

/// A device's letter: by its id, moved on past those of the known devices
/// before it.
fn mark(device: DeviceId, known: &[DeviceId]) -> char {
    let mut all: BTreeSet<DeviceId> = known.iter().copied().collect();
    all.insert(device);
    let mut taken = BTreeSet::new();
    for one in all {
        let start = one
            .0
            .as_bytes()
            .iter()
            .fold(0_usize, |sum, byte| sum + usize::from(*byte));
        let letter = (0..MARKS.len())
            .filter_map(|step| MARKS.get((start + step) % MARKS.len()))
            .find(|letter| !taken.contains(*letter))
            .or_else(|| MARKS.get(start % MARKS.len()));
        if let Some(letter) = letter {
            if one == device {
                return char::from(*letter);
            }
            taken.insert(*letter);
        }
    }
    'A'
}

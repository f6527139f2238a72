//! Taking in another journal's lines: a set union, then what it touches is
//! folded anew. In any order, any number of times, the result is the same.

use crate::device::Device;
use crate::entry::Entry;
use crate::error::Error;
use crate::id::DeviceId;
use crate::stamp::Stamp;
use crate::store::{add, project};
use crate::wish::Report;
use rusqlite::{Connection, Transaction};

pub(crate) fn take_in<'a>(
    tx: Transaction,
    stamp: &Stamp,
    device: &Device,
    own: DeviceId,
    lines: impl Iterator<Item = &'a str>,
) -> Result<Report, Error> {
    let report = union(&tx, own, lines)?;
    // First: an identity too many does no harm, one shared by two copies does.
    if report.new_identity {
        device.renew(stamp)?;
    }
    tx.commit()?;
    Ok(report)
}

/// The union alone, inside a transaction.
pub(crate) fn union<'a>(
    db: &Connection,
    own: DeviceId,
    lines: impl Iterator<Item = &'a str>,
) -> Result<Report, Error> {
    let mut report = Report::default();
    let mut touched = project::Touched::new();
    for (number, line) in (1..).zip(lines) {
        let line = line.strip_suffix('\r').unwrap_or(line);
        if line.trim().is_empty() {
            continue;
        }
        let Ok(entry) = Entry::parse(line) else {
            report.damaged.push(number);
            continue;
        };
        let clash = entry.device == own && add::number_taken(db, entry.device, entry.seq)?;
        let Some(nr) = add::entry(db, &entry)? else {
            report.known += 1;
            continue;
        };
        report.new += 1;
        report.new_identity |= clash;
        report.unknown_kinds += u64::from(entry.content.is_none());
        for (subject, weighs) in project::entry(db, nr, &entry)? {
            *touched.entry(subject).or_default() |= weighs;
        }
    }
    project::refold_all(db, &touched)?;
    report.touched = project::subjects(&touched);
    Ok(report)
}

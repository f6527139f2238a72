//! Checking a journal from end to end: the file, every entry, what they add up
//! to, the photos. Nothing is changed.

mod entries;
mod photos;
mod projections;

pub use entries::Gap;
pub(crate) use entries::gaps;
pub(crate) use photos::on_disk;

use crate::content::Content;
use crate::entry::Entry;
use crate::error::Error;
use crate::finding::{Finding, Findings, Progress, Step, Watch};
use chrono::NaiveDate;
use rusqlite::Connection;
use std::collections::BTreeSet;
use std::path::Path;

/// Structural faults told at most; more do not help anyone.
const MOST_FAULTS: usize = 50;

/// What was met on the way through the entries.
#[derive(Debug, Default)]
pub(crate) struct Met {
    /// First and last day on which something happened.
    pub days: Option<(NaiveDate, NaiveDate)>,
    /// Photos that are named.
    pub photos: BTreeSet<String>,
}

impl Met {
    fn entry(&mut self, entry: &Entry) {
        let day = entry.happened.local.date();
        let (first, last) = self.days.unwrap_or((day, day));
        self.days = Some((first.min(day), last.max(day)));
        if let Some(Content::PhotoTaken(what)) = &entry.content {
            self.photos.insert(what.photo.clone());
        }
    }
}

/// The file and its entries, of a journal or a copy of one.
pub(crate) fn file(db: &Connection, findings: &mut Findings, watch: &mut Watch) -> Met {
    let mut met = Met::default();
    if told(findings, watch, Step::File, 0, 1) {
        structure(db, findings);
    }
    if told(findings, watch, Step::File, 1, 1) {
        entries::check(db, findings, &mut met, watch);
    }
    met
}

/// All of a journal.
pub(crate) fn all(db: &Connection, photos: &Path, watch: &mut Watch) -> Findings {
    let mut findings = Findings::default();
    let met = file(db, &mut findings, watch);
    if told(&mut findings, watch, Step::Projections, 0, 1) {
        projections::check(db, &mut findings);
    }
    if told(&mut findings, watch, Step::Projections, 1, 1) {
        photos::check(photos, &met.photos, &mut findings, watch);
    }
    findings
}

/// The structure of the file, by SQLite's own check.
fn structure(db: &Connection, findings: &mut Findings) {
    let faults = (|| -> Result<Vec<String>, Error> {
        let mut query = db.prepare(&format!("PRAGMA integrity_check({MOST_FAULTS})"))?;
        let rows = query.query_map([], |row| row.get::<_, String>(0))?;
        Ok(rows.collect::<Result<_, _>>()?)
    })();
    let faults = faults.unwrap_or_else(|error| vec![error.to_string()]);
    let faults = faults.into_iter().filter(|fault| fault != "ok");
    findings
        .found
        .extend(faults.map(|fault| Finding::new("file_damaged").text("fault", fault)));
}

/// Tells how far it is; false if it was or is now cancelled.
fn told(findings: &mut Findings, watch: &mut Watch, step: Step, done: u64, of: u64) -> bool {
    findings.cancelled = findings.cancelled || !watch(Progress { step, done, of });
    !findings.cancelled
}

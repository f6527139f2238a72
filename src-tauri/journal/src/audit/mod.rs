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
use crate::id::{DeviceId, EntryId};
use chrono::NaiveDate;
use rusqlite::Connection;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// Structural faults told at most; more do not help anyone.
const MOST_FAULTS: usize = 50;

/// What orders amendments of a root: the greatest holds.
type Order = (i64, DeviceId, i64, [u8; 32]);

/// What was met on the way through the entries.
#[derive(Debug, Default)]
pub(crate) struct Met {
    /// First and last day on which something happened.
    pub days: Option<(NaiveDate, NaiveDate)>,
    /// Photos by the entries that took them.
    taken: BTreeMap<EntryId, String>,
    /// What holds of amended entries, as far as it is a photo.
    amended: BTreeMap<EntryId, (Order, Option<String>)>,
}

impl Met {
    /// An entry on the way.
    pub fn entry(&mut self, entry: &Entry) {
        let day = entry.happened.local.date();
        let (first, last) = self.days.unwrap_or((day, day));
        self.days = Some((first.min(day), last.max(day)));
        match &entry.content {
            Some(Content::PhotoTaken(what)) => {
                self.taken.insert(entry.id, what.photo.clone());
            }
            Some(Content::Amended(what)) => {
                let order = (entry.lamport, entry.device, entry.seq, entry.hash());
                let photo = match what.content.as_deref() {
                    Some(Content::PhotoTaken(what)) => Some(what.photo.clone()),
                    _ => None,
                };
                let held = self.amended.get(&what.root);
                if held.is_none_or(|(before, _)| *before < order) {
                    self.amended.insert(what.root, (order, photo));
                }
            }
            _ => {}
        }
    }

    /// The photos that are named, without those that were withdrawn.
    pub fn photos(&self) -> BTreeSet<String> {
        let taken = self.taken.iter();
        taken
            .filter_map(|(entry, photo)| match self.amended.get(entry) {
                Some((_, amended)) => amended.clone(),
                None => Some(photo.clone()),
            })
            .collect()
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
        photos::check(photos, &met.photos(), &mut findings, watch);
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

//! Taking in another journal's lines: a set union, then what it touches is
//! folded anew. In any order, any number of times, the result is the same.

use crate::ahead::{Give, ahead};
use crate::entry::{Entry, Hashed};
use crate::error::Error;
use crate::id::DeviceId;
use crate::store::add::{self, Adding};
use crate::store::project;
use crate::wish::Report;
use rusqlite::Connection;
use std::sync::Arc;

/// A union in the making, inside a transaction that its caller commits.
pub(crate) struct Union<'c> {
    db: &'c Connection,
    adding: Adding<'c>,
    own: DeviceId,
    /// Number of the next entry that is new.
    next: i64,
    report: Report,
    batch: project::Batch<'c>,
}

impl<'c> Union<'c> {
    /// Into a journal of this identity.
    pub fn into(db: &'c Connection, own: DeviceId) -> Result<Self, Error> {
        Ok(Self {
            db,
            adding: Adding::to(db)?,
            own,
            next: add::next(db)?,
            report: Report::default(),
            batch: project::Batch::of_many(db)?,
        })
    }

    /// What it goes into.
    pub fn db(&self) -> &'c Connection {
        self.db
    }

    /// An entry, with the hash of its line; whether it is new.
    pub fn entry(&mut self, entry: &Arc<Entry>, hash: &[u8; 32]) -> Result<bool, Error> {
        let (db, report) = (self.db, &mut self.report);
        let clash = entry.device == self.own && add::number_taken(db, entry.device, entry.seq)?;
        if !self.adding.entry(self.next, entry, hash)? {
            report.known += 1;
            return Ok(false);
        }
        report.new += 1;
        report.new_identity |= clash;
        report.unknown_kinds += u64::from(entry.content.is_none());
        match report.kinds.get_mut(&entry.kind) {
            Some(count) => *count += 1,
            None => drop(report.kinds.insert(entry.kind.clone(), 1)),
        }
        self.batch.entry(self.next, entry)?;
        self.next += 1;
        Ok(true)
    }

    /// Lines, numbered from 1; damaged ones are reported and left out.
    pub fn lines<'a>(&mut self, lines: impl Iterator<Item = &'a str> + Send) -> Result<(), Error> {
        let ends = |line: &'a str| line.strip_suffix('\r').unwrap_or(line);
        let read = |give: Give<(u64, Option<Hashed>)>| {
            for (number, line) in (1..).zip(lines.map(ends)) {
                let entry = Entry::hashed(line).ok();
                if !line.trim().is_empty() && !give((number, entry), line.len()) {
                    break;
                }
            }
            Ok(())
        };
        ahead(read, |(number, entry)| match entry {
            Some((entry, hash)) => self.entry(&entry, &hash).map(drop),
            None => {
                self.report.damaged.push(number);
                Ok(())
            }
        })
    }

    /// Folds what it touched.
    pub fn finish(self) -> Result<Report, Error> {
        let mut report = self.report;
        report.touched = self.batch.finish()?;
        Ok(report)
    }
}

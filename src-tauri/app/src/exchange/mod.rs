//! Parts of the journal for other programs: tables, a calendar, a report to
//! print. The whole of it is the journal's archive.

mod calendar;
mod report;
mod season;
mod tables;

use crate::App;
use crate::error::AppError;
use crate::picture::Picture;
use crate::words::{Units, plain_text, render};
use crate::{say::Arg, say::Say};
use chrono::NaiveDate;
use plumule_journal::stamp::Stamp;

/// A file for another program, whole in memory.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Exported {
    /// What to call it.
    pub name: String,
    /// What is in it.
    pub bytes: Vec<u8>,
}

impl App {
    /// A part of the journal as a file: `sowings`, `packets` or `readings`
    /// (CSV, RFC 4180), `calendar` (iCalendar, RFC 5545) or `report` (HTML).
    ///
    /// # Errors
    /// If there is no such part or the journal cannot be read.
    pub fn export(&self, stamp: &Stamp, part: &str) -> Result<Exported, AppError> {
        let zone = self.zone(stamp)?;
        let today = stamp.now.with_timezone(&zone).date_naive();
        let (ending, bytes) = match part {
            "sowings" => ("csv", tables::sowings(&self.journal)?),
            "packets" => ("csv", tables::packets(&self.journal)?),
            "readings" => ("csv", tables::readings(&self.journal)?),
            "calendar" => {
                let picture = Picture::of_the_living(&self.journal, stamp)?;
                let units = self.units()?;
                ("ics", calendar::due(&picture, stamp, units))
            }
            "report" => {
                let units = self.units()?;
                ("html", report::season(&self.journal, today, units)?)
            }
            _ => return Err(AppError::bad_request(part)),
        };
        Ok(Exported {
            name: format!("plumule-{part}-{today}.{ending}"),
            bytes,
        })
    }
}

/// A typed value in words.
fn said(arg: Arg, units: Units, today: NaiveDate) -> String {
    render(&Say::new("export-as-it-is").with("text", arg), units, today)
}

/// A message without arguments.
fn plain(key: &str, units: Units) -> String {
    plain_text(key, units.language)
}

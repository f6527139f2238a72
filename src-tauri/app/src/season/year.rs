//! How a garden counts its years.

use chrono::{Datelike, NaiveDate};
use plumule_journal::{Error, Journal};

/// The first month of a year in the south: midwinter, so that a summer is not
/// cut in two (judgement).
const SOUTH_FROM: u32 = 7;

/// Of the calendar in the north; from winter to winter in the south.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Years {
    southern: bool,
}

impl Years {
    /// # Errors
    /// If the database fails.
    pub(crate) fn of(journal: &Journal) -> Result<Self, Error> {
        let latitude = journal.garden()?.described.and_then(|it| it.latitude);
        Ok(Self {
            southern: latitude.is_some_and(|latitude| latitude < 0.0),
        })
    }

    /// The one that a day lies in, by the number of the year it begins in.
    pub(crate) fn year_of(self, day: NaiveDate) -> i32 {
        let before = self.southern && day.month() < SOUTH_FROM;
        day.year() - i32::from(before)
    }

    /// `2026`, or `2026/27`.
    pub(crate) fn name(self, year: i32) -> String {
        if self.southern {
            format!("{year}/{:02}", (year + 1).rem_euclid(100))
        } else {
            year.to_string()
        }
    }
}

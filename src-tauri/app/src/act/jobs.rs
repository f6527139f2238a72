//! Jobs put off and dismissed.

use super::{Made, Maker};
use crate::acts::Until;
use crate::error::AppError;
use crate::job_key;
use chrono::{Days, NaiveDate, NaiveDateTime};
use plumule_journal::content::{Content, JobDismissed, JobKey, JobPutOff};

impl Maker<'_> {
    pub(super) fn put_off(&self, job: &str, until: Until) -> Result<Made, AppError> {
        let job = key(job)?;
        let today = self.local.date();
        let until = match until {
            Until::NextRound => self.next_round(),
            Until::Tomorrow => self.morning_of(after(today)),
            Until::Day(day) => self.morning_of(day),
        };
        Ok(Made::one(Content::JobPutOff(JobPutOff { job, until })))
    }

    /// The garden's next round time, of morning or evening.
    fn next_round(&self) -> NaiveDateTime {
        let today = self.local.date();
        [self.morning_of(today), today.and_time(self.garden.evening)]
            .into_iter()
            .filter(|round| *round > self.local)
            .min()
            .unwrap_or_else(|| self.morning_of(after(today)))
    }

    fn morning_of(&self, day: NaiveDate) -> NaiveDateTime {
        day.and_time(self.garden.morning)
    }
}

fn after(day: NaiveDate) -> NaiveDate {
    day.checked_add_days(Days::new(1)).unwrap_or(day)
}

pub(super) fn dismiss(job: &str) -> Result<Made, AppError> {
    Ok(Made::one(Content::JobDismissed(JobDismissed {
        job: key(job)?,
    })))
}

fn key(text: &str) -> Result<JobKey, AppError> {
    job_key::parse(text).ok_or_else(|| AppError::bad_request(text))
}

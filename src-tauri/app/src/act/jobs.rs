//! Jobs put off and dismissed.

use super::{Made, Maker};
use crate::acts::Until;
use crate::error::AppError;
use crate::picture::Picture;
use crate::{job_key, rounds};
use chrono::TimeDelta;
use plumule_journal::content::{Content, JobDismissed, JobKey, JobPutOff};

impl Maker<'_> {
    pub(super) fn put_off(&self, job: &str, until: Until) -> Result<Made, AppError> {
        let job = key(job)?;
        // The rounds are a matter of the garden alone.
        let garden = Picture {
            garden: self.journal.garden()?,
            ..Picture::default()
        };
        let today = self.local.date();
        let until = match until {
            Until::NextRound => rounds::next_round(&garden, self.local + TimeDelta::seconds(1)),
            Until::Tomorrow => rounds::morning(&garden, today.succ_opt().unwrap_or(today)),
            Until::Day(day) => rounds::morning(&garden, day),
        };
        Ok(Made::one(Content::JobPutOff(JobPutOff { job, until })))
    }
}

pub(super) fn dismiss(job: &str) -> Result<Made, AppError> {
    Ok(Made::one(Content::JobDismissed(JobDismissed {
        job: key(job)?,
    })))
}

fn key(text: &str) -> Result<JobKey, AppError> {
    job_key::parse(text).ok_or_else(|| AppError::bad_request(text))
}

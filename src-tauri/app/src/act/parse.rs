//! Ids and words as the UI sends them.

use crate::error::AppError;
use crate::view::{PlantsRef, RangeView};
use chrono::NaiveTime;
use plumule_journal::content::{MonthDay, RangeC};
use plumule_journal::subject::Plants;
use std::str::FromStr;

/// An id or a word of a closed set.
pub(crate) fn known<T: FromStr>(text: &str) -> Result<T, AppError> {
    text.parse().map_err(|_| AppError::bad_request(text))
}

pub(crate) fn maybe<T: FromStr>(text: Option<&str>) -> Result<Option<T>, AppError> {
    text.map(known).transpose()
}

pub(crate) fn plants(plants: &PlantsRef) -> Result<Plants, AppError> {
    Ok(match plants {
        PlantsRef::Sowing(id) => Plants::Sowing(known(id)?),
        PlantsRef::Batch(id) => Plants::Batch(known(id)?),
    })
}

pub(crate) fn range(range: RangeView) -> RangeC {
    RangeC {
        min_c: range.min_c,
        max_c: range.max_c,
    }
}

/// `HH:MM`.
pub(crate) fn time(text: &str) -> Result<NaiveTime, AppError> {
    NaiveTime::parse_from_str(text.trim(), "%H:%M").map_err(|_| AppError::of_text("bad_time", text))
}

/// `MM-DD`; empty is none.
pub(crate) fn month_day(text: Option<&str>) -> Result<Option<MonthDay>, AppError> {
    let Some(text) = text.map(str::trim).filter(|text| !text.is_empty()) else {
        return Ok(None);
    };
    let read = || {
        let (month, day) = text.split_once('-')?;
        let (month, day) = (month.parse().ok()?, day.parse().ok()?);
        // A leap year, so that 29 February is a day too.
        chrono::NaiveDate::from_ymd_opt(2000, month, day)?;
        Some(MonthDay { month, day })
    };
    read()
        .map(Some)
        .ok_or_else(|| AppError::of_text("bad_day", text))
}

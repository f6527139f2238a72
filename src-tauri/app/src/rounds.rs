//! The round times of a garden.

use crate::picture::Picture;
use chrono::{Datelike, NaiveDate, NaiveDateTime, NaiveTime};

/// Months with an evening round, when nights may freeze and days may bake:
/// March to May, in the south September to November.
const EVENING_MONTHS: [u32; 3] = [3, 4, 5];

/// A night as cold as this may bring frost to the ground, °C (judgement).
const FROST_NEAR_C: f64 = 3.0;

/// Hour of the morning's round unless one is set.
const MORNING_HOUR: i64 = 8;

/// Hour of the evening's round unless one is set.
const EVENING_HOUR: i64 = 18;

/// The day's first round.
pub(crate) fn morning(picture: &Picture, day: NaiveDate) -> NaiveDateTime {
    let described = picture.garden.described.as_ref();
    day.and_time(described.map_or(hour(MORNING_HOUR), |described| described.morning))
}

/// The day's evening round, if it is the season for one or a cold night is
/// ahead, and it is not the same as the morning's.
pub(crate) fn evening(picture: &Picture, day: NaiveDate) -> Option<NaiveDateTime> {
    let at = evening_of(picture, day);
    let month = month_in_the_north(picture, day);
    let wanted = EVENING_MONTHS.contains(&month) || cold_night(picture, day);
    (wanted && at > morning(picture, day)).then_some(at)
}

/// When the evening's round is gathered on a day that has one.
pub(crate) fn evening_of(picture: &Picture, day: NaiveDate) -> NaiveDateTime {
    let described = picture.garden.described.as_ref();
    day.and_time(described.map_or(hour(EVENING_HOUR), |described| described.evening))
}

/// Somebody said that the night after a day may bring frost.
fn cold_night(picture: &Picture, day: NaiveDate) -> bool {
    let nights = picture.garden.nights.iter();
    let mut of_day = nights.filter(|night| night.night == day);
    of_day.any(|night| night.low_c <= FROST_NEAR_C)
}

/// The month with the same season in the northern hemisphere.
pub(crate) fn month_in_the_north(picture: &Picture, day: NaiveDate) -> u32 {
    if picture.southern() {
        (day.month() + 5) % 12 + 1
    } else {
        day.month()
    }
}

/// The first round at or after a moment.
pub(crate) fn next_round(picture: &Picture, from: NaiveDateTime) -> NaiveDateTime {
    let today = from.date();
    let evening = evening(picture, today);
    let rounds = [Some(morning(picture, today)), evening];
    let later = rounds.into_iter().flatten().find(|round| *round >= from);
    later.unwrap_or_else(|| morning(picture, today.succ_opt().unwrap_or(today)))
}

/// The last round of the same day at or before a moment, else the moment: what
/// is done on a round counts from it, however long the round took.
pub(crate) fn round_begun(picture: &Picture, at: NaiveDateTime) -> NaiveDateTime {
    let morning = Some(morning(picture, at.date()));
    let rounds = [evening(picture, at.date()), morning];
    let begun = rounds.into_iter().flatten().find(|round| *round <= at);
    begun.unwrap_or(at)
}

fn hour(hour: i64) -> NaiveTime {
    NaiveTime::MIN + chrono::TimeDelta::hours(hour)
}

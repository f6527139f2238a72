//! Frost, nights, and coming back.

use super::garden::some;
use super::{Check, place, refuse, refuse_with};
use crate::content::{CameBack, FrostReckoned, FrostSpread, NightForecast};
use crate::error::{Error, Value};
use chrono::TimeDelta;

/// What a forecast of a night, or the threshold of a frost, may be, °C.
/// Judgement.
const NIGHT_C: (f64, f64) = (-40.0, 40.0);

/// Days from 15 July to the ends of the halves of a year, and as many days as
/// dates in a half can be apart.
const HALF_DAYS: f64 = 184.0;

/// More years than any thermometer was read.
const MAX_YEARS: u32 = 400;

/// A night further ahead than this has no forecast, days. Judgement.
const NIGHTS_AHEAD: i64 = 15;

pub(super) fn night(check: &Check, what: &NightForecast) -> Result<(), Error> {
    celsius(what.low_c)?;
    let ahead = what.night - check.happened.local.date();
    if ahead > TimeDelta::days(NIGHTS_AHEAD) || ahead < TimeDelta::days(-1) {
        return refuse_with("night_out_of_range", [("day", Value::Day(what.night))]);
    }
    what.place.map_or(Ok(()), |id| place(check, id).map(drop))
}

pub(super) fn frost(what: &FrostReckoned) -> Result<(), Error> {
    celsius(what.threshold_c)?;
    if what.last_day < what.first_day {
        return refuse("ends_before_it_starts");
    }
    if what.spring.is_none() && what.autumn.is_none() {
        return refuse("frost_nothing_reckoned");
    }
    [what.spring, what.autumn]
        .into_iter()
        .flatten()
        .try_for_each(spread)
}

fn spread(what: FrostSpread) -> Result<(), Error> {
    some(what.years, MAX_YEARS)?;
    some(what.full_years, MAX_YEARS)?;
    let dates = (-HALF_DAYS..=HALF_DAYS).contains(&what.mean_day)
        && (0.0..=HALF_DAYS).contains(&what.deviation_days);
    if !dates || what.years > what.full_years {
        return refuse("frost_out_of_range");
    }
    Ok(())
}

fn celsius(value: f64) -> Result<(), Error> {
    if !(NIGHT_C.0..=NIGHT_C.1).contains(&value) {
        return refuse_with(
            "night_temperature_out_of_range",
            [
                ("least", Value::Celsius(NIGHT_C.0)),
                ("most", Value::Celsius(NIGHT_C.1)),
            ],
        );
    }
    Ok(())
}

/// Only from days away can one come back.
pub(super) fn came_back(check: &Check, what: &CameBack) -> Result<(), Error> {
    let garden = crate::store::read::state(check.db, crate::subject::Subject::Garden)?;
    let away = match garden {
        Some(crate::fold::State::Garden(garden)) => garden.away,
        _ => Vec::new(),
    };
    if !check.correcting && !away.iter().any(|away| away.to >= what.on) {
        return refuse("not_away");
    }
    Ok(())
}

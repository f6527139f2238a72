//! What is said on the round: feeling, readings, heat off, jobs.

use super::{AHEAD_DAYS, Check, known, place, refuse, refuse_with, usable_tray};
use crate::content::{Felt, HeatBack, HeatOff, JobKey, RangeC, ReadingTaken, Shown};
use crate::error::{Error, Question, Value};
use crate::store::read;
use chrono::Duration;

/// Below and above this no tray is sown or watched, °C. Judgement.
const LOWEST_C: f64 = -40.0;
const HIGHEST_C: f64 = 60.0;
/// A mean this far from the last, or from what is usual, is asked about, °C.
/// Judgement.
const WILD_C: f64 = 20.0;
/// A reading older than this says nothing about today, days. Judgement.
const RECENT_DAYS: i64 = 7;

/// A temperature a tray can stand in.
fn temperature(celsius: f64) -> Result<(), Error> {
    if (LOWEST_C..=HIGHEST_C).contains(&celsius) {
        return Ok(());
    }
    refuse_with(
        "reading_out_of_range",
        [
            ("temperature", Value::Celsius(celsius)),
            ("lowest", Value::Celsius(LOWEST_C)),
            ("highest", Value::Celsius(HIGHEST_C)),
        ],
    )
}

/// A lowest and a highest.
pub(super) fn range(range: RangeC) -> Result<(), Error> {
    temperature(range.min_c)?;
    temperature(range.max_c)?;
    if range.min_c > range.max_c {
        return refuse_with(
            "min_above_max",
            [
                ("lowest", Value::Celsius(range.min_c)),
                ("highest", Value::Celsius(range.max_c)),
            ],
        );
    }
    Ok(())
}

pub(super) fn felt(check: &Check, what: &Felt) -> Result<(), Error> {
    if what.feel.is_none() && what.water.is_none() {
        return refuse("felt_nothing");
    }
    usable_tray(check, what.tray)
}

pub(super) fn reading(check: &mut Check, what: &ReadingTaken) -> Result<(), Error> {
    let place = place(check, what.place)?;
    match what.shown {
        Shown::LowHigh { min_c, max_c } => range(RangeC { min_c, max_c })?,
        Shown::Now { temperature_c } => temperature(temperature_c)?,
    }
    let to = check.happened.instant();
    let from = to - Duration::days(RECENT_DAYS);
    let last = read::last_reading(
        check.db,
        what.place,
        what.of,
        from.timestamp_millis(),
        to.timestamp_millis(),
    )?;
    let mean = what.shown.mean_c();
    let usual = place.described.usual;
    let (before, wild) = match last {
        Some(last) => (last.mean_c(), (mean - last.mean_c()).abs() > WILD_C),
        None => (
            f64::midpoint(usual.min_c, usual.max_c),
            mean < usual.min_c - WILD_C || mean > usual.max_c + WILD_C,
        ),
    };
    if wild {
        check.questions.push(
            Question::new("reading_differs")
                .with("place", Value::Text(place.described.name))
                .with("temperature", Value::Celsius(mean))
                .with("before", Value::Celsius(before)),
        );
    }
    Ok(())
}

pub(super) fn heat_off(check: &Check, what: &HeatOff) -> Result<(), Error> {
    place(check, what.place)?;
    if what.to.is_some_and(|to| to < what.from) {
        return refuse("ends_before_it_starts");
    }
    // Local times of the garden; the zone differs by less than a day more.
    let ahead = what.from - check.stamp.now.naive_utc();
    if ahead > Duration::days(AHEAD_DAYS + 1) {
        return refuse_with("in_the_future", [("day", Value::Day(what.from.date()))]);
    }
    what.meanwhile.map_or(Ok(()), range)
}

/// The heat of a place came back: it was off by then, and nobody said until
/// when.
pub(super) fn heat_back(check: &Check, what: &HeatBack) -> Result<(), Error> {
    let place = place(check, what.place)?;
    let ahead = what.at - check.stamp.now.naive_utc();
    if ahead > Duration::days(AHEAD_DAYS + 1) {
        return refuse_with("in_the_future", [("day", Value::Day(what.at.date()))]);
    }
    let mut stretches = place.heat_off.iter();
    let open = stretches.any(|off| off.to.is_none() && off.from <= what.at);
    if !open && !check.correcting {
        return refuse_with(
            "heat_not_off",
            [("name", Value::Text(place.described.name))],
        );
    }
    what.meanwhile.map_or(Ok(()), range)
}

pub(super) fn job(check: &Check, job: &JobKey) -> Result<(), Error> {
    if job.kind.is_empty() || job.kind.len() > 60 {
        return refuse("job_malformed");
    }
    known(check, job.subject)
}

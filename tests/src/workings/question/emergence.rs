//! How fast, how far, and on which dates.

use super::{Answer, crop, progress};
use chrono::{Days, NaiveDate};
use plumule_agronomy::{Error, Outlook, TimeFactor, emerged_share, forecast};
use serde::Deserialize;
use serde_json::json;

/// How many days of progress a forecast shows.
const SHOWN_DAYS: usize = 30;

#[derive(Deserialize)]
pub(super) struct Rate {
    crop: String,
    temperature_c: f64,
}

pub(super) fn rate(asked: Rate) -> Answer {
    let rate = crop(&asked.crop)?.curve.rate_per_day(asked.temperature_c);
    Ok(json!({"rate_per_day": rate}))
}

#[derive(Deserialize)]
pub(super) struct DayProgress {
    crop: String,
    min_c: f64,
    max_c: f64,
}

pub(super) fn day_progress(asked: DayProgress) -> Answer {
    let progress = progress(crop(&asked.crop)?, (asked.min_c, asked.max_c))?;
    Ok(json!({"progress": progress}))
}

#[derive(Deserialize)]
pub(super) struct Share {
    progress: f64,
    time_factor: f64,
    sigma: f64,
}

pub(super) fn share(asked: Share) -> Answer {
    let share = emerged_share(asked.progress, asked.time_factor, asked.sigma)?;
    Ok(json!({"share": share}))
}

#[derive(Deserialize)]
pub(super) struct Forecast {
    crop: String,
    seeds: u32,
    beta: (f64, f64),
    tau: f64,
    sigma: f64,
    #[serde(default)]
    mean_ln_s: f64,
    sown: NaiveDate,
    days: Vec<(f64, f64)>,
}

pub(super) fn dates(asked: Forecast) -> Answer {
    let crop = crop(&asked.crop)?;
    let increments: Vec<f64> = asked
        .days
        .iter()
        .map(|day| progress(crop, *day))
        .collect::<Result<_, _>>()?;
    let found = forecast(
        increments.iter().copied(),
        asked.seeds,
        Outlook::new(asked.beta.0, asked.beta.1)?,
        TimeFactor::new(asked.mean_ln_s, asked.tau)?,
        asked.sigma,
    )?;
    let date = |offset: Option<u32>| {
        let Some(offset) = offset else {
            return Ok(None);
        };
        let date = asked.sown.checked_add_days(Days::new(u64::from(offset)));
        date.map(Some).ok_or(Error::DateOutOfRange)
    };
    let last = increments.last().copied().unwrap_or_default();
    let progress_by_day: Vec<f64> = increments
        .into_iter()
        .chain(std::iter::repeat(last))
        .scan(0.0, |sum, gained| {
            *sum += gained;
            Some(*sum)
        })
        .take(SHOWN_DAYS)
        .collect();
    Ok(json!({
        "first": date(found.first)?,
        "d10": date(found.d10)?,
        "d50": date(found.d50)?,
        "d90": date(found.d90)?,
        "progress_by_day": progress_by_day,
    }))
}

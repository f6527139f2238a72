//! Frost, the sun and warmth over days.

use super::Answer;
use chrono::NaiveDate;
use plumule_agronomy::{
    Half, Hemisphere, MonthDay, day_length_hours, degree_days, extraterrestrial_radiation,
    frost_date,
};
use serde::Deserialize;
use serde_json::json;

#[derive(Deserialize)]
pub(super) struct Day {
    latitude: f64,
    date: NaiveDate,
}

pub(super) fn day_length(asked: Day) -> Answer {
    Ok(json!({"hours": day_length_hours(asked.latitude, asked.date)?}))
}

pub(super) fn radiation(asked: Day) -> Answer {
    let radiation = extraterrestrial_radiation(asked.latitude, asked.date)?;
    Ok(json!({"mj_m2_day": radiation}))
}

#[derive(Deserialize)]
pub(super) struct DegreeDays {
    min_c: f64,
    max_c: f64,
    lower_c: f64,
    upper_c: f64,
}

pub(super) fn warmth(asked: DegreeDays) -> Answer {
    let found = degree_days(asked.min_c, asked.max_c, asked.lower_c, asked.upper_c)?;
    Ok(json!({"degree_days": found}))
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum AskedHalf {
    Spring,
    Autumn,
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum AskedHemisphere {
    #[serde(alias = "northern")]
    North,
    #[serde(alias = "southern")]
    South,
}

#[derive(Deserialize)]
pub(super) struct Frost {
    minima: Vec<(NaiveDate, f64)>,
    threshold_c: f64,
    chance: f64,
    half: AskedHalf,
    hemisphere: AskedHemisphere,
}

pub(super) fn frost(asked: Frost) -> Answer {
    let half = match asked.half {
        AskedHalf::Spring => Half::Spring,
        AskedHalf::Autumn => Half::Autumn,
    };
    let hemisphere = match asked.hemisphere {
        AskedHemisphere::North => Hemisphere::North,
        AskedHemisphere::South => Hemisphere::South,
    };
    let (date, years) = frost_date(
        &asked.minima,
        asked.threshold_c,
        asked.chance,
        half,
        hemisphere,
    )?;
    Ok(json!({"month_day": date.as_ref().map(MonthDay::to_string), "years": years}))
}

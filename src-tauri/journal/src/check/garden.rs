//! The garden and places.

use super::round::range;
use super::texts::{MAX_NAME, name};
use super::{number, refuse, refuse_with};
use crate::content::{Away, GardenDescribed, MonthDay, PlaceDescribed};
use crate::error::{Error, Value};
use chrono::NaiveDate;

/// Degrees: beyond the polar circles a day of the season may have no end.
const MAX_LATITUDE: f64 = 66.0;
/// More seeds than any packet holds. Judgement.
pub(super) const MAX_NUMBER: u32 = 1_000_000;

pub(super) fn garden(what: &GardenDescribed) -> Result<(), Error> {
    if what.zone.parse::<chrono_tz::Tz>().is_err() {
        return refuse_with("zone_unknown", [("zone", Value::Text(what.zone.clone()))]);
    }
    if let Some(latitude) = what.latitude
        && !(-MAX_LATITUDE..=MAX_LATITUDE).contains(&latitude)
    {
        return refuse_with("latitude_out_of_range", [("most", number(MAX_LATITUDE))]);
    }
    // A leap year, so that 29 February is a day.
    let day = |day: MonthDay| NaiveDate::from_ymd_opt(2024, day.month, day.day).is_some();
    if ![what.last_frost, what.first_frost]
        .into_iter()
        .flatten()
        .all(day)
    {
        return refuse("month_day_unknown");
    }
    Ok(())
}

pub(super) fn away(what: &Away) -> Result<(), Error> {
    if what.to < what.from {
        return refuse("ends_before_it_starts");
    }
    Ok(())
}

pub(super) fn place(what: &PlaceDescribed) -> Result<(), Error> {
    name(&what.name, MAX_NAME)?;
    range(what.usual)?;
    what.unheated.map_or(Ok(()), range)
}

/// At least one, and no more than can be.
pub(super) fn some(value: u32, most: u32) -> Result<(), Error> {
    match value {
        0 => refuse("number_zero"),
        value if value > most => refuse_with("number_too_large", [("most", number(most))]),
        _ => Ok(()),
    }
}

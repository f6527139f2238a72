//! The garden, places and packets.

use super::round::range;
use super::texts::{MAX_NAME, name, optional_name, text};
use super::{Check, number, refuse, refuse_with};
use crate::content::{Away, GardenDescribed, MonthDay, PacketDescribed, PlaceDescribed};
use crate::error::{Error, Value};
use chrono::{Datelike, NaiveDate};

/// Degrees: beyond the polar circles a day of the season may have no end.
const MAX_LATITUDE: f64 = 66.0;
/// Seed older than this is in a museum. Judgement.
const FIRST_YEAR: i32 = 1900;
/// Sow-by dates lie no further ahead than this, years. Judgement.
const AHEAD_YEARS: i32 = 50;
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

pub(super) fn packet(check: &Check, what: &PacketDescribed) -> Result<(), Error> {
    name(&what.crop, MAX_NAME)?;
    optional_name(&what.variety, MAX_NAME)?;
    optional_name(&what.source, MAX_NAME)?;
    text(&what.note)?;
    let this_year = check.stamp.now.year();
    years(what.packed_year, this_year + 1)?;
    years(what.harvested_year, this_year + 1)?;
    years(what.sow_by.map(|day| day.year()), this_year + AHEAD_YEARS)?;
    if let Some(stated) = what.stated_germination
        && !(0.0..=1.0).contains(&stated)
    {
        return refuse("germination_out_of_range");
    }
    what.seeds.map_or(Ok(()), |seeds| some(seeds, MAX_NUMBER))
}

fn years(year: Option<i32>, last: i32) -> Result<(), Error> {
    match year {
        Some(year) if !(FIRST_YEAR..=last).contains(&year) => refuse_with(
            "year_out_of_range",
            [("first", number(FIRST_YEAR)), ("last", number(last))],
        ),
        _ => Ok(()),
    }
}

/// At least one, and no more than can be.
pub(super) fn some(value: u32, most: u32) -> Result<(), Error> {
    match value {
        0 => refuse("number_zero"),
        value if value > most => refuse_with("number_too_large", [("most", number(most))]),
        _ => Ok(()),
    }
}

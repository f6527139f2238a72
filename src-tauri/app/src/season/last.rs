//! Until when a sowing is of use.

use super::odds::hemisphere;
use crate::picture::Picture;
use chrono::{Datelike, NaiveDate};
use plumule_agronomy::{Crop, Hardiness, end_of_growth, last_useful_sowing};
use plumule_journal::content::MonthDay;

/// The last useful day to sow a crop in the season that a sowing is for. None
/// where the garden has no frost date (for hardy crops: no latitude), where the
/// crop is not gathered in its first year, and for a sowing that was made after
/// that day, so not for this season.
pub(crate) fn last_sowing(picture: &Picture, crop: &Crop, sown: NaiveDate) -> Option<NaiveDate> {
    let garden = picture.garden.described.as_ref()?;
    let maturity = crop.maturity?;
    let end = |year| match crop.hardiness {
        Hardiness::Hardy => end_of_growth(garden.latitude?, year).ok()?,
        Hardiness::HalfHardy | Hardiness::Tender => in_year(garden.first_frost?, year),
    };
    let year = sown.year();
    let end = (year..=year + 1).filter_map(end).find(|end| *end > sown)?;
    let (quickest, _) = maturity.days;
    let last = last_useful_sowing(
        end,
        quickest,
        maturity.from,
        crop.weeks_to_raise,
        hemisphere(picture),
        crop.ripens_after_equinox,
    );
    last.ok().filter(|last| *last >= sown)
}

/// A day of any year in a year; 29 February is the 28th where there is none.
pub(crate) fn in_year(day: MonthDay, year: i32) -> Option<NaiveDate> {
    NaiveDate::from_ymd_opt(year, day.month, day.day)
        .or_else(|| NaiveDate::from_ymd_opt(year, day.month, day.day.checked_sub(1)?))
}

//! When to sow and set out, and until when it is of use.

use crate::{Error, Hemisphere, MaturityFrom, day_length_hours};
use chrono::{Datelike, Days, NaiveDate};

/// Under so many hours of daylight nothing grows on (common practice).
const GROWING_HOURS: f64 = 10.0;

/// What ripening takes longer after the autumn equinox, in days (common
/// practice).
const AUTUMN_DAYS: f64 = 14.0;

/// Weeks that any plan may span (judgement).
const WEEKS: std::ops::RangeInclusive<f64> = -150.0..=150.0;

/// From a first day to a last.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Window {
    /// The first day.
    pub first: NaiveDate,
    /// The last day, not before the first.
    pub last: NaiveDate,
}

/// The days on which plants go outdoors: the first and last of the crop's weeks
/// after the average last frost (below 0 before it).
///
/// # Errors
///
/// Weeks that are not numbers, too many, or the wrong way round; a date past the
/// end of the calendar.
///
/// ```
/// # use plumule_agronomy::set_out_window;
/// # use chrono::NaiveDate;
/// let day = |month, day| NaiveDate::from_ymd_opt(2026, month, day).unwrap();
/// // Hardy: two to four weeks before the last frost.
/// let window = set_out_window(day(4, 29), (-4.0, -2.0))?;
/// assert_eq!((window.first, window.last), (day(4, 1), day(4, 15)));
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn set_out_window(last_frost: NaiveDate, weeks: (f64, f64)) -> Result<Window, Error> {
    check_weeks(weeks)?;
    Ok(Window {
        first: after(last_frost, weeks.0 * 7.0)?,
        last: after(last_frost, weeks.1 * 7.0)?,
    })
}

/// The days on which to sow what is to be set out in a window: from the longest
/// time of raising before its first day to the shortest before its last. A crop
/// sown where it is to grow (`None`) is sown in the window itself.
///
/// # Errors
///
/// Weeks under 0, not numbers, too many, or the wrong way round; a date past the
/// end of the calendar.
///
/// ```
/// # use plumule_agronomy::{Window, sowing_window};
/// # use chrono::NaiveDate;
/// let day = |month, day| NaiveDate::from_ymd_opt(2026, month, day).unwrap();
/// let set_out = Window { first: day(5, 6), last: day(5, 20) };
/// let sow = sowing_window(set_out, Some((5.0, 7.0)))?;
/// assert_eq!((sow.first, sow.last), (day(3, 18), day(4, 15)));
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn sowing_window(set_out: Window, weeks_to_raise: Option<(f64, f64)>) -> Result<Window, Error> {
    let (least, most) = weeks_to_raise.unwrap_or((0.0, 0.0));
    check_raising((least, most))?;
    Ok(Window {
        first: after(set_out.first, -most * 7.0)?,
        last: after(set_out.last, -least * 7.0)?,
    })
}

/// The last day on which sowing is of use: the end of the season less the days
/// to maturity, less 14 where that is between the autumn and the spring equinox or
/// the crop's main harvest is, less the shortest time of raising where maturity is counted from
/// planting out.
///
/// `end` is the first frost for what frost hurts, [`end_of_growth`] for what is
/// hardy.
///
/// # Errors
///
/// Days to maturity outside 0 to 1000, weeks as in [`sowing_window`], a date past
/// the end of the calendar.
///
/// ```
/// # use plumule_agronomy::{Hemisphere, MaturityFrom, last_useful_sowing};
/// # use chrono::NaiveDate;
/// let day = |month, day| NaiveDate::from_ymd_opt(2026, month, day).unwrap();
/// // 60 days from sowing and 14 for autumn before a frost on 1 October.
/// let last = last_useful_sowing(day(10, 1), 60.0, MaturityFrom::Sowing, None, Hemisphere::North, false)?;
/// assert_eq!(last, day(7, 19));
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn last_useful_sowing(
    end: NaiveDate,
    days_to_maturity: f64,
    counted_from: MaturityFrom,
    weeks_to_raise: Option<(f64, f64)>,
    hemisphere: Hemisphere,
    ripens_after_equinox: bool,
) -> Result<NaiveDate, Error> {
    if !(0.0..=1000.0).contains(&days_to_maturity) {
        return Err(Error::Duration("days to maturity", days_to_maturity));
    }
    let (least, most) = weeks_to_raise.unwrap_or((0.0, 0.0));
    check_raising((least, most))?;
    let raising = match counted_from {
        MaturityFrom::Sowing => 0.0,
        MaturityFrom::PlantingOut => least * 7.0,
    };
    let slow = if ripens_after_equinox || in_dark_half(end, hemisphere) {
        AUTUMN_DAYS
    } else {
        0.0
    };
    after(end, -(days_to_maturity + slow + raising).ceil())
}

/// The first day after midsummer of a year with under 10 hours of daylight (north:
/// of that year; south: after the December of the year before); `None` near the
/// equator, where there is none.
///
/// # Errors
///
/// A latitude beyond ±90, a year outside the calendar.
///
/// ```
/// # use plumule_agronomy::end_of_growth;
/// let end = end_of_growth(51.5, 2026)?.unwrap();
/// assert_eq!(end.format("%B").to_string(), "October");
/// assert_eq!(end_of_growth(10.0, 2026)?, None);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn end_of_growth(latitude: f64, year: i32) -> Result<Option<NaiveDate>, Error> {
    let midsummer = if latitude >= 0.0 {
        NaiveDate::from_ymd_opt(year, 6, 21)
    } else {
        NaiveDate::from_ymd_opt(year.saturating_sub(1), 12, 21)
    };
    let midsummer = midsummer.ok_or(Error::DateOutOfRange)?;
    for day in 0..184 {
        let date = after(midsummer, f64::from(day))?;
        if day_length_hours(latitude, date)? < GROWING_HOURS {
            return Ok(Some(date));
        }
    }
    Ok(None)
}

/// Between the autumn and the spring equinox.
fn in_dark_half(date: NaiveDate, hemisphere: Hemisphere) -> bool {
    let northern_summer = ((3, 21)..=(9, 22)).contains(&(date.month(), date.day()));
    northern_summer == (hemisphere == Hemisphere::South)
}

fn check_weeks((first, last): (f64, f64)) -> Result<(), Error> {
    for weeks in [first, last] {
        if !WEEKS.contains(&weeks) {
            return Err(Error::Duration("weeks", weeks));
        }
    }
    if first > last {
        return Err(Error::Duration("weeks", last));
    }
    Ok(())
}

fn check_raising(weeks: (f64, f64)) -> Result<(), Error> {
    if weeks.0 < 0.0 {
        return Err(Error::Duration("weeks", weeks.0));
    }
    check_weeks(weeks)
}

/// The date so many days after (below 0: before), to the nearest day.
fn after(date: NaiveDate, days: f64) -> Result<NaiveDate, Error> {
    let whole = Days::new(days.abs().round() as u64);
    let found = if days < 0.0 {
        date.checked_sub_days(whole)
    } else {
        date.checked_add_days(whole)
    };
    found.ok_or(Error::DateOutOfRange)
}

//! Odds of frost from daily minima.

use crate::error::check_probability;
use crate::{Error, normal};
use chrono::{Datelike, Days, NaiveDate};
use std::collections::BTreeMap;

/// Under so many years with frost there are no odds.
pub(crate) const LEAST_YEARS: usize = 5;

/// A half-year with less than this share of its days on record is left out.
const LEAST_COVER: f64 = 0.9;

/// No date of a half lies further from 15 July.
const HALF_DAYS: f64 = 184.0;

/// Where the halves part.
const MIDDLE: (u32, u32) = (7, 15);

/// The minima of a thermometer that can be believed, in °C.
const MINIMA_C: std::ops::RangeInclusive<f64> = -100.0..=60.0;

/// Which frost is asked about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Half {
    /// The last of spring.
    Spring,
    /// The first of autumn.
    Autumn,
}

/// On which side of the equator.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Hemisphere {
    /// Spring comes before 15 July.
    North,
    /// Spring comes before 15 January.
    South,
}

/// A day of any year.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct MonthDay {
    /// 1 to 12.
    pub month: u32,
    /// 1 to 31; 29 February is never given.
    pub day: u32,
}

impl std::fmt::Display for MonthDay {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:02}-{:02}", self.month, self.day)
    }
}

/// When the last frost of spring or the first of autumn comes: a normal date,
/// in the share of years that have one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FrostOdds {
    half: Half,
    hemisphere: Hemisphere,
    /// Mean day, counted from 15 July.
    mean: f64,
    /// Its sample standard deviation.
    deviation: f64,
    /// Half-years with a frost and a full record.
    years: usize,
    /// Half-years with a full record.
    full_years: usize,
}

impl FrostOdds {
    /// Odds from daily minima in °C, in any order; of several for a day the
    /// lowest holds. A frost is a minimum at or under `threshold_c`.
    ///
    /// The year is parted at 15 July and 15 January, both the last days of a
    /// half: in the north spring ends in July, in the south in January. Of each
    /// half the last (spring) or first (autumn) day of frost counts. Halves with
    /// under 90 % of their days on record are left out. Days are counted from 15
    /// July, so that leap days do not move a date.
    ///
    /// # Errors
    ///
    /// A threshold or minimum that no thermometer shows; fewer than 5 halves with
    /// a frost and a full record.
    ///
    /// ```
    /// # use plumule_agronomy::{FrostOdds, Half, Hemisphere};
    /// # use chrono::{Datelike, NaiveDate};
    /// // Six autumns with frost from 10 October on.
    /// let minima: Vec<(NaiveDate, f64)> = NaiveDate::from_ymd_opt(2019, 1, 1).unwrap().iter_days()
    ///     .take_while(|date| date.year() < 2025)
    ///     .map(|date| (date, if (date.month(), date.day()) >= (10, 10) { -1.0 } else { 6.0 }))
    ///     .collect();
    /// let odds = FrostOdds::from_minima(&minima, 0.0, Half::Autumn, Hemisphere::North)?;
    /// assert_eq!((odds.years(), odds.share_of_years()), (6, 1.0));
    /// assert_eq!(odds.chance(NaiveDate::from_ymd_opt(2026, 10, 20).unwrap()), 1.0);
    /// assert_eq!(odds.date_at(0.1)?.unwrap().to_string(), "10-10");
    /// # Ok::<(), plumule_agronomy::Error>(())
    /// ```
    pub fn from_minima(
        minima: &[(NaiveDate, f64)],
        threshold_c: f64,
        half: Half,
        hemisphere: Hemisphere,
    ) -> Result<Self, Error> {
        let mut lowest: BTreeMap<NaiveDate, f64> = BTreeMap::new();
        for &(date, minimum) in minima.iter().chain([&(NaiveDate::MIN, threshold_c)]) {
            if !MINIMA_C.contains(&minimum) {
                return Err(Error::Temperature(minimum));
            }
            lowest
                .entry(date)
                .and_modify(|low| *low = low.min(minimum))
                .or_insert(minimum);
        }
        lowest.remove(&NaiveDate::MIN);

        let first_half = (half == Half::Spring) == (hemisphere == Hemisphere::North);
        // (days on record, last or first frost) by the year of the 15 July.
        let mut halves: BTreeMap<i32, (usize, Option<i64>)> = BTreeMap::new();
        for (date, minimum) in lowest {
            let Some((year, day)) = day_of_half(date, first_half) else {
                continue;
            };
            let (days, frost) = halves.entry(year).or_default();
            *days += 1;
            if minimum <= threshold_c && (half == Half::Spring || frost.is_none()) {
                *frost = Some(day);
            }
        }
        let full: Vec<Option<i64>> = halves
            .into_iter()
            .filter(|(year, (days, _))| {
                *days as f64 >= LEAST_COVER * days_in_half(*year, first_half)
            })
            .map(|(_, (_, frost))| frost)
            .collect();
        let frosts: Vec<f64> = full.iter().flatten().map(|day| *day as f64).collect();
        let years = frosts.len();
        if years < LEAST_YEARS {
            return Err(Error::TooFewYears(years));
        }
        let mean = frosts.iter().sum::<f64>() / years as f64;
        let squares: f64 = frosts.iter().map(|day| (day - mean).powi(2)).sum();
        Ok(Self {
            half,
            hemisphere,
            mean,
            deviation: (squares / (years as f64 - 1.0)).sqrt(),
            years,
            full_years: full.len(),
        })
    }

    /// The odds of a record that was reckoned before, by what
    /// [`Self::mean_day`], [`Self::deviation_days`], [`Self::years`] and
    /// [`Self::full_years`] gave of it.
    ///
    /// # Errors
    ///
    /// A day or deviation that is not a number or beyond half a year; fewer than
    /// 5 years with a frost, or more than there are full years.
    pub fn from_spread(
        half: Half,
        hemisphere: Hemisphere,
        (mean_day, deviation_days): (f64, f64),
        years: usize,
        full_years: usize,
    ) -> Result<Self, Error> {
        if !(-HALF_DAYS..=HALF_DAYS).contains(&mean_day) {
            return Err(Error::Duration("mean day of frost", mean_day));
        }
        if !(0.0..=HALF_DAYS).contains(&deviation_days) {
            return Err(Error::Duration("deviation of frosts", deviation_days));
        }
        if years < LEAST_YEARS || years > full_years {
            return Err(Error::TooFewYears(years));
        }
        Ok(Self {
            half,
            hemisphere,
            mean: mean_day,
            deviation: deviation_days,
            years,
            full_years,
        })
    }

    /// Mean day of the frosts, counted from 15 July.
    pub fn mean_day(&self) -> f64 {
        self.mean
    }

    /// Their sample standard deviation, days.
    pub fn deviation_days(&self) -> f64 {
        self.deviation
    }

    /// Half-years with a full record, with or without a frost.
    pub fn full_years(&self) -> usize {
        self.full_years
    }

    /// The average last or first frost of the years that have one: the mean day,
    /// rounded to the safe side.
    pub fn average(&self) -> MonthDay {
        let day = match self.half {
            Half::Spring => (self.mean - 1e-9).ceil(),
            Half::Autumn => (self.mean + 1e-9).floor(),
        };
        self.day_of_year(day as i64)
    }

    /// How many half-years with a frost and a full record the odds rest on.
    pub fn years(&self) -> usize {
        self.years
    }

    /// The share of years that had a frost in the half.
    pub fn share_of_years(&self) -> f64 {
        self.years as f64 / self.full_years as f64
    }

    /// The chance, 0 to 1, of a frost after (spring) or before (autumn) a date.
    pub fn chance(&self, date: NaiveDate) -> f64 {
        let first_half = (self.half == Half::Spring) == (self.hemisphere == Hemisphere::North);
        let day = match day_of_half(date, first_half) {
            Some((_, day)) => day as f64,
            // The other half of the year lies wholly after, or before.
            None => match self.half {
                Half::Spring => f64::INFINITY,
                Half::Autumn => f64::NEG_INFINITY,
            },
        };
        let past = match self.half {
            Half::Spring => self.mean - day,
            Half::Autumn => day - self.mean,
        };
        let share = if self.deviation > 0.0 {
            normal::cdf(past / self.deviation)
        } else if past > 0.0 {
            1.0
        } else {
            0.0
        };
        self.share_of_years() * share
    }

    /// The date from which (spring) or until which (autumn) the chance of a frost
    /// after or before it is at most `chance`, rounded to the safe side and held
    /// to the half. `None` where frosts are so rare that it is so on every day.
    ///
    /// # Errors
    ///
    /// A chance not strictly between 0 and 1.
    pub fn date_at(&self, chance: f64) -> Result<Option<MonthDay>, Error> {
        check_probability("chance of frost", chance)?;
        let share = chance / self.share_of_years();
        if share >= 1.0 {
            return Ok(None);
        }
        let z = normal::quantile(share);
        // A date that is met to rounding is met.
        let day = match self.half {
            Half::Spring => (self.mean - self.deviation * z - 1e-9).ceil(),
            Half::Autumn => (self.mean + self.deviation * z + 1e-9).floor(),
        };
        Ok(Some(self.day_of_year(day as i64)))
    }

    /// A day counted from 15 July, held to the half.
    fn day_of_year(&self, day: i64) -> MonthDay {
        let first_half = (self.half == Half::Spring) == (self.hemisphere == Hemisphere::North);
        let (first, last) = if first_half { (-180, 0) } else { (1, 184) };
        month_day(day.clamp(first, last))
    }
}

/// The date at which the chance of a later frost in spring, or of an earlier one
/// in autumn, is `chance`, and the number of years used: [`FrostOdds`] in one.
///
/// # Errors
///
/// As [`FrostOdds::from_minima`] and [`FrostOdds::date_at`].
///
/// ```
/// # use plumule_agronomy::{Half, Hemisphere, frost_date};
/// # use chrono::{Datelike, NaiveDate};
/// // Six springs, each with its last frost on 20 April.
/// let minima: Vec<(NaiveDate, f64)> = NaiveDate::from_ymd_opt(2019, 1, 1).unwrap().iter_days()
///     .take_while(|date| date.year() < 2025)
///     .map(|date| (date, if (date.month(), date.day()) <= (4, 20) { -1.0 } else { 6.0 }))
///     .collect();
/// let (date, years) = frost_date(&minima, 0.0, 0.1, Half::Spring, Hemisphere::North)?;
/// assert_eq!((date.unwrap().to_string().as_str(), years), ("04-20", 6));
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn frost_date(
    minima: &[(NaiveDate, f64)],
    threshold_c: f64,
    chance: f64,
    half: Half,
    hemisphere: Hemisphere,
) -> Result<(Option<MonthDay>, usize), Error> {
    let odds = FrostOdds::from_minima(minima, threshold_c, half, hemisphere)?;
    Ok((odds.date_at(chance)?, odds.years()))
}

/// The year of the 15 July that a date belongs to and the days since it, where
/// the date lies in the half asked for.
fn day_of_half(date: NaiveDate, first_half: bool) -> Option<(i32, i64)> {
    let month_day = (date.month(), date.day());
    let in_first = ((1, 16)..=(7, 15)).contains(&month_day);
    if in_first != first_half {
        return None;
    }
    let year = if month_day < (1, 16) {
        date.year() - 1
    } else {
        date.year()
    };
    let middle = NaiveDate::from_ymd_opt(year, 7, 15)?;
    Some((year, (date - middle).num_days()))
}

fn days_in_half(year: i32, first_half: bool) -> f64 {
    let leap = NaiveDate::from_ymd_opt(year, 2, 29).is_some();
    match (first_half, leap) {
        (true, true) => 182.0,
        (true, false) => 181.0,
        (false, _) => 184.0,
    }
}

/// The month and day so many days from 15 July, in years without a leap day.
fn month_day(days: i64) -> MonthDay {
    let (month, day) = MIDDLE;
    let date = NaiveDate::from_ymd_opt(2001, month, day).and_then(|middle| {
        if days < 0 {
            middle.checked_sub_days(Days::new(days.unsigned_abs()))
        } else {
            middle.checked_add_days(Days::new(days.unsigned_abs()))
        }
    });
    date.map_or(MonthDay { month, day }, |date| MonthDay {
        month: date.month(),
        day: date.day(),
    })
}

//! The temperature of a place on a day: what was read, else what is usual.
//!
//! A reading of the lowest and highest taken before noon gives its highest to
//! the day before and its lowest to its own day; taken later, both to its own
//! day. So a day may know only one of the two; the other is carried over from
//! up to three days before, else usual. Where a day has readings of compost,
//! they hold, and those of the air only fill gaps: seeds lie in compost.

use crate::picture::Picture;
use chrono::{Days, NaiveDate, NaiveDateTime, Timelike};
use plumule_agronomy::mean_from_reading_now;
use plumule_journal::content::{RangeC, Shown};
use plumule_journal::id::PlaceId;
use plumule_journal::state::{PlaceState, Reading};
use plumule_journal::words::Medium;
use std::collections::BTreeMap;

/// Hour of the day before which the highest shown is yesterday's.
const NOON: u32 = 12;

/// Days for which a last reading holds.
const CARRY_DAYS: u64 = 3;

/// Days to come are the mean of so many last days …
const LAST_DAYS: u64 = 7;

/// … if at least so many of them have readings.
const LEAST_READ: usize = 3;

/// What the thermometers of a garden tell of its places.
pub(crate) struct Temperatures<'a> {
    places: BTreeMap<PlaceId, Record<'a>>,
}

struct Record<'a> {
    place: &'a PlaceState,
    days: BTreeMap<NaiveDate, Known>,
}

/// What readings tell of a day.
#[derive(Clone, Copy, Debug, Default)]
struct Known {
    min_c: Option<f64>,
    max_c: Option<f64>,
}

/// The readings that count for a day.
#[derive(Default)]
struct DayReadings {
    min_c: Option<f64>,
    max_c: Option<f64>,
    /// Hour and °C of readings of the moment.
    moments: Vec<(f64, f64)>,
}

impl<'a> Temperatures<'a> {
    pub(crate) fn of(picture: &'a Picture) -> Self {
        let record = |(id, place): (&PlaceId, &'a PlaceState)| {
            let readings = picture.readings.get(id).map_or(&[][..], Vec::as_slice);
            (*id, Record::of(place, readings))
        };
        Self {
            places: picture.places.iter().map(record).collect(),
        }
    }

    /// Lowest and highest of a day, with the heat as it usually is. `today`
    /// parts what was from what is to come. None for a place that is not known.
    pub(crate) fn day(&self, place: PlaceId, day: NaiveDate, today: NaiveDate) -> Option<RangeC> {
        let record = self.places.get(&place)?;
        Some(if day > today {
            record.to_come(today)
        } else {
            record.day(day)
        })
    }

    /// Whether a reading tells of a day.
    pub(crate) fn read_on(&self, place: PlaceId, day: NaiveDate) -> bool {
        self.places
            .get(&place)
            .is_some_and(|record| record.days.contains_key(&day))
    }

    /// What a place runs between at a moment at which its heat is off.
    pub(crate) fn heat_off(&self, place: PlaceId, at: NaiveDateTime) -> Option<RangeC> {
        let place = self.places.get(&place)?.place;
        let off = place
            .heat_off
            .iter()
            .rev()
            .find(|off| off.from <= at && off.to.is_none_or(|to| at < to))?;
        let usual = place.described.unheated.unwrap_or(place.described.usual);
        Some(off.meanwhile.unwrap_or(usual))
    }

    /// Whether a stretch without heat touches a day.
    pub(crate) fn heat_off_on(&self, place: PlaceId, day: NaiveDate) -> bool {
        self.places.get(&place).is_some_and(|record| {
            let mut stretches = record.place.heat_off.iter();
            stretches.any(|off| off.from.date() <= day && off.to.is_none_or(|to| to.date() >= day))
        })
    }

    /// The last day on which a known end of a stretch without heat falls.
    pub(crate) fn heat_back(&self, place: PlaceId) -> Option<NaiveDate> {
        let stretches = self.places.get(&place)?.place.heat_off.iter();
        stretches.filter_map(|off| Some(off.to?.date())).max()
    }

    /// The mean of a place today, as it stands now: heat on or off.
    pub(crate) fn mean_now(&self, place: PlaceId, now: NaiveDateTime) -> Option<f64> {
        let range = match self.heat_off(place, now) {
            Some(range) => range,
            None => self.day(place, now.date(), now.date())?,
        };
        Some(range.min_c.midpoint(range.max_c))
    }
}

impl<'a> Record<'a> {
    fn of(place: &'a PlaceState, readings: &[Reading]) -> Self {
        let usual = place.described.usual;
        let mut days: BTreeMap<NaiveDate, Known> = BTreeMap::new();
        for medium in [Medium::Compost, Medium::Air] {
            for (day, of_day) in by_day(readings.iter().filter(|reading| reading.of == medium)) {
                let found = of_day.known(usual);
                let known = days.entry(day).or_default();
                known.min_c = known.min_c.or(found.min_c);
                known.max_c = known.max_c.or(found.max_c);
            }
        }
        Self { place, days }
    }

    fn day(&self, day: NaiveDate) -> RangeC {
        let usual = self.place.described.usual;
        let min_c = self.carried(day, |known| known.min_c);
        let max_c = self.carried(day, |known| known.max_c);
        let span = usual.max_c - usual.min_c;
        // A usual half is moved along rather than crossed by a known one.
        match (min_c, max_c) {
            (Some(min_c), Some(max_c)) => ordered(min_c, max_c),
            (Some(min_c), None) if min_c > usual.max_c => ordered(min_c, min_c + span),
            (None, Some(max_c)) if max_c < usual.min_c => ordered(max_c - span, max_c),
            (min_c, max_c) => ordered(
                min_c.unwrap_or(usual.min_c),
                max_c.unwrap_or(usual.max_c),
            ),
        }
    }

    /// One half of a day, or the last of the days before.
    fn carried(&self, day: NaiveDate, half: impl Fn(&Known) -> Option<f64>) -> Option<f64> {
        let first = day.checked_sub_days(Days::new(CARRY_DAYS))?;
        let mut latest_first = self.days.range(first..=day).rev();
        latest_first.find_map(|(_, known)| half(known))
    }

    fn to_come(&self, today: NaiveDate) -> RangeC {
        let usual = self.place.described.usual;
        let Some(first) = today.checked_sub_days(Days::new(LAST_DAYS - 1)) else {
            return usual;
        };
        let read: Vec<RangeC> = self
            .days
            .range(first..=today)
            .map(|(day, _)| self.day(*day))
            .collect();
        if read.len() < LEAST_READ {
            return usual;
        }
        let count = read.len() as f64;
        RangeC {
            min_c: read.iter().map(|day| day.min_c).sum::<f64>() / count,
            max_c: read.iter().map(|day| day.max_c).sum::<f64>() / count,
        }
    }
}

impl DayReadings {
    fn known(&self, usual: RangeC) -> Known {
        let lowest = self.moments.iter().map(|(_, c)| *c).reduce(f64::min);
        let highest = self.moments.iter().map(|(_, c)| *c).reduce(f64::max);
        let (Some(lowest), Some(highest)) = (lowest, highest) else {
            return Known {
                min_c: self.min_c,
                max_c: self.max_c,
            };
        };
        if self.min_c.is_some() || self.max_c.is_some() {
            return Known {
                min_c: self.min_c.map(|min_c| min_c.min(lowest)),
                max_c: self.max_c.map(|max_c| max_c.max(highest)),
            };
        }
        let half = (usual.max_c - usual.min_c) / 2.0;
        let means = self
            .moments
            .iter()
            .map(|(hour, c)| mean_from_reading_now(*c, *hour, half));
        let mean = means.sum::<f64>() / self.moments.len() as f64;
        Known {
            min_c: Some((mean - half).min(lowest)),
            max_c: Some((mean + half).max(highest)),
        }
    }
}

fn by_day<'a>(readings: impl Iterator<Item = &'a Reading>) -> BTreeMap<NaiveDate, DayReadings> {
    let mut days: BTreeMap<NaiveDate, DayReadings> = BTreeMap::new();
    for reading in readings {
        let local = reading.mark.at.local;
        let own = local.date();
        match reading.shown {
            Shown::LowHigh { min_c, max_c } => {
                let before_noon = local.hour() < NOON;
                let of_highest = own
                    .checked_sub_days(Days::new(u64::from(before_noon)))
                    .unwrap_or(own);
                let low = &mut days.entry(own).or_default().min_c;
                *low = Some(low.map_or(min_c, |low| low.min(min_c)));
                let high = &mut days.entry(of_highest).or_default().max_c;
                *high = Some(high.map_or(max_c, |high| high.max(max_c)));
            }
            Shown::Now { temperature_c } => {
                let moments = &mut days.entry(own).or_default().moments;
                moments.push((hour_of(local), temperature_c));
            }
        }
    }
    days
}

/// Hour of the day with its fraction.
pub(crate) fn hour_of(at: NaiveDateTime) -> f64 {
    f64::from(at.num_seconds_from_midnight()) / 3600.0
}

fn ordered(a: f64, b: f64) -> RangeC {
    RangeC {
        min_c: a.min(b),
        max_c: a.max(b),
    }
}

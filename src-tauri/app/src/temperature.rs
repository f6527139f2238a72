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

    /// Whether a reading holds for a day: its own, or one of the days before.
    pub(crate) fn read_for(&self, place: PlaceId, day: NaiveDate) -> bool {
        let record = self.places.get(&place);
        record.is_some_and(|record| record.known(day).next().is_some())
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
            (min_c, max_c) => ordered(min_c.unwrap_or(usual.min_c), max_c.unwrap_or(usual.max_c)),
        }
    }

    /// One half of a day, or the last of the days before.
    fn carried(&self, day: NaiveDate, half: impl Fn(&Known) -> Option<f64>) -> Option<f64> {
        self.known(day).find_map(half)
    }

    /// What readings tell of a day and of those before that hold for it, the
    /// latest first.
    fn known(&self, day: NaiveDate) -> impl Iterator<Item = &Known> {
        let first = day.checked_sub_days(Days::new(CARRY_DAYS)).unwrap_or(day);
        self.days.range(first..=day).rev().map(|(_, known)| known)
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

#[cfg(test)]
mod tests {
    //! By hand from the rules: a place that usually runs from 10 to 20 °C.

    use super::*;
    use crate::world::{World, at, day};
    use plumule_journal::words::PlaceKind;

    const TODAY: &str = "2026-03-10";

    fn low_high(min_c: f64, max_c: f64) -> Shown {
        Shown::LowHigh { min_c, max_c }
    }

    #[track_caller]
    fn check(readings: &[(&str, Shown)], of: &str, expected: (f64, f64)) {
        let mut world = World::new();
        let place = world.place(PlaceKind::Windowsill, 10.0, 20.0);
        for (when, shown) in readings {
            world.read(place, when, *shown);
        }
        let temperatures = Temperatures::of(&world.picture);
        let found = temperatures.day(place, day(of), day(TODAY)).unwrap();
        let close = |a: f64, b: f64| (a - b).abs() < 1e-9;
        assert!(
            close(found.min_c, expected.0) && close(found.max_c, expected.1),
            "{found:?}, not {expected:?}"
        );
    }

    #[test]
    fn a_day_without_readings_is_usual() {
        check(&[], "2026-03-05", (10.0, 20.0));
    }

    #[test]
    fn a_reading_after_noon_is_of_its_day() {
        check(
            &[("2026-03-05 12:00", low_high(7.0, 23.0))],
            "2026-03-05",
            (7.0, 23.0),
        );
    }

    #[test]
    fn a_reading_before_noon_gives_its_highest_to_the_day_before() {
        let read = [("2026-03-05 11:59", low_high(7.0, 23.0))];
        check(&read, "2026-03-04", (10.0, 23.0));
        // Its own day knows the lowest, and carries the highest over.
        check(&read, "2026-03-05", (7.0, 23.0));
    }

    #[test]
    fn several_readings_give_the_lowest_and_the_highest() {
        let read = [
            ("2026-03-05 13:00", low_high(8.0, 19.0)),
            ("2026-03-05 19:00", low_high(9.0, 24.0)),
        ];
        check(&read, "2026-03-05", (8.0, 24.0));
    }

    #[test]
    fn the_last_reading_holds_three_days() {
        let read = [("2026-03-05 13:00", low_high(3.0, 13.0))];
        check(&read, "2026-03-08", (3.0, 13.0));
        check(&read, "2026-03-09", (10.0, 20.0));
        check(&read, "2026-03-04", (10.0, 20.0));
    }

    #[test]
    fn a_reading_now_is_inverted_at_its_hour() {
        // At 15:00 the sine is at its top: 25 °C there makes a mean of 20 for a
        // swing of 5; at 9:00 it is at the mean.
        let now = |temperature_c| Shown::Now { temperature_c };
        check(
            &[("2026-03-05 15:00", now(25.0))],
            "2026-03-05",
            (15.0, 25.0),
        );
        check(
            &[("2026-03-05 09:00", now(25.0))],
            "2026-03-05",
            (20.0, 30.0),
        );
        check(&[("2026-03-05 03:00", now(2.0))], "2026-03-05", (2.0, 12.0));
        // Beside a lowest and highest it only widens them.
        let read = [
            ("2026-03-05 13:00", low_high(8.0, 19.0)),
            ("2026-03-05 15:00", now(22.0)),
        ];
        check(&read, "2026-03-05", (8.0, 22.0));
    }

    #[test]
    fn days_to_come_are_the_mean_of_three_or_more() {
        let read = [
            ("2026-03-04 13:00", low_high(4.0, 12.0)),
            ("2026-03-06 13:00", low_high(6.0, 15.0)),
            ("2026-03-10 13:00", low_high(8.0, 18.0)),
        ];
        check(&read, "2026-03-11", (6.0, 15.0));
        check(&read[1..], "2026-03-11", (10.0, 20.0));
    }

    #[test]
    fn a_known_half_moves_the_usual_one_along() {
        check(
            &[("2026-03-05 09:00", low_high(1.0, 4.0))],
            "2026-03-04",
            (-6.0, 4.0),
        );
    }

    #[test]
    fn compost_goes_before_air() {
        let mut world = World::new();
        let place = world.place(PlaceKind::HeatedPropagator, 10.0, 20.0);
        world.read(place, "2026-03-05 13:00", low_high(9.0, 17.0));
        world.read(place, "2026-03-05 13:00", low_high(20.0, 24.0));
        world.picture.readings.get_mut(&place).unwrap()[1].of = Medium::Compost;
        let found = Temperatures::of(&world.picture);
        let found = found.day(place, day("2026-03-05"), day(TODAY)).unwrap();
        assert_eq!((found.min_c, found.max_c), (20.0, 24.0));
    }

    #[test]
    fn the_heat_is_off_from_to() {
        let mut world = World::new();
        let place = world.place(PlaceKind::HeatedPropagator, 20.0, 24.0);
        world.heat_off(
            place,
            "2026-03-05 06:00",
            Some("2026-03-05 12:00"),
            (5.0, 9.0),
        );
        let temperatures = Temperatures::of(&world.picture);
        assert!(
            temperatures
                .heat_off(place, at("2026-03-05 05:59"))
                .is_none()
        );
        let off = temperatures
            .heat_off(place, at("2026-03-05 06:00"))
            .unwrap();
        assert_eq!((off.min_c, off.max_c), (5.0, 9.0));
        assert!(
            temperatures
                .heat_off(place, at("2026-03-05 12:00"))
                .is_none()
        );
    }
}

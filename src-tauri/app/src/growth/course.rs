//! Progress over the days of a tray: from place to place, with the heat on or
//! off, standing still while it is known to be dry.

use crate::temperature::{Temperatures, hour_of};
use chrono::{Days, NaiveDate, NaiveDateTime, NaiveTime, TimeDelta};
use plumule_agronomy::{Curve, day_temperature_at};
use plumule_journal::id::PlaceId;
use plumule_journal::state::{FeltAt, Stay, TrayState};
use plumule_journal::words::Feel;
use std::collections::BTreeSet;

/// A tray felt dry and not watered counts as dry for so long at most; then it
/// is taken as watered.
const DRY_HOURS: i64 = 24;

/// A known end of a stretch without heat is followed so many days ahead.
const AHEAD_DAYS: u64 = 60;

/// How a sowing has fared and will fare.
#[derive(Clone, Debug, Default)]
pub(crate) struct Course {
    /// Progress gained on each day from the day of sowing; the last repeats.
    pub(crate) by_day: Vec<f64>,
    /// Progress until now.
    pub(crate) progress: f64,
    /// Mean temperature since it was sown, °C; none if that is not an hour ago.
    pub(crate) mean_c: Option<f64>,
    /// Share of its days, today among them, for which a reading holds: the others
    /// are as usual, and nobody knows how far from it.
    pub(crate) read_share: f64,
    /// The mean it is reckoned to stand at from tomorrow, °C.
    pub(crate) mean_to_come_c: f64,
    /// Where it lies, and what the days there were on average, °C.
    pub(crate) here: Option<(PlaceId, f64)>,
    /// Progress at each of the moments asked about, never falling.
    pub(crate) at: Vec<f64>,
    /// Lowest and highest of each day until now, °C; none for a day in the
    /// fridge.
    pub(crate) ranges: Vec<Option<(f64, f64)>>,
}

/// Where seed lay: some places, one after the other, and what hindered it.
pub(crate) struct Bed<'a> {
    pub(crate) stays: Vec<(NaiveDateTime, PlaceId)>,
    pub(crate) felt: &'a [FeltAt],
    /// Places in which cold weeks are cold weeks and no progress counts.
    pub(crate) fridges: &'a BTreeSet<PlaceId>,
    /// Until then it lies in the cold, wherever it lies.
    pub(crate) cold_until: Option<NaiveDateTime>,
    /// Progress goes by the crop's curve times this.
    pub(crate) pace: f64,
}

impl<'a> Bed<'a> {
    pub(crate) fn of_tray(tray: &'a TrayState, fridges: &'a BTreeSet<PlaceId>) -> Self {
        let stay = |stay: &Stay| (stay.since.at.local, stay.place);
        Self {
            stays: tray.stays.iter().map(stay).collect(),
            felt: &tray.felt,
            fridges,
            cold_until: None,
            pace: 1.0,
        }
    }

    /// Where it was at a moment; before its first stay, there.
    fn place_at(&self, at: NaiveDateTime) -> Option<PlaceId> {
        let last = self.stays.iter().rev().find(|(since, _)| *since <= at);
        last.or(self.stays.first()).map(|(_, place)| *place)
    }

    /// Whether a moment in a place counts as cold.
    fn cold(&self, place: PlaceId, at: NaiveDateTime) -> bool {
        self.fridges.contains(&place) || self.cold_until.is_some_and(|until| at < until)
    }

    /// Mean of the days since it came where it lies, °C.
    fn mean_here(
        &self,
        ranges: &[Option<(f64, f64)>],
        sown: NaiveDate,
        today: NaiveDate,
    ) -> Option<f64> {
        let moved = self.stays.iter().map(|(since, _)| since.date());
        let since = moved.filter(|day| *day <= today).max()?;
        let days = sown.iter_days().zip(ranges);
        let here: Vec<f64> = days
            .filter(|(day, _)| *day >= since)
            .filter_map(|(_, range)| range.map(|(min_c, max_c)| min_c.midpoint(max_c)))
            .collect();
        (!here.is_empty()).then(|| here.iter().sum::<f64>() / here.len() as f64)
    }

    fn moved_on(&self, day: NaiveDate) -> bool {
        self.stays.iter().any(|(since, _)| since.date() == day)
    }

    /// From and to of each stretch in which it was known to be dry.
    fn dry(&self) -> Vec<(NaiveDateTime, NaiveDateTime)> {
        let stretches = self.felt.iter().enumerate().filter_map(|(index, felt)| {
            if felt.feel != Some(Feel::Dry) || felt.water.is_some() {
                return None;
            }
            let from = felt.at.at.local;
            let latest = from + TimeDelta::hours(DRY_HOURS);
            let later = self.felt.get(index + 1).map(|next| next.at.at.local);
            Some((from, later.map_or(latest, |later| later.min(latest))))
        });
        stretches.collect()
    }
}

/// The course of seed sown at `sown` in a bed, and how far it was at some
/// moments, in their order. None if it stands nowhere.
pub(crate) fn course(
    temperatures: &Temperatures<'_>,
    bed: &Bed<'_>,
    curve: &Curve,
    sown: NaiveDateTime,
    now: NaiveDateTime,
    moments: &[NaiveDateTime],
) -> Option<Course> {
    let today = now.date();
    let walk = Walk {
        temperatures,
        bed,
        curve,
        sown,
        today,
        dry: bed.dry(),
    };
    let mut course = Course::default();
    let (mut degrees, mut hours, mut days, mut read) = (0.0, 0.0, 0.0, 0.0);
    let mut day = sown.date();
    while day <= today {
        for moment in moments.iter().filter(|moment| moment.date() == day) {
            let reached = course.progress + walk.day(day, Some(*moment))?.progress;
            let before = course.at.last().copied().unwrap_or(0.0);
            course.at.push(reached.max(before));
        }
        let whole = walk.day(day, None)?;
        let until_now = if day == today {
            walk.day(day, Some(now))?
        } else {
            whole
        };
        course.by_day.push(whole.progress);
        course.progress += until_now.progress;
        degrees += until_now.degrees;
        hours += until_now.hours;
        days += 1.0;
        read += f64::from(u8::from(walk.read_for(day)));
        course.ranges.push(whole.range);
        day = day.succ_opt()?;
    }
    course.mean_c = (hours > 0.0).then(|| degrees / hours);
    course.read_share = if days > 0.0 { read / days } else { 0.0 };

    let place = bed.place_at(now.max(sown))?;
    let mean_here = bed.mean_here(&course.ranges, sown.date(), today);
    course.here = mean_here.map(|mean_c| (place, mean_c));
    let ahead = today.checked_add_days(Days::new(AHEAD_DAYS))?;
    let heat_back = temperatures.heat_back(place).map(|back| back.min(ahead));
    let last_odd = heat_back.max(bed.cold_until.map(|until| until.date()));
    while last_odd.is_some_and(|last| day <= last) {
        course.by_day.push(walk.day(day, None)?.progress);
        day = day.succ_opt()?;
    }
    let usual = walk.day(day, None)?;
    course.mean_to_come_c = usual.degrees / usual.hours.max(1.0);
    course.by_day.push(usual.progress);
    Some(course)
}

struct Walk<'a> {
    temperatures: &'a Temperatures<'a>,
    bed: &'a Bed<'a>,
    curve: &'a Curve,
    sown: NaiveDateTime,
    today: NaiveDate,
    dry: Vec<(NaiveDateTime, NaiveDateTime)>,
}

/// Sums over the hours of a day, or of a part of it.
#[derive(Clone, Copy, Default)]
struct Gained {
    progress: f64,
    degrees: f64,
    hours: f64,
    range: Option<(f64, f64)>,
}

impl Walk<'_> {
    fn read_for(&self, day: NaiveDate) -> bool {
        let noon = day.and_time(NaiveTime::MIN) + TimeDelta::hours(12);
        self.bed
            .place_at(noon)
            .is_some_and(|place| self.temperatures.read_for(place, day))
    }

    /// What a day gives, up to a moment of it.
    fn day(&self, day: NaiveDate, until: Option<NaiveDateTime>) -> Option<Gained> {
        if until.is_none()
            && let Some(gained) = self.plain_day(day)
        {
            return Some(gained);
        }
        let mut gained = Gained::default();
        for half_hours in (1..48).step_by(2) {
            let at = day.and_time(NaiveTime::MIN) + TimeDelta::minutes(30 * half_hours);
            if at < self.sown || until.is_some_and(|until| at > until) {
                continue;
            }
            let place = self.bed.place_at(at)?;
            let range = match self.temperatures.heat_off(place, at) {
                Some(range) => range,
                None => self.temperatures.day(place, day, self.today)?,
            };
            let degrees = day_temperature_at(range.min_c, range.max_c, hour_of(at));
            gained.degrees += degrees;
            gained.hours += 1.0;
            let dry = self.dry.iter().any(|(from, to)| (*from..*to).contains(&at));
            if self.bed.cold(place, at) {
                continue;
            }
            let (min_c, max_c) = gained.range.unwrap_or((degrees, degrees));
            gained.range = Some((min_c.min(degrees), max_c.max(degrees)));
            if !dry {
                gained.progress += self.bed.pace * self.curve.rate_per_day(degrees) / 24.0;
            }
        }
        Some(gained)
    }

    /// A whole day in one place with nothing out of the common.
    fn plain_day(&self, day: NaiveDate) -> Option<Gained> {
        let noon = day.and_time(NaiveTime::MIN) + TimeDelta::hours(12);
        let place = self.bed.place_at(noon)?;
        let odd = day <= self.sown.date()
            || self.bed.moved_on(day)
            || self.temperatures.heat_off_on(place, day)
            || self.bed.cold(place, day.and_time(NaiveTime::MIN))
            || self
                .dry
                .iter()
                .any(|(from, to)| from.date() <= day && day <= to.date());
        if odd {
            return None;
        }
        let range = self.temperatures.day(place, day, self.today)?;
        Some(Gained {
            progress: self.bed.pace * self.curve.day_progress(range.min_c, range.max_c),
            degrees: range.min_c.midpoint(range.max_c) * 24.0,
            hours: 24.0,
            range: Some((range.min_c, range.max_c)),
        })
    }
}

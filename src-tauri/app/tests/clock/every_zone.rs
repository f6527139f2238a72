//! Rounds around the clock changes of a zone, against a reckoning of its own
//! that knows only which offset is in force at an instant (as the tz database
//! tells it), never what instant a local time is.

use chrono::{
    DateTime, Days, NaiveDate, NaiveDateTime, NaiveTime, Offset, TimeDelta, TimeZone, Utc,
};
use chrono_tz::Tz;
use plumule_app::notices::{Quiet, Rings};
use std::collections::BTreeMap;

/// The years looked at: ten and more, with the days that Apia left out (2011)
/// and the midnights that São Paulo did (to 2018).
pub(crate) const YEARS: (i32, i32) = (2010, 2030);

/// Offsets are looked at so often; no zone changed twice within.
const STEP_HOURS: i64 = 6;

/// Days before and after a change that are looked at.
const AROUND: u64 = 2;

/// Round times of a day: every half hour.
const HALF_HOURS: u32 = 48;

/// What was looked at.
#[derive(Default)]
pub(crate) struct Seen {
    pub(crate) changes: usize,
    pub(crate) rings: usize,
}

/// A stretch of time with one offset: from when on, and how far from UTC.
type Stretch = (DateTime<Utc>, TimeDelta);

fn offset(zone: Tz, at: DateTime<Utc>) -> TimeDelta {
    let fixed = zone.offset_from_utc_datetime(&at.naive_utc()).fix();
    TimeDelta::seconds(i64::from(fixed.local_minus_utc()))
}

fn new_year(year: i32) -> DateTime<Utc> {
    let day = NaiveDate::from_ymd_opt(year, 1, 1).unwrap();
    day.and_time(NaiveTime::MIN).and_utc()
}

/// The stretches of a zone, to the second.
fn stretches(zone: Tz) -> Vec<Stretch> {
    let (mut at, end) = (new_year(YEARS.0), new_year(YEARS.1));
    let mut found = vec![(at, offset(zone, at))];
    while at < end {
        let next = at + TimeDelta::hours(STEP_HOURS);
        let after = offset(zone, next);
        if after != offset(zone, at) {
            let (mut before, mut from) = (at, next);
            while from - before > TimeDelta::seconds(1) {
                let middle = before + TimeDelta::seconds((from - before).num_seconds() / 2);
                if offset(zone, middle) == after {
                    from = middle;
                } else {
                    before = middle;
                }
            }
            found.push((from, after));
        }
        at = next;
    }
    found
}

/// When a wall clock first shows a time; if it never does, when it would if the
/// clocks had not been put forward yet (RFC 5545, 3.3.5).
fn first_shown(stretches: &[Stretch], wall: NaiveDateTime) -> DateTime<Utc> {
    let mut last = wall.and_utc() - stretches[0].1;
    for (index, (from, offset)) in stretches.iter().enumerate() {
        let at = wall.and_utc() - *offset;
        if at < *from {
            break;
        }
        last = at;
        if stretches.get(index + 1).is_none_or(|(to, _)| at < *to) {
            break;
        }
    }
    last
}

fn quiets() -> [Quiet; 4] {
    let quiet = |from: (u32, u32), to: (u32, u32)| Quiet {
        from: NaiveTime::from_hms_opt(from.0, from.1, 0).unwrap(),
        to: NaiveTime::from_hms_opt(to.0, to.1, 0).unwrap(),
    };
    [
        quiet((7, 0), (7, 0)),
        quiet((22, 0), (7, 0)),
        quiet((0, 30), (2, 30)),
        quiet((1, 0), (3, 15)),
    ]
}

/// Looks at every half hour of the days around every change of a zone.
pub(crate) fn look(zone: Tz) -> Seen {
    let stretches = stretches(zone);
    let mut seen = Seen {
        changes: stretches.len() - 1,
        rings: 0,
    };
    for (change, _) in &stretches[1..] {
        let middle = change.with_timezone(&zone).date_naive();
        let first = middle - Days::new(AROUND);
        let days: Vec<NaiveDate> = first.iter_days().take(2 * AROUND as usize + 1).collect();
        for half in 0..HALF_HOURS {
            let time = NaiveTime::from_hms_opt(half / 2, half % 2 * 30, 0).unwrap();
            let rounds: Vec<NaiveDateTime> = days.iter().map(|day| day.and_time(time)).collect();
            for quiet in quiets() {
                seen.rings += check(zone, &stretches, quiet, &rounds);
            }
        }
    }
    seen
}

fn check(zone: Tz, stretches: &[Stretch], quiet: Quiet, rounds: &[NaiveDateTime]) -> usize {
    let rings = Rings {
        garden: zone,
        device: zone,
        quiet,
    };
    let all = rings.all(rounds.iter().copied());
    // Once a day: but for a day that the zone left out, whose round is the next day's.
    let mut expected: BTreeMap<DateTime<Utc>, NaiveDateTime> = BTreeMap::new();
    for round in rounds {
        expected
            .entry(first_shown(stretches, *round))
            .or_insert(*round);
    }
    let told: Vec<NaiveDateTime> = all.values().copied().collect();
    let due: Vec<NaiveDateTime> = expected.values().copied().collect();
    assert_eq!(told, due, "{zone} {quiet:?}");
    for ((rung, round), begun) in all.iter().zip(expected.keys()) {
        let wall = rung.with_timezone(&zone).time();
        assert!(
            !quiet.has(wall),
            "{zone}: {round} rings at {wall}, in {quiet:?}"
        );
        if quiet.has(begun.with_timezone(&zone).time()) {
            let late = *rung - *begun;
            assert!(
                late > TimeDelta::zero() && late <= TimeDelta::hours(25),
                "{zone} {round}"
            );
        } else {
            assert_eq!(rung, begun, "{zone} {round}");
        }
    }
    all.len()
}

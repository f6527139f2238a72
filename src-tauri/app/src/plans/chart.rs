//! Sowing windows of the grower's crops over twelve months, with the odds of
//! frost.

use crate::picture::Picture;
use crate::say::{Arg, Say};
use crate::season::odds::{HALVES, hemisphere, odds};
use crate::season::{Season, in_year, season_view, seasons};
use crate::seed::crop_name;
use crate::view::{FrostPoint, SeasonSpan, WindowRow, WindowsView};
use chrono::{Datelike, Days, Months, NaiveDate};
use plumule_agronomy::{Crop, FrostOdds, Half, Hemisphere, crops};
use plumule_journal::content::MonthDay;
use std::collections::BTreeSet;

/// The line of frost has a point every so many days.
const STEP: u64 = 3;

/// The last days of the halves of a year (in the south the names change places).
const MIDWINTER: (u32, u32) = (1, 15);
const MIDSUMMER: (u32, u32) = (7, 15);

/// From the month before this one, so that what comes is all there, whatever
/// the time of year and the side of the equator. None without a last frost.
pub(super) fn windows(
    picture: &Picture,
    grown: &BTreeSet<String>,
    today: NaiveDate,
) -> Option<WindowsView> {
    picture.garden.described.as_ref()?.last_frost?;
    let from = today.with_day(1)?.checked_sub_months(Months::new(1))?;
    let to = from.checked_add_months(Months::new(12))?.pred_opt()?;
    let mut rows: Vec<WindowRow> = Vec::new();
    let mut without = Vec::new();
    for key in grown {
        let row = crops()
            .get(key)
            .and_then(|crop| row(picture, crop, (from, to), today));
        match row {
            Some(row) => rows.push(row),
            None => without.push(crop_name(key)),
        }
    }
    rows.sort_by_key(|row| row.seasons.first().map(|season| season.sow));
    let (frost, by_record) = frost(picture, from, to);
    Some(WindowsView {
        from,
        to,
        frost,
        by_record,
        say: frost_say(picture, by_record, today),
        rows,
        without,
    })
}

fn row(
    picture: &Picture,
    crop: &Crop,
    (from, to): (NaiveDate, NaiveDate),
    today: NaiveDate,
) -> Option<WindowRow> {
    let all = seasons(picture, crop, today);
    let inside = |season: &&Season| {
        let last = season.over().max(season.set_out.last);
        season.sow.first <= to && last >= from
    };
    let seasons: Vec<SeasonSpan> = all
        .iter()
        .filter(inside)
        .map(|season| SeasonSpan {
            sow: [season.sow.first, season.sow.last],
            set_out: crop
                .weeks_to_raise
                .map(|_| [season.set_out.first, season.set_out.last]),
            last_useful: season.last_useful,
        })
        .collect();
    (!seasons.is_empty()).then(|| WindowRow {
        crop: crop_name(&crop.key),
        says: season_view(picture, crop, today).map_or_else(Vec::new, |view| view.says),
        seasons,
    })
}

/// The line of frost, and whether it is from a record. A half without either has
/// no points of its own.
fn frost(picture: &Picture, from: NaiveDate, to: NaiveDate) -> (Vec<FrostPoint>, bool) {
    let [spring, autumn] = HALVES.map(|half| odds(picture, half));
    let by_record = spring.is_some() || autumn.is_some();
    let mut points = Vec::new();
    let mut day = from;
    while day <= to {
        let half = half_of((day.month(), day.day()), hemisphere(picture));
        let odds = match half {
            Half::Spring => &spring,
            Half::Autumn => &autumn,
        };
        if let Some(chance) = chance(picture, odds.as_ref(), half, day) {
            points.push(FrostPoint { day, chance });
        }
        let Some(next) = day.checked_add_days(Days::new(STEP)) else {
            break;
        };
        day = next;
    }
    (points, by_record)
}

/// By the record; else 1 or 0 by the usual date.
fn chance(picture: &Picture, odds: Option<&FrostOdds>, half: Half, day: NaiveDate) -> Option<f64> {
    if let Some(odds) = odds {
        return Some(odds.chance(day));
    }
    let garden = picture.garden.described.as_ref()?;
    let (usual, before) = match half {
        Half::Spring => (garden.last_frost?, true),
        Half::Autumn => (garden.first_frost?, false),
    };
    let usual = (usual.month, usual.day);
    if half_of(usual, hemisphere(picture)) != half {
        return Some(0.0);
    }
    let frost = (in_turn((day.month(), day.day())) <= in_turn(usual)) == before;
    Some(f64::from(u8::from(frost)))
}

/// A day of a half, in order: what comes after the new year comes after December.
fn in_turn((month, day): (u32, u32)) -> (u32, u32) {
    let over = (month, day) <= MIDWINTER;
    (if over { month + 12 } else { month }, day)
}

/// Halves part at the ends of 15 July and 15 January.
fn half_of(day: (u32, u32), hemisphere: Hemisphere) -> Half {
    let first = MIDWINTER < day && day <= MIDSUMMER;
    if first == (hemisphere == Hemisphere::North) {
        Half::Spring
    } else {
        Half::Autumn
    }
}

fn frost_say(picture: &Picture, by_record: bool, today: NaiveDate) -> Say {
    let garden = picture.garden.described.as_ref();
    let day = |day: Option<MonthDay>| in_year(day?, today.year());
    let last = day(garden.and_then(|garden| garden.last_frost));
    let first = day(garden.and_then(|garden| garden.first_frost));
    let key = match (by_record, first) {
        (true, _) => "windows-frost-record",
        (false, Some(_)) => "windows-frost-usual",
        (false, None) => "windows-frost-spring",
    };
    let mut say = Say::new(key);
    if let Some(last) = last {
        say = say.with("last", Arg::Day(last));
    }
    if let Some(first) = first {
        say = say.with("first", Arg::Day(first));
    }
    say
}

//! Looking back: what sowings gave, put together and held against each other.

mod compare;
mod numbers;
mod record;

use crate::error::AppError;
use crate::say::{Arg, Say};
use crate::season::Years;
use crate::view::{Group, GroupBy, Loss, Named, ResultsAsked, ResultsView};
use crate::words;
use chrono::NaiveDateTime;
use plumule_agronomy::interval;
use plumule_journal::Journal;
use plumule_journal::stamp::Stamp;
use record::{History, Record};
use std::collections::{BTreeMap, BTreeSet};

/// The level of the intervals.
const LEVEL: f64 = 0.95;

/// Under so many seeds, or sowings, a share is called small (judgement: the 95 %
/// interval of half of 30 is still a third of the scale wide).
const SMALL: (u32, u32) = (30, 2);

pub(crate) fn view(
    journal: &Journal,
    stamp: &Stamp,
    asked: &ResultsAsked,
) -> Result<ResultsView, AppError> {
    let now = plumule_journal::stamp::Happened::at(stamp.now, zone(journal, stamp)?).local;
    let history = History::read(journal)?;
    let all = history.records(now);
    let years: BTreeSet<i32> = all.iter().map(|it| it.year).collect();
    let crops: BTreeSet<&str> = all.iter().map(|it| it.crop.as_str()).collect();
    let chosen: Vec<&Record> = all
        .iter()
        .filter(|it| asked.year.is_none_or(|year| it.year == year))
        .filter(|it| asked.crop.as_ref().is_none_or(|crop| *crop == it.crop))
        .collect();
    let groups = groups(&history, &chosen, asked.by)?;
    let compared = match &asked.pair {
        Some((a, b)) => {
            let find = |key: &str| groups.iter().find(|group| group.of.key == key);
            match (find(a), find(b)) {
                (Some(a), Some(b)) => Some(compare::compare(a, b)?),
                _ => None,
            }
        }
        None => None,
    };
    let left_out = chosen.iter().filter(|it| it.told.is_none()).count();
    Ok(ResultsView {
        years: years
            .into_iter()
            .rev()
            .map(|year| year_named(history.years, year))
            .collect(),
        crops: crops.into_iter().map(crop_named).collect(),
        numbers: numbers::by_crop(journal, &history, asked)?,
        groups,
        compared,
        left_out: u32::try_from(left_out).unwrap_or(u32::MAX),
    })
}

fn zone(journal: &Journal, stamp: &Stamp) -> Result<chrono_tz::Tz, AppError> {
    let garden = journal.garden()?.described;
    Ok(garden
        .and_then(|garden| garden.zone.parse().ok())
        .unwrap_or(stamp.zone))
}

fn crop_named(key: &str) -> Named {
    Named {
        key: key.to_owned(),
        name: name(words::crop(key)),
    }
}

fn year_named(years: Years, year: i32) -> Named {
    Named {
        key: year.to_string(),
        name: name(Arg::Text(years.name(year))),
    }
}

/// The records by what they have in common.
fn groups(history: &History, records: &[&Record], by: GroupBy) -> Result<Vec<Group>, AppError> {
    let mut by_key: BTreeMap<String, Vec<&Record>> = BTreeMap::new();
    for record in records.iter().filter(|it| it.told.is_some()) {
        if let Some(key) = record.key(by) {
            by_key.entry(key).or_default().push(record);
        }
    }
    let mut groups = by_key
        .into_iter()
        .map(|(key, records)| {
            let name = history.name(by, &key);
            group(Named { key, name }, &records)
        })
        .collect::<Result<Vec<_>, _>>()?;
    groups.sort_by_key(|group| std::cmp::Reverse(group.seeds));
    Ok(groups)
}

fn group(of: Named, records: &[&Record]) -> Result<Group, AppError> {
    let sum = |of: fn((u32, u32)) -> u32| {
        let told = records.iter().filter_map(|it| it.told);
        told.map(of).fold(0_u32, u32::saturating_add)
    };
    let (up, seeds) = (sum(|(up, _)| up), sum(|(_, seeds)| seeds));
    let (low, high) = interval(up, seeds, LEVEL).map_err(|_| AppError::plain("unexpected"))?;
    let mut lost: BTreeMap<_, u32> = BTreeMap::new();
    for (cause, number) in records.iter().flat_map(|it| &it.lost) {
        *lost.entry(*cause).or_default() += number;
    }
    let mut lost: Vec<Loss> = lost
        .into_iter()
        .map(|(cause, number)| Loss {
            cause: words::word("cause", cause.as_str()),
            number,
        })
        .collect();
    lost.sort_by_key(|loss| std::cmp::Reverse(loss.number));
    let sowings = u32::try_from(records.len()).unwrap_or(u32::MAX);
    Ok(Group {
        of,
        sowings,
        seeds,
        up,
        share: f64::from(up) / f64::from(seeds.max(1)),
        low,
        high,
        half_days: median(records.iter().filter_map(|it| it.half_days)),
        spread_days: median(records.iter().filter_map(|it| it.spread_days)),
        lost,
        small: seeds < SMALL.0 || sowings < SMALL.1,
    })
}

/// The middle one; of two middles their mean.
fn median(values: impl Iterator<Item = f64>) -> Option<f64> {
    let mut values: Vec<f64> = values.collect();
    values.sort_by(f64::total_cmp);
    let half = values.len() / 2;
    let upper = values.get(half)?;
    if values.len() % 2 == 1 {
        return Some(*upper);
    }
    Some(f64::midpoint(*values.get(half.checked_sub(1)?)?, *upper))
}

/// Days, as a number with a fraction.
fn days_between(from: NaiveDateTime, to: NaiveDateTime) -> f64 {
    (to - from).num_minutes() as f64 / (24.0 * 60.0)
}

/// What something is called; no packet.
fn name(name: Arg) -> Say {
    packet_name(name, "", None)
}

/// A packet by its plant, variety and year.
fn packet_name(crop: Arg, variety: &str, year: Option<i32>) -> Say {
    let year = year.map_or_else(String::new, |year| format!(" {year}"));
    Say::new("results-name")
        .with("name", crop)
        .with("variety", words::variety(variety))
        .with("year", Arg::Text(year))
}

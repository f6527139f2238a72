//! Packets, their seeds, germination tests, what to buy.

use super::garden::{MAX_NUMBER, some};
use super::round::range;
use super::texts::{MAX_NAME, name, optional_name, text};
use super::{Check, known, new, number, refuse, refuse_with};
use crate::content::{
    PacketDescribed, SeedsCounted, StatedDays, TestClosed, TestCounted, TestStarted, ToBuy,
};
use crate::error::{Error, Question, Value};
use crate::fold::State;
use crate::id::TestId;
use crate::stamp::Stamp;
use crate::state::{Parent, TestState};
use crate::store::read;
use crate::subject::{Plants, Subject};
use chrono::{DateTime, Datelike, Utc};
use std::collections::BTreeSet;

/// Seed older than this is in a museum. Judgement.
const FIRST_YEAR: i32 = 1900;
/// No clock is right that says an earlier year than this was written in.
const BUILT_YEAR: i32 = 2026;
/// The last year that a packet may say if the clock does not tell. Judgement.
const LAST_YEAR: i32 = 2_200;
/// Sow-by dates lie no further ahead than this, years. Judgement.
const AHEAD_YEARS: i32 = 50;
/// Longest price, characters: a number and a currency.
const MAX_PRICE: u32 = 20;
/// No packet asks for more patience than a year. Judgement.
const MAX_STATED_DAYS: u32 = 365;
/// More seeds than are laid on paper. Judgement.
const MAX_TESTED: u32 = 10_000;

pub(super) fn packet(check: &Check, what: &PacketDescribed) -> Result<(), Error> {
    packet_fits(check.stamp, what)?;
    what.saved_from
        .map_or(Ok(()), |plants| saved(check, plants))
}

/// What a packet says by itself.
pub(crate) fn packet_fits(stamp: &Stamp, what: &PacketDescribed) -> Result<(), Error> {
    name(&what.crop, MAX_NAME)?;
    optional_name(&what.variety, MAX_NAME)?;
    optional_name(&what.source, MAX_NAME)?;
    optional_name(&what.price, MAX_PRICE)?;
    text(&what.note)?;
    let this_year = match stamp.now.year() {
        // That clock is wrong, and nobody is kept from writing for it.
        year if year < BUILT_YEAR => LAST_YEAR,
        year => year,
    };
    years(what.packed_year, this_year + 1)?;
    years(what.harvested_year, this_year + 1)?;
    years(what.sow_by.map(|day| day.year()), this_year + AHEAD_YEARS)?;
    if let Some(stated) = what.stated_germination
        && !(0.0..=1.0).contains(&stated)
    {
        return refuse("germination_out_of_range");
    }
    what.stated_days.map_or(Ok(()), stated_days)?;
    what.seeds.map_or(Ok(()), |seeds| some(seeds, MAX_NUMBER))
}

fn stated_days(stated: StatedDays) -> Result<(), Error> {
    if stated.from == 0 || stated.to < stated.from || stated.to > MAX_STATED_DAYS {
        return refuse_with("days_out_of_range", [("most", number(MAX_STATED_DAYS))]);
    }
    stated.at.map_or(Ok(()), range)
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

/// Seed is not saved from a first cross: what grows of it is anyone's guess.
fn saved(check: &Check, plants: Plants) -> Result<(), Error> {
    known(check, plants.into())?;
    let mut of = plants;
    let mut seen = BTreeSet::new();
    while seen.insert(of) {
        match read::state(check.db, of.into())? {
            Some(State::Batch(batch)) => match batch.parent {
                Parent::Plants { of: before, .. } => of = before,
                Parent::Started { .. } => return Ok(()),
            },
            Some(State::Sowing(sowing)) => {
                let packet = read::state(check.db, Subject::Packet(sowing.packet()))?;
                return match packet {
                    Some(State::Packet(packet)) if packet.described.f1 => refuse("saved_from_f1"),
                    _ => Ok(()),
                };
            }
            _ => return Ok(()),
        }
    }
    Ok(())
}

pub(super) fn counted(check: &Check, what: &SeedsCounted) -> Result<(), Error> {
    known(check, Subject::Packet(what.packet))?;
    if what.left > MAX_NUMBER {
        return refuse_with("number_too_large", [("most", number(MAX_NUMBER))]);
    }
    Ok(())
}

pub(super) fn test_started(check: &Check, what: &TestStarted) -> Result<(), Error> {
    new(check, Subject::Test(what.test))?;
    known(check, Subject::Packet(what.packet))?;
    some(what.seeds, MAX_TESTED)
}

pub(super) fn test_counted(check: &mut Check, what: &TestCounted) -> Result<(), Error> {
    running(check, what.test, what.sprouted).map(drop)
}

pub(super) fn test_closed(check: &mut Check, what: &TestClosed) -> Result<(), Error> {
    let test = running(check, what.test, what.sprouted)?;
    if test.packet != what.packet {
        return refuse("test_unknown");
    }
    Ok(())
}

/// A running test that so many of its seeds may have sprouted in.
fn running(check: &mut Check, id: TestId, sprouted: u32) -> Result<TestState, Error> {
    let Some(State::Test(test)) = read::state(check.db, Subject::Test(id))? else {
        return refuse("test_unknown");
    };
    if test.closed.is_some() && !check.correcting {
        return refuse("test_closed");
    }
    if sprouted > test.seeds {
        return refuse_with("more_than_tested", [("seeds", number(test.seeds))]);
    }
    let began = test.opened_by.at.local.date();
    if check.happened.local.date() < began {
        return refuse_with("before_the_test", [("day", Value::Day(began))]);
    }
    let now: DateTime<Utc> = check.happened.instant();
    let earlier = test.counts.iter().rev();
    let before = earlier
        .filter(|count| count.at.at.instant() <= now)
        .map(|count| count.sprouted)
        .max()
        .unwrap_or(0);
    if sprouted < before && !check.correcting {
        check.questions.push(
            Question::new("test_count_falls")
                .with("before", number(before))
                .with("now", number(sprouted)),
        );
    }
    Ok(test)
}

pub(super) fn to_buy(what: &ToBuy) -> Result<(), Error> {
    name(&what.crop, MAX_NAME)?;
    optional_name(&what.variety, MAX_NAME)?;
    optional_name(&what.note, MAX_NAME)
}

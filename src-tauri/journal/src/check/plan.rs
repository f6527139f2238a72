//! Plans, and plants kept for somebody.

use super::garden::{MAX_NUMBER, some};
use super::texts::{MAX_NAME, name, optional_name};
use super::{Check, known, number, refuse, refuse_with};
use crate::content::{Left, PlanDescribed, Reserved, Rhythm, Wares};
use crate::error::{Error, Question, Value};
use crate::fold::State;
use crate::id::ReservationId;
use crate::state::{BatchState, Parent, ReservationState, SowingState};
use crate::store::read;
use crate::subject::{Plants, Subject};
use chrono::TimeDelta;
use rusqlite::Connection;

/// Nobody plans plants further ahead, days. Judgement: two years, so that the
/// plans that are looked at each day stay few.
const AHEAD_DAYS: i64 = 731;

/// Weeks between sowings, or from sowing to ready. Judgement: what is biennial
/// is ready in two years.
const MAX_WEEKS: u32 = 104;

/// So many in a hundred over those wanted. Judgement.
const MAX_OVER: u32 = 200;

pub(super) fn described(check: &Check, what: &PlanDescribed) -> Result<(), Error> {
    name(&what.crop, MAX_NAME)?;
    optional_name(&what.variety, MAX_NAME)?;
    some(what.wanted, MAX_NUMBER)?;
    if let Some(packet) = what.packet {
        known(check, Subject::Packet(packet))?;
    }
    if let Some(weeks) = what.raise_weeks {
        some(weeks, MAX_WEEKS)?;
    }
    match what.rhythm {
        Rhythm::Every { weeks, .. } => some(weeks, MAX_WEEKS)?,
        Rhythm::Sale { over_percent, .. } if over_percent > MAX_OVER => {
            return refuse_with("number_too_large", [("most", number(MAX_OVER))]);
        }
        _ => {}
    }
    let last = what.rhythm.last_day();
    if what.rhythm.first_day().is_some_and(|first| first > last) {
        return refuse("ends_before_it_starts");
    }
    let today = check.happened.local.date();
    let day = || [("day", Value::Day(last))];
    if last - today > TimeDelta::days(AHEAD_DAYS) {
        return refuse_with("plan_too_far_ahead", day());
    }
    if last < today && !what.ended && !check.correcting {
        return refuse_with("plan_day_is_past", day());
    }
    Ok(())
}

pub(super) fn reserved(check: &mut Check, what: &Reserved) -> Result<(), Error> {
    some(what.number, MAX_NUMBER)?;
    optional_name(&what.note, MAX_NAME)?;
    match &what.of {
        Wares::Plants { of } => known(check, (*of).into())?,
        Wares::Crop { crop, variety } => {
            name(crop, MAX_NAME)?;
            optional_name(variety, MAX_NAME)?;
        }
    }
    if what.released {
        return Ok(());
    }
    let raised = raised(check.db, &what.of)?;
    let others = kept(check.db, &what.of, Some(what.reservation))?;
    let before = match read::state(check.db, Subject::Reservation(what.reservation))? {
        Some(State::Reservation(state)) => state.handed_over,
        _ => 0,
    };
    let own = what.number.saturating_sub(before);
    if u64::from(own) + others > raised {
        check.questions.push(
            Question::new("more_reserved_than_raised")
                .with("reserved", Value::Number((u64::from(own) + others) as f64))
                .with("raised", Value::Number(raised as f64)),
        );
    }
    Ok(())
}

/// Plants that go leave those that others were promised; and what they were
/// kept as is known.
pub(super) fn leaves_enough(check: &mut Check, what: &Left) -> Result<(), Error> {
    if let Some(reservation) = what.reservation {
        known(check, Subject::Reservation(reservation))?;
    }
    let of = Wares::Plants { of: what.of };
    let kept = kept(check.db, &of, what.reservation)?;
    let there = read::state(check.db, what.of.into())?
        .and_then(|state| Some(state.plants()?.numbers.there))
        .unwrap_or(0);
    let rest = there.saturating_sub(what.number);
    if kept > u64::from(rest) && what.number <= there && !check.correcting {
        check.questions.push(
            Question::new("others_were_promised")
                .with("reserved", Value::Number(kept as f64))
                .with("rest", number(rest)),
        );
    }
    Ok(())
}

/// Plants that are there, and seeds that may still come up.
fn raised(db: &Connection, of: &Wares) -> Result<u64, Error> {
    let mut all = 0;
    for sowing in read::living::<SowingState>(db, "sowing", i64::MIN)? {
        if fits(db, of, Plants::Sowing(sowing.sown.sowing))? {
            all += u64::from(sowing.plants.numbers.there) + u64::from(sowing.seeds_left());
        }
    }
    for batch in read::living::<BatchState>(db, "batch", i64::MIN)? {
        if fits(db, of, Plants::Batch(batch.batch))? {
            all += u64::from(batch.plants.numbers.there);
        }
    }
    Ok(all)
}

/// Kept of the same, but for one reservation.
fn kept(db: &Connection, of: &Wares, but: Option<ReservationId>) -> Result<u64, Error> {
    let mut all = 0;
    for other in read::living::<ReservationState>(db, "reservation", i64::MIN)? {
        if Some(other.described.reservation) == but {
            continue;
        }
        let same = match &other.described.of {
            Wares::Plants { of: plants } => fits(db, of, *plants)?,
            Wares::Crop { crop, variety } => is(of, crop, variety),
        };
        if same {
            all += u64::from(other.remaining());
        }
    }
    Ok(all)
}

fn fits(db: &Connection, of: &Wares, plants: Plants) -> Result<bool, Error> {
    match of {
        Wares::Plants { of } => Ok(*of == plants),
        Wares::Crop { .. } => {
            Ok(crop_of(db, plants)?.is_some_and(|(crop, variety)| is(of, &crop, &variety)))
        }
    }
}

/// Whether a crop and variety are what is meant.
fn is(of: &Wares, crop: &str, variety: &str) -> bool {
    match of {
        Wares::Plants { .. } => false,
        Wares::Crop {
            crop: meant,
            variety: any,
        } => meant == crop && (any.trim().is_empty() || any.trim() == variety.trim()),
    }
}

/// Crop and variety of plants: of the packet they go back to, or as started.
fn crop_of(db: &Connection, plants: Plants) -> Result<Option<(String, String)>, Error> {
    let mut of = plants;
    // A ring of batches, as a merge might bring, comes to an end here.
    for _ in 0..100 {
        match read::state(db, of.into())? {
            Some(State::Sowing(sowing)) => {
                let packet = read::state(db, Subject::Packet(sowing.packet()))?;
                return Ok(match packet {
                    Some(State::Packet(packet)) => {
                        Some((packet.described.crop, packet.described.variety))
                    }
                    _ => None,
                });
            }
            Some(State::Batch(batch)) => match batch.parent {
                Parent::Plants { of: parent, .. } => of = parent,
                Parent::Started { crop, variety, .. } => return Ok(Some((crop, variety))),
            },
            _ => return Ok(None),
        }
    }
    Ok(None)
}

//! Sowings and batches.

use super::garden::{MAX_NUMBER, some};
use super::texts::{MAX_NAME, name, optional_name};
use super::tray::cells;
use super::{Check, known, living_tray, new, number, refuse, refuse_with, unknown};
use crate::content::{
    BatchStarted, Counted, DugUp, Left, OfPlants, OfSowing, Seeds, SeedsLost, Sown, Treatment, Up,
    WentOn,
};
use crate::error::{Error, Question, Value};
use crate::fold::State;
use crate::state::{PlantsState, SowingState};
use crate::store::read;
use crate::subject::{Plants, Subject};
use std::collections::BTreeSet;

/// Deeper is planting, mm. Judgement.
const MAX_DEPTH_MM: f64 = 300.0;

/// Longer in water than this and seed drowns, hours. Judgement.
const MAX_SOAK_HOURS: f64 = 168.0;

/// No seed is kept cold for longer, weeks. Judgement.
const MAX_COLD_WEEKS: u32 = 52;

pub(super) fn sown(check: &Check, what: &Sown) -> Result<(), Error> {
    new(check, Subject::Sowing(what.sowing))?;
    known(check, Subject::Packet(what.packet))?;
    cells(
        check,
        what.tray,
        &what.cells,
        &[Plants::Sowing(what.sowing)],
    )?;
    if let Seeds::Exact(seeds) | Seeds::About(seeds) = what.seeds {
        some(seeds, MAX_NUMBER)?;
    }
    if let Some(wanted) = what.wanted {
        some(wanted, MAX_NUMBER)?;
    }
    if let Some(depth) = what.depth_mm
        && !(0.0..=MAX_DEPTH_MM).contains(&depth)
    {
        return refuse_with(
            "depth_out_of_range",
            [("most", Value::Millimetres(MAX_DEPTH_MM))],
        );
    }
    treatment(what.treatment)?;
    if let Some(plan) = what.plan {
        known(check, Subject::Plan(plan))?;
    }
    what.again_of
        .map_or(Ok(()), |of| known(check, Subject::Sowing(of)))
}

fn treatment(what: Treatment) -> Result<(), Error> {
    if let Some(hours) = what.soaked_hours
        && !(hours > 0.0 && hours <= MAX_SOAK_HOURS)
    {
        return refuse_with("soak_out_of_range", [("most", number(MAX_SOAK_HOURS))]);
    }
    what.cold_weeks
        .map_or(Ok(()), |weeks| some(weeks, MAX_COLD_WEEKS))
}

pub(super) fn started(check: &Check, what: &BatchStarted) -> Result<(), Error> {
    new(check, Subject::Batch(what.batch))?;
    name(&what.crop, MAX_NAME)?;
    optional_name(&what.variety, MAX_NAME)?;
    some(what.number, MAX_NUMBER)?;
    cells(check, what.tray, &what.cells, &[Plants::Batch(what.batch)])
}

/// The plants, dead or alive.
fn plants(check: &Check, of: Plants) -> Result<PlantsState, Error> {
    match read::state(check.db, of.into())? {
        Some(State::Sowing(state)) => Ok(state.plants),
        Some(State::Batch(state)) => Ok(state.plants),
        _ => refuse(unknown(of.into())),
    }
}

/// Whether they had ended when this happened.
fn ended(check: &Check, plants: &PlantsState) -> bool {
    let now = check.happened.instant();
    !check.correcting
        && plants
            .ended
            .as_ref()
            .is_some_and(|ended| ended.at.at.instant() <= now)
}

/// The plants, still in use.
pub(super) fn living(check: &Check, of: Plants) -> Result<PlantsState, Error> {
    let plants = plants(check, of)?;
    if ended(check, &plants) {
        return refuse("already_ended");
    }
    Ok(plants)
}

pub(super) fn counted(check: &mut Check, what: &Counted) -> Result<(), Error> {
    let plants = plants(check, what.of)?;
    if let Up::Number(number) = what.up
        && number > 0
    {
        some(number, MAX_NUMBER)?;
    }
    if ended(check, &plants)
        && let Some(ended) = plants.ended
    {
        let day = Value::Day(ended.at.at.local.date());
        check
            .questions
            .push(Question::new("after_the_end").with("day", day));
    }
    Ok(())
}

pub(super) fn went_on(check: &Check, what: &WentOn) -> Result<(), Error> {
    living(check, what.of)?;
    if what.parts.is_empty() {
        return refuse("parts_none");
    }
    // Plants may stay in the cells they came from.
    let mut own = vec![what.of];
    own.extend(what.parts.iter().map(|part| Plants::Batch(part.batch)));
    let mut ids = BTreeSet::new();
    let mut used = BTreeSet::new();
    for part in &what.parts {
        if !ids.insert(part.batch) || Plants::Batch(part.batch) == what.of {
            return refuse("id_taken");
        }
        new(check, Subject::Batch(part.batch))?;
        some(part.number, MAX_NUMBER)?;
        cells(check, part.tray, &part.cells, &own)?;
        for cell in &part.cells {
            if !used.insert((part.tray, *cell)) {
                let code = Value::Text(living_tray(check, part.tray)?.described.code);
                return refuse_with("cells_taken", [("code", code), ("cells", number(1))]);
            }
        }
    }
    Ok(())
}

pub(super) fn left(check: &mut Check, what: &Left) -> Result<(), Error> {
    some(what.number, MAX_NUMBER)?;
    living(check, what.of)?;
    super::plan::leaves_enough(check, what)
}

fn sowing(check: &Check, of: &OfSowing) -> Result<SowingState, Error> {
    living(check, Plants::Sowing(of.sowing))?;
    match read::state(check.db, Subject::Sowing(of.sowing))? {
        Some(State::Sowing(state)) => Ok(state),
        _ => refuse("sowing_unknown"),
    }
}

pub(super) fn dug_up(check: &Check, what: &DugUp) -> Result<(), Error> {
    let of = OfSowing {
        sowing: what.sowing,
    };
    let sowing = sowing(check, &of)?;
    let dug = what.firm.saturating_add(what.soft);
    some(dug, MAX_NUMBER)?;
    not_more_than_seeds(check, &sowing, dug)
}

pub(super) fn seeds_lost(check: &Check, what: &SeedsLost) -> Result<(), Error> {
    let of = OfSowing {
        sowing: what.sowing,
    };
    let sowing = sowing(check, &of)?;
    some(what.number, MAX_NUMBER)?;
    not_more_than_seeds(check, &sowing, what.number)
}

fn not_more_than_seeds(check: &Check, sowing: &SowingState, seeds: u32) -> Result<(), Error> {
    let left = if check.correcting {
        sowing.seeds().saturating_sub(sowing.plants.numbers.up)
    } else {
        sowing.seeds_left()
    };
    if matches!(sowing.sown.seeds, Seeds::Exact(_)) && seeds > left {
        return refuse_with("more_than_seeds", [("seeds", number(left))]);
    }
    Ok(())
}

pub(super) fn nothing_came_up(check: &Check, what: &OfSowing) -> Result<(), Error> {
    let up = sowing(check, what)?.plants.numbers.up;
    if up > 0 && !check.correcting {
        return refuse_with("something_came_up", [("up", number(up))]);
    }
    Ok(())
}

/// Plants of which none are left have ended by themselves, and may be called
/// done with all the same.
pub(super) fn finished(check: &Check, what: &OfPlants) -> Result<(), Error> {
    let plants = plants(check, what.of)?;
    let none_left = plants.numbers.up > 0 && plants.numbers.there == 0;
    if ended(check, &plants) && !none_left {
        return refuse("already_ended");
    }
    Ok(())
}

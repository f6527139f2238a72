//! Whether what was written adds up, seen after the fold by comparing each
//! state with what it was before the act.

use super::tray::living_in;
use super::{number, refuse, refuse_with};
use crate::error::{Error, Question, Value};
use crate::fold::State;
use crate::state::{Mark, Parent, PlantsState, Problem, SowingState, TrayState};
use crate::store::making::Change;
use crate::store::read;
use crate::subject::{Plants, Subject};
use rusqlite::Connection;
use std::collections::{BTreeMap, BTreeSet};

/// The states that an act changed.
pub(crate) type Changes = BTreeMap<Subject, Change>;

/// How the act came about.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum How {
    /// New entries: all of it must add up.
    Written,
    /// A correction: the same, with one refusal for all of it.
    Corrected,
    /// A withdrawal or undo: only what comes back to life is looked at.
    Withdrawn,
}

/// Refuses or asks, if it must. What happens now to subjects that are `ahead`,
/// written by a clock that is later than this one, need not add up: of two
/// clocks nobody knows which is wrong, and the grower is at the bench.
pub(crate) fn settle(
    db: &Connection,
    changes: &Changes,
    ahead: &BTreeSet<Subject>,
    how: How,
    questions: &mut Vec<Question>,
) -> Result<(), Error> {
    for (subject, change) in changes {
        let Change { before, after, .. } = change;
        let Some(after) = after else {
            continue;
        };
        let was_alive = before.as_ref().is_some_and(State::alive);
        let revived = after.alive() && !was_alive;
        let before_plants = before.as_ref().and_then(State::plants);
        let ahead = ahead.contains(subject);
        if how != How::Withdrawn {
            if !ahead {
                dates(before.as_ref(), after)?;
            }
            if let Some(plants) = after.plants() {
                if !ahead {
                    problems(how, before_plants, plants)?;
                }
                numbers(before_plants, after, plants, questions);
            }
        }
        match after {
            State::Tray(tray) => {
                if after.alive() {
                    tray_in_use(db, *subject, before.as_ref(), tray)?;
                } else if was_alive && !living_in(db, tray)?.is_empty() {
                    return refuse_with("tray_occupied", [("code", code(tray))]);
                }
            }
            State::Sowing(state) if revived && (before.is_some() || how != How::Written) => {
                let plants = Plants::Sowing(state.sown.sowing);
                cells_free(db, plants, state.sown.tray, None)?;
            }
            State::Batch(state) if revived && (before.is_some() || how != How::Written) => {
                let parent = match &state.parent {
                    Parent::Plants { of, .. } => Some(*of),
                    Parent::Started { .. } => None,
                };
                cells_free(db, Plants::Batch(state.batch), state.tray, parent)?;
            }
            _ => {}
        }
    }
    Ok(())
}

fn code(tray: &TrayState) -> Value {
    Value::Text(tray.described.code.clone())
}

/// A tray in use: its code is its own, and what lives in it has its cells.
fn tray_in_use(
    db: &Connection,
    subject: Subject,
    before: Option<&State>,
    tray: &TrayState,
) -> Result<(), Error> {
    let before = match before {
        Some(State::Tray(before)) if before.emptied.is_none() => Some(before),
        _ => None,
    };
    let same_code = before.is_some_and(|before| before.described.code == tray.described.code);
    if !same_code && read::code_in_use(db, subject, &tray.described.code)? {
        return refuse_with("code_taken", [("code", code(tray))]);
    }
    if before.is_some_and(|before| before.cell_count() > tray.cell_count()) {
        let living = living_in(db, tray)?;
        let count = tray.cell_count();
        let lost = living
            .iter()
            .flat_map(|plants| tray.cells_of(*plants))
            .any(|cell| u32::from(cell) >= count);
        if lost {
            return refuse_with("tray_would_lose_cells", [("code", code(tray))]);
        }
    }
    Ok(())
}

/// Plants that come back to life find their cells free; those they came from
/// and those that came from them may share them.
fn cells_free(
    db: &Connection,
    plants: Plants,
    tray: crate::id::TrayId,
    parent: Option<Plants>,
) -> Result<(), Error> {
    let Some(State::Tray(tray)) = read::state(db, Subject::Tray(tray))? else {
        return Ok(());
    };
    let mut others = BTreeSet::new();
    for other in living_in(db, &tray)? {
        let child = match read::state(db, other.into())? {
            Some(State::Batch(batch)) => {
                matches!(batch.parent, Parent::Plants { of, .. } if of == plants)
            }
            _ => false,
        };
        if other != plants && Some(other) != parent && !child {
            others.insert(other);
        }
    }
    let free = tray.free_cells(&others);
    let taken = tray
        .cells_of(plants)
        .into_iter()
        .filter(|cell| u32::from(*cell) < tray.cell_count() && !free.contains(cell))
        .count();
    if taken > 0 {
        let taken = f64::from(u32::try_from(taken).unwrap_or(u32::MAX));
        return refuse_with(
            "cells_taken",
            [("code", code(&tray)), ("cells", Value::Number(taken))],
        );
    }
    Ok(())
}

fn problems(how: How, before: Option<&PlantsState>, after: &PlantsState) -> Result<(), Error> {
    let new = |problem: Problem| {
        after.problems.contains(&problem)
            && !before.is_some_and(|before| before.problems.contains(&problem))
    };
    let there = before.map_or(0, |before| before.numbers.there);
    match how {
        How::Written if new(Problem::MoreLeftThanThere) => {
            refuse_with("more_than_there", [("there", number(there))])
        }
        How::Written if new(Problem::AfterTheEnd) => refuse("already_ended"),
        How::Corrected if new(Problem::MoreLeftThanThere) || new(Problem::AfterTheEnd) => {
            refuse("correction_does_not_add_up")
        }
        _ => Ok(()),
    }
}

fn numbers(
    before: Option<&PlantsState>,
    state: &State,
    after: &PlantsState,
    questions: &mut Vec<Question>,
) {
    let Some(before) = before else {
        return;
    };
    let (was, is) = (before.numbers, after.numbers);
    if is.missing > was.missing {
        questions.push(
            Question::new("count_falls")
                .with("lost", number(is.missing - was.missing))
                .with("there", number(is.there)),
        );
    }
    if is.up <= was.up {
        return;
    }
    match state {
        State::Sowing(sowing) if seeds(sowing).is_some_and(|seeds| is.up > seeds) => {
            questions.push(
                Question::new("above_the_seeds")
                    .with("up", number(is.up))
                    .with("seeds", number(sowing.seeds())),
            );
        }
        State::Batch(_) => questions.push(
            Question::new("above_the_batch")
                .with("up", number(is.up))
                .with("before", number(was.up)),
        ),
        _ => {}
    }
}

fn seeds(sowing: &SowingState) -> Option<u32> {
    (sowing.sown.seeds != crate::content::Seeds::Pinch).then(|| sowing.seeds())
}

/// Nothing happened to plants on a day before they were there.
fn dates(before: Option<&State>, after: &State) -> Result<(), Error> {
    if let Some(opened) = too_early(after)
        && before.is_none_or(|before| too_early(before).is_none())
    {
        let day = Value::Day(opened.at.local.date());
        return refuse_with("before_the_sowing", [("day", day)]);
    }
    Ok(())
}

/// When it began, if something happened on a day before.
fn too_early(state: &State) -> Option<&Mark> {
    let (opened, plants, dug) = match state {
        State::Sowing(state) => (&state.opened_by, &state.plants, state.dug.as_slice()),
        State::Batch(state) => (&state.opened_by, &state.plants, &[][..]),
        _ => return None,
    };
    let counts = match state {
        State::Sowing(state) => state.counts.as_slice(),
        _ => &[],
    };
    let day = opened.at.local.date();
    let mut marks = counts
        .iter()
        .map(|count| &count.at)
        .chain(dug.iter().map(|dug| &dug.at))
        .chain(plants.went_on.iter().map(|went| &went.at))
        .chain(plants.left.iter().map(|left| &left.at))
        .chain(&plants.ready)
        .chain(plants.ended.iter().map(|ended| &ended.at));
    marks
        .any(|mark| mark.at.local.date() < day)
        .then_some(opened)
}

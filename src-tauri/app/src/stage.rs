//! How far plants have come.

use crate::growth::{Growth, growth};
use crate::picture::Picture;
use crate::view::{CropName, NumbersView, PlantsLine, PlantsRef, Stage};
use chrono::{NaiveDate, NaiveDateTime};
use plumule_agronomy::crops;
use plumule_journal::content::Seeds;
use plumule_journal::id::TrayId;
use plumule_journal::state::{BatchState, Mark, Numbers, Parent, PlantsState, SowingState};
use plumule_journal::subject::Plants;
use plumule_journal::words::Step;
use std::collections::BTreeSet;

/// Some plants in one line; none if they are not in the picture.
pub(crate) fn plants_line(
    picture: &Picture,
    plants: Plants,
    now: NaiveDateTime,
) -> Option<PlantsLine> {
    let growth = growth_of(picture, plants, now);
    plants_line_with(picture, plants, growth.as_ref(), now.date())
}

/// The growth of a living sowing.
fn growth_of(picture: &Picture, plants: Plants, now: NaiveDateTime) -> Option<Growth> {
    let Plants::Sowing(id) = plants else {
        return None;
    };
    let sowing = picture.sowings.get(&id)?;
    let living = sowing.plants.ended.is_none();
    living.then(|| growth(picture, sowing, now)).flatten()
}

/// The same with the growth already made out.
pub(crate) fn plants_line_with(
    picture: &Picture,
    plants: Plants,
    growth: Option<&Growth>,
    today: NaiveDate,
) -> Option<PlantsLine> {
    let state = picture.plants(plants)?;
    let stage = stage(picture, plants, growth, today)?;
    let (opened_by, tray) = opened(picture, plants)?;
    let (crop, variety) = picture.crop_of(plants).unwrap_or(("?", ""));
    let sown = match plants {
        Plants::Sowing(id) => Some(&picture.sowings.get(&id)?.sown),
        Plants::Batch(_) => None,
    };
    let seeds = sown.and_then(|sown| match sown.seeds {
        Seeds::Exact(number) | Seeds::About(number) => Some(number),
        Seeds::Pinch => None,
    });
    let coming = matches!(stage, Stage::Sown | Stage::ComingUp);
    let days = (today - opened_by.at.local.date()).num_days();
    Some(PlantsLine {
        plants: reference(plants),
        crop: CropName {
            key: crop.to_owned(),
            known: crops().get(crop).is_some(),
        },
        variety: variety.to_owned(),
        packet: sown.map(|sown| sown.packet.to_string()),
        stage,
        day: i32::try_from(days).unwrap_or(i32::MAX),
        seeds,
        numbers: numbers(&state.numbers),
        progress: growth
            .filter(|_| coming)
            .map(|growth| growth.course.progress),
        cells: cells(picture, tray, plants),
    })
}

/// The stage of some plants.
fn stage(
    picture: &Picture,
    plants: Plants,
    growth: Option<&Growth>,
    today: NaiveDate,
) -> Option<Stage> {
    let state = picture.plants(plants)?;
    if let Some(stage) = ended(state) {
        return Some(stage);
    }
    let (opened_by, tray) = opened(picture, plants)?;
    let tray = picture.trays.get(&tray);
    let hardened = tray.is_some_and(|tray| {
        let since = opened_by.at.instant();
        tray.hardened.iter().any(|mark| mark.at.instant() >= since)
    });
    let there = state.numbers.there > 0;
    Some(match plants {
        _ if state.ready.is_some() => Stage::Ready,
        _ if hardened && there => Stage::HardeningOff,
        Plants::Sowing(id) => coming(picture.sowings.get(&id)?, growth, today),
        Plants::Batch(id) => began_as(picture.batches.get(&id)?),
    })
}

fn ended(state: &PlantsState) -> Option<Stage> {
    let ended = state.ended.as_ref()?;
    let Numbers {
        gone_on,
        planted_out,
        sold,
        given_away,
        there,
        lost,
        missing,
        ..
    } = state.numbers;
    Some(if ended.nothing_came_up {
        Stage::NothingCameUp
    } else if there > 0 {
        Stage::Finished
    } else if gone_on + planted_out + sold + given_away > 0 {
        Stage::Gone
    } else if lost + missing > 0 {
        Stage::Lost
    } else {
        Stage::Finished
    })
}

/// Up once nine in ten of what is expected are, or the day for it has passed.
fn coming(sowing: &SowingState, growth: Option<&Growth>, today: NaiveDate) -> Stage {
    let up = sowing.plants.numbers.up;
    let all = up >= sowing.seeds();
    let nearly = growth.is_some_and(|growth| {
        growth.nearly_all_up() || growth.due.d90.is_some_and(|d90| d90 < today)
    });
    match up {
        0 => Stage::Sown,
        _ if all || nearly || !sowing.plants.went_on.is_empty() => Stage::Up,
        _ => Stage::ComingUp,
    }
}

fn began_as(batch: &BatchState) -> Stage {
    match batch.parent {
        Parent::Started { .. } => Stage::Set,
        Parent::Plants {
            step: Step::PottedOn,
            ..
        } => Stage::PottedOn,
        Parent::Plants {
            step: Step::SownOn, ..
        } => Stage::ComingUp,
        Parent::Plants { .. } => Stage::PrickedOut,
    }
}

/// When plants began in their tray, and which that is.
fn opened(picture: &Picture, plants: Plants) -> Option<(&Mark, TrayId)> {
    match plants {
        Plants::Sowing(id) => {
            let sowing = picture.sowings.get(&id)?;
            Some((&sowing.opened_by, sowing.sown.tray))
        }
        Plants::Batch(id) => {
            let batch = picture.batches.get(&id)?;
            Some((&batch.opened_by, batch.tray))
        }
    }
}

fn cells(picture: &Picture, tray: TrayId, plants: Plants) -> Vec<u16> {
    let occupants = picture.trays.get(&tray).map(|tray| &tray.occupants);
    let held: BTreeSet<u16> = occupants
        .into_iter()
        .flatten()
        .filter(|held| held.plants == plants)
        .flat_map(|held| held.cells.iter().copied())
        .collect();
    held.into_iter().collect()
}

pub(crate) fn reference(plants: Plants) -> PlantsRef {
    match plants {
        Plants::Sowing(id) => PlantsRef::Sowing(id.to_string()),
        Plants::Batch(id) => PlantsRef::Batch(id.to_string()),
    }
}

fn numbers(numbers: &Numbers) -> NumbersView {
    NumbersView {
        up: numbers.up,
        gone_on: numbers.gone_on,
        thinned: numbers.thinned,
        lost: numbers.lost + numbers.missing,
        planted_out: numbers.planted_out,
        sold: numbers.sold,
        given_away: numbers.given_away,
        there: numbers.there,
    }
}

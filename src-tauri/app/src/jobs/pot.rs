//! Pot on: plants that are long to raise, about half-way; cuttings when they
//! have roots; bought plugs when they come.

use super::leaves::{full_cell, true_leaves};
use super::season::{after, began, grown};
use super::tray::half_up;
use super::{Job, LivingTray, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use chrono::NaiveDate;
use plumule_journal::state::{BatchState, Parent};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::{Container, Origin, Step};

/// Crops that are raised in fewer weeks go out from their cells (judgement).
const LONG_WEEKS: f64 = 6.0;

/// Days that plants stay after they were set into fresh compost (judgement).
const SETTLED_DAYS: u64 = 21;

/// Days from the first true leaves to a full cell (judgement).
const FILLED_DAYS: u64 = 14;

/// Days in which cuttings root (judgement; it is said that roots are to be
/// looked for).
const ROOTED_DAYS: u64 = 28;

/// Days that bought plugs may wait (judgement).
const PLUG_DAYS: u64 = 1;

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>, plants: Plants) -> Option<Job> {
    let state = plan.picture.plants(plants)?;
    if !state.went_on.is_empty()
        || state.ready.is_some()
        || !grown(plan, tray).any(|grown| grown == plants)
    {
        return None;
    }
    let began = began(plan, plants)?;
    let (due, key) = match plants {
        Plants::Batch(id) => of_batch(plan, tray, plan.picture.batches.get(&id)?)?,
        Plants::Sowing(id) => {
            let sowing = plan.picture.sowings.get(&id)?;
            let leaves = true_leaves(plan, tray, plants, half_up(sowing)?.at.local.date());
            let pot = tray.state.described.container == Container::Cells;
            let full = full(plan, tray, plants).filter(|_| pot)?;
            (full.max(after(leaves, FILLED_DAYS)), "why-pot-on")
        }
    };
    let mut why = plan
        .named(Say::new(key), plants)
        .with("there", Arg::Number(f64::from(state.numbers.there)))
        .with("began", Arg::Day(began.at.local.date()));
    if let Some((weeks, most)) = plan
        .picture
        .book_crop(plants)
        .and_then(|crop| crop.weeks_to_raise)
    {
        why = why
            .with("weeks", Arg::Number(weeks))
            .with("weeksmost", Arg::Number(most));
    }
    if let Some(sowing) = plan.picture.origin(plants) {
        why = why.with("sown", Arg::Day(sowing.opened_by.at.local.date()));
    }
    Some(
        Job::new(
            JobKind::PotOn,
            Subject::from(plants),
            began.entry,
            rounds::morning(plan.picture, due),
        )
        .because(why),
    )
}

fn of_batch(
    plan: &Plan<'_>,
    tray: &LivingTray<'_>,
    batch: &BatchState,
) -> Option<(NaiveDate, &'static str)> {
    let set = batch.opened_by.at.local.date();
    match batch.parent {
        Parent::Started {
            origin: Origin::Cuttings,
            ..
        } => Some((after(set, ROOTED_DAYS), "why-pot-on-cuttings")),
        Parent::Started {
            origin: Origin::Plugs,
            ..
        } => Some((after(set, PLUG_DAYS), "why-pot-on-plugs")),
        Parent::Plants { step, .. }
            if step != Step::PottedOn && tray.state.described.container == Container::Cells =>
        {
            let full = full(plan, tray, Plants::Batch(batch.batch))?;
            Some((full.max(after(set, SETTLED_DAYS)), "why-pot-on"))
        }
        Parent::Plants { .. } | Parent::Started { .. } => None,
    }
}

/// When its cell is full, for crops that are long to raise.
fn full(plan: &Plan<'_>, tray: &LivingTray<'_>, plants: Plants) -> Option<NaiveDate> {
    let (least, _) = plan.picture.book_crop(plants)?.weeks_to_raise?;
    let sowing = plan.picture.origin(plants)?;
    let up = half_up(sowing).unwrap_or(&sowing.opened_by).at.local.date();
    (least >= LONG_WEEKS).then(|| full_cell(plan, tray, plants, up))
}

//! Feed: from four weeks after pricking out, or when leaves are pale; never
//! before true leaves.

use super::leaves::true_leaves;
use super::season::after;
use super::tray::half_up;
use super::{Job, LivingTray, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use chrono::NaiveDate;
use plumule_journal::state::{Mark, Parent, PlantsState};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::Sight;

/// Days for which the compost that plants were set into feeds them (common
/// practice: four weeks or so).
const FED_BY_COMPOST_DAYS: u64 = 28;

/// Days from one feed to the next (common practice: once a fortnight).
const AGAIN_DAYS: u64 = 14;

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Job> {
    let wants = tray.plants().filter_map(|plants| want(plan, tray, plants));
    let (due, since, key, plants) = wants.min_by_key(|(due, _, _, plants)| (*due, *plants))?;
    let why = plan
        .named(Say::new(key), plants)
        .with("since", Arg::Day(since.at.local.date()));
    let mut job = Job::new(
        JobKind::Feed,
        Subject::Tray(tray.id),
        since.entry,
        rounds::morning(plan.picture, due),
    )
    .because(why);
    job.plants = None;
    Some(job)
}

type Want<'a> = (NaiveDate, &'a Mark, &'static str, Plants);

fn want<'a>(plan: &Plan<'a>, tray: &LivingTray<'a>, plants: Plants) -> Option<Want<'a>> {
    let state = plan.picture.plants(plants)?;
    if state.numbers.there == 0 {
        return None;
    }
    let fed = tray.state.fed.last();
    let since_fed = |mark: &Mark| fed.is_none_or(|fed| mark.at.instant() > fed.at.instant());
    if let Some(pale) = pale(state).filter(|pale| since_fed(pale)) {
        let leaves = leaves(plan, tray, plants)?;
        let due = pale.at.local.date().max(leaves);
        return Some((due, pale, "why-feed-pale", plants));
    }
    let Plants::Batch(id) = plants else {
        return None;
    };
    let batch = plan.picture.batches.get(&id)?;
    let Parent::Plants { .. } = batch.parent else {
        return None;
    };
    let began = &batch.opened_by;
    let first = after(began.at.local.date(), FED_BY_COMPOST_DAYS);
    Some(
        match fed.filter(|fed| fed.at.instant() > began.at.instant()) {
            Some(fed) => {
                let again = after(fed.at.local.date(), AGAIN_DAYS);
                (again.max(first), fed, "why-feed-again", plants)
            }
            None => (first, began, "why-feed", plants),
        },
    )
}

fn pale(state: &PlantsState) -> Option<&Mark> {
    let mut sights = state.sights.iter().rev();
    let pale = sights.find(|seen| seen.sight == Sight::PaleLeaves)?;
    Some(&pale.at)
}

/// The day of its true leaves: a batch has them.
fn leaves(plan: &Plan<'_>, tray: &LivingTray<'_>, plants: Plants) -> Option<NaiveDate> {
    let state = plan.picture.plants(plants)?;
    let seen = state
        .sights
        .iter()
        .find(|seen| seen.sight == Sight::TrueLeaves);
    if let Some(seen) = seen {
        return Some(seen.at.at.local.date());
    }
    match plants {
        Plants::Sowing(id) => {
            let sowing = plan.picture.sowings.get(&id)?;
            let up = half_up(sowing)?.at.local.date();
            Some(true_leaves(plan, tray, plants, up))
        }
        Plants::Batch(_) => Some(NaiveDate::MIN),
    }
}

//! Sow for a plan.

use super::leaves::true_leaves;
use super::tray::half_up;
use super::{Job, Plan};
use crate::plans::{Need, needs};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use crate::words;
use chrono::{NaiveDate, NaiveTime};
use plumule_journal::content::Rhythm;
use plumule_journal::id::SowingId;
use plumule_journal::state::SightAt;
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::Sight;

/// So many days before it is too late it is for today (judgement: a week).
const PRESSING_DAYS: i64 = 7;

pub(super) fn jobs(plan: &Plan<'_>) -> Vec<Job> {
    needs(plan)
        .iter()
        .filter_map(|need| job(plan, need))
        .collect()
}

fn job(plan: &Plan<'_>, need: &Need<'_>) -> Option<Job> {
    let next = need.next.as_ref()?;
    let today = plan.now.date();
    let left = (next.last - today).num_days();
    let by_day = need.raising.is_some();
    let mut job = Job::new(
        JobKind::Sow,
        Subject::Plan(need.plan.described.plan),
        next.opened_by,
        rounds::morning(plan.picture, next.ask),
    )
    .for_today(by_day && left < PRESSING_DAYS)
    .because(why(plan, need)?);
    job.until = Some(next.last.succ_opt()?.and_time(NaiveTime::MIN));
    Some(job)
}

/// Why it is to be sown, with the reckoning.
fn why(plan: &Plan<'_>, need: &Need<'_>) -> Option<Say> {
    let next = need.next.as_ref()?;
    let today = plan.now.date();
    // Of what is not due yet nobody reads how many.
    let due = next.ask <= today && today <= next.last;
    let seeds = due.then(|| need.seeds(plan)).flatten();
    let described = &need.plan.described;
    let number = |number: u32| Arg::Number(f64::from(number));
    let key = match (described.rhythm, next.short) {
        (Rhythm::By { .. } | Rhythm::Sale { .. }, true) => "why-sow-again",
        (Rhythm::By { .. }, false) => "why-sow-by",
        (Rhythm::Sale { .. }, false) => "why-sow-sale",
        (Rhythm::Every { .. }, _) => "why-sow-every",
        (Rhythm::TrueLeaves { .. }, _) if need.plan.sowings.is_empty() => "why-sow-first",
        (Rhythm::TrueLeaves { .. }, _) => "why-sow-leaves",
    };
    let weeks = match described.rhythm {
        Rhythm::Every { weeks, .. } => weeks,
        _ => 0,
    };
    let raising = need.raising.as_ref();
    let days = |days: Option<i64>| Arg::Number(days.unwrap_or(0) as f64);
    let place = raising.and_then(|raising| raising.place);
    Some(
        Say::new(key)
            .with("crop", words::crop(&described.crop))
            .with("variety", words::variety(&described.variety))
            .with("wanted", number(need.raise))
            .with("expected", number(need.count.expected()))
            .with("plants", number(next.plants))
            .with("seeds", number(seeds.unwrap_or(0)))
            .with("day", Arg::Day(described.rhythm.last_day()))
            .with("last", Arg::Day(next.last))
            .with("left", days(Some((next.last - today).num_days())))
            .with("weeks", number(weeks))
            .with("longest", days(raising.map(|raising| raising.longest)))
            .with("up", days(raising.map(|raising| raising.up)))
            .with(
                "place",
                Arg::Text(place.map_or_else(String::new, |place| place.described.name.clone())),
            )
            .with(
                "own",
                Arg::Number(f64::from(u8::from(raising.is_some_and(|it| it.own)))),
            ),
    )
}

/// The day on which a sowing has its true leaves: seen, or reckoned from when
/// half were up; none before any is up.
pub(crate) fn true_leaves_of(plan: &Plan<'_>, sowing: SowingId) -> Option<NaiveDate> {
    let state = plan.picture.sowings.get(&sowing)?;
    let leaves = |sight: &&SightAt| sight.sight == Sight::TrueLeaves;
    if let Some(seen) = state.plants.sights.iter().find(leaves) {
        return Some(seen.at.at.local.date());
    }
    // Who pricks out has true leaves before him.
    if let Some(went) = state.plants.went_on.first() {
        return Some(went.at.at.local.date());
    }
    let up = half_up(state)?.at.local.date();
    let tray = plan.trays.iter().find(|tray| tray.id == state.sown.tray)?;
    Some(true_leaves(plan, tray, Plants::Sowing(sowing), up))
}

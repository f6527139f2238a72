//! Look for legginess: seedlings that are up away from bright light or over
//! heat. Answered with leggy or sturdy.

use super::tray::{first_up, later};
use super::{Job, LivingTray, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use chrono::Days;
use plumule_journal::state::{Mark, SightAt, SowingState};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::{Light, PlaceKind, Sight};

/// Days in poor light in which it shows, and after which it is looked for
/// again (judgement).
const SHOWS_DAYS: u64 = 3;

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>, sowing: &SowingState) -> Option<Job> {
    let place = &tray.place?.described;
    let poor = place.light != Light::Bright || place.kind == PlaceKind::HeatedPropagator;
    if !poor || sowing.plants.numbers.there == 0 || leggy(tray, sowing).is_some() {
        return None;
    }
    let since = later(first_up(sowing)?, &tray.state.stays.last()?.since);
    let looked = last_look(sowing).map(|sight| &sight.at);
    let since = looked.map_or(since, |looked| later(since, looked));
    let due = since.at.local.date() + Days::new(SHOWS_DAYS);
    let plants = Plants::Sowing(sowing.sown.sowing);
    let why = plan
        .named(Say::new("why-leggy"), plants)
        .with("place", Arg::Text(place.name.clone()))
        .with("light", crate::words::word("light", place.light.as_str()))
        .with("days", Arg::Number(SHOWS_DAYS as f64));
    Some(
        Job::new(
            JobKind::LookForLegginess,
            Subject::from(plants),
            since.entry,
            rounds::morning(plan.picture, due),
        )
        .because(why),
    )
}

fn last_look(sowing: &SowingState) -> Option<&SightAt> {
    let mut sights = sowing.plants.sights.iter().rev();
    sights.find(|seen| matches!(seen.sight, Sight::Leggy | Sight::Sturdy))
}

/// When a sowing was seen to be leggy where it still stands.
pub(super) fn leggy<'a>(tray: &LivingTray<'_>, sowing: &'a SowingState) -> Option<&'a Mark> {
    let last = last_look(sowing).filter(|seen| seen.sight == Sight::Leggy)?;
    let arrived = tray.state.stays.last()?;
    (last.at.at.instant() >= arrived.since.at.instant()).then_some(&last.at)
}

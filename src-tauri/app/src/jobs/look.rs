//! Look for seedlings: daily, from when the first is as likely as not to the
//! day by which nine in ten are.

use super::{Job, LivingTray, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use chrono::{NaiveTime, TimeDelta};
use plumule_journal::state::SowingState;
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::{Light, PlaceKind};

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>, sowing: &SowingState) -> Option<Job> {
    let id = sowing.sown.sowing;
    let growth = plan.growth(id)?;
    let first = growth.due.first?;
    let numbers = sowing.plants.numbers;
    let gone = !sowing.plants.went_on.is_empty() && !tray.sprouting();
    if gone || numbers.up >= sowing.seeds() {
        return None;
    }
    let last = sowing.counts.last();
    let next = match last {
        Some(count) => count.at.at.local.date().succ_opt()?.max(first),
        None => first,
    };
    let due = rounds::morning(plan.picture, next);
    let until = growth
        .due
        .d90
        .map(|d90| d90.and_time(NaiveTime::MIN) + TimeDelta::days(1));
    if until.is_some_and(|until| due >= until) {
        return None;
    }
    let opened_by = last.map_or(&sowing.opened_by, |count| &count.at);
    let key = match (tray.sprouting(), numbers.up) {
        (false, 0) => "why-look",
        (false, _) => "why-look-more",
        (true, 0) => "why-look-sprouts",
        (true, _) => "why-look-sprouts-more",
    };
    let mut why = plan
        .named(Say::new(key), Plants::Sowing(id))
        .with("first", Arg::Day(first))
        .with("progress", Arg::Share(growth.course.progress))
        .with("up", Arg::Number(f64::from(numbers.up)))
        .with("seeds", Arg::Number(f64::from(sowing.seeds())));
    if let Some(d90) = growth.due.d90 {
        why = why.with("most", Arg::Day(d90));
    }
    // In the dark or over heat a seedling that is not seen grows leggy in a day.
    let hurry = tray.stands_in(PlaceKind::HeatedPropagator)
        || tray
            .place
            .is_some_and(|place| place.described.light == Light::Dark);
    let mut job = Job::new(
        JobKind::LookForSeedlings,
        Subject::Sowing(id),
        opened_by.entry,
        due,
    )
    .for_today(hurry)
    .because(why);
    job.until = until;
    job.suggested = Some(numbers.there);
    Some(job)
}

//! Last chance to sow again: a sowing is behind, and soon it is too late in the
//! year for another.

use super::{Job, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::season::last_sowing;
use crate::view::JobKind;
use chrono::{NaiveTime, TimeDelta};
use plumule_journal::state::SowingState;
use plumule_journal::subject::{Plants, Subject};

/// Days before the last useful one at which it is said.
const BEFORE_DAYS: i64 = 7;

pub(super) fn job(plan: &Plan<'_>, sowing: &SowingState) -> Option<Job> {
    let id = sowing.sown.sowing;
    let growth = plan.growth(id)?;
    if growth.cold_weeks || !sowing.plants.went_on.is_empty() {
        return None;
    }
    let missing = match sowing.sown.wanted {
        Some(wanted) => sowing.plants.numbers.there < wanted,
        None => growth.fewer_than_expected(),
    };
    let behind = growth.due.d50.is_none_or(|half| half < plan.now.date());
    if !missing || !behind || plan.sown_again(id).is_some() {
        return None;
    }
    let last = last_sowing(plan.picture, growth.crop, growth.sown)?;
    let start = (last - TimeDelta::days(BEFORE_DAYS)).max(growth.sown.succ_opt()?);
    let why = plan
        .named(Say::new("why-last-chance"), Plants::Sowing(id))
        .with("last", Arg::Day(last))
        .with(
            "days",
            Arg::Number((last - plan.now.date()).num_days() as f64),
        )
        .with("up", Arg::Number(f64::from(sowing.plants.numbers.there)));
    let mut job = Job::new(
        JobKind::LastChance,
        Subject::Sowing(id),
        sowing.opened_by.entry,
        rounds::morning(plan.picture, start),
    )
    .for_today(true)
    .because(why);
    job.until = Some(last.succ_opt()?.and_time(NaiveTime::MIN));
    Some(job)
}

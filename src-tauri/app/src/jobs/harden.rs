//! Harden off: out by day and in at night, daily for 7 to 14 days before
//! plants go out.

use super::season::{began, grown, outing};
use super::{Job, LivingTray, Plan};
use crate::judgement::odds;
use crate::rounds;
use crate::say::{Arg, Say};
use crate::season::odds::chance_after;
use crate::view::JobKind;
use chrono::{NaiveDate, TimeDelta};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::PlaceKind;

/// Days of hardening off, least and most (common practice: a week or two).
pub(super) const DAYS: (usize, usize) = (7, 14);

/// Days before plants may go out at which hardening off begins: between the
/// two.
const BEFORE_DAYS: i64 = 10;

/// One job for the whole tray, for the first of its plants that is to go out.
pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Job> {
    if tray.stands_in(PlaceKind::Outdoors) {
        return None;
    }
    let outings = grown(plan, tray).filter_map(|plants| Some((outing(plan, plants)?, plants)));
    let (outing, plants) = outings.min_by_key(|(outing, plants)| (outing.from, *plants))?;
    let began = began(plan, plants)?;
    let done = tray.hardened_since(began);
    let (least, most) = DAYS;
    let start = outing.from - TimeDelta::days(BEFORE_DAYS);
    let next = match done.last() {
        Some(last) => last.at.local.date().succ_opt()?.max(start),
        None => start,
    };
    if done.len() >= most || (done.len() >= least && next >= outing.from) {
        return None;
    }
    let key = match (done.is_empty(), outing.frost) {
        (false, _) => "why-harden-off",
        (true, Some(_)) => "why-harden-off-first",
        (true, None) => "why-harden-off-no-frost-date",
    };
    let why = with_outing(plan, Say::new(key), plants, (&outing, outing.from))
        .with("day", Arg::Number(done.len() as f64 + 1.0))
        .with("least", Arg::Number(least as f64))
        .with("most", Arg::Number(most as f64));
    let opened_by = done.last().copied().unwrap_or(began);
    Some(
        Job::new(
            JobKind::HardenOff,
            Subject::Tray(tray.id),
            opened_by.entry,
            rounds::morning(plan.picture, next),
        )
        .for_today(!done.is_empty())
        .because(why),
    )
}

/// The dates and weeks that setting out hangs on, and the odds of a frost after
/// the day on which they go out, where a record of frosts tells them.
pub(super) fn with_outing(
    plan: &Plan<'_>,
    say: Say,
    plants: Plants,
    (outing, out): (&super::season::Outing, NaiveDate),
) -> Say {
    let (weeks, most) = outing.crop.weeks_to_raise.unwrap_or_default();
    let chance = chance_after(plan.picture, out);
    let say = plan
        .named(say, plants)
        .with("from", Arg::Day(outing.from))
        .with("sown", Arg::Day(outing.sown))
        .with("weeks", Arg::Number(weeks))
        .with("weeksmost", Arg::Number(most))
        .with("out", Arg::Day(out))
        .with("record", Arg::Number(f64::from(u8::from(chance.is_some()))))
        .with("chance", odds(chance.unwrap_or_default()));
    match outing.frost {
        Some(frost) => say.with("frost", Arg::Day(frost)),
        None => say,
    }
}

//! Evening jobs: what was put out by day is brought in, a lid that was opened is
//! closed.

use super::{Job, LivingTray, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use chrono::{NaiveDateTime, TimeDelta};
use plumule_journal::state::PlaceState;
use plumule_journal::subject::Subject;
use plumule_journal::words::PlaceKind;

/// Hours after the evening round in which it is still of use: the night.
const HOURS: i64 = 12;

pub(super) fn bring_in(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Job> {
    let out = tray.state.hardened.last()?;
    if tray.stands_in(PlaceKind::Outdoors) {
        return None;
    }
    let sheltered = tray.state.sheltered.last().map(|sheltered| &sheltered.at);
    let moved = tray.state.stays.last().map(|stay| &stay.since);
    let mut since = sheltered.into_iter().chain(moved);
    if since.any(|mark| mark.at.instant() >= out.at.instant()) {
        return None;
    }
    let due = rounds::evening_of(plan.picture, out.at.local.date()).max(out.at.local);
    let why = Say::new("why-bring-in").with("crops", plan.crops(tray.plants()));
    Some(tonight(
        Job::new(JobKind::BringIn, Subject::Tray(tray.id), out.entry, due).because(why),
        due,
    ))
}

pub(super) fn close_the_lid(plan: &Plan<'_>, place: &PlaceState) -> Option<Job> {
    let opened = place.aired.as_ref()?;
    let due = rounds::evening_of(plan.picture, opened.at.local.date()).max(opened.at.local);
    let id = place.described.place;
    let why = Say::new("why-close-the-lid").with("place", Arg::Text(place.described.name.clone()));
    let mut job = tonight(
        Job::new(JobKind::CloseTheLid, Subject::Place(id), opened.entry, due).because(why),
        due,
    );
    job.place = Some(id);
    Some(job)
}

fn tonight(mut job: Job, due: NaiveDateTime) -> Job {
    job.until = Some(due + TimeDelta::hours(HOURS));
    job.for_today(true)
}

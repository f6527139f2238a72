//! Days away: what to do before, and one look over each place afterwards in
//! place of all that fell due meanwhile.

use super::{Job, LivingTray, Plan, kind_word};
use crate::picture::Picture;
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use crate::words::word;
use chrono::{NaiveDate, NaiveDateTime, NaiveTime, TimeDelta};
use plumule_journal::content::JobKey;
use plumule_journal::id::PlaceId;
use plumule_journal::state::{AwayAt, PlaceState};
use plumule_journal::subject::Subject;
use std::collections::BTreeSet;

/// Shorter than this nobody was missed, days.
const WORTH_DAYS: i64 = 2;

/// Days after coming back in which all is looked over.
const AFTER_DAYS: i64 = 3;

/// The jobs of the places, given those of their trays.
pub(super) fn jobs(plan: &Plan<'_>, of_trays: &[Job]) -> Vec<Job> {
    let today = plan.now.date();
    let places = plan.picture.places.values();
    places
        .flat_map(|place| {
            let id = place.described.place;
            let here = |tray: &&LivingTray<'_>| {
                tray.place.is_some_and(|there| there.described.place == id)
            };
            let trays = plan.trays.iter().filter(here).count();
            let jobs: Vec<&Job> = of_trays
                .iter()
                .filter(|job| job.place == Some(id))
                .collect();
            let before = coming(plan.picture, today)
                .filter(|_| trays > 0)
                .and_then(|away| before(plan, place, away, trays, &jobs));
            let after = over(plan.picture, today)
                .or_else(|| going_on(plan.picture, today))
                .filter(|_| trays > 0)
                .and_then(|away| after(plan, place, away, trays, &jobs));
            [before, after]
        })
        .flatten()
        .collect()
}

/// The next days away that have not begun.
pub(crate) fn coming(picture: &Picture, today: NaiveDate) -> Option<&AwayAt> {
    let away = picture.garden.away.iter();
    away.filter(|away| away.from > today && away.to >= away.from)
        .min_by_key(|away| away.from)
}

/// The days away that were over of late.
fn over(picture: &Picture, today: NaiveDate) -> Option<&AwayAt> {
    let away = picture.garden.away.iter();
    away.filter(|away| {
        let back = (today - away.to).num_days();
        (1..=AFTER_DAYS).contains(&back) && (away.to - away.from).num_days() + 1 >= WORTH_DAYS
    })
    .max_by_key(|away| away.to)
}

/// Days away of which the end is known and still to come.
fn going_on(picture: &Picture, today: NaiveDate) -> Option<&AwayAt> {
    let away = picture.garden.away.iter();
    away.filter(|away| {
        let lasts = away.from <= today && today <= away.to && !away.open;
        lasts && (away.to - away.from).num_days() + 1 >= WORTH_DAYS
    })
    .max_by_key(|away| away.to)
}

fn before(
    plan: &Plan<'_>,
    place: &PlaceState,
    away: &AwayAt,
    trays: usize,
    jobs: &[&Job],
) -> Option<Job> {
    let meanwhile: BTreeSet<JobKind> = jobs
        .iter()
        .filter(|job| {
            let due = job.due.date();
            away.from <= due && due <= away.to && !daily(job.kind)
        })
        .map(|job| job.kind)
        .collect();
    let names = meanwhile
        .into_iter()
        .map(|kind| word("job", kind_word(kind)))
        .collect::<Vec<Arg>>();
    let key = if names.is_empty() {
        "why-before-you-go"
    } else {
        "why-before-you-go-meanwhile"
    };
    let why = Say::new(key)
        .with("from", Arg::Day(away.from))
        .with("to", Arg::Day(away.to))
        .with("open", Arg::Number(f64::from(u8::from(away.open))))
        .with("trays", Arg::Number(trays as f64))
        .with("jobs", Arg::List(names));
    let eve = away.from.pred_opt()?;
    let until = away.from.and_time(NaiveTime::MIN);
    Some(for_place(plan, JobKind::BeforeYouGo, place, away, (eve, until)).because(why))
}

/// A job for a place, from the morning of a day until a moment.
fn for_place(
    plan: &Plan<'_>,
    kind: JobKind,
    place: &PlaceState,
    away: &AwayAt,
    (day, until): (NaiveDate, NaiveDateTime),
) -> Job {
    let id = place.described.place;
    let morning = rounds::morning(plan.picture, day);
    let mut job = Job::new(kind, Subject::Place(id), away.entry, morning).for_today(true);
    job.place = Some(id);
    job.until = Some(until);
    job
}

/// Jobs that come every day or two anyway.
fn daily(kind: JobKind) -> bool {
    use JobKind as K;
    matches!(
        kind,
        K::FeelTheCompost | K::ReadTheThermometer | K::LookForSeedlings | K::ItIsLate
    )
}

fn after(
    plan: &Plan<'_>,
    place: &PlaceState,
    away: &AwayAt,
    trays: usize,
    jobs: &[&Job],
) -> Option<Job> {
    let overdue = jobs.iter().filter(|job| gathered(job, away)).count();
    if overdue == 0 {
        return None;
    }
    let why = Say::new("why-look-over")
        .with("to", Arg::Day(away.to))
        .with("trays", Arg::Number(trays as f64));
    let back = away.to.succ_opt()?;
    let until = back.and_time(NaiveTime::MIN) + TimeDelta::days(AFTER_DAYS);
    Some(for_place(plan, JobKind::LookOver, place, away, (back, until)).because(why))
}

/// Fell due before the grower was back, and is no emergency.
fn gathered(job: &Job, away: &AwayAt) -> bool {
    use JobKind as K;
    let urgent = matches!(
        job.kind,
        K::IntoTheLight | K::FrostTonight | K::BringIn | K::CloseTheLid | K::LookOver
    );
    job.due.date() <= away.to && !urgent
}

/// Whether a job waits until its place was looked over after days away.
pub(crate) fn waits(picture: &Picture, job: &Job, at: NaiveDateTime) -> bool {
    let (Some(place), Some(away)) = (job.place, over(picture, at.date())) else {
        return false;
    };
    gathered(job, away) && !picture.garden.dismissed.contains(&look_over(place, away))
}

/// Whether a day is one of those after days away in which a job may wait for its
/// place to be looked over: nobody ignores it then.
pub(crate) fn rests(picture: &Picture, job: &Job, day: NaiveDate) -> bool {
    job.place.is_some() && over(picture, day).is_some_and(|away| gathered(job, away))
}

fn look_over(place: PlaceId, away: &AwayAt) -> JobKey {
    JobKey {
        kind: kind_word(JobKind::LookOver).to_owned(),
        subject: Subject::Place(place),
        opened_by: away.entry,
    }
}

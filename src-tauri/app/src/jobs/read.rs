//! Read the thermometer: only where one was ever read and something lives.

use super::{Job, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use chrono::Days;
use plumule_journal::subject::Subject;

/// Days for which a reading holds.
const HOLDS_DAYS: u64 = 3;

pub(super) fn jobs(plan: &Plan<'_>) -> Vec<Job> {
    let places = plan.picture.places.iter();
    places
        .filter_map(|(id, place)| {
            let here = |tray: &&super::LivingTray<'_>| {
                tray.place.is_some_and(|place| place.described.place == *id)
            };
            let trays = plan.trays.iter().filter(here).count();
            let last = &plan.picture.readings.get(id)?.last()?.mark;
            let day = last.at.local.date();
            let due = rounds::morning(plan.picture, day.checked_add_days(Days::new(HOLDS_DAYS))?);
            let why = Say::new("why-read")
                .with("place", Arg::Text(place.described.name.clone()))
                .with(
                    "days",
                    Arg::Number((plan.now.date() - day).num_days() as f64),
                )
                .with("trays", Arg::Number(trays as f64));
            let mut job = Job::new(
                JobKind::ReadTheThermometer,
                Subject::Place(*id),
                last.entry,
                due,
            )
            .because(why);
            job.place = Some(*id);
            (trays > 0).then_some(job)
        })
        .collect()
}

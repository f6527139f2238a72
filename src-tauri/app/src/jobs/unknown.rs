//! A plant that is not in the crop book: nobody can say when it comes up. It is
//! looked for as often as is usual, and once it is asked whether it is late.

use super::{Job, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use chrono::Days;
use plumule_journal::state::SowingState;
use plumule_journal::subject::{Plants, Subject};

/// Days after sowing in which most seed comes up (judgement: one to three
/// weeks), and how often it is looked for then.
const FIRST_DAYS: u64 = 7;
const LAST_DAYS: u64 = 28;
const EVERY_DAYS: u64 = 2;

pub(super) fn job(plan: &Plan<'_>, sowing: &SowingState) -> Option<Job> {
    let id = sowing.sown.sowing;
    let plants = Plants::Sowing(id);
    let numbers = sowing.plants.numbers;
    let cold = sowing.sown.treatment.cold_weeks.is_some();
    if plan.picture.book_crop(plants).is_some()
        || cold
        || !sowing.plants.went_on.is_empty()
        || numbers.up >= sowing.seeds()
    {
        return None;
    }
    let sown = sowing.opened_by.at.local.date();
    let last = sowing.counts.last();
    let first = sown + Days::new(FIRST_DAYS);
    let next = last.map_or(first, |count| {
        first.max(count.at.at.local.date() + Days::new(EVERY_DAYS))
    });
    let late = sown + Days::new(LAST_DAYS);
    let over = plan.now.date() >= late;
    if next > late && numbers.up > 0 {
        return None;
    }
    let (kind, key) = if over {
        (JobKind::ItIsLate, "why-late-unknown")
    } else {
        (JobKind::LookForSeedlings, "why-look-unknown")
    };
    let why = plan
        .named(Say::new(key), plants)
        .with(
            "days",
            Arg::Number((plan.now.date() - sown).num_days() as f64),
        )
        .with("up", Arg::Number(f64::from(numbers.up)));
    let opened_by = last.map_or(&sowing.opened_by, |count| &count.at);
    let due = rounds::morning(plan.picture, if over { next.max(late) } else { next });
    let mut job = Job::new(kind, Subject::Sowing(id), opened_by.entry, due).because(why);
    job.suggested = Some(numbers.there);
    Some(job)
}

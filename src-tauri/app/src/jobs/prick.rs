//! Prick out: seedlings sown close together, at their first true leaves.

use super::leaves::true_leaves;
use super::tray::{first_up, half_up};
use super::{Job, LivingTray, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use plumule_journal::content::Seeds;
use plumule_journal::state::SowingState;
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::Container;

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>, sowing: &SowingState) -> Option<Job> {
    let id = sowing.sown.sowing;
    let there = sowing.plants.numbers.there;
    if there == 0 || !sowing.plants.went_on.is_empty() {
        return None;
    }
    let seen = first_up(sowing)?;
    let number = Arg::Number(f64::from(there));
    let opened = |due| Job::new(JobKind::PrickOut, Subject::Sowing(id), seen.entry, due);
    match tray.state.described.container {
        Container::DampPaper | Container::Bag | Container::Cells | Container::Pots => None,
        Container::Pot if there < 2 && sowing.sown.seeds != Seeds::Pinch => None,
        Container::OpenTray | Container::Pot => {
            let crop = plan.picture.book_crop(Plants::Sowing(id));
            // What is sown where it is to grow does not stand being moved.
            if crop.is_some_and(|crop| crop.weeks_to_raise.is_none()) {
                return None;
            }
            let up = half_up(sowing)?.at.local.date();
            let due = true_leaves(plan, tray, Plants::Sowing(id), up);
            let why = plan
                .named(Say::new("why-prick-out"), Plants::Sowing(id))
                .with("there", number)
                .with("up", Arg::Day(up))
                .with("days", Arg::Number((due - up).num_days() as f64));
            Some(opened(rounds::morning(plan.picture, due)).because(why))
        }
    }
}

//! Thin: cells with several seedlings, once they have true leaves.

use super::leaves::true_leaves;
use super::tray::{first_up, half_up};
use super::{Job, LivingTray, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use plumule_journal::content::Leaving;
use plumule_journal::state::SowingState;
use plumule_journal::subject::{Plants, Subject};

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>, sowing: &SowingState) -> Option<Job> {
    let there = sowing.plants.numbers.there;
    let cells = u32::try_from(sowing.sown.cells.len()).ok()?;
    let thinned = sowing
        .plants
        .left
        .iter()
        .any(|left| left.how == Leaving::Thinned);
    if !tray.in_cells() || there <= cells || thinned || !sowing.plants.went_on.is_empty() {
        return None;
    }
    let up = half_up(sowing)?.at.local.date();
    let due = true_leaves(plan, tray, Plants::Sowing(sowing.sown.sowing), up);
    let id = sowing.sown.sowing;
    let why = plan
        .named(Say::new("why-thin"), Plants::Sowing(id))
        .with("there", Arg::Number(f64::from(there)))
        .with("cells", Arg::Number(f64::from(cells)))
        .with("up", Arg::Day(up))
        .with("days", Arg::Number((due - up).num_days() as f64));
    let mut job = Job::new(
        JobKind::Thin,
        Subject::Sowing(id),
        first_up(sowing)?.entry,
        rounds::morning(plan.picture, due),
    )
    .because(why);
    job.suggested = Some(there - cells);
    Some(job)
}

//! The stocktake of the packets, once a year before seed is ordered.

use super::{Job, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::seed::stocktake_last_day;
use crate::view::JobKind;
use plumule_journal::subject::Subject;

pub(super) fn job(plan: &Plan<'_>) -> Option<Job> {
    let stocktake = plan.picture.stocktake?;
    let due = rounds::morning(plan.picture, stocktake.from);
    let why = Say::new("why-stocktake").with("left", Arg::Number(f64::from(stocktake.left)));
    let mut job = Job::new(
        JobKind::Stocktake,
        Subject::Garden,
        stocktake.opened_by,
        due,
    )
    .because(why);
    job.until = Some(rounds::morning(
        plan.picture,
        stocktake_last_day(stocktake.from),
    ));
    Some(job)
}

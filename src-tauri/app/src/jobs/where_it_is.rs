//! Say where it stands: a living tray without a place (its move is missing from
//! a merge) is in no place's round.

use super::{Job, LivingTray, Plan};
use crate::say::{Arg, Say};
use crate::view::JobKind;
use plumule_journal::subject::Subject;

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Job> {
    if tray.place.is_some() {
        return None;
    }
    let opened = &tray.state.opened_by;
    let why = Say::new("why-say-where").with("crops", plan.crops(tray.plants()));
    let why = why.with("tray", Arg::Text(tray.state.described.code.clone()));
    Some(
        Job::new(
            JobKind::SayWhere,
            Subject::Tray(tray.id),
            opened.entry,
            opened.at.local,
        )
        .because(why),
    )
}

//! Sow on: seed on damp paper or in a bag has sprouted. At once: the roots grow
//! into the paper and break.

use super::tray::first_up;
use super::{Job, LivingTray, Plan};
use crate::say::{Arg, Say};
use crate::view::JobKind;
use plumule_journal::state::SowingState;
use plumule_journal::subject::{Plants, Subject};

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>, sowing: &SowingState) -> Option<Job> {
    let there = sowing.plants.numbers.there;
    if !tray.sprouting() || there == 0 {
        return None;
    }
    let since = sowing
        .counts
        .last()
        .map(|count| &count.at)
        .or_else(|| first_up(sowing))?;
    let id = sowing.sown.sowing;
    let crop = plan.picture.book_crop(Plants::Sowing(id));
    let key = match crop.map(|crop| crop.depth_mm.1 > 0.0) {
        Some(true) => "why-sow-on",
        Some(false) => "why-sow-on-surface",
        None => "why-sow-on-unknown",
    };
    let (low, high) = crop.map_or((0.0, 0.0), |crop| crop.depth_mm);
    let why = plan
        .named(Say::new(key), Plants::Sowing(id))
        .with("there", Arg::Number(f64::from(there)))
        .with("low", Arg::Millimetres(low))
        .with("high", Arg::Millimetres(high));
    let mut job = Job::new(
        JobKind::SowOn,
        Subject::Sowing(id),
        since.entry,
        since.at.local,
    )
    .for_today(true)
    .because(why);
    job.suggested = Some(there);
    Some(job)
}

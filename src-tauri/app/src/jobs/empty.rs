//! Empty the tray: all that came up in it has gone. Until then nothing else is
//! asked of it.

use super::{Job, LivingTray, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use plumule_journal::content::Leaving;
use plumule_journal::state::{Mark, SowingState};
use plumule_journal::subject::{Plants, Subject};

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Job> {
    if !tray.batches.is_empty() || tray.sprouting() {
        return None;
    }
    let gone: Option<Vec<&Mark>> = tray.sowings.iter().map(|it| gone(plan, it)).collect();
    let last = gone?.into_iter().max_by_key(|mark| mark.at.instant())?;
    let left: u32 = tray.sowings.iter().map(|sowing| sowing.seeds_left()).sum();
    let why = Say::new("why-empty")
        .with("crops", plan.crops(tray.plants()))
        .with("tray", Arg::Text(tray.state.described.code.clone()))
        .with("seeds", Arg::Number(f64::from(left)));
    let due = rounds::next_round(plan.picture, last.at.local);
    Some(
        Job::new(
            JobKind::EmptyTheTray,
            Subject::Tray(tray.id),
            last.entry,
            due,
        )
        .because(why),
    )
}

/// When the last of a sowing went, if all that came up did and nothing more is
/// waited for: who pricks out, sells or plants out all has done with the rest;
/// where all were lost, once nine in ten should have been up.
fn gone<'a>(plan: &Plan<'_>, sowing: &'a SowingState) -> Option<&'a Mark> {
    let plants = &sowing.plants;
    if plants.numbers.up == 0 || plants.numbers.there > 0 {
        return None;
    }
    let lost = |how: Leaving| matches!(how, Leaving::Lost(_));
    let went_on = plants.went_on.iter().map(|went| &went.at);
    let left = plants.left.iter();
    let taken = !plants.went_on.is_empty() || left.clone().any(|left| !lost(left.how));
    let late = || {
        let growth = plan.growth(sowing.sown.sowing);
        growth
            .and_then(|growth| growth.due.d90)
            .is_none_or(|d90| d90 < plan.now.date())
    };
    let counted = sowing.counts.iter().map(|count| &count.at);
    let marks = went_on.chain(left.map(|left| &left.at)).chain(counted);
    let last = marks.max_by_key(|mark| mark.at.instant())?;
    let of_plants = plan.picture.book_crop(Plants::Sowing(sowing.sown.sowing));
    (taken || (of_plants.is_some() && late())).then_some(last)
}

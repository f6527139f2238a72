//! End of the cold weeks: seed that was to lie in the cold for a time is to come
//! into the warm. Seed that waits out the winter outdoors wants nothing.

use super::{Job, LivingTray, Plan};
use crate::growth::ColdKind;
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use plumule_journal::state::SowingState;
use plumule_journal::subject::{Plants, Subject};

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>, sowing: &SowingState) -> Option<Job> {
    let id = sowing.sown.sowing;
    let growth = plan.growth(id)?;
    let cold = growth.cold?;
    let until = cold.until?;
    let (low, high) = growth.crop.recommended_c;
    let place = tray.place?;
    let mean_c = plan
        .temperatures
        .mean_now(place.described.place, plan.now)?;
    let key = match cold.kind {
        ColdKind::Fridge => "why-cold-over-fridge",
        ColdKind::Weeks if mean_c < low && growth.up == 0 => "why-cold-over",
        ColdKind::Weeks | ColdKind::Winter => return None,
    };
    let began = sowing.opened_by.at.local;
    let weeks = (until - began).num_weeks();
    let why = plan
        .named(Say::new(key), Plants::Sowing(id))
        .with("weeks", Arg::Number(weeks as f64))
        .with("place", Arg::Text(place.described.name.clone()))
        .with("temperature", Arg::Celsius(mean_c.round()))
        .with("from", Arg::Celsius(low))
        .with("to", Arg::Celsius(high));
    let stay = tray.state.stays.last()?;
    Some(
        Job::new(
            JobKind::EndOfTheColdWeeks,
            Subject::Sowing(id),
            stay.since.entry,
            rounds::morning(plan.picture, until.date()),
        )
        .for_today(true)
        .because(why),
    )
}

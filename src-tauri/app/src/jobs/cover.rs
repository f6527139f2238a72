//! Cover off: something is up under a cover.

use super::tray::{first_up, later};
use super::{Job, LivingTray, Plan};
use crate::say::{Arg, Say};
use crate::view::JobKind;
use plumule_journal::subject::{Plants, Subject};

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Job> {
    let cover = tray.state.covers.last().filter(|_| tray.covered())?;
    let seen = tray.sowings_up().filter_map(first_up).reduce(later)?;
    let since = later(seen, &cover.at);
    let plants = |sowing: &plumule_journal::state::SowingState| Plants::Sowing(sowing.sown.sowing);
    let waiting = tray.sowings_waiting().count();
    let key = if waiting == 0 {
        "why-cover-off"
    } else {
        "why-cover-off-mixed"
    };
    let number: u32 = tray
        .sowings_up()
        .map(|sowing| sowing.plants.numbers.there)
        .sum();
    let why = Say::new(key)
        .with("crops", plan.crops(tray.sowings_up().map(plants)))
        .with("up", Arg::Number(f64::from(number)))
        .with("waiting", plan.crops(tray.sowings_waiting().map(plants)));
    Some(
        Job::new(
            JobKind::CoverOff,
            Subject::Tray(tray.id),
            since.entry,
            since.at.local,
        )
        .for_today(true)
        .because(why),
    )
}

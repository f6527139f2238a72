//! Into the light: something is up in a dark or heated place. At once.

use super::tray::{first_up, later};
use super::{Job, LivingTray, Plan};
use crate::say::{Arg, Say};
use crate::view::JobKind;
use plumule_journal::state::{Mark, Parent};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::{Light, PlaceKind};

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Job> {
    let place = &tray.place?.described;
    let dark = place.light == Light::Dark;
    let heated = place.kind == PlaceKind::HeatedPropagator;
    if !dark && !heated {
        return None;
    }
    let sowings = tray
        .sowings_up()
        .filter_map(|sowing| Some((Plants::Sowing(sowing.sown.sowing), first_up(sowing)?)));
    // Cuttings and tubers may want the heat, and bulbs the dark.
    let batches = tray
        .batches
        .iter()
        .filter(|batch| dark && matches!(batch.parent, Parent::Plants { .. }))
        .map(|batch| (Plants::Batch(batch.batch), &batch.opened_by));
    let up: Vec<(Plants, &Mark)> = sowings.chain(batches).collect();
    let seen = up.iter().map(|(_, mark)| *mark).reduce(later)?;
    let arrived = &tray.state.stays.last()?.since;
    let since = later(seen, arrived);

    let waiting: Vec<Plants> = tray
        .sowings_waiting()
        .map(|sowing| Plants::Sowing(sowing.sown.sowing))
        .collect();
    let key = match (waiting.is_empty(), dark) {
        (true, true) => "why-light-dark",
        (true, false) => "why-light-heated",
        (false, true) => "why-light-mixed-dark",
        (false, false) => "why-light-mixed",
    };
    let number: u32 = up
        .iter()
        .filter_map(|(plants, _)| plan.picture.plants(*plants))
        .map(|state| state.numbers.there)
        .sum();
    let why = Say::new(key)
        .with("crops", plan.crops(up.iter().map(|(plants, _)| *plants)))
        .with("up", Arg::Number(f64::from(number)))
        .with("waiting", plan.crops(waiting.into_iter()))
        .with("place", Arg::Text(place.name.clone()));
    Some(
        Job::new(
            JobKind::IntoTheLight,
            Subject::Tray(tray.id),
            since.entry,
            since.at.local,
        )
        .for_today(true)
        .because(why),
    )
}

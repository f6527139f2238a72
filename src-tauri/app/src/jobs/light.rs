//! Into the light: something is up in a dark or heated place. At once.

use super::leggy::leggy;
use super::tray::{first_up, later};
use super::{Job, LivingTray, Plan};
use crate::say::{Arg, Say};
use crate::view::JobKind;
use plumule_journal::state::{Mark, Parent, SowingState};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::{Light, PlaceKind};

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Job> {
    let place = &tray.place?.described;
    let dark = place.light == Light::Dark;
    let heated = place.kind == PlaceKind::HeatedPropagator;
    let drawn: Vec<&SowingState> = tray
        .sowings_up()
        .filter(|sowing| leggy(tray, sowing).is_some())
        .collect();
    if !dark && !heated && drawn.is_empty() {
        return None;
    }
    if !dark && !heated {
        return more_light(plan, tray, &drawn, &place.name);
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
        .with("waiting", plan.crops(waiting.iter().copied()))
        .with("place", Arg::Text(place.name.clone()));
    let mut job = Job::new(
        JobKind::IntoTheLight,
        Subject::Tray(tray.id),
        since.entry,
        since.at.local,
    )
    .for_today(true)
    .because(why);
    // Of a mixed tray those are cut out that are up.
    if let ([only], false) = (up.as_slice(), waiting.is_empty()) {
        job.plants = Some(only.0);
    }
    Some(job)
}

/// Seedlings that were seen to be leggy want more light than they have.
fn more_light(
    plan: &Plan<'_>,
    tray: &LivingTray<'_>,
    drawn: &[&SowingState],
    place: &str,
) -> Option<Job> {
    let seen = drawn.iter().filter_map(|sowing| leggy(tray, sowing));
    let seen = seen.reduce(later)?;
    let plants = drawn.iter().map(|it| Plants::Sowing(it.sown.sowing));
    let why = Say::new("why-light-leggy")
        .with("crops", plan.crops(plants))
        .with("place", Arg::Text(place.to_owned()));
    Some(
        Job::new(
            JobKind::IntoTheLight,
            Subject::Tray(tray.id),
            seen.entry,
            seen.at.local,
        )
        .for_today(true)
        .because(why),
    )
}

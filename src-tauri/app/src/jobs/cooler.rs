//! Cooler now: something is up where it is warmer than it wants to grow on.
//! Out of the dark and off the heat is another job.

use super::tray::{first_up, later};
use super::{Job, LivingTray, Plan};
use crate::say::{Arg, Say};
use crate::view::JobKind;
use plumule_journal::state::{Mark, SowingState};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::{Light, PlaceKind};

/// So much above the warmest that it wants by day, °C, on the mean of a day
/// (judgement: a warm afternoon does no harm).
const ABOVE_C: f64 = 2.0;

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Job> {
    let place = &tray.place?.described;
    let bright = place.light != Light::Dark && place.kind != PlaceKind::HeatedPropagator;
    if !bright || tray.sowings_waiting().next().is_some() {
        return None;
    }
    let mean_c = plan.temperatures.mean_now(place.place, plan.now)?;
    let hot = |sowing: &&SowingState| {
        let crop = plan.picture.book_crop(Plants::Sowing(sowing.sown.sowing));
        crop.is_some_and(|crop| mean_c > crop.growing_on_c.day.1 + ABOVE_C)
    };
    let up: Vec<&SowingState> = tray.sowings_up().filter(hot).collect();
    let sown = *up.first()?;
    let seen: &Mark = up.iter().filter_map(|it| first_up(it)).reduce(later)?;
    let since = later(seen, &tray.state.stays.last()?.since);
    let crop = plan.picture.book_crop(Plants::Sowing(sown.sown.sowing))?;
    let why = Say::new("why-cooler")
        .with(
            "crops",
            plan.crops(up.iter().map(|it| Plants::Sowing(it.sown.sowing))),
        )
        .with("place", Arg::Text(place.name.clone()))
        .with("temperature", Arg::Celsius(mean_c.round()))
        .with("from", Arg::Celsius(crop.growing_on_c.day.0.round()))
        .with("to", Arg::Celsius(crop.growing_on_c.day.1.round()));
    Some(
        Job::new(
            JobKind::CoolerNow,
            Subject::Tray(tray.id),
            since.entry,
            since.at.local,
        )
        .because(why),
    )
}

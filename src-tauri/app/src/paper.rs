//! The sheet for whoever looks after the trays: per place what to feel and when,
//! per tray what to do if something comes up.

use crate::jobs::{LivingTray, Plan, coming_away, pace, warmer_by};
use crate::picture::Picture;
use crate::round::place_head;
use crate::say::{Arg, Say};
use crate::trays::code_order;
use crate::view::{SitterPlace, SitterSheet, SitterTray};
use chrono::{NaiveDate, NaiveDateTime};
use plumule_agronomy::Hardiness;
use plumule_journal::state::{AwayAt, PlaceState, SowingState};
use plumule_journal::subject::Plants;
use plumule_journal::words::{Light, PlaceKind};

/// The days away that it is for: those that have begun, else the next.
fn away(picture: &Picture, today: NaiveDate) -> Option<&AwayAt> {
    let now = picture.garden.away.iter();
    now.filter(|away| away.from <= today && today <= away.to)
        .max_by_key(|away| away.to)
        .or_else(|| coming_away(picture, today))
}

pub(crate) fn sitter_sheet(picture: &Picture, now: NaiveDateTime) -> SitterSheet {
    let plan = Plan::of(picture, now);
    let away = away(picture, now.date());
    let places: Vec<SitterPlace> = picture
        .walk()
        .into_iter()
        .filter_map(|place| sitter_place(&plan, place))
        .collect();
    let heated = plan
        .trays
        .iter()
        .any(|tray| tray.stands_in(PlaceKind::HeatedPropagator));
    let general = [
        Some(Say::new("sitter-water")),
        Some(Say::new("sitter-no-more")),
        heated.then(|| Say::new("caution-electricity")),
        Some(Say::new("caution-compost-dust")),
    ];
    SitterSheet {
        at: now,
        from: away.map(|away| away.from),
        to: away.filter(|away| !away.open).map(|away| away.to),
        general: general.into_iter().flatten().collect(),
        places,
    }
}

fn sitter_place(plan: &Plan<'_>, place: &PlaceState) -> Option<SitterPlace> {
    let id = place.described.place;
    let here = |tray: &&LivingTray<'_>| tray.place.is_some_and(|there| there.described.place == id);
    let mut trays: Vec<&LivingTray<'_>> = plan.trays.iter().filter(here).collect();
    trays.sort_by_cached_key(|tray| code_order(&tray.state.described.code));
    (!trays.is_empty()).then(|| SitterPlace {
        place: place_head(place),
        lines: place_lines(plan, place, &trays),
        trays: trays
            .iter()
            .map(|tray| sitter_tray(plan, place, tray))
            .collect(),
    })
}

fn place_lines(plan: &Plan<'_>, place: &PlaceState, trays: &[&LivingTray<'_>]) -> Vec<Say> {
    let described = &place.described;
    if described.kind == PlaceKind::Fridge {
        return vec![Say::new("sitter-fridge")];
    }
    let days = trays
        .iter()
        .filter_map(|tray| pace(plan, tray))
        .map(|pace| pace.days.floor().max(1.0))
        .reduce(f64::min);
    let feel = days.map(|days| {
        Say::new("sitter-feel")
            .with("days", Arg::Number(days))
            .with("trays", Arg::Number(trays.len() as f64))
    });
    let lidded = described.kind == PlaceKind::ColdFrame || described.covered;
    let lid = lidded.then(|| Say::new("sitter-lid"));
    let tender: Vec<Arg> = trays
        .iter()
        .filter(|tray| {
            let mut plants = tray.plants();
            plants.any(|plants| hurt_by_frost(plan, plants))
        })
        .map(|tray| Arg::Text(tray.state.described.code.clone()))
        .collect();
    let cold = warmer_by(described.kind).is_some() && described.unheated.is_none();
    let frost = (cold && !tender.is_empty())
        .then(|| Say::new("sitter-frost").with("trays", Arg::List(tender)));
    [feel, lid, frost].into_iter().flatten().collect()
}

/// Something above the compost that a frost would hurt.
fn hurt_by_frost(plan: &Plan<'_>, plants: Plants) -> bool {
    let there = plan
        .picture
        .plants(plants)
        .is_some_and(|state| state.numbers.there > 0);
    let hardy = plan
        .picture
        .book_crop(plants)
        .is_some_and(|crop| crop.hardiness == Hardiness::Hardy);
    there && !hardy
}

fn sitter_tray(plan: &Plan<'_>, place: &PlaceState, tray: &LivingTray<'_>) -> SitterTray {
    let waiting = tray.sowings.iter().copied();
    SitterTray {
        tray: tray.id.to_string(),
        code: tray.state.described.code.clone(),
        what: Say::new("sitter-what").with("crops", plan.crops(tray.plants())),
        lines: waiting
            .filter_map(|sowing| look(plan, place, tray, sowing))
            .collect(),
    }
}

/// When something comes up, and what to do then.
fn look(
    plan: &Plan<'_>,
    place: &PlaceState,
    tray: &LivingTray<'_>,
    sowing: &SowingState,
) -> Option<Say> {
    let growth = plan.growth(sowing.sown.sowing)?;
    let first = growth.due.first.filter(|_| growth.up < growth.seeds)?;
    if growth.due.d90.is_some_and(|d90| d90 < plan.now.date()) {
        return None;
    }
    let described = &place.described;
    let dark = described.light == Light::Dark || described.kind == PlaceKind::HeatedPropagator;
    let to = bright_place(plan, place).filter(|_| dark);
    let key = match (tray.sprouting(), to, tray.covered()) {
        (true, _, _) => "sitter-sprouts",
        (false, Some(_), true) => "sitter-up-move-uncover",
        (false, Some(_), false) => "sitter-up-move",
        (false, None, true) => "sitter-up-uncover",
        (false, None, false) => "sitter-up",
    };
    let plants = Plants::Sowing(sowing.sown.sowing);
    Some(
        Say::new(key)
            .with("crops", plan.crops(std::iter::once(plants)))
            .with("first", Arg::Day(first.max(plan.now.date())))
            .with(
                "to",
                Arg::Text(to.map_or(String::new(), |place| place.described.name.clone())),
            ),
    )
}

fn bright_place<'a>(plan: &Plan<'a>, from: &PlaceState) -> Option<&'a PlaceState> {
    let walk = plan.picture.walk();
    let mut bright = walk.into_iter().filter(|place| {
        let described = &place.described;
        described.light == Light::Bright
            && !described.retired
            && described.place != from.described.place
            && described.kind != PlaceKind::HeatedPropagator
    });
    let indoors: Vec<&PlaceState> = bright.by_ref().collect();
    indoors
        .iter()
        .find(|place| warmer_by(place.described.kind).is_none())
        .or(indoors.first())
        .copied()
}

//! Frost tonight: the low that was typed in, and what cannot stand it where it
//! is. It may come between rounds.

use super::season::began;
use super::{Job, LivingTray, Plan};
use crate::picture::Picture;
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use chrono::{NaiveDate, TimeDelta};
use plumule_agronomy::Hardiness;
use plumule_journal::state::{NightAt, PlaceState};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::{Light, PlaceKind};

/// How much warmer than outdoors a place without heat stays in a cold night, °C
/// (judgement); indoors nothing freezes.
pub(crate) fn warmer_by(kind: PlaceKind) -> Option<f64> {
    match kind {
        PlaceKind::Outdoors => Some(0.0),
        PlaceKind::ColdFrame | PlaceKind::Greenhouse => Some(2.0),
        PlaceKind::Shed => Some(4.0),
        PlaceKind::HeatedPropagator | PlaceKind::Windowsill | PlaceKind::Fridge => None,
    }
}

/// At or under what air temperature plants are at risk, °C, not hardened off
/// and hardened off (judgement: leaves lie a degree or two under the air on a
/// clear night).
fn limits(hardiness: Hardiness) -> (f64, f64) {
    match hardiness {
        Hardiness::Tender => (3.0, 2.0),
        Hardiness::HalfHardy => (1.0, 0.0),
        Hardiness::Hardy => (-1.0, -5.0),
    }
}

/// Fleece is worth so many degrees (common practice: two layers).
const FLEECE_C: f64 = 3.0;

/// Hour of the next morning until which it is of use.
const UNTIL_HOUR: i64 = 10;

/// Days of hardening off after which plants are hard.
const HARD_DAYS: usize = super::harden::DAYS.0;

/// How cold it gets in a place in a night, from what was said of the place
/// itself, else of outdoors; the last that was said.
pub(crate) fn low_in<'a>(
    picture: &'a Picture,
    place: &PlaceState,
    night: NaiveDate,
) -> Option<(f64, &'a NightAt)> {
    let said = |of: Option<_>| {
        let mut nights = picture.garden.nights.iter().rev();
        nights.find(move |said| said.night == night && said.place == of)
    };
    if let Some(here) = said(Some(place.described.place)) {
        return Some((here.low_c, here));
    }
    let warmer = warmer_by(place.described.kind)?;
    let heated = place.described.unheated.is_some();
    let outdoors = said(None).filter(|_| !heated)?;
    Some((outdoors.low_c + warmer, outdoors))
}

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Job> {
    let place = tray.place?;
    let nights = [plan.now.date().pred_opt()?, plan.now.date()];
    let (low_c, said) = nights
        .into_iter()
        .rev()
        .find_map(|night| low_in(plan.picture, place, night))?;
    let sheltered = tray.state.sheltered.last().map(|sheltered| &sheltered.at);
    let moved = tray.state.stays.last().map(|stay| &stay.since);
    let since = said.mark.at.instant();
    let answered = sheltered
        .into_iter()
        .chain(moved)
        .any(|mark| mark.at.instant() >= since);
    if answered {
        return None;
    }
    let at_risk: Vec<(Plants, f64)> = tray
        .plants()
        .filter_map(|plants| Some((plants, stands(plan, tray, plants)?)))
        .filter(|(_, limit)| low_c <= *limit)
        .collect();
    let (worst, limit) = at_risk
        .iter()
        .copied()
        .max_by(|(_, one), (_, other)| one.total_cmp(other))?;
    let safe = safe_place(plan, place, said.night);
    let fleece = limit - low_c <= FLEECE_C && !matches!(hardiness(plan, worst), Hardiness::Tender);
    let key = match (fleece, safe) {
        (true, Some(_)) => "why-frost-fleece",
        (false, Some(_)) => "why-frost-bring-in",
        (_, None) => "why-frost-fleece-only",
    };
    let why = Say::new(key)
        .with(
            "crops",
            plan.crops(at_risk.iter().map(|(plants, _)| *plants)),
        )
        .with("low", Arg::Celsius(low_c))
        .with("place", Arg::Text(place.described.name.clone()))
        .with(
            "to",
            Arg::Text(safe.map_or(String::new(), |safe| safe.described.name.clone())),
        );
    let due = said
        .mark
        .at
        .local
        .max(rounds::morning(plan.picture, said.night));
    let mut job = Job::new(
        JobKind::FrostTonight,
        Subject::Tray(tray.id),
        said.mark.entry,
        due,
    )
    .for_today(true)
    .because(why);
    let next = said.night.succ_opt()?;
    job.until = Some(next.and_time(chrono::NaiveTime::MIN) + TimeDelta::hours(UNTIL_HOUR));
    Some(job)
}

fn hardiness(plan: &Plan<'_>, plants: Plants) -> Hardiness {
    // Nobody knows: better in than sorry.
    plan.picture
        .book_crop(plants)
        .map_or(Hardiness::Tender, |crop| crop.hardiness)
}

/// What plants stand; none where nothing is above the compost.
fn stands(plan: &Plan<'_>, tray: &LivingTray<'_>, plants: Plants) -> Option<f64> {
    let there = plan.picture.plants(plants)?.numbers.there > 0;
    let began = began(plan, plants).filter(|_| there)?;
    let hard = tray.hardened_since(began).len() >= HARD_DAYS;
    let (soft_limit, hard_limit) = limits(hardiness(plan, plants));
    Some(if hard { hard_limit } else { soft_limit })
}

/// The best place that stays free of frost: light before warmth.
fn safe_place<'a>(plan: &Plan<'a>, from: &PlaceState, night: NaiveDate) -> Option<&'a PlaceState> {
    let (tender, _) = limits(Hardiness::Tender);
    let safe = |place: &&&PlaceState| {
        let described = &place.described;
        let low = low_in(plan.picture, place, night);
        let warm = match (low, warmer_by(described.kind)) {
            (Some((low, _)), _) => low > tender,
            (None, None) => described.kind != PlaceKind::Fridge,
            (None, Some(_)) => described.unheated.is_some(),
        };
        warm && !described.retired && described.place != from.described.place
    };
    let walk = plan.picture.walk();
    let mut places: Vec<&PlaceState> = walk.iter().filter(safe).copied().collect();
    places.sort_by_key(|place| match place.described.light {
        Light::Bright => 0,
        Light::Dim => 1,
        Light::Dark => 2,
    });
    places.first().copied()
}

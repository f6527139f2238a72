//! How a sowing was kept, from the journal, and what that cost it.

use super::verdict::Case;
use crate::growth::sound_pace;
use chrono::{NaiveDate, NaiveDateTime, NaiveTime, TimeDelta};
use plumule_agronomy::{
    Cause, Compost, Kept, Seen, TimeFactor, causes, daily_light_integral,
    extraterrestrial_radiation, old_seed_time_factor, tau,
};
use plumule_journal::content::{Leaving, Seeds};
use plumule_journal::id::PlaceId;
use plumule_journal::state::{FeltAt, PlaceState, TrayState};
use plumule_journal::words::{self, Blame, Feel, Light, LossCause, PlaceKind, Sight};

/// Up to this progress it matters to coming up how it was kept.
const CAME_UP: f64 = 1.6;

/// Of the light of the sky so much reaches seedlings in a place (judgement: a
/// windowless room, and a room away from its window). A bright place is not
/// blamed: what its window lets through is too uncertain.
const DARK: f64 = 0.01;
const DIM: f64 = 0.05;

/// Days in poor light after coming up that are worth a word (judgement).
const DIM_DAYS: usize = 2;

/// A cause of a smaller part of what is missing explains nothing (judgement).
const WORTH_A_WORD: f64 = 0.1;

const HOURS_OF_DAY: f64 = 24.0;

/// The causes that facts in the journal speak for, the costliest first. None for
/// a sowing of which nobody knows how many seeds it had, that may yet come up in
/// time, or that did well.
pub(super) fn causes_of(case: &Case<'_>) -> Vec<Cause> {
    found(case).unwrap_or_default()
}

fn found(case: &Case<'_>) -> Option<Vec<Cause>> {
    let (growth, sowing) = (case.growth, case.sowing);
    let today = case.now.date();
    let done = sowing.plants.ended.is_some() || !sowing.plants.went_on.is_empty();
    let late = growth.due.d90.is_none_or(|d90| d90 < today);
    if sowing.sown.seeds == Seeds::Pinch || growth.cold_weeks || !(done || late) {
        return None;
    }
    let gone = seen_gone(case);
    let gone_number: u32 = gone.iter().filter_map(|(_, number)| *number).sum();
    let up = growth.up.saturating_sub(gone_number);
    let seeds = growth.seeds.saturating_add(sowing.seeds_lost());
    if !growth.poor(seeds, up) {
        return None;
    }
    let seen = summed(gone.into_iter().chain(seeds_seen(case)));
    let tray = case.picture.trays.get(&sowing.sown.tray)?;
    let began = sowing.opened_by.at.local;
    let ended = sowing.plants.ended.as_ref().map(|ended| ended.at.at.local);
    let end = ended.unwrap_or(case.now).max(began);
    let came_up = growth
        .day_reaching(CAME_UP)
        .and_then(|day| day.succ_opt())
        .map(|day| day.and_time(NaiveTime::MIN));
    let until = came_up.map_or(end, |came_up| came_up.min(end));

    let days: Vec<(f64, f64)> = began
        .date()
        .iter_days()
        .zip(&growth.course.ranges)
        .take_while(|(day, _)| *day <= until.date())
        .filter_map(|(_, range)| *range)
        .collect();
    let felt: Vec<&FeltAt> = tray
        .felt
        .iter()
        .filter(|felt| (began..=until).contains(&felt.at.at.local))
        .collect();
    let wet = felt.iter().filter(|felt| felt.feel == Some(Feel::Wet));
    let after = After::of(case, tray, end);
    let kept = Kept {
        depth_mm: sowing.sown.depth_mm,
        compost: match tray.described.compost {
            words::Compost::GardenSoil => Some(Compost::GardenSoil),
            words::Compost::Coarse => Some(Compost::Coarse),
            _ => None,
        },
        felt_dry: left_dry(&felt),
        felt_wet: wet.count() as u32,
        longest_gap_days: longest_gap(&felt),
        seen: &seen,
        leggy: sowing
            .plants
            .sights
            .iter()
            .any(|seen| seen.sight == Sight::Leggy),
        light: after.light,
        heat_days: after.heat_days,
        ..Kept::new(
            growth.crop,
            seeds,
            up,
            &days,
            growth.reached.min(CAME_UP),
            growth.aged,
            sound_time_factor(case),
        )
    };
    let mut causes = causes(&kept).ok()?;
    let missing = f64::from(seeds) * growth.aged.packed_germination - f64::from(kept.up);
    causes.retain(|cause| cause.seedlings >= WORTH_A_WORD * missing);
    Some(causes)
}

/// Of its seed, were it not old.
fn sound_time_factor(case: &Case<'_>) -> TimeFactor {
    let (growth, worth) = (case.growth, case.growth.aged);
    if old_seed_time_factor(worth.germination, worth.packed_germination).is_none() {
        return growth.time_factor;
    }
    let packet = case.picture.packets.get(&case.sowing.packet());
    let sound = packet.map(|packet| sound_pace(growth.crop, &packet.described));
    sound.map_or(growth.time_factor, |sound| TimeFactor {
        tau: tau(sound.tau, growth.course.read_share),
        ..sound
    })
}

/// What the grower saw happen to its seedlings, and how many it took.
fn seen_gone(case: &Case<'_>) -> Vec<(Seen, Option<u32>)> {
    let left = case.sowing.plants.left.iter();
    let seen = left.filter_map(|left| match left.how {
        Leaving::Lost(cause) => Some((seen(cause)?, Some(left.number))),
        _ => None,
    });
    seen.collect()
}

/// What the grower saw happen to its seeds, and what else the grower blames.
fn seeds_seen(case: &Case<'_>) -> Vec<(Seen, Option<u32>)> {
    let lost = case.sowing.seeds_lost.iter();
    let lost: Vec<(Seen, Option<u32>)> = lost
        .filter_map(|lost| Some((seen(lost.cause)?, Some(lost.number))))
        .collect();
    let said = case.sowing.explained.iter().flat_map(|said| &said.causes);
    let gone = seen_gone(case);
    let known = |what: Seen| gone.iter().chain(&lost).any(|(seen, _)| *seen == what);
    let said: Vec<(Seen, Option<u32>)> = said
        .filter_map(|blame| match blame {
            Blame::Eaten => Some(Seen::Eaten),
            Blame::DampedOff => Some(Seen::DampedOff),
            Blame::Frosted => Some(Seen::Frosted),
            Blame::Baked => Some(Seen::Baked),
            _ => None,
        })
        .filter(|what| !known(*what))
        .map(|what| (what, None))
        .collect();
    lost.into_iter().chain(said).collect()
}

fn seen(cause: LossCause) -> Option<Seen> {
    match cause {
        LossCause::Eaten => Some(Seen::Eaten),
        LossCause::DampedOff => Some(Seen::DampedOff),
        LossCause::Frosted => Some(Seen::Frosted),
        LossCause::Baked => Some(Seen::Baked),
        LossCause::DriedOut | LossCause::Spilt | LossCause::Unknown => None,
    }
}

/// Each of what was seen once, with all that it took.
fn summed(seen: impl Iterator<Item = (Seen, Option<u32>)>) -> Vec<(Seen, Option<u32>)> {
    let mut all: Vec<(Seen, Option<u32>)> = Vec::new();
    for (what, number) in seen {
        match all.iter_mut().find(|(other, _)| *other == what) {
            Some((_, sum)) => {
                *sum = sum
                    .zip(number)
                    .map(|(sum, number)| sum.saturating_add(number));
            }
            None => all.push((what, number)),
        }
    }
    all
}

/// How often it was felt dry and not watered the same day: dry when it is felt
/// and watered there and then is how it should be.
fn left_dry(felt: &[&FeltAt]) -> u32 {
    let day = |felt: &FeltAt| felt.at.at.local.date();
    let watered = |dry: &FeltAt| {
        let after = felt
            .iter()
            .filter(|other| other.at.at.local >= dry.at.at.local);
        after
            .into_iter()
            .any(|other| other.water.is_some() && day(other) == day(dry))
    };
    let dry = felt
        .iter()
        .filter(|felt| felt.feel == Some(Feel::Dry) && !watered(felt));
    dry.count() as u32
}

/// Between two feels that were written down: who writes none down is not
/// taken to have felt nothing.
fn longest_gap(felt: &[&FeltAt]) -> Option<f64> {
    let gaps = felt.windows(2).filter_map(|pair| match pair {
        [one, next] => {
            let gap: TimeDelta = next.at.at.local - one.at.at.local;
            Some(gap.num_hours() as f64 / HOURS_OF_DAY)
        }
        _ => None,
    });
    gaps.reduce(f64::max).map(|gap| gap.max(0.0))
}

/// How it stood after it came up, until it went on.
#[derive(Default)]
struct After {
    light: Option<f64>,
    heat_days: u32,
}

impl After {
    fn of(case: &Case<'_>, tray: &TrayState, end: NaiveDateTime) -> Self {
        let counts = case.sowing.counts.iter();
        let first_up = counts
            .filter(|count| count.ever_up > 0)
            .map(|count| count.at.at.local.date())
            .min();
        let Some(first_up) = first_up else {
            return Self::default();
        };
        let went_on = case.sowing.plants.went_on.first();
        let until = went_on.map_or(end, |went| went.at.at.local).date();
        let places: Vec<(NaiveDate, &PlaceState)> = first_up
            .iter_days()
            .take_while(|day| *day < until)
            .filter_map(|day| Some((day, case.picture.places.get(&place_on(tray, day)?)?)))
            .collect();
        let heated = places
            .iter()
            .filter(|(_, place)| place.described.kind == PlaceKind::HeatedPropagator);
        let lights: Vec<f64> = places
            .iter()
            .filter_map(|(day, place)| light_on(case, *day, place))
            .collect();
        Self {
            heat_days: heated.count() as u32,
            light: (lights.len() >= DIM_DAYS)
                .then(|| lights.iter().sum::<f64>() / lights.len() as f64),
        }
    }
}

fn place_on(tray: &TrayState, day: NaiveDate) -> Option<PlaceId> {
    let stays = tray.stays.iter().rev();
    let mut before = stays.filter(|stay| stay.since.at.local.date() <= day);
    before.next().map(|stay| stay.place)
}

/// Light of a day in a place that is not bright, mol m⁻².
fn light_on(case: &Case<'_>, day: NaiveDate, place: &PlaceState) -> Option<f64> {
    let transmission = match place.described.light {
        Light::Dark => DARK,
        Light::Dim => DIM,
        Light::Bright => return None,
    };
    let latitude = case.picture.garden.described.as_ref()?.latitude?;
    let radiation = extraterrestrial_radiation(latitude, day).ok()?;
    daily_light_integral(radiation, transmission).ok()
}

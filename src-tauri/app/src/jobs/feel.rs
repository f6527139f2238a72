//! Feel the compost (or lift the tray): at the pace at which it dries.

use super::{Job, LivingTray, Plan};
use crate::growth::ColdKind;
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use crate::words;
use chrono::{NaiveDateTime, TimeDelta};
use plumule_agronomy::drying_interval_days;
use plumule_journal::state::{Mark, SowingState};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::{Feel, PlaceKind};

/// An answer dry makes a tray's days shorter by this, an answer wet longer
/// (judgement), within limits.
const AFTER_DRY: f64 = 0.7;
const AFTER_WET: f64 = 1.3;
const FACTOR: (f64, f64) = (0.5, 2.0);

/// Once plants are up: a base of 1.5 days in place of 2 (judgement).
const UP_SHARE: f64 = 0.75;

/// Months of the year's bright half, in which trays under glass are felt daily
/// once something is up.
pub(super) const BRIGHT_MONTHS: std::ops::RangeInclusive<u32> = 3..=9;

/// A thermometer is missing: what a room is (judgement).
const ROOM_C: f64 = 18.0;

const DAY_MINUTES: f64 = 24.0 * 60.0;

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Job> {
    let winter = winter_over(plan, tray);
    if winter.is_some_and(|over| plan.now < over) {
        return None;
    }
    let last = tray.state.felt.last();
    let began = began(tray)?;
    let since = last
        .map(|felt| &felt.at)
        .filter(|felt| felt.at.instant() >= began.at.instant())
        .unwrap_or(began);
    let felt = last.filter(|felt| felt.at.entry == since.entry);
    let from = rounds::round_begun(plan.picture, since.at.local);

    let Pace {
        days,
        daily,
        up,
        mean_c,
    } = pace(plan, tray)?;
    let dry = felt.is_some_and(|felt| felt.feel == Some(Feel::Dry) && felt.water.is_none());
    let due = if dry {
        rounds::next_round(plan.picture, since.at.local)
    } else {
        let wait = TimeDelta::minutes((days * DAY_MINUTES) as i64);
        rounds::next_round(plan.picture, (from + wait).max(winter.unwrap_or(from)))
    };

    let key = match (dry, daily, felt.and_then(|felt| felt.feel)) {
        (true, _, _) => "why-feel-dry",
        (false, true, _) => "why-feel-daily",
        (false, false, Some(_)) => "why-feel",
        (false, false, None) if felt.is_some() => "why-feel-watered",
        (false, false, None) => "why-feel-first",
    };
    let passed = (plan.now.date() - since.at.local.date()).num_days();
    let mut why = Say::new(key)
        .with("days", Arg::Number(passed.max(0) as f64))
        .with("interval", Arg::Number((days * 10.0).round() / 10.0))
        .with("temperature", Arg::Celsius(mean_c.round()))
        .with(
            "lift",
            Arg::Number(f64::from(u8::from(surface_sown(plan, tray)))),
        );
    if let Some(feel) = felt.and_then(|felt| felt.feel) {
        why = why.with("felt", words::word("feel", feel.as_str()));
    }
    let hurry = dry || daily || (up && felt.is_some_and(|felt| felt.feel == Some(Feel::Dry)));
    Some(
        Job::new(
            JobKind::FeelTheCompost,
            Subject::Tray(tray.id),
            since.entry,
            due,
        )
        .for_today(hurry)
        .because(why),
    )
}

/// How fast a tray dries.
pub(crate) struct Pace {
    /// Days after which to feel it again.
    pub(crate) days: f64,
    daily: bool,
    up: bool,
    mean_c: f64,
}

pub(crate) fn pace(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<Pace> {
    let mean_c = tray
        .place
        .and_then(|place| plan.temperatures.mean_now(place.described.place, plan.now))
        .unwrap_or(ROOM_C);
    let up = !tray.batches.is_empty() || tray.sowings_up().next().is_some();
    let daily = up && dries_daily(plan, tray);
    let days = if daily {
        1.0
    } else {
        let factor = tray_factor(tray) * if up { UP_SHARE } else { 1.0 };
        drying_interval_days(mean_c, tray.under_cover(), factor).ok()?
    };
    Some(Pace {
        days,
        daily,
        up,
        mean_c,
    })
}

/// The latest that was sown or set in it: its compost was moist then.
fn began<'a>(tray: &LivingTray<'a>) -> Option<&'a Mark> {
    let sowings = tray.sowings.iter().map(|sowing| &sowing.opened_by);
    let batches = tray.batches.iter().map(|batch| &batch.opened_by);
    sowings.chain(batches).max_by_key(|mark| mark.at.instant())
}

/// When the winter is over that all that lives in it waits out, watered by the
/// rain.
fn winter_over(plan: &Plan<'_>, tray: &LivingTray<'_>) -> Option<NaiveDateTime> {
    let over = |sowing: &&SowingState| {
        let cold = plan.growth(sowing.sown.sowing)?.cold?;
        cold.until.filter(|_| cold.kind == ColdKind::Winter)
    };
    let waits: Option<Vec<NaiveDateTime>> = tray.sowings.iter().map(over).collect();
    waits?.into_iter().min().filter(|_| tray.batches.is_empty())
}

/// Under glass in the bright half of the year, or over bottom heat.
fn dries_daily(plan: &Plan<'_>, tray: &LivingTray<'_>) -> bool {
    let glass = tray.stands_in(PlaceKind::Greenhouse) || tray.stands_in(PlaceKind::ColdFrame);
    let month = rounds::month_in_the_north(plan.picture, plan.now.date());
    (glass && BRIGHT_MONTHS.contains(&month)) || tray.stands_in(PlaceKind::HeatedPropagator)
}

/// What the tray's own answers have taught.
fn tray_factor(tray: &LivingTray<'_>) -> f64 {
    tray.state.felt.iter().fold(1.0, |factor: f64, felt| {
        let learnt = match felt.feel {
            Some(Feel::Dry) => AFTER_DRY,
            Some(Feel::Wet) => AFTER_WET,
            Some(Feel::Moist) | None => 1.0,
        };
        (factor * learnt).clamp(FACTOR.0, FACTOR.1)
    })
}

/// Something lies on the surface and is not to be poked.
fn surface_sown(plan: &Plan<'_>, tray: &LivingTray<'_>) -> bool {
    let on_the_surface = |sowing: &SowingState| match sowing.sown.depth_mm {
        Some(depth) => depth <= 0.0,
        None => plan
            .picture
            .book_crop(Plants::Sowing(sowing.sown.sowing))
            .is_some_and(|crop| crop.depth_mm.1 <= 0.0),
    };
    tray.sowings_waiting().any(on_the_surface)
}

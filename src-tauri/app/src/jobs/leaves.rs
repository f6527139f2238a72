//! How far seedlings have grown since they came up, by warmth and the crop's
//! own figures: their true leaves, and a full cell.

use super::{LivingTray, Plan};
use chrono::{Days, NaiveDate};
use plumule_agronomy::{Crop, degree_days};
use plumule_journal::id::PlaceId;
use plumule_journal::state::Stay;
use plumule_journal::subject::Plants;

/// The first true leaves open after this share of what it takes to raise a
/// plant (judgement: ten days or so of the six weeks of a tomato, as is common
/// practice; slow kinds take as much longer as they are raised longer) …
const LEAVES: f64 = 0.25;

/// … and a cell is outgrown after this.
const FULL_CELL: f64 = 0.5;

/// Weeks to raise of what is sown where it is to grow (judgement).
const WEEKS: f64 = 5.0;

/// Growing-on temperatures, and the temperature at which nothing grows, of a
/// plant that is not in the crop book, °C (judgement).
const MEAN_C: f64 = 17.0;
const BASE_C: f64 = 5.0;

/// Above this much over the warmest that it wants by day more warmth does not
/// make it grow faster, °C (judgement).
const ABOVE_C: f64 = 5.0;

/// Not later than so many times the days at the temperatures it wants, however
/// cold it was reckoned to be (judgement).
const AT_MOST: f64 = 3.0;

const WEEK_DAYS: f64 = 7.0;

/// Warmth that a stage of growing takes.
struct Stage {
    /// °C · days above the base.
    sum: f64,
    base_c: f64,
    upper_c: f64,
    /// Days at the temperatures it wants.
    days: f64,
}

impl Stage {
    fn of(crop: Option<&Crop>, share: f64) -> Self {
        let weeks = crop.and_then(|crop| crop.weeks_to_raise);
        let weeks = weeks.map_or(WEEKS, |(least, most)| least.midpoint(most));
        let days = share * weeks * WEEK_DAYS;
        let middle = |(low, high): (f64, f64)| f64::midpoint(low, high);
        let (mean_c, warmest) = crop.map_or((MEAN_C, MEAN_C), |crop| {
            let wants = crop.growing_on_c;
            (middle(wants.day).midpoint(middle(wants.night)), wants.day.1)
        });
        let base_c = crop.map_or(BASE_C, base_c).min(mean_c - 1.0);
        Self {
            sum: days * (mean_c - base_c),
            base_c,
            upper_c: warmest + ABOVE_C,
            days,
        }
    }
}

/// The highest whole degree at which its seed makes no progress; what does not
/// come up does not grow (judgement).
fn base_c(crop: &Crop) -> f64 {
    let (low, _) = crop.recommended_c;
    let below = (0..low as i32).rev().map(f64::from);
    let mut none = below.filter(|degrees| crop.curve.rate_per_day(*degrees) <= 0.0);
    none.next().unwrap_or(0.0)
}

/// The day on which seedlings that were up on `up` have their true leaves.
pub(super) fn true_leaves(
    plan: &Plan<'_>,
    tray: &LivingTray<'_>,
    plants: Plants,
    up: NaiveDate,
) -> NaiveDate {
    grown(plan, tray, plants, up, LEAVES)
}

/// The day on which they fill a cell.
pub(super) fn full_cell(
    plan: &Plan<'_>,
    tray: &LivingTray<'_>,
    plants: Plants,
    up: NaiveDate,
) -> NaiveDate {
    grown(plan, tray, plants, up, FULL_CELL)
}

fn grown(
    plan: &Plan<'_>,
    tray: &LivingTray<'_>,
    plants: Plants,
    up: NaiveDate,
    share: f64,
) -> NaiveDate {
    let stage = Stage::of(plan.picture.book_crop(plants), share);
    let most = Days::new((stage.days * AT_MOST) as u64);
    let last = up.checked_add_days(most).unwrap_or(up);
    let mut sum = 0.0;
    let mut day = up;
    while day < last && sum < stage.sum {
        let Some(next) = day.succ_opt() else { break };
        let range = place_on(plan, tray, plants, day)
            .and_then(|place| plan.temperatures.day(place, day, plan.now.date()));
        let gained = range.and_then(|range| {
            degree_days(range.min_c, range.max_c, stage.base_c, stage.upper_c).ok()
        });
        sum += gained.unwrap_or(0.0);
        day = next;
    }
    day
}

/// Where plants stood on a day: before a batch began, where it came up.
fn place_on(
    plan: &Plan<'_>,
    tray: &LivingTray<'_>,
    plants: Plants,
    day: NaiveDate,
) -> Option<PlaceId> {
    let origin = plan.picture.origin(plants);
    let cradle = origin.and_then(|sowing| plan.picture.trays.get(&sowing.sown.tray));
    let on = |stays: &[Stay]| {
        let mut before = stays.iter().rev();
        let stay = before.find(|stay| stay.since.at.local.date() <= day);
        stay.map(|stay| stay.place)
    };
    on(&tray.state.stays)
        .or_else(|| on(&cradle?.stays))
        .or_else(|| tray.state.stays.first().map(|stay| stay.place))
}

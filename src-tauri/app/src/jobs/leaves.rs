//! When seedlings have their first true leaves.

use super::{LivingTray, Plan};
use chrono::{Days, NaiveDate};

/// Warmth from emergence to the first true leaves, in °C · days above
/// [`BASE_C`] (judgement: ten days at 17 °C, the "10 days or so" of common
/// practice).
const SUM: f64 = 120.0;

/// Under this nothing grows (judgement, between peas and peppers).
const BASE_C: f64 = 5.0;

/// Not later than so many days after emergence, however cold it was reckoned
/// to be (judgement).
const AT_MOST_DAYS: u64 = 42;

/// The day on which seedlings that were up on `up` have their true leaves.
pub(super) fn true_leaves(plan: &Plan<'_>, tray: &LivingTray<'_>, up: NaiveDate) -> NaiveDate {
    let last = up.checked_add_days(Days::new(AT_MOST_DAYS)).unwrap_or(up);
    let mut sum = 0.0;
    let mut day = up;
    while day < last && sum < SUM {
        let Some(next) = day.succ_opt() else { break };
        let stays = tray.state.stays.iter();
        let stay = stays
            .rev()
            .find(|stay| stay.since.at.local.date() <= day)
            .or(tray.state.stays.first());
        let range = stay.and_then(|stay| plan.temperatures.day(stay.place, day, plan.now.date()));
        sum += range.map_or(0.0, |range| {
            (range.min_c.midpoint(range.max_c) - BASE_C).max(0.0)
        });
        day = next;
    }
    day
}

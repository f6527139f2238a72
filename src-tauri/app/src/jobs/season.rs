//! When plants may go out: by frost dates, hardiness and weeks to raise.

use super::{LivingTray, Plan};
use crate::season::in_year;
use chrono::{Datelike, Days, NaiveDate, TimeDelta};
use plumule_agronomy::Crop;
use plumule_journal::content::MonthDay;
use plumule_journal::state::Mark;
use plumule_journal::subject::Plants;

/// Days after the last frost that count as frost-free where no first frost is
/// known (judgement: the growing season of a cool climate).
const SEASON_DAYS: i64 = 180;

const WEEK_DAYS: f64 = 7.0;

/// When some plants are to go out.
pub(super) struct Outing {
    pub(super) crop: &'static Crop,
    /// The first day on which they are raised and may go out; as things are
    /// known, that is, without a last frost date, only raised.
    pub(super) from: NaiveDate,
    /// When they were sown.
    pub(super) sown: NaiveDate,
    /// The last frost waited for.
    pub(super) frost: Option<NaiveDate>,
}

/// None for plants that are not raised to be set out, or whose crop or sowing
/// is not known.
pub(super) fn outing(plan: &Plan<'_>, plants: Plants) -> Option<Outing> {
    let crop = plan.picture.book_crop(plants)?;
    let sown = plan.picture.origin(plants)?.opened_by.at.local.date();
    let raised = sown + weeks(crop.weeks_to_raise?.0);
    let garden = plan.picture.garden.described.as_ref();
    let last_frost = garden.and_then(|garden| garden.last_frost);
    let first_frost = garden.and_then(|garden| garden.first_frost);
    let (set_out, _) = crop.set_out_weeks?;
    let season = last_frost.and_then(|last| season(raised, last, first_frost, set_out));
    Some(Outing {
        crop,
        from: season.map_or(raised, |(_, from)| from.max(raised)),
        sown,
        frost: season.map(|(frost, _)| frost),
    })
}

/// The first season that is not over when plants are raised: its last frost,
/// and the day from which the crop goes out.
fn season(
    raised: NaiveDate,
    last_frost: MonthDay,
    first_frost: Option<MonthDay>,
    set_out_weeks: f64,
) -> Option<(NaiveDate, NaiveDate)> {
    let year = raised.year();
    (year - 1..=year + 1).find_map(|year| {
        let last = in_year(last_frost, year)?;
        let end = match first_frost {
            Some(first) => in_year(first, year)
                .filter(|first| *first > last)
                .or(in_year(first, year + 1))?,
            None => last + TimeDelta::days(SEASON_DAYS),
        };
        (end > raised).then(|| (last, last + weeks(set_out_weeks)))
    })
}

pub(super) fn weeks(weeks: f64) -> TimeDelta {
    TimeDelta::days((weeks * WEEK_DAYS).round() as i64)
}

/// When plants began in their tray: sown or set.
pub(super) fn began<'a>(plan: &Plan<'a>, plants: Plants) -> Option<&'a Mark> {
    match plants {
        Plants::Sowing(id) => plan
            .picture
            .sowings
            .get(&id)
            .map(|sowing| &sowing.opened_by),
        Plants::Batch(id) => plan.picture.batches.get(&id).map(|batch| &batch.opened_by),
    }
}

/// Plants that stand singly and are up: those that can be hardened off,
/// potted on or planted out.
pub(super) fn grown<'a>(
    plan: &'a Plan<'_>,
    tray: &'a LivingTray<'_>,
) -> impl Iterator<Item = Plants> + 'a {
    let plants = tray.plants();
    plants.filter(move |plants| {
        let there = plan
            .picture
            .plants(*plants)
            .is_some_and(|state| state.numbers.there > 0);
        there && (tray.in_cells() || matches!(plants, Plants::Batch(_)))
    })
}

pub(super) fn after(day: NaiveDate, days: u64) -> NaiveDate {
    day.checked_add_days(Days::new(days)).unwrap_or(day)
}

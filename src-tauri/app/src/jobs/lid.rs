//! Open the lid on a sunny morning: under glass or a cover the sun cooks what is
//! up, from spring to autumn.

use super::feel::BRIGHT_MONTHS;
use super::season::began;
use super::{Job, LivingTray, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use chrono::{Days, NaiveDate};
use plumule_journal::content::Shown;
use plumule_journal::state::{Mark, PlaceState};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::PlaceKind;

/// Read as warm as this of late, the lid is opened for certain, °C (judgement:
/// seedlings under glass do badly above 25).
const WARM_C: f64 = 22.0;

/// A highest so many days old still tells of the weather.
const DAYS: u64 = 3;

pub(super) fn job(plan: &Plan<'_>, place: &PlaceState) -> Option<Job> {
    let described = &place.described;
    let lidded = described.kind == PlaceKind::ColdFrame
        || described.covered && described.kind != PlaceKind::Fridge;
    let today = plan.now.date();
    let month = rounds::month_in_the_north(plan.picture, today);
    if !lidded || !BRIGHT_MONTHS.contains(&month) {
        return None;
    }
    let here = |tray: &&LivingTray<'_>| {
        tray.place
            .is_some_and(|there| there.described.place == described.place)
    };
    let up: Vec<Plants> = plan
        .trays
        .iter()
        .filter(here)
        .flat_map(LivingTray::plants)
        .filter(|plants| {
            let state = plan.picture.plants(*plants);
            state.is_some_and(|state| state.numbers.there > 0)
        })
        .collect();
    if up.is_empty() {
        return None;
    }
    let warm = warmest_read(plan, place, today);
    let (key, need) = match warm {
        // The thermometer says that it stays cool.
        Some((_, highest)) if highest < WARM_C => return None,
        Some((mark, _)) => ("why-open-the-lid", mark),
        None => ("why-open-the-lid-unread", latest_up(plan, &up)?),
    };
    // Opened since, it is opened again the next morning.
    let since = place
        .aired
        .as_ref()
        .filter(|aired| aired.at.instant() >= need.at.instant());
    let (opened_by, due) = match since {
        Some(aired) => {
            let next = aired.at.local.date().succ_opt()?;
            (aired, rounds::morning(plan.picture, next))
        }
        None => (need, need.at.local),
    };
    let mut why = Say::new(key)
        .with("place", Arg::Text(described.name.clone()))
        .with("crops", plan.crops(up.into_iter()));
    if let Some((_, highest)) = warm {
        why = why.with("highest", Arg::Celsius(highest.round()));
    }
    let mut job = Job::new(
        JobKind::OpenTheLid,
        Subject::Place(described.place),
        opened_by.entry,
        due,
    )
    .for_today(warm.is_some())
    .because(why);
    job.place = Some(described.place);
    Some(job)
}

/// When the last of what is up began there.
fn latest_up<'a>(plan: &Plan<'a>, up: &[Plants]) -> Option<&'a Mark> {
    up.iter()
        .filter_map(|plants| began(plan, *plants))
        .max_by_key(|mark| mark.at.instant())
}

/// The highest that its thermometer showed in the last days, and when it was
/// read.
fn warmest_read<'a>(
    plan: &Plan<'a>,
    place: &PlaceState,
    today: NaiveDate,
) -> Option<(&'a Mark, f64)> {
    let since = today.checked_sub_days(Days::new(DAYS))?;
    let readings = plan.picture.readings.get(&place.described.place)?.iter();
    readings
        .rev()
        .take_while(|reading| reading.mark.at.local.date() >= since)
        .map(|reading| match reading.shown {
            Shown::LowHigh { max_c, .. } => (&reading.mark, max_c),
            Shown::Now { temperature_c } => (&reading.mark, temperature_c),
        })
        .max_by(|(_, one), (_, other)| one.total_cmp(other))
}

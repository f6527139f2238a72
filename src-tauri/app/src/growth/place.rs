//! What a packet sown now in a place would do.

use super::course::{Bed, course};
use super::{Learnt, due, fridges};
use crate::picture::Picture;
use crate::say::{Arg, Say};
use crate::temperature::Temperatures;
use crate::view::{DueView, RangeView};
use crate::words;
use chrono::{Days, NaiveDate, NaiveDateTime};
use plumule_agronomy::{Crop, Curve, PacketOutlook, crops};
use plumule_journal::content::PacketDescribed;
use plumule_journal::id::PlaceId;

/// The last days whose readings tell how well a place is known.
const LAST_DAYS: u64 = 7;

/// The span of temperatures in which the limits of a curve are looked for, °C,
/// and the step.
const LIMITS_C: (f64, f64, f64) = (0.0, 50.0, 0.5);

/// A sowing that is only thought of.
#[derive(Clone, Debug)]
pub(crate) struct PlaceGrowth {
    pub(crate) due: DueView,
    /// None comes up there within a year.
    pub(crate) none_comes_up: bool,
    /// A span of days, or that none comes up and why.
    pub(crate) say: Say,
    /// The temperatures reckoned with.
    pub(crate) range: RangeView,
}

/// The growth of seeds sown now in a place; none for a crop that is not in the
/// crop book or a place that is not known.
pub(crate) fn growth_in(
    picture: &Picture,
    described: &PacketDescribed,
    seeds: u32,
    (worth, learnt): (&PacketOutlook, &Learnt),
    place: PlaceId,
    now: NaiveDateTime,
) -> Option<PlaceGrowth> {
    let crop = crops().get(&described.crop)?;
    let temperatures = Temperatures::of(picture);
    let today = now.date();
    let range = temperatures.day(place, today.succ_opt()?, today)?;
    let fridges = fridges(picture);
    let bed = Bed {
        stays: vec![(now, place)],
        felt: &[],
        fridges: &fridges,
        cold_until: None,
        pace: 1.0,
    };
    let course = course(&temperatures, &bed, &crop.curve, now, now, &[])?;
    let read_share = read_share(&temperatures, place, today);
    let time_factor = learnt.time_factor(crop, described, worth, read_share);
    let due = due(
        crop,
        &course,
        seeds.max(1),
        worth.outlook,
        time_factor,
        today,
    );
    Some(PlaceGrowth {
        none_comes_up: due.d50.is_none(),
        say: say(crop, due, course.mean_to_come_c, today),
        due,
        range: RangeView {
            min_c: range.min_c,
            max_c: range.max_c,
        },
    })
}

fn read_share(temperatures: &Temperatures<'_>, place: PlaceId, today: NaiveDate) -> f64 {
    let days = (0..LAST_DAYS).filter_map(|back| today.checked_sub_days(Days::new(back)));
    days.filter(|day| temperatures.read_for(place, *day))
        .count() as f64
        / LAST_DAYS as f64
}

fn say(crop: &Crop, due: DueView, mean_c: f64, today: NaiveDate) -> Say {
    let days = |day: NaiveDate| Arg::Number((day - today).num_days() as f64);
    if let (Some(d10), Some(d50), Some(d90)) = (due.d10, due.d50, due.d90) {
        return Say::new("bench-due")
            .with("from", days(d10))
            .with("half", days(d50))
            .with("to", days(d90));
    }
    let (coldest, warmest) = limits(&crop.curve);
    let (low, high) = crop.recommended_c;
    let (key, limit) = if mean_c < low.midpoint(high) {
        ("bench-none-below", coldest)
    } else {
        ("bench-none-above", warmest)
    };
    Say::new(key)
        .with("crop", words::crop(&crop.key))
        .with("limit", Arg::Celsius(limit))
        .with("temperature", Arg::Celsius(mean_c))
        .with("low", Arg::Celsius(low))
        .with("high", Arg::Celsius(high))
}

/// Below the first and above the second none comes up.
fn limits(curve: &Curve) -> (f64, f64) {
    let (from, to, step) = LIMITS_C;
    let steps = ((to - from) / step) as u32;
    let tried = |index: u32| from + step * f64::from(index);
    let up = |index: &u32| curve.rate_per_day(tried(*index)) > 0.0;
    // The last temperature at which none comes up, on either side.
    let coldest = (0..=steps).find(up).unwrap_or(0).saturating_sub(1);
    let warmest = (0..=steps).rev().find(up).unwrap_or(steps);
    (tried(coldest), tried((warmest + 1).min(steps)))
}

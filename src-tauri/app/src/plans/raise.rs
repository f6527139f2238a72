//! How long it takes from sowing to plants that are ready to set out.

use crate::growth::{Learnt, outlook_of};
use crate::picture::Picture;
use plumule_agronomy::{Crop, crops};
use plumule_journal::content::PlanDescribed;
use plumule_journal::state::{PacketState, PlaceState};

const WEEK_DAYS: f64 = 7.0;

/// By the grower's own weeks a sowing may be so many days late and is still made
/// (judgement: within the week).
const LEEWAY_DAYS: i64 = 6;

/// Days from sowing to ready.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Raising<'a> {
    /// From the longest: sown by then they are ready for sure.
    pub(crate) longest: i64,
    /// From the shortest: sown later they are not.
    pub(crate) shortest: i64,
    /// Days to come up, of those.
    pub(crate) up: i64,
    /// The place in which they come up; none: at the warmth recommended.
    pub(crate) place: Option<&'a PlaceState>,
    /// By the grower's own word.
    pub(crate) own: bool,
}

/// None for a crop that is not in the crop book or is sown where it is to grow,
/// unless the grower says how long it takes.
pub(crate) fn raising<'a>(
    picture: &'a Picture,
    plan: &PlanDescribed,
    packet: Option<&PacketState>,
) -> Option<Raising<'a>> {
    let crop = crops().get(&plan.crop);
    let (place, up) = crop
        .map(|crop| best_place(picture, crop, packet))
        .unwrap_or_default();
    if let Some(weeks) = plan.raise_weeks {
        let longest = i64::from(weeks) * 7;
        return Some(Raising {
            longest,
            shortest: (longest - LEEWAY_DAYS).max(1),
            up: up.map_or(0, whole),
            place,
            own: true,
        });
    }
    let crop = crop?;
    let (least, most) = crop.weeks_to_raise?;
    // The book's weeks are those of seed at the warmth recommended for it.
    let usual = days_at(crop, crop.recommended_c, 0.0)?;
    let more = up.map_or(0.0, |up| up - usual);
    Some(Raising {
        longest: whole(most * WEEK_DAYS + more),
        shortest: whole(least * WEEK_DAYS + more),
        up: whole(up.unwrap_or(usual)),
        place,
        own: false,
    })
}

/// The place in use whose usual warmth is in the range recommended for the crop
/// and where half are up soonest, with the days that takes; in none of the
/// range, the soonest of all.
fn best_place<'a>(
    picture: &'a Picture,
    crop: &Crop,
    packet: Option<&PacketState>,
) -> (Option<&'a PlaceState>, Option<f64>) {
    let mean_ln = packet.map_or(0.0, |packet| pace(picture, crop, packet));
    let (low, high) = crop.recommended_c;
    let found = picture
        .places
        .values()
        .filter(|place| !place.described.retired)
        .filter_map(|place| {
            let usual = place.described.usual;
            let days = days_at(crop, (usual.min_c, usual.max_c), mean_ln)?;
            let mean = usual.min_c.midpoint(usual.max_c);
            Some((!(low..=high).contains(&mean), days, place))
        })
        .min_by(|one, other| {
            (one.0, one.1)
                .partial_cmp(&(other.0, other.1))
                .unwrap_or(std::cmp::Ordering::Equal)
        });
    found.map_or((None, None), |(_, days, place)| (Some(place), Some(days)))
}

/// How slow a packet is, as ln of its time factor.
fn pace(picture: &Picture, crop: &Crop, packet: &PacketState) -> f64 {
    let learnt = Learnt::of(picture, packet);
    let made = packet.opened_by.at.local.date();
    outlook_of(packet, &learnt, made).map_or(0.0, |worth| {
        learnt
            .time_factor(crop, &packet.described, &worth, 0.0)
            .mean_ln
    })
}

/// Days until half are up at a usual day; none where none come up in a year.
fn days_at(crop: &Crop, (min_c, max_c): (f64, f64), mean_ln: f64) -> Option<f64> {
    let progress = crop.curve.day_progress(min_c, max_c);
    let days = mean_ln.exp() / progress;
    (progress > 0.0 && days <= 365.0).then_some(days)
}

fn whole(days: f64) -> i64 {
    days.ceil().max(1.0) as i64
}

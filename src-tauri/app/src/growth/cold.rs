//! Cold weeks, and seed that waits out the winter: neither is late.

use crate::picture::Picture;
use chrono::{Datelike, NaiveDate, NaiveDateTime, NaiveTime, TimeDelta};
use plumule_agronomy::{Crop, CropGroup, Hardiness, Treatment};
use plumule_journal::id::PlaceId;
use plumule_journal::state::{SowingState, Stay, TrayState};
use plumule_journal::words::PlaceKind;

/// Seed sown between the two days of the northern year outdoors waits for the
/// second (judgement: the autumn equinox, the first of spring).
const AUTUMN: (u32, u32) = (9, 22);
const SPRING: (u32, u32) = (3, 1);

/// Months by which the southern year is behind.
const HALF_A_YEAR: u32 = 6;

/// Why seed lies in the cold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum ColdKind {
    /// In a fridge.
    Fridge,
    /// For the weeks that were said at sowing.
    Weeks,
    /// Hardy seed sown outdoors in autumn.
    Winter,
}

/// A stretch in the cold, during which no progress counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Cold {
    pub(crate) kind: ColdKind,
    /// When it is to end, if that is known.
    pub(crate) until: Option<NaiveDateTime>,
}

impl Cold {
    /// Whether it lasts at a moment; in a fridge until it is taken out.
    pub(crate) fn lasts(&self, at: NaiveDateTime) -> bool {
        self.kind == ColdKind::Fridge || self.until.is_some_and(|until| at < until)
    }

    /// From when progress counts, wherever the seed lies.
    pub(super) fn ends(&self) -> Option<NaiveDateTime> {
        self.until.filter(|_| self.kind != ColdKind::Fridge)
    }
}

/// The cold that a sowing goes through; none for one that was never to.
pub(super) fn cold(
    picture: &Picture,
    crop: &Crop,
    sowing: &SowingState,
    tray: &TrayState,
) -> Option<Cold> {
    let began = sowing.opened_by.at.local;
    let kind_of = |id: PlaceId| Some(picture.places.get(&id)?.described.kind);
    let stays = stays_since(tray, began);
    let in_fridge = |stay: &&&Stay| kind_of(stay.place) == Some(PlaceKind::Fridge);
    let said = sowing.sown.treatment.cold_weeks;
    if let Some(arrived) = stays.iter().find(in_fridge) {
        let weeks = said.or_else(|| wanted(crop));
        let there = stays.last().filter(in_fridge)?;
        let from = arrived.since.at.local.max(began);
        let from = from.max(first_of_this_stretch(&stays, there, kind_of));
        return Some(Cold {
            kind: ColdKind::Fridge,
            until: weeks.map(|weeks| from + TimeDelta::weeks(i64::from(weeks))),
        });
    }
    let moved_to = |kinds: &[PlaceKind], within: bool| {
        let mut later = stays.iter().skip(1);
        later
            .find(|stay| kind_of(stay.place).is_some_and(|kind| kinds.contains(&kind) == within))
            .map(|stay| stay.since.at.local)
    };
    if let Some(weeks) = said {
        let planned = began + TimeDelta::weeks(i64::from(weeks));
        let warm = [PlaceKind::HeatedPropagator, PlaceKind::Windowsill];
        let until = moved_to(&warm, true).map_or(planned, |moved| moved.min(planned));
        return Some(Cold {
            kind: ColdKind::Weeks,
            until: Some(until),
        });
    }
    let open = [PlaceKind::Outdoors, PlaceKind::ColdFrame];
    let first = kind_of(stays.first()?.place)?;
    let waits = crop.hardiness == Hardiness::Hardy
        && (crop.group == CropGroup::PerennialFlower || wanted(crop).is_some())
        && open.contains(&first)
        && sowing.plants.numbers.up == 0;
    let spring = spring_after(began.date(), picture.southern()).filter(|_| waits)?;
    let until = moved_to(&open, false).map_or(spring, |moved| moved.min(spring));
    Some(Cold {
        kind: ColdKind::Winter,
        until: Some(until),
    })
}

/// Where it lay when it was sown, and since.
fn stays_since(tray: &TrayState, began: NaiveDateTime) -> Vec<&Stay> {
    let before = tray
        .stays
        .iter()
        .rposition(|stay| stay.since.at.local <= began);
    tray.stays.iter().skip(before.unwrap_or(0)).collect()
}

/// When it came into the fridge that it is in now.
fn first_of_this_stretch(
    stays: &[&Stay],
    there: &Stay,
    kind_of: impl Fn(PlaceId) -> Option<PlaceKind>,
) -> NaiveDateTime {
    let back = stays.iter().rev();
    let stretch = back.take_while(|stay| kind_of(stay.place) == Some(PlaceKind::Fridge));
    stretch
        .last()
        .map_or(there.since.at.local, |stay| stay.since.at.local)
}

/// The least weeks of cold that a crop wants.
fn wanted(crop: &Crop) -> Option<u32> {
    crop.before_sowing
        .iter()
        .find_map(|treatment| match treatment {
            Treatment::ColdWeeks((least, _)) => Some(least.ceil() as u32),
            Treatment::SoakHours(_) | Treatment::Chip => None,
        })
}

/// The first day of the spring that seed sown in autumn waits for; none for
/// seed that was not sown in autumn or winter.
fn spring_after(sown: NaiveDate, southern: bool) -> Option<NaiveDateTime> {
    let turned = |(month, day): (u32, u32)| {
        if southern {
            ((month + HALF_A_YEAR - 1) % 12 + 1, day)
        } else {
            (month, day)
        }
    };
    let (spring_month, spring_day) = turned(SPRING);
    let year = sown.year();
    let spring = (year..=year + 1)
        .filter_map(|year| NaiveDate::from_ymd_opt(year, spring_month, spring_day))
        .find(|spring| *spring > sown)?;
    let (month, day) = turned(AUTUMN);
    let autumn = (spring.year() - 1..=spring.year())
        .rev()
        .filter_map(|year| NaiveDate::from_ymd_opt(year, month, day))
        .find(|autumn| *autumn < spring)?;
    (sown >= autumn).then(|| spring.and_time(NaiveTime::MIN))
}

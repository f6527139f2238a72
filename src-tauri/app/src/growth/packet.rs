//! What a packet is worth on a day, and how fast it is by what it states.

use super::Learnt;
use chrono::NaiveDate;
use plumule_agronomy::{
    Crop, PacketOutlook, Storage, TAU_KIND, Test, TimeFactor, crops, packet_outlook, stated_mean_ln,
};
use plumule_journal::content::PacketDescribed;
use plumule_journal::state::{PacketState, PacketTest};
use plumule_journal::words;

/// Age in years of a packet that says nothing of it (judgement: bought for
/// last season).
const UNDATED_YEARS: f64 = 1.0;

/// Days in a year of age.
pub(super) const YEAR_DAYS: f64 = 365.25;

/// Month and day from which a packet of a year ages (judgement: packed for the
/// season of that year).
const PACKED: (u32, u32) = (1, 1);

/// Month and day from which saved seed ages (judgement: dried and cleaned).
const HARVESTED: (u32, u32) = (10, 1);

/// What a packet is likely to bring up on a day, by its age, by its germination
/// tests and by what came up of it; none for a crop that is not in the crop book.
pub(crate) fn outlook_of(
    packet: &PacketState,
    learnt: &Learnt,
    on: NaiveDate,
) -> Option<PacketOutlook> {
    let described = &packet.described;
    let crop = crops().get(&described.crop)?;
    let storage = match described.storage {
        words::Storage::FridgeSealed => Storage::FridgeSealed,
        words::Storage::CoolCupboard => Storage::CoolCupboard,
        words::Storage::WarmRoom => Storage::WarmRoom,
        words::Storage::DampShed => Storage::DampShed,
    };
    let age = age_years(packet, crop, on);
    let mut tests = learnt.tests(on);
    tests.extend(packet.tests.iter().filter_map(|test| own_test(test, on)));
    packet_outlook(crop, age, described.stated_germination, storage, &tests).ok()
}

/// A closed germination test, of its age on a day; it tells nothing of a day
/// before it was closed.
fn own_test(test: &PacketTest, on: NaiveDate) -> Option<Test> {
    let closed = test.closed.as_ref()?;
    let days = (on - closed.at.at.local.date()).num_days();
    (days >= 0).then(|| Test {
        germinated: closed.sprouted,
        of: test.seeds,
        age_years: days as f64 / YEAR_DAYS,
    })
}

/// From the year packed or harvested; else so that it is at the end of its
/// life on its sow-by date.
fn age_years(packet: &PacketState, crop: &Crop, on: NaiveDate) -> f64 {
    let described = &packet.described;
    let from_day = |year: i32, (month, day)| NaiveDate::from_ymd_opt(year, month, day);
    let harvested = described
        .harvested_year
        .and_then(|year| from_day(year, HARVESTED));
    let packed = described
        .packed_year
        .and_then(|year| from_day(year, PACKED));
    let years_since = |day: NaiveDate| (on - day).num_days() as f64 / YEAR_DAYS;
    let age = match (packed.or(harvested), described.sow_by) {
        (Some(began), _) => years_since(began),
        (None, Some(sow_by)) => crop.life_years + years_since(sow_by),
        (None, None) => UNDATED_YEARS,
    };
    age.clamp(0.0, 1000.0)
}

/// The mean of ln s by the days to come up that a packet states; where it names
/// no temperature, in the middle of what is recommended for the crop (judgement:
/// that is what such days are printed for). None where it states none, or where
/// by the crop book none come up at that temperature.
pub(crate) fn stated_pace(crop: &Crop, described: &PacketDescribed) -> Option<f64> {
    let stated = described.stated_days?;
    let (low, high) = crop.recommended_c;
    let at_c = stated
        .at
        .map_or(low.midpoint(high), |at| at.min_c.midpoint(at.max_c));
    let days = (f64::from(stated.from), f64::from(stated.to));
    stated_mean_ln(&crop.curve, days, at_c)
}

/// What is known of the speed of seed that is not old before any came up: by its
/// packet, else as is usual for the crop.
pub(crate) fn sound_pace(crop: &Crop, described: &PacketDescribed) -> TimeFactor {
    TimeFactor {
        mean_ln: stated_pace(crop, described).unwrap_or(0.0),
        tau: TAU_KIND,
    }
}

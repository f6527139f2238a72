//! Settings: what is true of the growing, and the habits of the device.

use crate::error::AppError;
use crate::say::{Arg, Say};
use crate::view::{AwayView, DeviceForm, GardenForm, PlaceForm, RangeView, SettingsView};
use chrono::{NaiveDate, NaiveTime};
use plumule_journal::Journal;
use plumule_journal::content::{FrostReckoned, FrostSpread, GardenDescribed, MonthDay, RangeC};
use plumule_journal::stamp::Stamp;
use plumule_journal::state::{GardenState, PlaceState};

/// A garden of which nothing was said yet: rounds at 08:00 and 18:00
/// (judgement), the zone left to the caller.
pub(crate) fn usual_garden() -> GardenDescribed {
    GardenDescribed {
        zone: "UTC".to_owned(),
        latitude: None,
        last_frost: None,
        first_frost: None,
        morning: NaiveTime::from_hms_opt(8, 0, 0).unwrap_or_default(),
        evening: NaiveTime::from_hms_opt(18, 0, 0).unwrap_or_default(),
    }
}

pub(crate) fn view(
    journal: &Journal,
    device: DeviceForm,
    stamp: &Stamp,
    demo: bool,
) -> Result<SettingsView, AppError> {
    let state = journal.garden()?;
    let garden = state.described.clone().unwrap_or(GardenDescribed {
        zone: stamp.zone.name().to_owned(),
        ..usual_garden()
    });
    let zone = garden.zone.parse().unwrap_or(stamp.zone);
    let now = stamp.now.with_timezone(&zone).naive_local();
    Ok(SettingsView {
        garden: garden_form(&garden),
        frost: state.frost.as_ref().map(frost_say),
        away: away(&state, now.date()),
        places: journal.places()?.iter().map(place_form).collect(),
        device,
        demo,
        entries: u32::try_from(journal.count()?).unwrap_or(u32::MAX),
    })
}

/// Days away that are not over yet.
fn away(state: &GardenState, today: NaiveDate) -> Vec<AwayView> {
    let away = state.away.iter();
    away.filter(|away| away.to >= today && away.from <= away.to)
        .map(|away| AwayView {
            from: away.from,
            to: (!away.open).then_some(away.to),
            now: away.from <= today,
        })
        .collect()
}

fn frost_say(frost: &FrostReckoned) -> Say {
    let years = |spread: Option<FrostSpread>| {
        Arg::Number(f64::from(spread.map_or(0, |spread| spread.years)))
    };
    Say::new("frost-kept")
        .with("from", Arg::Day(frost.first_day))
        .with("to", Arg::Day(frost.last_day))
        .with("spring", years(frost.spring))
        .with("autumn", years(frost.autumn))
}

fn garden_form(garden: &GardenDescribed) -> GardenForm {
    let day = |day: MonthDay| format!("{:02}-{:02}", day.month, day.day);
    let time = |time: NaiveTime| time.format("%H:%M").to_string();
    GardenForm {
        zone: garden.zone.clone(),
        latitude: garden.latitude,
        last_frost: garden.last_frost.map(day),
        first_frost: garden.first_frost.map(day),
        morning: time(garden.morning),
        evening: time(garden.evening),
    }
}

fn place_form(place: &PlaceState) -> PlaceForm {
    let place = &place.described;
    PlaceForm {
        id: Some(place.place.to_string()),
        name: place.name.clone(),
        kind: place.kind.as_str().to_owned(),
        usual: range(place.usual),
        unheated: place.unheated.map(range),
        light: place.light.as_str().to_owned(),
        covered: place.covered,
        position: place.position,
        retired: place.retired,
    }
}

pub(crate) fn range(range: RangeC) -> RangeView {
    RangeView {
        min_c: range.min_c,
        max_c: range.max_c,
    }
}

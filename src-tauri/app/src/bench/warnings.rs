//! What speaks against sowing a packet in a place or a tray, or now.

use crate::growth::growth;
use crate::picture::Picture;
use crate::say::{Arg, Say};
use crate::season::seasons;
use crate::view::{Coded, CompostWarning, DueView, SeasonStanding};
use crate::words;
use chrono::{NaiveDate, NaiveDateTime};
use plumule_agronomy::{Crop, LightNeed, SowingCompost};
use plumule_journal::content::PlaceDescribed;
use plumule_journal::state::TrayState;
use plumule_journal::subject::Plants;
use plumule_journal::words::{Compost, Light, PlaceKind};

/// Sowings in one tray whose halves come up further apart than this are in
/// each other's way, days.
const APART_DAYS: i64 = 7;

/// A day that is so much warmer than its night alternates enough, °C
/// (judgement: half the ten degrees of the test).
const SWING_C: f64 = 5.0;

fn coded(code: &str, say: Say) -> Coded {
    Coded {
        code: code.to_owned(),
        say,
    }
}

fn warning(code: &str) -> Say {
    Say::new(words::key("warn", code))
}

/// Of a place in which the seedlings would be due so.
pub(super) fn of_place(
    picture: &Picture,
    place: &PlaceDescribed,
    crop: &Crop,
    due: DueView,
    (min_c, max_c): (f64, f64),
) -> Vec<Coded> {
    let mut found = Vec::new();
    let mut add = |code: &str, say: Say| {
        found.push(coded(
            code,
            say.with("place", Arg::Text(place.name.clone())),
        ));
    };
    match (crop.light, place.light) {
        (LightNeed::Needed, Light::Dark) => add("wants_light", warning("wants_light")),
        (LightNeed::Dark, Light::Bright) => add("wants_dark", warning("wants_dark")),
        _ => {}
    }
    if let Some((night_c, day_c)) = crop.alternating_c
        && max_c - min_c < SWING_C
        && place.kind != PlaceKind::Fridge
    {
        let say = warning("alternating")
            .with("night", Arg::Celsius(night_c))
            .with("day", Arg::Celsius(day_c));
        add("alternating", say);
    }
    if let Some((from, to)) = away(picture, due) {
        let say = warning("due_while_away")
            .with("from", Arg::Day(from))
            .with("to", Arg::Day(to));
        add("due_while_away", say);
    }
    found
}

/// The days away in which the first half of them would come up.
fn away(picture: &Picture, due: DueView) -> Option<(NaiveDate, NaiveDate)> {
    let (first, half) = (due.d10?, due.d50?);
    let away = picture.garden.away.iter();
    let meets = |away: &&plumule_journal::state::AwayAt| away.from <= half && first <= away.to;
    away.filter(meets).map(|away| (away.from, away.to)).min()
}

/// Of a tray by what lives in it, given when half of the new ones would be up.
pub(super) fn of_tray(
    picture: &Picture,
    tray: &TrayState,
    crop: &Crop,
    half: Option<NaiveDate>,
    now: NaiveDateTime,
) -> Vec<Coded> {
    let mut found: Vec<Coded> = Vec::new();
    for occupant in &tray.occupants {
        let living = picture
            .plants(occupant.plants)
            .filter(|state| state.ended.is_none());
        let (Some(state), Some((key, _))) = (living, picture.crop_of(occupant.plants)) else {
            continue;
        };
        let there = words::crop(key);
        let mut add = |code: &str, say: Say| {
            if !found.iter().any(|other| other.code == code) {
                found.push(coded(code, say.with("there", there.clone())));
            }
        };
        if state.numbers.there > 0 {
            add("mixed_up", warning("mixed_up"));
            continue;
        }
        let Some(other) = picture.book_crop(occupant.plants) else {
            continue;
        };
        for (code, own, theirs) in [
            ("mixed_warmth", crop.recommended_c, other.recommended_c),
            (
                "mixed_warmth_after",
                crop.growing_on_c.day,
                other.growing_on_c.day,
            ),
        ] {
            if !overlap(own, theirs) {
                let say = warning(code)
                    .with("low", Arg::Celsius(own.0))
                    .with("high", Arg::Celsius(own.1))
                    .with("there_low", Arg::Celsius(theirs.0))
                    .with("there_high", Arg::Celsius(theirs.1));
                add(code, say);
            }
        }
        let light = [crop.light, other.light];
        if light.contains(&LightNeed::Needed) && light.contains(&LightNeed::Dark) {
            add("mixed_light", warning("mixed_light"));
        }
        if let (Some(half), Some(there)) = (half, half_of(picture, occupant.plants, now))
            && (half - there).num_days().abs() > APART_DAYS
        {
            let say = warning("mixed_days")
                .with("half", Arg::Day(half))
                .with("there_half", Arg::Day(there));
            add("mixed_days", say);
        }
    }
    found
}

fn overlap(a: (f64, f64), b: (f64, f64)) -> bool {
    a.0 <= b.1 && b.0 <= a.1
}

fn half_of(picture: &Picture, plants: Plants, now: NaiveDateTime) -> Option<NaiveDate> {
    let Plants::Sowing(id) = plants else {
        return None;
    };
    growth(picture, picture.sowings.get(&id)?, now)?.due.d50
}

/// Of the season: none while frost dates are not known.
pub(super) fn of_season(picture: &Picture, crop: &Crop, today: NaiveDate) -> Option<Coded> {
    let (over, to_come): (Vec<_>, Vec<_>) = seasons(picture, crop, today)
        .into_iter()
        .partition(|season| season.over() < today);
    let next = to_come.first()?;
    if next.standing(today) != SeasonStanding::Early {
        return None;
    }
    let (before, next) = (over.last()?.sow, next.sow);
    let (past, to_come) = (today - before.last, next.first - today);
    let (code, from, to) = if to_come < past {
        ("too_early", next.first, next.last)
    } else {
        ("too_late", before.first, before.last)
    };
    let say = warning(code)
        .with("from", Arg::Day(from))
        .with("to", Arg::Day(to));
    Some(coded(code, say))
}

/// Of composts that the crop does badly in.
pub(super) fn of_composts(crop: &Crop) -> Vec<CompostWarning> {
    let unsuited = |compost: Compost| {
        let key = match (compost, crop.compost) {
            (Compost::GardenSoil, _) => "garden_soil",
            (Compost::Coarse, SowingCompost::FineSeed | SowingCompost::MultiPurpose) => "coarse",
            (Compost::Potting, SowingCompost::FineSeed | SowingCompost::Gritty) => "rich",
            (Compost::MultiPurpose, SowingCompost::FineSeed) => "lumps",
            _ => return None,
        };
        Some(CompostWarning {
            compost: compost.as_str().to_owned(),
            say: Say::new(words::key("warn-compost", key)),
        })
    };
    Compost::ALL.iter().copied().filter_map(unsuited).collect()
}

//! Feeling, watering, reading, moving.

use super::Made;
use super::parse::{known, maybe, range};
use crate::error::AppError;
use crate::view::RangeView;
use chrono::NaiveDateTime;
use plumule_journal::content::{
    Content, CoverChanged, Felt, HeatBack, HeatOff, OfTray, ReadingTaken, Sheltered, Shown,
    TrayMoved,
};
use plumule_journal::id::TrayId;

pub(super) fn feel(
    trays: &[String],
    feel: Option<&str>,
    water: Option<&str>,
) -> Result<Made, AppError> {
    let (feel, water) = (maybe(feel)?, maybe(water)?);
    of_trays(trays, |tray| Content::Felt(Felt { tray, feel, water }))
}

pub(super) fn move_trays(trays: &[String], place: &str) -> Result<Made, AppError> {
    let place = known(place)?;
    let moved = of_trays(trays, |tray| Content::TrayMoved(TrayMoved { tray, place }))?;
    Ok(Made {
        place: Some(place),
        ..moved
    })
}

/// One entry a tray; a tray named twice gets one.
fn of_trays(trays: &[String], content: impl Fn(TrayId) -> Content) -> Result<Made, AppError> {
    let mut ids: Vec<TrayId> = Vec::new();
    for tray in trays {
        let id = known(tray)?;
        if !ids.contains(&id) {
            ids.push(id);
        }
    }
    if ids.is_empty() {
        return Err(AppError::plain("nothing_chosen"));
    }
    Ok(Made {
        contents: ids.iter().copied().map(content).collect(),
        tray: ids.first().copied(),
        ..Made::default()
    })
}

pub(super) fn read(place: &str, of: &str, shown: RangeView) -> Result<Made, AppError> {
    reading(
        place,
        of,
        Shown::LowHigh {
            min_c: shown.min_c,
            max_c: shown.max_c,
        },
    )
}

pub(super) fn read_now(place: &str, of: &str, temperature_c: f64) -> Result<Made, AppError> {
    reading(place, of, Shown::Now { temperature_c })
}

fn reading(place: &str, of: &str, shown: Shown) -> Result<Made, AppError> {
    Ok(Made::one(Content::ReadingTaken(ReadingTaken {
        place: known(place)?,
        of: known(of)?,
        shown,
    })))
}

pub(super) fn heat_off(
    place: &str,
    from: NaiveDateTime,
    to: Option<NaiveDateTime>,
    meanwhile: Option<RangeView>,
) -> Result<Made, AppError> {
    Ok(Made::one(Content::HeatOff(HeatOff {
        place: known(place)?,
        from,
        to,
        meanwhile: meanwhile.map(range),
    })))
}

pub(super) fn heat_back(
    place: &str,
    at: NaiveDateTime,
    meanwhile: Option<RangeView>,
) -> Result<Made, AppError> {
    Ok(Made::one(Content::HeatBack(HeatBack {
        place: known(place)?,
        at,
        meanwhile: meanwhile.map(range),
    })))
}

pub(super) fn shelter(trays: &[String], how: &str) -> Result<Made, AppError> {
    let how = known(how)?;
    of_trays(trays, |tray| Content::Sheltered(Sheltered { tray, how }))
}

pub(super) fn cover(tray: &str, on: bool) -> Result<Made, AppError> {
    let tray = known(tray)?;
    Ok(Made::of_tray(
        tray,
        Content::CoverChanged(CoverChanged { tray, on }),
    ))
}

pub(super) fn feed(tray: &str) -> Result<Made, AppError> {
    let tray = known(tray)?;
    Ok(Made::of_tray(tray, Content::Fed(OfTray { tray })))
}

pub(super) fn harden_off(tray: &str) -> Result<Made, AppError> {
    let tray = known(tray)?;
    Ok(Made::of_tray(tray, Content::HardenedOff(OfTray { tray })))
}

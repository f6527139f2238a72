//! Days away, nights, lids, frost dates.

use super::parse::{known, maybe};
use super::{Made, Maker};
use crate::error::AppError;
use crate::season::odds::{HALVES, odds_of};
use crate::settings::usual_garden;
use crate::view::{FrostOddsForm, FrostSpreadForm};
use chrono::{NaiveDate, TimeDelta};
use plumule_agronomy::{Half, Hemisphere};
use plumule_journal::content::{
    Away, CameBack, Content, FrostReckoned, FrostSpread, GardenDescribed, MonthDay, NightForecast,
    OfPlace,
};

/// Nobody is away for longer without saying until when.
const OPEN_DAYS: i64 = 365;

pub(super) fn away(from: NaiveDate, to: Option<NaiveDate>) -> Made {
    Made::one(Content::Away(Away {
        from,
        to: to.unwrap_or(from + TimeDelta::days(OPEN_DAYS)),
        open: to.is_none(),
    }))
}

pub(super) fn came_back(on: NaiveDate) -> Made {
    Made::one(Content::CameBack(CameBack { on }))
}

pub(super) fn night_low(
    night: NaiveDate,
    place: Option<&str>,
    low_c: f64,
) -> Result<Made, AppError> {
    Ok(Made::one(Content::NightForecast(NightForecast {
        night,
        place: maybe(place)?,
        low_c,
    })))
}

pub(super) fn air(place: &str) -> Result<Made, AppError> {
    let place = known(place)?;
    Ok(Made {
        place: Some(place),
        ..Made::one(Content::Aired(OfPlace { place }))
    })
}

impl Maker<'_> {
    /// Keeps the odds, and sets the garden's frost dates to those at even odds:
    /// the crop book counts weeks from the average last frost.
    pub(super) fn frost_odds(&self, form: &FrostOddsForm) -> Result<Made, AppError> {
        let reckoned = FrostReckoned {
            threshold_c: form.threshold_c,
            first_day: form.first_day,
            last_day: form.last_day,
            spring: form.spring.map(spread),
            autumn: form.autumn.map(spread),
        };
        let garden = self.journal.garden()?.described.unwrap_or(GardenDescribed {
            zone: self.zone.name().to_owned(),
            ..usual_garden()
        });
        let hemisphere = if garden.latitude.is_some_and(|latitude| latitude < 0.0) {
            Hemisphere::South
        } else {
            Hemisphere::North
        };
        let [last, first] = HALVES.map(|half| {
            let spread = match half {
                Half::Spring => reckoned.spring,
                Half::Autumn => reckoned.autumn,
            };
            average(spread, half, hemisphere)
        });
        let described = GardenDescribed {
            last_frost: last.or(garden.last_frost),
            first_frost: first.or(garden.first_frost),
            ..garden
        };
        Ok(Made {
            contents: vec![
                Content::FrostReckoned(reckoned),
                Content::GardenDescribed(described),
            ],
            ..Made::default()
        })
    }
}

fn spread(form: FrostSpreadForm) -> FrostSpread {
    FrostSpread {
        mean_day: form.mean_day,
        deviation_days: form.deviation_days,
        years: form.years,
        full_years: form.full_years,
    }
}

fn average(spread: Option<FrostSpread>, half: Half, hemisphere: Hemisphere) -> Option<MonthDay> {
    let day = odds_of(spread?, half, hemisphere)?.average();
    Some(MonthDay {
        month: day.month,
        day: day.day,
    })
}

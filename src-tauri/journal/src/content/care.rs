//! Care and season: treated seed, frost, shelter, heat, days away.

use super::RangeC;
use crate::id::{PlaceId, TrayId};
use crate::words::Shelter;
use chrono::{NaiveDate, NaiveDateTime};
use serde::{Deserialize, Serialize};

/// What was done to seed before it was sown, and what it is to go through
/// first.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Treatment {
    /// Soaked, hours.
    #[serde(default)]
    pub soaked_hours: Option<f64>,
    /// The seed coat was nicked or rubbed.
    #[serde(default)]
    pub chipped: bool,
    /// So many weeks in the cold from sowing, then warm.
    #[serde(default)]
    pub cold_weeks: Option<u32>,
}

impl Treatment {
    /// Whether nothing was done to it.
    #[must_use]
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }
}

/// The heat of a place came back.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct HeatBack {
    /// The place.
    pub place: PlaceId,
    /// When, local time of the garden.
    pub at: NaiveDateTime,
    /// The temperatures meanwhile, if known.
    #[serde(default)]
    pub meanwhile: Option<RangeC>,
}

/// The grower came back; whatever days away were still to come are not.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct CameBack {
    /// The first day back.
    pub on: NaiveDate,
}

/// About one place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct OfPlace {
    /// The place.
    pub place: PlaceId,
}

/// A tray was sheltered for the night.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Sheltered {
    /// The tray.
    pub tray: TrayId,
    /// How.
    pub how: Shelter,
}

/// How cold a night is to be.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct NightForecast {
    /// The day on whose evening the night begins.
    pub night: NaiveDate,
    /// In a place; none: outdoors.
    #[serde(default)]
    pub place: Option<PlaceId>,
    /// Lowest expected, °C.
    pub low_c: f64,
}

/// When frosts come in one half of the year: a normal date, in the share of
/// years that have one.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct FrostSpread {
    /// Mean day of the last or first frost, counted from 15 July.
    pub mean_day: f64,
    /// Its sample standard deviation, days.
    pub deviation_days: f64,
    /// Half-years with a frost and a full record.
    pub years: u32,
    /// Half-years with a full record.
    pub full_years: u32,
}

/// When frosts come, reckoned from a record of daily minima; the last holds.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct FrostReckoned {
    /// A frost is a minimum at or under this, °C.
    pub threshold_c: f64,
    /// First day of the record.
    pub first_day: NaiveDate,
    /// Last day of the record.
    pub last_day: NaiveDate,
    /// The last frosts of spring, where there were enough.
    #[serde(default)]
    pub spring: Option<FrostSpread>,
    /// The first frosts of autumn, where there were enough.
    #[serde(default)]
    pub autumn: Option<FrostSpread>,
}

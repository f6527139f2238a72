//! A crop, as the book has it.

use crate::Curve;
use serde::Deserialize;

/// What is published about a crop. Temperatures in °C, lengths in mm.
#[derive(Debug, Clone, PartialEq)]
pub struct Crop {
    /// What the journal calls it, snake_case English.
    pub key: String,
    /// Botanical name.
    pub species: String,
    /// Rate of progress by temperature.
    pub curve: Curve,
    /// Soil temperatures recommended for sowing, lowest and highest.
    pub recommended_c: (f64, f64),
    /// Maximum soil temperature for germination.
    pub maximum_c: f64,
    /// Legal minimum germination, 0 to 1, where there is one.
    pub legal_minimum: Option<f64>,
    /// Years for which seed is useful in cool, dry storage.
    pub life_years: f64,
    /// Greatest length of a seed.
    pub seed_length_mm: f64,
    /// Thickness of a seed.
    pub seed_thickness_mm: f64,
    /// Sowing depth, least and greatest; 0 is on the surface.
    pub depth_mm: (f64, f64),
    /// What light does to germination.
    pub light: LightNeed,
    /// Seedlings from one seed as sold, above 1 where it is a cluster.
    pub seedlings_per_seed: f64,
    /// Spread of ln progress within a sowing.
    pub sigma: f64,
    /// Air temperatures after emergence.
    pub growing_on_c: DayNight,
    /// Weeks from sowing to setting out, least and greatest; `None` for crops
    /// sown where they are to grow.
    pub weeks_to_raise: Option<(f64, f64)>,
    /// What cold it stands.
    pub hardiness: Hardiness,
    /// Weeks after the average last frost at which it goes outdoors, first and
    /// last; below 0 is before it.
    pub set_out_weeks: Option<(f64, f64)>,
    /// How the plant can harm.
    pub caution: Option<Caution>,
}

/// Temperatures in °C, lowest and highest, by day and by night.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DayNight {
    /// By day.
    pub day: (f64, f64),
    /// By night.
    pub night: (f64, f64),
}

/// What light does to germination.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LightNeed {
    /// It needs light or gains from it.
    Needed,
    /// Light makes no difference.
    Indifferent,
    /// It comes up better in the dark.
    Dark,
}

/// What cold a crop stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Hardiness {
    /// Stands frost once hardened off.
    Hardy,
    /// Stands a cold spell, a frosty night hurts it.
    HalfHardy,
    /// Frost kills it.
    Tender,
}

/// How a plant can harm those who raise it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Caution {
    /// Leaves and stems are poisonous to eat.
    PoisonousLeaves,
    /// The seeds are poisonous raw.
    PoisonousRawSeeds,
    /// The berries are poisonous.
    PoisonousBerries,
    /// Sap on the skin burns it in sunlight.
    SapBurnsInSun,
}

impl Caution {
    /// A short name that stays the same between versions.
    pub fn key(self) -> &'static str {
        match self {
            Self::PoisonousLeaves => "poisonous_leaves",
            Self::PoisonousRawSeeds => "poisonous_raw_seeds",
            Self::PoisonousBerries => "poisonous_berries",
            Self::SapBurnsInSun => "sap_burns_in_sun",
        }
    }
}

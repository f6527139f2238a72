//! A crop, as the book has it.

use crate::Curve;
use serde::Deserialize;
use std::collections::BTreeMap;

/// What is published about a crop. Temperatures in °C, lengths in mm.
#[derive(Debug, Clone, PartialEq)]
pub struct Crop {
    /// What the journal calls it, snake_case English.
    pub key: String,
    /// Botanical name.
    pub species: String,
    /// Under which heading it stands.
    pub group: CropGroup,
    /// Rate of progress by temperature.
    pub curve: Curve,
    /// The temperatures and days the curve was built from, where none is
    /// published.
    pub built: Option<Cardinals>,
    /// Soil temperatures recommended for sowing, lowest and highest.
    pub recommended_c: (f64, f64),
    /// Maximum soil temperature for germination.
    pub maximum_c: f64,
    /// Legal minimum germination, 0 to 1, where there is one.
    pub legal_minimum: Option<f64>,
    /// Years for which seed is useful in cool, dry storage.
    pub life_years: f64,
    /// Days of the first and of the final count in a germination test, where the
    /// rules of testing have them.
    pub test_days: Option<(u32, u32)>,
    /// Greatest length of a seed.
    pub seed_length_mm: f64,
    /// Thickness of a seed.
    pub seed_thickness_mm: f64,
    /// Sowing depth, least and greatest; 0 is on the surface.
    pub depth_mm: (f64, f64),
    /// What light does to germination.
    pub light: LightNeed,
    /// The nights (16 hours) and days (8 hours) in °C at which its seed is
    /// tested, where the rules of seed testing allow no constant temperature.
    pub alternating_c: Option<(f64, f64)>,
    /// What helps before it is sown; of chipping and soaking either is enough.
    pub before_sowing: Vec<Treatment>,
    /// What it is sown in.
    pub compost: SowingCompost,
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
    /// Days to the first harvest or flower, where it comes in the first season.
    pub maturity: Option<Maturity>,
    /// Whether its main harvest falls after the autumn equinox, when growth
    /// slows, so that a last sowing is to be earlier.
    pub ripens_after_equinox: bool,
    /// How the plant can harm.
    pub caution: Option<Caution>,
    /// Where each figure is from, by its name in the book's file.
    pub provenance: BTreeMap<&'static str, Provenance>,
}

/// What a curve is built from where no days at several temperatures are
/// published: the rate is 0 at the base, rises in a straight line to
/// 1/`days_at_optimum` at the cool end of the optimum, stays there to its warm
/// end, and falls in a straight line to 0 at the crop's maximum.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cardinals {
    /// At or below it, in °C, none comes up.
    pub base_c: f64,
    /// Where seedlings come up fastest, in °C, cool end and warm end.
    pub optimum_c: (f64, f64),
    /// The usual days to emergence at the optimum.
    pub days_at_optimum: f64,
}

/// The headings of the crop book.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum CropGroup {
    /// Grown to be eaten.
    Vegetable,
    /// Grown for the kitchen in small amounts.
    Herb,
    /// Bedding and cutting flowers of one season.
    AnnualFlower,
    /// Flowers that come back, or flower in their second year.
    PerennialFlower,
}

/// What is done to seed before it is sown.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Treatment {
    /// Soaked in lukewarm water, hours, least and greatest.
    SoakHours((f64, f64)),
    /// The coat nicked with a blade away from the eye, or rubbed thin.
    Chip,
    /// Kept moist at 2 to 5 °C, weeks, least and greatest.
    ColdWeeks((f64, f64)),
}

/// What seed is sown in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SowingCompost {
    /// Sieved, low in feed.
    FineSeed,
    /// Seed compost with about a third of sharp sand or grit.
    Gritty,
    /// Multi-purpose, the lumps taken out.
    MultiPurpose,
}

impl SowingCompost {
    /// A short name that stays the same between versions.
    pub fn key(self) -> &'static str {
        match self {
            Self::FineSeed => "fine_seed",
            Self::Gritty => "gritty",
            Self::MultiPurpose => "multi_purpose",
        }
    }
}

/// How long a crop takes.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Maturity {
    /// Days, least and greatest.
    pub days: (f64, f64),
    /// From when they are counted.
    pub from: MaturityFrom,
}

/// From when days to maturity are counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum MaturityFrom {
    /// From the day of sowing.
    Sowing,
    /// From the day on which raised plants are set out.
    PlantingOut,
}

/// How a figure came into the book.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Basis {
    /// Read in the source.
    Read,
    /// Recalled from the source, not seen again.
    Memory,
    /// Judged, for want of a published figure.
    Judgement,
    /// What growers do, without a source.
    CommonPractice,
}

impl Basis {
    /// A short name that stays the same between versions.
    pub fn key(self) -> &'static str {
        match self {
            Self::Read => "read",
            Self::Memory => "memory",
            Self::Judgement => "judgement",
            Self::CommonPractice => "common_practice",
        }
    }
}

/// Where a figure is from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Provenance {
    /// The key of its source; the book has the citation.
    pub source: String,
    /// How it was taken from there.
    pub basis: Basis,
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
    /// All of the plant is poisonous, and its sap may irritate.
    PoisonousPlant,
    /// Parts of it do harm if they are eaten.
    HarmfulIfEaten,
    /// Leaves and stems are poisonous to eat.
    PoisonousLeaves,
    /// The leaf blades are poisonous, the stalks are eaten.
    PoisonousLeafBlades,
    /// The seeds are poisonous.
    PoisonousSeeds,
    /// The seeds are poisonous raw.
    PoisonousRawSeeds,
    /// The berries are poisonous.
    PoisonousBerries,
    /// Sap on the skin burns it in sunlight.
    SapBurnsInSun,
    /// Hairs or sap can irritate the skin.
    IrritatesSkin,
    /// Seeds and fruit burn eyes and skin.
    BurnsEyes,
    /// Beans and pollen harm people with favism.
    Favism,
}

impl Caution {
    /// A short name that stays the same between versions.
    pub fn key(self) -> &'static str {
        match self {
            Self::PoisonousPlant => "poisonous_plant",
            Self::HarmfulIfEaten => "harmful_if_eaten",
            Self::PoisonousLeaves => "poisonous_leaves",
            Self::PoisonousLeafBlades => "poisonous_leaf_blades",
            Self::PoisonousSeeds => "poisonous_seeds",
            Self::PoisonousRawSeeds => "poisonous_raw_seeds",
            Self::PoisonousBerries => "poisonous_berries",
            Self::SapBurnsInSun => "sap_burns_in_sun",
            Self::IrritatesSkin => "irritates_skin",
            Self::BurnsEyes => "burns_eyes",
            Self::Favism => "favism",
        }
    }
}

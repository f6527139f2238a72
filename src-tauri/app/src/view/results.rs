//! What the years gave.

use crate::say::{Arg, Say};
use serde::{Deserialize, Serialize};

/// By what sowings are put together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum GroupBy {
    /// Crop.
    Crop,
    /// Packet.
    Packet,
    /// The place they were sown in.
    Place,
    /// Compost.
    Compost,
    /// How the packet is stored.
    Storage,
    /// Depth against that which the crop book advises.
    Depth,
    /// The year they were sown in.
    Year,
}

/// What is asked of the years.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ResultsAsked {
    /// By what they are put together.
    pub by: GroupBy,
    /// Of the year that begins in this one; none: all.
    pub year: Option<i32>,
    /// Of one crop; none: all.
    pub crop: Option<String>,
    /// Keys of two groups to hold against each other.
    pub pair: Option<(String, String)>,
}

/// What the years gave, put together in one way.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ResultsView {
    /// Years in which something was sown, the latest first; in the south from
    /// July to June.
    pub years: Vec<Named>,
    /// Crops that were sown in them.
    pub crops: Vec<Named>,
    /// The groups, those with most seeds first.
    pub groups: Vec<Group>,
    /// The two that were asked for, in words.
    pub compared: Option<Say>,
    /// Sowings that are left out: by the pinch, in clusters, not counted, or
    /// still coming up.
    pub left_out: u32,
    /// What became of the plants of those years.
    pub numbers: Vec<CropNumbers>,
}

/// A key and how to say it.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Named {
    /// Key.
    pub key: String,
    /// Name.
    pub name: Say,
}

/// Sowings that have something in common.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Group {
    /// What they have in common.
    pub of: Named,
    /// How many sowings.
    pub sowings: u32,
    /// Seeds in them.
    pub seeds: u32,
    /// Seeds that came up.
    pub up: u32,
    /// Share that came up.
    pub share: f64,
    /// Its 95 % interval (Clopper-Pearson).
    pub low: f64,
    /// Its 95 % interval.
    pub high: f64,
    /// Days until half of those that came up were up (Coolbear), the median
    /// sowing.
    pub half_days: Option<f64>,
    /// Standard deviation of the days of coming up within a sowing, the median
    /// sowing.
    pub spread_days: Option<f64>,
    /// Plants lost after coming up, by cause, the most first.
    pub lost: Vec<Loss>,
    /// Too few to say much.
    pub small: bool,
}

/// Plants lost to one cause.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Loss {
    /// The cause.
    pub cause: Arg,
    /// How many.
    pub number: u32,
}

/// What became of a crop's plants.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct CropNumbers {
    /// The crop.
    pub crop: Named,
    /// Still growing on.
    pub growing: u32,
    /// Called ready and still there.
    pub ready: u32,
    /// Kept for somebody, and still to be handed over.
    pub reserved: u32,
    /// Ready and kept for nobody; below 0 where more are kept than are ready.
    pub free: i32,
    /// Planted out.
    pub planted_out: u32,
    /// Sold.
    pub sold: u32,
    /// Given away.
    pub given_away: u32,
}

//! Pieces that several screens share.

use crate::say::Say;
use chrono::{NaiveDate, NaiveDateTime};
use serde::{Deserialize, Serialize};

/// Names of the words sets of the journal, for pickers; the UI has a message
/// for each (`place-kind-shed`, `feel-dry` …).
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct CropName {
    /// Key in the crop book, or the grower's own word.
    pub key: String,
    /// Whether it is in the crop book; else `key` is shown as it is.
    pub known: bool,
}

/// A place, in short.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PlaceHead {
    /// Id.
    pub id: String,
    /// The grower's name for it.
    pub name: String,
    /// `heated_propagator`, `windowsill`, `shed`, `greenhouse`, `cold_frame`,
    /// `outdoors` or `fridge`.
    pub kind: String,
    /// `dark`, `dim` or `bright`.
    pub light: String,
}

/// Which plants: `sowing` or `batch`, and the id.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "type", content = "id")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum PlantsRef {
    /// A sowing.
    Sowing(String),
    /// A batch.
    Batch(String),
}

/// Stages of plants.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum Stage {
    /// In the compost, nothing up.
    Sown,
    /// Some are up.
    ComingUp,
    /// What will come is up, as far as one can tell.
    Up,
    /// Pricked out (or sown on, or cut apart).
    PrickedOut,
    /// Set in without seed: cuttings, tubers, bulbs, plugs.
    Set,
    /// Potted on.
    PottedOn,
    /// Going out by day.
    HardeningOff,
    /// Ready.
    Ready,
    /// Planted out, sold or given away: none is left here.
    Gone,
    /// Given up: nothing came up.
    NothingCameUp,
    /// All lost.
    Lost,
    /// Done with.
    Finished,
}

/// How many are where; `up` is the sum of all the rest.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct NumbersView {
    /// All that ever came up, or were set in.
    pub up: u32,
    /// Went on as other batches.
    pub gone_on: u32,
    /// Thinned out.
    pub thinned: u32,
    /// Lost with a cause said, or gone between two counts.
    pub lost: u32,
    /// Planted out.
    pub planted_out: u32,
    /// Sold.
    pub sold: u32,
    /// Given away.
    pub given_away: u32,
    /// Still there.
    pub there: u32,
}

/// Plants in a tray, in one line.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PlantsLine {
    /// Which.
    pub plants: PlantsRef,
    /// Crop.
    pub crop: CropName,
    /// Variety; may be empty.
    pub variety: String,
    /// The packet of a sowing.
    pub packet: Option<String>,
    /// Stage.
    pub stage: Stage,
    /// Whole days since sown, or since the batch began.
    pub day: i32,
    /// Seeds sown; none for a pinch or a batch.
    pub seeds: Option<u32>,
    /// Numbers.
    pub numbers: NumbersView,
    /// For a sowing that is not up yet: how far along, 1 being the time at
    /// which half are up; shown as a share of the way.
    pub progress: Option<f64>,
    /// Cells it stands in.
    pub cells: Vec<u16>,
}

/// A span of temperatures, °C.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct RangeView {
    /// Lowest, °C.
    pub min_c: f64,
    /// Highest, °C.
    pub max_c: f64,
}

/// When seedlings are due; a date that is not within 365 days is none.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct DueView {
    /// First seedling, as likely as not.
    pub first: Option<NaiveDate>,
    /// A tenth of those that will come.
    pub d10: Option<NaiveDate>,
    /// Half of them.
    pub d50: Option<NaiveDate>,
    /// Nine tenths.
    pub d90: Option<NaiveDate>,
}

/// What was written, or what is asked first.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case", tag = "answer")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum Answer {
    /// It is on disk.
    Written {
        /// For undoing it: `undo(act)`.
        act: String,
        /// What to say ("Tray K3 felt moist").
        say: Say,
        /// The tray it made or concerned, if one.
        tray: Option<String>,
        /// The sowing it made, if one.
        sowing: Option<String>,
        /// The packet it made, if one.
        packet: Option<String>,
        /// The place it made, if one.
        place: Option<String>,
    },
    /// It is odd: say it again with `confirmed` to have it written.
    AsksFirst {
        /// What is odd, and what it means to go on.
        questions: Vec<Coded>,
    },
}

/// A code the UI acts on and the words for it.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Coded {
    /// Stable code, snake_case.
    pub code: String,
    /// What to show.
    pub say: Say,
}

/// A moment that the UI shows and gives back, local time of the garden.
pub type Moment = NaiveDateTime;

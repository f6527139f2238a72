//! The Sow screen.

use super::{Coded, CropName, DueView, PlaceHead, RangeView, SeasonView};
use crate::acts::Act;
use crate::say::Say;
use serde::{Deserialize, Serialize};

/// All that the Sow screen needs, for the packet chosen if one is.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct BenchView {
    /// Packets, the most recently used first.
    pub packets: Vec<PacketLine>,
    /// Places, with the forecast of the chosen packet in each.
    pub places: Vec<BenchPlace>,
    /// Living trays with free cells.
    pub trays: Vec<FreeTray>,
    /// The code the next new tray will get.
    pub next_code: String,
    /// The last sowing, to do the same again.
    pub last: Option<LastSown>,
    /// About the chosen packet.
    pub chosen: Option<Chosen>,
}

/// The last sowing.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct LastSown {
    /// Crop.
    pub crop: CropName,
    /// Variety.
    pub variety: String,
    /// What it was: so many seeds in so many cells, where.
    pub say: Say,
    /// What does the same again, into a new tray.
    pub act: Act,
}

/// A packet in a list.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PacketLine {
    /// Id.
    pub packet: String,
    /// Crop.
    pub crop: CropName,
    /// Variety.
    pub variety: String,
    /// Year packed or harvested.
    pub year: Option<i32>,
    /// Likely to come up today, as a span of shares (a tenth of the odds on
    /// either side).
    pub germination: Option<[f64; 2]>,
    /// Seeds left, if it is known.
    pub seeds_left: Option<u32>,
    /// Where it is from; may be empty.
    pub source: String,
}

/// A place on the bench.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct BenchPlace {
    /// The place.
    pub place: PlaceHead,
    /// The temperatures reckoned with.
    pub usual: RangeView,
    /// When seedlings would be due there if sown now; none without a packet
    /// or for a crop that is not in the crop book.
    pub due: Option<DueView>,
    /// In words: a span of days, or that none comes up there and why.
    pub say: Option<Say>,
    /// None would come up there.
    pub none_comes_up: bool,
    /// The place that suits best: not too dark for it, in the warmth
    /// recommended, and soonest up.
    pub best: bool,
    /// What speaks against it.
    pub warnings: Vec<Coded>,
}

/// A tray with room.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FreeTray {
    /// Id.
    pub tray: String,
    /// Code.
    pub code: String,
    /// Kind of container.
    pub container: String,
    /// Where it stands.
    pub place: Option<PlaceHead>,
    /// Rows.
    pub rows: u16,
    /// Columns.
    pub columns: u16,
    /// Cells that are taken.
    pub taken: Vec<u16>,
    /// What speaks against the chosen packet beside what is in it.
    pub warnings: Vec<Coded>,
}

/// About the chosen packet.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Chosen {
    /// The packet.
    pub packet: PacketLine,
    /// What is likely to come up, in words and why.
    pub outlook: Option<Say>,
    /// What came up of it so far ("your own 2 sowings: 14 of 18").
    pub own: Option<Say>,
    /// Depth to sow at, mm, lowest and highest.
    pub depth_mm: Option<[f64; 2]>,
    /// What the crop wants before it is sown, in words.
    pub before_sowing: Vec<Say>,
    /// The same as numbers.
    pub wants: TreatmentWanted,
    /// What to say of a depth under the lowest and of one over the highest.
    pub too_shallow: Say,
    /// See above.
    pub too_deep: Say,
    /// The compost it wants, and what to say of those it does badly in.
    pub compost: Option<CompostAdvice>,
    /// Its season here, if a last frost date is set.
    pub season: Option<SeasonView>,
    /// How it grows on once it is up: cooler.
    pub growing_on: Option<Say>,
    /// Seed length and thickness, mm.
    pub seed_mm: Option<[f64; 2]>,
    /// Light need in words, where there is one.
    pub light: Option<Say>,
    /// Recommended temperatures, °C.
    pub recommended: Option<RangeView>,
    /// Cautions (treated seed, poisonous seedlings, compost dust).
    pub cautions: Vec<Say>,
    /// What speaks against sowing it now: too early, too late.
    pub warnings: Vec<Coded>,
}

/// What a crop is sown in.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct CompostAdvice {
    /// The compost, a word of the journal.
    pub compost: String,
    /// How it should be.
    pub say: Say,
    /// Those it does badly in.
    pub unsuited: Vec<CompostWarning>,
}

/// A compost that a crop does badly in.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct CompostWarning {
    /// The compost, a word of the journal.
    pub compost: String,
    /// Why.
    pub say: Say,
}

/// How many would be enough?
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct EnoughAsk {
    /// Of which packet.
    pub packet: String,
    /// Plants wanted.
    pub wanted: u32,
    /// In how many of a hundred times it is to be enough: 80, 90 or 95.
    pub odds: u8,
    /// Seeds in a cell; at least 1.
    pub seeds_per_cell: u32,
}

/// How many are enough.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct EnoughView {
    /// What was asked.
    pub of: EnoughAsk,
    /// Seeds, however they are spread; none where it is not known, or where
    /// better seed is needed.
    pub seeds: Option<u32>,
    /// Cells with so many seeds in each; none as before.
    pub cells: Option<u32>,
    /// In words, for seeds sown together.
    pub say_seeds: Say,
    /// In words, for seeds in cells.
    pub say_cells: Say,
}

/// What a crop wants before it is sown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct TreatmentWanted {
    /// Soaking, hours, least and greatest.
    pub soak_hours: Option<[f64; 2]>,
    /// Chipping: nicking or rubbing the coat.
    pub chip: bool,
    /// Weeks in the cold, least and greatest.
    pub cold_weeks: Option<[f64; 2]>,
}

/// A tray to sow into: a living one or a new one.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "tray")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum TrayChoice {
    /// A living tray.
    Existing {
        /// Its id.
        id: String,
    },
    /// A new one.
    New {
        /// Code, unless the next is taken.
        code: Option<String>,
        /// Kind of container.
        container: String,
        /// Rows.
        rows: u16,
        /// Columns.
        columns: u16,
        /// Compost.
        compost: String,
        /// Where it will stand.
        place: String,
        /// Covered from the start.
        covered: bool,
    },
}

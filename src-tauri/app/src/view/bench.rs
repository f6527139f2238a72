//! The Sow screen.

use super::{CropName, DueView, PlaceHead, RangeView};
use crate::say::Say;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// All that the Sow screen needs, for the packet chosen if one is.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export, export_to = "types.ts")]
pub struct BenchView {
    /// Packets, the most recently used first.
    pub packets: Vec<PacketLine>,
    /// Places, with the forecast of the chosen packet in each.
    pub places: Vec<BenchPlace>,
    /// Living trays with free cells.
    pub trays: Vec<FreeTray>,
    /// The code the next new tray will get.
    pub next_code: String,
    /// About the chosen packet.
    pub chosen: Option<Chosen>,
}

/// A packet in a list.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export, export_to = "types.ts")]
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
}

/// A place on the bench.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export, export_to = "types.ts")]
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
}

/// A tray with room.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export, export_to = "types.ts")]
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
}

/// About the chosen packet.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export, export_to = "types.ts")]
pub struct Chosen {
    /// The packet.
    pub packet: PacketLine,
    /// What is likely to come up, in words and why.
    pub outlook: Option<Say>,
    /// What came up of it so far ("your own 2 sowings: 14 of 18").
    pub own: Option<Say>,
    /// Seeds for the plants wanted, for 1 to 100 plants at index 0 to 99 (at
    /// the confidence of 0.9); none where it is not known or too many.
    pub seeds_for: Vec<Option<u32>>,
    /// Depth to sow at, mm, lowest and highest.
    pub depth_mm: Option<[f64; 2]>,
    /// Seed length and thickness, mm.
    pub seed_mm: Option<[f64; 2]>,
    /// Light need in words, where there is one.
    pub light: Option<Say>,
    /// Recommended temperatures, °C.
    pub recommended: Option<RangeView>,
    /// Cautions (treated seed, poisonous seedlings, compost dust).
    pub cautions: Vec<Say>,
}

/// A tray to sow into: a living one or a new one.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case", tag = "tray")]
#[ts(export, export_to = "types.ts")]
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

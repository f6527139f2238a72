//! The Seed screen: packets, what to sow now, the stocktake, what to buy.

use super::{CropName, JobView, PacketLine, PlantsRef, RangeView, SeasonView, TimelineLine};
use crate::say::Say;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

/// The seed box.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct SeedView {
    /// Those in use, the last sown or added first, then those no longer used.
    pub packets: Vec<PacketRow>,
    /// Crops of the crop book, for adding one: keys, each with a message
    /// `crop-…`.
    pub crops: Vec<String>,
    /// What to sow now: what closes first comes first.
    pub sow_now: Vec<SowNow>,
    /// Whether the last frost is known, without which there is no season.
    pub season_known: bool,
    /// The stocktake.
    pub stocktake: StocktakeView,
    /// What to buy.
    pub to_buy: ToBuyView,
}

/// A packet in the box.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PacketRow {
    /// In one line.
    pub line: PacketLine,
    /// The year is when it was harvested, not packed.
    pub saved: bool,
    /// Likely to come up today, on average; for sorting.
    pub worth: Option<f64>,
    /// How it is stored.
    pub storage: String,
    /// Dressed or coated.
    pub treated: bool,
    /// A first cross.
    pub f1: bool,
    /// A germination test of it runs.
    pub testing: bool,
    /// The stocktake said to test it, and that is still to be done.
    pub to_test: bool,
    /// No longer used.
    pub retired: bool,
    /// Where it came from.
    pub source: String,
}

/// A packet that can be sown now.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct SowNow {
    /// The packet.
    pub line: PacketLine,
    /// Until when, or what the crop book says.
    pub say: Say,
    /// The last day of it, where the season is known.
    pub last: Option<NaiveDate>,
}

/// The yearly stocktake.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct StocktakeView {
    /// Since when packets count as gone through.
    pub since: NaiveDate,
    /// Packets to go through still, in the order they are kept.
    pub left: Vec<StockRow>,
    /// How many have been gone through.
    pub done: u32,
}

/// A packet at the stocktake.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct StockRow {
    /// The packet.
    pub row: PacketRow,
    /// What is likely to come up, and why.
    pub outlook: Option<Say>,
    /// What is worth doing, in words.
    pub advice: Say,
}

/// What to buy.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ToBuyView {
    /// Wanted, then lately bought.
    pub items: Vec<ItemView>,
    /// What is out, short or doubtful of what was sown in the last two years.
    pub suggested: Vec<Suggested>,
}

/// Something to buy.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ItemView {
    /// Id.
    pub item: String,
    /// Crop.
    pub crop: CropName,
    /// Variety.
    pub variety: String,
    /// How much, where from.
    pub note: String,
    /// Bought.
    pub bought: bool,
}

/// Something that may be wanted.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Suggested {
    /// Crop.
    pub crop: CropName,
    /// Variety.
    pub variety: String,
    /// Why.
    pub why: Say,
}

/// A packet's own page.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PacketView {
    /// In the box.
    pub row: PacketRow,
    /// What is likely to come up, and why.
    pub outlook: Option<Say>,
    /// What came up of it so far ("your own 2 sowings: 14 of 18").
    pub own: Option<Say>,
    /// What the days stated on it are reckoned as.
    pub stated: Option<Say>,
    /// Its season here.
    pub season: Option<SeasonView>,
    /// What its last germination test said.
    pub tested: Option<Say>,
    /// What to beware of.
    pub cautions: Vec<Say>,
    /// Of what it was saved, and whether seed can be saved of it.
    pub saving: Vec<Say>,
    /// All it was described with.
    pub described: PacketForm,
    /// Its sowings, latest first.
    pub sowings: Vec<PacketSowing>,
    /// Its germination tests, latest first.
    pub tests: Vec<TestView>,
    /// Jobs about it that are due.
    pub jobs: Vec<JobView>,
    /// What was written about it, latest first.
    pub timeline: Vec<TimelineLine>,
    /// Crops of the crop book.
    pub crops: Vec<String>,
}

/// A sowing of a packet.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PacketSowing {
    /// Which.
    pub plants: PlantsRef,
    /// Its tray.
    pub tray: String,
    /// The code of that tray.
    pub code: String,
    /// When.
    pub sown: NaiveDate,
    /// Seeds; none for a pinch.
    pub seeds: Option<u32>,
    /// All that ever came up.
    pub up: u32,
    /// It has not ended.
    pub living: bool,
}

/// A germination test.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct TestView {
    /// Id.
    pub test: String,
    /// When it was started.
    pub started: NaiveDate,
    /// Seeds.
    pub seeds: u32,
    /// All that have sprouted.
    pub sprouted: u32,
    /// Counts, by time.
    pub counts: Vec<SproutedView>,
    /// The days of its first and last look.
    pub looks: [NaiveDate; 2],
    /// It has been closed.
    pub closed: bool,
    /// What it says: so far, or in the end with its interval.
    pub says: Say,
}

/// A count of sprouted seeds.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct SproutedView {
    /// When.
    pub on: NaiveDate,
    /// All that had sprouted.
    pub sprouted: u32,
}

/// What is filled in for a packet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PacketForm {
    /// Key of the crop book, or the grower's own word.
    pub crop: String,
    /// Variety.
    pub variety: String,
    /// Year packed.
    pub packed_year: Option<i32>,
    /// Year harvested, for saved seed.
    pub harvested_year: Option<i32>,
    /// Stated germination, share.
    pub stated_germination: Option<f64>,
    /// Days to come up stated on it.
    #[serde(default)]
    pub stated_days: Option<StatedDaysForm>,
    /// Seeds in it.
    pub seeds: Option<u32>,
    /// `fridge_sealed`, `cool_cupboard`, `warm_room` or `damp_shed`.
    pub storage: String,
    /// Treated.
    pub treated: bool,
    /// Where it came from.
    pub source: String,
    /// Note.
    pub note: String,
    /// Sow-by date.
    #[serde(default)]
    pub sow_by: Option<NaiveDate>,
    /// A first cross between two lines.
    #[serde(default)]
    pub f1: bool,
    /// Saved seed: the plants it was taken from.
    #[serde(default)]
    pub saved_from: Option<PlantsRef>,
    /// What it cost, as on the packet.
    #[serde(default)]
    pub price: String,
}

/// Days to come up, as a packet states them.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct StatedDaysForm {
    /// Fewest days.
    pub from: u32,
    /// Most days.
    pub to: u32,
    /// The temperatures that they are for.
    pub at: Option<RangeView>,
}

//! What is said of seed: packets, their stock, germination tests, what to buy.

use super::RangeC;
use crate::id::{ItemId, PacketId, TestId};
use crate::subject::Plants;
use crate::words::{Standing, Stock, Storage};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

/// A packet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PacketDescribed {
    /// Which packet.
    pub packet: PacketId,
    /// Key of the crop in the crop book, or the grower's own word.
    pub crop: String,
    /// Variety.
    #[serde(default)]
    pub variety: String,
    /// Year packed.
    #[serde(default)]
    pub packed_year: Option<i32>,
    /// Saved seed: year harvested.
    #[serde(default)]
    pub harvested_year: Option<i32>,
    /// Sow-by date.
    #[serde(default)]
    pub sow_by: Option<NaiveDate>,
    /// Germination stated on it, 0 to 1.
    #[serde(default)]
    pub stated_germination: Option<f64>,
    /// Days to come up stated on it.
    #[serde(default)]
    pub stated_days: Option<StatedDays>,
    /// Seeds when it was new.
    #[serde(default)]
    pub seeds: Option<u32>,
    /// How it is stored.
    pub storage: Storage,
    /// Dressed or coated with a pesticide.
    #[serde(default)]
    pub treated: bool,
    /// Where it came from.
    #[serde(default)]
    pub source: String,
    /// Anything else.
    #[serde(default)]
    pub note: String,
    /// A first cross between two lines: seed saved from it does not come true.
    #[serde(default)]
    pub f1: bool,
    /// Saved seed: the plants it was taken from.
    #[serde(default)]
    pub saved_from: Option<Plants>,
    /// What it cost, as on the packet.
    #[serde(default)]
    pub price: String,
    /// Used up or given away.
    #[serde(default)]
    pub retired: bool,
}

/// Days to come up, as a packet states them.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct StatedDays {
    /// Fewest days.
    pub from: u32,
    /// Most days.
    pub to: u32,
    /// The temperatures that they are for.
    #[serde(default)]
    pub at: Option<RangeC>,
}

/// The seeds left in a packet, as counted: what is sown and tested after it is
/// taken off this number.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SeedsCounted {
    /// The packet.
    pub packet: PacketId,
    /// Seeds left in it.
    pub left: u32,
}

/// A packet was gone through at the stocktake.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct StockTaken {
    /// The packet.
    pub packet: PacketId,
    /// What is to become of it.
    pub found: Stock,
}

/// Seeds were laid on damp paper to see how many sprout.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct TestStarted {
    /// The test.
    pub test: TestId,
    /// Whose seeds.
    pub packet: PacketId,
    /// How many.
    pub seeds: u32,
}

/// The sprouted seeds were counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct TestCounted {
    /// The test.
    pub test: TestId,
    /// All that had sprouted by then, those taken away too.
    pub sprouted: u32,
}

/// A test was closed: no more are waited for.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct TestClosed {
    /// The test.
    pub test: TestId,
    /// Its packet.
    pub packet: PacketId,
    /// All that sprouted.
    pub sprouted: u32,
}

/// Something to buy.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ToBuy {
    /// Which.
    pub item: ItemId,
    /// Key of the crop in the crop book, or the grower's own word.
    pub crop: String,
    /// Variety.
    #[serde(default)]
    pub variety: String,
    /// How much, where from.
    #[serde(default)]
    pub note: String,
    /// How it stands with it.
    pub standing: Standing,
}

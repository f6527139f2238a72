//! Packets, germination tests, what to buy.

use super::Mark;
use crate::content::{PacketDescribed, ToBuy};
use crate::id::{PacketId, SowingId, TestId};
use crate::words::Stock;
use serde::{Deserialize, Serialize};

/// A packet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PacketState {
    /// Its attributes.
    pub described: PacketDescribed,
    /// The entry that first described it.
    pub opened_by: Mark,
    /// Seeds sown from it, a pinch counted as [`super::PINCH_SEEDS`].
    pub seeds_sown: u32,
    /// Its sowings, by time.
    pub sowings: Vec<SowingId>,
    /// The last count of the seeds left.
    pub seeds_counted: Option<SeedsAt>,
    /// Seeds sown and tested since they were counted, or since it was new.
    pub seeds_used: u32,
    /// Its germination tests, by when they were started.
    pub tests: Vec<PacketTest>,
    /// The last word of a stocktake on it.
    pub stock: Option<StockAt>,
}

/// Seeds counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SeedsAt {
    /// When.
    pub at: Mark,
    /// Left.
    pub left: u32,
}

/// A germination test of a packet, and what came of it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PacketTest {
    /// The test.
    pub test: TestId,
    /// When it was started.
    pub started: Mark,
    /// Seeds.
    pub seeds: u32,
    /// When it was closed, and all that had sprouted; none while it runs.
    pub closed: Option<TestCount>,
}

/// What a stocktake said.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct StockAt {
    /// When.
    pub at: Mark,
    /// What is to become of it.
    pub found: Stock,
}

/// A germination test.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct TestState {
    /// The test.
    pub test: TestId,
    /// Whose seeds.
    pub packet: PacketId,
    /// How many.
    pub seeds: u32,
    /// The entry it began with, and when.
    pub opened_by: Mark,
    /// Counts, by time.
    pub counts: Vec<TestCount>,
    /// The last count, with which it was closed.
    pub closed: Option<TestCount>,
}

/// Sprouted seeds counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct TestCount {
    /// When.
    pub at: Mark,
    /// All that had sprouted.
    pub sprouted: u32,
}

/// Something to buy.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ItemState {
    /// What, and how it stands with it.
    pub described: ToBuy,
    /// The entry that first named it.
    pub opened_by: Mark,
    /// The last word on it.
    pub last: Mark,
}

impl PacketState {
    /// Seeds left, where it is known how many there were.
    #[must_use]
    pub fn seeds_left(&self) -> Option<u32> {
        let counted = self.seeds_counted.as_ref().map(|counted| counted.left);
        let before = counted.or(self.described.seeds)?;
        Some(before.saturating_sub(self.seeds_used))
    }
}

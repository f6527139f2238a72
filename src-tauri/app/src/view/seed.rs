//! The Seed screen.

use super::PacketLine;
use crate::say::Say;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The packets.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export, export_to = "types.ts")]
pub struct SeedView {
    /// By crop and variety, those in use.
    pub packets: Vec<PacketPage>,
    /// Crops of the crop book, for adding one: keys, each with a message
    /// `crop-…`.
    pub crops: Vec<String>,
}

/// A packet with what is known of it.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export, export_to = "types.ts")]
pub struct PacketPage {
    /// In one line.
    pub line: PacketLine,
    /// What is likely to come up, and why.
    pub outlook: Option<Say>,
    /// What came up of it so far ("your own 2 sowings: 14 of 18").
    pub own: Option<Say>,
    /// Sowings of it so far.
    pub sowings: u32,
    /// All it was described with, for editing.
    pub described: PacketForm,
}

/// What is filled in for a packet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[ts(export, export_to = "types.ts")]
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
}

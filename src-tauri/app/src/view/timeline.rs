//! Lines of the journal, and what can be corrected about them.

use super::{PhotoView, RangeView};
use crate::acts::{SeedsAnswer, UpAnswer};
use crate::say::Say;
use chrono::NaiveDateTime;
use serde::{Deserialize, Serialize};

/// A line of the journal.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct TimelineLine {
    /// The entry.
    pub entry: String,
    /// The act it belongs to, for undoing.
    pub act: String,
    /// When it happened, local.
    pub at: NaiveDateTime,
    /// In words.
    pub say: Say,
    /// Whose hand; may be empty.
    pub hand: String,
    /// Withdrawn: shown struck out.
    pub withdrawn: bool,
    /// Corrected since.
    pub corrected: bool,
    /// Of an unknown kind: kept, not understood by this version.
    pub unknown: bool,
    /// As it was first written, where it was corrected.
    pub was: Option<Was>,
    /// When it was corrected or withdrawn, local.
    pub amended: Option<NaiveDateTime>,
    /// What can be corrected about it, as it holds; none: nothing but when.
    pub fix: Option<Fix>,
    /// The photo that it took in or named.
    pub photo: Option<PhotoView>,
}

/// A line as it was first written.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Was {
    /// When it was said to have happened, local.
    pub at: NaiveDateTime,
    /// In words.
    pub say: Say,
}

/// What an entry says that can be said better.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(
    tag = "of",
    rename_all = "snake_case",
    rename_all_fields = "snake_case"
)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum Fix {
    /// Compost felt, tray watered.
    Felt {
        /// `dry`, `moist` or `wet`.
        feel: Option<String>,
        /// `below`, `rose` or `mist`.
        water: Option<String>,
    },
    /// Lowest and highest read.
    Read {
        /// `air` or `compost`.
        #[serde(rename = "medium")]
        of: String,
        /// °C.
        range: RangeView,
    },
    /// The temperature of the moment.
    ReadNow {
        /// `air` or `compost`.
        #[serde(rename = "medium")]
        of: String,
        /// °C.
        temperature_c: f64,
    },
    /// How many were up.
    Counted {
        /// How many.
        up: UpAnswer,
    },
    /// What was sown.
    Sown {
        /// Packet.
        packet: String,
        /// Tray; a correction leaves it as it is.
        tray: String,
        /// Cells; empty: the whole of it.
        cells: Vec<u16>,
        /// How many seeds.
        seeds: SeedsAnswer,
        /// Depth, mm.
        depth_mm: Option<f64>,
        /// Plants wanted.
        wanted: Option<u32>,
    },
    /// A note.
    Noted {
        /// Words.
        text: String,
    },
    /// Plants that left.
    Left {
        /// How many.
        number: u32,
        /// As in the act `leave`.
        how: String,
        /// For `lost`.
        cause: Option<String>,
    },
    /// Where a tray was moved.
    Moved {
        /// Place.
        place: String,
    },
}

/// A correction, or with neither fix nor time the bringing back of a withdrawn
/// entry.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct CorrectRequest {
    /// The entry.
    pub entry: String,
    /// What it should say; none: what it says.
    #[serde(default)]
    pub fix: Option<Fix>,
    /// When it happened, local time of the garden; none: as it is.
    #[serde(default)]
    pub happened: Option<NaiveDateTime>,
    /// Whose hand corrects it; empty: the device's own.
    #[serde(default)]
    pub hand: String,
    /// The questions it raises were answered with yes.
    #[serde(default)]
    pub confirmed: bool,
}

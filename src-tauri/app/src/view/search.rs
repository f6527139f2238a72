//! What a search over the whole journal finds.

use super::CropName;
use crate::say::Say;
use chrono::{NaiveDate, NaiveDateTime};
use serde::Serialize;

/// What was found, each group the newest first and at most 50 long.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct SearchView {
    /// Trays, living and past.
    pub trays: Vec<TrayBrief>,
    /// Sowings.
    pub sowings: Vec<FoundSowing>,
    /// Packets.
    pub packets: Vec<FoundPacket>,
    /// Plans, ended ones too.
    pub plans: Vec<FoundPlan>,
    /// Things to buy, or bought.
    pub items: Vec<FoundItem>,
    /// Notes.
    pub notes: Vec<FoundNote>,
    /// Groups of which there are more than are listed: `trays`, `sowings`,
    /// `packets`, `plans`, `items`, `notes`.
    pub more: Vec<String>,
}

/// Plants by name.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PlantName {
    /// Crop.
    pub crop: CropName,
    /// Variety; may be empty.
    pub variety: String,
}

/// A tray, living or past, in short.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct TrayBrief {
    /// Id.
    pub tray: String,
    /// Code on its label.
    pub code: String,
    /// Where it stands or last stood.
    pub place: Option<String>,
    /// What is or was in it.
    pub plants: Vec<PlantName>,
    /// When the first of it was sown or set in, else when it was begun.
    pub from: NaiveDate,
    /// When it was emptied; none: it is in use.
    pub to: Option<NaiveDate>,
}

/// A sowing that was found.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FoundSowing {
    /// Id.
    pub sowing: String,
    /// What was sown.
    pub plants: PlantName,
    /// Its tray.
    pub tray: String,
    /// Its code.
    pub code: String,
    /// When.
    pub sown: NaiveDate,
    /// Whether it still lives.
    pub living: bool,
}

/// A packet that was found.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FoundPacket {
    /// Id.
    pub packet: String,
    /// What it holds.
    pub plants: PlantName,
    /// Year packed or harvested.
    pub year: Option<i32>,
    /// Where it came from.
    pub source: String,
    /// No longer used.
    pub retired: bool,
}

/// A plan that was found.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FoundPlan {
    /// Id.
    pub plan: String,
    /// What is to be raised.
    pub plants: PlantName,
    /// How many, and when.
    pub say: Say,
    /// Whether it is among the plans of the Year screen: those that ended are
    /// not.
    pub listed: bool,
}

/// Something to buy, or bought, that was found.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FoundItem {
    /// Id.
    pub item: String,
    /// What.
    pub plants: PlantName,
    /// How much, where from; may be empty.
    pub note: String,
    /// Bought.
    pub bought: bool,
    /// Whether it is on the list: what was bought long ago is not.
    pub listed: bool,
}

/// A note that was found.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FoundNote {
    /// The entry.
    pub entry: String,
    /// The words.
    pub text: String,
    /// When, local.
    pub at: NaiveDateTime,
    /// Where it can be read; none: it is about the garden.
    pub about: Option<NoteAbout>,
}

/// What a note is about.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct NoteAbout {
    /// The screen it is read on: `tray`, `packet`, `seed`, `year` or
    /// `settings`.
    pub page: String,
    /// What of it; may be empty.
    pub id: String,
    /// The code of a tray, the name of a place; else empty.
    pub name: String,
    /// The plants.
    pub plants: Vec<PlantName>,
}

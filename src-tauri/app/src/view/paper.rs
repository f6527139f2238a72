//! Sheets of paper: for whoever looks after the trays while the grower is away.

use super::PlaceHead;
use crate::say::Say;
use chrono::{NaiveDate, NaiveDateTime};
use serde::Serialize;

/// The sheet for whoever looks after the trays.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct SitterSheet {
    /// Local time of the garden at which it was made.
    pub at: NaiveDateTime,
    /// First day away; none: no days away are noted, it is for today on.
    pub from: Option<NaiveDate>,
    /// Last day away; none: until further notice.
    pub to: Option<NaiveDate>,
    /// What holds everywhere, and what to beware of.
    pub general: Vec<Say>,
    /// Places in walking order.
    pub places: Vec<SitterPlace>,
}

/// A place on the sheet.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct SitterPlace {
    /// The place.
    pub place: PlaceHead,
    /// What to do here.
    pub lines: Vec<Say>,
    /// Its trays by code.
    pub trays: Vec<SitterTray>,
}

/// A tray on the sheet.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct SitterTray {
    /// Id.
    pub tray: String,
    /// Code on its label.
    pub code: String,
    /// What is in it.
    pub what: Say,
    /// What to do about it in particular.
    pub lines: Vec<Say>,
}

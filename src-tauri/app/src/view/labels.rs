//! Labels: sheets of them, and finding the tray of one.

use super::{PlaceHead, TrayLine};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

/// What is to be printed, and on what. All lengths in mm.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct LabelSheet {
    /// Trays, in the order their labels come.
    pub trays: Vec<String>,
    /// The paper and the labels on it.
    pub stock: LabelStock,
    /// Which label of the first sheet is the first to be printed, from 1, row
    /// by row: those before it are used up.
    pub first: u32,
    /// Lines to cut along, on plain paper.
    pub cut_lines: bool,
}

/// A paper with labels on it. All lengths in mm.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct LabelStock {
    /// `a4` or `letter`.
    pub paper: String,
    /// Width of a label.
    pub width: f32,
    /// Height of a label.
    pub height: f32,
    /// From the paper's left edge to the first label, and so at the right.
    pub left: f32,
    /// From the paper's top edge to the first label, and so at the foot.
    pub top: f32,
    /// Between two labels beside each other.
    pub across: f32,
    /// Between two labels above each other.
    pub down: f32,
}

/// What the labels screen needs.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct LabelsView {
    /// Stocks that are usual.
    pub stocks: Vec<StockView>,
    /// Living trays with a label of their own, by place and code.
    pub trays: Vec<LabelText>,
}

/// A stock with how many labels a sheet holds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct StockView {
    /// The stock.
    pub stock: LabelStock,
    /// Labels beside each other.
    pub columns: u32,
    /// Labels above each other.
    pub rows: u32,
}

/// What stands on a label.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct LabelText {
    /// The tray.
    pub tray: String,
    /// Its code.
    pub code: String,
    /// What is in it.
    pub names: Vec<String>,
    /// When it was sown or begun, as written on the label; empty if nothing is
    /// in it.
    pub date: String,
    /// The place it stands in.
    pub place: String,
}

/// What a label that was typed or photographed says.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FoundLabel {
    /// The code that was read; empty if it names a tray no code stands for.
    pub code: String,
    /// Trays it may be, the living first, then the latest. One: that is it.
    pub trays: Vec<TrayLine>,
}

/// What is known of a tray whose label is lost. What is none or empty is not
/// known.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct LostLabel {
    /// Where it stands.
    pub place: Option<String>,
    /// Kind of container.
    pub container: Option<String>,
    /// Cells it has.
    pub cells: Option<u32>,
    /// About when it was sown.
    pub sown: Option<NaiveDate>,
}

/// A tray that may have lost its label.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Candidate {
    /// The tray.
    pub line: TrayLine,
    /// Where it stands.
    pub place: Option<PlaceHead>,
    /// When it was sown or begun.
    pub began: Option<NaiveDate>,
    /// What of that which is known fits: `place`, `container`, `cells`, `sown`.
    pub fits: Vec<String>,
}

//! Trays, and one tray's page.

use super::{
    DueView, JobView, PlaceHead, PlantsLine, PlantsRef, ReasonView, SeasonView, TimelineLine,
    TrayBrief, VerdictView,
};
use crate::say::Say;
use chrono::{NaiveDate, NaiveDateTime};
use serde::Serialize;

/// The living trays by place, and how many are past.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct TraysView {
    /// Places in walking order with their living trays.
    pub places: Vec<PlaceTrays>,
    /// Living trays without a place.
    pub nowhere: Vec<TrayLine>,
    /// Set aside: nothing was said of them for 120 days.
    pub set_aside: Vec<TrayLine>,
    /// Past trays, latest first, at most 200.
    pub past: Vec<TrayLine>,
}

/// A place and its living trays.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PlaceTrays {
    /// The place.
    pub place: PlaceHead,
    /// Its trays by code.
    pub trays: Vec<TrayLine>,
}

/// A tray in a list.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct TrayLine {
    /// Id.
    pub tray: String,
    /// Code on its label.
    pub code: String,
    /// Kind of container.
    pub container: String,
    /// What is or was in it.
    pub plants: Vec<PlantsLine>,
    /// Jobs due.
    pub due: u32,
    /// Cells that are free.
    pub free_cells: u32,
    /// When it was emptied; none: it is in use.
    pub emptied: Option<NaiveDate>,
}

/// A tray's page.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct TrayView {
    /// Id.
    pub tray: String,
    /// Code on its label.
    pub code: String,
    /// Kind of container.
    pub container: String,
    /// Rows of cells.
    pub rows: u16,
    /// Columns of cells.
    pub columns: u16,
    /// `seed`, `multi_purpose`, `potting`, `garden_soil`, `coarse` or `no_compost`.
    pub compost: String,
    /// Covered now.
    pub covered: bool,
    /// Where it stands.
    pub place: Option<PlaceHead>,
    /// Since when.
    pub since: Option<NaiveDateTime>,
    /// Emptied.
    pub emptied: bool,
    /// When the compost was last felt or watered, and how.
    pub last_felt: Option<Say>,
    /// What is and was in it; by cells, the living first.
    pub plants: Vec<PlantsPage>,
    /// What is due.
    pub jobs: Vec<JobView>,
    /// What is odd about it.
    pub problems: Vec<Coded>,
    /// Journal lines about it and its plants, latest first.
    pub timeline: Vec<TimelineLine>,
    /// Trays that had its code before, the latest first, at most 20.
    pub earlier: Vec<TrayBrief>,
}

use super::Coded;

/// Plants on the tray's page.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PlantsPage {
    /// In one line.
    pub line: PlantsLine,
    /// When sown or begun.
    pub began: NaiveDateTime,
    /// Whether it still lives.
    pub living: bool,
    /// Where it came from, or with what it goes on.
    pub relatives: Vec<Relative>,
    /// Depth sown, mm.
    pub depth_mm: Option<f64>,
    /// What was done to the seed before it was sown.
    pub treatment: Vec<Say>,
    /// The season of its crop here.
    pub season: Option<SeasonView>,
    /// Plants wanted.
    pub wanted: Option<u32>,
    /// The forecast, for a sowing of a crop in the crop book.
    pub forecast: Option<ForecastView>,
    /// What to do about a sowing that is late.
    pub verdict: Option<VerdictView>,
    /// Why it did badly, if it did: at most two causes.
    pub reasons: Vec<ReasonView>,
    /// Why, by the grower's own judgement.
    pub explained: Option<Explanation>,
    /// What finished sowings taught of its packet: how many came up of how
    /// many, and how fast.
    pub learnt: Vec<Say>,
    /// For a sowing, the seeds that are neither up nor known to be lost.
    pub seeds_left: Option<u32>,
    /// A caution about the plant or its seed.
    pub caution: Option<Say>,
}

/// The grower's own judgement on a sowing that did badly.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Explanation {
    /// Causes, as `too_cold`.
    pub causes: Vec<String>,
    /// In the grower's words; may be empty.
    pub text: String,
    /// When it was said.
    pub at: NaiveDateTime,
}

/// A batch or sowing this one came from or went on to, or that it repeats.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Relative {
    /// `from` or `to`; `again_of` or `sown_again`.
    pub direction: String,
    /// Which plants.
    pub plants: PlantsRef,
    /// Their tray.
    pub tray: String,
    /// Its code.
    pub code: String,
    /// How many.
    pub number: Option<u32>,
    /// How: `cut_apart`, `sown_on`, `pricked_out` or `potted_on`; empty where
    /// it was sown again.
    pub step: String,
    /// When.
    pub at: NaiveDateTime,
}

/// A forecast with its band and the counts so far.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ForecastView {
    /// Dates.
    pub due: DueView,
    /// In words, with its numbers ("half by Thursday 14th …").
    pub say: Say,
    /// How far along, 1 being half up.
    pub progress: f64,
    /// Seedlings expected in the end, most likely span.
    pub expected: [f64; 2],
    /// The band, a point at the end of each day from sowing to past the 90 % day.
    pub band: Vec<BandPoint>,
    /// Counts: what had ever come up by then.
    pub counts: Vec<CountPoint>,
    /// Today.
    pub today: NaiveDate,
}

/// Seedlings expected up by the end of a day.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct BandPoint {
    /// The day.
    pub day: NaiveDate,
    /// One in ten that it is fewer, as far as time goes.
    pub low: f64,
    /// On average.
    pub mid: f64,
    /// One in ten that it is more.
    pub high: f64,
}

/// A count.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct CountPoint {
    /// When.
    pub at: NaiveDateTime,
    /// How many had come up by then.
    pub up: u32,
}

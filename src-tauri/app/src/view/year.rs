//! The year: sowing windows, plans, plants kept for somebody.

use super::{CropName, Named, PlantsRef};
use crate::say::Say;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

/// What the Year screen shows beside what the years gave.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct YearView {
    /// Today, by the garden.
    pub today: NaiveDate,
    /// The sowing windows; none without a last frost date.
    pub windows: Option<WindowsView>,
    /// Plans that have not ended, the next to be sown first.
    pub plans: Vec<PlanView>,
    /// Packets in use, for a plan.
    pub packets: Vec<PlanPacket>,
    /// Keys of the crop book.
    pub crops: Vec<String>,
    /// Plants kept for somebody.
    pub reservations: Vec<ReservationView>,
}

/// Twelve months with the windows of the grower's crops.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct WindowsView {
    /// The first day, the first of a month.
    pub from: NaiveDate,
    /// The last day, the last of a month.
    pub to: NaiveDate,
    /// The odds of frost, as a line: of a later one in spring, of an earlier
    /// one in autumn; 1 in winter.
    pub frost: Vec<FrostPoint>,
    /// From a record of minima; else from the usual dates, which know no odds.
    pub by_record: bool,
    /// In words.
    pub say: Say,
    /// A crop a row, the first to be sown first.
    pub rows: Vec<WindowRow>,
    /// Crops of which the crop book knows no weeks.
    pub without: Vec<CropName>,
}

/// The odds of frost on a day.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FrostPoint {
    /// The day.
    pub day: NaiveDate,
    /// From 0 to 1.
    pub chance: f64,
}

/// The windows of a crop.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct WindowRow {
    /// The crop.
    pub crop: CropName,
    /// Its seasons of which some part lies in the twelve months.
    pub seasons: Vec<SeasonSpan>,
    /// Of the season that comes or is, a sentence each.
    pub says: Vec<Say>,
}

/// The dates of one season.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct SeasonSpan {
    /// First and last day to sow.
    pub sow: [NaiveDate; 2],
    /// First and last day to set out; none where it is sown where it grows.
    pub set_out: Option<[NaiveDate; 2]>,
    /// The last day on which sowing is of use.
    pub last_useful: Option<NaiveDate>,
}

/// A packet that a plan may be sown from.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PlanPacket {
    /// Its crop.
    pub crop: String,
    /// Its id and name.
    pub of: Named,
}

/// When the plants of a plan are wanted, or sown.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "as", rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum RhythmForm {
    /// Ready to set out by a day.
    By {
        /// The day.
        day: NaiveDate,
    },
    /// Ready for a sale, with some over.
    Sale {
        /// The day of the sale.
        day: NaiveDate,
        /// So many in a hundred over those wanted.
        over_percent: u32,
    },
    /// Sown every so many weeks.
    Every {
        /// Weeks.
        weeks: u32,
        /// The first day.
        from: NaiveDate,
        /// The last day.
        to: NaiveDate,
    },
    /// Sown again when the last sowing has true leaves.
    TrueLeaves {
        /// The first day.
        from: NaiveDate,
        /// The last day.
        to: NaiveDate,
    },
}

/// A plan as it is filled in.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PlanForm {
    /// Crop key or own word.
    pub crop: String,
    /// Variety; empty: any.
    pub variety: String,
    /// From this packet; none: the best one.
    pub packet: Option<String>,
    /// Plants wanted, of each sowing where there are several.
    pub wanted: u32,
    /// When.
    pub rhythm: RhythmForm,
    /// Weeks from sowing to ready by the grower's own word; none: by the book.
    pub raise_weeks: Option<u32>,
}

/// A plan and how it stands.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PlanView {
    /// Id.
    pub plan: String,
    /// Crop.
    pub crop: CropName,
    /// As it was filled in.
    pub form: PlanForm,
    /// What is planned.
    pub say: Say,
    /// What is there and expected of it; none before anything was sown.
    pub stands: Option<Say>,
    /// The next sowing, with its reckoning.
    pub next: Option<Say>,
    /// What stands in its way: too late, not known how long it takes.
    pub trouble: Option<Say>,
    /// To sow from it; none where no sowing is to come.
    pub sow: Option<PlanSow>,
}

/// A sowing that a plan asks for.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PlanSow {
    /// The plan.
    pub plan: String,
    /// The packet to sow from; none: choose one.
    pub packet: Option<String>,
    /// For so many plants.
    pub wanted: u32,
    /// The day from which it is to be made.
    pub from: NaiveDate,
}

/// What is kept for somebody.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "type", rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum WaresForm {
    /// Of some plants.
    Plants {
        /// Which.
        plants: PlantsRef,
    },
    /// Of a crop.
    Crop {
        /// Crop key or own word.
        crop: String,
        /// Variety; empty: any.
        variety: String,
    },
}

/// Plants kept for somebody.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ReservationView {
    /// Id.
    pub reservation: String,
    /// Crop.
    pub crop: CropName,
    /// Variety; may be empty.
    pub variety: String,
    /// The label of their tray, where some plants are meant.
    pub tray: Option<String>,
    /// Still to be handed over.
    pub remaining: u32,
    /// Of those, ready now.
    pub ready: u32,
    /// For whom.
    pub note: String,
}

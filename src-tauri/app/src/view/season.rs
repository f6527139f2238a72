//! Seasons, and the frost dates of a record.

use super::{Coded, FrostOddsForm};
use crate::say::Say;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

/// The season of a crop in this garden.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct SeasonView {
    /// First and last day to sow.
    pub sow: [NaiveDate; 2],
    /// First and last day to set out.
    pub set_out: [NaiveDate; 2],
    /// The last day on which sowing is of use.
    pub last_useful: Option<NaiveDate>,
    /// How today stands to it.
    pub standing: SeasonStanding,
    /// In words, a sentence each.
    pub says: Vec<Say>,
}

/// How a day stands to the days for sowing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum SeasonStanding {
    /// Before them.
    Early,
    /// Among them.
    Now,
    /// After them, and still of use.
    Late,
}

/// How a record of daily minima is to be read.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FrostCsvOptions {
    /// Number of the column with the day, from 0; none: the app finds it.
    pub day_column: Option<u32>,
    /// Number of the column with the minimum, from 0; none: the app finds it.
    pub low_column: Option<u32>,
    /// `ymd`, `dmy` or `mdy`; none: the app finds it.
    pub day_order: Option<String>,
    /// The minima are in °F.
    pub fahrenheit: bool,
    /// A frost is a minimum at or under this, °C.
    pub threshold_c: f64,
}

/// What a record of daily minima would give.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FrostPreview {
    /// The columns, by their headings or the first of what is in them.
    pub columns: Vec<String>,
    /// The options it was read with.
    pub read_with: FrostCsvOptions,
    /// Days that were read.
    pub days: u32,
    /// Lines without a minimum, left out.
    pub missing: u32,
    /// First and last day of the record.
    pub span: Option<[NaiveDate; 2]>,
    /// Lines that could not be read: the first 20.
    pub bad: Vec<BadLine>,
    /// All lines that could not be read.
    pub bad_lines: u32,
    /// The last frosts of spring.
    pub spring: FrostHalf,
    /// The first frosts of autumn.
    pub autumn: FrostHalf,
    /// To be kept; none if neither half can be reckoned.
    pub odds: Option<FrostOddsForm>,
}

/// A line that could not be read.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct BadLine {
    /// Its number in the file, from 1.
    pub line: u32,
    /// What is wrong with it.
    pub what: Coded,
}

/// What the record tells of one half of the year.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FrostHalf {
    /// Years that had a frost and nine in ten of their days on record.
    pub years: u32,
    /// Years with nine in ten of their days on record.
    pub full_years: u32,
    /// Days of the year (`MM-DD`) at odds of 10, 50 and 90 % of a later frost
    /// (spring) or an earlier one (autumn); none where it is never so likely.
    pub dates: Option<[Option<String>; 3]>,
    /// In words.
    pub say: Say,
}

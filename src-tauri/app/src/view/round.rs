//! The round: what is due now, place by place.

use super::{PlaceHead, PlanSow, PlantsLine, PlantsRef, RangeView, VerdictView};
use crate::say::Say;
use chrono::{NaiveDate, NaiveDateTime};
use serde::{Deserialize, Serialize};

/// The home screen.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct RoundView {
    /// Local time of the garden this was planned for.
    pub at: NaiveDateTime,
    /// Whether this is the evening's round.
    pub evening: bool,
    /// Places in walking order, those with living trays or something due.
    pub places: Vec<PlaceRound>,
    /// Living trays that stand nowhere, as far as anyone said.
    pub nowhere: Vec<TrayCard>,
    /// What is due about seed, which stands in no place.
    pub seed: Vec<SeedJob>,
    /// Nothing is due: what comes next, and when.
    pub next: Option<NextDue>,
    /// Whether there is any living tray.
    pub any_living: bool,
    /// The grower is away until this day.
    pub away_until: Option<NaiveDate>,
}

/// What comes next.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct NextDue {
    /// When.
    pub at: NaiveDateTime,
    /// What ("feel the compost in the shed").
    pub say: Say,
}

/// One place of the round.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PlaceRound {
    /// The place.
    pub place: PlaceHead,
    /// Its last reading, if it ever had one.
    pub reading: Option<LastReading>,
    /// Whether its heat is off now.
    pub heat_off: bool,
    /// Since when, where nobody said until when.
    pub heat_off_since: Option<NaiveDateTime>,
    /// The lowest that the coming night brings here, as somebody said, °C.
    pub low_c: Option<f64>,
    /// Jobs of the place itself (read the thermometer).
    pub jobs: Vec<JobView>,
    /// Trays with something due, then (`due` empty) none: quiet trays are
    /// counted, not listed.
    pub cards: Vec<TrayCard>,
    /// Living trays here that want nothing today.
    pub quiet: u32,
    /// Trays here that are to be felt today, for "all moist".
    pub to_feel: Vec<String>,
    /// Many trays to feel make one job: which to feel for all of them.
    pub together: Option<Say>,
}

/// A job about seed.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct SeedJob {
    /// The job.
    pub job: JobView,
    /// The germination test it is about, and its packet.
    pub test: Option<TestHead>,
    /// The plan it is about, and what to sow for it.
    pub plan: Option<PlanSow>,
}

/// A germination test, in short.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct TestHead {
    /// Id.
    pub test: String,
    /// Its packet.
    pub packet: String,
    /// Seeds.
    pub seeds: u32,
}

/// The last reading of a place.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct LastReading {
    /// When.
    pub at: NaiveDateTime,
    /// Whole days ago.
    pub days_ago: i32,
    /// Lowest and highest; equal for a reading of the moment.
    pub range: RangeView,
    /// `air` or `compost`.
    pub of: String,
}

/// A tray in the round.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct TrayCard {
    /// Id.
    pub tray: String,
    /// Code on its label.
    pub code: String,
    /// `cells`, `open_tray`, `pot`, `pots`, `damp_paper` or `bag`.
    pub container: String,
    /// Covered now.
    pub covered: bool,
    /// What lives in it.
    pub plants: Vec<PlantsLine>,
    /// What is due, the most pressing first.
    pub jobs: Vec<JobView>,
}

/// The kinds of job; each has a message `job-…`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum JobKind {
    /// Nobody said where a tray stands.
    SayWhere,
    /// A night too cold for what stands there.
    FrostTonight,
    /// What was put out by day is to come in.
    BringIn,
    /// A lid that was opened is to be closed.
    CloseTheLid,
    /// The last day of days away was yesterday: look a place over.
    LookOver,
    /// The grower goes away tomorrow.
    BeforeYouGo,
    /// Something is up in a dark or heated place.
    IntoTheLight,
    /// Something is up under a cover.
    CoverOff,
    /// Something is up where it is warmer than it wants to grow on.
    CoolerNow,
    /// Seed in the cold is to come into the warm.
    EndOfTheColdWeeks,
    /// Seed on damp paper has sprouted: sow it on.
    SowOn,
    /// Look for seedlings: answer with a count.
    LookForSeedlings,
    /// It is late.
    ItIsLate,
    /// Feel the compost.
    FeelTheCompost,
    /// Read the thermometer.
    ReadTheThermometer,
    /// See whether seedlings grow leggy.
    LookForLegginess,
    /// Soon it is too late in the year to sow again.
    LastChance,
    /// The sun cooks what is up under a lid.
    OpenTheLid,
    /// Thin.
    Thin,
    /// Prick out.
    PrickOut,
    /// Feed.
    Feed,
    /// Pot on.
    PotOn,
    /// Harden off: out by day, in at night.
    HardenOff,
    /// Plant out.
    PlantOut,
    /// All has gone from a tray: empty it.
    EmptyTheTray,
    /// Sow for a plan.
    Sow,
    /// Count the sprouted seeds of a germination test.
    CountTheTest,
    /// Go through the packets.
    Stocktake,
}

/// One job.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct JobView {
    /// Opaque key, for putting off and dismissing.
    pub key: String,
    /// Kind.
    pub kind: JobKind,
    /// Of which plants, unless it is of the whole tray or place.
    pub plants: Option<PlantsRef>,
    /// For today (up, dry, frost); else it can wait.
    pub today: bool,
    /// Since when it is due.
    pub due: NaiveDate,
    /// Why, in one sentence with its numbers.
    pub why: Say,
    /// For a count: what to start the stepper at.
    pub suggested: Option<u32>,
    /// For a sowing that is late: what to do about it.
    pub verdict: Option<VerdictView>,
}

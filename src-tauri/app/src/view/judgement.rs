//! Judgement on sowings: wait or sow again, and why one did badly.

use crate::say::Say;
use chrono::NaiveDate;
use serde::Serialize;

/// What to do about a sowing that is late.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct VerdictView {
    /// Which verdict.
    pub kind: VerdictKind,
    /// In one sentence with its numbers.
    pub say: Say,
    /// Probability that any more come; none where no odds are told.
    pub p_any_more: Option<f64>,
    /// Seedlings expected in the end.
    pub expected: Option<f64>,
    /// Probability of reaching the number wanted.
    pub p_reach: Option<f64>,
    /// Wait: silence until then.
    pub until: Option<NaiveDate>,
    /// What can be done, the advised first.
    pub choices: Vec<Choice>,
}

/// The verdicts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum VerdictKind {
    /// Wait.
    Wait,
    /// Stand it somewhere warmer.
    Warm,
    /// Stand it somewhere cooler.
    Cool,
    /// Nothing more is likely to come.
    NothingMore,
    /// Sow more beside it.
    SowBeside,
    /// No odds: it was not looked at of late.
    Look,
    /// No odds: nobody counted a pinch.
    Pinch,
    /// No odds: seedlings came up where the temperatures allow none.
    RecordWrong,
}

/// Something that can be done about it.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Choice {
    /// What.
    pub kind: ChoiceKind,
    /// In words, for a button.
    pub say: Say,
    /// Move: where to.
    pub place: Option<String>,
    /// Sow: how many seeds, where that can be told.
    pub seeds: Option<u32>,
    /// Sow: how many plants those are to make up.
    pub wanted: Option<u32>,
    /// Sow: another packet, which is better.
    pub packet: Option<String>,
    /// Wait: until when.
    pub until: Option<NaiveDate>,
    /// What it would give, with its odds and numbers.
    pub gives: Option<Say>,
    /// Dig up: what may be found, and what each would say.
    pub finds: Vec<Find>,
}

/// What may be found on digging up, and what it would say.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Find {
    /// Firm ones.
    pub firm: u32,
    /// Soft ones.
    pub soft: u32,
    /// What was found, for a button.
    pub say: Say,
    /// The odds there would be then.
    pub gives: Say,
}

/// What can be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum ChoiceKind {
    /// Put it off.
    Wait,
    /// Move the tray.
    Move,
    /// Dig up two seeds.
    DigUp,
    /// Sow more beside it, or again.
    Sow,
    /// Sow another packet: this one is not worth it.
    SowOther,
    /// Nothing came up: give it up.
    GiveUp,
    /// Those that are up will do.
    Enough,
}

impl Choice {
    pub(crate) fn new(kind: ChoiceKind, say: Say) -> Self {
        Self {
            kind,
            say,
            place: None,
            seeds: None,
            wanted: None,
            packet: None,
            until: None,
            gives: None,
            finds: Vec::new(),
        }
    }

    pub(crate) fn giving(mut self, gives: Option<Say>) -> Self {
        self.gives = gives;
        self
    }
}

/// Why a sowing did badly.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ReasonView {
    /// The cause, how likely and what it cost.
    pub say: Say,
    /// What in the journal speaks for it.
    pub facts: Vec<Say>,
    /// What to do or try next time.
    pub remedy: Say,
    /// What it may have cost, in seedlings.
    pub seedlings: f64,
    /// Likely, else possible.
    pub likely: bool,
}

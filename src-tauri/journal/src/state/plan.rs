//! Plans and reservations.

use super::Mark;
use crate::content::{PlanDescribed, Reserved};
use crate::id::SowingId;
use serde::{Deserialize, Serialize};

/// A plan.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PlanState {
    /// What it says.
    pub described: PlanDescribed,
    /// The entry that first said so.
    pub opened_by: Mark,
    /// The last word on it.
    pub last: Mark,
    /// Its sowings, by time.
    pub sowings: Vec<PlanSown>,
}

/// A sowing that was made for a plan.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PlanSown {
    /// The sowing.
    pub sowing: SowingId,
    /// When.
    pub at: Mark,
}

/// Plants kept for somebody.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ReservationState {
    /// What it says.
    pub described: Reserved,
    /// The entry that first said so.
    pub opened_by: Mark,
    /// Handed over since.
    pub handed_over: u32,
}

impl ReservationState {
    /// Still to be handed over; 0 where they are no longer kept.
    #[must_use]
    pub fn remaining(&self) -> u32 {
        if self.described.released {
            0
        } else {
            self.described.number.saturating_sub(self.handed_over)
        }
    }
}

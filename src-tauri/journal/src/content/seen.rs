//! What a grower saw of plants, and thinks of it.

use crate::id::SowingId;
use crate::subject::Plants;
use crate::words::{Blame, LossCause, Sight};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// Seeds that were lost before they came up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SeedsLost {
    /// The sowing.
    pub sowing: SowingId,
    /// How many of those not up.
    pub number: u32,
    /// To what.
    pub cause: LossCause,
}

/// Why a sowing did badly, by the grower's own judgement; the last holds, and
/// no cause and no word takes it back.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Explained {
    /// The sowing.
    pub sowing: SowingId,
    /// What was to blame.
    #[serde(default)]
    pub causes: BTreeSet<Blame>,
    /// In the grower's words; may be empty.
    #[serde(default)]
    pub text: String,
}

/// How plants look.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Noticed {
    /// The plants.
    pub of: Plants,
    /// What was seen.
    pub sight: Sight,
}

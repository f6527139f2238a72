//! What is done to seed before it is sown.

use serde::{Deserialize, Serialize};

/// What was done to seed before it was sown, and what it is to go through
/// first.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Treatment {
    /// Soaked, hours.
    #[serde(default)]
    pub soaked_hours: Option<f64>,
    /// The seed coat was nicked or rubbed.
    #[serde(default)]
    pub chipped: bool,
    /// So many weeks in the cold from sowing, then warm.
    #[serde(default)]
    pub cold_weeks: Option<u32>,
}

impl Treatment {
    /// Whether nothing was done to it.
    #[must_use]
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }
}

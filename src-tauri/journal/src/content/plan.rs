//! Plans to raise plants, and plants promised to somebody.

use crate::id::{PacketId, PlanId, ReservationId};
use crate::subject::Plants;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

/// A plan: so many plants of a crop, by a day or again and again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PlanDescribed {
    /// Which.
    pub plan: PlanId,
    /// Key of the crop in the crop book, or the grower's own word.
    pub crop: String,
    /// Variety; empty: any.
    #[serde(default)]
    pub variety: String,
    /// From this packet; none: the best one of the crop.
    #[serde(default)]
    pub packet: Option<PacketId>,
    /// Plants wanted, of each sowing where there are several.
    pub wanted: u32,
    /// When.
    pub rhythm: Rhythm,
    /// Weeks from sowing to ready, by the grower's own word; none: by the crop
    /// book.
    #[serde(default)]
    pub raise_weeks: Option<u32>,
    /// It is over, or was given up.
    #[serde(default)]
    pub ended: bool,
}

/// When the plants of a plan are wanted, or sown.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "as", rename_all = "snake_case")]
pub enum Rhythm {
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

impl Rhythm {
    /// The last day that counts.
    #[must_use]
    pub fn last_day(self) -> NaiveDate {
        match self {
            Self::By { day } | Self::Sale { day, .. } => day,
            Self::Every { to, .. } | Self::TrueLeaves { to, .. } => to,
        }
    }

    /// The day from which sowings are made, where that is said and not reckoned.
    #[must_use]
    pub fn first_day(self) -> Option<NaiveDate> {
        match self {
            Self::By { .. } | Self::Sale { .. } => None,
            Self::Every { from, .. } | Self::TrueLeaves { from, .. } => Some(from),
        }
    }
}

impl PlanDescribed {
    /// Plants to raise, of each sowing where there are several: those wanted
    /// and, for a sale, so many over, rounded up.
    #[must_use]
    pub fn to_raise(&self) -> u32 {
        let over = match self.rhythm {
            Rhythm::Sale { over_percent, .. } => over_percent,
            _ => 0,
        };
        let all = u64::from(self.wanted) * (100 + u64::from(over));
        u32::try_from(all.div_ceil(100)).unwrap_or(u32::MAX)
    }
}

/// Plants are kept for somebody; the last word holds.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Reserved {
    /// Which.
    pub reservation: ReservationId,
    /// Of what.
    pub of: Wares,
    /// How many, with those that were handed over since.
    pub number: u32,
    /// For whom: initials, a note; may be empty.
    #[serde(default)]
    pub note: String,
    /// No longer kept.
    #[serde(default)]
    pub released: bool,
}

/// What is kept for somebody.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "type", rename_all = "snake_case")]
pub enum Wares {
    /// Of some plants.
    Plants {
        /// Which.
        of: Plants,
    },
    /// Of a crop.
    Crop {
        /// Key of the crop in the crop book, or the grower's own word.
        crop: String,
        /// Variety; empty: any.
        #[serde(default)]
        variety: String,
    },
}

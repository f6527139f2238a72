//! Quiet hours.

use crate::view::DeviceForm;
use chrono::{NaiveDateTime, NaiveTime};
use serde::{Deserialize, Serialize};

/// Hours without notices: from inclusive, to exclusive, over midnight where
/// from is later; equal means none.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Quiet {
    /// The first moment without.
    pub from: NaiveTime,
    /// The first moment with them again.
    pub to: NaiveTime,
}

impl Quiet {
    pub(super) fn of(device: &DeviceForm) -> Self {
        let time = |text: &str| NaiveTime::parse_from_str(text, "%H:%M").unwrap_or_default();
        Self {
            from: time(&device.quiet_from),
            to: time(&device.quiet_to),
        }
    }

    /// Whether a time of day lies in them.
    #[must_use]
    pub fn has(self, time: NaiveTime) -> bool {
        if self.from <= self.to {
            (self.from..self.to).contains(&time)
        } else {
            time >= self.from || time < self.to
        }
    }

    /// The moment, or the end of the quiet hours it lies in.
    #[must_use]
    pub fn after(self, at: NaiveDateTime) -> NaiveDateTime {
        let (time, day) = (at.time(), at.date());
        if !self.has(time) {
            return at;
        }
        let end = if self.from > self.to && time >= self.from {
            day.succ_opt().unwrap_or(day)
        } else {
            day
        };
        end.and_time(self.to)
    }
}

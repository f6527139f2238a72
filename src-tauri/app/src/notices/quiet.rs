//! Quiet hours.

use crate::view::DeviceForm;
use chrono::{NaiveDateTime, NaiveTime};

/// Hours without notices: from inclusive, to exclusive, over midnight where
/// from is later; equal means none.
#[derive(Clone, Copy)]
pub(super) struct Quiet {
    pub(super) from: NaiveTime,
    pub(super) to: NaiveTime,
}

impl Quiet {
    pub(super) fn of(device: &DeviceForm) -> Self {
        let time = |text: &str| NaiveTime::parse_from_str(text, "%H:%M").unwrap_or_default();
        Self {
            from: time(&device.quiet_from),
            to: time(&device.quiet_to),
        }
    }

    /// The moment, or the end of the quiet hours it lies in.
    pub(super) fn after(self, at: NaiveDateTime) -> NaiveDateTime {
        let (time, day) = (at.time(), at.date());
        let next = day.succ_opt().unwrap_or(day);
        match self {
            Self { from, to } if from < to && (from..to).contains(&time) => day.and_time(to),
            Self { from, to } if from > to && time >= from => next.and_time(to),
            Self { from, to } if from > to && time < to => day.and_time(to),
            _ => at,
        }
    }
}

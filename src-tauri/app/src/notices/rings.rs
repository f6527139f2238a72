//! When a round rings: a local time of the garden, made an instant, and kept
//! out of the quiet hours of the device.
//!
//! Every occurrence is reckoned from its own date and wall-clock time, never
//! from the one before it. A time that the clocks leave out is shifted forward
//! by as much as they are; of one that comes twice the first holds.

use super::quiet::Quiet;
use chrono::{DateTime, NaiveDateTime, Utc};
use chrono_tz::Tz;
use plumule_journal::stamp::instant_of;
use std::collections::BTreeMap;

/// The end of quiet hours may itself fall into a gap and so into quiet hours
/// again; after so many looks whatever comes is taken.
const LOOKS: usize = 3;

/// The clocks that a notice obeys: round times are the garden's, quiet hours
/// are those of the person who carries the device.
#[derive(Clone, Copy, Debug)]
pub struct Rings {
    /// Of the garden.
    pub garden: Tz,
    /// Of the device.
    pub device: Tz,
    /// By the wall clock of the device.
    pub quiet: Quiet,
}

impl Rings {
    /// When a round at a local time of the garden rings.
    #[must_use]
    pub fn at(&self, round: NaiveDateTime) -> DateTime<Utc> {
        self.not_before(instant_of(round, self.garden))
    }

    /// The instant, or the end of the quiet hours it lies in.
    #[must_use]
    pub fn not_before(&self, instant: DateTime<Utc>) -> DateTime<Utc> {
        let mut at = instant;
        for _ in 0..LOOKS {
            let wall = at.with_timezone(&self.device).naive_local();
            let after = self.quiet.after(wall);
            if after == wall {
                break;
            }
            // Where the clocks go back the end may come twice, the first time before this.
            at = at.max(instant_of(after, self.device));
        }
        at
    }

    /// Rounds by the instants at which they ring. Of those that the same quiet
    /// hours keep back the last holds. The round of a day that the zone leaves
    /// out and that of the next are one.
    #[must_use]
    pub fn all(
        &self,
        rounds: impl Iterator<Item = NaiveDateTime>,
    ) -> BTreeMap<DateTime<Utc>, NaiveDateTime> {
        let begun = |round: NaiveDateTime| instant_of(round, self.garden);
        let mut all = BTreeMap::new();
        for round in rounds {
            let held = all.entry(self.at(round)).or_insert(round);
            if begun(round) > begun(*held) {
                *held = round;
            }
        }
        all
    }
}

//! What can be looked for in a journal, by words and by days.

use super::Journal;
use crate::entry::Line;
use crate::error::Error;
use crate::id::{BatchId, PlaceId, SowingId, TrayId};
use crate::state::TrayState;
use crate::store::{read, sought};
use chrono::{DateTime, Utc};

impl Journal {
    /// The trays with a code that was ever given them in which something is
    /// found, and that, in no order. A tray comes again with each description,
    /// and one that is no more comes too: whether its code holds is its own
    /// state.
    ///
    /// # Errors
    /// If the database fails.
    pub fn codes<T>(&self, found: impl Fn(&str) -> Option<T>) -> Result<Vec<(TrayId, T)>, Error> {
        sought::codes(&self.db, found)
    }

    /// The trays whose label says a code, in capitals or not, the last that was
    /// begun first.
    ///
    /// # Errors
    /// If the database fails.
    pub fn trays_of_code(&self, code: &str) -> Result<Vec<TrayState>, Error> {
        let same = |other: &str| other.to_uppercase() == code.to_uppercase();
        let mut trays = Vec::new();
        for id in sought::coded(&self.db, code)? {
            trays.extend(
                self.tray(id)?
                    .filter(|tray| same(tray.described.code.trim())),
            );
        }
        trays.sort_by_key(|tray| std::cmp::Reverse(tray.opened_by.at.instant()));
        Ok(trays)
    }

    /// Calls with the notes, and the grower's own judgements on sowings, the
    /// last dated first, until the answer is false. Those are left out that
    /// are not wanted by their text and local time (ISO 8601), but for those
    /// amended since, and the withdrawn.
    ///
    /// # Errors
    /// If the database fails, or whatever is answered.
    pub fn notes<E: From<Error>>(
        &self,
        wanted: &mut dyn FnMut(&str, &str) -> bool,
        each: &mut dyn FnMut(Line) -> Result<bool, E>,
    ) -> Result<(), E> {
        for nr in sought::notes(&self.db, wanted)? {
            let held = read::numbered(&self.db, nr)?;
            if !held.withdrawn() && !each(held.into_line())? {
                break;
            }
        }
        Ok(())
    }

    /// Sowings by when they happened, the last first.
    ///
    /// # Errors
    /// If the database fails.
    pub fn sowings_when(
        &self,
        when: &dyn Fn(DateTime<Utc>) -> bool,
    ) -> Result<Vec<SowingId>, Error> {
        sought::sown(&self.db, &|at_ms| {
            DateTime::from_timestamp_millis(at_ms).is_some_and(when)
        })
    }

    /// Plants that began without seed, in no order; some may be no more.
    ///
    /// # Errors
    /// If the database fails.
    pub fn started_batches(&self) -> Result<Vec<BatchId>, Error> {
        sought::started(&self.db)
    }

    /// So many trays that came to a place, the last first.
    ///
    /// # Errors
    /// If the database fails.
    pub fn trays_that_came_to(&self, place: PlaceId, most: usize) -> Result<Vec<TrayId>, Error> {
        sought::came_to(&self.db, place, most)
    }
}

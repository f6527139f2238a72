//! What can be asked of a journal.

use super::Journal;
use crate::check;
use crate::content::PacketDescribed;
use crate::device::Device;
use crate::entry::Line;
use crate::error::Error;
use crate::fold::State;
use crate::id::{
    BatchId, EntryId, ItemId, PacketId, PlaceId, PlanId, ReservationId, SowingId, TestId, TrayId,
};
use crate::label;
use crate::stamp::Stamp;
use crate::state::{
    BatchState, GardenState, ItemState, PacketState, PlaceState, PlanState, Reading,
    ReservationState, SowingState, TestState, TrayState,
};
use crate::store::read;
use crate::subject::Subject;
use chrono::{DateTime, NaiveDate, Utc};
use std::collections::BTreeMap;

macro_rules! one {
    ($(#[$doc:meta])* $name:ident, $id:ident, $variant:ident, $state:ident) => {
        $(#[$doc])*
        ///
        /// # Errors
        /// If the database fails.
        pub fn $name(&self, id: $id) -> Result<Option<$state>, Error> {
            Ok(match read::state(&self.db, Subject::$variant(id))? {
                Some(State::$variant(state)) => Some(state),
                _ => None,
            })
        }
    };
}

impl Journal {
    /// The next free code for a label: this device's letter and a number.
    ///
    /// # Errors
    /// If the database fails.
    pub fn next_code(&self) -> Result<String, Error> {
        label::next(&self.db, self.id)
    }

    /// The garden, with jobs put off and dismissed for what lives.
    ///
    /// # Errors
    /// If the database fails.
    pub fn garden(&self) -> Result<GardenState, Error> {
        read::garden(&self.db)
    }

    /// All places, in walking order (position, then id), retired ones last.
    ///
    /// # Errors
    /// If the database fails.
    pub fn places(&self) -> Result<Vec<PlaceState>, Error> {
        let mut places: Vec<PlaceState> = read::living(&self.db, "place", i64::MIN)?;
        places.extend(read::past::<PlaceState>(&self.db, "place", usize::MAX)?);
        places.sort_by_key(|place| {
            let described = &place.described;
            (described.retired, described.position, described.place)
        });
        Ok(places)
    }

    /// All packets, latest used first, retired ones last.
    ///
    /// # Errors
    /// If the database fails.
    pub fn packets(&self) -> Result<Vec<PacketState>, Error> {
        let mut packets: Vec<PacketState> = read::living(&self.db, "packet", i64::MIN)?;
        packets.reverse();
        packets.extend(read::past::<PacketState>(&self.db, "packet", usize::MAX)?);
        Ok(packets)
    }

    /// Whether the door would take a packet, by what it says itself.
    ///
    /// # Errors
    /// The refusal.
    pub fn packet_fits(stamp: &Stamp, what: &PacketDescribed) -> Result<(), Error> {
        check::seed::packet_fits(stamp, what)
    }

    /// Packets in use, latest used last.
    ///
    /// # Errors
    /// If the database fails.
    pub fn packets_in_use(&self) -> Result<Vec<PacketState>, Error> {
        read::living(&self.db, "packet", i64::MIN)
    }

    one!(
        /// A place.
        place, PlaceId, Place, PlaceState
    );
    one!(
        /// A packet.
        packet, PacketId, Packet, PacketState
    );
    one!(
        /// A tray.
        tray, TrayId, Tray, TrayState
    );
    one!(
        /// A sowing.
        sowing, SowingId, Sowing, SowingState
    );
    one!(
        /// A batch.
        batch, BatchId, Batch, BatchState
    );
    one!(
        /// A germination test.
        test, TestId, Test, TestState
    );
    one!(
        /// Something to buy.
        item, ItemId, Item, ItemState
    );

    one!(
        /// A plan.
        plan, PlanId, Plan, PlanState
    );
    one!(
        /// Plants kept for somebody.
        reservation, ReservationId, Reservation, ReservationState
    );

    /// All plans, ended ones last.
    ///
    /// # Errors
    /// If the database fails.
    pub fn plans(&self) -> Result<Vec<PlanState>, Error> {
        let mut plans: Vec<PlanState> = read::living(&self.db, "plan", i64::MIN)?;
        plans.extend(read::past::<PlanState>(&self.db, "plan", usize::MAX)?);
        Ok(plans)
    }

    /// Plans that have not ended and of which something was said since an
    /// instant, the last touched last.
    ///
    /// # Errors
    /// If the database fails.
    pub fn plans_touched_since(&self, since: DateTime<Utc>) -> Result<Vec<PlanState>, Error> {
        read::living(&self.db, "plan", since.timestamp_millis())
    }

    /// Plants that are kept for somebody, the last touched last.
    ///
    /// # Errors
    /// If the database fails.
    pub fn reservations(&self) -> Result<Vec<ReservationState>, Error> {
        read::living(&self.db, "reservation", i64::MIN)
    }

    /// Germination tests that have not been closed.
    ///
    /// # Errors
    /// If the database fails.
    pub fn running_tests(&self) -> Result<Vec<TestState>, Error> {
        read::living(&self.db, "test", i64::MIN)
    }

    /// What is wanted, the last named last, and so many of what was bought or
    /// dropped, latest first.
    ///
    /// # Errors
    /// If the database fails.
    pub fn to_buy(&self, past: usize) -> Result<Vec<ItemState>, Error> {
        let mut items: Vec<ItemState> = read::living(&self.db, "item", i64::MIN)?;
        items.extend(read::past::<ItemState>(&self.db, "item", past)?);
        Ok(items)
    }

    /// Trays in use, all or those touched since an instant: felt, moved, fed
    /// and so on, or sown into. What happens to plants in it does not count.
    ///
    /// # Errors
    /// If the database fails.
    pub fn living_trays(
        &self,
        touched_since: Option<DateTime<Utc>>,
    ) -> Result<Vec<TrayState>, Error> {
        let since = touched_since.map_or(i64::MIN, |since| since.timestamp_millis());
        read::living(&self.db, "tray", since)
    }

    /// Trays no longer in use, latest first.
    ///
    /// # Errors
    /// If the database fails.
    pub fn past_trays(&self, limit: usize) -> Result<Vec<TrayState>, Error> {
        read::past(&self.db, "tray", limit)
    }

    /// Sowings that have ended, latest first.
    ///
    /// # Errors
    /// If the database fails.
    pub fn past_sowings(&self, limit: usize) -> Result<Vec<SowingState>, Error> {
        read::past(&self.db, "sowing", limit)
    }

    /// Batches that have ended, latest first.
    ///
    /// # Errors
    /// If the database fails.
    pub fn past_batches(&self, limit: usize) -> Result<Vec<BatchState>, Error> {
        read::past(&self.db, "batch", limit)
    }

    /// Sowings that have not ended.
    ///
    /// # Errors
    /// If the database fails.
    pub fn living_sowings(&self) -> Result<Vec<SowingState>, Error> {
        read::living(&self.db, "sowing", i64::MIN)
    }

    /// Batches that have not ended.
    ///
    /// # Errors
    /// If the database fails.
    pub fn living_batches(&self) -> Result<Vec<BatchState>, Error> {
        read::living(&self.db, "batch", i64::MIN)
    }

    /// Readings of local days since one, of all places, by time.
    ///
    /// # Errors
    /// If the database fails.
    pub fn readings(&self, since: NaiveDate) -> Result<Vec<Reading>, Error> {
        read::readings(&self.db, since)
    }

    /// What was written about some subjects, latest first; withdrawn entries
    /// too. An entry about several of them comes once.
    ///
    /// # Errors
    /// If the database fails.
    pub fn timeline(&self, subjects: &[Subject], limit: usize) -> Result<Vec<Line>, Error> {
        let mut found = BTreeMap::new();
        for subject in subjects {
            found.extend(read::timeline(&self.db, *subject, limit)?);
        }
        let mut held: Vec<_> = found.into_values().collect();
        held.sort_by(|a, b| b.when().cmp(&a.when()));
        held.truncate(limit);
        Ok(held.into_iter().map(|held| held.into_line()).collect())
    }

    /// An entry with its amendments.
    ///
    /// # Errors
    /// If the database fails.
    pub fn entry(&self, id: EntryId) -> Result<Option<Line>, Error> {
        let found = read::roots(&self.db, id)?.into_iter().next();
        Ok(found.map(|(_, held)| held.into_line()))
    }

    /// All lines as they were written, in the order of arrival.
    ///
    /// # Errors
    /// If the database fails.
    pub fn lines(&self) -> Result<Vec<String>, Error> {
        read::lines(&self.db)
    }

    /// Every line after a number on this copy, with its number.
    pub(crate) fn lines_after(
        &self,
        nr: i64,
        each: &mut dyn FnMut(i64, &str) -> Result<(), Error>,
    ) -> Result<(), Error> {
        let sql = "SELECT nr, line FROM entries WHERE nr > ?1 ORDER BY nr";
        let mut query = self.db.prepare_cached(sql)?;
        let mut rows = query.query([nr])?;
        while let Some(row) = rows.next()? {
            let line = row.get_ref(1)?.as_str().map_err(rusqlite::Error::from)?;
            each(row.get(0)?, line)?;
        }
        Ok(())
    }

    /// The highest number on this copy.
    pub(crate) fn last_number(&self) -> Result<i64, Error> {
        let sql = "SELECT COALESCE(MAX(nr), 0) FROM entries";
        Ok(self.db.query_row(sql, [], |row| row.get(0))?)
    }

    /// The database of this device.
    pub(crate) fn habits(&self) -> &Device {
        &self.device
    }

    /// How many entries there are.
    ///
    /// # Errors
    /// If the database fails.
    pub fn count(&self) -> Result<u64, Error> {
        let count: i64 = self
            .db
            .query_row("SELECT COUNT(*) FROM entries", [], |row| row.get(0))?;
        Ok(u64::try_from(count).unwrap_or(0))
    }

    /// Sowings that have not ended and of which something was said since an
    /// instant.
    ///
    /// # Errors
    /// If the database fails.
    pub fn sowings_touched_since(&self, since: DateTime<Utc>) -> Result<Vec<SowingState>, Error> {
        read::living(&self.db, "sowing", since.timestamp_millis())
    }

    /// Batches that have not ended and of which something was said since an
    /// instant.
    ///
    /// # Errors
    /// If the database fails.
    pub fn batches_touched_since(&self, since: DateTime<Utc>) -> Result<Vec<BatchState>, Error> {
        read::living(&self.db, "batch", since.timestamp_millis())
    }

    /// Packets of a crop, those in use first, the latest used first of each.
    ///
    /// # Errors
    /// If the database fails.
    pub fn packets_of_crop(&self, crop: &str, limit: usize) -> Result<Vec<PacketState>, Error> {
        read::packets_of_crop(&self.db, crop, limit)
    }
}

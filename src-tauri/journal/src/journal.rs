//! The journal as others use it.

use crate::content::Content;
use crate::device::{Device, make_folder};
use crate::door::Door;
use crate::entry::Line;
use crate::error::Error;
use crate::finding::{Findings, Watch};
use crate::fold::State;
use crate::id::{BatchId, DeviceId, EntryId, PacketId, PlaceId, SowingId, TrayId};
use crate::stamp::{Happened, Stamp};
use crate::state::{
    BatchState, GardenState, PacketState, PlaceState, Reading, SowingState, TrayState,
};
use crate::store::{open, project, read};
use crate::subject::Subject;
use crate::wish::{Answer, Report, Wish};
use crate::{amend, audit, backup, check, label, merge};
use chrono::{DateTime, NaiveDate, Utc};
use rusqlite::{Connection, Transaction, TransactionBehavior};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// A journal, open: the one way to write it and to read what it adds up to.
#[derive(Debug)]
pub struct Journal {
    db: Connection,
    device: Device,
    id: DeviceId,
    home: PathBuf,
}

/// A transaction that no other writer can come between.
fn begin(db: &mut Connection) -> Result<Transaction<'_>, Error> {
    Ok(db.transaction_with_behavior(TransactionBehavior::Immediate)?)
}

/// One act through the door.
fn through(db: &Connection, device: DeviceId, stamp: &Stamp, wish: Wish) -> Result<Answer, Error> {
    let happened = wish.happened.unwrap_or_else(|| stamp.happened());
    let mut door = Door::open(db, stamp, device, &wish.hand)?;
    door.check_happened(&happened)?;
    for content in &wish.contents {
        door.check_content(&happened, content, false)?;
        door.append(&happened, content)?;
    }
    door.close(check::settle::How::Written, wish.confirmed)
}

/// Commits what was written; what asks first is dropped.
fn settled(tx: Transaction<'_>, answer: Answer) -> Result<Answer, Error> {
    if matches!(answer, Answer::Written { .. }) {
        tx.commit()?;
    }
    Ok(answer)
}

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
    /// Opens or makes a home: `journal/` with `journal.db`, `photos/` and
    /// `backups/`, and `device.db` beside it.
    ///
    /// # Errors
    /// If a file cannot be opened, is newer, damaged, or not ours; it is left
    /// as it was.
    pub fn open(home: &Path, stamp: &Stamp) -> Result<Self, Error> {
        let folder = home.join("journal");
        make_folder(&folder.join("photos"))?;
        make_folder(&folder.join("backups"))?;
        let device = Device::open(home, stamp)?;
        let expect = device.expect()?;
        let db = open::journal(&folder.join("journal.db"), expect)?;
        if expect == open::Expect::Any {
            device.made()?;
        }
        let id = device.id()?;
        Ok(Self {
            db,
            device,
            id,
            home: home.to_owned(),
        })
    }

    /// The identity this copy writes under.
    #[must_use]
    pub fn device(&self) -> DeviceId {
        self.id
    }

    /// The one door: checks the contents in order, each against what the
    /// earlier ones leave, appends them as one act, folds what they touch and
    /// commits. When it answers `Written`, they are on disk.
    ///
    /// # Errors
    /// [`Error::Refused`] with a code, or if the database fails; nothing was
    /// written then, nor when it asks first.
    pub fn write(&mut self, stamp: &Stamp, wish: Wish) -> Result<Answer, Error> {
        let tx = begin(&mut self.db)?;
        let answer = through(&tx, self.id, stamp, wish)?;
        settled(tx, answer)
    }

    /// Several acts, each as by [`Journal::write`] and one after the other,
    /// but on disk together: all of them or none. Answers for the last, or
    /// with what the first to do so asks.
    ///
    /// # Errors
    /// As [`Journal::write`].
    pub fn write_all(
        &mut self,
        acts: impl IntoIterator<Item = (Stamp, Wish)>,
    ) -> Result<Answer, Error> {
        let tx = begin(&mut self.db)?;
        let mut last = None;
        for (stamp, wish) in acts {
            let answer = through(&tx, self.id, &stamp, wish)?;
            if matches!(answer, Answer::AsksFirst(_)) {
                return Ok(answer);
            }
            last = Some(answer);
        }
        match last {
            Some(answer) => settled(tx, answer),
            None => check::refuse("nothing_to_write"),
        }
    }

    /// Undoes an act as a new act, which can itself be undone: entries it
    /// added are withdrawn, and of entries it amended what held before holds
    /// again. Asks first if others build on what goes.
    ///
    /// # Errors
    /// As [`Journal::write`].
    pub fn undo(
        &mut self,
        stamp: &Stamp,
        act: EntryId,
        hand: &str,
        confirmed: bool,
    ) -> Result<Answer, Error> {
        let tx = begin(&mut self.db)?;
        let door = Door::open(&tx, stamp, self.id, hand)?;
        let answer = amend::undo(door, stamp, act, confirmed)?;
        settled(tx, answer)
    }

    /// Withdraws an entry; asks first if others build on it, and takes them
    /// with it in the same act.
    ///
    /// # Errors
    /// As [`Journal::write`].
    pub fn withdraw(
        &mut self,
        stamp: &Stamp,
        root: EntryId,
        hand: &str,
        confirmed: bool,
    ) -> Result<Answer, Error> {
        let tx = begin(&mut self.db)?;
        let door = Door::open(&tx, stamp, self.id, hand)?;
        let answer = amend::withdraw(door, stamp, root, confirmed)?;
        settled(tx, answer)
    }

    /// Corrects an entry, or brings a withdrawn one back, with a content of
    /// the same kind that opens the same things; and when it happened, if that
    /// is given.
    ///
    /// # Errors
    /// As [`Journal::write`].
    pub fn correct(
        &mut self,
        stamp: &Stamp,
        root: EntryId,
        content: Content,
        happened: Option<Happened>,
        hand: &str,
        confirmed: bool,
    ) -> Result<Answer, Error> {
        let tx = begin(&mut self.db)?;
        let door = Door::open(&tx, stamp, self.id, hand)?;
        let answer = amend::correct(door, stamp, root, content, happened, confirmed)?;
        settled(tx, answer)
    }

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

    /// Throws all projections away and makes them again from the entries.
    ///
    /// # Errors
    /// If the database fails; the old ones hold then.
    pub fn rebuild(&mut self) -> Result<(), Error> {
        let tx = begin(&mut self.db)?;
        project::rebuild(&tx)?;
        Ok(tx.commit()?)
    }

    /// All lines as they were written, in the order of arrival.
    ///
    /// # Errors
    /// If the database fails.
    pub fn lines(&self) -> Result<Vec<String>, Error> {
        read::lines(&self.db)
    }

    /// Takes in lines of a journal, another's or this one's own, after a backup
    /// unless the last one holds the same: what is here already changes nothing, what is damaged is reported by its number and
    /// left out, what is of unknown kind is kept.
    ///
    /// # Errors
    /// If the backup cannot be made or the database fails; nothing was taken in
    /// then.
    pub fn take_in<'a>(
        &mut self,
        stamp: &Stamp,
        lines: impl Iterator<Item = &'a str>,
    ) -> Result<Report, Error> {
        if self.count()? > 0 && !backup::is_current(self)? {
            backup::make(self, stamp, &mut |_| true)?;
        }
        let tx = begin(&mut self.db)?;
        let report = merge::take_in(tx, stamp, &self.device, self.id, lines)?;
        self.id = self.device.id()?;
        Ok(report)
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

    /// Checks everything there is: the file, every entry, what they add up to,
    /// the photos. Changes nothing; what fails is a finding. `watch` is told
    /// how far it is and cancels by false.
    pub fn check(&self, watch: &mut Watch) -> Findings {
        audit::all(&self.db, &self.home.join("journal/photos"), watch)
    }

    /// The folder it is in.
    #[must_use]
    pub fn home(&self) -> &Path {
        &self.home
    }

    pub(crate) fn connection(&self) -> &Connection {
        &self.db
    }
}

//! The journal as others use it.

mod asks;
mod sought;

use crate::content::Content;
use crate::device::{Device, make_folder};
use crate::door::Door;
use crate::error::Error;
use crate::finding::{Findings, Watch};
use crate::id::{DeviceId, EntryId};
use crate::merge::Union;
use crate::stamp::{Happened, Stamp};
use crate::store::{newer, open, project};
use crate::wish::{Answer, Report, Wish};
use crate::{amend, audit, backup, check};
use rusqlite::{Connection, Transaction, TransactionBehavior};
use std::path::{Path, PathBuf};

/// A journal, open: the one way to write it and to read what it adds up to.
#[derive(Debug)]
pub struct Journal {
    db: Connection,
    device: Device,
    id: DeviceId,
    home: PathBuf,
    /// Versions found and known, if a newer program wrote it.
    newer: Option<(i64, i64)>,
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

impl Journal {
    /// Opens or makes a home: `journal/` with `journal.db`, `photos/` and
    /// `backups/`, and `device.db` beside it.
    ///
    /// # Errors
    /// If a file cannot be opened, is damaged, or not ours; it is left as it
    /// was. One that is newer opens for reading ([`Journal::read_only`]),
    /// unless nothing of it can be read.
    pub fn open(home: &Path, stamp: &Stamp) -> Result<Self, Error> {
        let folder = home.join("journal");
        make_folder(&folder.join("photos"))?;
        make_folder(&folder.join("backups"))?;
        let mut device = Device::open_or_stand_in(home, stamp)?;
        let path = folder.join("journal.db");
        let expect = device.expect()?;
        let opened = match device.newer() {
            Some(newer) => Err(newer),
            None => open::journal(&path, expect),
        };
        let (db, newer) = match opened {
            // If nothing of it can be read, that it is newer says why.
            Err(newer @ Error::Newer { .. }) => match newer::read(&path) {
                Ok(db) => (db, newer.versions()),
                Err(_) => return Err(newer),
            },
            opened => (opened?, None),
        };
        if expect == open::Expect::Any {
            device.made()?;
        }
        let id = device.id()?;
        Ok(Self {
            db,
            device,
            id,
            home: home.to_owned(),
            newer,
        })
    }

    /// It was written by a newer version and can only be read; every write
    /// fails with `journal_newer` until this program is updated.
    #[must_use]
    pub fn read_only(&self) -> bool {
        self.newer.is_some()
    }

    /// Goes up with everything that is written to it while it is open.
    #[must_use]
    pub fn changes(&self) -> u64 {
        self.db.total_changes()
    }

    /// Fails if it can only be read.
    pub(crate) fn for_writing(&self) -> Result<(), Error> {
        match self.newer {
            Some((found, known)) => Err(Error::Newer { found, known }),
            None => Ok(()),
        }
    }

    /// What this device keeps beside the journal.
    pub(crate) fn kept(&self) -> &Device {
        &self.device
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
        self.for_writing()?;
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
        self.for_writing()?;
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
        self.for_writing()?;
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
        self.for_writing()?;
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
        self.for_writing()?;
        let tx = begin(&mut self.db)?;
        let door = Door::open(&tx, stamp, self.id, hand)?;
        let answer = amend::correct(door, stamp, root, content, happened, confirmed)?;
        settled(tx, answer)
    }

    /// Throws all projections away and makes them again from the entries.
    ///
    /// # Errors
    /// If the database fails; the old ones hold then.
    pub fn rebuild(&mut self) -> Result<(), Error> {
        self.for_writing()?;
        let tx = begin(&mut self.db)?;
        project::rebuild(&tx)?;
        Ok(tx.commit()?)
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
        lines: impl Iterator<Item = &'a str> + Send,
    ) -> Result<Report, Error> {
        self.back_up_first(stamp, &mut |_| true)?;
        let united = self.unite(stamp, |union| union.lines(lines));
        united.map(|((), report)| report)
    }

    /// A backup, unless the newest holds what is here.
    pub(crate) fn back_up_first(&self, stamp: &Stamp, watch: &mut Watch) -> Result<(), Error> {
        if self.count()? > 0 && !backup::is_current(self)? {
            backup::make(self, stamp, watch)?;
        }
        Ok(())
    }

    /// A union with what `bring` brings, all of it or nothing.
    pub(crate) fn unite<T>(
        &mut self,
        stamp: &Stamp,
        bring: impl FnOnce(&mut Union) -> Result<T, Error>,
    ) -> Result<(T, Report), Error> {
        self.for_writing()?;
        let tx = begin(&mut self.db)?;
        let mut union = Union::into(&tx, self.id)?;
        let brought = bring(&mut union)?;
        let report = union.finish()?;
        // First: an identity too many does no harm, one shared by two copies
        // does.
        if report.new_identity {
            self.device.renew(stamp)?;
        }
        tx.commit()?;
        self.id = self.device.id()?;
        Ok((brought, report))
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

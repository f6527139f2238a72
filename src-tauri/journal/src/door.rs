//! The one door for writing: check, append, fold, and say what was touched,
//! for the caller to commit.

use crate::check::settle::{Changes, How, settle};
use crate::check::{self, Check, refuse};
use crate::content::Content;
use crate::entry::{Draft, Entry, MAX_COUNTER, MAX_LINE};
use crate::error::{Error, Question};
use crate::id::{DeviceId, EntryId, Ids};
use crate::stamp::{Happened, Stamp};
use crate::store::add::{self, Adding};
use crate::store::{project, read};
use crate::subject::Subject;
use crate::wish::Answer;
use rusqlite::Connection;
use std::collections::{BTreeSet, btree_map};
use std::sync::Arc;

/// An act being written, within a transaction that its caller commits if it
/// was written, or never.
pub(crate) struct Door<'c> {
    db: &'c Connection,
    stamp: &'c Stamp,
    device: DeviceId,
    hand: &'c str,
    act: Option<EntryId>,
    seq: i64,
    lamport: i64,
    changes: Changes,
    /// Of those, the ones to which something happened later than now.
    ahead: BTreeSet<Subject>,
    touched: BTreeSet<Subject>,
    questions: Vec<Question>,
}

impl<'c> Door<'c> {
    pub fn open(
        db: &'c Connection,
        stamp: &'c Stamp,
        device: DeviceId,
        hand: &'c str,
    ) -> Result<Self, Error> {
        check::name_of_hand(hand)?;
        let seq = add::last_seq(db, device)?;
        let lamport = add::highest_lamport(db)?;
        Ok(Self {
            db,
            stamp,
            device,
            hand,
            act: None,
            seq,
            lamport,
            changes: Changes::new(),
            ahead: BTreeSet::new(),
            touched: BTreeSet::new(),
            questions: Vec::new(),
        })
    }

    pub fn db(&self) -> &Connection {
        self.db
    }

    pub fn ask(&mut self, question: Question) {
        self.questions.push(question);
    }

    /// Checks when it happened, once for an act.
    pub fn check_happened(&mut self, happened: &Happened) -> Result<(), Error> {
        check::happened(&mut self.check(happened, false))
    }

    /// Checks a content against the state as it is by now.
    pub fn check_content(
        &mut self,
        happened: &Happened,
        content: &Content,
        correcting: bool,
    ) -> Result<(), Error> {
        check::content(&mut self.check(happened, correcting), content)
    }

    fn check<'a>(&'a mut self, happened: &'a Happened, correcting: bool) -> Check<'a> {
        Check {
            db: self.db,
            stamp: self.stamp,
            happened,
            correcting,
            questions: &mut self.questions,
        }
    }

    /// Adds an entry and folds what it touches.
    pub fn append(&mut self, happened: &Happened, content: &Content) -> Result<(), Error> {
        self.seq += 1;
        // Nobody gets there; if a damaged journal has, order falls to device
        // and number.
        self.lamport = (self.lamport + 1).min(MAX_COUNTER);
        let purpose = format!("entry {} of {}", self.seq, self.device);
        let id = EntryId(Ids::new(self.stamp, &purpose).next());
        let line = Entry::write(&Draft {
            id,
            act: *self.act.get_or_insert(id),
            device: self.device,
            seq: self.seq,
            lamport: self.lamport,
            happened,
            written: self.stamp.now,
            hand: self.hand,
            content,
        })?;
        if line.len() > MAX_LINE {
            return refuse("entry_too_large");
        }
        let entry = Arc::new(read::parse(&line)?);
        let nr = add::next(self.db)?;
        if !Adding::to(self.db)?.entry(nr, &entry, &entry.hash())? {
            return Err(Error::Damaged("a new line was there already".to_owned()));
        }
        let mut batch = project::Batch::of_one(self.db);
        batch.entry(nr, &entry)?;
        let now = *happened == self.stamp.happened();
        for (subject, change) in batch.changes()? {
            self.touched.insert(subject);
            let Some(change) = change else {
                continue;
            };
            match self.changes.entry(subject) {
                btree_map::Entry::Occupied(mut earlier) => earlier.get_mut().after = change.after,
                btree_map::Entry::Vacant(first) => {
                    if now && change.last_ms > Some(self.stamp.now.timestamp_millis()) {
                        self.ahead.insert(subject);
                    }
                    first.insert(change);
                }
            }
        }
        Ok(())
    }

    /// Written, unless it does not add up, or asks something that was not yet
    /// answered.
    pub fn close(mut self, how: How, confirmed: bool) -> Result<Answer, Error> {
        settle(
            self.db,
            &self.changes,
            &self.ahead,
            how,
            &mut self.questions,
        )?;
        if !confirmed && !self.questions.is_empty() {
            return Ok(Answer::AsksFirst(self.questions));
        }
        let Some(act) = self.act else {
            return refuse("nothing_to_write");
        };
        Ok(Answer::Written {
            act,
            touched: self.touched,
        })
    }
}

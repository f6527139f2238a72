//! Keeping the projections: rows for each root entry, a state for each
//! subject. There is one way only: what changed is made anew from the entries.

use crate::ahead::meanwhile;
use crate::content::Content;
use crate::entry::Entry;
use crate::error::Error;
use crate::fold::Held;
use crate::id::EntryId;
use crate::store::making::{Change, ToFold, Touch, change};
use crate::store::rows::{at_ms, keep, keep_state, keep_touches};
use crate::store::{add, read};
use crate::subject::Subject;
use crate::touches::touches;
use rusqlite::{Connection, params};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// The tables that [`rebuild`] fills.
pub(crate) const TABLES: &[&str] = &["amendments", "touches", "states", "readings", "jobs"];

/// Subjects that something touches, and whether each state depends on it.
type Touched = BTreeMap<Subject, bool>;

/// Bytes of lines kept in mind until they are folded; what they say takes as
/// much again (judgement: a phone has room for it).
const MOST_BYTES: usize = 16 << 20;

/// Subjects folded at once, on another thread: enough that neither waits long,
/// and their entries little to hold (judgement).
const MANY: usize = 128;

fn join(all: &mut Touched, more: Touched) {
    for (subject, weighs) in more {
        *all.entry(subject).or_default() |= weighs;
    }
}

/// What a root and its amendments touch: an amendment adds to it and takes
/// nothing away, so that the subjects of now were those of before.
fn touched(root: &Entry, amendments: &[Arc<Entry>]) -> Touched {
    let mut all = match &root.content {
        Some(content) => touches(content),
        None => BTreeMap::from([(Subject::Garden, false)]),
    };
    for amendment in amendments {
        if let Some(Content::Amended(amended)) = &amendment.content
            && let Some(content) = &amended.content
        {
            join(&mut all, touches(content));
        }
    }
    all
}

/// Entries on their way into the rows: what they touch is folded at the end,
/// or whenever as many were read as are kept in mind.
pub(crate) struct Batch<'c> {
    db: &'c Connection,
    /// The roots that have amendments; none: that is looked up for each.
    amended: Option<BTreeSet<EntryId>>,
    /// Still to be written and folded.
    touched: BTreeMap<Subject, Vec<Touch>>,
    bytes: usize,
    folded: BTreeSet<Subject>,
}

impl<'c> Batch<'c> {
    /// For an entry of an act.
    pub fn of_one(db: &'c Connection) -> Self {
        Self::new(db, None)
    }

    /// For the entries of a journal.
    pub fn of_many(db: &'c Connection) -> Result<Self, Error> {
        Ok(Self::new(db, Some(read::amended(db)?)))
    }

    fn new(db: &'c Connection, amended: Option<BTreeSet<EntryId>>) -> Self {
        Self {
            db,
            amended,
            touched: BTreeMap::new(),
            bytes: 0,
            folded: BTreeSet::new(),
        }
    }

    /// Takes a newly added entry into the rows.
    pub fn entry(&mut self, nr: i64, entry: &Arc<Entry>) -> Result<(), Error> {
        if let Some(Content::Amended(amended)) = &entry.content {
            self.amendment(nr, entry, amended.root)?;
        } else {
            let amended = self.amended.as_ref();
            let amendments = match amended.is_none_or(|all| all.contains(&entry.id)) {
                true => read::amendments(self.db, entry.id)?,
                false => Vec::new(),
            };
            let held = Held {
                entry: Arc::clone(entry),
                amendment: amendments.last().cloned(),
            };
            // In a rebuild an amendment may have made them already.
            let was = held.amendment.is_some().then(|| held.clone());
            self.root(nr, held, &amendments, was)?;
        }
        if self.bytes > MOST_BYTES {
            self.fold()?;
        }
        Ok(())
    }

    fn amendment(&mut self, nr: i64, entry: &Entry, of: EntryId) -> Result<(), Error> {
        self.db
            .prepare_cached(
                "INSERT OR IGNORE INTO amendments (root, lamport, device, seq, hash, entry)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
            )?
            .execute(params![
                add::blob(of),
                entry.lamport,
                add::device(entry.device),
                entry.seq,
                &entry.hash()[..],
                nr
            ])?;
        if let Some(amended) = &mut self.amended {
            amended.insert(of);
        }
        let amendments = read::amendments(self.db, of)?;
        let before = amendments.iter().rfind(|it| it.line != entry.line);
        for (nr, held) in read::roots(self.db, of)? {
            let was = Held {
                entry: Arc::clone(&held.entry),
                amendment: before.cloned(),
            };
            self.root(nr, held, &amendments, Some(was))?;
        }
        Ok(())
    }

    /// Makes the rows of a root: its touches, its reading, its job; those that
    /// were made when it held otherwise go.
    fn root(
        &mut self,
        nr: i64,
        held: Held,
        amendments: &[Arc<Entry>],
        was: Option<Held>,
    ) -> Result<(), Error> {
        let touched = touched(&held.entry, amendments);
        if let Some(was) = was {
            self.clear(nr, &was, &touched)?;
        }
        keep(self.db, nr, &held)?;
        let amendment = held.amendment.as_ref();
        self.bytes += held.entry.line.len() + amendment.map_or(0, |it| it.line.len());
        for (subject, weighs) in touched {
            self.touched.entry(subject).or_default().push(Touch {
                weighs,
                at_ms: at_ms(&held),
                nr,
                held: held.clone(),
            });
        }
        Ok(())
    }

    fn clear(&mut self, nr: i64, was: &Held, touched: &Touched) -> Result<(), Error> {
        let at_ms = at_ms(was);
        let mut old = self.db.prepare_cached(
            "DELETE FROM touches
             WHERE subject = ?1 AND weighs IN (0, 1) AND at_ms = ?2 AND entry = ?3",
        )?;
        for subject in touched.keys() {
            if let Some(touches) = self.touched.get_mut(subject) {
                touches.retain(|touch| touch.nr != nr);
            }
            old.execute(params![subject, at_ms, nr])?;
        }
        for table in [
            "DELETE FROM readings WHERE entry = ?1",
            "DELETE FROM jobs WHERE entry = ?1",
        ] {
            self.db.prepare_cached(table)?.execute([nr])?;
        }
        Ok(())
    }

    /// Folds what was touched since the last time.
    fn fold(&mut self) -> Result<(), Error> {
        self.bytes = 0;
        let db = self.db;
        let mut touched = std::mem::take(&mut self.touched).into_iter().peekable();
        let some = std::iter::from_fn(|| {
            touched.peek()?;
            let some = touched.by_ref().take(MANY);
            Some(
                some.map(|(subject, new)| ToFold::of(db, subject, new))
                    .collect(),
            )
        });
        let fold = |some: Vec<ToFold>| some.into_iter().map(ToFold::fold).collect();
        meanwhile(some, fold, |folded: Vec<_>| {
            for one in folded {
                let (subject, rows, state) = one?;
                keep_touches(db, subject, rows)?;
                self.folded.insert(subject);
                if let Some(state) = state {
                    keep_state(db, subject, state)?;
                }
            }
            Ok(())
        })
    }

    /// Folds the little that one entry touches, and tells what changed; what
    /// only has it in its timeline did not.
    pub fn changes(self) -> Result<BTreeMap<Subject, Option<Change>>, Error> {
        let change = |(subject, new): (Subject, Vec<Touch>)| {
            let change = change(self.db, subject, &new)?;
            keep_touches(self.db, subject, new.iter().map(Touch::row))?;
            Ok((subject, change))
        };
        self.touched.into_iter().map(change).collect()
    }

    /// Folds the rest; all that was touched.
    pub fn finish(mut self) -> Result<BTreeSet<Subject>, Error> {
        self.fold()?;
        Ok(self.folded)
    }
}

/// Throws the projections away and makes them again from the entries.
pub(crate) fn rebuild(db: &Connection) -> Result<(), Error> {
    for table in TABLES {
        db.execute(&format!("DELETE FROM {table}"), [])?;
    }
    let mut batch = Batch::of_many(db)?;
    let mut query = db.prepare("SELECT nr, line FROM entries ORDER BY nr")?;
    let mut found = query.query([])?;
    while let Some(row) = found.next()? {
        let parsed = read::parse(row.get_ref(1)?.as_str().map_err(rusqlite::Error::from)?)?;
        batch.entry(row.get(0)?, &Arc::new(parsed))?;
    }
    batch.finish().map(drop)
}

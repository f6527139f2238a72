//! Keeping the projections: rows for each root entry, a state for each
//! subject. There is one way only: what changed is made anew from the entries.

use crate::content::Content;
use crate::entry::Entry;
use crate::error::Error;
use crate::fold::{self, Held};
use crate::id::EntryId;
use crate::state::Reading;
use crate::store::lately::Lately;
use crate::store::{add, read};
use crate::subject::Subject;
use crate::touches::touches;
use rusqlite::{Connection, params};
use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

/// The tables that [`rebuild`] fills.
pub(crate) const TABLES: &[&str] = &["amendments", "touches", "states", "readings", "jobs"];

/// Subjects that something touches, and whether each state depends on it.
type Touched = BTreeMap<Subject, bool>;

/// A row of `touches`: subject, whether it weighs, when (ms), number of the
/// entry. In the order of the table, which takes many in their order sooner.
type Touch = (Subject, bool, i64, i64);

/// When it happened, as it holds: milliseconds since 1970 UTC.
fn at_ms(held: &Held) -> i64 {
    held.happened().instant().timestamp_millis()
}

fn join(all: &mut Touched, more: Touched) {
    for (subject, weighs) in more {
        *all.entry(subject).or_default() |= weighs;
    }
}

/// What a root and its amendments touch: an amendment adds to it and takes
/// nothing away, so that the subjects of now were those of before.
fn touched(root: &Entry, amendments: &[Rc<Entry>]) -> Touched {
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

/// The reading or the job of a root, as it holds.
fn keep(db: &Connection, nr: i64, held: &Held) -> Result<(), Error> {
    match held.content() {
        Some(Content::ReadingTaken(what)) => {
            let reading = Reading {
                place: what.place,
                mark: held.mark(),
                of: what.of,
                shown: what.shown,
            };
            db.prepare_cached(
                "INSERT INTO readings (entry, place, at_ms, reading) VALUES (?1, ?2, ?3, ?4)",
            )?
            .execute(params![
                nr,
                Subject::Place(what.place),
                at_ms(held),
                serde_json::to_string(&reading)?
            ])?;
        }
        Some(content @ Content::JobPutOff(what)) => job(db, nr, held, what.job.subject, content)?,
        Some(content @ Content::JobDismissed(what)) => {
            job(db, nr, held, what.job.subject, content)?;
        }
        _ => {}
    }
    Ok(())
}

fn job(
    db: &Connection,
    nr: i64,
    held: &Held,
    subject: Subject,
    content: &Content,
) -> Result<(), Error> {
    db.prepare_cached(
        "INSERT INTO jobs (entry, subject, lamport, device, seq, answer)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
    )?
    .execute(params![
        nr,
        subject,
        held.entry.lamport,
        add::device(held.entry.device),
        held.entry.seq,
        serde_json::to_string(content)?
    ])?;
    Ok(())
}

/// Makes the state of a subject anew.
fn refold(db: &Connection, lately: &Lately, subject: Subject) -> Result<(), Error> {
    let held = read::held(db, lately, subject)?;
    let state = fold::fold(subject, &held);
    let Some(state) = state else {
        db.prepare_cached("DELETE FROM states WHERE subject = ?1")?
            .execute([subject])?;
        return Ok(());
    };
    let last_ms = held
        .iter()
        .filter(|held| {
            held.content()
                .is_some_and(|content| touches(content).get(&subject) == Some(&true))
        })
        .map(at_ms)
        .max()
        .unwrap_or(0);
    db.prepare_cached(include_str!("keep_state.sql"))?
        .execute(params![
            subject,
            fold::kind(subject),
            state.alive(),
            last_ms,
            state.to_json()?
        ])?;
    Ok(())
}

/// Entries on their way into the rows: what they touch is folded at the end,
/// or whenever as many were read as are kept in mind.
pub(crate) struct Batch<'c> {
    db: &'c Connection,
    lately: Lately,
    /// Still to be written and folded.
    touches: BTreeSet<Touch>,
    folded: BTreeSet<Subject>,
}

impl<'c> Batch<'c> {
    pub fn new(db: &'c Connection) -> Self {
        Self {
            db,
            lately: Lately::default(),
            touches: BTreeSet::new(),
            folded: BTreeSet::new(),
        }
    }

    /// Takes a newly added entry into the rows.
    pub fn entry(&mut self, nr: i64, entry: &Rc<Entry>) -> Result<(), Error> {
        if let Some(Content::Amended(amended)) = &entry.content {
            self.amendment(nr, entry, amended.root)?;
        } else {
            let amendments = read::amendments(self.db, entry.id)?;
            let held = Held {
                entry: Rc::clone(entry),
                amendment: amendments.last().cloned(),
            };
            // In a rebuild an amendment may have made them already.
            let was = held.amendment.is_some().then(|| held.clone());
            self.root(nr, held, &amendments, was)?;
        }
        if self.lately.is_full() {
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
        let amendments = read::amendments(self.db, of)?;
        let before = amendments.iter().rfind(|it| it.line != entry.line);
        for (nr, held) in read::roots(self.db, of)? {
            let was = Held {
                entry: Rc::clone(&held.entry),
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
        amendments: &[Rc<Entry>],
        was: Option<Held>,
    ) -> Result<(), Error> {
        let touched = touched(&held.entry, amendments);
        if let Some(was) = was {
            self.clear(nr, &was, &touched)?;
        }
        let at_ms = at_ms(&held);
        let rows = touched
            .into_iter()
            .map(|(subject, weighs)| (subject, weighs, at_ms, nr));
        self.touches.extend(rows);
        keep(self.db, nr, &held)?;
        self.lately.keep(nr, held);
        Ok(())
    }

    fn clear(&mut self, nr: i64, was: &Held, touched: &Touched) -> Result<(), Error> {
        let at_ms = at_ms(was);
        let mut old = self.db.prepare_cached(
            "DELETE FROM touches
             WHERE subject = ?1 AND weighs IN (0, 1) AND at_ms = ?2 AND entry = ?3",
        )?;
        for subject in touched.keys() {
            for weighs in [false, true] {
                self.touches.remove(&(*subject, weighs, at_ms, nr));
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

    /// What was touched and is still to be folded.
    pub fn touched(&self) -> BTreeSet<Subject> {
        self.touches.iter().map(|(subject, ..)| *subject).collect()
    }

    /// Folds what was touched since the last time.
    fn fold(&mut self) -> Result<(), Error> {
        let touches = std::mem::take(&mut self.touches);
        let mut touch = self.db.prepare_cached(
            "INSERT INTO touches (subject, weighs, at_ms, entry) VALUES (?1, ?2, ?3, ?4)",
        )?;
        for row in &touches {
            touch.execute(*row)?;
        }
        let weighing = touches.iter().filter(|(_, weighs, ..)| *weighs);
        let weighing: BTreeSet<Subject> = weighing.map(|(subject, ..)| *subject).collect();
        for subject in weighing {
            refold(self.db, &self.lately, subject)?;
        }
        self.folded
            .extend(touches.into_iter().map(|(subject, ..)| subject));
        self.lately = Lately::default();
        Ok(())
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
    let mut batch = Batch::new(db);
    let mut query = db.prepare("SELECT nr, line FROM entries ORDER BY nr")?;
    let mut found = query.query([])?;
    while let Some(row) = found.next()? {
        let parsed = read::parse(row.get_ref(1)?.as_str().map_err(rusqlite::Error::from)?)?;
        batch.entry(row.get(0)?, &Rc::new(parsed))?;
    }
    batch.finish().map(drop)
}

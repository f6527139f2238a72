//! Keeping the projections: rows for each root entry, a state for each
//! subject. There is one way only: what changed is made anew from the entries.

use crate::content::Content;
use crate::entry::Entry;
use crate::error::Error;
use crate::fold::{self, Held};
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

/// What an entry's arrival touches, and whether each state depends on it.
pub(crate) type Touched = BTreeMap<Subject, bool>;

/// Takes a newly added entry into the rows; its subjects are still to be
/// refolded.
pub(crate) fn entry(db: &Connection, nr: i64, entry: &Rc<Entry>) -> Result<Touched, Error> {
    match &entry.content {
        Some(Content::Amended(amended)) => {
            db.prepare_cached(
                "INSERT OR IGNORE INTO amendments (root, lamport, device, seq, hash, entry)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
            )?
            .execute(params![
                add::blob(amended.root),
                entry.lamport,
                add::device(entry.device),
                entry.seq,
                &entry.hash()[..],
                nr
            ])?;
            let amendments = read::amendments(db, amended.root)?;
            let mut all = Touched::new();
            for (nr, held) in read::roots(db, amended.root)? {
                clear(db, nr)?;
                join(&mut all, root(db, nr, &held, &amendments)?);
            }
            Ok(all)
        }
        _ => {
            let amendments = read::amendments(db, entry.id)?;
            // In a rebuild an amendment may have made them already.
            if !amendments.is_empty() {
                clear(db, nr)?;
            }
            let held = Held {
                entry: Rc::clone(entry),
                amendment: amendments.last().cloned(),
            };
            root(db, nr, &held, &amendments)
        }
    }
}

/// Makes the rows of a root: its touches, its reading, its job.
fn root(db: &Connection, nr: i64, held: &Held, amendments: &[Entry]) -> Result<Touched, Error> {
    let mut touched = match &held.entry.content {
        Some(content) => touches(content),
        None => BTreeMap::from([(Subject::Garden, false)]),
    };
    for amendment in amendments {
        if let Some(Content::Amended(amended)) = &amendment.content
            && let Some(content) = &amended.content
        {
            join(&mut touched, touches(content));
        }
    }
    if !amendments.is_empty() {
        // An amendment adds to what is touched and takes nothing away.
        let mut old = db.prepare_cached(
            "DELETE FROM touches WHERE subject = ?1 AND weighs IN (0, 1) AND entry = ?2",
        )?;
        for subject in touched.keys() {
            old.execute(params![subject.to_string(), nr])?;
        }
    }
    rows(db, nr, held, &touched)?;
    Ok(touched)
}

fn clear(db: &Connection, nr: i64) -> Result<(), Error> {
    for table in [
        "DELETE FROM readings WHERE entry = ?1",
        "DELETE FROM jobs WHERE entry = ?1",
    ] {
        db.prepare_cached(table)?.execute([nr])?;
    }
    Ok(())
}

fn join(all: &mut Touched, more: Touched) {
    for (subject, weighs) in more {
        *all.entry(subject).or_default() |= weighs;
    }
}

fn rows(db: &Connection, nr: i64, held: &Held, touched: &Touched) -> Result<(), Error> {
    let at_ms = held.happened().instant().timestamp_millis();
    let mut touch = db.prepare_cached(
        "INSERT INTO touches (subject, entry, weighs, at_ms) VALUES (?1, ?2, ?3, ?4)",
    )?;
    for (subject, weighs) in touched {
        touch.execute(params![subject.to_string(), nr, weighs, at_ms])?;
    }
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
                Subject::Place(what.place).to_string(),
                at_ms,
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
        subject.to_string(),
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
    let key = subject.to_string();
    let Some(state) = state else {
        db.prepare_cached("DELETE FROM states WHERE subject = ?1")?
            .execute([key])?;
        return Ok(());
    };
    let last_ms = held
        .iter()
        .filter(|held| {
            held.content()
                .is_some_and(|content| touches(content).get(&subject) == Some(&true))
        })
        .map(|held| held.happened().instant().timestamp_millis())
        .max()
        .unwrap_or(0);
    db.prepare_cached(include_str!("keep_state.sql"))?
        .execute(params![
            key,
            fold::kind(subject),
            state.alive(),
            last_ms,
            state.to_json()?
        ])?;
    Ok(())
}

/// Refolds what newly added entries touch.
pub(crate) fn refold_all(db: &Connection, touched: &Touched) -> Result<(), Error> {
    for (subject, _) in touched.iter().filter(|(_, weighs)| **weighs) {
        refold(db, &Lately::default(), *subject)?;
    }
    Ok(())
}

/// Many entries on their way into the rows: what they touch is folded at the
/// end, or whenever as many were read as are kept in mind.
pub(crate) struct Batch<'c> {
    db: &'c Connection,
    lately: Lately,
    touched: Touched,
    folded: BTreeSet<Subject>,
}

impl<'c> Batch<'c> {
    pub fn new(db: &'c Connection) -> Self {
        Self {
            db,
            lately: Lately::default(),
            touched: Touched::new(),
            folded: BTreeSet::new(),
        }
    }

    /// Takes a newly added entry into the rows; what it touches.
    pub fn entry(&mut self, nr: i64, one: &Rc<Entry>) -> Result<(), Error> {
        join(&mut self.touched, entry(self.db, nr, one)?);
        self.lately.keep(nr, one);
        if self.lately.is_full() {
            self.fold()?;
        }
        Ok(())
    }

    /// Folds what was touched since the last time.
    fn fold(&mut self) -> Result<(), Error> {
        for (subject, weighs) in std::mem::take(&mut self.touched) {
            if weighs {
                refold(self.db, &self.lately, subject)?;
            }
            self.folded.insert(subject);
        }
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

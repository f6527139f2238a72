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

/// What a newly added entry changed.
pub(crate) struct Taken {
    /// Still to be refolded.
    pub touched: Touched,
    /// Roots that it made or amended, as they hold by now, with their numbers.
    roots: Vec<(i64, Held)>,
}

/// Takes a newly added entry into the rows; its subjects are still to be
/// refolded.
pub(crate) fn entry(db: &Connection, nr: i64, entry: &Rc<Entry>) -> Result<Taken, Error> {
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
            let before = amendments.iter().rfind(|it| it.line != entry.line);
            let mut touched = Touched::new();
            let roots = read::roots(db, amended.root)?;
            for (nr, held) in &roots {
                let was = Held {
                    entry: Rc::clone(&held.entry),
                    amendment: before.cloned(),
                };
                join(&mut touched, root(db, *nr, held, &amendments, Some(&was))?);
            }
            Ok(Taken { touched, roots })
        }
        _ => {
            let amendments = read::amendments(db, entry.id)?;
            let held = Held {
                entry: Rc::clone(entry),
                amendment: amendments.last().cloned(),
            };
            // In a rebuild an amendment may have made them already.
            let was = held.amendment.is_some().then_some(&held);
            let touched = root(db, nr, &held, &amendments, was)?;
            let roots = vec![(nr, held)];
            Ok(Taken { touched, roots })
        }
    }
}

/// Makes the rows of a root: its touches, its reading, its job; those that were
/// made when it held otherwise go.
fn root(
    db: &Connection,
    nr: i64,
    held: &Held,
    amendments: &[Rc<Entry>],
    was: Option<&Held>,
) -> Result<Touched, Error> {
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
    if let Some(was) = was {
        clear(db, nr, was, &touched)?;
    }
    rows(db, nr, held, &touched)?;
    Ok(touched)
}

/// An amendment adds to what is touched and takes nothing away, so that the
/// subjects of now were those of before.
fn clear(db: &Connection, nr: i64, was: &Held, touched: &Touched) -> Result<(), Error> {
    let mut old = db.prepare_cached(
        "DELETE FROM touches
         WHERE subject = ?1 AND weighs IN (0, 1) AND at_ms = ?2 AND entry = ?3",
    )?;
    for subject in touched.keys() {
        old.execute(params![subject.to_string(), at_ms(was), nr])?;
    }
    for table in [
        "DELETE FROM readings WHERE entry = ?1",
        "DELETE FROM jobs WHERE entry = ?1",
    ] {
        db.prepare_cached(table)?.execute([nr])?;
    }
    Ok(())
}

/// When it happened, as it holds: milliseconds since 1970 UTC.
fn at_ms(held: &Held) -> i64 {
    held.happened().instant().timestamp_millis()
}

fn join(all: &mut Touched, more: Touched) {
    for (subject, weighs) in more {
        *all.entry(subject).or_default() |= weighs;
    }
}

fn rows(db: &Connection, nr: i64, held: &Held, touched: &Touched) -> Result<(), Error> {
    let at_ms = at_ms(held);
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
        .map(at_ms)
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
        let taken = entry(self.db, nr, one)?;
        join(&mut self.touched, taken.touched);
        for (nr, held) in taken.roots {
            self.lately.keep(nr, held);
        }
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

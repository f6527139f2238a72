//! Keeping the projections: rows for each root entry, a state for each
//! subject. There is one way only: what changed is made anew from the entries.

use crate::ahead::{Give, ahead, at_once};
use crate::content::Content;
use crate::entry::Entry;
use crate::error::Error;
use crate::fold::{self, Held};
use crate::id::EntryId;
use crate::state::Reading;
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

/// Subjects folded at once, on another thread: more than an act touches, and
/// their entries little to hold (judgement).
const MANY: usize = 256;

/// A root, as it holds, that touches a subject.
struct Touch {
    weighs: bool,
    at_ms: i64,
    nr: i64,
    held: Held,
}

/// A state as it is stored.
struct Stored {
    alive: bool,
    /// When the last that made it happened.
    last_ms: i64,
    json: String,
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

/// The state that those entries make, as it is stored.
fn state(subject: Subject, held: &[Held]) -> Result<Option<Stored>, Error> {
    let Some(state) = fold::fold(subject, held) else {
        return Ok(None);
    };
    let makes = |held: &&Held| {
        held.content()
            .is_some_and(|content| touches(content).get(&subject) == Some(&true))
    };
    Ok(Some(Stored {
        alive: state.alive(),
        last_ms: held.iter().filter(makes).map(at_ms).max().unwrap_or(0),
        json: state.to_json()?,
    }))
}

/// Rows of `touches`: whether it weighs, when (ms), number of the entry.
fn keep_touches(
    db: &Connection,
    subject: Subject,
    rows: impl IntoIterator<Item = (bool, i64, i64)>,
) -> Result<(), Error> {
    let mut touch = db.prepare_cached(
        "INSERT INTO touches (subject, weighs, at_ms, entry) VALUES (?1, ?2, ?3, ?4)",
    )?;
    for (weighs, at_ms, nr) in rows {
        touch.execute(params![subject, weighs, at_ms, nr])?;
    }
    Ok(())
}

fn keep_state(db: &Connection, subject: Subject, state: Option<Stored>) -> Result<(), Error> {
    let Some(state) = state else {
        db.prepare_cached("DELETE FROM states WHERE subject = ?1")?
            .execute([subject])?;
        return Ok(());
    };
    db.prepare_cached(include_str!("keep_state.sql"))?
        .execute(params![
            subject,
            fold::kind(subject),
            state.alive,
            state.last_ms,
            state.json
        ])?;
    Ok(())
}

/// Entries on their way into the rows: what they touch is folded at the end,
/// or whenever as many were read as are kept in mind.
pub(crate) struct Batch<'c> {
    db: &'c Connection,
    /// Still to be written and folded.
    touched: BTreeMap<Subject, Vec<Touch>>,
    bytes: usize,
    folded: BTreeSet<Subject>,
}

impl<'c> Batch<'c> {
    pub fn new(db: &'c Connection) -> Self {
        Self {
            db,
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
            let amendments = read::amendments(self.db, entry.id)?;
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

    /// What was touched and is still to be folded.
    pub fn touched(&self) -> impl Iterator<Item = Subject> {
        self.touched.keys().copied()
    }

    /// Folds what was touched since the last time.
    fn fold(&mut self) -> Result<(), Error> {
        self.bytes = 0;
        let mut touched = std::mem::take(&mut self.touched).into_iter().peekable();
        while touched.peek().is_some() {
            self.fold_some(touched.by_ref().take(MANY))?;
        }
        Ok(())
    }

    fn fold_some(
        &mut self,
        touched: impl Iterator<Item = (Subject, Vec<Touch>)>,
    ) -> Result<(), Error> {
        let mut all = Vec::new();
        for (subject, mut new) in touched {
            // As the table is ordered, which takes them sooner so.
            new.sort_by_key(|touch| (touch.weighs, touch.at_ms, touch.nr));
            let weighing = new.iter().filter(|touch| touch.weighs);
            let weighing: Vec<Held> = weighing.map(|touch| touch.held.clone()).collect();
            let held = if weighing.is_empty() {
                weighing
            } else {
                let mut held = read::held(self.db, subject)?;
                held.extend(weighing);
                held
            };
            let rows = new.iter().map(|it| (it.weighs, it.at_ms, it.nr));
            all.push((subject, rows.collect(), held));
        }
        let many = all.len() == MANY;
        let fold = |give: Give<_>| {
            for (subject, rows, held) in all {
                let weighs = !held.is_empty();
                let state = weighs.then(|| state(subject, &held)).transpose()?;
                let bytes = state.iter().flatten().map(|it| it.json.len()).sum();
                if !give((subject, rows, state), bytes) {
                    break;
                }
            }
            Ok(())
        };
        let keep = |(subject, rows, state): (Subject, Vec<_>, Option<_>)| {
            keep_touches(self.db, subject, rows)?;
            self.folded.insert(subject);
            state.map_or(Ok(()), |state| keep_state(self.db, subject, state))
        };
        if many {
            ahead(fold, keep)
        } else {
            at_once(fold, keep)
        }
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
        batch.entry(row.get(0)?, &Arc::new(parsed))?;
    }
    batch.finish().map(drop)
}

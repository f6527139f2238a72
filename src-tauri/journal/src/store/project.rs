//! Keeping the projections: rows for each root entry, a state for each
//! subject. There is one way only: what changed is made anew from the entries.

use crate::ahead::meanwhile;
use crate::content::Content;
use crate::entry::Entry;
use crate::error::Error;
use crate::fold::{self, Held, State};
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

/// Subjects folded at once, on another thread: enough that neither waits long,
/// and their entries little to hold (judgement).
const MANY: usize = 128;

/// A root, as it holds, that touches a subject.
struct Touch {
    weighs: bool,
    at_ms: i64,
    nr: i64,
    held: Held,
}

/// A row of `touches`: whether it weighs, when (ms), number of the entry.
type Row = (bool, i64, i64);

impl Touch {
    fn row(&self) -> Row {
        (self.weighs, self.at_ms, self.nr)
    }
}

/// A state as it is stored.
struct Stored {
    alive: bool,
    /// When the last that made it happened.
    last_ms: i64,
    json: String,
    /// Of a tray.
    code: Option<String>,
}

/// What became of a state.
pub(crate) struct Change {
    pub before: Option<State>,
    /// When the last that made it before happened (ms).
    pub last_ms: Option<i64>,
    pub after: Option<State>,
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

impl Stored {
    fn of(state: &State, last_ms: i64) -> Result<Self, Error> {
        Ok(Self {
            alive: state.alive(),
            last_ms,
            json: state.to_json()?,
            code: match state {
                State::Tray(tray) => Some(tray.described.code.clone()),
                _ => None,
            },
        })
    }
}

/// The state that those entries make, and when the last that did happened.
fn state(subject: Subject, held: &[Held]) -> Option<(State, i64)> {
    let makes = |held: &&Held| {
        held.content()
            .is_some_and(|content| touches(content).get(&subject) == Some(&true))
    };
    let state = fold::fold(subject, held)?;
    let last_ms = held.iter().filter(makes).map(at_ms).max().unwrap_or(0);
    Some((state, last_ms))
}

/// What makes a state: what is there, and the newly touching.
fn held(db: &Connection, subject: Subject, new: &[Touch]) -> Result<Vec<Held>, Error> {
    let weighing = new.iter().filter(|touch| touch.weighs);
    let weighing: Vec<Held> = weighing.map(|touch| touch.held.clone()).collect();
    if weighing.is_empty() {
        return Ok(weighing);
    }
    let mut held = read::held(db, subject)?;
    held.extend(weighing);
    Ok(held)
}

fn keep_touches(
    db: &Connection,
    subject: Subject,
    rows: impl IntoIterator<Item = Row>,
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
            state.json,
            state.code
        ])?;
    Ok(())
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

/// Touches of a subject on their way, in the order of their table, which takes
/// them sooner so, and what its state is made from.
struct ToFold {
    subject: Subject,
    rows: Vec<Row>,
    held: Vec<Held>,
}

impl ToFold {
    fn of(db: &Connection, subject: Subject, mut new: Vec<Touch>) -> Result<Self, Error> {
        new.sort_by_key(Touch::row);
        let held = held(db, subject, &new)?;
        let rows = new.iter().map(Touch::row).collect();
        Ok(Self {
            subject,
            rows,
            held,
        })
    }

    /// The state only if something that weighs is new.
    fn fold(self) -> Result<Folded, Error> {
        let weighs = !self.held.is_empty();
        let stored = || {
            let state = state(self.subject, &self.held);
            state
                .map(|(state, last_ms)| Stored::of(&state, last_ms))
                .transpose()
        };
        let state = weighs.then(stored).transpose()?;
        Ok((self.subject, self.rows, state))
    }
}

/// A subject, its new touches and its state, if that was made.
type Folded = (Subject, Vec<Row>, Option<Option<Stored>>);

/// Makes a state anew; none if none of those weighs. What happened after all
/// that is there, as nearly all that is written did, need not read that again.
fn change(db: &Connection, subject: Subject, new: &[Touch]) -> Result<Option<Change>, Error> {
    if !new.iter().any(|touch| touch.weighs) {
        return Ok(None);
    }
    let (before, last_ms) = read::state_until(db, subject)?.unzip();
    let later = match (&before, new) {
        (Some(before), [touch])
            if touch.held.amendment.is_none() && Some(touch.at_ms) > last_ms =>
        {
            fold::then(before, &touch.held).map(|state| (state, touch.at_ms))
        }
        _ => None,
    };
    let after = match later {
        Some(after) => Some(after),
        None => state(subject, &held(db, subject, new)?),
    };
    let stored = after
        .as_ref()
        .map(|(state, last_ms)| Stored::of(state, *last_ms));
    keep_state(db, subject, stored.transpose()?)?;
    Ok(Some(Change {
        before,
        last_ms,
        after: after.map(|(state, _)| state),
    }))
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

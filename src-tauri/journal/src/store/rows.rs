//! The rows of the projections: written, and taken away where they no longer
//! hold.

use crate::content::Content;
use crate::error::Error;
use crate::fold::{self, Held, State};
use crate::state::Reading;
use crate::store::add;
use crate::subject::Subject;
use rusqlite::{Connection, params};

/// A row of `touches`: whether it weighs, when (ms), number of the entry.
pub(super) type Row = (bool, i64, i64);

/// A state as it is stored.
pub(super) struct Stored {
    alive: bool,
    /// When the last that made it happened.
    last_ms: i64,
    json: String,
    /// Of a tray.
    code: Option<String>,
}

impl Stored {
    pub fn of(state: &State, last_ms: i64) -> Result<Self, Error> {
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

/// When it happened, as it holds: milliseconds since 1970 UTC.
pub(super) fn at_ms(held: &Held) -> i64 {
    held.happened().instant().timestamp_millis()
}

/// The reading or the job of a root, as it holds.
pub(super) fn keep(db: &Connection, nr: i64, held: &Held) -> Result<(), Error> {
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

pub(super) fn keep_touches(
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

pub(super) fn keep_state(
    db: &Connection,
    subject: Subject,
    state: Option<Stored>,
) -> Result<(), Error> {
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

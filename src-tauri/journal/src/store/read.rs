//! Reading the database.

use crate::content::{Content, JobKey};
use crate::entry::Entry;
use crate::error::Error;
use crate::fold::{Held, State};
use crate::id::{DeviceId, EntryId, PlaceId};
use crate::state::{GardenState, PutOff, Reading};
use crate::store::{add, queries};
use crate::subject::Subject;
use chrono::{Duration, NaiveDate, NaiveTime};
use rusqlite::types::ValueRef;
use rusqlite::{Connection, OptionalExtension, Row, params};
use serde::de::DeserializeOwned;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// A stored line; that it cannot be read means damage.
pub(crate) fn parse(line: &str) -> Result<Entry, Error> {
    Entry::parse(line).map_err(|error| Error::Damaged(error.to_string()))
}

fn held_of(row: &Row, line: usize, amendment: usize) -> Result<Held, Error> {
    let amendment = match row.get_ref(amendment)? {
        ValueRef::Null => None,
        text => Some(Arc::new(parse(
            text.as_str().map_err(rusqlite::Error::from)?,
        )?)),
    };
    Ok(Held {
        entry: Arc::new(parse(text(row, line)?)?),
        amendment,
    })
}

/// A text as it is in the row.
pub(super) fn text<'r>(row: &'r Row, column: usize) -> Result<&'r str, Error> {
    Ok(row
        .get_ref(column)?
        .as_str()
        .map_err(rusqlite::Error::from)?)
}

/// The entries that make a subject's state.
pub(crate) fn held(db: &Connection, subject: Subject) -> Result<Vec<Held>, Error> {
    let mut query = db.prepare_cached(queries::WEIGHING)?;
    collect(query.query([subject])?, |row| numbered(db, row.get(0)?))
}

/// The entry of a number on this copy.
pub(crate) fn numbered(db: &Connection, nr: i64) -> Result<Held, Error> {
    let mut query = db.prepare_cached(queries::NUMBERED)?;
    let mut rows = query.query([nr])?;
    match rows.next()? {
        Some(row) => held_of(row, 0, 1),
        None => Err(Error::Damaged(format!("entry {nr} is gone"))),
    }
}

/// The latest of a subject's timeline, with their numbers.
pub(crate) fn timeline(
    db: &Connection,
    subject: Subject,
    limit: usize,
) -> Result<Vec<(i64, Held)>, Error> {
    let mut query = db.prepare_cached(queries::TIMELINE)?;
    let limit = i64::try_from(limit).unwrap_or(i64::MAX);
    collect(query.query(params![subject, limit])?, |row| {
        Ok((row.get(2)?, held_of(row, 0, 1)?))
    })
}

/// The entries with an id (one, unless an identity was cloned) that are no
/// amendments, with their numbers.
pub(crate) fn roots(db: &Connection, id: EntryId) -> Result<Vec<(i64, Held)>, Error> {
    let mut query = db.prepare_cached(queries::ROOTS)?;
    collect(query.query([add::blob(id)])?, |row| {
        Ok((row.get(2)?, held_of(row, 0, 1)?))
    })
}

/// The entries of an act, in the order written.
pub(crate) fn act(db: &Connection, act: EntryId) -> Result<Vec<Held>, Error> {
    let mut query = db.prepare_cached(queries::ACT)?;
    collect(query.query([add::blob(act)])?, |row| held_of(row, 0, 1))
}

/// The entries about a subject that take in or name a photo.
pub(crate) fn photos(db: &Connection, about: Subject) -> Result<Vec<Held>, Error> {
    let mut query = db.prepare_cached(queries::PHOTOS)?;
    collect(query.query([about])?, |row| held_of(row, 0, 1))
}

/// All entries that took in a photo.
pub(crate) fn photos_taken(db: &Connection) -> Result<Vec<Held>, Error> {
    let mut query = db.prepare_cached(queries::PHOTOS_TAKEN)?;
    collect(query.query([])?, |row| held_of(row, 0, 1))
}

/// Whether a text stands in any line, understood or not; goes through all.
pub(crate) fn mentioned(db: &Connection, text: &str) -> Result<bool, Error> {
    Ok(db
        .prepare_cached(queries::MENTIONED)?
        .query_row([text], |_| Ok(()))
        .optional()?
        .is_some())
}

/// The amendments of a root, the greatest last.
pub(crate) fn amendments(db: &Connection, root: EntryId) -> Result<Vec<Arc<Entry>>, Error> {
    let mut query = db.prepare_cached(queries::AMENDMENTS)?;
    collect(query.query([add::blob(root)])?, |row| {
        Ok(Arc::new(parse(text(row, 0)?)?))
    })
}

/// The state of a subject.
pub(crate) fn state(db: &Connection, subject: Subject) -> Result<Option<State>, Error> {
    Ok(state_until(db, subject)?.map(|(state, _)| state))
}

/// Whether a subject is in use; none if there is no such.
pub(crate) fn alive(db: &Connection, subject: Subject) -> Result<Option<bool>, Error> {
    Ok(db
        .prepare_cached(queries::ALIVE)?
        .query_row([subject], |row| row.get(0))
        .optional()?)
}

/// The roots that have amendments.
pub(crate) fn amended(db: &Connection) -> Result<BTreeSet<EntryId>, Error> {
    let mut query = db.prepare_cached(queries::AMENDED)?;
    let id = |row: &Row| Ok(EntryId(uuid::Uuid::from_bytes(row.get(0)?)));
    Ok(collect(query.query([])?, id)?.into_iter().collect())
}

/// The state of a subject, and when the last thing that made it happened (ms).
pub(crate) fn state_until(
    db: &Connection,
    subject: Subject,
) -> Result<Option<(State, i64)>, Error> {
    let mut query = db.prepare_cached(queries::STATE)?;
    let mut rows = query.query([subject])?;
    let Some(row) = rows.next()? else {
        return Ok(None);
    };
    Ok(Some((
        State::from_json(subject, text(row, 0)?)?,
        row.get(1)?,
    )))
}

/// The living of a kind touched since a moment (ms).
pub(crate) fn living<T: DeserializeOwned>(
    db: &Connection,
    kind: &str,
    since_ms: i64,
) -> Result<Vec<T>, Error> {
    let mut query = db.prepare_cached(queries::LIVING)?;
    collect(query.query(params![kind, since_ms])?, from_json)
}

/// The past of a kind, latest first.
pub(crate) fn past<T: DeserializeOwned>(
    db: &Connection,
    kind: &str,
    limit: usize,
) -> Result<Vec<T>, Error> {
    let mut query = db.prepare_cached(queries::PAST)?;
    let limit = i64::try_from(limit).unwrap_or(i64::MAX);
    collect(query.query(params![kind, limit])?, from_json)
}

/// Packets of a crop.
pub(crate) fn packets_of_crop<T: DeserializeOwned>(
    db: &Connection,
    crop: &str,
    limit: usize,
) -> Result<Vec<T>, Error> {
    let mut query = db.prepare_cached(queries::PACKETS_OF_CROP)?;
    let limit = i64::try_from(limit).unwrap_or(i64::MAX);
    collect(query.query(params![crop, limit])?, from_json)
}

/// Readings of local days since one, by time.
pub(crate) fn readings(db: &Connection, since: NaiveDate) -> Result<Vec<Reading>, Error> {
    // No zone is further east than UTC+14 (IANA: Pacific/Kiritimati).
    let from = since
        .and_time(NaiveTime::MIN)
        .checked_sub_signed(Duration::hours(14))
        .map_or(i64::MIN, |from| from.and_utc().timestamp_millis());
    let mut query = db.prepare_cached(queries::READINGS)?;
    let mut readings: Vec<Reading> = collect(query.query([from])?, from_json)?;
    readings.retain(|reading| reading.mark.at.local.date() >= since);
    Ok(readings)
}

/// The last reading of a place and medium at or before a moment (ms), no
/// older than another.
pub(crate) fn last_reading(
    db: &Connection,
    place: PlaceId,
    of: crate::words::Medium,
    from_ms: i64,
    to_ms: i64,
) -> Result<Option<Reading>, Error> {
    let mut query = db.prepare_cached(queries::LAST_READINGS)?;
    let readings: Vec<Reading> = collect(
        query.query(params![Subject::Place(place), from_ms, to_ms])?,
        from_json,
    )?;
    Ok(readings.into_iter().find(|reading| reading.of == of))
}

/// The garden with its answers to the jobs of the living.
pub(crate) fn garden(db: &Connection) -> Result<GardenState, Error> {
    let mut garden = match state(db, Subject::Garden)? {
        Some(State::Garden(garden)) => garden,
        _ => GardenState::default(),
    };
    let mut put_off: BTreeMap<JobKey, PutOff> = BTreeMap::new();
    let mut query = db.prepare_cached(queries::JOB_ANSWERS)?;
    let answers: Vec<Content> = collect(query.query([])?, from_json)?;
    for answer in answers {
        match answer {
            Content::JobPutOff(what) => {
                let until = what.until;
                put_off.insert(
                    what.job.clone(),
                    PutOff {
                        job: what.job,
                        until,
                    },
                );
            }
            Content::JobDismissed(what) => {
                garden.dismissed.insert(what.job);
            }
            _ => {}
        }
    }
    garden.put_off = put_off.into_values().collect();
    Ok(garden)
}

/// Whether another living tray has this code.
pub(crate) fn code_in_use(db: &Connection, but: Subject, code: &str) -> Result<bool, Error> {
    Ok(db
        .prepare_cached(queries::CODE_IN_USE)?
        .query_row(params![but, code], |_| Ok(()))
        .optional()?
        .is_some())
}

/// The devices that wrote, by id; steps from one to the next on the index.
pub(crate) fn devices(db: &Connection) -> Result<Vec<DeviceId>, Error> {
    let mut query = db.prepare_cached(queries::NEXT_DEVICE)?;
    let mut devices = Vec::new();
    let mut last: Vec<u8> = Vec::new();
    loop {
        let next: Option<Vec<u8>> = query.query_row([&last], |row| row.get(0))?;
        let Some(next) = next else {
            return Ok(devices);
        };
        devices.extend(uuid::Uuid::from_slice(&next).ok().map(DeviceId));
        last = next;
    }
}

/// All lines, in the order of arrival.
pub(crate) fn lines(db: &Connection) -> Result<Vec<String>, Error> {
    let mut query = db.prepare_cached(queries::LINES)?;
    collect(query.query([])?, |row| Ok(row.get(0)?))
}

fn from_json<T: DeserializeOwned>(row: &Row) -> Result<T, Error> {
    let text = row.get_ref(0)?.as_str().map_err(rusqlite::Error::from)?;
    Ok(serde_json::from_str(text)?)
}

fn collect<T>(
    mut rows: rusqlite::Rows,
    make: impl Fn(&Row) -> Result<T, Error>,
) -> Result<Vec<T>, Error> {
    let mut all = Vec::new();
    while let Some(row) = rows.next()? {
        all.push(make(row)?);
    }
    Ok(all)
}

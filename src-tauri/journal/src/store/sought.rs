//! What is looked for by its words: read from indices alone, so that years of
//! entries are not gone through.

use crate::content::Content;
use crate::error::Error;
use crate::id::{BatchId, EntryId, PlaceId, SowingId, TrayId};
use crate::store::read::{amended, parse, text};
use crate::subject::Subject;
use rusqlite::{Connection, OptionalExtension, params};
use std::collections::BTreeSet;

/// Label codes with their trays, as each was described.
pub(crate) const CODES: &str = "SELECT iif(json_valid(line), line ->> '$.what.code', NULL),
       iif(json_valid(line), line ->> '$.what.tray', NULL)
     FROM entries WHERE kind = 'tray_described'";
/// Trays that were described with one of three spellings of a code.
pub(crate) const CODED: &str = "SELECT iif(json_valid(line), line ->> '$.what.tray', NULL)
     FROM entries WHERE kind = 'tray_described'
       AND iif(json_valid(line), line ->> '$.what.code', NULL) IN (?1, ?2, ?3)";
/// Notes as they were written, with their local time, id and number.
pub(crate) const NOTES: &str = "SELECT iif(json_valid(line), line ->> '$.what.text', NULL),
       iif(json_valid(line), line ->> '$.happened.local', NULL), id, nr
     FROM entries WHERE kind IN ('noted', 'explained')";
/// When something that weighs was said of packets.
pub(crate) const OF_PACKETS: &str = "SELECT entry, at_ms FROM touches
     WHERE subject > x'02' AND subject < x'03' AND weighs = 1";
/// Plants that began without seed.
pub(crate) const STARTED: &str = "SELECT line FROM entries WHERE kind = 'batch_started'";
/// Trays that came to a place, the last first.
pub(crate) const CAME_TO: &str = "SELECT e.line
     FROM touches AS t CROSS JOIN entries AS e ON e.nr = t.entry
     WHERE t.subject = ?1 AND t.weighs = 0 AND e.kind = 'tray_moved'
     ORDER BY t.at_ms DESC, t.entry DESC LIMIT ?2";

/// The trays of the codes in which something is found, and that; of all that
/// were ever given.
pub(crate) fn codes<T>(
    db: &Connection,
    found: impl Fn(&str) -> Option<T>,
) -> Result<Vec<(TrayId, T)>, Error> {
    let mut query = db.prepare_cached(CODES)?;
    let mut rows = query.query([])?;
    let mut all = Vec::new();
    while let Some(row) = rows.next()? {
        // Of another version they may be no text.
        let found = row.get_ref(0)?.as_str().ok().and_then(&found);
        let tray = |it: &str| it.parse::<TrayId>().ok();
        if let Some(found) = found
            && let Some(tray) = row.get_ref(1)?.as_str().ok().and_then(tray)
        {
            all.push((tray, found));
        }
    }
    Ok(all)
}

/// The trays that were ever given a code, large or small.
pub(crate) fn coded(db: &Connection, code: &str) -> Result<BTreeSet<TrayId>, Error> {
    let mut query = db.prepare_cached(CODED)?;
    let mut rows = query.query(params![code, code.to_uppercase(), code.to_lowercase()])?;
    let mut trays = BTreeSet::new();
    while let Some(row) = rows.next()? {
        trays.extend(
            row.get_ref(0)?
                .as_str()
                .ok()
                .and_then(|it| it.parse::<TrayId>().ok()),
        );
    }
    Ok(trays)
}

/// The numbers of notes that are wanted by their text and local time, and of
/// all that were amended since; those dated last come first.
pub(crate) fn notes(
    db: &Connection,
    wanted: &mut dyn FnMut(&str, &str) -> bool,
) -> Result<Vec<i64>, Error> {
    let amended = amended(db)?;
    let mut query = db.prepare_cached(NOTES)?;
    let mut rows = query.query([])?;
    let mut found: Vec<(String, i64)> = Vec::new();
    while let Some(row) = rows.next()? {
        let words = row.get_ref(0)?.as_str().unwrap_or_default();
        let at = row.get_ref(1)?.as_str().unwrap_or_default();
        let id = EntryId(uuid::Uuid::from_bytes(row.get(2)?));
        if wanted(words, at) || amended.contains(&id) {
            found.push((at.to_owned(), row.get(3)?));
        }
    }
    found.sort_by(|a, b| b.cmp(a));
    Ok(found.into_iter().map(|(_, nr)| nr).collect())
}

/// Sowings by when they happened (milliseconds since 1970 UTC), the last first.
pub(crate) fn sown(db: &Connection, when: &dyn Fn(i64) -> bool) -> Result<Vec<SowingId>, Error> {
    let mut query = db.prepare_cached(OF_PACKETS)?;
    let mut rows = query.query([])?;
    let mut found = BTreeSet::new();
    while let Some(row) = rows.next()? {
        let at_ms: i64 = row.get(1)?;
        if when(at_ms) {
            found.insert((at_ms, row.get::<_, i64>(0)?));
        }
    }
    let mut query =
        db.prepare_cached("SELECT line FROM entries WHERE nr = ?1 AND kind = 'sown'")?;
    let mut sowings = Vec::new();
    for (_, nr) in found.into_iter().rev() {
        let line: Option<String> = query.query_row([nr], |row| row.get(0)).optional()?;
        if let Some(line) = line
            && let Some(Content::Sown(what)) = parse(&line)?.content
        {
            sowings.push(what.sowing);
        }
    }
    Ok(sowings)
}

/// Plants that began without seed.
pub(crate) fn started(db: &Connection) -> Result<Vec<BatchId>, Error> {
    each_line(db, STARTED, params![], |content| match content {
        Content::BatchStarted(what) => Some(what.batch),
        _ => None,
    })
}

/// Trays that came to a place, the last first.
pub(crate) fn came_to(db: &Connection, place: PlaceId, most: usize) -> Result<Vec<TrayId>, Error> {
    let most = i64::try_from(most).unwrap_or(i64::MAX);
    let subject = Subject::Place(place);
    each_line(
        db,
        CAME_TO,
        params![subject, most],
        |content| match content {
            Content::TrayMoved(what) => Some(what.tray),
            _ => None,
        },
    )
}

fn each_line<T>(
    db: &Connection,
    sql: &str,
    values: impl rusqlite::Params,
    pick: impl Fn(Content) -> Option<T>,
) -> Result<Vec<T>, Error> {
    let mut query = db.prepare_cached(sql)?;
    let mut rows = query.query(values)?;
    let mut all = Vec::new();
    while let Some(row) = rows.next()? {
        all.extend(parse(text(row, 0)?)?.content.and_then(&pick));
    }
    Ok(all)
}

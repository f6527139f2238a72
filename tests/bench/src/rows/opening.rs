//! Opening a journal and planning its round: against fewer years, and against
//! reading the same rows.

use super::{Outcome, Row, paired, seconds};
use crate::world::{World, stamp};
use plumule_app::App;
use plumule_journal::Journal;
use rusqlite::{Connection, OpenFlags};
use std::path::Path;

pub fn rows(runs: usize, worlds: &Path) -> Outcome<Vec<Row>> {
    let home = |years| {
        let home = World::of(years, 200).kept_in(worlds)?;
        let entries = Journal::open(&home, &stamp(1))?.count()?;
        Outcome::Ok((home, entries))
    };
    let (short, few) = home(1)?;
    let (long, many) = home(50)?;
    let years = paired(runs, || open(&long), || open(&short))?;
    let living = paired(runs, || open(&long), || select(&long))?;
    let bytes = std::fs::metadata(long.join("journal/journal.db"))?.len();
    Ok(vec![
        Row {
            name: "opening and round, 50 years against 1",
            ratios: years,
            note: format!(
                "{many} entries against {few}, 200 living sowings in both; {:.0} bytes an entry on disk",
                bytes as f64 / many as f64
            ),
        },
        Row {
            name: "opening and round against SELECT of the living rows",
            ratios: living,
            note: "200 living sowings, 50 years".to_owned(),
        },
    ])
}

/// Opens the app's journal as the app does and asks for the round.
pub(super) fn open(home: &Path) -> Outcome<f64> {
    seconds(|| {
        let app = App::open(home, &stamp(1))?;
        Ok(app.round(&stamp(1))?)
    })
}

/// Opens the same database and reads the rows of what lives, and the readings
/// of the last year, as rusqlite gives them.
fn select(home: &Path) -> Outcome<f64> {
    seconds(|| {
        let path = home.join("journal/journal.db");
        let db = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_WRITE)?;
        let mut bytes = 0;
        for sql in [
            "SELECT state FROM states WHERE alive = 1 ORDER BY last_ms",
            "SELECT reading FROM readings WHERE at_ms >= (SELECT MAX(at_ms) FROM readings) - 34560000000 ORDER BY at_ms",
        ] {
            let mut query = db.prepare(sql)?;
            let mut rows = query.query([])?;
            while let Some(row) = rows.next()? {
                bytes += row.get::<_, String>(0)?.len();
            }
        }
        Ok(bytes)
    })
}

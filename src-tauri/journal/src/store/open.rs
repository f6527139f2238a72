//! Opening a database, with its pragmas in one place.

use crate::error::Error;
use crate::store::{project, read, wal};
use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags, OptionalExtension};
use std::path::Path;

/// `PLUM`, so that the file tells what it is.
const APPLICATION_ID: i64 = 0x504c_554d;
/// Version of `entries.sql`; a greater one is refused.
const ENTRIES_VERSION: i64 = 1;
/// Version of `projections.sql` and the folds; another one is made anew.
const PROJECTION_VERSION: i64 = 11;

/// Each with its reason.
const PRAGMAS: &[(&str, &str)] = &[
    // Readers do not wait for the writer, and a commit is one sync.
    ("journal_mode", "WAL"),
    // A confirmed entry survives power loss; NORMAL would lose it.
    ("synchronous", "FULL"),
    // Projections cannot point at entries that are not there.
    ("foreign_keys", "ON"),
    // A second process (a notice, a test) is waited for, ms.
    ("busy_timeout", "5000"),
    // A planted view or trigger in a file cannot run functions with effects.
    ("trusted_schema", "OFF"),
    // A damaged page is noticed when it is read.
    ("cell_size_check", "ON"),
    // Taking in years of entries stays in memory until it is written once; KiB,
    // and no more than is needed is taken (judgement).
    ("cache_size", "-65536"),
    // Phones have no folder for temporary files.
    ("temp_store", "MEMORY"),
];

/// Opens a file of ours, refusing a newer one before anything is written.
pub(crate) fn connect(
    path: &Path,
    application: i64,
    version: i64,
    expect: Expect,
) -> Result<Connection, Error> {
    if expect == Expect::Made && !path.try_exists().unwrap_or(true) {
        return Err(Error::Damaged("the file is gone".to_owned()));
    }
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE
        | OpenFlags::SQLITE_OPEN_CREATE
        | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let db = Connection::open_with_flags(path, flags)?;
    db.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
    let tables = refuse_foreign(&db, application, version)?;
    if expect == Expect::Made && tables == 0 {
        return Err(Error::Damaged("nothing is in it".to_owned()));
    }
    db.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, false)?;
    db.set_db_config(DbConfig::SQLITE_DBCONFIG_DEFENSIVE, true)?;
    // Else a statement whose plan might use a partial index is planned anew each
    // time that it is given other values.
    db.set_db_config(DbConfig::SQLITE_DBCONFIG_ENABLE_QPSG, true)?;
    for (name, value) in PRAGMAS {
        db.pragma_update(None, name, value)?;
    }
    db.set_prepared_statement_cache_capacity(64);
    if tables == 0 {
        db.pragma_update(None, "application_id", application)?;
    }
    Ok(db)
}

/// Refuses a file that is not ours or newer; how many tables and indices it
/// has.
fn refuse_foreign(db: &Connection, application: i64, version: i64) -> Result<i64, Error> {
    let found: i64 = db.query_row("PRAGMA user_version", [], |row| row.get(0))?;
    let of: i64 = db.query_row("PRAGMA application_id", [], |row| row.get(0))?;
    let tables: i64 = db.query_row("SELECT COUNT(*) FROM sqlite_schema", [], |row| row.get(0))?;
    if tables > 0 && of != application {
        return Err(Error::NotAJournal);
    }
    if found > version {
        return Err(Error::Newer {
            found,
            known: version,
        });
    }
    Ok(tables)
}

/// What is known of a database before it is opened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Expect {
    /// It may be new.
    Any,
    /// Entries were written to it: an empty or missing file is damage.
    Made,
}

/// Opens or makes a journal's database, its projections up to date. Damage to
/// the header, the schema or the newest entry is noticed; the rest is for a
/// check, since opening must not read years of entries.
pub(crate) fn journal(path: &Path, expect: Expect) -> Result<Connection, Error> {
    if wal::lost_commits(&path.with_extension("db-wal")) {
        return Err(Error::Damaged("the WAL is damaged".to_owned()));
    }
    let mut db = connect(path, APPLICATION_ID, ENTRIES_VERSION, expect)?;
    let version: i64 = db.query_row("PRAGMA user_version", [], |row| row.get(0))?;
    let tables: i64 = db.query_row("SELECT COUNT(*) FROM sqlite_schema", [], |row| row.get(0))?;
    if version < 1 && tables > 0 {
        return Err(Error::Damaged("no version".to_owned()));
    }
    if version == 0 {
        let tx = db.transaction()?;
        tx.execute_batch(include_str!("entries.sql"))?;
        tx.pragma_update(None, "user_version", ENTRIES_VERSION)?;
        tx.commit()?;
    }
    newest_is_whole(&db)?;
    if projection_version(&db)? != Some(PROJECTION_VERSION) {
        let tx = db.transaction()?;
        make_projections(&tx)?;
        project::rebuild(&tx)?;
        tx.commit()?;
    }
    Ok(db)
}

/// Reads the newest entry, so that a torn end of the file is noticed.
fn newest_is_whole(db: &Connection) -> Result<(), Error> {
    let damaged = |error: rusqlite::Error| match error.sqlite_error_code() {
        // A table or column that is not there.
        Some(rusqlite::ErrorCode::Unknown) | None => Error::Damaged(error.to_string()),
        _ => Error::Store(error),
    };
    let mut query = db
        .prepare(
            "SELECT hash, line, id, act, device, seq, lamport, kind
             FROM entries ORDER BY nr DESC LIMIT 1",
        )
        .map_err(damaged)?;
    let newest = query.query_row([], |row| {
        Ok((row.get::<_, Vec<u8>>(0)?, row.get::<_, String>(1)?))
    });
    match newest.optional().map_err(damaged)? {
        Some((hash, line)) if read::parse(&line)?.hash()[..] != hash => {
            Err(Error::Damaged("the newest entry was altered".to_owned()))
        }
        _ => Ok(()),
    }
}

/// A journal in memory, for comparison.
pub(crate) fn in_memory() -> Result<Connection, Error> {
    let db = Connection::open_in_memory()?;
    db.execute_batch(include_str!("entries.sql"))?;
    make_projections(&db)?;
    Ok(db)
}

/// Opens a copy of a journal to read it as it is, refusing what is newer or
/// not a journal.
pub(crate) fn copy(path: &Path) -> Result<Connection, Error> {
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let db = Connection::open_with_flags(path, flags)?;
    db.pragma_update(None, "trusted_schema", "OFF")?;
    if refuse_foreign(&db, APPLICATION_ID, ENTRIES_VERSION)? == 0 {
        return Err(Error::Damaged("nothing is in it".to_owned()));
    }
    Ok(db)
}

/// Brings a closed database of ours into one file: no WAL is left beside it.
pub(crate) fn into_one_file(path: &Path) -> Result<(), Error> {
    let db = connect(path, APPLICATION_ID, ENTRIES_VERSION, Expect::Made)?;
    db.pragma_update(None, "journal_mode", "DELETE")?;
    Ok(())
}

/// Opens a copy of a damaged journal to read what it still gives.
pub(crate) fn tolerant(path: &Path) -> Result<Connection, Error> {
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let db = Connection::open_with_flags(path, flags)?;
    db.pragma_update(None, "trusted_schema", "OFF")?;
    // A schema in part, and a file shorter than it says, are read all the same.
    db.pragma_update(None, "writable_schema", "ON")?;
    Ok(db)
}

fn projection_version(db: &Connection) -> Result<Option<i64>, Error> {
    let there: bool = db.query_row(
        "SELECT EXISTS (SELECT 1 FROM sqlite_schema WHERE name = 'about')",
        [],
        |row| row.get(0),
    )?;
    if !there {
        return Ok(None);
    }
    let mut query = db.prepare("SELECT number FROM about WHERE name = 'projection'")?;
    let mut rows = query.query([])?;
    Ok(rows.next()?.map(|row| row.get(0)).transpose()?)
}

fn make_projections(db: &Connection) -> Result<(), Error> {
    let tables: Vec<String> = db
        .prepare(
            "SELECT name FROM sqlite_schema WHERE type = 'table'
             AND name <> 'entries' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\'",
        )?
        .query_map([], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    for table in tables {
        db.execute_batch(&format!("DROP TABLE \"{}\"", table.replace('"', "\"\"")))?;
    }
    db.execute_batch(include_str!("projections.sql"))?;
    db.execute(
        "INSERT INTO about (name, number) VALUES ('projection', ?1)",
        [PROJECTION_VERSION],
    )?;
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fresh() -> (tempfile::TempDir, std::path::PathBuf) {
        let home = tempfile::tempdir().unwrap();
        let path = home.path().join("journal.db");
        (home, path)
    }

    #[test]
    fn pragmas_read_back() {
        let (_home, path) = fresh();
        let db = journal(&path, Expect::Any).unwrap();
        // Numbers of the settings: https://sqlite.org/pragma.html
        let want = [
            ("journal_mode", "wal"),
            ("synchronous", "2"),
            ("foreign_keys", "1"),
            ("busy_timeout", "5000"),
            ("trusted_schema", "0"),
            ("cell_size_check", "1"),
            ("cache_size", "-65536"),
            ("temp_store", "2"),
        ];
        assert_eq!(want.len(), PRAGMAS.len());
        for (name, value) in want {
            let found: String = db
                .query_row(&format!("PRAGMA {name}"), [], |row| {
                    Ok(match row.get_ref(0)? {
                        rusqlite::types::ValueRef::Integer(n) => n.to_string(),
                        other => other.as_str()?.to_owned(),
                    })
                })
                .unwrap();
            assert_eq!(found, value, "{name}");
        }
    }

    #[test]
    fn sqlite_has_the_wal_reset_fix() {
        // https://sqlite.org/wal.html: the bug is in all before 3.51.3.
        assert!(rusqlite::version_number() >= 3_051_003);
    }

    #[test]
    fn a_newer_file_is_left_untouched() {
        let (_home, path) = fresh();
        let db = journal(&path, Expect::Any).unwrap();
        db.pragma_update(None, "user_version", ENTRIES_VERSION + 1)
            .unwrap();
        drop(db);
        let before = std::fs::read(&path).unwrap();
        let error = journal(&path, Expect::Any).unwrap_err();
        assert_eq!(error.code(), "journal_newer");
        assert_eq!(std::fs::read(&path).unwrap(), before);
    }

    #[test]
    fn another_programs_file_is_refused() {
        let (_home, path) = fresh();
        let db = Connection::open(&path).unwrap();
        db.execute_batch("CREATE TABLE things (name TEXT)").unwrap();
        drop(db);
        let before = std::fs::read(&path).unwrap();
        assert_eq!(
            journal(&path, Expect::Any).unwrap_err().code(),
            "not_a_journal"
        );
        assert_eq!(std::fs::read(&path).unwrap(), before);
    }

    #[test]
    fn a_torn_file_is_damaged_and_kept() {
        let (_home, path) = fresh();
        std::fs::write(&path, b"no database at all, only some words of text").unwrap();
        let before = std::fs::read(&path).unwrap();
        assert_eq!(
            journal(&path, Expect::Any).unwrap_err().code(),
            "journal_damaged"
        );
        assert_eq!(std::fs::read(&path).unwrap(), before);
    }

    #[test]
    fn another_projection_version_is_made_anew() {
        let (_home, path) = fresh();
        let db = journal(&path, Expect::Any).unwrap();
        db.execute_batch("UPDATE about SET number = 0; CREATE TABLE of_old (x TEXT) STRICT;")
            .unwrap();
        drop(db);
        let db = journal(&path, Expect::Any).unwrap();
        assert_eq!(projection_version(&db).unwrap(), Some(PROJECTION_VERSION));
        let old: i64 = db
            .query_row(
                "SELECT COUNT(*) FROM sqlite_schema WHERE name = 'of_old'",
                [],
                |row| row.get(0),
            )
            .unwrap();
        assert_eq!(old, 0);
    }
}

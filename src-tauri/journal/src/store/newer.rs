//! A journal of a newer version: its lines are read as far as they are lines,
//! into memory, and nothing of the file is touched.

use crate::entry::Entry;
use crate::error::Error;
use crate::store::add::{self, Adding};
use crate::store::{open, project};
use rusqlite::{Connection, OpenFlags};
use std::path::Path;

/// A copy in memory, with what its entries add up to by the folds of this
/// version.
pub(crate) fn read(path: &Path) -> Result<Connection, Error> {
    let file = connect(path)?;
    let memory = open::in_memory()?;
    let tx = memory.unchecked_transaction()?;
    let mut query = file.prepare("SELECT line FROM entries ORDER BY nr")?;
    let mut rows = query.query([])?;
    while let Some(row) = rows.next()? {
        // What is no entry to this version is shown by the newer one.
        let line = row.get_ref(0)?.as_str().map_err(rusqlite::Error::from)?;
        if let Ok(entry) = Entry::parse(line) {
            let nr = add::next(&tx)?;
            Adding::to(&tx)?.entry(nr, &entry, &entry.hash())?;
        }
    }
    project::rebuild(&tx)?;
    tx.commit()?;
    Ok(memory)
}

/// Opens the file without leaving anything beside it, unless a WAL there must
/// be read too.
fn connect(path: &Path) -> Result<Connection, Error> {
    let wal = path.with_extension("db-wal");
    let waits = std::fs::metadata(wal).is_ok_and(|wal| wal.len() > 0);
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let db = if waits {
        Connection::open_with_flags(path, flags)?
    } else {
        let name = percent(path);
        let uri = format!("file:{name}?immutable=1");
        Connection::open_with_flags(uri, flags | OpenFlags::SQLITE_OPEN_URI)?
    };
    db.pragma_update(None, "trusted_schema", "OFF")?;
    Ok(db)
}

/// A path as part of a URI (RFC 3986, 2.1).
fn percent(path: &Path) -> String {
    let text = path.to_string_lossy();
    let safe = |byte: u8| byte.is_ascii_alphanumeric() || b"/-._~".contains(&byte);
    let mut name = String::new();
    for byte in text.bytes() {
        if safe(byte) {
            name.push(char::from(byte));
        } else {
            name.push_str(&format!("%{byte:02X}"));
        }
    }
    name
}

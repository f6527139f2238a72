//! When the journal is damaged: it is set aside untouched, the newest whole
//! backup takes its place, and every entry that the damaged file still gives
//! is salvaged into that.

pub(crate) mod replace;

use crate::audit::{self, Gap};
use crate::backup::{self, Backup, Contents};
use crate::error::Error;
use crate::files;
use crate::finding::Watch;
use crate::salvage::{self, Salvaged};
use crate::stamp::Stamp;
use crate::store::open::{self, Expect};
use std::path::{Path, PathBuf};

/// What a recovery did.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Recovery {
    /// Where the damaged journal is; none if there was none.
    pub set_aside: Option<PathBuf>,
    /// The backup that took its place; none if none was whole.
    pub backup: Option<String>,
    /// Entries that the backup had.
    pub in_backup: u64,
    /// Entries that the damaged file gave.
    pub read: u64,
    /// Of those, entries that the backup lacked.
    pub salvaged: u64,
    /// Lines in the damaged file that are not as they were written; left out.
    pub altered: u64,
    /// Numbers in the damaged file that could not be read, first and last:
    /// lost unless the backup had them.
    pub unread: Vec<(i64, i64)>,
    /// Entries of each device that are missing now, though later ones are
    /// here.
    pub missing: Vec<Gap>,
    /// Entries there are now.
    pub entries: u64,
    /// The device database was damaged too: habits and drafts begin anew.
    pub device_made_anew: bool,
}

/// What a recovery would do. Changes nothing.
///
/// # Errors
/// [`Error::Cancelled`], or if a file cannot be read or written.
pub fn look_over(home: &Path, watch: &mut Watch) -> Result<Recovery, Error> {
    let part = ready(home)?;
    let built = build(home, &part, watch);
    // A leftover goes the next time.
    let _ = files::remove_part(&part);
    Ok(told(built?))
}

/// Recovers a damaged journal. It must not be open. Cut short at any moment,
/// it is done again from the start and loses nothing.
///
/// # Errors
/// [`Error::Cancelled`], or if a file cannot be written; the journal is as it
/// was then.
pub fn recover(home: &Path, stamp: &Stamp, watch: &mut Watch) -> Result<Recovery, Error> {
    let part = ready(home)?;
    let built = match build(home, &part, watch) {
        Ok(built) => built,
        Err(error) => {
            // What matters is the first error; a leftover goes the next time.
            let _ = files::remove_part(&part);
            return Err(error);
        }
    };
    let replaced = replace::with(home, stamp, &part)?;
    Ok(Recovery {
        set_aside: replaced.set_aside,
        device_made_anew: replaced.device_made_anew,
        ..told(built)
    })
}

/// The folders that belong to a journal are there; where the new one is built.
fn ready(home: &Path) -> Result<PathBuf, Error> {
    let journal = home.join("journal");
    for folder in ["photos", "backups"] {
        crate::device::make_folder(&journal.join(folder))?;
    }
    Ok(journal.join("recovered.part"))
}

fn told(built: Built) -> Recovery {
    let (backup, in_backup) = match built.good {
        Some((backup, contents)) => (Some(backup.name), contents.entries),
        None => (None, 0),
    };
    Recovery {
        set_aside: None,
        backup,
        in_backup,
        read: built.salvaged.read,
        salvaged: built.salvaged.new,
        altered: built.salvaged.altered,
        unread: built.salvaged.unread,
        missing: built.missing,
        entries: built.entries,
        device_made_anew: false,
    }
}

/// The database that will take the journal's place.
struct Built {
    good: Option<(Backup, Contents)>,
    salvaged: Salvaged,
    missing: Vec<Gap>,
    entries: u64,
}

fn build(home: &Path, part: &Path, watch: &mut Watch) -> Result<Built, Error> {
    files::remove_part(part)?;
    let good = backup::newest_good(home, part, watch)?;
    let mut db = open::journal(part, Expect::Any)?;
    let salvaged = salvage::into(&mut db, &home.join("journal"), watch)?;
    let missing = audit::gaps(&db)?;
    let entries: i64 = db.query_row("SELECT COUNT(*) FROM entries", [], |row| row.get(0))?;
    Ok(Built {
        good,
        salvaged,
        missing,
        entries: u64::try_from(entries).unwrap_or(0),
    })
}

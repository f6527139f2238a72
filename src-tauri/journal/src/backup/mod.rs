//! Backups: whole copies of the journal's database in `journal/backups/`.
//!
//! A backup names its photos by their SHA-256 and leaves them where they are,
//! so a photo may only be removed when no backup names it. The identity of the
//! device is in no backup.

mod thin;

use crate::audit;
use crate::error::Error;
use crate::files::{self, at, of_name};
use crate::finding::{Findings, Progress, Step, Watch};
use crate::journal::Journal;
use crate::recover::replace;
use crate::stamp::Stamp;
use crate::store::{open, project};
use chrono::{DateTime, Duration, NaiveDate, Utc};
use rusqlite::{Connection, OptionalExtension};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// Backups made by themselves are at least this far apart, minutes
/// (judgement: a round fits in between).
const APART_MIN: i64 = 60;
/// How a backup's name ends.
const ENDING: &str = ".db";

/// A backup.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Backup {
    /// Its name, to choose it by.
    pub name: String,
    /// When it was made.
    pub at: DateTime<Utc>,
    /// The file.
    pub path: PathBuf,
}

impl Backup {
    /// When a backup of that name was made; none if it is no such name.
    #[must_use]
    pub fn made_at(name: &str) -> Option<DateTime<Utc>> {
        Some(of_name(name.strip_suffix(ENDING)?)?.0)
    }
}

/// What is inside a backup, all of it verified.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Contents {
    /// Entries.
    pub entries: u64,
    /// First and last day on which something happened; none if it is empty.
    pub days: Option<(NaiveDate, NaiveDate)>,
    /// Photos it names, by SHA-256, without those that were withdrawn.
    pub photos: BTreeSet<String>,
    /// How many of those are there.
    pub photos_found: usize,
}

/// What bringing back a backup did.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Restored {
    /// What is in the journal now.
    pub contents: Contents,
    /// Where the journal that was there is; none if none was.
    pub set_aside: Option<PathBuf>,
}

fn folder(home: &Path) -> PathBuf {
    home.join("journal/backups")
}

/// All backups in a home, the newest first.
///
/// # Errors
/// If the folder cannot be read.
pub fn list(home: &Path) -> Result<Vec<Backup>, Error> {
    let folder = folder(home);
    let mut found: Vec<_> = files::names(&folder)?
        .into_iter()
        .filter_map(|name| {
            let (at, n) = of_name(name.strip_suffix(ENDING)?)?;
            let path = folder.join(&name);
            Some(((at, n), Backup { name, at, path }))
        })
        .collect();
    found.sort_by_key(|(order, _)| *order);
    Ok(found.into_iter().rev().map(|(_, backup)| backup).collect())
}

/// Verifies a backup from end to end and tells what is inside.
///
/// # Errors
/// [`Error::Damaged`] by what was found first, [`Error::Cancelled`], or if the
/// file cannot be read, is newer or not a journal.
pub fn look_inside(home: &Path, backup: &Backup, watch: &mut Watch) -> Result<Contents, Error> {
    verify(&backup.path, &home.join("journal/photos"), watch)
}

pub(crate) fn verify(path: &Path, photos: &Path, watch: &mut Watch) -> Result<Contents, Error> {
    let db = open::copy(path)?;
    let mut findings = Findings::default();
    let met = audit::file(&db, &mut findings, watch);
    if findings.cancelled {
        return Err(Error::Cancelled);
    }
    // Entries that no copy has are no damage of this one.
    let mut bad = findings.found.iter();
    if let Some(bad) = bad.find(|finding| finding.code != "entries_missing") {
        return Err(Error::Damaged(bad.code.to_owned()));
    }
    let there = audit::on_disk(photos)?;
    let photos = met.photos();
    let found = photos.iter().filter(|name| there.contains_key(*name));
    Ok(Contents {
        entries: findings.entries,
        days: met.days,
        photos_found: found.count(),
        photos,
    })
}

/// How much is in a database, to tell whether two hold the same: the number of
/// entries and the newest one's hash.
fn extent(db: &Connection) -> Result<(i64, Option<Vec<u8>>), Error> {
    let count = db.query_row("SELECT COUNT(*) FROM entries", [], |row| row.get(0))?;
    let newest = db
        .query_row(
            "SELECT hash FROM entries ORDER BY nr DESC LIMIT 1",
            [],
            |row| row.get(0),
        )
        .optional()?;
    Ok((count, newest))
}

/// Whether the newest backup holds what the journal does.
///
/// # Errors
/// If the database fails or the folder cannot be read.
pub fn is_current(journal: &Journal) -> Result<bool, Error> {
    let Some(last) = list(journal.home())?.into_iter().next() else {
        return Ok(false);
    };
    let here = extent(journal.connection())?;
    let there = open::copy(&last.path).and_then(|db| extent(&db));
    Ok(there.is_ok_and(|there| there == here))
}

/// Whether it is time for a backup: something is not in the newest one, and
/// that is an hour old.
///
/// # Errors
/// If the database fails or the folder cannot be read.
pub fn due(journal: &Journal, now: DateTime<Utc>) -> Result<bool, Error> {
    let newest = list(journal.home())?.into_iter().next();
    let fresh = newest.is_some_and(|newest| {
        let age = now.signed_duration_since(newest.at);
        // A clock that was set back must not put backups off for years.
        age >= Duration::zero() && age < Duration::minutes(APART_MIN)
    });
    Ok(!fresh && !journal.read_only() && journal.count()? > 0 && !is_current(journal)?)
}

/// Makes a backup, verified and on disk when it returns, and removes those
/// that are not kept any longer: kept are all of two days, then 12 daily, 10
/// weekly and 9 monthly.
///
/// # Errors
/// [`Error::Damaged`] if the copy is not whole, [`Error::Cancelled`], or if a
/// file or the database fails; the backups are as they were then.
pub fn make(journal: &Journal, stamp: &Stamp, watch: &mut Watch) -> Result<Backup, Error> {
    journal.for_writing()?;
    let folder = folder(journal.home());
    let part = folder.join("backup.part");
    files::remove_part(&part)?;
    let made = copy(journal, &part, watch)
        .and_then(|()| files::free(&folder, stamp, ENDING))
        .and_then(|path| files::put(&part, &path).map(|()| path));
    let path = match made {
        Ok(path) => path,
        Err(error) => {
            // What matters is the first error; a leftover goes the next time.
            let _ = files::remove_part(&part);
            return Err(error);
        }
    };
    thin_out(journal.home(), stamp.now, &path)?;
    list(journal.home())?
        .into_iter()
        .find(|backup| backup.path == path)
        .ok_or(Error::NoBackup)
}

fn copy(journal: &Journal, part: &Path, watch: &mut Watch) -> Result<(), Error> {
    let tell = |watch: &mut Watch, done| {
        let step = Step::Copy;
        let of = 1;
        let on = watch(Progress { step, done, of });
        if on { Ok(()) } else { Err(Error::Cancelled) }
    };
    tell(watch, 0)?;
    // Meanwhile others may write; what is here now has to be in the copy.
    let least = journal.count()?;
    let to = part.to_str().ok_or_else(|| at(part)(no_text()))?;
    journal.connection().execute("VACUUM INTO ?1", [to])?;
    tell(watch, 1)?;
    let contents = verify(part, &journal.home().join("journal/photos"), watch)?;
    if contents.entries < least {
        return Err(Error::Damaged("the copy lacks entries".to_owned()));
    }
    Ok(())
}

fn no_text() -> std::io::Error {
    std::io::Error::new(std::io::ErrorKind::InvalidInput, "the path is no text")
}

fn thin_out(home: &Path, now: DateTime<Utc>, made: &Path) -> Result<(), Error> {
    let all = list(home)?;
    let times: Vec<_> = all.iter().map(|backup| backup.at).collect();
    let kept = thin::kept(&times, now);
    for (n, backup) in all.iter().enumerate() {
        if !kept.contains(&n) && backup.path != made {
            files::remove(&backup.path)?;
        }
    }
    Ok(())
}

/// Makes a backup the journal again: it is verified first, the journal that is
/// there is set aside and never deleted, and this copy gets a new identity.
/// The journal must not be open.
///
/// # Errors
/// [`Error::NoBackup`], as [`look_inside`], or if a file fails; the journal is
/// as it was then.
pub fn restore(
    home: &Path,
    stamp: &Stamp,
    name: &str,
    watch: &mut Watch,
) -> Result<Restored, Error> {
    let chosen = list(home)?.into_iter().find(|backup| backup.name == name);
    let chosen = chosen.ok_or(Error::NoBackup)?;
    let contents = look_inside(home, &chosen, watch)?;
    let part = home.join("journal/restored.part");
    files::remove_part(&part)?;
    bring(&chosen, &part)?;
    let set_aside = replace::with(home, stamp, &part)?.set_aside;
    Ok(Restored {
        contents,
        set_aside,
    })
}

/// The newest backup that is whole, brought to a path; none if none is.
pub(crate) fn newest_good(
    home: &Path,
    to: &Path,
    watch: &mut Watch,
) -> Result<Option<(Backup, Contents)>, Error> {
    for backup in list(home)? {
        match look_inside(home, &backup, watch) {
            Ok(contents) => {
                bring(&backup, to)?;
                return Ok(Some((backup, contents)));
            }
            Err(Error::Cancelled) => return Err(Error::Cancelled),
            // An older one may be whole.
            Err(_) => {}
        }
    }
    Ok(None)
}

/// Copies a verified backup and makes its projections anew: only its entries
/// were verified.
fn bring(backup: &Backup, to: &Path) -> Result<(), Error> {
    files::copy(&backup.path, to)?;
    let mut db = open::journal(to, open::Expect::Made)?;
    let tx = db.transaction()?;
    project::rebuild(&tx)?;
    Ok(tx.commit()?)
}

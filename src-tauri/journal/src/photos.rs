//! Photos: files named by their SHA-256, on disk before an entry names them,
//! and what the entries say of them.

use crate::archive::is_sha256;
use crate::audit::on_disk;
use crate::backup;
use crate::content::Content;
use crate::error::Error;
use crate::files::{self, at};
use crate::fold::Held;
use crate::id::EntryId;
use crate::journal::Journal;
use crate::stamp::Happened;
use crate::store::{open, read};
use crate::subject::Subject;
use chrono::{DateTime, Duration, NaiveDateTime, Utc};
use rusqlite::Connection;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

/// How long the file of a withdrawn photo stays, and one that no entry names
/// yet, days.
const STAYS_DAYS: i64 = 30;
/// How long what was begun and never finished stays, hours.
const PART_HOURS: i64 = 24;

/// A photo that holds.
#[derive(Clone, Debug, PartialEq)]
pub struct Photo {
    /// The entry that took it in.
    pub entry: EntryId,
    /// SHA-256 of its file.
    pub photo: String,
    /// When the camera says it was taken, by the camera's clock.
    pub taken: Option<NaiveDateTime>,
    /// When it happened.
    pub at: Happened,
    /// Whose hand.
    pub hand: String,
}

/// Whether a text is a photo's name: SHA-256 in 64 small hexadecimal digits.
#[must_use]
pub fn is_name(text: &str) -> bool {
    is_sha256(text)
}

/// Where the file of a photo is or would be; none if that is no photo's name.
#[must_use]
pub fn path(home: &Path, photo: &str) -> Option<PathBuf> {
    is_name(photo).then(|| home.join("journal/photos").join(photo))
}

/// Keeps a photo's file, on disk when it returns; its name.
///
/// # Errors
/// If it cannot be written.
pub fn keep(home: &Path, jpeg: &[u8]) -> Result<String, Error> {
    let folder = home.join("journal/photos");
    let photo = files::sha256_of(jpeg);
    let path = folder.join(&photo);
    let part = folder.join(format!("{photo}.part"));
    let written = fs::File::create(&part).and_then(|mut file| file.write_all(jpeg));
    let put = written
        .map_err(at(&part))
        .and_then(|()| files::put(&part, &path));
    if put.is_err() {
        // What matters is the first error; a leftover is swept up later.
        let _ = files::remove(&part);
    }
    put.map(|()| photo)
}

impl Journal {
    /// Photos about a subject, latest first, withdrawn ones left out.
    ///
    /// # Errors
    /// If the database fails.
    pub fn photos(&self, about: Subject) -> Result<Vec<Photo>, Error> {
        let mut found = BTreeMap::new();
        for held in read::photos(self.connection(), about)? {
            let photo = match held.content() {
                Some(Content::PhotoTaken(what)) if what.about == Some(about) => photo(&held),
                Some(Content::PhotoNamed(what)) if what.about == about => self.photo(what.taken)?,
                _ => None,
            };
            if let Some(photo) = photo {
                found.insert(photo.entry, photo);
            }
        }
        Ok(latest_first(found.into_values()))
    }

    /// Photos that have no subject yet, latest first.
    ///
    /// # Errors
    /// If the database fails.
    pub fn unnamed_photos(&self) -> Result<Vec<Photo>, Error> {
        let all = read::photos(self.connection(), Subject::Garden)?;
        let named: BTreeSet<EntryId> = all
            .iter()
            .filter_map(|held| match held.content() {
                Some(Content::PhotoNamed(what)) => Some(what.taken),
                _ => None,
            })
            .collect();
        let unnamed = all.iter().filter(|held| {
            matches!(held.content(), Some(Content::PhotoTaken(what)) if what.about.is_none())
                && !named.contains(&held.entry.id)
        });
        Ok(latest_first(unnamed.filter_map(photo)))
    }

    /// The photo that an entry took in; none if it is no photo or withdrawn.
    ///
    /// # Errors
    /// If the database fails.
    pub fn photo(&self, entry: EntryId) -> Result<Option<Photo>, Error> {
        let found = read::roots(self.connection(), entry)?;
        Ok(found.first().and_then(|(_, held)| photo(held)))
    }

    /// Removes the files of photos that were withdrawn 30 days ago or more,
    /// and of those that no entry has named for so long; their names. What a
    /// backup or a journal that was set aside names stays, and everything does
    /// while one of those cannot be read.
    ///
    /// # Errors
    /// If the database fails or a file cannot be removed.
    pub fn sweep_photos(&self, now: DateTime<Utc>) -> Result<Vec<String>, Error> {
        let folder = self.home().join("journal/photos");
        sweep_parts(&folder, now)?;
        let mut there = on_disk(&folder)?;
        if there.is_empty() {
            return Ok(Vec::new());
        }
        let old = |at: DateTime<Utc>| now.signed_duration_since(at) >= Duration::days(STAYS_DAYS);
        let mut withdrawn: BTreeMap<String, DateTime<Utc>> = BTreeMap::new();
        for held in read::photos_taken(self.connection())? {
            match (held.content(), &held.entry.content, &held.amendment) {
                (Some(Content::PhotoTaken(what)), ..) => {
                    there.remove(&what.photo);
                }
                (None, Some(Content::PhotoTaken(what)), Some(amendment)) => {
                    let last = withdrawn
                        .entry(what.photo.clone())
                        .or_insert(amendment.written);
                    *last = amendment.written.max(*last);
                }
                _ => {}
            }
        }
        let mut gone = BTreeMap::new();
        for (photo, path) in there {
            let since = match withdrawn.get(&photo) {
                Some(at) => Some(*at),
                None if read::mentioned(self.connection(), &photo)? => None,
                None => changed(&path),
            };
            if since.is_some_and(old) {
                gone.insert(photo, path);
            }
        }
        if gone.is_empty() {
            return Ok(Vec::new());
        }
        match named_elsewhere(self.home())? {
            Some(named) => gone.retain(|photo, _| !named.contains(photo)),
            None => gone.clear(),
        }
        for path in gone.values() {
            files::remove(path)?;
        }
        Ok(gone.into_keys().collect())
    }
}

fn photo(held: &Held) -> Option<Photo> {
    let Some(Content::PhotoTaken(what)) = held.content() else {
        return None;
    };
    Some(Photo {
        entry: held.entry.id,
        photo: what.photo.clone(),
        taken: what.taken,
        at: held.happened().clone(),
        hand: held.entry.hand.clone(),
    })
}

fn latest_first(photos: impl Iterator<Item = Photo>) -> Vec<Photo> {
    let mut photos: Vec<Photo> = photos.collect();
    photos.sort_by_key(|photo| std::cmp::Reverse((photo.at.instant(), photo.entry)));
    photos
}

fn changed(path: &Path) -> Option<DateTime<Utc>> {
    let modified = fs::metadata(path).and_then(|file| file.modified());
    modified.ok().map(Into::into)
}

fn sweep_parts(folder: &Path, now: DateTime<Utc>) -> Result<(), Error> {
    for name in files::names(folder)? {
        let path = folder.join(&name);
        let left = |at| now.signed_duration_since(at) >= Duration::hours(PART_HOURS);
        if name.ends_with(".part") && changed(&path).is_some_and(left) {
            files::remove(&path)?;
        }
    }
    Ok(())
}

/// The photos that backups and journals set aside name; none if one of those
/// cannot be read.
fn named_elsewhere(home: &Path) -> Result<Option<BTreeSet<String>>, Error> {
    let aside = home.join("journal/set-aside");
    let mut others: Vec<PathBuf> = backup::list(home)?
        .into_iter()
        .map(|backup| backup.path)
        .collect();
    for name in files::names(&aside)? {
        let db = aside.join(name).join("journal.db");
        if db.exists() {
            others.push(db);
        }
    }
    let mut named = BTreeSet::new();
    for other in others {
        match open::copy(&other).and_then(|db| names_in(&db)) {
            Ok(names) => named.extend(names),
            Err(_) => return Ok(None),
        }
    }
    Ok(Some(named))
}

fn names_in(db: &Connection) -> Result<Vec<String>, Error> {
    let held = read::photos_taken(db)?;
    Ok(held
        .iter()
        .filter_map(|held| photo(held).map(|photo| photo.photo))
        .collect())
}

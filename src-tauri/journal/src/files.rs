//! Files and folders of a home, moved so that a power loss leaves the old or
//! the new.

use crate::error::Error;
use crate::stamp::Stamp;
use chrono::{DateTime, NaiveDateTime, Utc};
use sha2::{Digest, Sha256};
use std::fs::{self, File};
use std::io::{self, Read};
use std::path::{Path, PathBuf};

/// A journal's database and what belongs to it, the database first: without
/// it the others are never read.
const DATABASE: [&str; 3] = ["journal.db", "journal.db-wal", "journal.db-shm"];
/// How moments are written in names.
const MOMENT: &str = "%Y%m%dT%H%M%SZ";

/// An error of the system, with the file it is about.
pub(crate) fn at(path: &Path) -> impl FnOnce(io::Error) -> Error {
    let path = path.to_owned();
    |source| Error::File { path, source }
}

/// The name of the `n`th of something made at a moment.
pub(crate) fn name(stamp: &Stamp, n: u32) -> String {
    format!("{}-{n}", stamp.now.format(MOMENT))
}

/// The moment and the number of a name.
pub(crate) fn of_name(name: &str) -> Option<(DateTime<Utc>, u32)> {
    let (moment, n) = name.rsplit_once('-')?;
    let at = NaiveDateTime::parse_from_str(moment, MOMENT).ok()?;
    Some((at.and_utc(), n.parse().ok()?))
}

/// The first name of a moment that is not taken in a folder.
pub(crate) fn free(folder: &Path, stamp: &Stamp, ending: &str) -> Result<PathBuf, Error> {
    let mut n = 1;
    loop {
        let path = folder.join(name(stamp, n) + ending);
        if !path.try_exists().map_err(at(&path))? {
            return Ok(path);
        }
        n += 1;
    }
}

/// The names in a folder; none if there is no such folder.
pub(crate) fn names(folder: &Path) -> Result<Vec<String>, Error> {
    let listed = match fs::read_dir(folder) {
        Ok(listed) => listed,
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(Vec::new()),
        Err(error) => return Err(at(folder)(error)),
    };
    let mut names = Vec::new();
    for file in listed {
        let file = file.map_err(at(folder))?;
        names.extend(file.file_name().into_string().ok());
    }
    names.sort();
    Ok(names)
}

/// Waits until a file's bytes are on disk.
pub(crate) fn sync(path: &Path) -> Result<(), Error> {
    let file = File::options().write(true).open(path).map_err(at(path))?;
    file.sync_all().map_err(at(path))
}

/// Waits until a folder's names are on disk.
pub(crate) fn sync_folder(path: &Path) -> Result<(), Error> {
    // Elsewhere a folder cannot be opened as a file.
    if cfg!(unix) {
        let folder = File::open(path).map_err(at(path))?;
        folder.sync_all().map_err(at(path))?;
    }
    Ok(())
}

/// Puts a finished file in its place, on disk when it returns.
pub(crate) fn put(part: &Path, path: &Path) -> Result<(), Error> {
    sync(part)?;
    fs::rename(part, path).map_err(at(path))?;
    path.parent().map_or(Ok(()), sync_folder)
}

/// Copies a file.
pub(crate) fn copy(from: &Path, to: &Path) -> Result<(), Error> {
    fs::copy(from, to).map(drop).map_err(at(to))
}

/// Removes a file that is of no use any more, if it is there.
pub(crate) fn remove(path: &Path) -> Result<(), Error> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(at(path)(error)),
        _ => Ok(()),
    }
}

/// Removes an unfinished database with its WAL, if it is there.
pub(crate) fn remove_part(part: &Path) -> Result<(), Error> {
    for ending in ["", "-wal", "-shm", "-journal"] {
        let mut path = part.as_os_str().to_owned();
        path.push(ending);
        remove(Path::new(&path))?;
    }
    Ok(())
}

/// SHA-256 of a file, in hexadecimal digits.
pub(crate) fn sha256(path: &Path) -> Result<String, Error> {
    let mut file = File::open(path).map_err(at(path))?;
    let mut sum = Sha256::new();
    let mut chunk = vec![0; 1 << 16];
    loop {
        let read = file.read(&mut chunk).map_err(at(path))?;
        match chunk.get(..read) {
            Some([]) | None => break,
            Some(bytes) => sum.update(bytes),
        }
    }
    Ok(hex(&sum.finalize()))
}

/// SHA-256 of bytes, in hexadecimal digits.
pub(crate) fn sha256_of(bytes: &[u8]) -> String {
    hex(&Sha256::digest(bytes))
}

/// Hexadecimal digits.
pub(crate) fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Where a journal's database is set aside: the newest such folder.
pub(crate) fn last_set_aside(journal: &Path) -> Result<Option<PathBuf>, Error> {
    let folder = journal.join("set-aside");
    let newest = names(&folder)?
        .into_iter()
        .filter_map(|name| Some((of_name(&name)?, name)))
        .max();
    Ok(newest.map(|(_, name)| folder.join(name)))
}

/// Moves a journal's database aside as it is, to a folder of its own; none if
/// there is nothing to move. What a moving that was cut short left behind
/// follows to where it went.
pub(crate) fn set_aside(journal: &Path, stamp: &Stamp) -> Result<Option<PathBuf>, Error> {
    let there = |name: &str| journal.join(name).exists();
    if !DATABASE.iter().any(|name| there(name)) {
        return Ok(None);
    }
    let to = match last_set_aside(journal)? {
        Some(begun) if !there("journal.db") => begun,
        _ => free(&journal.join("set-aside"), stamp, "")?,
    };
    fs::create_dir_all(&to).map_err(at(&to))?;
    for name in DATABASE.into_iter().filter(|name| there(name)) {
        let path = to.join(name);
        fs::rename(journal.join(name), &path).map_err(at(&path))?;
    }
    sync_folder(&to)?;
    sync_folder(&journal.join("set-aside"))?;
    sync_folder(journal)?;
    Ok(Some(to))
}

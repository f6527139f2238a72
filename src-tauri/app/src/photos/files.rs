//! The files of photos as they are looked at, and their thumbnails: a folder
//! beside the journal, in no backup, filled again as they are asked for.

use super::{THUMBNAIL, picture};
use crate::error::AppError;
use plumule_journal::stamp::Stamp;
use plumule_journal::{Journal, photos};
use std::fs;
use std::path::{Path, PathBuf};

fn thumbnail(home: &Path, photo: &str) -> Option<PathBuf> {
    photos::is_name(photo).then(|| home.join("thumbnails").join(format!("{photo}.jpg")))
}

/// The JPEG of a photo in a home, or of its thumbnail; none if there is no
/// such photo or it cannot be read.
#[must_use]
pub fn read(home: &Path, photo: &str, small: bool) -> Option<Vec<u8>> {
    let path = photos::path(home, photo)?;
    if !small {
        return fs::read(path).ok();
    }
    if let Ok(there) = fs::read(thumbnail(home, photo)?) {
        return Some(there);
    }
    let whole = fs::read(path).ok()?;
    let decoded = picture::decode(&whole, THUMBNAIL).ok()?;
    let made = picture::jpeg(&decoded.upright).ok()?;
    put_thumbnail(home, photo, &made);
    Some(made)
}

/// Keeps a thumbnail. Where it cannot be kept it is made again when it is
/// looked at.
pub(super) fn put_thumbnail(home: &Path, photo: &str, jpeg: &[u8]) {
    let Some(path) = thumbnail(home, photo) else {
        return;
    };
    let part = path.with_extension("part");
    let _ = fs::create_dir_all(home.join("thumbnails"))
        .and_then(|()| fs::write(&part, jpeg))
        .and_then(|()| fs::rename(&part, &path));
}

/// Removes the files of photos that are of no use any more, with their
/// thumbnails: withdrawn, or named by no entry, for 30 days. How many.
///
/// # Errors
/// If the journal cannot be read or a file cannot be removed.
pub fn sweep(home: &Path, stamp: &Stamp) -> Result<usize, AppError> {
    let gone = Journal::open(home, stamp)?.sweep_photos(stamp.now)?;
    for path in gone.iter().filter_map(|photo| thumbnail(home, photo)) {
        // A thumbnail without its photo is never shown.
        let _ = fs::remove_file(path);
    }
    Ok(gone.len())
}

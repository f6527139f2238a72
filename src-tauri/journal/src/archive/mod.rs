//! The journal as one file that goes anywhere: every entry as it was written,
//! the photos, and a manifest that says what must be found. The format is
//! written down in `ARCHIVE.md` beside this crate.
//!
//! What comes in may come from anyone. A file is read from end to end and
//! every hash compared before anything here is changed; no name in it is ever
//! a path.

mod limits;
mod lines;
mod manifest;
mod photos;
mod preview;
mod read;
mod seal;
mod take;
mod write;

pub use limits::*;
pub(crate) use read::is_sha256;

pub use preview::{Conflict, Matter, Preview};
pub use take::TakenIn;
pub use write::Written;

use crate::backup::{Contents, Restored};
use crate::error::Error;
use crate::finding::Watch;
use crate::journal::Journal;
use crate::stamp::Stamp;
use chrono::{DateTime, Utc};
use std::path::Path;

/// What is in an archive, all of it verified.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Inside {
    /// Entries, first and last day, the photos that are named and how many of
    /// those are in the archive.
    pub contents: Contents,
    /// When it was written.
    pub written: DateTime<Utc>,
    /// Version of the app that wrote it.
    pub app: String,
    /// It is under a passphrase.
    pub sealed: bool,
}

/// Whether a file is under a passphrase, by its first bytes; it may be no
/// archive at all.
///
/// # Errors
/// If it cannot be read.
pub fn is_sealed(path: &Path) -> Result<bool, Error> {
    seal::is_sealed(path)
}

/// Writes the whole journal to a file, under a passphrase if one is given:
/// first beside it as `.part`, then read back with every hash compared, then
/// put in its place. A damaged journal is written as far as it can be read.
///
/// # Errors
/// [`Error::Cancelled`], [`Error::Archive`] if what was read back is not what
/// was written or the passphrase is empty, or if a file fails; a file that was
/// there is as it was then.
pub fn write(
    journal: &Journal,
    stamp: &Stamp,
    to: &Path,
    passphrase: Option<&str>,
    watch: &mut Watch,
) -> Result<Written, Error> {
    write::write(journal, stamp, to, passphrase, watch)
}

/// Verifies an archive from end to end and tells what is inside.
///
/// # Errors
/// [`Error::Archive`] with what is wrong, [`Error::Cancelled`], or if the file
/// cannot be read.
pub fn look_inside(
    path: &Path,
    passphrase: Option<&str>,
    watch: &mut Watch,
) -> Result<Inside, Error> {
    read::open(path, passphrase)?.verify(watch)
}

/// Makes an archive the journal of a home, under a new identity: it is
/// verified first, a journal that is there is set aside. The journal must not
/// be open. Photos that are here already stay.
///
/// # Errors
/// As [`look_inside`], or if a file cannot be written; the journal is as it
/// was then.
pub fn restore(
    home: &Path,
    stamp: &Stamp,
    path: &Path,
    passphrase: Option<&str>,
    watch: &mut Watch,
) -> Result<Restored, Error> {
    take::restore(home, stamp, path, passphrase, watch)
}

/// What taking in an archive would bring; nothing is changed.
///
/// # Errors
/// As [`look_inside`], or if the database fails.
pub fn preview(
    journal: &Journal,
    path: &Path,
    passphrase: Option<&str>,
    watch: &mut Watch,
) -> Result<Preview, Error> {
    preview::preview(journal, path, passphrase, watch)
}

/// Takes in an archive: a union, so that the same one twice, or an old one,
/// changes nothing that is here. It is verified first and a backup made; then
/// photos that are missing here come in, then the entries, all or none.
///
/// # Errors
/// As [`look_inside`], if the backup cannot be made, or if a file or the
/// database fails; no entry was taken in then.
pub fn take_in(
    journal: &mut Journal,
    stamp: &Stamp,
    path: &Path,
    passphrase: Option<&str>,
    watch: &mut Watch,
) -> Result<TakenIn, Error> {
    take::take_in(journal, stamp, path, passphrase, watch)
}

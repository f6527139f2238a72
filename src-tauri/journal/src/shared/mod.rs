//! Several devices through a folder that any file-syncing program carries.
//!
//! ```text
//! <folder>/<device>/000001.jsonl      entries, a segment
//! <folder>/<device>/photos/<sha256>   photos
//! ```
//!
//! Each device writes into its own folder only, and only adds: lines at the
//! end of its last segment, or files. It reads all the others'. A line is
//! `{"sha256":"…","line":…}`, the hash of the entry's line and the line as it
//! was written, so that one that has come in half is told from a whole one and
//! read when the rest is there. Files of any other name, copies that a program
//! makes of a conflict among them, are passed over. Nothing depends on a clock
//! of a file, and there are no locks. What is gone there is not gone here:
//! absence means nothing.
//!
//! What is written is every entry that is here and in no file there yet,
//! whoever wrote it, so that what came by an archive goes on too. Where each
//! device is with the folder is kept in its own database; if that is lost, or
//! the folder was emptied, it begins anew and a union takes care of the rest.

mod photos;
mod place;
mod read;
mod segment;
mod write;

use crate::error::Error;
use crate::finding::Watch;
use crate::journal::Journal;
use crate::stamp::Stamp;
use crate::wish::Report;
use std::path::Path;

/// A segment is added to until it is so long, bytes: a program that carries
/// whole files carries little again each time (judgement).
pub const SEGMENT_BYTES: u64 = 256 << 10;
/// Longest segment that is read, bytes.
pub const MAX_SEGMENT_BYTES: u64 = 64 << 20;
/// Devices that are read.
pub const MAX_DEVICES: usize = 1_000;

/// What reading others' files did.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ReadReport {
    /// What became of the entries. A `damaged` number stays empty: lines that
    /// are not whole are waited for.
    pub union: Report,
    /// Other devices that have written there.
    pub devices: usize,
    /// Files with something that is not whole yet: read again the next time.
    pub waiting: usize,
    /// Photos that were not here.
    pub photos_new: usize,
}

/// What writing one's own files did.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct WriteReport {
    /// Entries that were in no file there.
    pub entries: u64,
    /// Photos that were in no folder there.
    pub photos: usize,
}

/// Reads what the other devices wrote since the last time and takes it in, as
/// by [`Journal::take_in`]: all or nothing of the entries, after a backup if
/// one is due.
///
/// # Errors
/// If the folder cannot be read, the backup cannot be made or the database
/// fails, or [`Error::Cancelled`]; no entry was taken in then.
pub fn read_others(
    journal: &mut Journal,
    stamp: &Stamp,
    folder: &Path,
    watch: &mut Watch,
) -> Result<ReadReport, Error> {
    read::read_others(journal, stamp, folder, watch)
}

/// Writes what is here and in no file there yet. Call it after
/// [`read_others`], which learns what is there.
///
/// # Errors
/// If the folder cannot be written or the database fails, or
/// [`Error::Cancelled`]; what was written so far stays and is no harm.
pub fn write_own(
    journal: &Journal,
    folder: &Path,
    watch: &mut Watch,
) -> Result<WriteReport, Error> {
    write::write_own(journal, folder, watch)
}

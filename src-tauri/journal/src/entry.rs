//! An entry: the envelope and its canonical line.

use crate::content::Content;
use crate::id::{DeviceId, EntryId};
use crate::stamp::Happened;
use chrono::{DateTime, Utc};

/// One line of the journal.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// Its id.
    pub id: EntryId,
    /// The act it was written in: the id of that act's first entry.
    pub act: EntryId,
    /// The device that wrote it.
    pub device: DeviceId,
    /// Its number on that device, from 1.
    pub seq: u64,
    /// Greater than that of every entry the device had seen.
    pub lamport: u64,
    /// When it happened.
    pub happened: Happened,
    /// When it was written.
    pub written: DateTime<Utc>,
    /// Whose hand; empty: nobody said.
    pub hand: String,
    /// Its kind, as stored.
    pub kind: String,
    /// Version of the kind.
    pub version: u32,
    /// What it says; none if the kind or version is not known here.
    pub content: Option<Content>,
    /// The canonical line: the bytes it was written with.
    pub line: String,
}

/// An entry as the timeline shows it, with its amendments.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// The root entry as it was written.
    pub entry: Entry,
    /// The act it was written in.
    pub act: EntryId,
    /// What holds after amendments; none if withdrawn or unknown.
    pub holds: Option<Content>,
    /// When it happened, after amendments.
    pub happened: Happened,
    /// Withdrawn.
    pub withdrawn: bool,
    /// Corrected.
    pub corrected: bool,
    /// Of a kind or version that is not known here.
    pub unknown: bool,
}

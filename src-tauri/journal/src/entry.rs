//! An entry: the envelope and its canonical line.
//!
//! The line is a JSON object on one line; it is kept as the bytes it was
//! written with, whether or not its kind is known here.

use crate::content::Content;
use crate::id::{DeviceId, EntryId};
use crate::stamp::Happened;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};
use serde_json::Value;
use serde_json::value::RawValue;
use sha2::{Digest, Sha256};
use std::sync::Arc;

/// Longest line taken in, bytes. The longest text the door lets in needs
/// 60 kB when all of it must be escaped; a thousand parts with their cells
/// stay under this.
pub const MAX_LINE: usize = 1 << 20;
/// Greatest `seq` and `lamport`: what every JSON reader keeps exact
/// (RFC 8259, section 6).
pub const MAX_COUNTER: i64 = 1 << 53;
/// Version of all kinds written here.
pub const KIND_VERSION: u32 = 1;

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
    pub seq: i64,
    /// Greater than that of every entry the device had seen.
    pub lamport: i64,
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

/// An entry with the SHA-256 of its line.
pub(crate) type Hashed = (Arc<Entry>, [u8; 32]);

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
    /// When the amendment that holds was made; none if there is none.
    pub amended: Option<Happened>,
    /// Withdrawn.
    pub withdrawn: bool,
    /// Corrected, in what it says or when it happened.
    pub corrected: bool,
    /// Of a kind or version that is not known here.
    pub unknown: bool,
}

/// Why a line is no entry.
#[derive(Debug, thiserror::Error)]
pub enum BadLine {
    /// Longer than [`MAX_LINE`].
    #[error("longer than {MAX_LINE} bytes")]
    TooLong,
    /// It has a line break inside.
    #[error("more than one line")]
    Broken,
    /// Not JSON, or not the envelope.
    #[error("{0}")]
    Json(#[from] serde_json::Error),
    /// `seq` is under 1, or a counter is above [`MAX_COUNTER`].
    #[error("a counter is out of range")]
    Counter,
}

#[derive(Serialize, Deserialize)]
struct Envelope<T> {
    id: EntryId,
    act: EntryId,
    device: DeviceId,
    seq: i64,
    lamport: i64,
    happened: Happened,
    written: DateTime<Utc>,
    hand: String,
    kind: String,
    v: u32,
    what: T,
}

/// What an entry is written from.
pub(crate) struct Draft<'a> {
    pub id: EntryId,
    pub act: EntryId,
    pub device: DeviceId,
    pub seq: i64,
    pub lamport: i64,
    pub happened: &'a Happened,
    pub written: DateTime<Utc>,
    pub hand: &'a str,
    pub content: &'a Content,
}

#[derive(Deserialize)]
struct Tagged {
    kind: String,
    what: Value,
}

impl Entry {
    /// Reads a line. An unknown kind or version is no error: its content is
    /// none.
    ///
    /// # Errors
    /// If the line is too long, not one line, not an envelope, or has a
    /// counter out of range. Never panics, whatever the line.
    pub fn parse(line: &str) -> Result<Self, BadLine> {
        if line.len() > MAX_LINE {
            return Err(BadLine::TooLong);
        }
        if line.contains(['\n', '\r']) {
            return Err(BadLine::Broken);
        }
        let envelope: Envelope<&RawValue> = serde_json::from_str(line)?;
        if envelope.seq < 1
            || envelope.lamport < 0
            || envelope.seq > MAX_COUNTER
            || envelope.lamport > MAX_COUNTER
        {
            return Err(BadLine::Counter);
        }
        let content = (envelope.v == KIND_VERSION)
            .then(|| content_of(&envelope.kind, envelope.what))
            .flatten();
        if content.is_none() {
            // What others must be able to read: no deeper than this is read.
            serde_json::from_str::<Value>(envelope.what.get())?;
        }
        Ok(Self {
            id: envelope.id,
            act: envelope.act,
            device: envelope.device,
            seq: envelope.seq,
            lamport: envelope.lamport,
            happened: envelope.happened,
            written: envelope.written,
            hand: envelope.hand,
            kind: envelope.kind,
            version: envelope.v,
            content,
            line: line.to_owned(),
        })
    }

    /// SHA-256 of the line.
    #[must_use]
    pub fn hash(&self) -> [u8; 32] {
        Sha256::digest(self.line.as_bytes()).into()
    }

    /// Reads a line and hashes it.
    pub(crate) fn hashed(line: &str) -> Result<Hashed, BadLine> {
        let entry = Self::parse(line)?;
        let hash = entry.hash();
        Ok((Arc::new(entry), hash))
    }

    /// The line of a new entry.
    pub(crate) fn write(draft: &Draft) -> Result<String, serde_json::Error> {
        let tagged: Tagged = serde_json::from_value(serde_json::to_value(draft.content)?)?;
        serde_json::to_string(&Envelope {
            id: draft.id,
            act: draft.act,
            device: draft.device,
            seq: draft.seq,
            lamport: draft.lamport,
            happened: draft.happened.clone(),
            written: draft.written,
            hand: draft.hand.to_owned(),
            kind: tagged.kind,
            v: KIND_VERSION,
            what: tagged.what,
        })
    }
}

fn content_of(kind: &str, what: &RawValue) -> Option<Content> {
    let kind = serde_json::to_string(kind).ok()?;
    let what = what.get();
    serde_json::from_str(&format!("{{\"kind\":{kind},\"what\":{what}}}")).ok()
}

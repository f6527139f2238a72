//! The manifest: what must be found in an archive.

use crate::device::Habits;
use chrono::{DateTime, NaiveDate, Utc};
use serde::{Deserialize, Serialize};

/// What the manifest says it is of.
pub(super) const FORMAT: &str = "plumule-journal";
/// Version of the format. It is raised only when a reader of this version
/// would get something wrong; fields and kinds of entries are added without.
pub(super) const VERSION: u32 = 1;
/// Its name in the archive.
pub(super) const MANIFEST: &str = "manifest.json";
/// The name of the entries.
pub(super) const ENTRIES: &str = "entries.jsonl";
/// What the name of a photo begins with.
pub(super) const PHOTOS: &str = "photos/";

/// What every version of it has.
#[derive(Deserialize)]
pub(super) struct Which {
    pub format: String,
    pub version: u32,
}

/// The manifest; fields that are not known are passed over.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(super) struct Manifest {
    pub format: String,
    pub version: u32,
    pub app: String,
    pub written: DateTime<Utc>,
    pub entries: Entries,
    pub days: Option<Days>,
    pub photos: Vec<Photo>,
    /// Photos that entries name and that were not there.
    #[serde(default)]
    pub photos_missing: Vec<String>,
    /// The writer's habits on its device.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub habits: Option<Habits>,
}

/// The member with the entries.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(super) struct Entries {
    pub count: u64,
    pub bytes: u64,
    pub sha256: String,
}

/// First and last day on which something happened.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub(super) struct Days {
    pub first: NaiveDate,
    pub last: NaiveDate,
}

/// A member with a photo.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(super) struct Photo {
    pub sha256: String,
    pub bytes: u64,
}

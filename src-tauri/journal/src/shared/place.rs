//! Where a device is with a folder: kept in its own database, and no more than
//! a help. Wrong or lost, more is read and written than need be.

use crate::error::Error;
use crate::files::hex;
use crate::journal::Journal;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// How far a file was read or written.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct Reached {
    /// All bytes before are done with.
    pub bytes: u64,
    /// SHA-256 of the line that ends there, to tell another file from it.
    pub last: String,
    /// Where that line begins.
    pub from: u64,
}

/// Where a device is with a folder.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub(super) struct Place {
    /// Files by their names in the folder.
    pub files: BTreeMap<String, Reached>,
    /// Entries up to this number on this copy are in files there.
    pub written: i64,
    /// And of the later ones, these.
    pub there: BTreeSet<i64>,
}

impl Place {
    /// A restored journal numbers its entries anew, under a new identity.
    fn key(journal: &Journal, folder: &Path) -> String {
        let name = folder.to_string_lossy();
        let folder = hex(&Sha256::digest(name.as_bytes()));
        format!("shared {folder} by {}", journal.device())
    }

    pub fn of(journal: &Journal, folder: &Path) -> Result<Self, Error> {
        let text = journal.habits().get(&Self::key(journal, folder))?;
        let place: Option<Self> = text.and_then(|text| serde_json::from_str(&text).ok());
        Ok(place.unwrap_or_default())
    }

    pub fn keep(&self, journal: &Journal, folder: &Path) -> Result<(), Error> {
        let text = serde_json::to_string(self)?;
        journal.habits().set(&Self::key(journal, folder), &text)
    }
}

//! The device database: what belongs to a copy on one device and is never
//! merged or backed up as the journal is.

use crate::error::Error;
use crate::id::DeviceId;
use crate::stamp::Stamp;
use chrono::{DateTime, Utc};
use std::path::Path;

/// `device.db` beside the journal's folder.
#[derive(Debug)]
pub struct Device;

impl Device {
    /// Opens or makes it.
    ///
    /// # Errors
    /// If the file cannot be opened or is newer.
    pub fn open(_home: &Path, _stamp: &Stamp) -> Result<Self, Error> {
        Err(Error::NotAJournal)
    }
    /// The identity of this copy.
    ///
    /// # Errors
    /// If the database fails.
    pub fn id(&self) -> Result<DeviceId, Error> {
        Err(Error::NotAJournal)
    }
    /// A text kept under a key.
    ///
    /// # Errors
    /// If the database fails.
    pub fn get(&self, _key: &str) -> Result<Option<String>, Error> {
        Err(Error::NotAJournal)
    }
    /// Keeps a text under a key.
    ///
    /// # Errors
    /// If the database fails.
    pub fn set(&self, _key: &str, _text: &str) -> Result<(), Error> {
        Err(Error::NotAJournal)
    }
    /// Whether a notice was delivered.
    ///
    /// # Errors
    /// If the database fails.
    pub fn delivered(&self, _key: &str) -> Result<bool, Error> {
        Err(Error::NotAJournal)
    }
    /// A notice was delivered.
    ///
    /// # Errors
    /// If the database fails.
    pub fn mark_delivered(&self, _key: &str, _at: DateTime<Utc>) -> Result<(), Error> {
        Err(Error::NotAJournal)
    }
}

//! The device database: what belongs to a copy on one device and is never
//! merged or backed up as the journal is.

use crate::archive::MAX_HABITS_BYTES;
use crate::error::Error;
use crate::id::{DeviceId, Ids};
use crate::stamp::Stamp;
use crate::store::open::{Expect, connect};
use chrono::{DateTime, Utc};
use rusqlite::{Connection, OptionalExtension, params};
use std::path::Path;

/// `PLUD`, so that the file tells what it is.
const APPLICATION_ID: i64 = 0x504c_5544;
const VERSION: i64 = 1;
/// The key of the grower's habits on this device, a JSON object that only the
/// app understands; archives carry it.
pub const HABITS: &str = "habits";
/// Where the identity is kept among the habits.
const IDENTITY: &str = "device";
/// Where it is kept that the journal beside it was made.
const MADE: &str = "journal";

/// Habits as JSON.
pub(crate) type Habits = serde_json::Map<String, serde_json::Value>;

/// `device.db` beside the journal's folder: the identity of this copy, habits
/// and drafts as texts under keys, and which notices were delivered.
#[derive(Debug)]
pub struct Device {
    db: Connection,
    newer: Option<Error>,
}

impl Device {
    /// Opens or makes it in a home; a new one gets an identity from the stamp.
    ///
    /// # Errors
    /// If the file cannot be opened, is newer, or is not ours.
    pub fn open(home: &Path, stamp: &Stamp) -> Result<Self, Error> {
        make_folder(home)?;
        let mut db = connect(
            &home.join("device.db"),
            APPLICATION_ID,
            VERSION,
            Expect::Any,
        )?;
        let tx = db.transaction_with_behavior(rusqlite::TransactionBehavior::Immediate)?;
        let version: i64 = tx.query_row("PRAGMA user_version", [], |row| row.get(0))?;
        if version == 0 {
            tx.execute_batch(include_str!("device.sql"))?;
            tx.pragma_update(None, "user_version", VERSION)?;
        }
        tx.commit()?;
        let device = Self { db, newer: None };
        if device.get(IDENTITY)?.is_none() {
            device.renew(stamp)?;
        }
        Ok(device)
    }

    /// As [`Device::open`], but one of a newer version is left as it is and
    /// stands empty in memory: what is kept there is gone at the end.
    ///
    /// # Errors
    /// As [`Device::open`], but for a newer one.
    pub fn open_or_stand_in(home: &Path, stamp: &Stamp) -> Result<Self, Error> {
        match Self::open(home, stamp) {
            Err(newer @ Error::Newer { .. }) => {
                let db = Connection::open_in_memory()?;
                db.execute_batch(include_str!("device.sql"))?;
                let device = Self {
                    db,
                    newer: Some(newer),
                };
                device.renew(stamp)?;
                Ok(device)
            }
            opened => opened,
        }
    }

    /// Why it only stands in, if it does.
    pub(crate) fn newer(&mut self) -> Option<Error> {
        self.newer.take()
    }

    /// The identity of this copy.
    ///
    /// # Errors
    /// If the database fails.
    pub fn id(&self) -> Result<DeviceId, Error> {
        self.get(IDENTITY)?
            .and_then(|text| text.parse().ok())
            .ok_or_else(|| Error::Damaged("no device identity".to_owned()))
    }

    /// Makes a new identity: after a restore, or when another copy wrote
    /// under this one.
    ///
    /// # Errors
    /// If the database fails.
    pub fn renew(&self, stamp: &Stamp) -> Result<DeviceId, Error> {
        let old = self.get(IDENTITY)?.unwrap_or_default();
        let id = DeviceId(Ids::new(stamp, &format!("device after '{old}'")).next());
        self.set(IDENTITY, &id.to_string())?;
        Ok(id)
    }

    /// What is known of the journal beside it.
    pub(crate) fn expect(&self) -> Result<Expect, Error> {
        let made = self.get(MADE)?.is_some();
        Ok(if made { Expect::Made } else { Expect::Any })
    }

    /// The journal beside it is made: from now on it is never missing.
    pub(crate) fn made(&self) -> Result<(), Error> {
        self.set(MADE, "made")
    }

    /// The habits, if any are kept and are what an archive carries.
    pub(crate) fn habits(&self) -> Result<Option<Habits>, Error> {
        let text = self.get(HABITS)?.filter(|it| it.len() <= MAX_HABITS_BYTES);
        Ok(text.and_then(|it| serde_json::from_str(&it).ok()))
    }

    /// Takes on habits, unless there are some: they are never merged.
    pub(crate) fn take_on(&self, habits: &Habits) -> Result<(), Error> {
        let text = serde_json::to_string(habits)?;
        if text.len() <= MAX_HABITS_BYTES && self.get(HABITS)?.is_none() {
            self.set(HABITS, &text)?;
        }
        Ok(())
    }

    /// A text kept under a key.
    ///
    /// # Errors
    /// If the database fails.
    pub fn get(&self, key: &str) -> Result<Option<String>, Error> {
        Ok(self
            .db
            .prepare_cached("SELECT text FROM kept WHERE key = ?1")?
            .query_row([key], |row| row.get(0))
            .optional()?)
    }

    /// Keeps a text under a key.
    ///
    /// # Errors
    /// If the database fails.
    pub fn set(&self, key: &str, text: &str) -> Result<(), Error> {
        self.db
            .prepare_cached(
                "INSERT INTO kept (key, text) VALUES (?1, ?2)
                 ON CONFLICT (key) DO UPDATE SET text = excluded.text",
            )?
            .execute([key, text])?;
        Ok(())
    }

    /// Keeps nothing under a key any more.
    ///
    /// # Errors
    /// If the database fails.
    pub fn forget(&self, key: &str) -> Result<(), Error> {
        self.db
            .prepare_cached("DELETE FROM kept WHERE key = ?1")?
            .execute([key])?;
        Ok(())
    }

    /// Whether a notice was delivered.
    ///
    /// # Errors
    /// If the database fails.
    pub fn delivered(&self, key: &str) -> Result<bool, Error> {
        Ok(self
            .db
            .prepare_cached("SELECT EXISTS (SELECT 1 FROM delivered WHERE key = ?1)")?
            .query_row([key], |row| row.get(0))?)
    }

    /// A notice was delivered; the first time holds.
    ///
    /// # Errors
    /// If the database fails.
    pub fn mark_delivered(&self, key: &str, at: DateTime<Utc>) -> Result<(), Error> {
        self.db
            .prepare_cached(
                "INSERT INTO delivered (key, at_ms) VALUES (?1, ?2) ON CONFLICT (key) DO NOTHING",
            )?
            .execute(params![key, at.timestamp_millis()])?;
        Ok(())
    }
}

/// Makes a folder and those above it.
pub(crate) fn make_folder(path: &Path) -> Result<(), Error> {
    std::fs::create_dir_all(path).map_err(|source| Error::File {
        path: path.to_owned(),
        source,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::stamp;

    #[test]
    fn keeps_its_identity_habits_and_deliveries() {
        let home = tempfile::tempdir().unwrap();
        let first = Device::open(home.path(), &stamp(1)).unwrap();
        let id = first.id().unwrap();
        first.set("habits", "{\"theme\":\"dark\"}").unwrap();
        assert!(!first.delivered("round").unwrap());
        first.mark_delivered("round", stamp(1).now).unwrap();
        first.mark_delivered("round", stamp(2).now).unwrap();
        drop(first);
        let again = Device::open(home.path(), &stamp(2)).unwrap();
        assert_eq!(again.id().unwrap(), id);
        assert_eq!(
            again.get("habits").unwrap().as_deref(),
            Some("{\"theme\":\"dark\"}")
        );
        assert_eq!(again.get("nothing").unwrap(), None);
        again.forget("habits").unwrap();
        again.forget("nothing").unwrap();
        assert_eq!(again.get("habits").unwrap(), None);
        assert!(again.delivered("round").unwrap());
        assert_ne!(again.renew(&stamp(2)).unwrap(), id);
    }

    #[test]
    fn a_newer_one_is_refused() {
        let home = tempfile::tempdir().unwrap();
        let device = Device::open(home.path(), &stamp(1)).unwrap();
        device
            .db
            .pragma_update(None, "user_version", VERSION + 1)
            .unwrap();
        drop(device);
        let before = std::fs::read(home.path().join("device.db")).unwrap();
        let error = Device::open(home.path(), &stamp(1)).unwrap_err();
        assert_eq!(error.code(), "journal_newer");
        let stands_in = Device::open_or_stand_in(home.path(), &stamp(1)).unwrap();
        stands_in.set("habits", "none").unwrap();
        let after = std::fs::read(home.path().join("device.db")).unwrap();
        assert_eq!(after, before);
    }
}

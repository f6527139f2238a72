//! Backups, archives, checks and recoveries: what long work is asked, how far
//! it is, and what came of it.

use super::Coded;
use chrono::{NaiveDate, NaiveDateTime};
use serde::{Deserialize, Serialize};

/// The screen of backups.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct KeepView {
    /// This is the demo journal, of which nothing is kept.
    pub demo: bool,
    /// Backups on this device, the newest first.
    pub backups: Vec<BackupView>,
    /// The newest backup has all that is in the journal.
    pub current: bool,
    /// The folder that is shared with other devices.
    pub folder: Option<String>,
    /// Why the last backup that was to be made by itself was not.
    pub trouble: Option<Coded>,
}

/// A backup on this device.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct BackupView {
    /// Its name, to choose it by.
    pub name: String,
    /// When it was made, local time of the device.
    pub at: NaiveDateTime,
}

/// Long work. One at a time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "work", rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum Task {
    /// Make a backup on this device.
    Backup,
    /// Check the journal from end to end.
    Check,
    /// What is in a backup.
    LookInside {
        /// Its name.
        backup: String,
    },
    /// Make a backup the journal again.
    Restore {
        /// Its name.
        backup: String,
    },
    /// Save all to one file; where, the system asks.
    SaveArchive {
        /// Under a passphrase.
        passphrase: Option<String>,
    },
    /// What is in the file that was chosen.
    LookInsideArchive {
        /// Its passphrase.
        passphrase: Option<String>,
    },
    /// Make the file that was chosen the journal.
    RestoreArchive {
        /// Its passphrase.
        passphrase: Option<String>,
    },
    /// What the file that was chosen would bring.
    PreviewArchive {
        /// Its passphrase.
        passphrase: Option<String>,
    },
    /// Take in the file that was chosen.
    TakeInArchive {
        /// Its passphrase.
        passphrase: Option<String>,
    },
    /// Take in and write what is new, by the folder that is shared.
    Share,
    /// What can be saved of a damaged journal.
    LookOver,
    /// Recover the damaged journal.
    Recover,
}

/// How far long work is.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct WorkView {
    /// Which work it is or was, by number; 0: none yet.
    pub number: u32,
    /// Under way.
    pub running: bool,
    /// `file`, `entries`, `projections`, `photos`, `copy`, `salvage` or
    /// `verify`; empty: not begun.
    pub step: String,
    /// How much of the step is done, 0 to 1; none: not known.
    pub share: Option<f64>,
    /// What came of it.
    pub outcome: Option<Outcome>,
    /// What went wrong; `cancelled` if it was called off.
    pub error: Option<crate::AppError>,
}

/// What came of long work.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "came", rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum Outcome {
    /// A backup was made.
    Backup(BackupView),
    /// The journal was checked.
    Checked {
        /// Entries read.
        entries: u32,
        /// Photos read.
        photos: u32,
        /// What is not as it should be.
        findings: Vec<Coded>,
    },
    /// What is inside.
    Inside(InsideView),
    /// It is the journal now.
    Restored {
        /// What is in it.
        inside: InsideView,
        /// The journal that was there is kept, set aside.
        set_aside: bool,
    },
    /// It was saved, and read back.
    Saved {
        /// What is in it.
        inside: InsideView,
        /// Entries that are damaged here and are not in it.
        left_out: u32,
    },
    /// No place to save it was chosen.
    NotSaved,
    /// What it would bring.
    Preview(BringsView),
    /// It was taken in.
    TakenIn(BringsView),
    /// It was shared by the folder.
    Shared {
        /// Other devices that have written there.
        devices: u32,
        /// Entries that were not here.
        new: u32,
        /// Photos that were not here.
        photos_new: u32,
        /// Files that have not come whole yet; read the next time.
        waiting: u32,
        /// Entries that were not there.
        written: u32,
        /// Photos that were not there.
        photos_written: u32,
    },
    /// What a recovery would do.
    LookedOver(RecoveryView),
    /// What a recovery did.
    Recovered(RecoveryView),
}

/// What is in a backup or a file, all of it verified.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct InsideView {
    /// Entries.
    pub entries: u32,
    /// First day on which something happened.
    pub first: Option<NaiveDate>,
    /// Last day.
    pub last: Option<NaiveDate>,
    /// Photos it names.
    pub photos: u32,
    /// Of those, how many are there and whole.
    pub photos_found: u32,
    /// When it was written, local time of the device; none for a backup, whose
    /// list says so.
    pub written: Option<NaiveDateTime>,
    /// Under a passphrase.
    pub sealed: bool,
}

/// What another device's file brings, or brought.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct BringsView {
    /// What is in it.
    pub inside: InsideView,
    /// Entries that are new here.
    pub new: u32,
    /// New sowings, trays and so on, by kind as it is stored, most first.
    pub kinds: Vec<KindNumber>,
    /// Entries that are here already.
    pub known: u32,
    /// Photos that are new here.
    pub photos_new: u32,
    /// Photos that are named and nowhere yet.
    pub photos_missing: u32,
    /// Things that both sides changed; both lines stay, the later holds.
    pub conflicts: u32,
    /// Of those, how many hold as the other side has them.
    pub theirs_hold: u32,
    /// Entries of a kind this version does not know; kept.
    pub unknown_kinds: u32,
}

/// How many entries of a kind.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct KindNumber {
    /// As it is stored.
    pub kind: String,
    /// How many.
    pub number: u32,
}

/// What a recovery of a damaged journal gives.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct RecoveryView {
    /// The backup that takes its place; none if none is whole.
    pub backup: Option<BackupView>,
    /// Entries that the backup has.
    pub in_backup: u32,
    /// Entries that only the damaged file gave.
    pub salvaged: u32,
    /// Lines that are not as they were written, left out.
    pub altered: u32,
    /// Entries of which it is known that they are lost.
    pub missing: u32,
    /// Entries there are in the end.
    pub entries: u32,
    /// Habits and drafts of the device begin anew.
    pub device_made_anew: bool,
}

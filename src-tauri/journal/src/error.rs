//! What can go wrong, and what is asked first: codes with typed arguments.
//! The sentences are in the message files, under `refused-<code>`,
//! `asks-<code>`, `error-<code>` and `finding-<code>`.

use chrono::{NaiveDate, NaiveDateTime};
use std::collections::BTreeMap;
use std::path::PathBuf;

/// An argument of a refusal or a question.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// Text as it is.
    Text(String),
    /// A plain number.
    Number(f64),
    /// A temperature, °C.
    Celsius(f64),
    /// A length, mm.
    Millimetres(f64),
    /// A day.
    Day(NaiveDate),
    /// A day and a time, local.
    Moment(NaiveDateTime),
}

/// Arguments by name.
pub type Args = BTreeMap<&'static str, Value>;

/// Why the door refuses; nothing was written.
#[derive(Clone, Debug, PartialEq)]
pub struct Refusal {
    /// One of [`crate::codes::REFUSALS`].
    pub code: &'static str,
    /// What fills its sentence.
    pub args: Args,
}

impl Refusal {
    /// Without arguments.
    #[must_use]
    pub fn new(code: &'static str) -> Self {
        Self {
            code,
            args: Args::new(),
        }
    }

    /// With an argument more.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: Value) -> Self {
        self.args.insert(name, value);
        self
    }
}

/// What the door asks before it writes; nothing was written yet.
#[derive(Clone, Debug, PartialEq)]
pub struct Question {
    /// One of [`crate::codes::QUESTIONS`].
    pub code: &'static str,
    /// What fills its sentence.
    pub args: Args,
}

impl Question {
    /// Without arguments.
    #[must_use]
    pub fn new(code: &'static str) -> Self {
        Self {
            code,
            args: Args::new(),
        }
    }

    /// With an argument more.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: Value) -> Self {
        self.args.insert(name, value);
        self
    }
}

/// What can go wrong. `Display` is for logs and names no contents of entries.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// The door refuses.
    #[error("refused: {}", .0.code)]
    Refused(Refusal),
    /// The database failed.
    #[error("the database: {0}")]
    Store(#[from] rusqlite::Error),
    /// A stored state or line cannot be read or written as JSON.
    #[error("a stored text: {0}")]
    Text(#[from] serde_json::Error),
    /// A file or folder.
    #[error("{}: {source}", path.display())]
    File {
        /// Which.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// The journal was written by a newer version; it was left untouched.
    #[error("the journal has version {found}, this program knows {known}")]
    Newer {
        /// Its version.
        found: i64,
        /// The newest known.
        known: i64,
    },
    /// The file is a database, but not a journal.
    #[error("not a journal")]
    NotAJournal,
    /// The database is damaged.
    #[error("damaged: {0}")]
    Damaged(String),
    /// It was cancelled; nothing was changed.
    #[error("cancelled")]
    Cancelled,
    /// There is no backup of that name.
    #[error("no such backup")]
    NoBackup,
    /// A file is no archive that can be taken; nothing was changed.
    #[error("the archive: {0}")]
    Archive(Fault),
}

/// Why a file is no archive that can be taken.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Fault {
    /// Something else altogether.
    #[error("not an archive of a journal")]
    NotAnArchive,
    /// Written by a newer version in a way this one cannot read.
    #[error("it has version {found}, this program knows {known}")]
    Newer {
        /// Its version.
        found: u32,
        /// The newest known.
        known: u32,
    },
    /// It is not what was written.
    #[error("{member}: {what}")]
    Damaged {
        /// Where.
        member: String,
        /// What is wrong there.
        what: String,
    },
    /// More than [`crate::archive`]'s limits allow.
    #[error("too large: {0}")]
    TooLarge(&'static str),
    /// It is under a passphrase, and none was given.
    #[error("it wants a passphrase")]
    PassphraseWanted,
    /// It is under another passphrase.
    #[error("the passphrase is wrong")]
    PassphraseWrong,
    /// No letter in it.
    #[error("the passphrase is empty")]
    PassphraseEmpty,
}

impl Fault {
    /// Damage of a member.
    pub(crate) fn damaged(member: &str, what: impl ToString) -> Self {
        Self::Damaged {
            member: member.to_owned(),
            what: what.to_string(),
        }
    }

    /// Damage of a line of the entries.
    pub(crate) fn line(number: u64, what: impl ToString) -> Self {
        Self::damaged(&format!("line {number}"), what)
    }

    fn code(&self) -> &'static str {
        match self {
            Self::NotAnArchive => "not_an_archive",
            Self::Newer { .. } => "archive_newer",
            Self::Damaged { .. } => "archive_damaged",
            Self::TooLarge(_) => "archive_too_large",
            Self::PassphraseWanted => "passphrase_wanted",
            Self::PassphraseWrong => "passphrase_wrong",
            Self::PassphraseEmpty => "passphrase_empty",
        }
    }
}

impl From<Fault> for Error {
    fn from(fault: Fault) -> Self {
        Error::Archive(fault)
    }
}

impl Error {
    /// The versions found and known, if it is about those.
    pub(crate) fn versions(&self) -> Option<(i64, i64)> {
        match self {
            Error::Newer { found, known } => Some((*found, *known)),
            _ => None,
        }
    }

    /// Its stable code: of a refusal the refusal's own, else one of
    /// [`crate::codes::ERRORS`].
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Error::Refused(refusal) => refusal.code,
            Error::Store(error) => store_code(error),
            Error::Text(_) | Error::Damaged(_) => "journal_damaged",
            Error::File { source, .. } => file_code(source),
            Error::Newer { .. } => "journal_newer",
            Error::NotAJournal => "not_a_journal",
            Error::Cancelled => "cancelled",
            Error::NoBackup => "backup_unknown",
            Error::Archive(fault) => fault.code(),
        }
    }
}

fn file_code(error: &std::io::Error) -> &'static str {
    use std::io::ErrorKind;
    match error.kind() {
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded => "disk_full",
        ErrorKind::ReadOnlyFilesystem | ErrorKind::PermissionDenied => "journal_read_only",
        _ => "file_failed",
    }
}

fn store_code(error: &rusqlite::Error) -> &'static str {
    use rusqlite::ErrorCode;
    match error.sqlite_error_code() {
        Some(ErrorCode::DiskFull) => "disk_full",
        Some(ErrorCode::ReadOnly | ErrorCode::PermissionDenied | ErrorCode::CannotOpen) => {
            "journal_read_only"
        }
        Some(ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase) => "journal_damaged",
        Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => "journal_busy",
        _ => "store_failed",
    }
}

impl From<Refusal> for Error {
    fn from(refusal: Refusal) -> Self {
        Error::Refused(refusal)
    }
}

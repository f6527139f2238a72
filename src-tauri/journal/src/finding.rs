//! What a check of the journal finds, and how long work tells how far it is.

use crate::error::{Args, Error, Value};

/// What long work is at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Step {
    /// The database file's structure.
    File,
    /// The entries, one by one.
    Entries,
    /// What the entries add up to.
    Projections,
    /// The photos.
    Photos,
    /// Copying.
    Copy,
    /// Reading what a damaged file still gives.
    Salvage,
    /// Reading an archive from end to end, every hash compared.
    Verify,
}

/// How far long work is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Progress {
    /// What it is at.
    pub step: Step,
    /// How much of the step is done.
    pub done: u64,
    /// How much there is, as far as known.
    pub of: u64,
}

/// Told how far work is; false cancels it.
pub type Watch<'a> = dyn FnMut(Progress) -> bool + 'a;

/// Tells how far work is, and fails if that cancels it.
pub(crate) fn go_on(watch: &mut Watch, progress: Progress) -> Result<(), Error> {
    if watch(progress) {
        Ok(())
    } else {
        Err(Error::Cancelled)
    }
}

/// One thing that is not as it should be.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// One of [`crate::codes::FINDINGS`].
    pub code: &'static str,
    /// What fills its sentence.
    pub args: Args,
}

impl Finding {
    /// Without arguments.
    #[must_use]
    pub fn new(code: &'static str) -> Self {
        Self {
            code,
            args: Args::new(),
        }
    }

    /// With a text more.
    #[must_use]
    pub(crate) fn text(mut self, name: &'static str, text: impl Into<String>) -> Self {
        self.args.insert(name, Value::Text(text.into()));
        self
    }

    /// With a number more.
    #[must_use]
    #[allow(
        clippy::cast_precision_loss,
        reason = "counters end at 2^53 (entry::MAX_COUNTER)"
    )]
    pub(crate) fn number(mut self, name: &'static str, number: i64) -> Self {
        self.args.insert(name, Value::Number(number as f64));
        self
    }
}

/// What a check found.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Findings {
    /// In the order of the steps.
    pub found: Vec<Finding>,
    /// Entries that were read.
    pub entries: u64,
    /// Photos that were read.
    pub photos: u64,
    /// It was cancelled before its end.
    pub cancelled: bool,
}

impl Findings {
    /// It ran to its end and all is as it should be.
    #[must_use]
    pub fn all_well(&self) -> bool {
        self.found.is_empty() && !self.cancelled
    }

    /// Whether there is a finding of a code.
    #[must_use]
    pub fn has(&self, code: &str) -> bool {
        self.found.iter().any(|finding| finding.code == code)
    }
}

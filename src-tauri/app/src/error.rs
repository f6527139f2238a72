//! What can go wrong, as the UI sees it: a code and the words.

use crate::say::Say;
use serde::Serialize;
use ts_rs::TS;

/// An error with a stable code the UI acts on, and a sentence that says what
/// to do.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export, export_to = "types.ts")]
pub struct AppError {
    /// Stable code, snake_case.
    pub code: String,
    /// What to show.
    pub say: Say,
}

impl std::fmt::Display for AppError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.code)
    }
}

impl std::error::Error for AppError {}

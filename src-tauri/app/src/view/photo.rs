//! Photos.

use chrono::NaiveDateTime;
use serde::Serialize;

/// A photo.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PhotoView {
    /// The entry that took it in: to name it or to take it out.
    pub entry: String,
    /// SHA-256 of its file: to look at it.
    pub photo: String,
    /// When it happened, local.
    pub at: NaiveDateTime,
    /// When the camera says it was taken, by the camera's clock.
    pub taken: Option<NaiveDateTime>,
    /// Whose hand; may be empty.
    pub hand: String,
    /// Its file is not here.
    pub missing: bool,
}

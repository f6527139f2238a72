//! Packets that come from a table.

use super::{BadLine, PacketForm};
use serde::{Deserialize, Serialize};

/// How a table is read.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ImportForm {
    /// What each column is, in their order: one of `ImportView::fields` or
    /// empty; none at all: guessed from the names.
    #[serde(default)]
    pub columns: Vec<String>,
    /// Packets that are here already are added once more.
    #[serde(default)]
    pub duplicates: bool,
}

/// What a table would bring.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ImportView {
    /// What a column can be; each has a message `import-field-…`.
    pub fields: Vec<String>,
    /// Its columns.
    pub columns: Vec<ImportColumn>,
    /// Packets that would be added.
    pub packets: u32,
    /// Packets that are here already, or stand in it twice.
    pub duplicates: u32,
    /// The first of all that can be read.
    pub first: Vec<ImportLine>,
    /// Lines that cannot be read.
    pub bad_lines: u32,
    /// The first of them.
    pub bad: Vec<BadLine>,
}

/// A column of a table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ImportColumn {
    /// Its name in the first line.
    pub name: String,
    /// What stands in it first.
    pub sample: String,
    /// What it is; empty: left out.
    pub field: String,
}

/// A line of a table as a packet.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ImportLine {
    /// Its number in the file, from 1.
    pub line: u32,
    /// The packet.
    pub packet: PacketForm,
    /// No longer used.
    pub retired: bool,
    /// It is here already.
    pub duplicate: bool,
}

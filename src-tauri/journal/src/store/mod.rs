//! The database: opening it, adding entries, keeping the projections, reading.

pub(crate) mod add;
pub(crate) mod making;
pub(crate) mod newer;
pub(crate) mod open;
pub(crate) mod project;
pub(crate) mod queries;
pub(crate) mod read;
mod rows;
pub(crate) mod sought;
pub(crate) mod wal;
pub(crate) mod walk;

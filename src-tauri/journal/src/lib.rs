//! The journal: entries that are only ever added, their store in SQLite, and
//! the states they add up to.
//!
//! Crops are keys here: what they mean is the agronomy's business.

pub mod content;
pub mod id;
pub mod stamp;
pub mod state;
pub mod subject;
pub mod words;

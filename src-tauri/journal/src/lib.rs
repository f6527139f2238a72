//! The journal: entries that are only ever added, their store in SQLite, and
//! the states they add up to.
//!
//! Crops are keys here: what they mean is the agronomy's business.

mod ahead;
mod amend;
pub mod archive;
mod audit;
pub mod backup;
mod check;
pub mod codes;
pub mod content;
mod device;
mod door;
pub mod entry;
pub mod error;
mod files;
pub mod finding;
mod fold;
pub mod id;
mod journal;
mod label;
mod merge;
pub mod photos;
mod recover;
mod salvage;
pub mod shared;
pub mod stamp;
mod standing;
pub mod state;
mod store;
pub mod subject;
#[cfg(test)]
mod testing;
#[cfg(test)]
mod tests;
mod touches;
pub mod wish;
pub mod words;

pub use audit::Gap;
pub use codes::ALL_CODES;
pub use device::{Device, HABITS};
pub use entry::{Entry, Line};
pub use error::{Error, Fault, Question, Refusal, Value};
pub use finding::{Finding, Findings, Progress, Step, Watch};
pub use id::Ids;
pub use journal::Journal;
pub use recover::{Recovery, look_over, recover};
pub use wish::{Answer, Report, Wish};

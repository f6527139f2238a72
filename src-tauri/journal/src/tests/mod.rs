//! Tests of the journal as a whole.

mod amending;
mod backups;
mod checking;
mod folding;
mod laws;
mod merging;
mod plans;
mod questions;
mod recovery;
mod refusals;
mod words;

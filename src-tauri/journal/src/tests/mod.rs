//! Tests of the journal as a whole.

mod amending;
mod archives;
mod backups;
mod checking;
mod folding;
mod laws;
mod merging;
mod newer;
mod plans;
mod questions;
mod recovery;
mod refusals;
mod words;

//! Tests of the journal as a whole.

mod amending;
mod archives;
mod backups;
mod care;
mod checking;
mod exchange_laws;
mod folding;
mod laws;
mod merging;
mod newer;
mod photos;
mod planned;
mod plans;
mod questions;
mod recovery;
mod refusals;
mod seed;
mod sharing;
mod words;

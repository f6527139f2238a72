//! Tests of the journal as a whole.

mod amending;
mod folding;
mod laws;
mod merging;
mod plans;
mod questions;
mod refusals;
mod words;

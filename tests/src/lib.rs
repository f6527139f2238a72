//! Checks from outside the crates.

//! Faults on purpose, and what the journal must be after each: a writer that
//! is killed, power that goes, a disk that fails or is full, bytes that flip.

pub mod chance;
pub mod crash;
pub mod fuzz;

pub mod home;
pub mod kept;
pub mod machine;
pub mod power;
mod vfs;
pub mod writes;

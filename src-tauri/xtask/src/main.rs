//! The house commands.
fn main() {}

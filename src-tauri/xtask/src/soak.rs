//! `cargo xtask soak`: the long form of what the tests do in short.

use crate::house::House;

/// Kills a writer so many times and prints what came of it.
///
/// # Errors
/// When it does not build, or anything confirmed was lost: then what.
pub fn crash(house: &House, kills: u32) -> Result<(), String> {
    let words = ["run", "--locked", "-p", "plumule-faults"];
    house
        .cargo(words)
        .args(["--bin", "crash", "--", "soak", &kills.to_string()])
        .shown()
}

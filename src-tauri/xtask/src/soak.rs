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

/// Gives wild inputs to the decoders for so many minutes and prints the
/// figures.
///
/// # Errors
/// When it does not build, or a decoder broke a promise: then which, and where
/// the input is.
pub fn fuzz(house: &House, minutes: u32) -> Result<(), String> {
    let words = ["run", "--locked", "-p", "plumule-faults"];
    house
        .cargo(words)
        .args(["--bin", "fuzz", "--", &minutes.to_string()])
        .shown()
}

/// Rings every round in every zone and prints how many.
///
/// # Errors
/// When it does not build, or a round rang twice, not at all, or in quiet hours.
pub fn clock(house: &House) -> Result<(), String> {
    let words = ["test", "--locked", "-p", "plumule-app", "--test", "clock"];
    house.cargo(words).args(["--", "--nocapture"]).shown()
}

/// Judges a simulated year of sowings whose truth is known and prints the
/// figures beside their targets.
///
/// # Errors
/// When it does not build, or a target is missed.
pub fn judgement(house: &House) -> Result<(), String> {
    println!(
        "targets: 75 to 85 % of truths; under 1 % of the living; dead ones at most at 1.7 with readings, 2.4 without"
    );
    let words = [
        "test",
        "--locked",
        "-q",
        "-p",
        "plumule-app",
        "--lib",
        "--features",
        "plumule-app/soak",
    ];
    house
        .cargo(words)
        .args([
            "judgement::soak::a_long_year",
            "--",
            "--exact",
            "--nocapture",
        ])
        .shown()
}

//! Whether the agronomy compiles for a target that has no system under it.
//!
//! The toolchain's own standard library for that target is used if it is
//! installed, else that of Debian's second compiler.

use crate::house::House;
use crate::second::{by_debians, sysroot};
use crate::step::Outcome;

const TARGET: &str = "wasm32-unknown-unknown";

/// Checks it by whichever way there is.
///
/// # Errors
/// All that cargo printed.
pub fn check(house: &House) -> Outcome {
    let check = house
        .cargo(["check", "--locked", "-p", "plumule-agronomy", "--lib"])
        .args(["--target", TARGET]);
    if sysroot("rustc").is_some_and(|root| root.join("lib/rustlib").join(TARGET).is_dir()) {
        return check.kept().map(|_| String::new());
    }
    match by_debians(house, check)? {
        Some(check) => check.kept().map(|_| "by Debian's compiler".into()),
        None => Ok(format!(
            "not checked: target not installed; rustup target add {TARGET}"
        )),
    }
}

//! Whether the shell's Rust compiles for phones. Not Kotlin or Swift, and
//! nothing is linked: that needs the makers' kits.
//!
//! A check never runs what C compilers make, so the host's stands in for
//! Android's, and for Apple's one that makes empty files.

use std::fs;
use std::path::Path;

use crate::command::Words;
use crate::house::House;
use crate::second::by_debians;
use crate::step::Outcome;
use crate::ui;

const ANDROID: &str = "aarch64-linux-android";
const IPHONE: &str = "aarch64-apple-ios";

/// A compiler that makes what it is told to, with nothing in it.
const STAND_IN: &str = "#!/bin/sh
while [ $# -gt 0 ]; do
  case \"$1\" in
    -o) shift; : > \"$1\" ;;
  esac
  shift
done
";

/// Checks both, at once.
///
/// # Errors
/// All that cargo printed.
pub fn check(house: &House) -> Outcome {
    ui::built(house, Words::KeptBack)?;
    let tools = house.empty_folder("iphone")?;
    let compiler = tools.join("cc");
    stand_in(&compiler)?;
    let check = house
        .cargo(["check", "--locked", "-p", "plumule", "--lib"])
        .args(["--target", ANDROID, "--target", IPHONE])
        .env("RUSTFLAGS", "-D warnings")
        .env("CC_aarch64_linux_android", "gcc")
        .env("AR_aarch64_linux_android", "ar")
        .env("CC_aarch64_apple_ios", &compiler)
        .env("AR_aarch64_apple_ios", "true")
        .env("SDKROOT", &tools)
        .env("IPHONEOS_DEPLOYMENT_TARGET", "14.0");
    match by_debians(house, check)? {
        Some(check) => check
            .kept()
            .map(|_| "Android and iPhone, by Debian's compiler".into()),
        None => Ok("not checked: rustc-web and rust-web-src cannot be had here".into()),
    }
}

#[cfg(unix)]
fn stand_in(path: &Path) -> Result<(), String> {
    use std::os::unix::fs::PermissionsExt;
    let told = |e: std::io::Error| format!("{}: {e}", path.display());
    fs::write(path, STAND_IN).map_err(told)?;
    fs::set_permissions(path, fs::Permissions::from_mode(0o755)).map_err(told)
}

#[cfg(not(unix))]
fn stand_in(path: &Path) -> Result<(), String> {
    fs::write(path, STAND_IN).map_err(|e| format!("{}: {e}", path.display()))
}

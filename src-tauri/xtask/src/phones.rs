//! Whether the shell's Rust compiles for phones. Not Kotlin or Swift, and
//! nothing is linked: that needs the makers' kits.
//!
//! A check never runs what C compilers make, so one that makes empty files
//! stands in for the makers'.

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
    let tools = house.empty_folder("phones")?;
    let compiler = tools.join("cc");
    stand_in(&compiler)?;
    let mut check = house
        .cargo(["check", "--locked", "-p", "plumule", "--lib"])
        .env("RUSTFLAGS", "-D warnings")
        .env("SDKROOT", &tools)
        .env("IPHONEOS_DEPLOYMENT_TARGET", "14.0");
    for target in [ANDROID, IPHONE] {
        let tool = |what| format!("{what}_{}", target.replace('-', "_"));
        check = check
            .args(["--target", target])
            .env(&tool("CC"), &compiler)
            .env(&tool("AR"), "true");
    }
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

//! Debian's second Rust compiler, which comes with the source of a standard
//! library that cargo can build for targets that are not installed.

use std::fs;
use std::path::PathBuf;

use crate::command::Command;
use crate::house::House;
use crate::need;

const DEBIANS: &str = "/usr/bin/rustc";
const PACKAGES: [&str; 2] = ["rustc-web", "rust-web-src"];

/// Under the target folder, of all that this compiler checks: what runs on the
/// host is built once. Apart from the other's, or the two would throw out each
/// other's work.
const FOLDER: &str = "second";

/// The same cargo check by that compiler; installs it if it can be had, none if
/// it cannot.
///
/// # Errors
/// When apt fails.
pub fn by_debians(house: &House, check: Command) -> Result<Option<Command>, String> {
    let wanted = wanted(house)?;
    if !has_source(wanted) && is_offered(wanted) {
        need::install(&PACKAGES)?;
    }
    if !has_source(wanted) {
        return Ok(None);
    }
    let check = check
        .args(["-Zbuild-std=std,panic_abort"])
        // Nothing of it is run, so nothing need be fast.
        .args(["--config", "profile.dev.package.\"*\".opt-level=0"])
        .env("RUSTC", DEBIANS)
        .env("RUSTC_BOOTSTRAP", "1")
        .env("CARGO_TARGET_DIR", house.target.join(FOLDER));
    Ok(Some(check))
}

/// Where a compiler keeps its libraries.
pub fn sysroot(rustc: &str) -> Option<PathBuf> {
    let text = Command::new(rustc)
        .args(["--print", "sysroot"])
        .text()
        .ok()?;
    Some(PathBuf::from(text.trim()))
}

/// The oldest Rust that the workspace allows.
fn wanted(house: &House) -> Result<(u32, u32), String> {
    let manifest = fs::read_to_string(house.path("Cargo.toml")).map_err(|e| e.to_string())?;
    rust_version(&manifest).ok_or_else(|| "Cargo.toml has no rust-version".into())
}

fn rust_version(manifest: &str) -> Option<(u32, u32)> {
    let line = manifest
        .lines()
        .find_map(|line| line.strip_prefix("rust-version = "))?;
    need::version(line.trim_matches('"'))
}

/// Whether Debian's compiler is there, new enough, with the library's source.
fn has_source(wanted: (u32, u32)) -> bool {
    let told = Command::new(DEBIANS).args(["--version"]).text();
    let version = told.ok().and_then(|text| compiler_version(&text));
    let source = sysroot(DEBIANS).map(|root| root.join("lib/rustlib/src/rust/library/Cargo.lock"));
    version.is_some_and(|have| have >= wanted) && source.is_some_and(|file| file.is_file())
}

fn compiler_version(text: &str) -> Option<(u32, u32)> {
    need::version(text.strip_prefix("rustc ")?)
}

/// Whether apt has it, new enough.
fn is_offered(wanted: (u32, u32)) -> bool {
    let [compiler, _] = PACKAGES;
    let told = Command::new("apt-cache").args(["policy", compiler]).text();
    told.ok()
        .and_then(|text| candidate(&text))
        .is_some_and(|have| have >= wanted)
}

fn candidate(policy: &str) -> Option<(u32, u32)> {
    let line = policy
        .lines()
        .find_map(|l| l.trim().strip_prefix("Candidate: "))?;
    need::version(line)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn versions_are_read_where_they_stand() {
        assert_eq!(
            rust_version("[x]\nrust-version = \"1.95\"\n"),
            Some((1, 95))
        );
        assert_eq!(
            compiler_version("rustc 1.96.0 (ac68faa20 2026-05-25)\n"),
            Some((1, 96))
        );
        let policy = "rustc-web:\n  Installed: (none)\n  Candidate: 1.96.0+dfsg1-1~deb12u2\n";
        assert_eq!(candidate(policy), Some((1, 96)));
        assert_eq!(candidate("rustc-web:\n  Candidate: (none)\n"), None);
        assert_eq!(candidate(""), None);
    }
}

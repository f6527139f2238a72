//! What the machine needs, and putting it there on Debian and its kin.

use std::collections::BTreeSet;
use std::path::Path;

use crate::command::Command;

/// To build and open the app: the web view with its headers, a C compiler, and
/// a display and message bus for machines that have none.
pub const TO_RUN: &[&str] = &[
    "build-essential",
    "dbus",
    "libwebkit2gtk-4.1-dev",
    "librsvg2-dev",
    "pkg-config",
    "xvfb",
];

/// To check it as well: the list of files, two web views that can be driven, and
/// readers of archives, pictures, documents and square codes that are not ours.
pub const TO_TEST: &[&str] = &[
    "chromium",
    "git",
    "imagemagick",
    "jq",
    "libimage-exiftool-perl",
    "poppler-utils",
    "unzip",
    "webkit2gtk-driver",
    "zbar-tools",
];

/// To measure it: what slows a disk down.
pub const TO_MEASURE: &[&str] = &["strace"];

/// Node as Vite asks for it, npm as it comes with that Node.
const NODE: (u32, u32) = (20, 19);
const NPM: (u32, u32) = (10, 0);

const ELSEWHERE: &str = "\
this machine has no apt, so install these yourself and add --as-is:
  Fedora and its kin: gcc gcc-c++ make pkgconf webkit2gtk4.1-devel librsvg2-devel
      dbus-daemon xorg-x11-server-Xvfb
  Arch and its kin: base-devel webkit2gtk-4.1 librsvg dbus xorg-server-xvfb
  macOS: the Xcode command line tools (`xcode-select --install`)
  Windows: the C++ build tools of Visual Studio; the WebView2 runtime
The end-to-end checks and the pictures need WebKitWebDriver, so Linux.";

/// Installs those packages that are missing, and says which.
///
/// # Errors
/// On a system without apt, when `as_is` was not asked for; when apt fails.
pub fn packages(wanted: &[&[&'static str]], as_is: bool) -> Result<(), String> {
    if as_is {
        return Ok(());
    }
    if !Path::new("/usr/bin/apt-get").exists() {
        return Err(ELSEWHERE.into());
    }
    let ubuntu = std::fs::read_to_string("/etc/os-release").is_ok_and(|text| is_ubuntu(&text));
    let wanted: Vec<&str> = wanted
        .concat()
        .into_iter()
        .map(|p| named(p, ubuntu))
        .collect();
    let missing = missing(&wanted, &installed(&wanted));
    if missing.is_empty() {
        return Ok(());
    }
    println!("installing: {}", missing.join(" "));
    apt(&["update"])?;
    install(&missing)
}

/// Installs packages that apt knows already.
///
/// # Errors
/// When apt fails.
pub fn install(packages: &[&str]) -> Result<(), String> {
    let mut words = vec!["install", "-y", "--no-install-recommends"];
    words.extend(packages);
    apt(&words)
}

/// Says whether Node and npm are there and new enough.
///
/// # Errors
/// A sentence that says which is missing or too old.
pub fn node() -> Result<(), String> {
    let npm = if cfg!(windows) { "npm.cmd" } else { "npm" };
    for (program, call, least) in [("Node", "node", NODE), ("npm", npm, NPM)] {
        let (major, minor) = least;
        let wanted = format!("{program} {major}.{minor} or newer is needed to build the UI");
        let found = Command::new(call)
            .args(["--version"])
            .text()
            .map_err(|_| format!("{wanted}, and there is none here"))?;
        if version(&found).is_none_or(|have| have < least) {
            return Err(format!("{wanted}; this is {}", found.trim()));
        }
    }
    Ok(())
}

/// Major and minor number of a version as programs print it.
pub fn version(text: &str) -> Option<(u32, u32)> {
    let mut numbers = text.trim().trim_start_matches('v').split('.');
    let major = numbers.next()?.parse().ok()?;
    let minor = numbers.next()?.parse().ok()?;
    Some((major, minor))
}

/// Which of `wanted` dpkg does not list as installed.
fn missing<'a>(wanted: &[&'a str], dpkg: &str) -> Vec<&'a str> {
    let there: BTreeSet<&str> = dpkg
        .lines()
        .filter_map(|line| line.strip_suffix(" installed"))
        .collect();
    let mut missing: Vec<&str> = wanted
        .iter()
        .copied()
        .filter(|p| !there.contains(p))
        .collect();
    missing.dedup();
    missing
}

/// What dpkg tells of them; it fails on a name that it has never heard, so each
/// is asked about alone.
fn installed(wanted: &[&str]) -> String {
    wanted
        .iter()
        .filter_map(|package| {
            Command::new("dpkg-query")
                .args(["-W", "-f", "${Package} ${db:Status-Status}\n", package])
                .text()
                .ok()
        })
        .collect()
}

/// Whether what `/etc/os-release` says is Ubuntu.
pub fn is_ubuntu(os_release: &str) -> bool {
    os_release.lines().any(|line| line == "ID=ubuntu")
}

fn named(package: &'static str, ubuntu: bool) -> &'static str {
    match package {
        "chromium" if ubuntu => "chromium-browser",
        other => other,
    }
}

fn apt(words: &[&str]) -> Result<(), String> {
    let mut line = vec!["apt-get", "-q", "-o", "DPkg::Lock::Timeout=300"];
    line.extend(words);
    let frontend = "DEBIAN_FRONTEND=noninteractive";
    if is_root() {
        let quiet = Command::new("env").args([frontend]).args(line);
        return quiet.kept().map(|_| ());
    }
    // Not `sudo -n`: a person at the terminal may be asked for a password.
    let sudo = Command::new("sudo").args(["env", frontend]).args(line);
    sudo.asking().shown()
}

fn is_root() -> bool {
    Command::new("id")
        .args(["-u"])
        .text()
        .is_ok_and(|id| id.trim() == "0")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_dpkg_lists_as_installed_is_there() {
        let dpkg = "git installed\nxvfb config-files\ndbus not-installed\n";
        assert_eq!(
            missing(&["dbus", "git", "xvfb", "unheard-of"], dpkg),
            ["dbus", "xvfb", "unheard-of"]
        );
        assert!(missing(&["git"], dpkg).is_empty());
        assert_eq!(missing(&["gi"], dpkg), ["gi"]);
    }

    #[test]
    fn versions_compare_as_numbers() {
        assert_eq!(version("v20.20.2\n"), Some((20, 20)));
        assert_eq!(version("11.19.1"), Some((11, 19)));
        assert!(version("v20.9.0").unwrap() < NODE);
        assert!(version("v100.0.0").unwrap() > NODE);
        assert_eq!(version("not a version"), None);
    }

    #[test]
    fn ubuntu_is_told_from_debian() {
        assert!(is_ubuntu("NAME=\"Ubuntu\"\nID=ubuntu\nID_LIKE=debian\n"));
        assert!(!is_ubuntu("ID=debian\nID_LIKE=ubuntu\n"));
        assert_eq!(named("chromium", true), "chromium-browser");
        assert_eq!(named("chromium", false), "chromium");
    }
}

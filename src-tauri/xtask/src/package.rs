//! `cargo xtask package`: a Debian package, tried in a clean root.

use std::fs;
use std::path::{Path, PathBuf};

use crate::command::{Command, Words};
use crate::house::House;
use crate::{app, need, ui};

/// The CLI that makes packages, as `gen/android` names it too.
const CLI: &str = "@tauri-apps/cli@2.12.5";

/// What makes a clean root.
const PACKAGES: &[&str] = &["mmdebstrap"];

/// Run in the clean root: the app stays open until it is stopped, and its
/// window is there by name.
const OPEN: &str = "\
set -e
export HOME=/root LANG=C.UTF-8 NO_AT_BRIDGE=1 LIBGL_ALWAYS_SOFTWARE=1 GDK_BACKEND=x11
export WEBKIT_DISABLE_DMABUF_RENDERER=1
Xvfb :1 -screen 0 1280x1024x24 -nolisten tcp >/dev/null 2>&1 &
display=$!
export DISPLAY=:1
dbus-run-session -- plumule >/tmp/said 2>&1 &
app=$!
found=no
for second in $(seq 60); do
  sleep 1
  kill -0 $app || break
  if xwininfo -root -tree 2>/dev/null | grep -q '\"Plumule\"'; then found=yes; break; fi
done
if [ $found = yes ]; then sleep 3; kill -0 $app || found=ended; fi
pkill -x plumule || true
kill $display
wait || true
cat /tmp/said
[ $found = yes ]
";

/// Builds it and tries it.
///
/// # Errors
/// All that the tools printed.
pub fn package(house: &House, debug: bool, as_is: bool) -> Result<(), String> {
    need::node()?;
    need::packages(&[need::TO_RUN, PACKAGES], as_is)?;
    println!("building the UI");
    ui::build(house, Words::Shown)?;
    println!("building the app (some minutes, the first time)");
    if debug {
        app::for_tests(house, Words::Shown)?;
    } else {
        app::for_people(house, Words::Shown)?;
    }
    println!("building the package");
    Command::new("npx")
        .args(["--yes", CLI, "bundle", "--bundles", "deb", "--ci"])
        .args(debug.then_some("--debug"))
        .args(["--config", "{\"bundle\":{\"active\":true}}"])
        .folder(house.path("src-tauri"))
        .env("CARGO_TARGET_DIR", &house.target)
        .shown()?;
    let profile = if debug { "debug" } else { "release" };
    let package = newest(&house.target.join(profile).join("bundle/deb"))?;
    println!("{}\ntrying it in a clean root", package.display());
    in_clean_root(house, &package)?;
    println!(
        "it installs there, and its window opens\n\
         No AppImage is made: the tool for it fetches programs from the network while it \
         builds (linuxdeploy and its plugins), which this command does not allow itself."
    );
    Ok(())
}

fn newest(folder: &Path) -> Result<PathBuf, String> {
    let told = |e: std::io::Error| format!("{}: {e}", folder.display());
    let mut packages = Vec::new();
    for entry in fs::read_dir(folder).map_err(told)? {
        let entry = entry.map_err(told)?;
        let made = entry
            .metadata()
            .and_then(|it| it.modified())
            .map_err(told)?;
        if entry.path().extension().is_some_and(|it| it == "deb") {
            packages.push((made, entry.path()));
        }
    }
    packages.sort();
    let newest = packages.pop().map(|(_, path)| path);
    newest.ok_or_else(|| format!("{}: there is no package", folder.display()))
}

/// A root with nothing but what the package asks for, a display, a message bus
/// and a means to see windows.
fn in_clean_root(house: &House, package: &Path) -> Result<(), String> {
    let folder = house.empty_folder("package")?;
    let script = folder.join("open.sh");
    fs::write(&script, OPEN).map_err(|e| format!("{}: {e}", script.display()))?;
    let copy = |path: &Path, to: &str| format!("--customize-hook=copy-in {} {to}", path.display());
    let inside = |command: &str| format!("--customize-hook=chroot \"$1\" {command}");
    let system =
        fs::read_to_string("/etc/os-release").map_err(|e| format!("/etc/os-release: {e}"))?;
    let codename = codename(&system).ok_or("/etc/os-release does not name this system")?;
    let components = if need::is_ubuntu(&system) {
        "main,universe"
    } else {
        "main"
    };
    let named = package.file_name().unwrap_or_default().to_string_lossy();
    Command::new("mmdebstrap")
        .args(["--variant=apt", "--mode=auto", "--quiet"])
        .args(["--include=dbus,xvfb,x11-utils,procps"])
        .args([copy(package, "/tmp"), copy(&script, "/tmp")])
        .args([inside(&format!(
            "apt-get install -q -y --no-install-recommends \"/tmp/{named}\""
        ))])
        .args([inside("sh /tmp/open.sh")])
        .args([&format!("--components={components}"), codename, "/dev/null"])
        .kept()
        .map(|_| ())
}

/// The name of the release this runs on, which the clean root is one of too.
fn codename(os_release: &str) -> Option<&str> {
    let mut lines = os_release.lines();
    let name = lines.find_map(|line| line.strip_prefix("VERSION_CODENAME="))?;
    Some(name.trim_matches('"'))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_system_is_known_by_its_codename() {
        assert_eq!(
            codename("ID=debian\nVERSION_CODENAME=bookworm\n"),
            Some("bookworm")
        );
        assert_eq!(codename("VERSION_CODENAME=\"noble\"\n"), Some("noble"));
        assert_eq!(codename("ID=other\n"), None);
    }
}

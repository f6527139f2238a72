//! A display and a message bus where there are none, or none to be disturbed.

use std::env;
use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::Child;

use crate::command::Command;

/// A virtual display, there until it is dropped.
pub struct Display {
    server: Child,
    name: String,
}

impl Display {
    /// Starts one that any phone-sized window fits on, at a free number.
    ///
    /// # Errors
    /// When Xvfb is not there or does not come up.
    pub fn start() -> Result<Self, String> {
        Self::of(Command::new("Xvfb").args(["-screen", "0", "1280x1024x24"]))
    }

    /// Starts one as large as a phone's, its picture in a file of that folder.
    ///
    /// # Errors
    /// As [`Display::start`].
    pub fn kept_in(folder: &Path) -> Result<Self, String> {
        let server = Command::new("Xvfb").args(["-screen", "0", "412x915x24"]);
        Self::of(server.args(["-fbdir"]).args([folder]))
    }

    fn of(server: Command) -> Result<Self, String> {
        let mut server = server
            .args(["-displayfd", "1", "-nolisten", "tcp"])
            .started()?;
        let mut number = String::new();
        if let Some(out) = server.stdout.take() {
            BufReader::new(out)
                .read_line(&mut number)
                .map_err(|e| format!("Xvfb did not name its display: {e}"))?;
        }
        let name = format!(":{}", number.trim());
        let display = Self { server, name };
        if number.trim().is_empty() {
            return Err("Xvfb ended before it had a display".into());
        }
        Ok(display)
    }

    /// The command, on this display and no other.
    pub fn on(&self, command: Command) -> Command {
        command
            .env("DISPLAY", &self.name)
            .env("GDK_BACKEND", "x11")
            .without("WAYLAND_DISPLAY")
    }
}

impl Drop for Display {
    fn drop(&mut self) {
        // It may have ended by itself; either way it is gone.
        let _ = self.server.kill();
        let _ = self.server.wait();
    }
}

/// Whether a window could be shown to a person here.
pub fn is_there() -> bool {
    let set = |name| env::var_os(name).is_some_and(|value| !value.is_empty());
    !cfg!(target_os = "linux") || set("DISPLAY") || set("WAYLAND_DISPLAY")
}

/// Whether there is a session's message bus.
pub fn has_bus() -> bool {
    let by_name = env::var_os("DBUS_SESSION_BUS_ADDRESS").is_some();
    let by_place = env::var_os("XDG_RUNTIME_DIR")
        .is_some_and(|folder| Path::new(&folder).join("bus").exists());
    !cfg!(target_os = "linux") || by_name || by_place
}

/// That program with a message bus of its own, which ends with it.
pub fn with_bus(program: impl AsRef<std::ffi::OsStr>) -> Command {
    Command::new("dbus-run-session")
        .args(["--"])
        .args([program])
}

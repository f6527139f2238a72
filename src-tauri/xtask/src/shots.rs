//! `cargo xtask shots`: pictures of every screen of the real app.

use std::ffi::OsStr;
use std::path::Path;

use crate::command::{Command, Words};
use crate::display::Display;
use crate::house::House;
use crate::{app, display, need, ui};

/// Builds the app for tests and has it driven through its screens, in all looks
/// or in one.
///
/// # Errors
/// A sentence, or the output of what failed.
pub fn shots(house: &House, folder: &Path, only: Option<&str>, as_is: bool) -> Result<(), String> {
    need::node()?;
    need::packages(&[need::TO_RUN, need::TO_TEST], as_is)?;
    ui::build(house, Words::Shown)?;
    println!("building the app for tests");
    let app = app::for_tests(house, Words::Shown)?;
    let folder = std::path::absolute(folder).map_err(|e| e.to_string())?;
    std::fs::create_dir_all(&folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    println!("taking the pictures");
    let mut shots = drive(house, "shots", &app)?.env("PLUMULE_SHOTS", &folder);
    if let Some(look) = only {
        shots = shots.env("PLUMULE_LOOK", look);
    }
    shots.run()?;
    println!("the pictures are in {}", folder.display());
    Ok(())
}

/// A test of the crate `plumule-tests` that drives the real app, on a display
/// and a message bus of its own.
pub struct Drive {
    display: Display,
    command: Command,
}

/// That test with the app it is to drive.
///
/// # Errors
/// When there is no display to be had or the test does not compile.
pub fn drive(house: &House, test: &str, app: &Path) -> Result<Drive, String> {
    let words = ["test", "--locked", "-p", "plumule-tests", "--test", test];
    house.cargo(words).args(["--no-run"]).kept()?;
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let command = display::with_bus(cargo)
        .args(words)
        .args(["--", "--test-threads=1"])
        .folder(&house.root)
        .env("PLUMULE_APP", app);
    Ok(Drive {
        display: Display::start()?,
        command,
    })
}

impl Drive {
    /// Sets an environment variable.
    pub fn env(mut self, name: &str, value: impl AsRef<OsStr>) -> Self {
        self.command = self.command.env(name, value);
        self
    }

    /// Runs only those of its tests.
    pub fn only(mut self, names: &[String]) -> Self {
        self.command = self.command.args(["--exact"]).args(names);
        self
    }

    /// Runs it and gives what it printed.
    ///
    /// # Errors
    /// All that it printed.
    pub fn run(self) -> Result<String, String> {
        self.display.on(self.command).kept()
    }
}

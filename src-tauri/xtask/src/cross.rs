//! The workings against SciPy and an astronomy library: `tests/cross/`.
//!
//! They stand in a Python environment of their own under the target folder, made
//! when it is missing or when the pinned versions change.

use std::fs;
use std::path::PathBuf;

use crate::command::{Command, Words};
use crate::house::House;
use crate::need;
use crate::step::Outcome;

/// The part of the questions that the test run asks.
const SHORT: &str = "0.1";

/// The oldest Python that the pinned versions run on.
const PYTHON: (u32, u32) = (3, 11);

/// Debian's python3 comes without the means to make an environment.
const PACKAGES: [&str; 1] = ["python3-venv"];

/// Asks a tenth of the questions.
///
/// # Errors
/// What differs, or what could not be installed.
pub fn short(house: &House) -> Outcome {
    let told = ready(house, Words::KeptBack)?
        .args(["--share", SHORT])
        .kept()?;
    let summary = told.lines().last().unwrap_or_default();
    if summary.contains("questions and") {
        Ok(summary.to_owned())
    } else {
        Err(format!("{told}\nno question was asked"))
    }
}

/// Asks them all and shows the largest difference of each kind.
///
/// # Errors
/// What differs, or what could not be installed.
pub fn full(house: &House) -> Result<(), String> {
    ready(house, Words::Shown)?.shown()
}

/// The command that asks, with all that it needs built and installed.
fn ready(house: &House, words: Words) -> Result<Command, String> {
    let python = environment(house, words)?;
    house
        .cargo(["build", "--locked", "-p", "plumule-tests"])
        .args(["--bin", "workings"])
        .run(words)?;
    let workings = format!("workings{}", std::env::consts::EXE_SUFFIX);
    Ok(Command::new(python)
        .args(["-B", "-W", "error", "cross.py"])
        .args([house.target.join("debug").join(workings)])
        .folder(house.path("tests/cross")))
}

/// Reads exports back with Python's csv and an iCalendar library:
/// `tests/exchange/`.
///
/// # Errors
/// What was not read back, or what could not be installed.
pub fn exchange(house: &House) -> Outcome {
    let python = environment(house, Words::KeptBack)?;
    let exported = house
        .cargo(["run", "--quiet", "--locked", "-p", "plumule-app"])
        .args(["--example", "exported"])
        .text()?;
    let file = house.target.join("exported.json");
    fs::write(&file, exported).map_err(|e| format!("{}: {e}", file.display()))?;
    let told = Command::new(python)
        .args(["-B", "-W", "error", "read_back.py"])
        .args([&file])
        .folder(house.path("tests/exchange"))
        .kept()?;
    Ok(told.lines().last().unwrap_or_default().to_owned())
}

/// The environment's Python, with the pinned packages.
///
/// # Errors
/// When Python is too old or the packages cannot be had.
pub fn environment(house: &House, words: Words) -> Result<PathBuf, String> {
    let folder = house.target.join("cross");
    let python = folder.join(if cfg!(windows) {
        "Scripts/python.exe"
    } else {
        "bin/python"
    });
    let list = house.path("tests/cross/requirements.txt");
    let wanted = fs::read_to_string(&list).map_err(|e| format!("{}: {e}", list.display()))?;
    let stamp = folder.join("installed.txt");
    if fs::read_to_string(&stamp).is_ok_and(|there| there == wanted) {
        return Ok(python);
    }
    let system = if cfg!(windows) { "python" } else { "python3" };
    let told = Command::new(system).args(["--version"]).text()?;
    if version(&told).is_none_or(|have| have < PYTHON) {
        let (major, minor) = PYTHON;
        return Err(format!(
            "Python {major}.{minor} or newer is needed; this is {}",
            told.trim()
        ));
    }
    let make = || {
        Command::new(system)
            .args(["-m", "venv", "--clear"])
            .args([&folder])
            .run(words)
    };
    if let Err(why) = make() {
        need::install(&PACKAGES).map_err(|e| format!("{why}\n{e}"))?;
        make()?;
    }
    Command::new(&python)
        .args(["-m", "pip", "install", "--quiet", "--only-binary", ":all:"])
        .args(["--disable-pip-version-check", "--requirement"])
        .args([&list])
        .run(words)?;
    fs::write(&stamp, wanted).map_err(|e| format!("{}: {e}", stamp.display()))?;
    Ok(python)
}

fn version(told: &str) -> Option<(u32, u32)> {
    need::version(told.strip_prefix("Python ")?)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_old_python_is_told_from_a_new() {
        assert!(version("Python 3.9.18\n").unwrap() < PYTHON);
        assert!(version("Python 3.11.7\n").unwrap() >= PYTHON);
        assert_eq!(version("pyenv: no such"), None);
    }
}

//! Building the app, with the test clock and without.

use std::fs;
use std::path::{Path, PathBuf};

use crate::command::{Command, Words};
use crate::house::House;
use crate::ui;

/// The variable by which a test sets the app's clock. Its name stands in the
/// binary where it is read, so it tells whether the test clock was built in.
const TEST_CLOCK: &str = "PLUMULE_TEST_CLOCK";

/// Builds the app that tests drive: unoptimised, with the test clock.
///
/// # Errors
/// All that cargo printed.
pub fn for_tests(house: &House, words: Words) -> Result<PathBuf, String> {
    ui::built(house, words)?;
    house
        .cargo(["build", "--locked", "-p", "plumule", "--bin", "plumule"])
        .args(["--features", "test-hooks"])
        .run(words)?;
    Ok(binary(house, "debug"))
}

/// Builds the app that people get, and looks that its clock cannot be set.
///
/// # Errors
/// All that cargo printed; that the test clock is in it.
pub fn for_people(house: &House, words: Words) -> Result<PathBuf, String> {
    for_people_beside(house, &[], words)
}

/// The same with what the app shares with other programs built as they need it
/// too.
///
/// # Errors
/// As [`for_people`].
pub fn for_people_beside(house: &House, others: &[&str], words: Words) -> Result<PathBuf, String> {
    ui::built(house, words)?;
    released(house, &["plumule"], others).run(words)?;
    let released = binary(house, "release");
    without(&read(&released)?)?;
    Ok(released)
}

/// Builds other programs as the app for people is built, to stand beside it.
///
/// # Errors
/// All that cargo printed.
pub fn others_alike(house: &House, others: &[&str], words: Words) -> Result<(), String> {
    released(house, others, &["plumule"]).run(words)
}

/// Builds programs with the features that they and others have together.
fn released(house: &House, programs: &[&str], others: &[&str]) -> Command {
    let together = programs.iter().chain(others);
    house
        .cargo(["build", "--locked", "--release"])
        .args(together.flat_map(|name| ["-p", name]))
        .args(programs.iter().flat_map(|name| ["--bin", name]))
}

/// Checks that the clock cannot be set in an app with the features that people
/// get, and that the sign this goes by is there in the one that tests drive.
/// Unoptimised: what is released is looked at when it is built.
///
/// # Errors
/// Which of the two is not so.
pub fn has_no_test_clock(house: &House) -> Result<String, String> {
    let tested = read(&for_tests(house, Words::KeptBack)?)?;
    house
        .cargo(["build", "--locked", "-p", "plumule", "--bin", "plumule"])
        .run(Words::KeptBack)?;
    let plain = read(&binary(house, "debug"))?;
    compare(&tested, &plain)?;
    Ok(String::new())
}

fn compare(tested: &[u8], plain: &[u8]) -> Result<(), String> {
    if without(tested).is_ok() {
        return Err(format!(
            "{TEST_CLOCK} is not to be found in the app built for tests, so looking for it in \
             another would prove nothing"
        ));
    }
    without(plain)
}

/// That the test clock is not built in.
fn without(bytes: &[u8]) -> Result<(), String> {
    let sign = TEST_CLOCK.as_bytes();
    if bytes.windows(sign.len()).any(|window| window == sign) {
        return Err(format!(
            "the app for people has the test clock in it ({TEST_CLOCK} is there): is the feature \
             test-hooks on by default?"
        ));
    }
    Ok(())
}

fn read(path: &Path) -> Result<Vec<u8>, String> {
    fs::read(path).map_err(|e| format!("{}: {e}", path.display()))
}

fn binary(house: &House, profile: &str) -> PathBuf {
    let name = format!("plumule{}", std::env::consts::EXE_SUFFIX);
    house.target.join(profile).join(name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_clock_may_be_in_the_tested_app_only() {
        let set = b"..PLUMULE_TEST_CLOCK..".as_slice();
        let unset = b"..PLUMULE_TEST_CLOC..".as_slice();
        assert!(compare(set, unset).is_ok());
        assert!(compare(set, set).is_err());
        assert!(compare(unset, unset).is_err());
    }
}

//! Building the app, with the test clock and without.

use std::fs;
use std::path::PathBuf;

use crate::command::Words;
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

/// Builds the app that people get.
///
/// # Errors
/// All that cargo printed.
pub fn for_people(house: &House, words: Words) -> Result<PathBuf, String> {
    ui::built(house, words)?;
    house
        .cargo(["build", "--locked", "--release", "-p", "plumule"])
        .args(["--bin", "plumule"])
        .run(words)?;
    Ok(binary(house, "release"))
}

/// Checks that the clock cannot be set in the app that people get, and that
/// the sign this goes by is there in the one that tests drive.
///
/// # Errors
/// Which of the two is not so.
pub fn has_no_test_clock(house: &House) -> Result<String, String> {
    let tested = for_tests(house, Words::KeptBack)?;
    let released = for_people(house, Words::KeptBack)?;
    let read = |path: &PathBuf| fs::read(path).map_err(|e| format!("{}: {e}", path.display()));
    let (tested, released) = (read(&tested)?, read(&released)?);
    compare(&tested, &released)?;
    Ok(format!("{:.1} MB", released.len() as f64 / 1e6))
}

fn compare(tested: &[u8], released: &[u8]) -> Result<(), String> {
    let sign = TEST_CLOCK.as_bytes();
    let has = |bytes: &[u8]| bytes.windows(sign.len()).any(|window| window == sign);
    if !has(tested) {
        return Err(format!(
            "{TEST_CLOCK} is not to be found in the app built for tests, so looking for it in \
             the released one would prove nothing"
        ));
    }
    if has(released) {
        return Err(format!(
            "the released app has the test clock in it ({TEST_CLOCK} is there): is the feature \
             test-hooks on by default?"
        ));
    }
    Ok(())
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
        let with = b"..PLUMULE_TEST_CLOCK..".as_slice();
        let without = b"..PLUMULE_TEST_CLOC..".as_slice();
        assert!(compare(with, without).is_ok());
        assert!(compare(with, with).is_err());
        assert!(compare(without, without).is_err());
    }
}

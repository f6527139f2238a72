//! The UI: its packages, its build.

use std::fs;
use std::path::Path;

use crate::command::Words;
use crate::house::House;

/// Installs the UI's packages unless they are as package-lock.json has them;
/// true if there was something to do.
///
/// # Errors
/// All that npm printed.
pub fn install(house: &House, words: Words) -> Result<bool, String> {
    let lock = house.path("ui/package-lock.json");
    // npm writes this file at the end of every install.
    let done = house.path("ui/node_modules/.package-lock.json");
    if !is_older(&done, &lock) {
        return Ok(false);
    }
    house.npm(["ci", "--no-audit", "--no-fund"]).run(words)?;
    Ok(true)
}

/// Builds what the app shows, to ui/dist.
///
/// # Errors
/// All that the build printed.
pub fn build(house: &House, words: Words) -> Result<(), String> {
    install(house, words)?;
    house.npm(["run", "build"]).run(words)
}

/// Builds it only when there is none: enough to compile the shell.
///
/// # Errors
/// All that the build printed.
pub fn built(house: &House, words: Words) -> Result<(), String> {
    if house.path("ui/dist/index.html").is_file() {
        return Ok(());
    }
    build(house, words)
}

/// Whether the first is missing or was written before the second.
fn is_older(first: &Path, second: &Path) -> bool {
    let written = |path: &Path| fs::metadata(path).and_then(|m| m.modified()).ok();
    match (written(first), written(second)) {
        (Some(first), Some(second)) => first < second,
        _ => true,
    }
}

#[cfg(test)]
mod tests {
    use std::fs::File;
    use std::time::{Duration, SystemTime};

    use super::*;

    #[test]
    fn packages_are_stale_when_missing_or_older_than_the_lock() {
        let folder = std::env::temp_dir().join(format!("plumule-xtask-{}", std::process::id()));
        fs::create_dir_all(&folder).unwrap();
        let (done, lock) = (folder.join("done"), folder.join("lock"));
        File::create(&lock).unwrap();
        assert!(is_older(&done, &lock));
        let made = File::create(&done).unwrap();
        made.set_modified(SystemTime::now() + Duration::from_secs(5))
            .unwrap();
        assert!(!is_older(&done, &lock));
        made.set_modified(SystemTime::now() - Duration::from_secs(5))
            .unwrap();
        assert!(is_older(&done, &lock));
        fs::remove_dir_all(&folder).unwrap();
    }
}

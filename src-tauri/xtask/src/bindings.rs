//! The types that the UI shares with Rust, which Rust writes.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use crate::house::House;
use crate::step::Outcome;

const KEPT: &str = "ui/src/backend/generated";

/// Writes them anew; those of types that are gone go too.
///
/// # Errors
/// All that cargo printed.
pub fn write(house: &House) -> Result<(), String> {
    let fresh = read(&export(house)?)?;
    let folder = house.path(KEPT);
    let told = |e: std::io::Error| format!("{KEPT}: {e}");
    if folder.exists() {
        fs::remove_dir_all(&folder).map_err(told)?;
    }
    for (name, text) in &fresh {
        let file = folder.join(name);
        fs::create_dir_all(file.parent().unwrap_or(&folder)).map_err(told)?;
        fs::write(file, text).map_err(told)?;
    }
    println!("{} files in {KEPT}", fresh.len());
    Ok(())
}

/// Checks that those kept are as Rust would write them now.
///
/// # Errors
/// Which are not, and how to put it right.
pub fn check(house: &House) -> Outcome {
    let fresh = read(&export(house)?)?;
    let stale = differing(&read(&house.path(KEPT))?, &fresh);
    if stale.is_empty() {
        return Ok(format!("{} files", fresh.len()));
    }
    Err(format!(
        "not as Rust would write them: {}\nPut it right with: cargo xtask bindings",
        stale.into_iter().collect::<Vec<_>>().join(", ")
    ))
}

/// Has them written to an empty folder, by the tests that ts-rs makes for them.
fn export(house: &House) -> Result<std::path::PathBuf, String> {
    let folder = house.empty_folder("bindings")?;
    house
        .cargo([
            "test",
            "--locked",
            "-p",
            "plumule-app",
            "--lib",
            "export_bindings",
        ])
        .env("TS_RS_EXPORT_DIR", &folder)
        .kept()?;
    Ok(folder)
}

type Files = BTreeMap<String, String>;

/// Every file in the folder and those inside it, by its path with `/`.
fn read(folder: &Path) -> Result<Files, String> {
    let mut files = Files::new();
    collect(folder, "", &mut files)?;
    if files.is_empty() {
        return Err(format!("there are no types in {}", folder.display()));
    }
    Ok(files)
}

fn collect(folder: &Path, before: &str, files: &mut Files) -> Result<(), String> {
    let told = |e: std::io::Error| format!("{}: {e}", folder.display());
    if !folder.is_dir() {
        return Ok(());
    }
    for entry in fs::read_dir(folder).map_err(told)? {
        let path = entry.map_err(told)?.path();
        let name = path.file_name().unwrap_or_default().to_string_lossy();
        let name = format!("{before}{name}");
        if path.is_dir() {
            collect(&path, &format!("{name}/"), files)?;
        } else {
            let text = fs::read_to_string(&path).map_err(told)?;
            files.insert(name, text.replace("\r\n", "\n"));
        }
    }
    Ok(())
}

/// The names that only one side has, or that differ.
fn differing(kept: &Files, fresh: &Files) -> BTreeSet<String> {
    let names: BTreeSet<&String> = kept.keys().chain(fresh.keys()).collect();
    names
        .into_iter()
        .filter(|name| kept.get(*name) != fresh.get(*name))
        .cloned()
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn files(list: &[(&str, &str)]) -> Files {
        list.iter()
            .map(|(n, t)| ((*n).into(), (*t).into()))
            .collect()
    }

    #[test]
    fn changed_missing_and_left_over_types_are_stale() {
        let kept = files(&[("A.ts", "a"), ("B.ts", "b"), ("Old.ts", "o")]);
        let fresh = files(&[("A.ts", "a"), ("B.ts", "new"), ("C.ts", "c")]);
        let stale: Vec<_> = differing(&kept, &fresh).into_iter().collect();
        assert_eq!(stale, ["B.ts", "C.ts", "Old.ts"]);
        assert!(differing(&kept, &kept).is_empty());
    }

    #[test]
    fn no_types_at_all_is_an_error() {
        assert!(read(Path::new("no/such/folder")).is_err());
    }
}

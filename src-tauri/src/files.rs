//! Files that leave the app, to where the grower says.
#![allow(dead_code, reason = "what is saved by it is being built")]

use crate::shell::error;
use plumule_app::AppError;
use std::fs::{self, File};
use std::io::Write;
use std::path::Path;
use tauri::{AppHandle, Runtime};
use tauri_plugin_dialog::{DialogExt, FilePath};
use tauri_plugin_fs::{FsExt, OpenOptions};

/// Asks where to save a file and writes it there; false if that was called
/// off. `name` is what it is called unless the grower calls it otherwise.
///
/// It waits for the grower, so it is for a thread where waiting hurts nobody.
///
/// # Errors
/// `save_failed` if it cannot be written; a file that was there is left as it
/// was.
pub fn save_file<R: Runtime>(
    app: &AppHandle<R>,
    name: &str,
    bytes: &[u8],
) -> Result<bool, AppError> {
    let Some(to) = ask_where(app, name) else {
        return Ok(false);
    };
    let written = match &to {
        FilePath::Path(path) => whole(path, bytes),
        // A phone names a place that only its own system can open.
        FilePath::Url(_) => {
            let mut how = OpenOptions::new();
            how.write(true).create(true).truncate(true);
            app.fs()
                .open(to, how)
                .and_then(|mut file| file.write_all(bytes).and_then(|()| file.sync_all()))
        }
    };
    written.map(|()| true).map_err(|_| error("save_failed"))
}

/// Where the grower wants it, by the system's own dialog.
fn ask_where<R: Runtime>(app: &AppHandle<R>, name: &str) -> Option<FilePath> {
    #[cfg(feature = "test-hooks")]
    if let Some(folder) = std::env::var_os("PLUMULE_TEST_SAVE") {
        return Some(FilePath::Path(Path::new(&folder).join(name)));
    }
    let dialog = app.dialog().file().set_file_name(name);
    match Path::new(name).extension().and_then(|it| it.to_str()) {
        Some(ending) => dialog.add_filter(ending.to_uppercase(), &[ending]),
        None => dialog,
    }
    .blocking_save_file()
}

/// Writes a file so that it is there whole or as it was before.
fn whole(path: &Path, bytes: &[u8]) -> std::io::Result<()> {
    let mut part = path.as_os_str().to_owned();
    part.push(".part");
    let part = Path::new(&part);
    let written = File::create(part)
        .and_then(|mut file| file.write_all(bytes).and_then(|()| file.sync_all()))
        .and_then(|()| fs::rename(part, path));
    if written.is_err() {
        // What was begun is of no use; if it cannot go either, it is only litter.
        let _ = fs::remove_file(part);
    }
    written
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_is_replaced_whole_or_left_as_it_was() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("labels.pdf");
        whole(&path, b"one").unwrap();
        whole(&path, b"two").unwrap();
        assert_eq!(fs::read(&path).unwrap(), b"two");
        // What is begun cannot be put where a folder stands.
        let taken = folder.path().join("taken");
        fs::create_dir(&taken).unwrap();
        fs::write(taken.join("x"), b"x").unwrap();
        assert!(whole(&taken, b"three").is_err());
        let mut left: Vec<_> = fs::read_dir(folder.path())
            .unwrap()
            .map(|it| it.unwrap().file_name())
            .collect();
        left.sort();
        assert_eq!(left, ["labels.pdf", "taken"]);
    }
}

//! Files that leave the app, to where the grower says.

#[cfg(target_os = "android")]
pub mod share;

use crate::shell::error;
use plumule_app::AppError;
use std::fs::{self, File};
use std::io::Write;
use std::path::{Path, PathBuf};
use tauri::{AppHandle, Manager, Runtime};
use tauri_plugin_dialog::{DialogExt, FilePath};
use tauri_plugin_fs::{FsExt, OpenOptions};

/// Has a file written and kept where the grower says; none if that was called
/// off. `name` is what it is called unless the grower calls it otherwise.
///
/// It waits for the grower, so it is for a thread where waiting hurts nobody.
///
/// # Errors
/// Those of `write`, which is to leave a file that was there as it was;
/// `save_failed` if what it wrote cannot be brought to its place.
#[cfg(not(target_os = "android"))]
pub fn save<R: Runtime, T>(
    app: &AppHandle<R>,
    name: &str,
    write: impl FnOnce(&Path) -> Result<T, AppError>,
) -> Result<Option<T>, AppError> {
    let Some(to) = ask_where(app, name) else {
        return Ok(None);
    };
    if let FilePath::Path(path) = &to {
        return write(path).map(Some);
    }
    // A place that only the system can open.
    let beside = beside(app, "saving.part")?;
    let written = write(&beside).and_then(|done| {
        let mut how = OpenOptions::new();
        how.write(true).create(true).truncate(true);
        let copied = app.fs().open(to, how).and_then(|mut to| {
            std::io::copy(&mut File::open(&beside)?, &mut to)?;
            to.sync_all()
        });
        copied
            .map(|()| Some(done))
            .map_err(|_| error("save_failed"))
    });
    // What is left over goes the next time.
    let _ = fs::remove_file(&beside);
    written
}

/// As elsewhere, but that it is written first and then handed to the app that
/// the grower chooses.
#[cfg(target_os = "android")]
pub fn save<R: Runtime, T>(
    app: &AppHandle<R>,
    name: &str,
    write: impl FnOnce(&Path) -> Result<T, AppError>,
) -> Result<Option<T>, AppError> {
    let folder = beside(app, "shared")?;
    // The one before has long been read.
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).map_err(|_| error("save_failed"))?;
    let path = folder.join(name);
    let done = write(&path)?;
    Ok(share::share(app, &path)?.then_some(done))
}

/// Saves a file; false if that was called off.
///
/// # Errors
/// `save_failed` if it cannot be written.
pub fn save_file<R: Runtime>(
    app: &AppHandle<R>,
    name: &str,
    bytes: &[u8],
) -> Result<bool, AppError> {
    let write = |path: &Path| whole(path, bytes).map_err(|_| error("save_failed"));
    Ok(save(app, name, write)?.is_some())
}

/// Where the grower wants it, by the system's own dialog.
#[cfg(not(target_os = "android"))]
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

/// Asks for a file; none if that was called off. Where only the system can
/// open it, it is copied beside the journals first.
pub fn choose_file<R: Runtime>(app: &AppHandle<R>) -> Result<Option<(String, PathBuf)>, AppError> {
    let Some(from) = ask_which(app) else {
        return Ok(None);
    };
    let name = |path: &Path| path.file_name().map(|it| it.to_string_lossy().into_owned());
    let (named, path) = match from {
        FilePath::Path(path) => (name(&path), path),
        FilePath::Url(url) => {
            let named = name(Path::new(url.path()));
            let beside = beside(app, "chosen.part")?;
            let mut how = OpenOptions::new();
            how.read(true);
            let copied = app
                .fs()
                .open(FilePath::Url(url), how)
                .and_then(|mut from| std::io::copy(&mut from, &mut File::create(&beside)?));
            copied.map_err(|_| error("file_failed"))?;
            (named, beside)
        }
    };
    Ok(Some((named.unwrap_or_default(), path)))
}

/// Which file the grower wants, by the system's own dialog.
fn ask_which<R: Runtime>(app: &AppHandle<R>) -> Option<FilePath> {
    #[cfg(feature = "test-hooks")]
    if let Some(path) = std::env::var_os("PLUMULE_TEST_CHOOSE") {
        return Some(FilePath::Path(path.into()));
    }
    app.dialog().file().blocking_pick_file()
}

/// Asks for a folder; none if that was called off. Phones have none that other
/// programs see.
pub fn choose_folder<R: Runtime>(app: &AppHandle<R>) -> Result<Option<PathBuf>, AppError> {
    #[cfg(desktop)]
    return Ok(match app.dialog().file().blocking_pick_folder() {
        Some(FilePath::Path(folder)) => Some(folder),
        _ => None,
    });
    #[cfg(mobile)]
    {
        let _ = app;
        Err(error("no_folder_here"))
    }
}

fn beside<R: Runtime>(app: &AppHandle<R>, name: &str) -> Result<PathBuf, AppError> {
    let folder = app
        .path()
        .app_cache_dir()
        .map_err(|_| error("file_failed"))?;
    fs::create_dir_all(&folder).map_err(|_| error("file_failed"))?;
    Ok(folder.join(name))
}

/// Writes a file so that it is there whole or as it was before.
pub fn whole(path: &Path, bytes: &[u8]) -> std::io::Result<()> {
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

//! Photos through the folder.

use crate::archive::{MAX_PHOTO_BYTES, is_sha256};
use crate::audit::{self, Met};
use crate::device::make_folder;
use crate::entry::Entry;
use crate::error::Error;
use crate::files;
use crate::finding::{Progress, Step, Watch, go_on};
use crate::journal::Journal;
use crate::shared::read::devices;
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// The photos in the folder, by their names; each name once.
fn there(folder: &Path) -> Result<BTreeMap<String, PathBuf>, Error> {
    let mut found = BTreeMap::new();
    for device in devices(folder)? {
        let photos = folder.join(device).join("photos");
        for name in files::names(&photos)? {
            if is_sha256(&name) {
                let path = photos.join(&name);
                found.insert(name, path);
            }
        }
    }
    Ok(found)
}

/// Brings in photos that entries name and that are not here; how many. One
/// that has come in half is brought the next time.
pub(super) fn bring(journal: &Journal, folder: &Path, watch: &mut Watch) -> Result<usize, Error> {
    let photos = journal.home().join("journal/photos");
    let here = audit::on_disk(&photos)?;
    let mut wanted = there(folder)?;
    wanted.retain(|name, _| !here.contains_key(name));
    if wanted.is_empty() {
        return Ok(0);
    }
    let named = named(journal)?;
    wanted.retain(|name, _| named.contains(name));
    let of = u64::try_from(wanted.len()).unwrap_or(u64::MAX);
    let part = photos.join("shared.part");
    let mut brought = 0;
    for (done, (name, path)) in (0..).zip(wanted) {
        let step = Step::Photos;
        go_on(watch, Progress { step, done, of })?;
        let fits = path.metadata().is_ok_and(|it| it.len() <= MAX_PHOTO_BYTES);
        if !fits || !files::sha256(&path).is_ok_and(|sum| sum == name) {
            continue;
        }
        files::copy(&path, &part)?;
        // It may have changed in between.
        if files::sha256(&part)? == name {
            files::put(&part, &photos.join(&name))?;
            brought += 1;
        }
    }
    files::remove(&part)?;
    Ok(brought)
}

/// The photos that entries here name.
fn named(journal: &Journal) -> Result<BTreeSet<String>, Error> {
    let mut met = Met::default();
    journal.lines_after(0, &mut |_, line| {
        if line.contains("\"photo\"")
            && let Ok(entry) = Entry::parse(line)
        {
            met.entry(&entry);
        }
        Ok(())
    })?;
    Ok(met.photos())
}

/// Writes the photos that are here, whole, and in no folder there; how many.
pub(super) fn write(
    journal: &Journal,
    folder: &Path,
    own: &Path,
    watch: &mut Watch,
) -> Result<usize, Error> {
    let there = there(folder)?;
    let mut here = audit::on_disk(&journal.home().join("journal/photos"))?;
    here.retain(|name, _| is_sha256(name) && !there.contains_key(name));
    if here.is_empty() {
        return Ok(0);
    }
    let photos = own.join("photos");
    make_folder(&photos)?;
    let of = u64::try_from(here.len()).unwrap_or(u64::MAX);
    let mut written = 0;
    for (done, (name, path)) in (0..).zip(here) {
        let step = Step::Photos;
        go_on(watch, Progress { step, done, of })?;
        if files::sha256(&path)? != name {
            continue;
        }
        let part = photos.join(format!("{name}.part"));
        files::copy(&path, &part)?;
        files::put(&part, &photos.join(&name))?;
        written += 1;
    }
    Ok(written)
}

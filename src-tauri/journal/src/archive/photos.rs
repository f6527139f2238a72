//! Photos out of an archive into a home.

use crate::archive::read::Opened;
use crate::audit;
use crate::error::Error;
use crate::files::{self, at};
use crate::finding::{Progress, Step, Watch, go_on};
use std::fs::File;
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

/// Brings in the photos that are not here whole; where they are now. If it
/// fails, none of them is.
pub(super) fn bring(
    opened: &mut Opened,
    photos: &Path,
    watch: &mut Watch,
) -> Result<Vec<PathBuf>, Error> {
    let mut brought = Vec::new();
    let done = bring_each(opened, photos, watch, &mut brought);
    if done.is_err() {
        take_back(&brought);
    }
    done.map(|()| brought)
}

/// Removes what was brought in.
pub(super) fn take_back(brought: &[PathBuf]) {
    for path in brought {
        // What matters is the first error; nothing names it, and it goes later.
        let _ = files::remove(path);
    }
}

fn bring_each(
    opened: &mut Opened,
    photos: &Path,
    watch: &mut Watch,
    brought: &mut Vec<PathBuf>,
) -> Result<(), Error> {
    let there = audit::on_disk(photos)?;
    let names: Vec<String> = opened.photos.keys().cloned().collect();
    let of = u64::try_from(names.len()).unwrap_or(u64::MAX);
    let part = photos.join("taken-in.part");
    for (done, name) in (0..).zip(names) {
        let step = Step::Photos;
        go_on(watch, Progress { step, done, of })?;
        let here = there.get(&name);
        if let Some(path) = here
            && files::sha256(path)? == name
        {
            continue;
        }
        let mut file = BufWriter::new(File::create(&part).map_err(at(&part))?);
        let copied = opened
            .photo(&name, &mut file)
            .and_then(|()| file.flush().map_err(at(&part)));
        drop(file);
        if let Err(error) = copied {
            let _ = files::remove(&part);
            return Err(error);
        }
        let path = here.cloned().unwrap_or_else(|| photos.join(&name));
        files::put(&part, &path)?;
        // One that was there, but damaged, is not taken back.
        if here.is_none() {
            brought.push(path);
        }
    }
    Ok(())
}

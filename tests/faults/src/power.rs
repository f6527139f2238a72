//! Power that goes after each deed of a run: what was not synced is lost, or
//! any part of it is there.

use crate::chance::Chance;
use crate::home;
use crate::machine::{Deed, Machine, behind_the_back};
use crate::writes;
use plumule_journal::Journal;
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

/// Smallest part of a write that a disk leaves whole, bytes.
const SECTOR: usize = 512;

/// What a run of cuts came to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Figures {
    /// Acts that were confirmed in the run.
    pub acts: u64,
    /// Places in it at which power went.
    pub cuts: usize,
    /// Disks that were looked at.
    pub disks: usize,
}

/// A file on the disk.
#[derive(Clone, Debug, Default)]
struct OnDisk {
    safe: Option<Vec<u8>>,
    pending: Vec<Deed>,
}

type Disk = BTreeMap<PathBuf, OnDisk>;

/// Does acts in a fresh home, lets power go after every deed of the run, and
/// looks at each disk: the journal opens, is whole, and has every act that was
/// confirmed by then. `setting` is a statement run on the journal's connection
/// before the acts.
///
/// # Errors
/// What was lost, at the first cut that loses anything.
pub fn cut_everywhere(acts: u64, setting: &str) -> Result<Figures, String> {
    let home = home::empty();
    let machine = Machine::watch(home.path());
    machine.record();
    let mut journal = Journal::open(home.path(), &writes::stamp(0)).unwrap();
    behind_the_back("journal.db", setting);
    let mut confirmed = Vec::new();
    for n in 0..acts {
        writes::act(&mut journal, n).unwrap();
        confirmed.push(machine.recorded());
    }
    drop(journal);

    let log = machine.log();
    let mut disk = Disk::new();
    let mut chance = Chance(20_260_401);
    let mut last = None;
    let mut disks = 0;
    for (at, (path, deed)) in log.iter().enumerate() {
        let synced = matches!(deed, Deed::Synced | Deed::Removed | Deed::Opened(_));
        apply(&mut disk, path, deed);
        let expected = confirmed.iter().filter(|done| **done <= at + 1).count();
        // What is safe only changes with a sync; what else is there always.
        let mut images = vec![torn(&disk, &mut chance)];
        if synced || last != Some(expected) {
            images.push(safe(&disk));
        }
        last = Some(expected);
        for image in images {
            disks += 1;
            look_at(&image, expected).map_err(|lost| {
                format!("power went after deed {} of {}: {lost}", at + 1, log.len())
            })?;
        }
    }
    Ok(Figures {
        acts,
        cuts: log.len(),
        disks,
    })
}

fn apply(disk: &mut Disk, path: &Path, deed: &Deed) {
    let file = disk.entry(path.to_owned()).or_default();
    match deed {
        Deed::Opened(bytes) => file.safe.clone_from(bytes),
        Deed::Synced => {
            let mut bytes = file.safe.take().unwrap_or_default();
            for deed in file.pending.drain(..) {
                done(&mut bytes, &deed, usize::MAX);
            }
            file.safe = Some(bytes);
        }
        Deed::Removed => *file = OnDisk::default(),
        Deed::Written(..) | Deed::Cut(_) => file.pending.push(deed.clone()),
    }
}

/// Does a deed to bytes, of a write at most so many of them.
fn done(bytes: &mut Vec<u8>, deed: &Deed, most: usize) {
    match deed {
        Deed::Written(at, written) => {
            let at = usize::try_from(*at).unwrap();
            let written = &written[..written.len().min(most)];
            bytes.resize(bytes.len().max(at + written.len()), 0);
            bytes[at..at + written.len()].copy_from_slice(written);
        }
        Deed::Cut(size) => bytes.resize(usize::try_from(*size).unwrap(), 0),
        Deed::Opened(_) | Deed::Synced | Deed::Removed => {}
    }
}

/// Only what was synced.
fn safe(disk: &Disk) -> BTreeMap<PathBuf, Vec<u8>> {
    let files = disk.iter();
    files
        .filter_map(|(path, file)| Some((path.clone(), file.safe.clone()?)))
        .collect()
}

/// What was synced, and of the rest some by chance, some of it in part.
fn torn(disk: &Disk, chance: &mut Chance) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut image = BTreeMap::new();
    for (path, file) in disk {
        let mut bytes = file.safe.clone();
        for deed in &file.pending {
            let most = match chance.below(3) {
                0 => continue,
                1 => SECTOR * usize::try_from(chance.below(8)).unwrap(),
                _ => usize::MAX,
            };
            done(bytes.get_or_insert_default(), deed, most);
        }
        image.extend(bytes.map(|bytes| (path.clone(), bytes)));
    }
    image
}

fn look_at(image: &BTreeMap<PathBuf, Vec<u8>>, expected: usize) -> Result<(), String> {
    let home = home::empty();
    for (path, bytes) in image {
        let path = home.path().join(path);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, bytes).unwrap();
    }
    let journal = home::whole(home.path())?;
    for n in 0..u64::try_from(expected).unwrap() {
        match writes::is_there(&journal, n) {
            Ok(true) => {}
            Ok(false) => return Err(format!("act {n} was confirmed and is lost")),
            Err(error) => return Err(error.to_string()),
        }
    }
    Ok(())
}

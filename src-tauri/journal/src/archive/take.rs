//! Archives that come in: to take the journal's place, or into it.

use crate::archive::preview::{Changes, Conflict};
use crate::archive::read::{self, Opened};
use crate::archive::{Inside, photos};
use crate::audit;
use crate::backup::{self, Restored};
use crate::device::{Device, make_folder};
use crate::error::Error;
use crate::files;
use crate::finding::{Progress, Step, Watch, go_on};
use crate::id::DeviceId;
use crate::journal::Journal;
use crate::merge::Union;
use crate::recover::replace;
use crate::stamp::Stamp;
use crate::store::open::{self, Expect};
use crate::wish::Report;
use std::path::Path;

/// How often the way through is told, entries.
const EVERY: u64 = 1_000;

/// What taking in an archive did.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TakenIn {
    /// What was in it.
    pub inside: Inside,
    /// What became of the entries.
    pub report: Report,
    /// Where both sides changed the same thing.
    pub conflicts: Vec<Conflict>,
    /// Photos that were not here, or damaged.
    pub photos_new: usize,
    /// Photos that its entries name and that are neither in it nor here; a
    /// later import may bring them.
    pub photos_missing: usize,
}

pub(super) fn take_in(
    journal: &mut Journal,
    stamp: &Stamp,
    path: &Path,
    passphrase: Option<&str>,
    watch: &mut Watch,
) -> Result<TakenIn, Error> {
    let mut opened = read::open(path, passphrase)?;
    let inside = opened.verify(watch)?;
    journal.back_up_first(stamp, watch)?;
    let folder = journal.home().join("journal/photos");
    let brought = photos::bring(&mut opened, &folder, watch)?;
    let mut changes = Changes::default();
    let taken = journal.unite(stamp, |union| {
        entries(&mut opened, union, Some(&mut changes), watch)?;
        changes.conflicts(union.db())
    });
    let (conflicts, report) = match taken {
        Ok(taken) => taken,
        Err(error) => {
            photos::take_back(&brought);
            return Err(error);
        }
    };
    let there = audit::on_disk(&folder)?;
    let named = inside.contents.photos.iter();
    Ok(TakenIn {
        photos_missing: named.filter(|name| !there.contains_key(*name)).count(),
        photos_new: brought.len(),
        inside,
        report,
        conflicts,
    })
}

/// All entries of an archive into a union.
fn entries(
    opened: &mut Opened,
    union: &mut Union,
    mut changes: Option<&mut Changes>,
    watch: &mut Watch,
) -> Result<(), Error> {
    let step = Step::Entries;
    let of = opened.manifest.entries.count;
    go_on(watch, Progress { step, done: 0, of })?;
    opened.each_entry(&mut |done, (entry, hash)| {
        let new = union.entry(&entry, &hash)?;
        if let Some(changes) = &mut changes {
            changes.entry(&entry, new);
        }
        if done.is_multiple_of(EVERY) {
            go_on(watch, Progress { step, done, of })?;
        }
        Ok(())
    })?;
    go_on(watch, Progress { step, done: of, of })
}

pub(super) fn restore(
    home: &Path,
    stamp: &Stamp,
    path: &Path,
    passphrase: Option<&str>,
    watch: &mut Watch,
) -> Result<Restored, Error> {
    let journal = home.join("journal");
    for folder in ["photos", "backups"] {
        make_folder(&journal.join(folder))?;
    }
    let mut opened = read::open(path, passphrase)?;
    let inside = opened.verify(watch)?;
    let part = journal.join("restored.part");
    let folder = journal.join("photos");
    let built = build(&mut opened, &part, watch)
        .and_then(|()| photos::bring(&mut opened, &folder, watch))
        .and_then(|brought| {
            replace::with(home, stamp, &part).inspect_err(|_| photos::take_back(&brought))
        });
    let replaced = match built {
        Ok(replaced) => replaced,
        Err(error) => {
            // What matters is the first error; a leftover goes the next time.
            let _ = files::remove_part(&part);
            return Err(error);
        }
    };
    if let Some(habits) = &opened.manifest.habits {
        // The journal is there: habits that cannot be kept are set anew.
        let _ = Device::open(home, stamp).and_then(|device| device.take_on(habits));
    }
    let there = audit::on_disk(&folder)?;
    let mut contents = inside.contents;
    let named = contents.photos.iter();
    contents.photos_found = named.filter(|name| there.contains_key(*name)).count();
    Ok(Restored {
        contents,
        set_aside: replaced.set_aside,
    })
}

/// A database with the entries of an archive.
fn build(opened: &mut Opened, part: &Path, watch: &mut Watch) -> Result<(), Error> {
    files::remove_part(part)?;
    let mut db = open::journal(part, Expect::Any)?;
    let tx = db.transaction()?;
    let mut union = Union::into(&tx, DeviceId(uuid::Uuid::nil()))?;
    entries(opened, &mut union, None, watch)?;
    union.finish()?;
    tx.commit()?;
    // All of it is there, or this is no restore.
    backup::verify(part, &part.with_file_name("photos"), watch).map(drop)
}

//! Reading what others wrote.

use crate::backup;
use crate::entry::Entry;
use crate::error::Error;
use crate::files::{self, hex};
use crate::finding::{Progress, Step, Watch, go_on};
use crate::journal::Journal;
use crate::shared::place::{Place, Reached};
use crate::shared::{MAX_DEVICES, MAX_SEGMENT_BYTES, ReadReport, photos, segment};
use crate::stamp::Stamp;
use crate::store::add;
use sha2::{Digest, Sha256};
use std::fs::File;
use std::io::{BufRead, BufReader, Read, Seek, SeekFrom};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// The folders of devices in a folder, by their ids.
pub(super) fn devices(folder: &Path) -> Result<Vec<String>, Error> {
    let names = files::names(folder)?.into_iter();
    let of_device =
        |name: &String| uuid::Uuid::parse_str(name).is_ok_and(|id| id.to_string() == *name);
    Ok(names.filter(of_device).take(MAX_DEVICES).collect())
}

/// The segments of a device: name within the folder, and path.
pub(super) fn segments(folder: &Path, device: &str) -> Result<Vec<(String, PathBuf)>, Error> {
    let own = folder.join(device);
    let names = files::names(&own)?.into_iter();
    Ok(names
        .filter(|name| number(name).is_some())
        .map(|name| (format!("{device}/{name}"), own.join(&name)))
        .collect())
}

/// The number of a segment by its name; a copy with words added has none.
pub(super) fn number(name: &str) -> Option<u32> {
    let digits = name.strip_suffix(".jsonl")?;
    let plain = digits.len() == 6 && digits.bytes().all(|it| it.is_ascii_digit());
    plain.then(|| digits.parse().ok()).flatten()
}

pub(super) fn read_others(
    journal: &mut Journal,
    stamp: &Stamp,
    folder: &Path,
    watch: &mut Watch,
) -> Result<ReadReport, Error> {
    journal.for_writing()?;
    let mut report = ReadReport::default();
    let mut place = Place::of(journal, folder)?;
    let own = journal.device().to_string();
    let mut fresh = Vec::new();
    for device in devices(folder)? {
        report.devices += usize::from(device != own);
        fresh.extend(segments(folder, &device)?);
    }
    fresh.retain(|(name, path)| has_news(place.files.get(name), path));
    if !fresh.is_empty() {
        // A folder brings something every few minutes; a backup of each would
        // fill the device, and no union takes anything away.
        if backup::due(journal, stamp.now)? {
            backup::make(journal, stamp, watch)?;
        }
        let after = place.written;
        let ((), union) = journal.unite(stamp, |union| {
            let of = u64::try_from(fresh.len()).unwrap_or(u64::MAX);
            for (done, (name, path)) in (0..).zip(&fresh) {
                let step = Step::Entries;
                go_on(watch, Progress { step, done, of })?;
                let reached = place.files.entry(name.clone()).or_default();
                let whole = lines(path, reached, &mut |entry| {
                    let entry = Arc::new(entry);
                    let hash = entry.hash();
                    union.entry(&entry, &hash)?;
                    let nr = add::number_of(union.db(), &hash)?;
                    place.there.extend(nr.filter(|nr| *nr > after));
                    Ok(())
                })?;
                report.waiting += usize::from(!whole);
            }
            Ok(())
        })?;
        report.union = union;
        place.keep(journal, folder)?;
    }
    report.photos_new = photos::bring(journal, folder, watch)?;
    Ok(report)
}

/// Whether there is more in a file than was read, or it is another one.
fn has_news(reached: Option<&Reached>, path: &Path) -> bool {
    let about = path.metadata().ok().filter(|about| about.is_file());
    match (reached, about.map(|about| about.len())) {
        // Half here, or gone again: looked at the next time.
        (_, None) => false,
        (None, Some(length)) => length > 0,
        (Some(reached), Some(length)) => length != reached.bytes || !is_same(path, reached),
    }
}

/// Whether the line up to which a file was done with is still there.
pub(super) fn is_same(path: &Path, reached: &Reached) -> bool {
    if reached.bytes == 0 {
        return true;
    }
    let last = || -> std::io::Result<String> {
        let mut file = File::open(path)?;
        file.seek(SeekFrom::Start(reached.from))?;
        let mut sum = Sha256::new();
        let length = reached.bytes.saturating_sub(reached.from);
        let mut line = Vec::new();
        file.take(length).read_to_end(&mut line)?;
        sum.update(&line);
        Ok(hex(&sum.finalize()))
    };
    last().is_ok_and(|last| last == reached.last)
}

/// Every entry from where a file was left; true if all of it could be read.
fn lines(
    path: &Path,
    reached: &mut Reached,
    each: &mut dyn FnMut(Entry) -> Result<(), Error>,
) -> Result<bool, Error> {
    let Ok(file) = File::open(path) else {
        return Ok(false);
    };
    if !is_same(path, reached) {
        *reached = Reached::default();
    }
    let mut from = BufReader::new(file.take(MAX_SEGMENT_BYTES));
    // What cannot be read now may be there the next time.
    let skipped = std::io::copy(&mut from.by_ref().take(reached.bytes), &mut std::io::sink());
    let Ok(mut begins) = skipped else {
        return Ok(false);
    };
    let most = u64::try_from(segment::MAX).unwrap_or(u64::MAX);
    let mut whole = true;
    let mut line = Vec::new();
    loop {
        line.clear();
        let read = match from.by_ref().take(most).read_until(b'\n', &mut line) {
            Ok(0) => return Ok(whole),
            Ok(read) => u64::try_from(read).unwrap_or(0),
            Err(_) => return Ok(false),
        };
        match segment::read(&line) {
            segment::Read::Entry(entry) => each(*entry)?,
            segment::Read::NoEntry => {}
            segment::Read::Broken => whole = false,
        }
        // What comes after a broken line is read, and read again.
        if whole {
            *reached = Reached {
                from: begins,
                bytes: begins + read,
                last: hex(&Sha256::digest(&line)),
            };
        }
        begins += read;
    }
}

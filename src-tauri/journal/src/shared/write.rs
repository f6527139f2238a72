//! Writing one's own.

use crate::device::make_folder;
use crate::error::Error;
use crate::files::{self, at, hex};
use crate::finding::{Progress, Step, Watch, go_on};
use crate::journal::Journal;
use crate::shared::place::{Place, Reached};
use crate::shared::read::{is_same, number, segments};
use crate::shared::{SEGMENT_BYTES, WriteReport, photos, segment};
use sha2::{Digest, Sha256};
use std::fs::File;
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

/// How often the way through is told, entries.
const EVERY: u64 = 1_000;

pub(super) fn write_own(
    journal: &Journal,
    folder: &Path,
    watch: &mut Watch,
) -> Result<WriteReport, Error> {
    journal.for_writing()?;
    let device = journal.device().to_string();
    let own = folder.join(&device);
    make_folder(&own)?;
    let mut place = Place::of(journal, folder)?;
    begin_anew_if_lost(&mut place, folder, &device)?;
    let mut report = WriteReport::default();
    let last = journal.last_number()?;
    let mut out = Segment::last(folder, &device, &place)?;
    let step = Step::Copy;
    let of = u64::try_from(last - place.written).unwrap_or(0);
    let (mut done, after) = (0, place.written);
    go_on(watch, Progress { step, done, of })?;
    journal.lines_after(after, &mut |nr, line| {
        if !place.there.contains(&nr) {
            out.add(line)?;
            report.entries += 1;
        }
        done += 1;
        if done.is_multiple_of(EVERY) {
            go_on(watch, Progress { step, done, of })?;
        }
        Ok(())
    })?;
    out.close(&mut place)?;
    place.written = last;
    place.there.clear();
    place.keep(journal, folder)?;
    report.photos = photos::write(journal, folder, &own, watch)?;
    Ok(report)
}

/// If files that were read or written there are gone, what was in them may be
/// nowhere else: what is there is no longer known.
fn begin_anew_if_lost(place: &mut Place, folder: &Path, device: &str) -> Result<(), Error> {
    let there = segments(folder, device)?;
    let own = format!("{device}/");
    let lost = place
        .files
        .keys()
        .filter(|name| name.starts_with(&own))
        .any(|name| !there.iter().any(|(found, _)| found == name));
    if lost {
        *place = Place::default();
    }
    Ok(())
}

/// The segment being added to.
struct Segment<'a> {
    folder: &'a Path,
    device: &'a str,
    number: u32,
    reached: Reached,
    file: Option<(PathBuf, BufWriter<File>)>,
    done: Vec<(String, Reached)>,
    line: Vec<u8>,
}

impl<'a> Segment<'a> {
    /// The last one, if it is as it was left and has room; else a new one.
    fn last(folder: &'a Path, device: &'a str, place: &Place) -> Result<Self, Error> {
        let all = segments(folder, device)?;
        let of = |name: &str| number(name.rsplit('/').next().unwrap_or_default());
        let highest = all.iter().filter_map(|(name, _)| of(name)).max();
        let mut segment = Self {
            folder,
            device,
            number: highest.map_or(1, |number| number + 1),
            reached: Reached::default(),
            file: None,
            done: Vec::new(),
            line: Vec::new(),
        };
        if let Some((name, path)) = all.last()
            && let Some(reached) = place.files.get(name)
            && reached.bytes < SEGMENT_BYTES
            && path.metadata().map_err(at(path))?.len() == reached.bytes
            && is_same(path, reached)
        {
            segment.number = highest.unwrap_or(1);
            segment.reached = reached.clone();
        }
        Ok(segment)
    }

    fn name(&self) -> String {
        format!("{}/{:06}.jsonl", self.device, self.number)
    }

    fn add(&mut self, entry: &str) -> Result<(), Error> {
        if self.reached.bytes >= SEGMENT_BYTES {
            self.finish()?;
            self.number += 1;
            self.reached = Reached::default();
        }
        let path = self.folder.join(self.name());
        let (path, file) = match &mut self.file {
            Some(open) => open,
            None => {
                let file = File::options().append(true).create(true).open(&path);
                let file = BufWriter::new(file.map_err(at(&path))?);
                self.file.insert((path, file))
            }
        };
        self.line.clear();
        segment::write(entry, &mut self.line);
        file.write_all(&self.line).map_err(at(path))?;
        let bytes = self.reached.bytes + u64::try_from(self.line.len()).unwrap_or(0);
        self.reached = Reached {
            from: self.reached.bytes,
            bytes,
            last: hex(&Sha256::digest(&self.line)),
        };
        Ok(())
    }

    fn finish(&mut self) -> Result<(), Error> {
        if let Some((path, mut file)) = self.file.take() {
            file.flush().map_err(at(&path))?;
            file.get_ref().sync_all().map_err(at(&path))?;
            self.done.push((self.name(), self.reached.clone()));
        }
        Ok(())
    }

    fn close(mut self, place: &mut Place) -> Result<(), Error> {
        self.finish()?;
        files::sync_folder(&self.folder.join(self.device))?;
        place.files.extend(self.done);
        Ok(())
    }
}

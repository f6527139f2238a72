//! Writing an archive: in one stream, read back before it takes its place.

use crate::archive::limits::MAX_PHOTO_BYTES;
use crate::archive::manifest::{
    Days, ENTRIES, Entries, FORMAT, MANIFEST, Manifest, PHOTOS, Photo, VERSION,
};
use crate::archive::seal::Sink;
use crate::archive::{Inside, read};
use crate::audit::{self, Met};
use crate::error::Error;
use crate::files::{self, at, hex};
use crate::finding::{Progress, Step, Watch, go_on};
use crate::journal::Journal;
use crate::stamp::Stamp;
use crate::store::walk::{Found, last, walk};
use chrono::{Datelike, Timelike};
use rusqlite::Connection;
use sha2::{Digest, Sha256};
use std::fs;
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use zip::result::ZipError;
use zip::write::{SimpleFileOptions, StreamWriter};
use zip::{CompressionMethod, DateTime, ZipWriter};

/// How often the way through is told, entries.
const EVERY: u64 = 1_000;

/// What was written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Written {
    /// What is in the archive, as it was read back.
    pub inside: Inside,
    /// Entries that are damaged here and are not in it.
    pub left_out: u64,
}

pub(super) fn write(
    journal: &Journal,
    stamp: &Stamp,
    to: &Path,
    passphrase: Option<&str>,
    watch: &mut Watch,
) -> Result<Written, Error> {
    let mut part = to.as_os_str().to_owned();
    part.push(".part");
    let part = PathBuf::from(part);
    let written = write_part(journal, stamp, &part, passphrase, watch).and_then(|left_out| {
        let inside = read::open(&part, passphrase)?.verify(watch)?;
        files::put(&part, to)?;
        Ok(Written { inside, left_out })
    });
    if written.is_err() {
        // What matters is the first error.
        let _ = files::remove(&part);
    }
    written
}

type Zip = ZipWriter<StreamWriter<Sink>>;

fn write_part(
    journal: &Journal,
    stamp: &Stamp,
    part: &Path,
    passphrase: Option<&str>,
    watch: &mut Watch,
) -> Result<u64, Error> {
    let failed = |error: ZipError| match error {
        ZipError::Io(error) => at(part)(error),
        other => at(part)(io::Error::other(other)),
    };
    let mut zip = ZipWriter::new_stream(Sink::to(part, passphrase)?);
    let options = SimpleFileOptions::default().last_modified_time(moment(stamp));
    let deflated = options.compression_method(CompressionMethod::Deflated);
    let stored = options.compression_method(CompressionMethod::Stored);

    zip.start_file(ENTRIES, deflated).map_err(failed)?;
    let mut met = Met::default();
    let (entries, left_out) = entries(journal.connection(), &mut zip, part, &mut met, watch)?;

    let there = audit::on_disk(&journal.home().join("journal/photos"))?;
    let of = u64::try_from(there.len()).unwrap_or(u64::MAX);
    let mut photos = Vec::new();
    for (done, (name, path)) in (0..).zip(&there) {
        let step = Step::Photos;
        go_on(watch, Progress { step, done, of })?;
        let Some(bytes) = whole(name, path)? else {
            continue;
        };
        zip.start_file(format!("{PHOTOS}{name}"), stored)
            .map_err(failed)?;
        zip.write_all(&bytes).map_err(at(part))?;
        photos.push(Photo {
            sha256: name.clone(),
            bytes: u64::try_from(bytes.len()).unwrap_or(u64::MAX),
        });
    }
    let mut photos_missing = met.photos();
    for photo in &photos {
        photos_missing.remove(&photo.sha256);
    }

    let manifest = Manifest {
        format: FORMAT.to_owned(),
        version: VERSION,
        app: env!("CARGO_PKG_VERSION").to_owned(),
        written: stamp.now,
        entries,
        days: met.days.map(|(first, last)| Days { first, last }),
        photos,
        photos_missing: photos_missing.into_iter().collect(),
        habits: journal.kept().habits()?,
    };
    zip.start_file(MANIFEST, deflated).map_err(failed)?;
    let text = serde_json::to_string_pretty(&manifest)?;
    zip.write_all(text.as_bytes()).map_err(at(part))?;
    let sink = zip.finish().map_err(failed)?.into_inner();
    sink.finish().map_err(at(part))?;
    Ok(left_out)
}

/// The entries that can be read and are as they were written; how many are
/// not.
fn entries(
    db: &Connection,
    zip: &mut Zip,
    part: &Path,
    met: &mut Met,
    watch: &mut Watch,
) -> Result<(Entries, u64), Error> {
    // What is read in one transaction is of one moment.
    let moment = db.unchecked_transaction()?;
    let of = u64::try_from(last(&moment)).unwrap_or(0);
    let step = Step::Entries;
    go_on(watch, Progress { step, done: 0, of })?;
    let (mut count, mut bytes, mut left_out) = (0_u64, 0_u64, 0_u64);
    let mut sum = Sha256::new();
    let mut result = Ok(());
    walk(&moment, &mut |found| {
        result = match found {
            Found::Unread(first, last) => {
                left_out += u64::try_from(last - first + 1).unwrap_or(0);
                Ok(())
            }
            Found::Row(row) => match row.entry.filter(|_| row.hash_right) {
                None => {
                    left_out += 1;
                    Ok(())
                }
                Some(entry) => {
                    met.entry(&entry);
                    let mut line = entry.line.into_bytes();
                    line.push(b'\n');
                    sum.update(&line);
                    count += 1;
                    bytes += u64::try_from(line.len()).unwrap_or(0);
                    zip.write_all(&line).map_err(at(part))
                }
            },
        };
        if count.is_multiple_of(EVERY) && result.is_ok() {
            let done = count;
            result = go_on(watch, Progress { step, done, of });
        }
        result.is_ok()
    });
    result?;
    let entries = Entries {
        count,
        bytes,
        sha256: hex(&sum.finalize()),
    };
    Ok((entries, left_out))
}

/// The bytes of a photo that is what its name says; none if it is not.
fn whole(name: &str, path: &Path) -> Result<Option<Vec<u8>>, Error> {
    if fs::metadata(path).map_err(at(path))?.len() > MAX_PHOTO_BYTES || !read::is_sha256(name) {
        return Ok(None);
    }
    let bytes = fs::read(path).map_err(at(path))?;
    Ok((hex(&Sha256::digest(&bytes)) == name).then_some(bytes))
}

/// When it was written, as a zip tells it; 1980 for what that cannot say.
fn moment(stamp: &Stamp) -> DateTime {
    let now = stamp.now.naive_utc();
    let small = |number: u32| u8::try_from(number).unwrap_or(0);
    DateTime::from_date_and_time(
        u16::try_from(now.year()).unwrap_or(0),
        small(now.month()),
        small(now.day()),
        small(now.hour()),
        small(now.minute()),
        small(now.second()),
    )
    .unwrap_or_default()
}

//! Reading an archive that may be anything.

use crate::ahead::{Give, ahead};
use crate::archive::Inside;
use crate::archive::limits::*;
use crate::archive::lines::each_line;
use crate::archive::manifest::{ENTRIES, FORMAT, MANIFEST, Manifest, PHOTOS, VERSION, Which};
use crate::archive::seal::{self, Source};
use crate::audit::Met;
use crate::backup::Contents;
use crate::entry::{Entry, Hashed};
use crate::error::{Error, Fault};
use crate::files::{at, hex};
use crate::finding::{Progress, Step, Watch, go_on};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::io::{self, BufReader, Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering::Relaxed};
use zip::read::{ArchiveOffset, Config, ZipFile};
use zip::result::ZipError;
use zip::{CompressionMethod, ZipArchive};

/// How often the way through is told, entries.
const EVERY: u64 = 1_000;

/// A source from which only so much can be read, so that a directory without
/// end is not read to its end.
pub(super) struct Bounded {
    from: Box<dyn Source>,
    left: Arc<AtomicU64>,
}

impl Read for Bounded {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        let read = self.from.read(into)?;
        let left = self.left.load(Relaxed);
        let count = u64::try_from(read).unwrap_or(u64::MAX);
        if count > left {
            return Err(io::ErrorKind::FileTooLarge.into());
        }
        self.left.store(left - count, Relaxed);
        Ok(read)
    }
}

impl Seek for Bounded {
    fn seek(&mut self, to: SeekFrom) -> io::Result<u64> {
        self.from.seek(to)
    }
}

/// An archive whose members are the ones its manifest names.
pub(super) struct Opened {
    path: PathBuf,
    zip: ZipArchive<Bounded>,
    pub sealed: bool,
    pub manifest: Manifest,
    /// Bytes of each photo, by its SHA-256.
    pub photos: BTreeMap<String, u64>,
}

/// What an error of the zip reader means.
fn of_zip(path: &Path, member: &str, error: ZipError) -> Error {
    match error {
        ZipError::Io(error) => of_io(path, member, error),
        other => Fault::damaged(member, other).into(),
    }
}

/// An error of reading: of the system, or of what is in the file.
fn of_io(path: &Path, member: &str, error: io::Error) -> Error {
    use io::ErrorKind as Kind;
    match error.kind() {
        Kind::FileTooLarge => Fault::TooLarge("directory").into(),
        Kind::InvalidData | Kind::UnexpectedEof | Kind::InvalidInput | Kind::Other => {
            Fault::damaged(member, error).into()
        }
        _ => at(path)(error),
    }
}

pub(super) fn open(path: &Path, passphrase: Option<&str>) -> Result<Opened, Error> {
    let (mut from, sealed) = seal::open(path, passphrase)?;
    let mut begins = Vec::new();
    let begun = from.by_ref().take(4).read_to_end(&mut begins);
    begun.map_err(|error| of_io(path, "seal", error))?;
    if begins != b"PK\x03\x04" {
        return Err(Fault::NotAnArchive.into());
    }
    let left = Arc::new(AtomicU64::new(MAX_DIRECTORY_BYTES));
    let from = Bounded {
        from,
        left: Arc::clone(&left),
    };
    let failed = |error| of_zip(path, "directory", error);
    let config = Config {
        archive_offset: ArchiveOffset::Known(0),
    };
    let mut zip = ZipArchive::with_config(config, from).map_err(failed)?;
    if zip.len() > MAX_PHOTOS + 2 {
        return Err(Fault::TooLarge("photos").into());
    }
    // Two names alike, members that overlap, headers that differ.
    zip.validate_header_consistency().map_err(failed)?;
    left.store(u64::MAX, Relaxed);
    let manifest = manifest(path, &mut zip)?;
    let photos = members(&zip, &manifest)?;
    Ok(Opened {
        path: path.to_owned(),
        zip,
        sealed,
        manifest,
        photos,
    })
}

/// A member by its name.
fn member<'a>(
    path: &Path,
    zip: &'a mut ZipArchive<Bounded>,
    name: &str,
) -> Result<ZipFile<'a, Bounded>, Error> {
    match zip.by_name(name) {
        Err(ZipError::FileNotFound) => Err(Fault::damaged(name, "it is missing").into()),
        found => found.map_err(|error| of_zip(path, name, error)),
    }
}

fn manifest(path: &Path, zip: &mut ZipArchive<Bounded>) -> Result<Manifest, Error> {
    if zip.index_for_name(MANIFEST).is_none() {
        return Err(Fault::NotAnArchive.into());
    }
    let mut text = Vec::new();
    member(path, zip, MANIFEST)?
        .take(MAX_MANIFEST_BYTES + 1)
        .read_to_end(&mut text)
        .map_err(|error| of_io(path, MANIFEST, error))?;
    if u64::try_from(text.len()).is_ok_and(|length| length > MAX_MANIFEST_BYTES) {
        return Err(Fault::TooLarge("manifest").into());
    }
    let damaged = |error: serde_json::Error| Fault::damaged(MANIFEST, error);
    let which: Which = serde_json::from_slice(&text).map_err(damaged)?;
    if which.format != FORMAT {
        return Err(Fault::NotAnArchive.into());
    }
    if which.version > VERSION {
        return Err(Fault::Newer {
            found: which.version,
            known: VERSION,
        }
        .into());
    }
    Ok(serde_json::from_slice(&text).map_err(damaged)?)
}

/// Holds the members against the manifest: all of them, and no other.
fn members(zip: &ZipArchive<Bounded>, manifest: &Manifest) -> Result<BTreeMap<String, u64>, Error> {
    if manifest.entries.count > MAX_ENTRIES || manifest.entries.bytes > MAX_ENTRIES_BYTES {
        return Err(Fault::TooLarge("entries").into());
    }
    let mut photos = BTreeMap::new();
    for photo in &manifest.photos {
        let name = &photo.sha256;
        if !is_sha256(name) || photos.insert(name.clone(), photo.bytes).is_some() {
            return Err(Fault::damaged(MANIFEST, "a photo is named wrongly or twice").into());
        }
        if photo.bytes > MAX_PHOTO_BYTES {
            return Err(Fault::TooLarge("photo").into());
        }
    }
    let known = |name: &[u8]| {
        std::str::from_utf8(name).is_ok_and(|name| {
            let photo = name.strip_prefix(PHOTOS);
            name == MANIFEST || name == ENTRIES || photo.is_some_and(|it| photos.contains_key(it))
        })
    };
    if let Some(name) = zip.file_names_raw().find(|name| !known(name)) {
        let name: String = String::from_utf8_lossy(name).chars().take(80).collect();
        return Err(Fault::damaged(&format!("{name:?}"), "it does not belong there").into());
    }
    Ok(photos)
}

/// 64 hexadecimal digits, small ones.
pub(crate) fn is_sha256(name: &str) -> bool {
    name.len() == 64
        && name
            .bytes()
            .all(|it| matches!(it, b'0'..=b'9' | b'a'..=b'f'))
}

/// Counts and digests what is read through it.
struct Digesting<R> {
    from: R,
    sum: Sha256,
    bytes: u64,
    most: u64,
}

impl<R: Read> Read for Digesting<R> {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        let read = self.from.read(into)?;
        self.sum.update(into.get(..read).unwrap_or_default());
        self.bytes += u64::try_from(read).unwrap_or(u64::MAX);
        if self.bytes > self.most {
            return Err(io::Error::new(
                io::ErrorKind::InvalidData,
                "longer than it says",
            ));
        }
        Ok(read)
    }
}

impl<R> Digesting<R> {
    fn new(from: R, most: u64) -> Self {
        Self {
            from,
            sum: Sha256::new(),
            bytes: 0,
            most,
        }
    }

    /// Whether all that was read is what was promised.
    fn check(self, member: &str, sha256: &str) -> Result<(), Error> {
        if self.bytes == self.most && hex(&self.sum.finalize()) == sha256 {
            Ok(())
        } else {
            Err(Fault::damaged(member, "it is not what was written").into())
        }
    }
}

impl Opened {
    /// Every entry in turn, then whether they are the ones that were written.
    pub fn each_entry(
        &mut self,
        each: &mut dyn FnMut(u64, Hashed) -> Result<(), Error>,
    ) -> Result<(), Error> {
        ahead(
            |give| self.read_entries(give),
            |(number, entry)| each(number, entry),
        )
    }

    fn read_entries(&mut self, give: Give<(u64, Hashed)>) -> Result<(), Error> {
        let promised = self.manifest.entries.clone();
        let path = self.path.clone();
        let failed = |error| of_io(&path, ENTRIES, error);
        let file = member(&path, &mut self.zip, ENTRIES)?;
        let mut from = BufReader::new(Digesting::new(file, promised.bytes));
        let mut count = 0;
        each_line(&mut from, failed, &mut |number, line| {
            count = number;
            let entry = Entry::hashed(line).map_err(|error| Fault::line(number, error))?;
            if give((number, entry), line.len()) {
                Ok(())
            } else {
                Err(Error::Cancelled)
            }
        })?;
        from.into_inner().check(ENTRIES, &promised.sha256)?;
        if count == promised.count {
            Ok(())
        } else {
            Err(Fault::damaged(ENTRIES, "it has another number of them").into())
        }
    }

    /// Copies a photo; it may only be used when this returns.
    pub fn photo(&mut self, name: &str, to: &mut dyn Write) -> Result<(), Error> {
        let bytes = self.photos.get(name).copied().unwrap_or(0);
        let named = format!("{PHOTOS}{name}");
        let path = self.path.clone();
        let file = member(&path, &mut self.zip, &named)?;
        if file.compression() != CompressionMethod::Stored {
            return Err(Fault::damaged(&named, "a photo must be stored as it is").into());
        }
        let mut from = Digesting::new(file, bytes);
        let mut chunk = vec![0; 1 << 16];
        loop {
            let read = from
                .read(&mut chunk)
                .map_err(|error| of_io(&path, &named, error))?;
            match chunk.get(..read) {
                Some([]) | None => break,
                Some(bytes) => to.write_all(bytes).map_err(at(&path))?,
            }
        }
        from.check(&named, name)
    }

    /// Reads all of it and compares every hash.
    pub fn verify(&mut self, watch: &mut Watch) -> Result<Inside, Error> {
        let step = Step::Verify;
        let entries = self.manifest.entries.count;
        let names: Vec<String> = self.photos.keys().cloned().collect();
        let of = entries + u64::try_from(names.len()).unwrap_or(0);
        go_on(watch, Progress { step, done: 0, of })?;
        let mut met = Met::default();
        self.each_entry(&mut |done, (entry, _)| {
            met.entry(&entry);
            if done.is_multiple_of(EVERY) {
                go_on(watch, Progress { step, done, of })?;
            }
            Ok(())
        })?;
        for (done, name) in (entries..).zip(&names) {
            go_on(watch, Progress { step, done, of })?;
            self.photo(name, &mut io::sink())?;
        }
        go_on(watch, Progress { step, done: of, of })?;
        let photos = met.photos();
        let found = photos.iter().filter(|name| self.photos.contains_key(*name));
        Ok(Inside {
            contents: Contents {
                entries,
                days: met.days,
                photos_found: found.count(),
                photos,
            },
            written: self.manifest.written,
            app: self.manifest.app.clone(),
            sealed: self.sealed,
        })
    }
}

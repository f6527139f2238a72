//! The decoders, and what each promises whatever it is given.

use crate::fuzz::archive::{PHOTO, manifest, whole, zip};
use crate::fuzz::brought;
use crate::writes::stamp;
use plumule_journal::{Entry, Error, Journal, archive, shared};
use std::fs;
use std::path::Path;
use tempfile::TempDir;

/// A decoder.
#[derive(Clone, Copy, Debug)]
pub struct Target {
    /// Its name, and that of its folder in the corpus.
    pub name: &'static str,
    /// Gives it an input. It answers with what it made of it, and panics if a
    /// promise is broken.
    pub give: fn(&[u8]) -> String,
}

/// All of them. A decoder of another crate is added here, with a folder of
/// seeds in the corpus.
pub const TARGETS: &[Target] = &[
    Target {
        name: "archive",
        give: archive_file,
    },
    Target {
        name: "entries",
        give: archive_of_entries,
    },
    Target {
        name: "manifest",
        give: archive_by_manifest,
    },
    Target {
        name: "entry",
        give: entry,
    },
    Target {
        name: "segment",
        give: segment,
    },
    Target {
        name: "packets",
        give: brought::packets,
    },
    Target {
        name: "minima",
        give: brought::minima,
    },
    Target {
        name: "photo",
        give: brought::photo,
    },
];

/// A folder of its own, in memory where the system has such a place.
pub(super) fn folder() -> TempDir {
    let memory = Path::new("/dev/shm");
    if memory.is_dir() {
        TempDir::new_in(memory).unwrap()
    } else {
        TempDir::new().unwrap()
    }
}

/// A line that is taken is kept as it is.
fn entry(input: &[u8]) -> String {
    let Ok(text) = std::str::from_utf8(input) else {
        return "no text".to_owned();
    };
    match Entry::parse(text) {
        Ok(entry) => {
            assert_eq!(entry.line, text);
            if entry.content.is_some() {
                entry.kind
            } else {
                "unknown".to_owned()
            }
        }
        Err(error) => error.to_string(),
    }
}

/// What is looked into and refused changes nothing; what is whole is taken in,
/// adds up to the same when it is rebuilt, and goes out and in again.
fn archive_file(input: &[u8]) -> String {
    let place = folder();
    let path = place.path().join("in");
    fs::write(&path, input).unwrap();
    let looked = archive::look_inside(&path, Some("words"), &mut |_| true);
    let inside = match looked {
        Ok(inside) => inside,
        Err(error) => return said(&error),
    };
    let home = place.path().join("home");
    let mut journal = Journal::open(&home, &stamp(0)).unwrap();
    let taken = archive::take_in(&mut journal, &stamp(1), &path, Some("words"), &mut |_| true);
    let taken = taken.unwrap();
    assert_eq!(taken.inside, inside);
    let count = journal.count().unwrap();
    assert_eq!(taken.report.new, count);
    assert_eq!(
        taken.report.new + taken.report.known,
        inside.contents.entries
    );
    as_it_adds_up(&mut journal);
    let out = place.path().join("out");
    let written = archive::write(&journal, &stamp(2), &out, None, &mut |_| true).unwrap();
    assert_eq!(written.inside.contents.entries, count);
    let kinds: Vec<_> = taken.report.kinds.keys().map(String::as_str).collect();
    format!("taken: {}", kinds.join(" "))
}

fn archive_of_entries(input: &[u8]) -> String {
    archive_file(&whole(input, &[PHOTO]))
}

fn archive_by_manifest(input: &[u8]) -> String {
    let entries = include_bytes!("../../corpus/entries/of-each-kind.jsonl");
    let photo = format!("photos/{}", super::archive::sha256(PHOTO));
    archive_file(&zip(&[
        ("entries.jsonl", entries),
        (&photo, PHOTO),
        ("manifest.json", input),
    ]))
}

/// A segment may be anything; what can be read of it is taken in.
fn segment(input: &[u8]) -> String {
    let place = folder();
    let shared = place.path().join("shared");
    let device = shared.join("019e0000-0000-7000-8000-000000000001");
    fs::create_dir_all(&device).unwrap();
    fs::write(device.join("000001.jsonl"), input).unwrap();
    let mut journal = Journal::open(&place.path().join("home"), &stamp(0)).unwrap();
    let read = shared::read_others(&mut journal, &stamp(1), &shared, &mut |_| true).unwrap();
    assert_eq!(read.union.new, journal.count().unwrap());
    as_it_adds_up(&mut journal);
    let again = shared::read_others(&mut journal, &stamp(2), &shared, &mut |_| true).unwrap();
    assert_eq!((again.union.new, again.waiting), (0, read.waiting));
    let kinds: Vec<_> = read.union.kinds.keys().map(String::as_str).collect();
    format!("{} waiting: {}", read.waiting, kinds.join(" "))
}

/// What the entries add up to is what they add up to anew.
pub(super) fn as_it_adds_up(journal: &mut Journal) {
    let findings = journal.check(&mut |_| true);
    let about_photos = |code: &str| code == "photo_missing" || code == "entries_missing";
    let bad = findings.found.iter().find(|it| !about_photos(it.code));
    assert!(bad.is_none(), "{bad:?}");
}

fn said(error: &Error) -> String {
    // The codes a hostile file may meet; another would send the grower to look
    // for a fault of the phone.
    let known = [
        "not_an_archive",
        "archive_newer",
        "archive_damaged",
        "archive_too_large",
        "passphrase_wrong",
    ];
    assert!(known.contains(&error.code()), "{}: {error}", error.code());
    error.to_string()
}

/// The seeds that are made and not written by hand.
pub fn made() -> Vec<(&'static str, String, Vec<u8>)> {
    let entries = include_bytes!("../../corpus/entries/of-each-kind.jsonl");
    let few: Vec<u8> = entries
        .split_inclusive(|byte| *byte == b'\n')
        .take(3)
        .flatten()
        .copied()
        .collect();
    vec![
        ("archive", "whole.zip".into(), whole(entries, &[PHOTO])),
        ("archive", "few.zip".into(), whole(&few, &[])),
        ("archive", "empty.zip".into(), whole(&[], &[])),
        (
            "manifest",
            "fits.json".into(),
            manifest(entries, &[PHOTO]).into_bytes(),
        ),
    ]
}

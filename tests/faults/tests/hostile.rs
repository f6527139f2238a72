//! Archives by a hostile hand: each is refused with its code before anything
//! here is changed.

use plumule_faults::fuzz::archive::{PHOTO, manifest, sha256, whole, zip};
use plumule_faults::writes::stamp;
use plumule_faults::{home, writes};
use plumule_journal::id::BatchId;
use plumule_journal::{Journal, archive};
use std::fs;
use std::path::Path;
use tempfile::TempDir;

const ENTRIES: &[u8] = include_bytes!("../corpus/entries/of-each-kind.jsonl");

/// Everything in a home, with digests.
fn files(home: &Path) -> Vec<(String, String)> {
    let mut found = Vec::new();
    let mut open = vec![home.to_owned()];
    while let Some(folder) = open.pop() {
        for file in fs::read_dir(folder).unwrap() {
            let path = file.unwrap().path();
            let name = path.display().to_string();
            if path.is_dir() {
                open.push(path);
            } else if !name.contains("-shm") {
                found.push((name, sha256(&fs::read(&path).unwrap())));
            }
        }
    }
    found.sort();
    found
}

struct Place {
    home: TempDir,
    journal: Journal,
}

impl Place {
    fn new() -> Self {
        let home = home::with_acts(3);
        let journal = Journal::open(home.path(), &stamp(0)).unwrap();
        Self { home, journal }
    }

    /// It is refused with a code by all that read it, and nothing is changed.
    #[track_caller]
    fn refuses(&mut self, code: &str, bytes: &[u8]) {
        let elsewhere = home::empty();
        let path = elsewhere.path().join("in.zip");
        fs::write(&path, bytes).unwrap();
        let before = files(self.home.path());
        let mut on = |_| true;
        let now = stamp(50);
        let outcomes = [
            archive::look_inside(&path, None, &mut on).map(drop),
            archive::preview(&self.journal, &path, None, &mut on).map(drop),
            archive::take_in(&mut self.journal, &now, &path, None, &mut on).map(drop),
            archive::restore(&elsewhere.path().join("home"), &now, &path, None, &mut on).map(drop),
        ];
        for outcome in outcomes {
            let error = outcome.unwrap_err();
            assert_eq!(error.code(), code, "{error}");
        }
        assert_eq!(files(self.home.path()), before);
        assert!(!elsewhere.path().join("home/journal/journal.db").exists());
        assert_eq!(
            fs::read_dir(elsewhere.path()).unwrap().count(),
            2,
            "in.zip and home"
        );
    }
}

/// The members of a whole archive with another beside them.
fn with(name: &str, bytes: &[u8]) -> Vec<u8> {
    let manifest = manifest(ENTRIES, &[]);
    zip(&[
        ("entries.jsonl", ENTRIES),
        ("manifest.json", manifest.as_bytes()),
        (name, bytes),
    ])
}

#[test]
fn what_fits_is_taken_so_that_the_rest_is_refused_for_its_own_reason() {
    let place = home::empty();
    let path = place.path().join("in.zip");
    fs::write(&path, whole(ENTRIES, &[PHOTO])).unwrap();
    let inside = archive::look_inside(&path, None, &mut |_| true).unwrap();
    assert_eq!(inside.contents.photos_found, 1);
}

#[test]
fn names_are_never_paths() {
    let mut place = Place::new();
    for name in [
        "../evil",
        "/etc/evil",
        "photos/../../evil",
        "photos/",
        "photos/evil.jpg",
        "..\\evil",
        "C:\\evil",
        "manifest.json/evil",
        "Entries.jsonl",
        "entries.jsonl\u{0}.txt",
        &format!("photos/{}", sha256(PHOTO)),
        &format!("photos/{}", "A".repeat(64)),
        &"long/".repeat(10_000),
    ] {
        place.refuses("archive_damaged", &with(name, PHOTO));
    }
}

#[test]
fn a_member_twice_missing_or_overlapping_is_refused() {
    let mut place = Place::new();
    // Two names of one length, one of them then changed to the other.
    let mut twice = with("entries.jsonX", ENTRIES);
    let at: Vec<_> = (0..twice.len() - 13)
        .filter(|at| &twice[*at..at + 13] == b"entries.jsonX")
        .collect();
    assert_eq!(at.len(), 2);
    for at in at {
        twice[at + 12] = b'l';
    }
    place.refuses("archive_damaged", &twice);
    let fits = manifest(ENTRIES, &[PHOTO]);
    place.refuses(
        "archive_damaged",
        &zip(&[("manifest.json", fits.as_bytes())]),
    );
    let members = [
        ("entries.jsonl", ENTRIES),
        ("manifest.json", fits.as_bytes()),
    ];
    place.refuses("archive_damaged", &zip(&members));
    place.refuses("not_an_archive", &zip(&[("entries.jsonl", ENTRIES)]));
    // Both photos begin at the same place in the file.
    let (one, two) = (sha256(PHOTO), sha256(b"another"));
    let photos = format!("photos/{one}");
    let other = format!("photos/{two}");
    let manifest = manifest(ENTRIES, &[PHOTO, b"another"]);
    let mut bytes = zip(&[
        ("entries.jsonl", ENTRIES),
        (&photos, PHOTO),
        (&other, b"another"),
        ("manifest.json", manifest.as_bytes()),
    ]);
    let directory: Vec<_> = (0..bytes.len() - 4)
        .filter(|at| bytes[*at..].starts_with(b"PK\x01\x02"))
        .collect();
    let offset = bytes[directory[1] + 42..directory[1] + 46].to_vec();
    bytes[directory[2] + 42..directory[2] + 46].copy_from_slice(&offset);
    place.refuses("archive_damaged", &bytes);
}

#[test]
fn another_file_a_newer_one_or_none_is_told() {
    let mut place = Place::new();
    place.refuses("not_an_archive", b"");
    place.refuses("not_an_archive", b"SQLite format 3\0");
    place.refuses("not_an_archive", &zip(&[("readme.txt", b"words")]));
    let of_others = manifest(ENTRIES, &[]).replace("plumule-journal", "other");
    let members = |manifest: &str| {
        zip(&[
            ("entries.jsonl", ENTRIES),
            ("manifest.json", manifest.as_bytes()),
        ])
    };
    place.refuses("not_an_archive", &members(&of_others));
    let newer = manifest(ENTRIES, &[]).replace("\"version\":1", "\"version\":2,\"x\":[{}]");
    place.refuses("archive_newer", &members(&newer));
    // What comes before a zip is not read as part of it.
    let mut behind = b"#!/bin/sh\n".to_vec();
    behind.extend(whole(ENTRIES, &[]));
    place.refuses("not_an_archive", &behind);
    let mut locked = whole(ENTRIES, &[]);
    let local = 6;
    locked[local] |= 1;
    let at = (0..locked.len()).find(|at| locked[*at..].starts_with(b"PK\x01\x02"));
    locked[at.unwrap() + 8] |= 1;
    place.refuses("archive_damaged", &locked);
}

#[test]
fn a_field_more_in_the_manifest_or_an_entry_is_no_reason_to_refuse() {
    let mut entries = ENTRIES.to_vec();
    entries.extend(
        String::from_utf8(ENTRIES.to_vec())
            .unwrap()
            .lines()
            .next()
            .unwrap()
            .replace("\"seq\":1,", "\"seq\":999,\"mood\":{\"of\":[1.50]},")
            .bytes(),
    );
    entries.push(b'\n');
    let fits = manifest(&entries, &[]).replace("\"days\"", "\"mood\":[{\"x\":1}],\"days\"");
    let place = home::empty();
    let path = place.path().join("in.zip");
    let members = [
        ("entries.jsonl", &entries[..]),
        ("manifest.json", fits.as_bytes()),
    ];
    fs::write(&path, zip(&members)).unwrap();
    let mut journal = Journal::open(&place.path().join("home"), &stamp(0)).unwrap();
    archive::take_in(&mut journal, &stamp(1), &path, None, &mut |_| true).unwrap();
    let out = journal.lines().unwrap().join("\n") + "\n";
    assert_eq!(out.as_bytes(), entries);
}

#[test]
fn lines_that_are_no_entries_are_refused_whatever_their_hash() {
    let mut place = Place::new();
    let line = |text: &[u8]| {
        let mut entries = ENTRIES.to_vec();
        entries.extend(text);
        whole(&entries, &[])
    };
    let deep = [&b"{\"id\":"[..], &b"[".repeat(500_000), b"\n"].concat();
    let first = ENTRIES.split(|byte| *byte == b'\n').next().unwrap();
    let text = String::from_utf8(first.to_vec()).unwrap();
    let beyond = text.replace("\"lamport\":1,", "\"lamport\":9007199254740993,") + "\n";
    assert_ne!(beyond.trim_end(), text);
    for bad in [
        &b"{}\n"[..],
        b"\n",
        b"\xff\xfe\n",
        b"\xed\xa0\x80\n",
        first,
        &deep,
        beyond.as_bytes(),
        &[&b"x".repeat(2 << 20)[..], b"\n"].concat(),
    ] {
        place.refuses("archive_damaged", &line(bad));
    }
}

#[test]
fn what_the_manifest_says_is_held_against_what_is_there() {
    let mut place = Place::new();
    let fits = manifest(ENTRIES, &[PHOTO]);
    let photo = format!("photos/{}", sha256(PHOTO));
    let count = ENTRIES.iter().filter(|byte| **byte == b'\n').count();
    let wrongly: Vec<(&str, String)> = vec![
        (
            "archive_damaged",
            fits.replace(&sha256(ENTRIES), &sha256(b"x")),
        ),
        (
            "archive_damaged",
            fits.replace(&format!("\"count\":{count}"), "\"count\":1"),
        ),
        (
            "archive_damaged",
            fits.replace(&ENTRIES.len().to_string(), "10"),
        ),
        (
            "archive_damaged",
            fits.replace("\"bytes\":20}", "\"bytes\":21}"),
        ),
        (
            "archive_damaged",
            fits.replace("\"bytes\":20}", "\"bytes\":19}"),
        ),
        (
            "archive_damaged",
            fits.replace("\"photos\":[", "\"photos\":[7,"),
        ),
        ("archive_damaged", fits[..fits.len() - 1].to_owned()),
        (
            "archive_too_large",
            fits.replace("\"bytes\":20}", "\"bytes\":4000000000}"),
        ),
        (
            "archive_too_large",
            fits.replace(&format!("\"count\":{count}"), "\"count\":5000001"),
        ),
        (
            "archive_too_large",
            format!("{}{fits}", " ".repeat(33 << 20)),
        ),
    ];
    for (code, manifest) in wrongly {
        assert_ne!(manifest, fits);
        let members = [
            ("entries.jsonl", ENTRIES),
            (photo.as_str(), PHOTO),
            ("manifest.json", manifest.as_bytes()),
        ];
        place.refuses(code, &zip(&members));
    }
    let other = [
        ("entries.jsonl", ENTRIES),
        (photo.as_str(), b"not that photo at all"),
        ("manifest.json", fits.as_bytes()),
    ];
    place.refuses("archive_damaged", &zip(&other));
}

#[test]
fn a_bomb_is_read_no_further_than_it_says_it_is_long() {
    let mut place = Place::new();
    // 300 MB of spaces in some hundred kB; the manifest says 20 bytes.
    let bomb = vec![b' '; 300 << 20];
    let fits = manifest(b"12345678901234567890", &[]);
    let members = [
        ("entries.jsonl", &bomb[..]),
        ("manifest.json", fits.as_bytes()),
    ];
    let bytes = zip(&members);
    assert!(bytes.len() < 1 << 20);
    place.refuses("archive_damaged", &bytes);
    // A photo that is packed may be one; they are stored.
    let photo = vec![0; 1 << 20];
    let name = format!("photo_/{}", sha256(&photo));
    let fits = manifest(ENTRIES, &[&photo]);
    let members = [
        ("entries.jsonl", ENTRIES),
        (name.as_str(), &photo[..]),
        ("manifest.json", fits.as_bytes()),
    ];
    let mut bytes = zip(&members);
    for at in 0..bytes.len() - 7 {
        if bytes[at..].starts_with(b"photo_/") {
            bytes[at + 5] = b's';
        }
    }
    place.refuses("archive_damaged", &bytes);
}

#[test]
fn a_directory_without_end_is_not_read_to_its_end() {
    let mut place = Place::new();
    let names: Vec<_> = (0..100_003).map(|n| format!("{n}")).collect();
    let members: Vec<_> = names.iter().map(|name| (name.as_str(), &b""[..])).collect();
    place.refuses("archive_too_large", &zip(&members));
}

#[test]
fn entries_that_go_in_circles_are_folded_all_the_same() {
    // A batch from itself, two from each other, an amendment of itself, and of
    // each other.
    let first = ENTRIES.split(|byte| *byte == b'\n').next().unwrap();
    let text = String::from_utf8(first.to_vec()).unwrap();
    let at = text.find("\"kind\":").unwrap();
    let id = |n: u32| format!("0190f000-0000-7000-8000-{n:012x}");
    let line = |n: u32, kind: &str, what: String| {
        let head = text[..at].replace(&text[7..43], &id(n));
        let head = head.replace("\"seq\":1,", &format!("\"seq\":{n},"));
        format!("{head}\"kind\":\"{kind}\",\"v\":1,\"what\":{what}}}\n")
    };
    let went = |n: u32, from: u32, to: u32| {
        let part = format!(
            "{{\"batch\":\"{}\",\"tray\":\"{}\",\"cells\":[0],\"number\":3}}",
            id(to),
            id(99)
        );
        let of = format!("{{\"type\":\"batch\",\"id\":\"{}\"}}", id(from));
        let what = format!("{{\"of\":{of},\"step\":\"pricked_out\",\"parts\":[{part}]}}");
        line(n, "went_on", what)
    };
    let amends = |n: u32, root: u32| {
        line(
            n,
            "amended",
            format!("{{\"root\":\"{}\",\"content\":null}}", id(root)),
        )
    };
    let entries = [
        went(11, 50, 50),
        went(12, 51, 52),
        went(13, 52, 51),
        amends(14, 14),
        amends(15, 16),
        amends(16, 15),
    ]
    .concat();
    let place = home::empty();
    let path = place.path().join("in.zip");
    fs::write(&path, whole(entries.as_bytes(), &[])).unwrap();
    let mut journal = Journal::open(&place.path().join("home"), &stamp(0)).unwrap();
    let taken = archive::take_in(&mut journal, &stamp(1), &path, None, &mut |_| true).unwrap();
    assert_eq!((taken.report.new, taken.report.unknown_kinds), (6, 0));
    let there = |journal: &Journal| -> usize {
        let ids = [50, 51, 52].map(|n| BatchId(id(n).parse().unwrap()));
        let found = ids.map(|id| journal.batch(id).unwrap());
        found.iter().flatten().count()
    };
    assert_eq!(there(&journal), 3);
    writes::act(&mut journal, 1).unwrap();
    // What came from them goes with them, and that ends too.
    for n in [11, 12] {
        let root = id(n).parse().unwrap();
        journal.withdraw(&stamp(60), root, "", true).unwrap();
    }
    assert_eq!(there(&journal), 0);
}

#[test]
fn a_seal_that_wants_too_much_work_or_is_broken_is_refused() {
    let place = home::empty();
    let path = place.path().join("in.age");
    let code = |bytes: &[u8]| {
        fs::write(&path, bytes).unwrap();
        let looked = archive::look_inside(&path, Some("words"), &mut |_| true);
        looked.unwrap_err().code()
    };
    let header = |work: u32| {
        format!(
            "age-encryption.org/v1\n-> scrypt bBjlhJVYZeE4aqUdmtRHfw {work}\n\
             ZV/AhotwSGqaPCU43cepl4WYUouAa17a3xpu4G2yi5k\n\
             --- fgMiVLJHMlg9fW7CVG/hPS5EAU4Zeg19LyCP7SoH5nA\n"
        )
    };
    assert_eq!(code(header(30).as_bytes()), "archive_damaged", "no nonce");
    let with_nonce = [header(30).as_bytes(), &[7; 16]].concat();
    assert_eq!(code(&with_nonce), "archive_too_large");
    assert_eq!(code(b"age-encryption.org/v1\n"), "archive_damaged");
    assert_eq!(
        code(b"age-encryption.org/v9\n-> x\n\n---\n"),
        "archive_damaged"
    );
    let sealed = place.path().join("out.age");
    let journal = Journal::open(&place.path().join("home"), &stamp(0)).unwrap();
    archive::write(&journal, &stamp(1), &sealed, Some("words"), &mut |_| true).unwrap();
    let whole = fs::read(&sealed).unwrap();
    for at in [whole.len() - 1, whole.len() / 2 + 60] {
        let mut flipped = whole.clone();
        flipped[at] ^= 1;
        assert_eq!(code(&flipped), "archive_damaged", "at {at}");
    }
    assert_eq!(code(&whole[..whole.len() - 1]), "archive_damaged");
    assert_eq!(code(&[&whole[..], b"x"].concat()), "archive_damaged");
}

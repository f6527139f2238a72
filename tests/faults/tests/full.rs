//! A disk on which no file grows beyond so many kilobytes, at every limit from
//! none until the work is done: writing and reading archives and taking in a
//! photo. Unlike the failing file system for SQLite this fails every write,
//! also those that are none of SQLite's. Each time all is done or nothing, and
//! it works when the cause is gone.
//!
//! The limit is the shell's `ulimit -f` (POSIX, in units of 512 or 1,024
//! bytes); with the signal ignored a write beyond it fails as on a full disk.

use plumule_faults::{home, writes};
use plumule_journal::{Journal, archive};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use tempfile::TempDir;

const PROGRAM: &str = env!("CARGO_BIN_EXE_crash");
/// How the limit grows, units.
const STEP: u32 = 12;

/// Runs the program with a limit on the length of files.
fn limited(units: u32, words: &[&str]) -> Output {
    let line = format!("trap '' XFSZ; ulimit -f {units}; exec \"$0\" \"$@\"");
    let mut command = Command::new("sh");
    command.args(["-c", &line, PROGRAM]).args(words);
    command.output().unwrap()
}

/// Gives `work` ever more room until it is done, and looks each time at what
/// is there; how often it failed.
fn with_ever_more_room(
    base: &Path,
    words: impl Fn(&Path) -> Vec<String>,
    look: impl Fn(&Path, bool),
) -> u32 {
    let mut failed = 0;
    for n in 0.. {
        let home = home::copied(base);
        let words = words(home.path());
        let words: Vec<&str> = words.iter().map(String::as_str).collect();
        let done = limited(n * STEP, &words);
        let well = done.status.success();
        look(home.path(), well);
        if well {
            break;
        }
        // It ends by itself, with an error, and is not killed.
        assert!(done.status.code().is_some(), "{done:?}");
        failed += 1;
    }
    failed
}

fn text(path: &Path) -> String {
    path.to_str().unwrap().to_owned()
}

/// A home with acts and two photos.
fn with_photos(first: u64) -> TempDir {
    let home = home::empty();
    let mut journal = Journal::open(home.path(), &writes::stamp(first)).unwrap();
    for n in first..first + 12 {
        writes::act(&mut journal, n).unwrap();
    }
    for n in [first + 1, first + 2] {
        writes::photo(&mut journal, n).unwrap();
    }
    home
}

fn lines(home: &Path) -> Vec<String> {
    let mut lines = home::whole(home).unwrap().lines().unwrap();
    lines.sort();
    lines
}

fn parts(folder: &Path) -> Vec<PathBuf> {
    let files = fs::read_dir(folder).unwrap();
    let paths = files.map(|file| file.unwrap().path());
    paths
        .filter(|path| path.extension().is_some_and(|end| end == "part"))
        .collect()
}

/// Another journal with photos, and its archive.
fn archived() -> (TempDir, PathBuf) {
    let other = with_photos(100);
    let path = other.path().join("out.zip");
    let journal = Journal::open(other.path(), &writes::stamp(0)).unwrap();
    archive::write(&journal, &writes::stamp(400), &path, None, &mut |_| true).unwrap();
    (other, path)
}

#[test]
fn an_archive_is_written_whole_or_the_old_one_stays() {
    let base = with_photos(0);
    let before = lines(base.path());
    fs::write(base.path().join("out.zip"), b"an older one").unwrap();
    let failed = with_ever_more_room(
        base.path(),
        |home| vec!["archive".into(), text(home), text(&home.join("out.zip"))],
        |home, well| {
            let out = home.join("out.zip");
            if well {
                let inside = archive::look_inside(&out, None, &mut |_| true).unwrap();
                assert_eq!(inside.contents.photos_found, 2);
            } else {
                assert_eq!(fs::read(&out).unwrap(), b"an older one");
            }
            assert_eq!(parts(home), [""; 0].map(PathBuf::from));
            assert_eq!(lines(home), before);
        },
    );
    println!("writing an archive: failed with {failed} limits");
    assert!(failed > 20, "{failed}");
}

#[test]
fn an_archive_is_taken_in_whole_or_not_at_all() {
    let base = home::with_acts(12);
    let before = lines(base.path());
    let (other, path) = archived();
    let mut after = before.clone();
    after.extend(lines(other.path()));
    after.sort();
    let failed = with_ever_more_room(
        base.path(),
        |home| vec!["take-in".into(), text(home), text(&path)],
        |home, well| {
            let found = lines(home);
            assert_eq!(found, if well { after.clone() } else { before.clone() });
            let photos = fs::read_dir(home.join("journal/photos")).unwrap().count();
            assert_eq!(photos, if well { 2 } else { 0 });
        },
    );
    println!("taking in an archive: failed with {failed} limits");
    assert!(failed > 10, "{failed}");
}

#[test]
fn an_archive_is_restored_whole_or_the_journal_stays() {
    let base = home::with_acts(12);
    let before = lines(base.path());
    let (other, path) = archived();
    let after = lines(other.path());
    let failed = with_ever_more_room(
        base.path(),
        |home| vec!["restore".into(), text(home), text(&path)],
        |home, well| assert_eq!(lines(home), if well { &after } else { &before }.clone()),
    );
    println!("restoring an archive: failed with {failed} limits");
    assert!(failed > 10, "{failed}");
}

#[test]
fn a_photo_is_taken_in_whole_or_not_at_all() {
    let base = home::with_acts(12);
    let before = lines(base.path());
    let failed = with_ever_more_room(
        base.path(),
        |home| vec!["photo".into(), text(home)],
        |home, well| {
            // `whole` holds the photos against their names.
            let found = lines(home);
            assert_eq!(found.len(), before.len() + usize::from(well));
            assert_eq!(
                parts(&home.join("journal/photos")),
                [""; 0].map(PathBuf::from)
            );
        },
    );
    println!("taking in a photo: failed with {failed} limits");
    assert!(failed > 10, "{failed}");
}

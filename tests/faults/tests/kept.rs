//! Journals of earlier versions open with all that is in them, and archives
//! are read by programs that are not ours: Info-ZIP's `unzip`, `jq` and the
//! system's `sha256sum`.

use plumule_faults::kept::{self, PASSPHRASE};
use plumule_faults::{home, writes};
use plumule_journal::{Journal, archive};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

/// What a program prints, given some input.
fn ask(program: &str, words: &[&str], input: &[u8]) -> String {
    let mut child = Command::new(program)
        .args(words)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap_or_else(|error| panic!("{program}: {error}; `cargo xtask test` installs it"));
    let mut to = child.stdin.take().unwrap();
    let input = input.to_owned();
    let writer = std::thread::spawn(move || std::io::Write::write_all(&mut to, &input));
    let output = child.wait_with_output().unwrap();
    writer.join().unwrap().unwrap();
    assert!(output.status.success(), "{program} {words:?}");
    String::from_utf8(output.stdout).unwrap()
}

fn text(path: &Path) -> &str {
    path.to_str().unwrap()
}

/// The lines of the entries, by `unzip`.
fn unzipped(path: &Path) -> Vec<String> {
    let entries = ask("unzip", &["-p", text(path), "entries.jsonl"], b"");
    entries.lines().map(str::to_owned).collect()
}

#[test]
fn journals_of_earlier_versions_open_with_all_that_is_in_them() {
    let all = kept::all();
    assert!(!all.is_empty());
    for folder in all {
        let zip = folder.join("journal.zip");
        let want = unzipped(&zip);
        assert!(want.len() > 40, "{}", want.len());
        let home = home::copied(&folder.join("home"));
        let journal = home::opened(home.path());
        assert!(!journal.read_only());
        assert_eq!(journal.lines().unwrap(), want);
        // What it adds up to, by numbers counted when it was written.
        assert_eq!(
            journal.garden().unwrap().described.unwrap().zone,
            "Europe/Berlin"
        );
        assert!(!journal.places().unwrap().is_empty());
        assert!(!journal.packets().unwrap().is_empty());
        for (name, passphrase) in [("journal.zip", None), ("journal.age", Some(PASSPHRASE))] {
            let path = folder.join(name);
            let elsewhere = home::empty();
            let restored = elsewhere.path().join("home");
            let stamp = writes::stamp(90);
            let done = archive::restore(&restored, &stamp, &path, passphrase, &mut |_| true);
            let done = done.unwrap();
            assert_eq!(done.contents.photos_found, 1);
            assert_eq!(home::opened(&restored).lines().unwrap(), want);
        }
    }
}

#[test]
fn an_archive_is_read_by_unzip_and_jq() {
    let home = home::copied(&kept::all().pop().unwrap().join("home"));
    let journal = home::opened(home.path());
    let path = home.path().join("out.zip");
    archive::write(&journal, &writes::stamp(90), &path, None, &mut |_| true).unwrap();
    ask("unzip", &["-tqq", text(&path)], b"");
    let lines = unzipped(&path);
    assert_eq!(lines, journal.lines().unwrap());

    let entries = lines.join("\n") + "\n";
    let kinds = ask("jq", &["-r", ".kind"], entries.as_bytes());
    let mut counted: BTreeMap<&str, u64> = BTreeMap::new();
    for kind in kinds.lines() {
        *counted.entry(kind).or_default() += 1;
    }
    let empty = home::empty();
    let mut other = Journal::open(empty.path(), &writes::stamp(0)).unwrap();
    let stamp = writes::stamp(91);
    let taken = archive::take_in(&mut other, &stamp, &path, None, &mut |_| true).unwrap();
    let ours: BTreeMap<&str, u64> = taken.report.kinds.iter().map(|(k, n)| (&**k, *n)).collect();
    assert_eq!(counted, ours);

    let manifest = ask("unzip", &["-p", text(&path), "manifest.json"], b"");
    let said = |filter: &str| {
        let answer = ask("jq", &["-r", filter], manifest.as_bytes());
        answer.trim_end().to_owned()
    };
    assert_eq!(said(".format"), "plumule-journal");
    assert_eq!(said(".entries.count"), lines.len().to_string());
    let sum = |bytes: &[u8]| ask("sha256sum", &[], bytes)[..64].to_owned();
    assert_eq!(said(".entries.sha256"), sum(entries.as_bytes()));
    let photo = said(".photos[].sha256");
    let out = Command::new("unzip")
        .args(["-p", text(&path), &format!("photos/{photo}")])
        .output()
        .unwrap();
    assert_eq!(sum(&out.stdout), photo);
    let mut names: Vec<_> = ask("unzip", &["-Z1", text(&path)], b"")
        .lines()
        .map(str::to_owned)
        .collect();
    names.sort();
    let photo = format!("photos/{photo}");
    assert_eq!(names, ["entries.jsonl", "manifest.json", &photo]);
    // The identity of this device is in the lines it wrote, and nowhere else.
    assert!(!manifest.contains(&journal.device().to_string()));
    fs::remove_file(path).unwrap();
}

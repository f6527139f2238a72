//! Scenes as readable text: entries, then now, then what is said. They come in
//! pairs that differ in one fact (`{this | that}`) and in what is said of them.
//! See `tests/scenes/README.md`.

mod garden;

use garden::Garden;
use std::fs;
use std::path::Path;

/// One scene of a file, told twice.
struct Pair<'a> {
    title: &'a str,
    entries: Vec<&'a str>,
    /// What is expected: of the first, the second or both; said or not said.
    expected: Vec<Expected<'a>>,
}

struct Expected<'a> {
    first: bool,
    second: bool,
    said: bool,
    text: &'a str,
}

fn pairs(file: &str) -> Vec<Pair<'_>> {
    let mut pairs: Vec<Pair<'_>> = Vec::new();
    for line in file.lines().map(str::trim) {
        if line.is_empty() || line.starts_with('#') {
            continue;
        }
        if let Some(title) = line.strip_prefix("== ") {
            pairs.push(Pair {
                title,
                entries: Vec::new(),
                expected: Vec::new(),
            });
            continue;
        }
        let pair = pairs.last_mut().expect("a scene begins with ==");
        match expectation(line) {
            Some(expected) => pair.expected.push(expected),
            None => pair.entries.push(line),
        }
    }
    pairs
}

fn expectation(line: &str) -> Option<Expected<'_>> {
    let (of, text) = line.split_once(':')?;
    let (of, said) = match of.strip_suffix(" not") {
        Some(of) => (of, false),
        None => (of, true),
    };
    let (first, second) = match of {
        "first" => (true, false),
        "second" => (false, true),
        "both" => (true, true),
        _ => return None,
    };
    Some(Expected {
        first,
        second,
        said,
        text: text.trim(),
    })
}

/// A line as it stands in the first or the second; none where it has no entry.
fn in_scene(line: &str, second: bool) -> Option<String> {
    let Some((before, rest)) = line.split_once('{') else {
        return Some(line.to_owned());
    };
    let (choice, after) = rest.split_once('}').expect("a brace is closed");
    let (one, other) = choice.split_once('|').expect("a choice has two parts");
    let part = if second { other } else { one }.trim();
    let line = format!("{before}{part}{after}");
    let line = line.trim();
    (!line.is_empty()).then(|| line.to_owned())
}

#[test]
fn scenes_say_what_is_to_be_said() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/scenes");
    let mut files: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|it| it.unwrap().path())
        .collect();
    files.retain(|path| path.extension().is_some_and(|ext| ext == "txt"));
    files.sort();
    let mut scenes = 0;
    let mut wrong = Vec::new();
    for path in files {
        let file = fs::read_to_string(&path).unwrap();
        for pair in pairs(&file) {
            let differ = pair.entries.iter().filter(|line| line.contains('{'));
            assert_eq!(differ.count(), 1, "{}: one fact differs", pair.title);
            let told = [false, true].map(|second| {
                let mut garden = Garden::new();
                for line in &pair.entries {
                    if let Some(line) = in_scene(line, second) {
                        garden.read(&line);
                    }
                }
                garden.said()
            });
            scenes += 2;
            if told[0] == told[1] {
                wrong.push(format!(
                    "{}: the same is said twice:\n{}",
                    pair.title,
                    told[0].join("\n")
                ));
            }
            for (lines, second) in told.iter().zip([false, true]) {
                let of = if second { "second" } else { "first" };
                for expected in &pair.expected {
                    let meant = if second {
                        expected.second
                    } else {
                        expected.first
                    };
                    let found = lines.iter().any(|line| line.contains(expected.text));
                    if meant && found != expected.said {
                        let not = if expected.said { "is not" } else { "is" };
                        wrong.push(format!(
                            "{} ({of}):\n  {}\n{not} in\n  {}",
                            pair.title,
                            expected.text,
                            lines.join("\n  ")
                        ));
                    }
                }
                let of_it =
                    |it: &&Expected<'_>| it.said && if second { it.second } else { it.first };
                assert!(
                    pair.expected.iter().any(|it| of_it(&it)),
                    "{}: {of} expects nothing",
                    pair.title
                );
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
    assert!(scenes >= 40, "only {scenes} scenes");
}

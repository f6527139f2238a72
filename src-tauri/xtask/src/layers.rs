//! The rule that dependencies run one way: shell, app, journal, agronomy.

use std::collections::BTreeSet;
use std::fs;

use crate::house::House;
use crate::sources;
use crate::step::Outcome;
use crate::tree::Tree;

/// What one package must, beside [`SHELL`], keep away from. A name that ends in `*` stands for all
/// that begin so.
struct Rule {
    package: &'static str,
    /// Not even through others.
    never: &'static [&'static str],
    /// Not in its own manifest.
    not_itself: &'static [&'static str],
}

/// What these bring is their own business: `age` takes a key from the system's
/// chance, which nobody may foresee; `zip` has the same for a cipher that is
/// not used here, `icalendar` for events that are given no name of their own,
/// and `uuid` because that wishes it; clippy keeps ids of chance out of the
/// inner crates.
const CLOSED: &[&str] = &["age", "icalendar", "uuid", "zip"];

/// Kept out of every package below: windows, and a runtime for waiting.
const SHELL: &[&str] = &["plumule", "tauri*", "wry", "tao", "tokio*"];

const RULES: &[Rule] = &[
    Rule {
        package: "plumule-agronomy",
        never: &[
            "plumule*",
            "rusqlite",
            "libsqlite3-sys",
            "rand*",
            "getrandom",
            "fastrand",
            "uuid",
        ],
        not_itself: &[],
    },
    Rule {
        package: "plumule-journal",
        never: &[
            "plumule-agronomy",
            "plumule-app",
            "rand",
            "getrandom",
            "fastrand",
        ],
        not_itself: &[],
    },
    Rule {
        package: "plumule-app",
        never: &["rand", "getrandom", "fastrand"],
        not_itself: &["rusqlite", "libsqlite3-sys"],
    },
    Rule {
        package: "plumule-xtask",
        never: &["plumule*", "rusqlite", "libsqlite3-sys"],
        not_itself: &[],
    },
];

/// Checks the manifests, the lock file and the sources.
///
/// # Errors
/// Every breach, one a line.
pub fn check(house: &House) -> Outcome {
    let mut breaches = Vec::new();
    for rule in RULES {
        breaches.extend(broken(rule, &Tree::of(house, rule.package, CLOSED)?));
    }
    let lock = fs::read_to_string(house.path("Cargo.lock")).map_err(|e| e.to_string())?;
    breaches.extend(one_sqlite(&lock));
    for file in house.files()? {
        // Only text can break a rule about words.
        if let Ok(text) = fs::read_to_string(house.path(&file)) {
            breaches.extend(sources::breaches(&file, &text));
        }
    }
    if breaches.is_empty() {
        Ok(String::new())
    } else {
        Err(breaches.join("\n"))
    }
}

fn broken(rule: &Rule, tree: &Tree) -> Vec<String> {
    let package = rule.package;
    let never = rule.never.iter().chain(SHELL);
    let through = hits(never, &tree.all)
        .into_iter()
        .map(|name| format!("{package} depends on {name}: cargo tree -p {package} -i {name}"));
    let itself = hits(rule.not_itself.iter(), &tree.direct)
        .into_iter()
        .map(|name| format!("{package} names {name} in its manifest; another layer has that"));
    through.chain(itself).collect()
}

fn hits<'a>(
    patterns: impl Iterator<Item = &'a &'static str>,
    names: &BTreeSet<String>,
) -> BTreeSet<String> {
    let patterns: Vec<&str> = patterns.copied().collect();
    let hit = |name: &&String| {
        patterns
            .iter()
            .any(|pattern| match pattern.strip_suffix('*') {
                Some(start) => name.starts_with(start),
                None => name == pattern,
            })
    };
    names.iter().filter(hit).cloned().collect()
}

/// Two copies of SQLite in one program would not share their locks.
fn one_sqlite(lock: &str) -> Option<String> {
    let found = lock
        .lines()
        .filter(|line| *line == "name = \"libsqlite3-sys\"")
        .count();
    (found != 1).then(|| format!("Cargo.lock has {found} of libsqlite3-sys, and it must be 1"))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(package: &str, tree: &str) -> Vec<String> {
        let rule = RULES.iter().find(|r| r.package == package).unwrap();
        broken(rule, &Tree::read(tree, CLOSED).unwrap())
    }

    #[test]
    fn the_agronomy_brings_in_nothing_from_above_or_outside() {
        for name in [
            "plumule-journal",
            "tauri-utils",
            "rusqlite",
            "tokio",
            "rand_core",
            "getrandom",
        ] {
            let tree = format!("0plumule-agronomy v0.1.0\n1toml v1.0.0\n2{name} v1.0.0\n");
            let told = told("plumule-agronomy", &tree);
            assert_eq!(told.len(), 1, "{name}");
            assert!(told[0].contains(name), "{told:?}");
        }
        let good = "0plumule-agronomy v0.1.0\n1chrono v0.4.0\n2serde v1.0.0\n";
        assert!(told("plumule-agronomy", good).is_empty());
    }

    #[test]
    fn the_journal_knows_no_agronomy() {
        assert_eq!(
            told("plumule-journal", "0j v1\n1plumule-agronomy v1\n").len(),
            1
        );
        assert_eq!(told("plumule-journal", "0j v1\n1plumule-app v1\n").len(), 1);
        assert_eq!(told("plumule-journal", "0j v1\n1plumule v1\n").len(), 1);
        assert!(told("plumule-journal", "0j v1\n1rusqlite v1\n").is_empty());
    }

    #[test]
    fn chance_comes_through_the_seal_only() {
        let sealed = "0j v1\n1age v1\n2rand v1\n3getrandom v1\n1zip v1\n";
        assert!(told("plumule-journal", sealed).is_empty());
        for beside in ["1getrandom v1\n", "1tempfile v1\n2getrandom v1\n"] {
            let told = told("plumule-journal", &format!("{sealed}{beside}"));
            assert_eq!(told.len(), 1, "{beside}");
        }
    }

    #[test]
    fn the_app_has_sqlite_through_the_journal_only() {
        assert!(told("plumule-app", "0a v1\n1plumule-journal v1\n2rusqlite v1\n").is_empty());
        assert_eq!(told("plumule-app", "0a v1\n1rusqlite v1\n").len(), 1);
        assert_eq!(told("plumule-app", "0a v1\n1x v1\n2tauri v2\n").len(), 1);
    }

    #[test]
    fn the_house_commands_build_alone() {
        assert_eq!(told("plumule-xtask", "0x v1\n1plumule-app v1\n").len(), 1);
        assert!(told("plumule-xtask", "0plumule-xtask v1\n").is_empty());
    }

    #[test]
    fn sqlite_is_there_once() {
        let once = "[[package]]\nname = \"libsqlite3-sys\"\n";
        assert!(one_sqlite(once).is_none());
        assert!(one_sqlite("").is_some());
        assert!(one_sqlite(&once.repeat(2)).is_some());
    }
}

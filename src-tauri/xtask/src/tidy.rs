//! House rules that no other tool checks, as code.

use std::fs;

use crate::house::House;
use crate::step::Outcome;

/// Says what is wrong with a file, by its path and text.
type Rule = fn(&str, &str) -> Vec<String>;

const RULES: &[Rule] = &[
    module_says_what_it_is,
    no_banned_words,
    exceptions_have_reasons,
];

/// Words that must not stand in files with such an ending ("" is any), and why.
///
/// Those that this very file would trip over are put together from parts.
const BANNED: &[(&str, &str, &str)] = &[
    ("", concat!("/ho", "me/"), "a path of one machine"),
    ("", concat!("/ro", "ot/"), "a path of one machine"),
    ("", concat!("/wo", "rk/"), "a path of one machine"),
    ("", concat!("/Use", "rs/"), "a path of one machine"),
    ("", concat!("C:\\Use", "rs"), "a path of one machine"),
    ("", concat!("registry.np", "mjs.org"), "a registry's host"),
    ("", concat!("index.crat", "es.io"), "a registry's host"),
    ("", concat!("static.crat", "es.io"), "a registry's host"),
    ("", concat!("deb.deb", "ian.org"), "a registry's host"),
    ("", concat!("pythonho", "sted.org"), "a registry's host"),
    (
        "package-lock.json",
        "\"resolved\": \"http",
        "an address of a registry",
    ),
    (
        "",
        concat!("<<<<", "<<<"),
        "the mark of a merge that was not finished",
    ),
    (".rs", concat!("#[ig", "nore"), "a test that is not run"),
    (
        ".rs",
        concat!("#[should_", "panic"),
        "a test of a panic; test the error instead",
    ),
    (".rs", concat!("to", "do!("), "a stub"),
    (".rs", concat!("unimple", "mented!("), "a stub"),
    (".ts", concat!("it.sk", "ip("), "a test that is not run"),
    (".ts", concat!("test.sk", "ip("), "a test that is not run"),
    (
        ".ts",
        concat!("describe.sk", "ip("),
        "a test that is not run",
    ),
    (".ts", concat!(".to", "do("), "a test that is not written"),
    (
        ".ts",
        concat!(".on", "ly("),
        "tests left out for the sake of one",
    ),
    (".ts", concat!("@ts-ig", "nore"), "an unchecked line"),
    (".ts", concat!("@ts-no", "check"), "an unchecked file"),
    (".svelte", concat!("@ts-ig", "nore"), "an unchecked line"),
    (".svelte", concat!("@ts-no", "check"), "an unchecked file"),
    (
        ".svelte",
        concat!("{@ht", "ml"),
        "text let through as markup",
    ),
];

/// Checks every file that git keeps or would take in.
///
/// # Errors
/// Every breach, one a line.
pub fn check(house: &House) -> Outcome {
    let mut breaches = Vec::new();
    let files = house.files()?;
    for file in &files {
        // What is not text has no words.
        if let Ok(text) = fs::read_to_string(house.path(file)) {
            breaches.extend(RULES.iter().flat_map(|rule| rule(file, &text)));
        }
    }
    if breaches.is_empty() {
        Ok(format!("{} files", files.len()))
    } else {
        Err(breaches.join("\n"))
    }
}

fn module_says_what_it_is(file: &str, text: &str) -> Vec<String> {
    if !file.ends_with(".rs") || text.starts_with("//!") {
        return Vec::new();
    }
    vec![format!("{file} does not begin with //! and what it is for")]
}

fn no_banned_words(file: &str, text: &str) -> Vec<String> {
    let mut breaches = Vec::new();
    for (number, line) in (1..).zip(text.lines()) {
        for (ending, word, why) in BANNED {
            if file.ends_with(ending) && stands_alone(line, word) {
                breaches.push(format!("{file}:{number} has `{word}`: {why}"));
            }
        }
    }
    breaches
}

/// Whether the word is there, for a path one that does not go on from another
/// (`src/home/` names no machine).
fn stands_alone(line: &str, word: &str) -> bool {
    line.match_indices(word).any(|(at, _)| {
        let before = line.get(..at).and_then(|text| text.chars().next_back());
        let goes_on = |c: char| c.is_alphanumeric() || "._-~}/".contains(c);
        !word.starts_with('/') || !before.is_some_and(goes_on)
    })
}

fn exceptions_have_reasons(file: &str, text: &str) -> Vec<String> {
    if !file.ends_with(".rs") {
        return Vec::new();
    }
    let starts = ["#[allow(", "#![allow(", "#[expect(", "#![expect("];
    starts
        .iter()
        .flat_map(|start| text.match_indices(start))
        .filter(|(at, _)| is_first_on_line(text, *at))
        .filter_map(|(at, _)| text.get(at..)?.split_once(")]"))
        .filter(|(attribute, _)| !attribute.contains("reason"))
        .map(|(attribute, _)| format!("{file} has {attribute})] without a reason"))
        .collect()
}

fn is_first_on_line(text: &str, at: usize) -> bool {
    let line = text.get(..at).and_then(|before| before.rsplit('\n').next());
    line.is_some_and(|before| before.trim().is_empty())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rust_file_begins_with_its_purpose() {
        assert!(module_says_what_it_is("a.rs", "//! Why.\n").is_empty());
        assert_eq!(module_says_what_it_is("a.rs", "use std::fs;\n").len(), 1);
        assert_eq!(module_says_what_it_is("a.rs", "").len(), 1);
        assert!(module_says_what_it_is("a.ts", "").is_empty());
    }

    #[test]
    fn every_banned_word_is_found_in_its_files() {
        for (ending, word, _) in BANNED {
            let file = format!("some/file{ending}");
            assert!(
                !no_banned_words(&file, &format!("x {word} y")).is_empty(),
                "{word}"
            );
        }
    }

    #[test]
    fn a_word_of_one_language_is_free_in_another() {
        assert!(no_banned_words("a.rs", "list.iter().skip(1)").is_empty());
        assert!(no_banned_words("a.ts", "jump.skip(1)").is_empty());
        let path = BANNED[0].1;
        assert!(no_banned_words("a.md", &format!("see ui/src{path}page")).is_empty());
        assert_eq!(no_banned_words("a.md", &format!("see {path}me")).len(), 1);
    }

    #[test]
    fn an_exception_says_why() {
        let bare = "#[allow(dead_code)]\nfn a() {}\n";
        let given = "#![allow(\n    dead_code,\n    reason = \"it is\"\n)]\n";
        assert_eq!(exceptions_have_reasons("a.rs", bare).len(), 1);
        assert!(exceptions_have_reasons("a.rs", given).is_empty());
        assert!(exceptions_have_reasons("a.rs", "// as in `#[allow(x)]`\n").is_empty());
    }
}

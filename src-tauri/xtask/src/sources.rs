//! The layers as they show in the sources: who reads the clock, who knows Tauri.

/// The only file of the UI that may know Tauri.
const TAURI_SIDE: &str = "ui/src/backend/tauri.ts";

/// The folders in which time and chance are arguments.
const INNER: [&str; 3] = [
    "src-tauri/agronomy/src/",
    "src-tauri/journal/src/",
    "src-tauri/app/src/",
];

/// Ways to read a clock or draw lots, in Rust and in SQL (in lower case).
const CLOCKS: [&str; 11] = [
    "utc::now",
    "local::now",
    "systemtime",
    "instant::now",
    "time::instant",
    "now_v7",
    "new_v4",
    "'now'",
    "current_timestamp",
    "random(",
    "randomblob",
];

/// What breaks a rule in that file, one sentence each.
pub fn breaches(file: &str, text: &str) -> Vec<String> {
    if file.starts_with("ui/src/") {
        return knows_tauri(file, text).into_iter().collect();
    }
    let inner = INNER.iter().any(|folder| file.starts_with(folder));
    if inner && file.ends_with(".rs") && !is_test_file(file) {
        return reads_clock(file, text);
    }
    Vec::new()
}

fn knows_tauri(file: &str, text: &str) -> Option<String> {
    let told = || format!("{file} names @tauri-apps, which is for {TAURI_SIDE} alone");
    (file != TAURI_SIDE && text.contains("@tauri-apps")).then(told)
}

fn is_test_file(file: &str) -> bool {
    file.ends_with("/tests.rs") || file.contains("/tests/")
}

fn reads_clock(file: &str, text: &str) -> Vec<String> {
    let mut breaches = Vec::new();
    let mut in_tests = false;
    for (number, line) in (1..).zip(text.lines()) {
        // rustfmt closes a module that is not nested with a brace at the margin.
        if line == "#[cfg(test)]" {
            in_tests = true;
        } else if line == "}" || (in_tests && line.starts_with("mod ") && line.ends_with(';')) {
            in_tests = false;
        }
        let code = line.trim_start();
        if in_tests || code.starts_with("//") {
            continue;
        }
        let lower = code.to_lowercase();
        for clock in CLOCKS.iter().filter(|clock| lower.contains(*clock)) {
            breaches.push(format!(
                "{file}:{number} has {clock}: below the shell, time and chance are arguments"
            ));
        }
    }
    breaches
}

#[cfg(test)]
mod tests {
    use super::*;

    const FILE: &str = "src-tauri/journal/src/store.rs";

    #[test]
    fn a_clock_in_rust_or_sql_is_found() {
        for line in [
            "    let now = Utc::now();",
            "use std::time::{Instant, SystemTime};",
            "    db.execute(\"UPDATE x SET at = datetime('now')\", [])?;",
            "    at TEXT DEFAULT CURRENT_TIMESTAMP",
        ] {
            assert_eq!(breaches(FILE, line).len(), 1, "{line}");
        }
        assert!(breaches(FILE, "fn age(now: DateTime<Utc>) -> TimeDelta").is_empty());
        assert!(breaches("src-tauri/src/clock.rs", "Utc::now()").is_empty());
    }

    #[test]
    fn tests_and_comments_may_name_it() {
        let text = "//! No Utc::now here.\nfn a() {}\n#[cfg(test)]\nmod tests {\n    fn t() { Instant::now(); }\n}\n";
        assert!(breaches(FILE, text).is_empty());
        let after = format!("{text}fn b() {{\n    Instant::now();\n}}\n");
        assert_eq!(breaches(FILE, &after).len(), 1);
        let beside = "#[cfg(test)]\nmod tests;\nfn b() { Instant::now(); }\n";
        assert_eq!(breaches(FILE, beside).len(), 1);
        assert!(breaches("src-tauri/app/src/round/tests.rs", "Utc::now()").is_empty());
    }

    #[test]
    fn one_file_of_the_ui_knows_tauri() {
        let text = "import { invoke } from '@tauri-apps/api/core';";
        assert!(breaches(TAURI_SIDE, text).is_empty());
        assert_eq!(breaches("ui/src/screens/Round.svelte", text).len(), 1);
    }
}

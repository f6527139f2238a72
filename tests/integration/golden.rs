//! The golden files, read.

use serde_json::Value;

/// The lines of a JSON Lines text that say they are about `what`.
pub(crate) fn lines(text: &str, what: &str) -> Vec<Value> {
    let found: Vec<Value> = text
        .lines()
        .map(|line| serde_json::from_str(line).unwrap())
        .filter(|line: &Value| line["what"] == what)
        .collect();
    assert!(!found.is_empty(), "no line about {what}");
    found
}

/// A number of a line.
pub(crate) fn number(line: &Value, key: &str) -> f64 {
    line[key]
        .as_f64()
        .unwrap_or_else(|| panic!("no {key} in {line}"))
}

/// A whole number of a line.
pub(crate) fn whole(line: &Value, key: &str) -> u32 {
    line[key].as_u64().unwrap().try_into().unwrap()
}

/// Fails, with the question, where `found` is further than `by` from `wanted`.
#[track_caller]
pub(crate) fn assert_near(found: f64, wanted: f64, by: f64, about: impl std::fmt::Display) {
    assert!(
        (found - wanted).abs() <= by,
        "found {found}, wanted {wanted}, for {about}"
    );
}

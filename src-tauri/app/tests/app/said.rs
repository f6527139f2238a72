//! Every message in a view, rendered.

use chrono::NaiveDate;
use plumule_app::say::Say;
use plumule_app::words::{Units, known, render};
use serde::Serialize;
use serde_json::Value;

/// Renders every message in a view; each has words with nothing left to fill
/// in.
pub(crate) fn all(view: &impl Serialize) -> Vec<String> {
    let mut said = Vec::new();
    walk(&serde_json::to_value(view).unwrap(), &mut said);
    said
}

fn walk(value: &Value, said: &mut Vec<String>) {
    if value.get("key").is_some() && value.get("args").is_some() {
        let say: Say = serde_json::from_value(value.clone()).unwrap();
        said.push(one(&say));
        return;
    }
    match value {
        Value::Array(values) => values.iter().for_each(|value| walk(value, said)),
        Value::Object(values) => values.values().for_each(|value| walk(value, said)),
        _ => {}
    }
}

pub(crate) fn one(say: &Say) -> String {
    assert!(known(&say.key), "no words for {}", say.key);
    let today = NaiveDate::from_ymd_opt(2026, 4, 20).unwrap();
    let text = render(say, Units::default(), today);
    assert!(!text.contains('{'), "{}: {text}: {:?}", say.key, say.args);
    for (name, arg) in &say.args {
        if let plumule_app::say::Arg::Word(word) = arg {
            assert!(known(word), "{}: no words for {name} = {word}", say.key);
        }
    }
    text
}

//! What the Year screen says of the demo journal's groups is what the workings
//! answer to anybody: intervals by Clopper-Pearson, comparisons by uniform priors.

use crate::golden::assert_near;
use plumule_app::view::{Group, GroupBy, ResultsAsked, ResultsView};
use plumule_app::words::Language;
use plumule_app::{App, demo};
use plumule_journal::stamp::Stamp;
use plumule_tests::answer_all;
use serde_json::{Value, json};

/// The words of a comparison, from which probability on.
const SAID: [(f64, &str); 4] = [
    (0.99, "results-almost-surely"),
    (0.95, "results-very-likely"),
    (0.80, "results-perhaps"),
    (0.50, "results-no-telling"),
];

fn ask(question: &Value) -> Value {
    let mut output = Vec::new();
    answer_all(&mut question.to_string().as_bytes(), &mut output).unwrap();
    serde_json::from_slice(&output).unwrap()
}

fn stamp(turn: u8) -> Stamp {
    Stamp {
        now: "2026-05-06T07:30:00Z".parse().unwrap(),
        zone: "Europe/London".parse().unwrap(),
        entropy: [turn; 16],
    }
}

fn results(app: &App, by: GroupBy, pair: Option<(&Group, &Group)>) -> ResultsView {
    let asked = ResultsAsked {
        by,
        year: None,
        crop: None,
        pair: pair.map(|(a, b)| (a.of.key.clone(), b.of.key.clone())),
    };
    app.results(&stamp(2), &asked).unwrap()
}

#[test]
fn the_screen_says_what_the_workings_answer() {
    let home = tempfile::tempdir().unwrap();
    demo::plant(home.path(), &stamp(0), Language::EnGb).unwrap();
    let app = App::open(home.path(), &stamp(1)).unwrap();
    let mut said = std::collections::BTreeSet::new();
    for by in [
        GroupBy::Crop,
        GroupBy::Packet,
        GroupBy::Place,
        GroupBy::Depth,
    ] {
        let groups = results(&app, by, None).groups;
        assert!(!groups.is_empty(), "{by:?}");
        for group in &groups {
            let question = json!({
                "ask": "interval", "successes": group.up, "trials": group.seeds, "level": 0.95,
            });
            let answer = ask(&question);
            let name = &group.of.key;
            assert_near(group.low, answer["low"].as_f64().unwrap(), 1e-12, name);
            assert_near(group.high, answer["high"].as_f64().unwrap(), 1e-12, name);
        }
        for (a, b) in groups.iter().zip(groups.iter().skip(1)) {
            let higher = json!({"ask": "higher", "a": [a.up, a.seeds], "b": [b.up, b.seeds]});
            let p = ask(&higher)["p_a_higher"].as_f64().unwrap();
            let sure = p.max(1.0 - p);
            let (_, key) = SAID.iter().find(|(from, _)| sure >= *from).unwrap();
            let compared = results(&app, by, Some((a, b))).compared.unwrap();
            assert_eq!(compared.key, *key, "{} {}: {p}", a.of.key, b.of.key);
            let better = if p >= 0.5 { a } else { b };
            assert_eq!(compared.args["better"], better.of.name.args["name"]);
            said.insert(*key);
        }
    }
    assert!(said.len() > 1, "only {said:?}");
}

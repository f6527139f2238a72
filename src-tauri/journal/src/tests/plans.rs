//! Opening the round reads the living and scans nothing of the past.

use crate::store::{queries, sought};
use crate::testing::World;
use std::collections::BTreeSet;

fn plan(query: &str) -> Vec<String> {
    let world = World::new();
    let mut statement = world
        .journal
        .connection()
        .prepare(&format!("EXPLAIN QUERY PLAN {query}"))
        .unwrap();
    let holes = statement.parameter_count();
    let holes = vec![rusqlite::types::Value::Null; holes];
    statement
        .query_map(rusqlite::params_from_iter(holes), |row| row.get("detail"))
        .unwrap()
        .collect::<Result<_, _>>()
        .unwrap()
}

#[test]
fn the_living_are_found_by_their_index() {
    let plan = plan(queries::LIVING);
    assert!(
        plan.iter().any(|step| step.contains("states_living")),
        "{plan:?}"
    );
    assert!(
        !plan.iter().any(|step| step.starts_with("SCAN")),
        "{plan:?}"
    );
}

#[test]
fn the_past_is_found_by_its_index_and_not_sorted() {
    let plan = plan(queries::PAST);
    assert!(
        plan.iter().any(|step| step.contains("states_past")),
        "{plan:?}"
    );
    assert!(
        !plan.iter().any(|step| step.starts_with("SCAN")),
        "{plan:?}"
    );
}

#[test]
fn readings_are_found_by_time() {
    let plan = plan(queries::READINGS);
    assert!(
        plan.iter().any(|step| step.contains("readings_time")),
        "{plan:?}"
    );
    assert!(
        !plan.iter().any(|step| step.starts_with("SCAN")),
        "{plan:?}"
    );
}

#[test]
fn answers_to_jobs_are_found_from_the_living() {
    let plan = plan(queries::JOB_ANSWERS);
    assert!(
        plan.iter().any(|step| step.contains("states_living")),
        "{plan:?}"
    );
    assert!(
        plan.iter().any(|step| step.contains("jobs_subject")),
        "{plan:?}"
    );
    for step in &plan {
        assert!(
            !step.contains("SCAN j") && !step.contains("SCAN s"),
            "{plan:?}"
        );
    }
}

#[test]
fn what_is_looked_for_is_read_from_indices_alone() {
    for (query, index) in [
        // Packets, plans, things to buy.
        (queries::LIVING, "INDEX states_living"),
        (queries::PAST, "INDEX states_past"),
        (sought::CODES, "COVERING INDEX entries_codes"),
        (sought::CODED, "COVERING INDEX entries_codes"),
        (sought::NOTES, "COVERING INDEX entries_notes"),
        (sought::STARTED, "INDEX entries_started"),
        (sought::OF_PACKETS, "USING PRIMARY KEY"),
        (sought::CAME_TO, "USING PRIMARY KEY"),
    ] {
        let plan = plan(query);
        assert!(plan.iter().any(|step| step.contains(index)), "{plan:?}");
        let all = |step: &String| step.starts_with("SCAN") && !step.contains("INDEX entries_");
        assert!(!plan.iter().any(all), "{plan:?}");
    }
}

#[test]
fn the_round_does_not_read_what_is_there_to_be_looked_for() {
    for query in [queries::LIVING, queries::READINGS, queries::JOB_ANSWERS] {
        let plan = plan(query);
        let sought =
            |step: &String| step.contains("entries_codes") || step.contains("entries_notes");
        assert!(!plan.iter().any(sought), "{plan:?}");
    }
}

#[test]
fn whatever_a_screen_or_the_door_asks_is_found_by_an_index() {
    for query in queries::FINDING {
        let plan = plan(query);
        // A timeline is put together from two short lists.
        let short = |step: &str| {
            *query == queries::TIMELINE && (step == "SCAN t" || step.starts_with("SCAN (subquery"))
        };
        let through = |step: &String| step.starts_with("SCAN") && !short(step);
        assert!(!plan.iter().any(through), "{query}\n{plan:?}");
    }
    for query in queries::GOING_THROUGH {
        let plan = plan(query);
        assert!(plan.iter().any(|step| step.starts_with("SCAN")), "{plan:?}");
    }
}

#[test]
fn no_query_of_reading_is_left_out() {
    let source = include_str!("../store/read.rs");
    let asked: BTreeSet<&str> = source
        .split("prepare_cached(")
        .skip(1)
        .filter_map(|rest| rest.split_once(')').map(|(asked, _)| asked))
        .collect();
    let of_their_own = |asked: &&str| !asked.starts_with("queries::");
    assert_eq!(asked.iter().find(|it| of_their_own(it)), None);
    let listed = queries::FINDING.len() + queries::GOING_THROUGH.len();
    assert_eq!(asked.len(), listed);
}

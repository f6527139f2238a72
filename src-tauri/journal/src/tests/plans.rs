//! Opening the round reads the living and scans nothing of the past.

use crate::store::read;
use crate::testing::World;

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
    let plan = plan(read::LIVING);
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
    let plan = plan(read::PAST);
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
    let plan = plan(read::READINGS);
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
    let plan = plan(read::JOB_ANSWERS);
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

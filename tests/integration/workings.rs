//! The workings' protocol: every line gets one answer, whatever the line is.

use crate::golden::{assert_near, lines, number};
use chrono::Datelike;
use plumule_tests::answer_all;
use serde_json::{Value, json};

fn ask_bytes(input: &[u8]) -> Vec<Value> {
    let mut output = Vec::new();
    answer_all(&mut &input[..], &mut output).unwrap();
    output
        .split(|byte| *byte == b'\n')
        .filter(|line| !line.is_empty())
        .map(|line| serde_json::from_slice(line).unwrap())
        .collect()
}

fn ask(question: &Value) -> Value {
    let mut answers = ask_bytes(question.to_string().as_bytes());
    assert_eq!(answers.len(), 1, "{question}");
    answers.remove(0)
}

#[track_caller]
fn assert_refused(answer: &Value, code: &str) {
    assert_eq!(answer["error"]["code"], code, "{answer}");
    assert!(!answer["error"]["message"].as_str().unwrap().is_empty());
}

fn a_forecast() -> Value {
    json!({
        "ask": "forecast", "crop": "tomato", "seeds": 20, "beta": [9, 3], "tau": 0.25,
        "sigma": 0.28, "sown": "2026-02-26", "days": [[20, 20]],
    })
}

/// `question` with `field` set to `value`, or left out where it is null.
fn with(mut question: Value, field: &str, value: Value) -> Value {
    let fields = question.as_object_mut().unwrap();
    match value {
        Value::Null => fields.remove(field),
        value => fields.insert(field.to_owned(), value),
    };
    question
}

/// Harrington and Minges 1954: tomato, 8 days at 20 °C.
#[test]
fn a_wrong_question_does_not_stop_the_next() {
    let input =
        "{\"ask\":\"nonsense\"}\n{\"ask\":\"rate\",\"crop\":\"tomato\",\"temperature_c\":20}\n";
    let answers = ask_bytes(input.as_bytes());
    assert_refused(&answers[0], "unknown_ask");
    assert_eq!(answers[1..], [json!({"rate_per_day": 0.125})]);
}

#[test]
fn lines_that_are_no_question() {
    let question = b"{\"ask\":\"vapour_pressure\",\"temperature_c\":20}\n";
    for (line, code) in [
        (&b""[..], "not_json"),
        (b"{", "not_json"),
        (
            b"{\"ask\":\"rate\",\"crop\":\"tomato\",\"temperature_c\":NaN}",
            "not_json",
        ),
        (
            b"{\"ask\":\"rate\",\"crop\":\"tomato\",\"temperature_c\":1e999}",
            "not_json",
        ),
        (b"[1]", "no_ask"),
        (b"{\"ask\":7}", "no_ask"),
        (b"\xff\xfe{}", "not_utf8"),
        (&b"[".repeat(100_000), "not_json"),
        (&b"x".repeat(3 << 20), "line_too_long"),
    ] {
        let answers = ask_bytes(&[line, b"\n", question].concat());
        assert_eq!(answers.len(), 2);
        assert_refused(&answers[0], code);
        // FAO-56, Table 2.3: 2.338 kPa at 20 °C.
        assert_near(number(&answers[1], "kpa"), 2.338, 5e-4, code);
    }
}

#[test]
fn a_line_just_short_enough_is_read() {
    let question = json!({"ask": "vapour_pressure", "temperature_c": 20}).to_string();
    let padded = |length: usize| format!("{question}{}", " ".repeat(length - question.len()));
    assert!(ask_bytes(padded(1 << 20).as_bytes())[0]["kpa"].is_number());
    assert!(ask_bytes((padded(1 << 20) + "\n").as_bytes())[0]["kpa"].is_number());
    assert_refused(
        &ask_bytes(padded((1 << 20) + 1).as_bytes())[0],
        "line_too_long",
    );
}

#[test]
fn wrong_fields_are_refused() {
    for (field, value, code) in [
        ("crop", json!("triffid"), "unknown_crop"),
        ("crop", Value::Null, "bad_field"),
        ("seeds", json!(0), "bad_seeds"),
        ("seeds", json!(4_000_000_000_u32), "bad_seeds"),
        ("seeds", json!(1e30), "bad_field"),
        ("seeds", json!(-3), "bad_field"),
        ("beta", json!([0, 3]), "bad_outlook"),
        ("beta", json!([9]), "bad_field"),
        ("tau", json!(-0.1), "bad_tau"),
        ("sigma", json!(0), "bad_sigma"),
        ("sigma", json!("wide"), "bad_field"),
        ("sown", json!("2026-02-30"), "bad_field"),
        ("days", json!([]), "no_days"),
        ("days", json!([[21, 20]]), "minimum_above_maximum"),
        ("days", Value::Null, "bad_field"),
        ("sown", json!("+262142-12-30"), "date_out_of_range"),
    ] {
        assert_refused(&ask(&with(a_forecast(), field, value)), code);
    }
}

/// Tomato, 8 days at 20 °C (Harrington and Minges 1954), sown at 00:00; across
/// the end of a February.
#[test]
fn a_forecast_is_in_dates() {
    let answer = ask(&a_forecast());
    assert_eq!(answer["d50"], "2026-03-05");
    let progress = answer["progress_by_day"].as_array().unwrap();
    assert_eq!(progress.len(), 30);
    assert_near(progress[7].as_f64().unwrap(), 1.0, 1e-12, &answer);
    for (earlier, later) in [("d10", "d50"), ("d50", "d90")] {
        assert!(
            answer[earlier].as_str() < answer[later].as_str(),
            "{answer}"
        );
    }
}

/// None came up at 5 °C (Harrington and Minges 1954).
#[test]
fn a_forecast_without_progress_has_no_dates() {
    let answer = ask(&with(a_forecast(), "days", json!([[5, 5]])));
    for date in ["first", "d10", "d50", "d90"] {
        assert!(answer.as_object().unwrap()[date].is_null(), "{answer}");
    }
}

#[test]
fn slow_seed_is_expected_later() {
    let slow = ask(&with(a_forecast(), "mean_ln_s", json!(0.2)));
    assert!(ask(&a_forecast())["d50"].as_str() < slow["d50"].as_str());
}

/// `golden/make_recomputed.py`.
#[test]
fn progress_by_day_is_that_of_the_recomputation() {
    let golden = include_str!("../golden/recomputed.jsonl");
    for line in lines(golden, "forecast") {
        let mut question = with(a_forecast(), "crop", line["crop"].clone());
        question = with(question, "days", line["days"].clone());
        let answer = ask(&question);
        let wanted = line["progress"].as_array().unwrap();
        let found = answer["progress_by_day"].as_array().unwrap();
        assert_eq!(found.len(), wanted.len());
        for (found, wanted) in found.iter().zip(wanted) {
            assert_near(
                found.as_f64().unwrap(),
                wanted.as_f64().unwrap(),
                1e-10,
                &line,
            );
        }
    }
}

#[test]
fn the_other_questions() {
    let answer = ask(&json!({"ask": "day_progress", "crop": "tomato", "min_c": 20, "max_c": 20}));
    assert_near(
        number(&answer, "progress"),
        0.125,
        1e-12,
        "tomato at 20 °C: 8 days",
    );
    let answer = ask(&json!({
        "ask": "emerged_share", "progress": 1, "time_factor": 1, "sigma": 0.28,
    }));
    assert_eq!(answer, json!({"share": 0.5}));
    let answer = ask(&json!({
        "ask": "drying_interval", "mean_c": 18, "covered": false, "tray_factor": 1,
    }));
    assert_eq!(answer, json!({"days": 2.0}));
}

/// 7 CFR 201.31: 75 % for tomato, reached after the handbook's 4 years.
#[test]
fn a_packets_age_is_in_years_of_365_25_days() {
    let question = json!({
        "ask": "packet_outlook", "crop": "tomato", "packed": "2022-03-01", "on": "2026-03-01",
        "stated": null, "storage": "cool_cupboard", "tests": [[8, 10]],
    });
    let answer = ask(&question);
    assert_near(number(&answer, "germination"), 0.75, 1e-12, &answer);
    let [a, b] = [0, 1].map(|i| answer["beta"][i].as_f64().unwrap());
    assert_near(a, 9.0 + 8.0, 1e-12, &answer);
    assert_near(b, 3.0 + 2.0, 1e-12, &answer);
    let earlier = with(question.clone(), "on", json!("2022-02-28"));
    assert_refused(&ask(&earlier), "before_packed");
    let impossible = with(question.clone(), "tests", json!([[11, 10]]));
    assert_refused(&ask(&impossible), "bad_test");
    let elsewhere = with(question, "storage", json!("attic"));
    assert_refused(&ask(&elsewhere), "bad_field");
}

/// Each of the protocol's questions has an answer, with the fields that it names.
#[test]
fn every_ask_is_answered() {
    let minima: Vec<Value> = (2000..2006)
        .flat_map(|year| {
            let days = chrono::NaiveDate::from_ymd_opt(year, 1, 1)
                .unwrap()
                .iter_days();
            let cold = |day: chrono::NaiveDate| if day.ordinal() < 100 { -1.0 } else { 9.0 };
            days.take(365).map(move |day| json!([day, cold(day)]))
        })
        .collect();
    for (question, fields) in [
        (
            json!({"ask": "rate", "crop": "tomato", "temperature_c": 20}),
            &["rate_per_day"][..],
        ),
        (
            json!({"ask": "day_progress", "crop": "leek", "min_c": 9, "max_c": 20}),
            &["progress"],
        ),
        (
            json!({"ask": "emerged_share", "progress": 1, "time_factor": 1, "sigma": 0.28}),
            &["share"],
        ),
        (
            a_forecast(),
            &["first", "d10", "d50", "d90", "progress_by_day"],
        ),
        (
            json!({"ask": "packet_outlook", "crop": "tomato", "packed": "2022-03-01", "on": "2026-03-01",
                "stated": 0.9, "storage": "warm_room", "tests": []}),
            &["germination", "beta"],
        ),
        (
            json!({"ask": "seeds_to_sow", "wanted": 6, "confidence": 0.9, "beta": [9, 3]}),
            &["seeds"],
        ),
        (
            json!({"ask": "cells_to_sow", "wanted": 6, "confidence": 0.9, "beta": [9, 3],
                "seeds_per_cell": 2}),
            &["cells"],
        ),
        (
            a_late_sowing(),
            &[
                "p_dead",
                "p_any_more",
                "expected_final",
                "p_reach",
                "seeds_beside",
            ],
        ),
        (
            json!({"ask": "drying_interval", "mean_c": 20, "covered": true, "tray_factor": 1}),
            &["days"],
        ),
        (
            json!({"ask": "day_length", "latitude": 50, "date": "2026-03-01"}),
            &["hours"],
        ),
        (
            json!({"ask": "extraterrestrial_radiation", "latitude": 50, "date": "2026-03-01"}),
            &["mj_m2_day"],
        ),
        (
            json!({"ask": "vapour_pressure", "temperature_c": 20}),
            &["kpa"],
        ),
        (
            json!({"ask": "degree_days", "min_c": 7, "max_c": 40, "lower_c": 12, "upper_c": 33}),
            &["degree_days"],
        ),
        (
            json!({"ask": "germination_indices", "new_counts": [0, 3, 4], "seeds": 9}),
            &[
                "percent",
                "t50_coolbear",
                "mean_time",
                "variance",
                "cvg",
                "synchrony",
                "uncertainty",
            ],
        ),
        (
            json!({"ask": "interval", "successes": 7, "trials": 50, "level": 0.95}),
            &["low", "high"],
        ),
        (
            json!({"ask": "higher", "a": [7, 10], "b": [3, 10]}),
            &["p_a_higher"],
        ),
        (
            json!({"ask": "frost_chance", "minima": minima, "threshold_c": 0, "chance": 0.1,
                "half": "spring", "hemisphere": "north"}),
            &["month_day", "years"],
        ),
    ] {
        let answer = ask(&question);
        for field in fields {
            let found = answer.get(field);
            assert!(
                found.is_some_and(|value| !value.is_null()),
                "{}: {answer}",
                question["ask"]
            );
        }
    }
}

fn a_late_sowing() -> Value {
    json!({"ask": "wait_or_sow_again", "seeds": 20, "counts": [[1.0, 0], [1.5, 1]], "beta": [9, 3],
           "tau": 0.25, "sigma": 0.28, "dead": 0.05, "wanted": 12})
}

#[test]
fn wrong_sowings_are_refused() {
    for (field, value, code) in [
        ("counts", json!([[1.5, 0], [1.0, 1]]), "count_order"),
        ("counts", json!([[0.0, 2]]), "up_without_progress"),
        ("counts", json!([[1.0, -2]]), "bad_field"),
        ("dead", json!(1.5), "bad_probability"),
        ("dug", json!([10, 10]), "bad_dug"),
        ("horizon", json!(-1), "bad_progress"),
        ("seeds", json!(0), "bad_seeds"),
        ("beta", json!([9, -3]), "bad_outlook"),
    ] {
        assert_refused(&ask(&with(a_late_sowing(), field, value)), code);
    }
    let optional = with(
        with(a_late_sowing(), "dug", json!([1, 1])),
        "horizon",
        json!(2.0),
    );
    let answer = ask(&with(optional, "mean_ln_s", json!(0.2)));
    assert!(number(&answer, "p_reach") < 1.0, "{answer}");
}

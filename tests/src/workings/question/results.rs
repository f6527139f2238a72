//! How sowings did.

use super::Answer;
use plumule_agronomy::{germination_indices, interval, p_higher};
use serde::Deserialize;
use serde_json::json;

#[derive(Deserialize)]
pub(super) struct Indices {
    new_counts: Vec<u32>,
    seeds: u32,
}

pub(super) fn indices(asked: Indices) -> Answer {
    let found = germination_indices(&asked.new_counts, asked.seeds)?;
    Ok(json!({
        "percent": found.percent,
        "t50_coolbear": found.t50_coolbear,
        "mean_time": found.mean_time,
        "variance": found.variance,
        "cvg": found.cvg,
        "synchrony": found.synchrony,
        "uncertainty": found.uncertainty,
    }))
}

#[derive(Deserialize)]
pub(super) struct Interval {
    successes: u32,
    trials: u32,
    level: f64,
}

pub(super) fn share(asked: Interval) -> Answer {
    let (low, high) = interval(asked.successes, asked.trials, asked.level)?;
    Ok(json!({"low": low, "high": high}))
}

#[derive(Deserialize)]
pub(super) struct Higher {
    a: (u32, u32),
    b: (u32, u32),
}

pub(super) fn higher(asked: Higher) -> Answer {
    Ok(json!({"p_a_higher": p_higher(asked.a, asked.b)?}))
}

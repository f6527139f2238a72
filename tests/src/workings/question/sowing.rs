//! How many to sow, and whether to wait or sow again.

use super::Answer;
use plumule_agronomy::{
    Beside, Outlook, Posterior, TimeFactor, Watched, cells_to_sow, seeds_to_sow,
};
use serde::Deserialize;
use serde_json::json;

#[derive(Deserialize)]
pub(super) struct Seeds {
    wanted: u32,
    confidence: f64,
    beta: (f64, f64),
}

pub(super) fn seeds(asked: Seeds) -> Answer {
    let outlook = Outlook::new(asked.beta.0, asked.beta.1)?;
    let seeds = seeds_to_sow(asked.wanted, asked.confidence, outlook)?;
    Ok(json!({"seeds": seeds}))
}

#[derive(Deserialize)]
pub(super) struct Cells {
    wanted: u32,
    confidence: f64,
    beta: (f64, f64),
    seeds_per_cell: u32,
}

pub(super) fn cells(asked: Cells) -> Answer {
    let outlook = Outlook::new(asked.beta.0, asked.beta.1)?;
    let cells = cells_to_sow(
        asked.wanted,
        asked.confidence,
        outlook,
        asked.seeds_per_cell,
    )?;
    Ok(json!({"cells": cells}))
}

#[derive(Deserialize)]
pub(super) struct WaitOrSowAgain {
    seeds: u32,
    counts: Vec<(f64, u32)>,
    beta: (f64, f64),
    tau: f64,
    sigma: f64,
    dead: f64,
    wanted: u32,
    #[serde(default)]
    mean_ln_s: f64,
    dug: Option<(u32, u32)>,
    horizon: Option<f64>,
}

pub(super) fn wait_or_sow_again(asked: WaitOrSowAgain) -> Answer {
    let (firm, soft) = asked.dug.unwrap_or_default();
    let found = Posterior::new(&Watched {
        seeds: asked.seeds,
        counts: &asked.counts,
        living: None,
        outlook: Outlook::new(asked.beta.0, asked.beta.1)?,
        time_factor: TimeFactor::new(asked.mean_ln_s, asked.tau)?,
        sigma: asked.sigma,
        dead: asked.dead,
        wanted: asked.wanted,
        firm,
        soft,
        horizon: asked.horizon,
    })?;
    let seeds_beside = match found.seeds_beside() {
        Beside::Seeds(seeds) => Some(seeds),
        Beside::NotNeeded | Beside::BetterSeed => None,
    };
    Ok(json!({
        "p_dead": found.p_dead(),
        "p_any_more": found.p_any_more(),
        "p_nothing": found.p_nothing(),
        "expected_final": found.expected_final(),
        "p_reach": found.p_reach(),
        "seeds_beside": seeds_beside,
    }))
}

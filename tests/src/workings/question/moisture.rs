//! How the compost dries.

use super::Answer;
use plumule_agronomy::{drying_interval_days, vapour_pressure_kpa};
use serde::Deserialize;
use serde_json::json;

#[derive(Deserialize)]
pub(super) struct Drying {
    mean_c: f64,
    covered: bool,
    tray_factor: f64,
}

pub(super) fn drying(asked: Drying) -> Answer {
    let days = drying_interval_days(asked.mean_c, asked.covered, asked.tray_factor)?;
    Ok(json!({"days": days}))
}

#[derive(Deserialize)]
pub(super) struct Vapour {
    temperature_c: f64,
}

pub(super) fn vapour(asked: Vapour) -> Answer {
    Ok(json!({"kpa": vapour_pressure_kpa(asked.temperature_c)?}))
}

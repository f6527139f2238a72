//! What a packet is worth.

use super::{Answer, WrongQuestion, crop};
use chrono::NaiveDate;
use plumule_agronomy::{Storage, Test, packet_outlook};
use serde::Deserialize;
use serde_json::json;

/// Days in a year of age.
const YEAR_DAYS: f64 = 365.25;

#[derive(Deserialize)]
pub(super) struct Packet {
    crop: String,
    packed: NaiveDate,
    on: NaiveDate,
    stated: Option<f64>,
    storage: Storage,
    #[serde(default)]
    tests: Vec<(u32, u32)>,
}

pub(super) fn packet(asked: Packet) -> Answer {
    let Packet { packed, on, .. } = asked;
    if on < packed {
        return Err(WrongQuestion::BeforePacked { packed, on });
    }
    let age_years = (on - packed).num_days() as f64 / YEAR_DAYS;
    let tests: Vec<Test> = asked
        .tests
        .iter()
        .map(|&(germinated, of)| Test {
            germinated,
            of,
            age_years: 0.0,
        })
        .collect();
    let crop = crop(&asked.crop)?;
    let found = packet_outlook(crop, age_years, asked.stated, asked.storage, &tests)?;
    Ok(json!({
        "germination": found.germination,
        "beta": [found.outlook.a, found.outlook.b],
    }))
}

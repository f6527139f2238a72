//! The weather of the invented garden, which the forecasts never see but
//! through its thermometers.

use super::chance::Chance;
use super::scenario::Where;
use std::f64::consts::TAU;

/// Lowest and highest of a place on a day, °C; `day` counts from today. Today
/// lies in mid spring, 100 days after the coldest of the year.
pub(super) fn day(place: Where, day: i64) -> (f64, f64) {
    let mut chance = Chance::new((day + 10_000).unsigned_abs() * 7 + place as u64);
    let season = 10.0 - 7.0 * ((day + 100) as f64 / 365.0 * TAU).cos();
    let sky = Chance::new((day + 20_000).unsigned_abs()).about(3.0);
    let (low, high) = match place {
        Where::Propagator => (20.0 + sky * 0.2, 24.0 + sky * 0.3),
        Where::Sill => (15.5 + sky * 0.3, 20.5 + sky * 0.5),
        Where::Shed => (season - 4.0 + sky * 0.5, season - 1.0 + sky * 0.5),
        Where::Greenhouse => (season - 0.5 + sky * 0.5, season + 9.0 + sky * 1.5),
        Where::Frame => (season - 2.0 + sky * 0.5, season + 6.0 + sky),
    };
    let half = |degrees: f64| (degrees * 2.0).round() / 2.0;
    (
        half(low + chance.about(0.7)),
        half((high + chance.about(0.9)).max(low + 1.5)),
    )
}

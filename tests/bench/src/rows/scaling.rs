//! How the cost of the round grows: with the living, and with the years.

use super::opening::opening;
use super::{Outcome, Row};
use crate::world::World;
use std::path::Path;

/// Living sowings.
const LIVING: [u64; 4] = [10, 100, 1_000, 10_000];
/// Years on record.
const YEARS: [u64; 3] = [1, 7, 50];
/// A market grower's load: sowings a year, and living ones.
const MARKET: (u64, u64) = (3_000, 2_000);

pub fn rows(runs: usize, worlds: &Path) -> Outcome<Vec<Row>> {
    let cost = |world: World, runs| opening(&world.kept_in(worlds)?, runs);
    let mut by_living = Vec::new();
    for living in LIVING {
        let world = World::of(0, living);
        let runs = if living > 1_000 { 3 } else { runs };
        by_living.push((living as f64, cost(world, runs)?));
    }
    let mut by_years = Vec::new();
    for years in YEARS {
        let world = World::of(years, 200);
        by_years.push((years as f64, cost(world, runs)?));
    }
    let market = World {
        a_year: MARKET.0,
        ..World::of(1, MARKET.1)
    };
    let usual = by_years.first().map_or(f64::NAN, |(_, cost)| *cost);
    let market = cost(market, runs)? / usual / (MARKET.1 as f64 / 200.0);
    let told = |points: &[(f64, f64)]| {
        let first = points.first().map_or(f64::NAN, |(_, cost)| *cost);
        let each = points
            .iter()
            .map(|(x, cost)| format!("{x}: {:.2}", cost / first));
        each.collect::<Vec<_>>().join(", ")
    };
    Ok(vec![
        Row {
            name: "exponent of the round's cost against living sowings",
            // Between neighbours, so that a bend shows as spread; the smallest
            // is mostly the opening itself.
            ratios: slopes(&by_living[1..]),
            note: format!("cost over that of 10: {}", told(&by_living)),
        },
        Row {
            name: "exponent of the round's cost against years",
            ratios: slopes(&by_years),
            note: format!("cost over that of 1 year: {}", told(&by_years)),
        },
        Row {
            name: "a market grower's round, a living sowing, against a year's",
            ratios: vec![market],
            note: "3,000 sowings a year and 2,000 living against 300 and 200".to_owned(),
        },
    ])
}

/// Exponents between each point and the next.
fn slopes(points: &[(f64, f64)]) -> Vec<f64> {
    let slope = |pair: &[(f64, f64)]| (pair[1].1 / pair[0].1).ln() / (pair[1].0 / pair[0].0).ln();
    let slopes: Vec<f64> = points.windows(2).map(slope).collect();
    slopes
}

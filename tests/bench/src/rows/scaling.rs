//! How the cost of the round grows: with the living, and with the years.

use super::opening::open;
use super::{Outcome, Row, median, paired};
use crate::world::World;
use std::path::{Path, PathBuf};

/// Living sowings.
const LIVING: [u64; 4] = [10, 100, 1_000, 10_000];
/// Years on record.
const YEARS: [u64; 3] = [1, 7, 50];
/// A market grower's load: sowings a year, and living ones.
const MARKET: (u64, u64) = (3_000, 2_000);

pub fn rows(runs: usize, worlds: &Path) -> Outcome<Vec<Row>> {
    let homes = |all: &[u64], of: fn(u64) -> World| {
        let home = |x: &u64| Outcome::Ok((*x as f64, of(*x).kept_in(worlds)?));
        all.iter().map(home).collect::<Outcome<Vec<_>>>()
    };
    let by_living = Grown::of(&homes(&LIVING, |living| World::of(0, living))?, runs)?;
    let by_years = Grown::of(&homes(&YEARS, |years| World::of(years, 200))?, runs)?;
    let usual = World::of(1, 200).kept_in(worlds)?;
    let market = World {
        a_year: MARKET.0,
        ..World::of(1, MARKET.1)
    };
    let market = market.kept_in(worlds)?;
    let each = MARKET.1 as f64 / 200.0;
    let market = paired(runs, || Ok(open(&market)? / each), || open(&usual))?;
    Ok(vec![
        Row {
            name: "exponent of the round's cost against living sowings",
            // The smallest is mostly the opening itself.
            ratios: by_living.exponents(1),
            note: format!("cost over that of 10: {}", by_living.told()),
        },
        Row {
            name: "exponent of the round's cost against years",
            ratios: by_years.exponents(0),
            note: format!("cost over that of 1 year: {}", by_years.told()),
        },
        Row {
            name: "a market grower's round, a living sowing, against a year's",
            ratios: market,
            note: "3,000 sowings a year and 2,000 living against 300 and 200".to_owned(),
        },
    ])
}

/// What opening cost as something grew: all sizes in turn, run by run.
struct Grown {
    sizes: Vec<f64>,
    runs: Vec<Vec<f64>>,
}

impl Grown {
    fn of(homes: &[(f64, PathBuf)], runs: usize) -> Outcome<Self> {
        let sizes = homes.iter().map(|(size, _)| *size).collect();
        let run = |_| homes.iter().map(|(_, home)| open(home)).collect();
        // The first run only warms up.
        let runs: Vec<Vec<f64>> = (0..=runs).map(run).collect::<Outcome<_>>()?;
        Ok(Self {
            sizes,
            runs: runs.into_iter().skip(1).collect(),
        })
    }

    /// The exponent of each run, from some size on: the slope of the line of
    /// least squares through the logarithms.
    fn exponents(&self, from: usize) -> Vec<f64> {
        let ln = |of: &[f64]| of[from..].iter().map(|it| it.ln()).collect::<Vec<_>>();
        let x = ln(&self.sizes);
        let mean = |of: &[f64]| of.iter().sum::<f64>() / of.len() as f64;
        let middle = mean(&x);
        let slope = |run: &Vec<f64>| {
            let y = ln(run);
            let level = mean(&y);
            let both = x.iter().zip(&y).map(|(x, y)| (x - middle) * (y - level));
            both.sum::<f64>() / x.iter().map(|x| (x - middle).powi(2)).sum::<f64>()
        };
        self.runs.iter().map(slope).collect()
    }

    /// The medians, over the first.
    fn told(&self) -> String {
        let first = |run: &Vec<f64>| run.first().copied().unwrap_or(f64::NAN);
        let told = self.sizes.iter().enumerate().map(|(at, size)| {
            let over = self.runs.iter().map(|run| run[at] / first(run));
            format!("{size}: {:.2}", median(over.collect()))
        });
        told.collect::<Vec<_>>().join(", ")
    }
}

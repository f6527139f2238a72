//! How costs grow: with the living, and with the years.

use super::entry::Ours;
use super::opening::open;
use super::taking_in::Taking;
use super::{Outcome, Row, median, paired, seconds};
use crate::world::{World, stamp};
use plumule_app::App;
use std::path::Path;

/// Living sowings.
const LIVING: [u64; 4] = [10, 100, 1_000, 10_000];
/// Years on record.
const YEARS: [u64; 3] = [1, 7, 50];
/// Runs of what takes long.
const FEW: usize = 3;
/// Entries of a run, of which the median counts.
const WRITES: usize = 15;
/// A market grower's load: sowings a year, and living ones.
const MARKET: (u64, u64) = (3_000, 2_000);

/// The journals that it asks for; those of all other rows are among them.
pub fn worlds() -> Vec<World> {
    let living = LIVING.iter().map(|living| World::of(0, *living));
    let years = YEARS.iter().map(|years| World::of(*years, 200));
    living.chain(years).chain([market()]).collect()
}

fn market() -> World {
    World {
        a_year: MARKET.0,
        ..World::of(1, MARKET.1)
    }
}

pub fn rows(runs: usize, worlds: &Path) -> Outcome<Vec<Row>> {
    let homes = |all: &[u64], of: fn(u64) -> World| {
        let home = |x: &u64| of(*x).kept_in(worlds);
        all.iter().map(home).collect::<Outcome<Vec<_>>>()
    };
    let living = homes(&LIVING, |living| World::of(0, living))?;
    let years = homes(&YEARS, |years| World::of(years, 200))?;
    let by_living = Grown::of(&LIVING, runs, |at| open(&living[at]))?;
    let by_years = Grown::of(&YEARS, runs, |at| open(&years[at]))?;
    let written = living.iter().map(|home| Ours::of(home));
    let mut written = written.collect::<Outcome<Vec<_>>>()?;
    let entry = Grown::of(&LIVING, runs, |at| {
        let took = (0..WRITES).map(|_| written[at].write());
        Ok(median(took.collect::<Outcome<_>>()?))
    })?;
    let apps = living.iter().map(|home| App::open(home, &stamp(1)));
    let apps = apps.collect::<Result<Vec<_>, _>>()?;
    let search = Grown::of(&LIVING, runs, |at| {
        seconds(|| Ok(apps[at].search(&stamp(2), "leek south sill")?))
    })?;
    let taking = living.iter().map(|home| Taking::of(home, usize::MAX));
    let taking = taking.collect::<Outcome<Vec<_>>>()?;
    let taking = Grown::of(&LIVING, FEW, |at| taking[at].ours())?;
    let usual = World::of(1, 200).kept_in(worlds)?;
    let market = market().kept_in(worlds)?;
    let each = MARKET.1 as f64 / 200.0;
    let market = paired(runs, || Ok(open(&market)? / each), || open(&usual))?;
    Ok(vec![
        // The smallest is mostly the opening itself.
        by_living.row("exponent of the round's cost against living sowings", 1),
        entry.row("exponent of an entry's cost against living sowings", 0),
        search.row("exponent of a search's cost against living sowings", 0),
        taking.row(
            "exponent of the cost of taking in against living sowings",
            1,
        ),
        by_years.row("exponent of the round's cost against years", 0),
        Row {
            name: "a market grower's round, a living sowing, against a year's",
            ratios: market,
            note: "3,000 sowings a year and 2,000 living against 300 and 200".to_owned(),
        },
    ])
}

/// What something cost as something grew: all sizes in turn, run by run.
struct Grown {
    sizes: Vec<f64>,
    runs: Vec<Vec<f64>>,
}

impl Grown {
    /// `cost` is asked by the place of a size among them.
    fn of(
        sizes: &[u64],
        runs: usize,
        mut cost: impl FnMut(usize) -> Outcome<f64>,
    ) -> Outcome<Self> {
        let mut run = |_| (0..sizes.len()).map(&mut cost).collect::<Outcome<_>>();
        // The first run only warms up.
        let runs: Vec<Vec<f64>> = (0..=runs).map(&mut run).collect::<Outcome<_>>()?;
        Ok(Self {
            sizes: sizes.iter().map(|size| *size as f64).collect(),
            runs: runs.into_iter().skip(1).collect(),
        })
    }

    /// The exponents from some size on, as a row.
    fn row(&self, name: &'static str, from: usize) -> Row {
        let first = self.sizes.first().copied().unwrap_or(f64::NAN);
        Row {
            name,
            ratios: self.exponents(from),
            note: format!("cost over that of {first}: {}", self.told()),
        }
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

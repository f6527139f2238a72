//! A sowing that is being watched, and what its counts say of it: the posterior
//! of "wait or sow again".

mod grid;
mod to_come;

use crate::emergence::check_sigma;
use crate::enough::{MOST_SEEDS, smallest};
use crate::error::check_probability;
use crate::{Error, Outlook, TimeFactor, beta_binomial};
use grid::Grid;
use std::cell::OnceCell;
use to_come::ToCome;

/// The probability, before anything is seen, that a whole sowing is dead
/// (judgement).
pub const DEAD: f64 = 0.05;

/// A chance that counts for nothing.
const NEGLIGIBLE: f64 = 1e-14;

/// The probability with which seeds sown beside are to bring the number wanted.
const BESIDE_CONFIDENCE: f64 = 0.9;

/// A sowing, what was counted in it, and what was known before.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Watched<'a> {
    /// How many seeds were sown, 1 to 10,000. Where more came up, as many.
    pub seeds: u32,
    /// Each count: the thermal progress at it, 0 or more and never falling, and
    /// how many had ever come up, those since thinned, pricked out or lost
    /// among them. Where it falls, they were lost: the highest holds. Of counts
    /// at the same progress the last holds.
    pub counts: &'a [(f64, u32)],
    /// How many of them are there now; `None` for what the last count says.
    pub living: Option<u32>,
    /// The share of the packet's seeds that come up.
    pub outlook: Outlook,
    /// What is known of the time factor s.
    pub time_factor: TimeFactor,
    /// The spread of ln progress within the sowing, 0.001 to 10.
    pub sigma: f64,
    /// The probability beforehand that the whole sowing is dead, 0 to under 1;
    /// [`DEAD`] unless more is known.
    pub dead: f64,
    /// How many plants are wanted.
    pub wanted: u32,
    /// Seeds dug up and found firm, and put back, out of those not up.
    pub firm: u32,
    /// Seeds dug up and found soft, out of those not up.
    pub soft: u32,
    /// The progress by which the number wanted must be reached; `None` where
    /// there is time.
    pub horizon: Option<f64>,
}

/// How many more to sow beside an old sowing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Beside {
    /// None: with 9 in 10 the old one will do.
    NotNeeded,
    /// So many.
    Seeds(u32),
    /// More than [`MOST_SEEDS`]: better seed is needed.
    BetterSeed,
}

/// What is to be expected of a watched sowing, given its counts.
///
/// With probability `dead` the whole sowing is dead; else the packet's π ~
/// Beta(a, b) and ln s ~ N(m, τ²), a seed is alive with probability π, and of
/// the living F(p) are up at progress p. Of n seeds k came up, by increments of
/// F between counts; of the rest f were dug up firm (each of likelihood
/// π(1 - F)) and t soft (1 - π; under "all dead" 0.1 and 0.9, judgement); u are
/// left. Over π the posterior is a finite sum: r of the u still to come weigh
///
/// C(u, r) · B(a + k + f + r, b + t + u - r)/B(a, b) · (1 - F)^(f + r) · ∏ ΔF,
///
/// all terms positive, exact for any a and b. Only ln s is integrated, over
/// ±8 τ, and beyond while it matters, with a step of two thirds of
/// 1/√(1/τ² + n/σ²), in which n is k + f and the u still to come, of those at
/// most 100: as narrow as a product of so many parts can be. In logarithms. What was dug up firm is alive and comes up when its time comes.
#[derive(Debug, Clone)]
pub struct Posterior {
    outlook: Outlook,
    /// The packet's first parameter with what came up, and its second with what
    /// is known dead; r is still to be shared out.
    known: Outlook,
    firm: u32,
    living: u32,
    wanted: u32,
    any_up: bool,
    p_dead: f64,
    /// P(r more seeds come, those dug up firm apart) for each r, and not dead.
    come: Vec<f64>,
    grid: Grid,
    progress: f64,
    horizon: Option<f64>,
    /// What is asked more than once and takes long: [`Self::p_reach`], and how
    /// many come by the horizon.
    reach: OnceCell<f64>,
    shared_out: OnceCell<Vec<Vec<(u32, f64)>>>,
}

impl Posterior {
    /// Works out the posterior.
    ///
    /// # Errors
    ///
    /// No seeds or more than 10,000 (sown or counted), counts out of order or at
    /// progress that is negative or not finite, seedlings up at progress 0 (the
    /// record of temperatures is wrong), more dug up than are not up, or a
    /// parameter out of range.
    ///
    /// ```
    /// # use plumule_agronomy::*;
    /// // Twenty seeds at half as long again as the usual time, and nothing up.
    /// let watched = Watched {
    ///     seeds: 20, counts: &[(1.0, 0), (1.5, 0)], living: None, wanted: 12,
    ///     outlook: Outlook::new(9.0, 3.0)?, time_factor: TimeFactor::new(0.0, 0.25)?,
    ///     sigma: SIGMA, dead: DEAD, firm: 0, soft: 0, horizon: None,
    /// };
    /// let found = Posterior::new(&watched)?;
    /// assert!(found.p_dead() > 0.5);
    /// assert!((found.p_nothing() + found.p_any_more() - 1.0).abs() < 1e-12);
    /// assert!(found.expected_final() < 5.0 && found.p_reach() < 0.1);
    /// assert!(found.p_reach_by(Some(1.6)) <= found.p_reach());
    /// assert!(found.next_progress().unwrap() > found.progress());
    /// // Most of the 12 have to come from new seed, three quarters of which come up.
    /// assert!(matches!(found.seeds_beside(), Beside::Seeds(16..30)));
    /// # Ok::<(), Error>(())
    /// ```
    pub fn new(watched: &Watched<'_>) -> Result<Self, Error> {
        watched.outlook.check()?;
        watched.time_factor.check()?;
        check_sigma(watched.sigma)?;
        if watched.dead != 0.0 {
            check_probability("probability that all are dead", watched.dead)?;
        }
        if let Some(horizon) = watched.horizon {
            check_progress(horizon)?;
        }
        let counted = Counted::new(watched.counts)?;
        let seeds = watched.seeds.max(counted.ever);
        if watched.seeds == 0 || seeds > MOST_SEEDS {
            return Err(Error::SeedsWatched(seeds));
        }
        let left = seeds - counted.ever;
        let dug = u64::from(watched.firm) + u64::from(watched.soft);
        if dug > u64::from(left) {
            return Err(Error::Dug { dug, left });
        }
        let known = Outlook {
            a: watched.outlook.a + f64::from(counted.ever) + f64::from(watched.firm),
            b: watched.outlook.b + f64::from(watched.soft),
        };
        let undug = left - watched.firm - watched.soft;
        let weights = ToCome::new(
            watched.outlook,
            counted.ever + watched.firm,
            watched.soft,
            undug,
        );
        let (grid, ln_alive) = Grid::new(watched, &counted, &weights);
        let ln_alive = ln_alive + (-watched.dead).ln_1p();
        let ln_dead = if counted.ever > 0 {
            f64::NEG_INFINITY
        } else {
            // 1 in 10 dead seeds feels firm (judgement).
            watched.dead.ln()
                + f64::from(watched.firm) * 0.1_f64.ln()
                + f64::from(watched.soft) * 0.9_f64.ln()
        };
        let p_dead = 1.0 / (1.0 + (ln_alive - ln_dead).exp());
        let mut come = grid.come();
        come.iter_mut().for_each(|chance| *chance *= 1.0 - p_dead);
        Ok(Self {
            outlook: watched.outlook,
            known,
            firm: watched.firm,
            living: watched.living.unwrap_or(counted.last),
            wanted: watched.wanted,
            any_up: counted.ever > 0,
            p_dead,
            come,
            grid,
            progress: counted.progress,
            horizon: watched.horizon,
            reach: OnceCell::new(),
            shared_out: OnceCell::new(),
        })
    }

    /// The probability that the whole sowing is dead, 0 once one is up.
    pub fn p_dead(&self) -> f64 {
        self.p_dead
    }

    /// The probability that any more come up, at any time.
    pub fn p_any_more(&self) -> f64 {
        let from = usize::from(self.firm == 0);
        self.come.iter().skip(from).sum::<f64>().min(1.0)
    }

    /// The probability that none comes up at all: 0 once one is up.
    pub fn p_nothing(&self) -> f64 {
        if self.any_up {
            0.0
        } else {
            1.0 - self.p_any_more()
        }
    }

    /// The number of plants expected in the end: those living, and those still
    /// to come.
    pub fn expected_final(&self) -> f64 {
        let more: f64 = self
            .by_more()
            .map(|(more, chance)| f64::from(more) * chance)
            .sum();
        f64::from(self.living) + more
    }

    /// The probability that the living and those still to come by the horizon
    /// are as many as wanted.
    pub fn p_reach(&self) -> f64 {
        *self.reach.get_or_init(|| self.p_reach_by(self.horizon))
    }

    /// The same for another horizon.
    pub fn p_reach_by(&self, horizon: Option<f64>) -> f64 {
        let need = self.wanted.saturating_sub(self.living);
        if need == 0 {
            return 1.0;
        }
        let reached = match horizon {
            None => self
                .by_more()
                .filter(|(more, _)| *more >= need)
                .map(|(_, chance)| chance)
                .sum(),
            Some(horizon) => (1.0 - self.p_dead) * self.grid.reach(self.firm, need, horizon),
        };
        f64::clamp(reached, 0.0, 1.0)
    }

    /// The number of plants there now.
    pub fn living(&self) -> u32 {
        self.living
    }

    /// The progress of the last count.
    pub fn progress(&self) -> f64 {
        self.progress
    }

    /// The progress by which the next is up with probability 1/2, if any more
    /// come at all; `None` where that is as good as impossible.
    pub fn next_progress(&self) -> Option<f64> {
        let any = self.p_any_more();
        if any < 1e-9 {
            return None;
        }
        let over_half = |ln_progress: f64| {
            let none = self.grid.none_is_up(self.firm, ln_progress.exp());
            (1.0 - self.p_dead) * none / any - 0.5
        };
        let ln_next = crossing(self.progress.max(1e-6).ln(), 100.0, over_half);
        Some(ln_next.exp().max(self.progress))
    }

    /// The smallest number m of new seeds of the same packet, sown beside the
    /// old, with which the living, those still to come by the horizon and those
    /// from the m new are as many as wanted with probability 0.9.
    ///
    /// The new ones share π with the old tray, as its counts have taught it,
    /// unless that tray is all dead: then its counts say nothing of the packet
    /// and π is what it was. Both are weighed as likely as they are.
    pub fn seeds_beside(&self) -> Beside {
        let undug = self.come.len() as u32 - 1;
        let learnt = |r: u32| Outlook {
            a: self.known.a + f64::from(r),
            b: self.known.b + f64::from(undug.saturating_sub(r)),
        };
        self.smallest_beside(learnt, self.outlook)
    }

    /// The same for seeds of another packet, of which the old tray tells nothing.
    ///
    /// # Errors
    ///
    /// A parameter of the outlook out of range.
    ///
    /// ```
    /// # use plumule_agronomy::*;
    /// let watched = Watched {
    ///     seeds: 20, counts: &[(1.0, 0), (1.5, 0)], living: None, wanted: 12,
    ///     outlook: Outlook::new(9.0, 3.0)?, time_factor: TimeFactor::new(0.0, 0.25)?,
    ///     sigma: SIGMA, dead: DEAD, firm: 0, soft: 0, horizon: None,
    /// };
    /// let Beside::Seeds(good) = Posterior::new(&watched)?.other_seeds_beside(Outlook::new(11.4, 0.6)?)? else {
    ///     panic!("good seed is enough");
    /// };
    /// assert!((12..16).contains(&good));
    /// # Ok::<(), Error>(())
    /// ```
    pub fn other_seeds_beside(&self, other: Outlook) -> Result<Beside, Error> {
        other.check()?;
        Ok(self.smallest_beside(|_| other, other))
    }

    /// With new seeds of an outlook that may depend on how many of the old tray
    /// come, and of one where that is all dead.
    fn smallest_beside(&self, learnt: impl Fn(u32) -> Outlook, where_dead: Outlook) -> Beside {
        let need = self.wanted.saturating_sub(self.living);
        if self.p_reach() >= BESIDE_CONFIDENCE {
            return Beside::NotNeeded;
        }
        let dead = [(0, self.p_dead)];
        let come = self.shared_out.get_or_init(|| self.come_by(need));
        // Neighbours that teach the same are taken together.
        let mut cases: Vec<(Outlook, Vec<f64>)> = Vec::new();
        let by_r = (0..)
            .zip(come)
            .map(|(r, more)| (learnt(r), more.as_slice()));
        for (outlook, more) in by_r.chain([(where_dead, dead.as_slice())]) {
            if cases.last().is_none_or(|(last, _)| *last != outlook) {
                cases.push((outlook, vec![0.0; need as usize + 1]));
            }
            if let Some((_, chances)) = cases.last_mut() {
                for (more, chance) in more {
                    let short = need.saturating_sub(*more) as usize;
                    chances
                        .get_mut(short)
                        .into_iter()
                        .for_each(|sum| *sum += chance);
                }
            }
        }
        cases.retain(|(_, chances)| chances.iter().sum::<f64>() > NEGLIGIBLE);
        let enough = |seeds: u32| {
            let reach = |(outlook, chances): &(Outlook, Vec<f64>)| -> f64 {
                let tails = beta_binomial::at_least(seeds, *outlook);
                chances
                    .iter()
                    .zip(&tails)
                    .map(|(chance, tail)| chance * tail)
                    .sum()
            };
            cases.iter().map(reach).sum::<f64>() >= BESIDE_CONFIDENCE
        };
        smallest(1, MOST_SEEDS, enough).map_or(Beside::BetterSeed, Beside::Seeds)
    }

    /// (How many more come, its chance), dead apart.
    fn by_more(&self) -> impl Iterator<Item = (u32, f64)> {
        (self.firm..).zip(self.come.iter().copied())
    }

    /// For each r: how many come by the horizon, at most `need`, with chances.
    fn come_by(&self, need: u32) -> Vec<Vec<(u32, f64)>> {
        match self.horizon {
            None => self
                .by_more()
                .map(|(more, chance)| vec![(more.min(need), chance)])
                .collect(),
            Some(horizon) => self
                .grid
                .come_by(self.firm, need, horizon, 1.0 - self.p_dead),
        }
    }
}

/// Where from `low` on a falling function crosses 0; not above `highest`. By
/// false position, the end that stands still halved (Dowell and Jarratt 1971,
/// from memory).
fn crossing(mut low: f64, highest: f64, height: impl Fn(f64) -> f64) -> f64 {
    let mut above = height(low);
    if above <= 0.0 {
        return low;
    }
    let (mut high, mut below) = (low, above);
    let mut step = 0.0625;
    while below > 0.0 {
        if high >= highest {
            return highest;
        }
        (low, above) = (high, below);
        high = (high + step).min(highest);
        below = height(high);
        step *= 2.0;
    }
    let mut side = 0;
    for _ in 0..100 {
        if high - low < 1e-12 * (1.0 + high.abs()) {
            break;
        }
        let mut between = (low * below - high * above) / (below - above);
        if !(low < between && between < high) {
            between = low.midpoint(high);
        }
        let found = height(between);
        if found > 0.0 {
            (low, above) = (between, found);
            below *= if side == 1 { 0.5 } else { 1.0 };
            side = 1;
        } else {
            (high, below) = (between, found);
            above *= if side == -1 { 0.5 } else { 1.0 };
            side = -1;
        }
    }
    high
}

fn check_progress(progress: f64) -> Result<(), Error> {
    if progress.is_finite() && progress >= 0.0 {
        Ok(())
    } else {
        Err(Error::Progress(progress))
    }
}

/// Counts, put in order.
struct Counted {
    /// (progress before, progress after, how many came up between).
    increments: Vec<(f64, f64, u32)>,
    /// The progress of the last count.
    progress: f64,
    /// The most that ever were up.
    ever: u32,
    /// What the last count says.
    last: u32,
}

impl Counted {
    fn new(counts: &[(f64, u32)]) -> Result<Self, Error> {
        let mut found = Self {
            increments: Vec::new(),
            progress: 0.0,
            ever: 0,
            last: 0,
        };
        let mut counts = counts.iter().copied().peekable();
        let mut before = 0.0;
        while let Some((progress, up)) = counts.next() {
            check_progress(progress)?;
            if progress < before {
                return Err(Error::CountOrder(before, progress));
            }
            before = progress;
            if counts.peek().is_some_and(|(next, _)| *next == progress) {
                continue;
            }
            if progress == 0.0 && up > 0 {
                return Err(Error::UpWithoutProgress(up));
            }
            if up > found.ever {
                found
                    .increments
                    .push((found.progress, progress, up - found.ever));
                found.ever = up;
            }
            found.progress = progress;
            found.last = up;
        }
        Ok(found)
    }
}

//! The posterior over ln s, at points.

use super::to_come::{LN_RANGE, ToCome};
use super::{Counted, NEGLIGIBLE, Watched};
use crate::normal::Mark;
use std::f64::consts::TAU;

/// Points whose part of the whole is smaller are left out.
const LN_NEGLIGIBLE: f64 = -40.0;

/// Steps within what is narrowest. With as many again, no answer to ten thousand
/// questions changes by 1e-14.
const STEPS: f64 = 1.5;

/// Of seeds still to come so many make it narrower; with more, only how many of
/// them come is narrower, which is summed over.
const MOST_THAT_NARROW: f64 = 100.0;

/// The most points; reached only for spreads that no sowing has.
const MOST_POINTS: f64 = 200_000.0;

/// How far beyond the usual reach the posterior is followed, in reaches.
const FURTHEST: i32 = 5;

#[derive(Debug, Clone, Copy)]
struct Point {
    ln_s: f64,
    /// ln(1 - F) at the last count.
    ln_left: f64,
    /// Its part of the whole.
    part: f64,
}

/// Points of ln s that matter, with their parts, which sum to 1.
#[derive(Debug, Clone)]
pub(super) struct Grid {
    points: Vec<Point>,
    /// P(r still to come) for r = 0, 1 … at each point, one after the other.
    come: Vec<f64>,
    /// How many there are of a point.
    numbers: usize,
    sigma: f64,
}

impl Grid {
    /// The grid, and ln of how likely all that was seen is where not all is dead.
    pub(super) fn new(watched: &Watched<'_>, counted: &Counted, weights: &ToCome) -> (Self, f64) {
        let tau = watched.time_factor.tau;
        // How narrow what is summed can be in ln s: the prior, and a part for each
        // seed, up or still to come.
        let seeds =
            f64::from(counted.ever + watched.firm) + (weights.len() as f64).min(MOST_THAT_NARROW);
        let sharp = (tau.powi(-2) + seeds / watched.sigma.powi(2)).powf(-0.5);
        let reach = (8.0 * tau / (sharp / STEPS)).min(MOST_POINTS / 2.0).ceil();
        let (reach, step) = if tau == 0.0 {
            (0, 0.0)
        } else {
            (reach as i32, 8.0 * tau / reach)
        };
        let increments: Vec<(Option<f64>, f64, f64)> = counted
            .increments
            .iter()
            .map(|&(before, after, up)| {
                let ln_before = (before > 0.0).then(|| before.ln());
                (ln_before, after.ln(), f64::from(up))
            })
            .collect();
        let ln_progress = counted.progress.ln();
        // Of what was seen, and of the prior, the part in logarithms.
        let seen = |i: i32| {
            let offset = f64::from(i) * step;
            let ln_s = watched.time_factor.mean_ln + offset;
            let at = |ln_progress: f64| Mark::at((ln_progress - ln_s) / watched.sigma);
            let mut ln_seen = match tau {
                0.0 => 0.0,
                _ => -0.5 * (offset / tau).powi(2),
            };
            // Most begin where the one before ended, and the last count often there.
            let mut last: Option<(f64, Mark)> = None;
            let from_last = |last: Option<(f64, Mark)>, ln_progress: f64| match last {
                Some((ended, mark)) if ended == ln_progress => mark,
                _ => at(ln_progress),
            };
            for &(before, after, up) in &increments {
                let high = at(after);
                ln_seen += up
                    * match before {
                        None => high.ln_below(),
                        Some(before) => from_last(last, before).ln_up_to(high),
                    };
                last = Some((after, high));
            }
            let ln_left = from_last(last, ln_progress).ln_above();
            if watched.firm > 0 {
                ln_seen += f64::from(watched.firm) * ln_left;
            }
            Point {
                ln_s,
                ln_left,
                part: ln_seen,
            }
        };
        // A normal's chance of an interval is log-concave in where the normal lies
        // (Prékopa 1971; from memory), so what was seen has one summit, and beyond
        // a point that is too far down nothing rises again.
        let furthest = FURTHEST * reach;
        let top = summit(-furthest, furthest, |i| seen(i).part);
        let Point { ln_left, part, .. } = seen(top);
        let floor = part + weights.ln_sum(ln_left) - weights.ln_bound() + LN_NEGLIGIBLE;
        let on = |point: &Point| point.part >= floor;
        let up = (top..=furthest).map(seen).take_while(on);
        let down = (-furthest..top).rev().map(seen).take_while(on);
        let mut points: Vec<Point> = up.chain(down).collect();
        let ln_sums = weights.ln_sums(points.iter().map(|point| point.ln_left));
        let mut most = f64::NEG_INFINITY;
        for (point, ln_sum) in points.iter_mut().zip(&ln_sums) {
            point.part += ln_sum;
            most = most.max(point.part);
        }
        // The sum over all points, which is the integral to the last digit at
        // steps as fine as these (Poisson's summation).
        let ln_prior = match tau {
            0.0 => 0.0,
            _ => (TAU.sqrt() * tau / step).ln(),
        };
        let mut sums = ln_sums.iter();
        let mut come = Vec::new();
        points.retain(|point| {
            let matters = point.part >= most + LN_NEGLIGIBLE;
            if let Some(ln_sum) = sums.next().filter(|_| matters) {
                weights.chances(point.ln_left, *ln_sum, &mut come);
            }
            matters
        });
        let sum: f64 = points.iter().map(|point| (point.part - most).exp()).sum();
        for point in &mut points {
            point.part = (point.part - most).exp() / sum;
        }
        let grid = Self {
            points,
            come,
            numbers: weights.len(),
            sigma: watched.sigma,
        };
        (grid, most + sum.ln() - ln_prior)
    }

    /// The points, each with P(r still to come) there.
    fn each(&self) -> impl Iterator<Item = (&Point, &[f64])> {
        self.points.iter().zip(self.come.chunks(self.numbers))
    }

    /// P(r still to come, those dug up firm apart), where not all is dead.
    pub(super) fn come(&self) -> Vec<f64> {
        let mut come = vec![0.0; self.numbers];
        for (point, chances) in self.each() {
            for (sum, chance) in come.iter_mut().zip(chances) {
                *sum += point.part * chance;
            }
        }
        come
    }

    /// The probability that of those still to come, `firm` among them, at least
    /// `need` are up by `horizon`.
    pub(super) fn reach(&self, firm: u32, need: u32, horizon: f64) -> f64 {
        self.sum(|point, come| {
            let tails = Tails::new(need, self.share_by(point, horizon));
            let tails = tails.skip(firm as usize).zip(come);
            tails.map(|(tail, chance)| chance * tail).sum()
        })
    }

    /// The probability that more come, where not all is dead, of which none is
    /// up by `progress`.
    pub(super) fn none_is_up(&self, firm: u32, progress: f64) -> f64 {
        let (from, least) = if firm == 0 { (1, 1) } else { (0, firm) };
        self.sum(|point, come| {
            let rest = 1.0 - self.share_by(point, progress);
            let more = come.iter().skip(from).rev();
            let sum = more.fold(0.0, |sum, chance| sum * rest + chance);
            sum * rest.powi(least as i32)
        })
    }

    /// For each r still to come: how many of them and of those dug up firm are up
    /// by `horizon`, `need` standing for all above, with chances times `scale`.
    pub(super) fn come_by(
        &self,
        firm: u32,
        need: u32,
        horizon: f64,
        scale: f64,
    ) -> Vec<Vec<(u32, f64)>> {
        let ln_factorials: Vec<f64> = (0..=self.numbers + firm as usize)
            .scan(0.0, |sum, i| {
                *sum += (i.max(1) as f64).ln();
                Some(*sum)
            })
            .collect();
        let mut by_r = vec![vec![0.0; need as usize + 1]; self.numbers];
        for (point, come) in self.each() {
            let share = self.share_by(point, horizon);
            for ((r, chance), sums) in (0..).zip(come).zip(&mut by_r) {
                let chance = scale * point.part * chance;
                if chance > NEGLIGIBLE {
                    share_out(chance, r + firm, share, &ln_factorials, sums);
                }
            }
        }
        let listed = |sums: Vec<f64>| {
            (0..)
                .zip(sums)
                .filter(|(_, chance)| *chance > 0.0)
                .collect()
        };
        by_r.into_iter().map(listed).collect()
    }

    fn sum(&self, value: impl Fn(&Point, &[f64]) -> f64) -> f64 {
        self.each()
            .map(|(point, come)| point.part * value(point, come))
            .sum()
    }

    /// The share of the living not yet up that are up by `progress`.
    fn share_by(&self, point: &Point, progress: f64) -> f64 {
        let ln_left = ln_not_up((progress.ln() - point.ln_s) / self.sigma);
        if ln_left < point.ln_left {
            -(ln_left - point.ln_left).exp_m1()
        } else {
            0.0
        }
    }
}

/// Where a function that rises to one summit and falls again is highest.
fn summit(mut low: i32, mut high: i32, height: impl Fn(i32) -> f64) -> i32 {
    while low < high {
        let middle = low + (high - low) / 2;
        if height(middle) < height(middle + 1) {
            low = middle + 1;
        } else {
            high = middle;
        }
    }
    low
}

/// ln(1 - Φ(z)).
fn ln_not_up(z: f64) -> f64 {
    Mark::at(z).ln_above()
}

/// P(X >= need) of X ~ Binomial(n, share) for n = 0, 1 …, each from the last:
/// the n-th seed makes the number full where need - 1 came before it.
struct Tails {
    n: u32,
    need: u32,
    share: f64,
    ln_rest: f64,
    /// P(X = need - 1) of n.
    just_short: JustShort,
    tail: f64,
}

/// In logarithms as long as it is out of the range of a float.
enum JustShort {
    Ln(f64),
    Plain(f64),
}

impl Tails {
    fn new(need: u32, share: f64) -> Self {
        let ln_short = if share > 0.0 {
            f64::from(need - 1) * share.ln()
        } else {
            f64::NEG_INFINITY
        };
        Self {
            n: 0,
            need,
            share,
            ln_rest: (-share).ln_1p(),
            just_short: JustShort::of(ln_short),
            tail: 0.0,
        }
    }
}

impl JustShort {
    fn of(ln_short: f64) -> Self {
        if ln_short > LN_RANGE {
            Self::Plain(ln_short.exp())
        } else {
            Self::Ln(ln_short)
        }
    }
}

impl Iterator for Tails {
    type Item = f64;

    fn next(&mut self) -> Option<f64> {
        let tail = self.tail;
        self.n += 1;
        if self.n >= self.need {
            let more = f64::from(self.n) / f64::from(self.n + 1 - self.need);
            match &mut self.just_short {
                JustShort::Plain(short) => {
                    self.tail = f64::min(self.tail + *short * self.share, 1.0);
                    *short *= more * (1.0 - self.share);
                }
                JustShort::Ln(ln_short) => {
                    self.just_short = JustShort::of(*ln_short + more.ln() + self.ln_rest);
                }
            }
        }
        Some(tail)
    }
}

/// Adds `chance` times the Binomial(n, share) to `sums`, whose last takes all
/// above; what lies 9 deviations off is left to it or out.
fn share_out(chance: f64, n: u32, share: f64, ln_factorials: &[f64], sums: &mut [f64]) {
    let most = sums.len() - 1;
    let count = f64::from(n);
    if share <= 0.0 || share >= 1.0 || n == 0 {
        let all = if share >= 1.0 { n as usize } else { 0 };
        sums.iter_mut()
            .skip(all.min(most))
            .take(1)
            .for_each(|sum| *sum += chance);
        return;
    }
    let mean = count * share;
    let wide = 9.0 * (mean * (1.0 - share)).sqrt() + 9.0;
    let first = (mean - wide).max(0.0) as usize;
    let last = ((mean + wide) as usize).min(n as usize);
    let ln_factorial = |i: usize| ln_factorials.get(i).copied().unwrap_or(f64::NAN);
    let below = n as usize - first;
    let ln_first = ln_factorial(n as usize) - ln_factorial(first) - ln_factorial(below)
        + first as f64 * share.ln()
        + below as f64 * (-share).ln_1p();
    let mut term = chance * ln_first.exp();
    let mut left = chance;
    for (up, sum) in sums
        .iter_mut()
        .enumerate()
        .take(most.min(last + 1))
        .skip(first)
    {
        *sum += term;
        left -= term;
        term *= (count - up as f64) / (up as f64 + 1.0) * (share / (1.0 - share));
    }
    if most <= last
        && let Some(all_above) = sums.last_mut()
    {
        *all_above += left.max(0.0);
    }
}

//! The posterior over ln s, at points.

use super::to_come::ToCome;
use super::{Counted, Watched};
use crate::normal;
use std::f64::consts::TAU;

/// Points whose part of the whole is smaller are left out.
const LN_NEGLIGIBLE: f64 = -40.0;

/// The most points; reached only for spreads that no sowing has.
const MOST_POINTS: f64 = 200_000.0;

/// How far beyond the usual reach the posterior is followed, in reaches.
const FURTHEST: i32 = 5;

/// Part of the whole below which a chance is not followed further.
const NEGLIGIBLE: f64 = 1e-14;

#[derive(Debug, Clone)]
struct Point {
    ln_s: f64,
    /// ln(1 - F) at the last count.
    ln_left: f64,
    /// ln of the sum over what is to come, the factor of those dug up firm apart.
    ln_sum: f64,
    /// Its part of the whole.
    part: f64,
    /// P(r still to come) there.
    come: Vec<f64>,
}

/// Points of ln s that matter, with their parts, which sum to 1.
#[derive(Debug, Clone)]
pub(super) struct Grid {
    points: Vec<Point>,
    sigma: f64,
}

impl Grid {
    /// The grid, and ln of how likely all that was seen is where not all is dead.
    pub(super) fn new(watched: &Watched<'_>, counted: &Counted, weights: &ToCome) -> (Self, f64) {
        let tau = watched.time_factor.tau;
        let sharp = watched.sigma / f64::from(counted.ever.max(1)).sqrt();
        let reach = (8.0 * tau / (tau.min(sharp) / 8.0))
            .min(MOST_POINTS / 2.0)
            .ceil();
        let (reach, step) = if tau == 0.0 {
            (0, 0.0)
        } else {
            (reach as i32, 8.0 * tau / reach)
        };
        let at = |ln_progress: f64, ln_s: f64| (ln_progress - ln_s) / watched.sigma;
        let ln_progress = counted.progress.ln();
        let increments = counted.increments.iter();
        let increments: Vec<(Option<f64>, f64, f64)> = increments
            .map(|&(before, after, up)| {
                let ln_before = (before > 0.0).then(|| before.ln());
                (ln_before, after.ln(), f64::from(up))
            })
            .collect();
        // ln s, ln(1 - F) at the last count, and ln of the prior and of what was seen.
        let seen = |i: i32| {
            let offset = f64::from(i) * step;
            let ln_s = watched.time_factor.mean_ln + offset;
            let ln_left = ln_not_up(at(ln_progress, ln_s));
            let mut ln_seen = match tau {
                0.0 => 0.0,
                _ => -0.5 * (offset / tau).powi(2),
            };
            if watched.firm > 0 {
                ln_seen += f64::from(watched.firm) * ln_left;
            }
            for &(before, after, up) in &increments {
                ln_seen += up
                    * match before {
                        None => normal::ln_cdf(at(after, ln_s)),
                        Some(before) => normal::ln_between(at(before, ln_s), at(after, ln_s)),
                    };
            }
            (ln_s, ln_left, ln_seen)
        };
        let mut points = Vec::new();
        let mut most = f64::NEG_INFINITY;
        let mut look = |i: i32| {
            let (ln_s, ln_left, ln_seen) = seen(i);
            if ln_seen + weights.ln_bound() < most + LN_NEGLIGIBLE {
                return false;
            }
            let ln_sum = weights.ln_sum(ln_left);
            let part = ln_seen + ln_sum;
            most = most.max(part);
            points.push(Point {
                ln_s,
                ln_left,
                ln_sum,
                part,
                come: Vec::new(),
            });
            true
        };
        // A normal's chance of an interval is log-concave in where the normal lies
        // (Prékopa 1971; from memory), so what was seen has one summit, and beyond
        // a point that is too far down nothing rises again.
        let furthest = FURTHEST * reach;
        let top = summit(-furthest, furthest, |i| seen(i).2);
        let _ = (top..=furthest).all(&mut look);
        let _ = (-furthest..top).rev().all(&mut look);
        // The sum over all points, which is the integral to the last digit at
        // steps as fine as these (Poisson's summation).
        let ln_prior = match tau {
            0.0 => 0.0,
            _ => (TAU.sqrt() * tau / step).ln(),
        };
        points.retain(|point| point.part >= most + LN_NEGLIGIBLE);
        let sum: f64 = points.iter().map(|point| (point.part - most).exp()).sum();
        for point in &mut points {
            point.part = (point.part - most).exp() / sum;
            point.come = vec![0.0; weights.len()];
            weights.chances(point.ln_left, point.ln_sum, 1.0, &mut point.come);
        }
        let grid = Self {
            points,
            sigma: watched.sigma,
        };
        (grid, most + sum.ln() - ln_prior)
    }

    /// P(r still to come, those dug up firm apart), where not all is dead.
    pub(super) fn come(&self, weights: &ToCome) -> Vec<f64> {
        let mut come = vec![0.0; weights.len()];
        for point in &self.points {
            for (sum, chance) in come.iter_mut().zip(&point.come) {
                *sum += point.part * chance;
            }
        }
        come
    }

    /// The probability that of those still to come, `firm` among them, at least
    /// `need` are up by `horizon`.
    pub(super) fn reach(&self, firm: u32, need: u32, horizon: f64) -> f64 {
        self.sum(|point| {
            let tails = Tails::new(need, self.share_by(point, horizon));
            let tails = tails.skip(firm as usize).zip(&point.come);
            tails.map(|(tail, chance)| chance * tail).sum()
        })
    }

    /// The probability that the next is up by `progress`, if any more come.
    pub(super) fn next_is_up(&self, firm: u32, progress: f64) -> f64 {
        let (mut up, mut any) = (0.0, 0.0);
        for point in &self.points {
            let share = self.share_by(point, progress);
            let ln_none = (-share).ln_1p();
            for (chance, more) in point.come.iter().zip(firm..).filter(|(_, more)| *more > 0) {
                let chance = point.part * chance;
                any += chance;
                up += chance * -(f64::from(more) * ln_none).exp_m1();
            }
        }
        up / any
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
        let numbers = self.points.first().map_or(0, |point| point.come.len());
        let ln_factorials: Vec<f64> = (0..=numbers + firm as usize)
            .scan(0.0, |sum, i| {
                *sum += (i.max(1) as f64).ln();
                Some(*sum)
            })
            .collect();
        let mut by_r = vec![vec![0.0; need as usize + 1]; numbers];
        for point in &self.points {
            let share = self.share_by(point, horizon);
            for ((r, chance), sums) in (0..).zip(&point.come).zip(&mut by_r) {
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

    fn sum(&self, value: impl Fn(&Point) -> f64) -> f64 {
        self.points
            .iter()
            .map(|point| point.part * value(point))
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
    normal::ln_cdf(-z)
}

/// P(X >= need) of X ~ Binomial(n, share) for n = 0, 1 …, each from the last:
/// the n-th seed makes the number full where need - 1 came before it.
struct Tails {
    n: u32,
    need: u32,
    ln_share: f64,
    ln_rest: f64,
    /// ln P(X = need - 1) of n.
    ln_just_short: f64,
    tail: f64,
}

impl Tails {
    fn new(need: u32, share: f64) -> Self {
        let ln_share = share.ln();
        Self {
            n: 0,
            need,
            ln_share,
            ln_rest: (-share).ln_1p(),
            ln_just_short: if share > 0.0 {
                f64::from(need - 1) * ln_share
            } else {
                f64::NEG_INFINITY
            },
            tail: 0.0,
        }
    }
}

impl Iterator for Tails {
    type Item = f64;

    fn next(&mut self) -> Option<f64> {
        let tail = self.tail;
        if self.n + 1 >= self.need {
            self.tail = f64::min(self.tail + (self.ln_just_short + self.ln_share).exp(), 1.0);
            let n = f64::from(self.n + 1);
            self.ln_just_short += (n / (n + 1.0 - f64::from(self.need))).ln() + self.ln_rest;
        }
        self.n += 1;
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

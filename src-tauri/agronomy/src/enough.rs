//! How many seeds or cells to sow for the plants wanted.

use crate::error::check_probability;
use crate::{Error, Outlook, beta_binomial};
use statrs::function::beta::checked_beta_reg;

/// The confidence with which the plants wanted are to come, unless set.
pub const CONFIDENCE: f64 = 0.9;

/// The most seeds that are advised; beyond, better seed is the answer.
pub const MOST_SEEDS: u32 = 10_000;

/// The most seeds in one cell (judgement: far more than a cell holds).
const MOST_IN_A_CELL: u32 = 100;

/// By how much a probability may fall short of the confidence and still meet
/// it: what is exactly 9 in 10 must not be missed by a rounding.
const TIE: f64 = 1e-12;

/// The smallest number of seeds of which at least `wanted` come up with
/// probability `confidence`: the smallest n with P(X >= wanted) >= confidence,
/// X ~ BetaBinomial(n, a, b). `None` where it would be more than
/// [`MOST_SEEDS`]: better seed is needed.
///
/// X counts seeds that come up, so a cluster of seeds is one.
///
/// # Errors
///
/// A confidence not strictly between 0 and 1, or an outlook out of range.
///
/// ```
/// # use plumule_agronomy::{Outlook, seeds_to_sow};
/// // Of seed of which nothing is known, any number of n is as likely: P(X >= 1) = n/(n + 1).
/// let unknown = Outlook::new(1.0, 1.0)?;
/// assert_eq!(seeds_to_sow(1, 0.9, unknown)?, Some(9));
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn seeds_to_sow(wanted: u32, confidence: f64, outlook: Outlook) -> Result<Option<u32>, Error> {
    check_confidence(confidence)?;
    outlook.check()?;
    Ok(smallest(wanted, MOST_SEEDS, |seeds| {
        let reach = beta_binomial::at_least(seeds, outlook);
        reaches(
            reach.get(wanted as usize).copied().unwrap_or(0.0),
            confidence,
        )
    }))
}

/// The smallest number of cells, each with `seeds_per_cell` seeds (1 to 100), of
/// which at least `wanted` have at least one plant with probability
/// `confidence`. `None` where that takes more than [`MOST_SEEDS`] seeds.
///
/// All seeds share the packet's π ~ Beta(a, b); a cell has a plant with
/// probability q = 1 - (1 - π)^j, and cells are independent given π. So
/// P(Y >= w | π) is the chance that the w-th smallest of N uniform numbers lies
/// under q, with that number U ~ Beta(w, N - w + 1), and P(Y >= w) is that of
/// U <= q(π): one integral with a smooth weight, whichever of U and π is the
/// narrower, over the other's distribution function. Taken over the logit of
/// the weight by the trapezoidal rule, whose error falls faster than any power
/// of the step there (Trefethen and Weideman 2014), it is exact to 1e-10.
/// Sums over the number of plants would alternate in sign.
///
/// # Errors
///
/// A confidence not strictly between 0 and 1, no seeds in a cell or more than
/// 100, an outlook out of range.
///
/// ```
/// # use plumule_agronomy::{Outlook, cells_to_sow, seeds_to_sow};
/// let packet = Outlook::new(9.0, 3.0)?;
/// assert_eq!(cells_to_sow(12, 0.9, packet, 1)?, seeds_to_sow(12, 0.9, packet)?);
/// assert!(cells_to_sow(12, 0.9, packet, 2)? < cells_to_sow(12, 0.9, packet, 1)?);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn cells_to_sow(
    wanted: u32,
    confidence: f64,
    outlook: Outlook,
    seeds_per_cell: u32,
) -> Result<Option<u32>, Error> {
    check_confidence(confidence)?;
    outlook.check()?;
    if !(1..=MOST_IN_A_CELL).contains(&seeds_per_cell) {
        return Err(Error::SeedsPerCell(seeds_per_cell));
    }
    if seeds_per_cell == 1 {
        return seeds_to_sow(wanted, confidence, outlook);
    }
    Ok(smallest(wanted, MOST_SEEDS / seeds_per_cell, |cells| {
        wanted == 0
            || wanted <= cells
                && reaches(filled(cells, wanted, seeds_per_cell, outlook), confidence)
    }))
}

fn check_confidence(confidence: f64) -> Result<(), Error> {
    check_probability("confidence", confidence)
}

fn reaches(probability: f64, confidence: f64) -> bool {
    probability >= confidence - TIE
}

/// The smallest number from `least` to `most` that is enough: more always are.
pub(crate) fn smallest(least: u32, most: u32, enough: impl Fn(u32) -> bool) -> Option<u32> {
    if least > most {
        return None;
    }
    // Upwards by doubling first: large numbers take longer to try.
    let (mut low, mut high, mut step) = (least, least, 1);
    while !enough(high) {
        if high == most {
            return None;
        }
        low = high + 1;
        high = most.min(high.saturating_add(step));
        step *= 2;
    }
    while low < high {
        let middle = low.midpoint(high);
        if enough(middle) {
            high = middle;
        } else {
            low = middle + 1;
        }
    }
    Some(high)
}

/// P(Y >= wanted) of `cells` cells, 1 <= `wanted` <= `cells`.
fn filled(cells: u32, wanted: u32, seeds_per_cell: u32, outlook: Outlook) -> f64 {
    let order = Outlook {
        a: f64::from(wanted),
        b: f64::from(cells - wanted) + 1.0,
    };
    let j = f64::from(seeds_per_cell);
    // How much the logit of q moves with that of π, where U has its middle.
    let u = order.mean();
    let stretch = j * -((-u).ln_1p() / j).exp_m1() / u;
    if logit_width(outlook) < logit_width(order) / stretch {
        let step = logit_width(outlook).min(logit_width(order) / j);
        average(outlook, step, |_, ln_rest| {
            let rest = (j * ln_rest).exp();
            below(order, -(j * ln_rest).exp_m1(), rest)
        })
    } else {
        let step = logit_width(order).min(logit_width(outlook));
        average(order, step, |_, ln_rest| {
            let rest = (ln_rest / j).exp();
            // P(π >= x) is P(1 - π <= 1 - x).
            below(
                Outlook {
                    a: outlook.b,
                    b: outlook.a,
                },
                rest,
                -(ln_rest / j).exp_m1(),
            )
        })
    }
}

/// The spread of the logit of a Beta about its mode, 1/√(its curvature there).
fn logit_width(Outlook { a, b }: Outlook) -> f64 {
    (1.0 / a + 1.0 / b).sqrt()
}

/// P(a Beta <= x), given also 1 - x, which is the one to trust near 1.
fn below(outlook: Outlook, x: f64, rest: f64) -> f64 {
    let regular = |a, b, x: f64| checked_beta_reg(a, b, x.clamp(0.0, 1.0)).unwrap_or(0.0);
    if x < 0.5 {
        regular(outlook.a, outlook.b, x)
    } else {
        1.0 - regular(outlook.b, outlook.a, rest)
    }
}

/// The average of `value` of (ln x, ln(1 - x)) over x ~ Beta, by the trapezoidal
/// rule over the logit of x.
fn average(Outlook { a, b }: Outlook, scale: f64, value: impl Fn(f64, f64) -> f64) -> f64 {
    const NEGLIGIBLE: f64 = -42.0;
    let step = (scale / 4.0).min(0.25);
    let mode = (a / b).ln();
    let logs = |t: f64| (-softplus(-t), -softplus(t));
    let weight = |t: f64| {
        let (ln_x, ln_rest) = logs(t);
        a * ln_x + b * ln_rest
    };
    let peak = weight(mode);
    let (mut sum, mut weights) = (0.0, 0.0);
    for direction in [-1.0, 1.0] {
        for point in 0_u32.. {
            let t = mode + direction * f64::from(point) * step;
            let ln_weight = weight(t) - peak;
            if ln_weight.is_nan() || ln_weight < NEGLIGIBLE {
                break;
            }
            // The middle is met from both sides.
            let half = if point == 0 { 0.5 } else { 1.0 };
            let weight = half * ln_weight.exp();
            let (ln_x, ln_rest) = logs(t);
            sum += weight * value(ln_x, ln_rest);
            weights += weight;
        }
    }
    sum / weights
}

/// ln(1 + eᵗ).
fn softplus(t: f64) -> f64 {
    t.max(0.0) + (-t.abs()).exp().ln_1p()
}

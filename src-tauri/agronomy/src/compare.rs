//! Shares that were counted: their intervals, and which of two is higher.

use crate::error::check_probability;
use crate::{Error, Outlook};

/// The most trials in one count (judgement: far more than a season's sowings).
const MOST_TRIALS: u32 = 10_000_000;

/// The Clopper-Pearson interval of a share of which `successes` of `trials` were
/// seen: it holds the share with probability `level` or more, whatever that is.
///
/// From the α/2 quantile of Beta(k, n - k + 1) to the 1 - α/2 quantile of Beta(k
/// + 1, n - k), 0 and 1 where none or all succeeded.
///
/// # Errors
///
/// No trials or more than 10,000,000, more successes than trials, a level not
/// strictly between 0 and 1.
///
/// ```
/// # use plumule_agronomy::interval;
/// let (low, high) = interval(8, 10, 0.95)?;
/// assert!((low - 0.443905).abs() < 1e-6 && (high - 0.974789).abs() < 1e-6);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn interval(successes: u32, trials: u32, level: f64) -> Result<(f64, f64), Error> {
    check(successes, trials)?;
    check_probability("level", level)?;
    let (k, rest) = (f64::from(successes), f64::from(trials - successes));
    let tail = (1.0 - level) / 2.0;
    let low = match successes {
        0 => 0.0,
        _ => Outlook {
            a: k,
            b: rest + 1.0,
        }
        .quantile(tail),
    };
    // By the mirror image, so that a high near 1 is as sharp as a low near 0.
    let high = match trials - successes {
        0 => 1.0,
        _ => {
            1.0 - Outlook {
                a: rest,
                b: k + 1.0,
            }
            .quantile(tail)
        }
    };
    Ok((low, high))
}

/// The probability that the share behind `a` is higher than that behind `b`, each
/// `(successes, trials)`, with uniform priors: P(X > Y) of X ~ Beta(kₐ + 1, nₐ -
/// kₐ + 1) and Y likewise.
///
/// It is Σ B(α + i, β + β')/((β' + i) B(1 + i, β') B(α, β)) over i = 0 … kₐ, with
/// α, β of Y and β' of X: all terms positive, each from the last by a ratio.
///
/// # Errors
///
/// No trials or more than 10,000,000, or more successes than trials.
///
/// ```
/// # use plumule_agronomy::p_higher;
/// assert!((p_higher((5, 10), (5, 10))? - 0.5).abs() < 1e-12);
/// // One of one against none of one: P(X > Y) with densities 2x and 2(1 - y) is 5/6.
/// assert!((p_higher((1, 1), (0, 1))? - 5.0 / 6.0).abs() < 1e-12);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn p_higher(a: (u32, u32), b: (u32, u32)) -> Result<f64, Error> {
    const LARGE: f64 = 1e200;
    check(a.0, a.1)?;
    check(b.0, b.1)?;
    let (alpha, beta) = (f64::from(b.0) + 1.0, f64::from(b.1 - b.0) + 1.0);
    let other = f64::from(a.1 - a.0) + 1.0;
    // B(α, β + β')/B(α, β), by factors.
    let mut ln_scale: f64 = (0..=a.1 - a.0)
        .map(|i| (-alpha / (alpha + beta + f64::from(i))).ln_1p())
        .sum();
    let (mut term, mut sum) = (1.0, 0.0);
    for i in (0..=a.0).map(f64::from) {
        sum += term;
        term *= (alpha + i) * (other + i) / ((alpha + beta + other + i) * (1.0 + i));
        if term > LARGE {
            term /= LARGE;
            sum /= LARGE;
            ln_scale += LARGE.ln();
        }
    }
    Ok((ln_scale + sum.ln()).exp().min(1.0))
}

fn check(successes: u32, trials: u32) -> Result<(), Error> {
    if (1..=MOST_TRIALS).contains(&trials) && successes <= trials {
        Ok(())
    } else {
        Err(Error::Test {
            germinated: successes,
            of: trials,
        })
    }
}

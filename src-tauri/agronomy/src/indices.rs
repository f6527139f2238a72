//! How a sowing came up, in the indices of seed science.

use crate::Error;
use crate::forecast::MAX_SEEDS;

/// Germination indices of one lot. Days are counted from sowing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GerminationIndices {
    /// Final germination in percent.
    pub percent: f64,
    /// Day by which half of those that came up were up (Coolbear 1984).
    pub t50_coolbear: Option<f64>,
    /// Mean day of coming up.
    pub mean_time: Option<f64>,
    /// Its sample variance, with at least two up.
    pub variance: Option<f64>,
    /// Coefficient of velocity, percent per day: 100/mean time.
    pub cvg: Option<f64>,
    /// Synchrony Z, 0 to 1: the chance that two came up on the same day.
    pub synchrony: Option<f64>,
    /// Uncertainty U in bits: the entropy of the day.
    pub uncertainty: Option<f64>,
}

/// The indices of `new_counts`, how many came up on day 1, 2 … after sowing, out
/// of `seeds` sown.
///
/// With nᵢ up on day tᵢ and N in all: T50 (Coolbear, Francis and Grierson 1984)
/// lies between the days about (N + 1)/2, in proportion; mean time Σnᵢtᵢ/N;
/// variance Σnᵢ(tᵢ - mean)²/(N - 1); velocity 100 N/Σnᵢtᵢ (Kotowski); Z =
/// ΣC(nᵢ, 2)/C(N, 2) (Primack); U = -Σ(nᵢ/N) log₂(nᵢ/N) (Labouriau). What does
/// not exist for so few is `None`.
///
/// # Errors
///
/// No seeds or more than 100,000, or more up than seeds.
///
/// ```
/// # use plumule_agronomy::germination_indices;
/// let found = germination_indices(&[0, 2, 2], 5)?;
/// assert_eq!((found.percent, found.mean_time, found.uncertainty), (80.0, Some(2.5), Some(1.0)));
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn germination_indices(new_counts: &[u32], seeds: u32) -> Result<GerminationIndices, Error> {
    if !(1..=MAX_SEEDS).contains(&seeds) {
        return Err(Error::Seeds { seeds });
    }
    let up: u64 = new_counts.iter().copied().map(u64::from).sum();
    if up > u64::from(seeds) {
        return Err(Error::Test {
            germinated: u32::try_from(up).unwrap_or(u32::MAX),
            of: seeds,
        });
    }
    let days = || {
        (1_u32..)
            .zip(new_counts)
            .map(|(day, n)| (f64::from(day), f64::from(*n)))
    };
    let total = up as f64;
    let some = up > 0;
    let two = up > 1;
    let mean = days().map(|(day, n)| n * day).sum::<f64>() / total;
    let squares: f64 = days().map(|(day, n)| n * (day - mean).powi(2)).sum();
    let pairs = |n: f64| n * (n - 1.0) / 2.0;
    let entropy: f64 = days()
        .filter(|(_, n)| *n > 0.0)
        .map(|(_, n)| -(n / total) * (n / total).log2())
        .sum();
    Ok(GerminationIndices {
        percent: 100.0 * total / f64::from(seeds),
        t50_coolbear: some
            .then(|| day_of(f64::midpoint(total, 1.0), new_counts))
            .flatten(),
        mean_time: some.then_some(mean),
        variance: two.then(|| squares / (total - 1.0)),
        cvg: some.then(|| 100.0 / mean),
        synchrony: two.then(|| days().map(|(_, n)| pairs(n)).sum::<f64>() / pairs(total)),
        uncertainty: some.then_some(entropy.abs()),
    })
}

/// The day at which so many are up, in proportion within the day.
fn day_of(number: f64, new_counts: &[u32]) -> Option<f64> {
    let mut before = 0.0;
    for (day, new) in (0_u32..).zip(new_counts) {
        let new = f64::from(*new);
        if before + new >= number {
            return Some(f64::from(day) + (number - before) / new);
        }
        before += new;
    }
    None
}

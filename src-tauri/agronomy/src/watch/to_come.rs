//! How much each number of seeds still to come weighs, π integrated out.

use crate::Outlook;

/// Weights of r = 0, 1 … u seeds still to come, but for the factor (1 - F)ʳ:
/// C(u, r) · B(a + k + r, b + t + u - r)/B(a, b).
pub(super) struct ToCome {
    /// Logarithms of the weights.
    ln_weights: Vec<f64>,
    /// The greatest of them.
    ln_most: f64,
    /// The weights over the greatest, where none leaves the range of a float.
    weights: Option<Vec<f64>>,
}

/// The least logarithm of a number that is reckoned with as it is: far enough
/// above the smallest float.
pub(super) const LN_RANGE: f64 = -600.0;

impl ToCome {
    /// With `alive` known alive and `dead` known dead of the seeds that share π.
    pub(super) fn new(Outlook { a, b }: Outlook, alive: u32, dead: u32, undug: u32) -> Self {
        // B(a + k, b + t + u)/B(a, b) by factors, since logs of gammas lose
        // digits for large parameters.
        let product = |start: f64, factors: u32| -> f64 {
            (0..factors).map(|i| (start + f64::from(i)).ln()).sum()
        };
        let mut ln_weight =
            product(a, alive) + product(b, dead + undug) - product(a + b, alive + dead + undug);
        let (u, k, t) = (f64::from(undug), f64::from(alive), f64::from(dead));
        let mut ln_weights = vec![ln_weight];
        for r in 0..undug {
            let r = f64::from(r);
            let ratio = (u - r) / (r + 1.0) * ((a + k + r) / (b + t + u - r - 1.0));
            ln_weight += ratio.ln();
            ln_weights.push(ln_weight);
        }
        let ln_most = ln_weights.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let in_range = ln_weights.iter().all(|ln| *ln - ln_most > LN_RANGE);
        let weights = in_range.then(|| ln_weights.iter().map(|ln| (ln - ln_most).exp()).collect());
        Self {
            ln_weights,
            ln_most,
            weights,
        }
    }

    /// How many there can be, and 1 for none.
    pub(super) fn len(&self) -> usize {
        self.ln_weights.len()
    }

    /// An upper bound of [`Self::ln_sum`].
    pub(super) fn ln_bound(&self) -> f64 {
        self.ln_most + (self.len() as f64).ln()
    }

    /// ln of the weights' sum where ln(1 - F) is `ln_left`.
    pub(super) fn ln_sum(&self, ln_left: f64) -> f64 {
        self.ln_sums([ln_left]).into_iter().sum()
    }

    /// ln of the weights' sum at each of many values of ln(1 - F).
    pub(super) fn ln_sums(&self, ln_left: impl IntoIterator<Item = f64>) -> Vec<f64> {
        let ln_left = ln_left.into_iter();
        let Some(weights) = &self.weights else {
            let sum = |ln_left| {
                let ln = || self.ln_each(ln_left);
                let most = ln().fold(f64::NEG_INFINITY, f64::max);
                most + ln().map(|ln| (ln - most).exp()).sum::<f64>().ln()
            };
            return ln_left.map(sum).collect();
        };
        // Weight by weight, so that all go side by side through the processor.
        let left: Vec<f64> = ln_left.map(f64::exp).collect();
        let mut sums = vec![0.0; left.len()];
        for weight in weights.iter().rev() {
            for (sum, left) in sums.iter_mut().zip(&left) {
                *sum = *sum * left + weight;
            }
        }
        sums.iter().map(|sum| self.ln_most + sum.ln()).collect()
    }

    /// The chance of each number where ln(1 - F) is `ln_left`.
    pub(super) fn chances(&self, ln_left: f64, ln_sum: f64, each: &mut Vec<f64>) {
        if let Some(weights) = &self.weights {
            let left = ln_left.exp();
            let mut power = (self.ln_most - ln_sum).exp();
            each.extend(weights.iter().map(|weight| {
                let chance = weight * power;
                power *= left;
                chance
            }));
        } else {
            each.extend(self.ln_each(ln_left).map(|ln| (ln - ln_sum).exp()));
        }
    }

    fn ln_each(&self, ln_left: f64) -> impl Iterator<Item = f64> {
        self.ln_weights
            .iter()
            .zip(0_u32..)
            .map(move |(ln, r)| match r {
                0 => *ln,
                r => ln + f64::from(r) * ln_left,
            })
    }
}

//! The standard normal distribution, tail-safe.

use statrs::function::erf::{erfc, erfc_inv};
use std::f64::consts::SQRT_2;

/// Φ(z), the share of a standard normal below `z`.
pub(crate) fn cdf(z: f64) -> f64 {
    0.5 * erfc(-z / SQRT_2)
}

/// Φ⁻¹(share) for a share strictly between 0 and 1.
pub(crate) fn quantile(share: f64) -> f64 {
    -SQRT_2 * erfc_inv(2.0 * share)
}

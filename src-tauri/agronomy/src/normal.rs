//! The standard normal distribution, tail-safe.
//!
//! The error function is libm's, good to the last digit; that of statrs is off by
//! 1e-10 about z = -0.7.

use libm::erfc;
use statrs::function::erf::erfc_inv;
use std::f64::consts::{SQRT_2, TAU};

/// Φ(z), the share of a standard normal below `z`.
pub(crate) fn cdf(z: f64) -> f64 {
    0.5 * erfc(-z / SQRT_2)
}

/// Φ⁻¹(share) for a share strictly between 0 and 1.
pub(crate) fn quantile(share: f64) -> f64 {
    let z = -SQRT_2 * erfc_inv(2.0 * share);
    // One step of Newton's brings the inverse to the precision of the function.
    let density = ln_density(z).exp();
    if density > 0.0 {
        z - (cdf(z) - share) / density
    } else {
        z
    }
}

/// Below this the logarithm is taken from the asymptotic series: Φ itself leaves
/// the range of a float at -38.
const FAR: f64 = -20.0;

/// A mark on the axis, with the share that lies beyond it on its own side.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Mark {
    z: f64,
    /// Φ(-|z|).
    beyond: f64,
}

impl Mark {
    pub(crate) fn at(z: f64) -> Self {
        Self {
            z,
            beyond: cdf(-z.abs()),
        }
    }

    /// ln Φ(z), at any distance. No crate at hand has it.
    pub(crate) fn ln_below(self) -> f64 {
        let z = self.z;
        if z > 0.0 {
            (-self.beyond).ln_1p()
        } else if z > FAR {
            self.beyond.ln()
        } else {
            // Abramowitz and Stegun, 26.2.12.
            let x = 1.0 / (z * z);
            let series =
                1.0 - x * (1.0 - 3.0 * x * (1.0 - 5.0 * x * (1.0 - 7.0 * x * (1.0 - 9.0 * x))));
            ln_density(z) - (-z).ln() + series.ln()
        }
    }

    /// ln(1 - Φ(z)).
    pub(crate) fn ln_above(self) -> f64 {
        self.mirrored().ln_below()
    }

    /// ln(Φ(high) - Φ(z)) for a mark above this one, without loss in the tails
    /// or where the two are close.
    pub(crate) fn ln_up_to(self, high: Self) -> f64 {
        let width = high.z - self.z;
        let middle = f64::midpoint(self.z, high.z);
        if width * middle.abs().max(1.0) < 1e-4 {
            let bend = (middle * middle - 1.0) * width * width / 24.0;
            return ln_density(middle) + width.max(f64::MIN_POSITIVE).ln() + bend.ln_1p();
        }
        // From the side on which both are small.
        let (low, high) = if middle > 0.0 {
            (high.mirrored(), self.mirrored())
        } else {
            (self, high)
        };
        if high.z > 0.0 {
            (1.0 - low.beyond - high.beyond).ln()
        } else if high.z > FAR {
            (high.beyond - low.beyond).ln()
        } else {
            let ln_high = high.ln_below();
            ln_high + (-(low.ln_below() - ln_high).exp()).ln_1p()
        }
    }

    fn mirrored(self) -> Self {
        Self { z: -self.z, ..self }
    }
}

fn ln_density(z: f64) -> f64 {
    -0.5 * z * z - 0.5 * TAU.ln()
}

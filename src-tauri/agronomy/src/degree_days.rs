//! Degree-days of a day that runs as a sine.

use crate::Error;
use std::f64::consts::{FRAC_PI_2, PI};

const TEMPERATURE_C: std::ops::RangeInclusive<f64> = -100.0..=100.0;

/// Degree-days in °C of a day from `min_c` to `max_c` between a lower and an
/// upper threshold, by the single sine with a horizontal cut-off (Baskerville and
/// Emin 1969): the mean of what the sine has above `lower_c`, counting what is
/// above `upper_c` as `upper_c`.
///
/// Above a threshold T it is mean - T for a day wholly above, 0 for one below,
/// else ((mean - T)(π/2 - θ) + α cos θ)/π with α half the range and sin θ = (T -
/// mean)/α.
///
/// # Errors
///
/// A temperature outside -100 to 100 °C, a minimum above the maximum, a lower
/// threshold that is not below the upper.
///
/// ```
/// # use plumule_agronomy::degree_days;
/// assert!((degree_days(13.0, 40.0, 12.0, 33.0)? - 12.94).abs() < 0.005);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn degree_days(min_c: f64, max_c: f64, lower_c: f64, upper_c: f64) -> Result<f64, Error> {
    for temperature in [min_c, max_c, lower_c, upper_c] {
        if !TEMPERATURE_C.contains(&temperature) {
            return Err(Error::Temperature(temperature));
        }
    }
    if min_c > max_c {
        return Err(Error::MinimumAboveMaximum(min_c, max_c));
    }
    if lower_c >= upper_c {
        return Err(Error::Thresholds(lower_c, upper_c));
    }
    Ok((above(lower_c, min_c, max_c) - above(upper_c, min_c, max_c)).max(0.0))
}

fn above(threshold: f64, min_c: f64, max_c: f64) -> f64 {
    let mean = min_c.midpoint(max_c);
    if threshold <= min_c {
        return mean - threshold;
    }
    if threshold >= max_c {
        return 0.0;
    }
    let half_range = (max_c - min_c) / 2.0;
    let theta = ((threshold - mean) / half_range).clamp(-1.0, 1.0).asin();
    ((mean - threshold) * (FRAC_PI_2 - theta) + half_range * theta.cos()) / PI
}

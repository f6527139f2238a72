//! What finished sowings teach of a packet's time factor.

use crate::emergence::{check_sigma, tau_of_temperature};
use crate::{Error, TimeFactor};

/// A finished sowing of the packet, else of the crop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Finished {
    /// The thermal progress at which half of those that came up were up, above 0.
    pub progress_at_half: f64,
    /// How many came up, at least one.
    pub up: u32,
    /// The share of its days that had a reading, held to 0 to 1.
    pub share_of_days_with_reading: f64,
}

/// The time factor after `finished` sowings: a normal-normal update of ln s.
///
/// `prior` is the mean of ln s and τ_kind before them. Each observes ln s as the
/// logarithm of its progress at half, with variance σ²/k + τ_temp²: of k
/// seedlings, and of what was not known of its temperatures. The τ that comes
/// back is the new τ_kind: what the temperatures of the next sowing leave
/// unknown is added by [`tau`](crate::tau), never learnt.
///
/// # Errors
///
/// A prior or sigma out of range; a progress that is not above 0 and finite;
/// none up.
///
/// ```
/// # use plumule_agronomy::{Finished, SIGMA, TAU_KIND, TimeFactor, learnt_time_factor};
/// let slow = Finished { progress_at_half: 1.3, up: 20, share_of_days_with_reading: 1.0 };
/// let found = learnt_time_factor(TimeFactor::new(0.0, TAU_KIND)?, SIGMA, &[slow; 3])?;
/// assert!(0.0 < found.mean_ln && found.mean_ln < 1.3_f64.ln());
/// assert!(found.tau < TAU_KIND);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn learnt_time_factor(
    prior: TimeFactor,
    sigma: f64,
    finished: &[Finished],
) -> Result<TimeFactor, Error> {
    prior.check()?;
    check_sigma(sigma)?;
    if prior.tau == 0.0 {
        return Ok(prior);
    }
    let mut precision = prior.tau.powi(-2);
    let mut sum = prior.mean_ln * precision;
    for sowing in finished {
        let progress = sowing.progress_at_half;
        if !(progress.is_finite() && progress > 0.0) {
            return Err(Error::Progress(progress));
        }
        if sowing.up == 0 {
            return Err(Error::Seeds { seeds: 0 });
        }
        let of_temperature = tau_of_temperature(sowing.share_of_days_with_reading);
        let variance = sigma * sigma / f64::from(sowing.up) + of_temperature * of_temperature;
        precision += variance.recip();
        sum += progress.ln() / variance;
    }
    TimeFactor::new((sum / precision).clamp(-10.0, 10.0), precision.powf(-0.5))
}

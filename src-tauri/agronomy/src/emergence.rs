//! What share of the seedlings is up at a progress.

use crate::{Curve, Error, normal};

/// The spread of ln progress within a sowing where a crop states none: 0.12 in
/// log10 (judgement, from the 0.10 to 0.20 usual for emergence from compost).
pub const SIGMA: f64 = 0.28;

/// By how much a progress may fall short of a mark and still have reached it,
/// so that sums of days that should meet it do.
pub const PROGRESS_EPSILON: f64 = 1e-9;

/// The part of τ that is of the kind: how far packets of one crop differ in
/// speed before anything is known of one (judgement).
pub const TAU_KIND: f64 = 0.20;

/// A packet is believed up to so many times slower or quicker than its crop
/// (judgement: beyond that it is a misprint, or meant for another temperature).
const STATED_FACTOR: f64 = 4.0;

const TAU_UNREAD: f64 = 0.35;
const TAU_READ_DAILY: f64 = 0.15;

/// Under this part of what it was packed at, seed counts as old.
const OLD_SEED_SHARE: f64 = 0.75;
const OLD_SEED: TimeFactor = TimeFactor {
    mean_ln: 0.2,
    tau: 0.4,
};

/// What is known of a packet's time factor s, by which its times to emergence
/// are longer (s > 1) or shorter than the crop's: ln s is normal.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TimeFactor {
    /// Mean of ln s, within ±10; 0 for seed as quick as the crop's table.
    pub mean_ln: f64,
    /// Standard deviation of ln s, 0 to 10.
    pub tau: f64,
}

impl TimeFactor {
    /// A time factor whose numbers are in range.
    ///
    /// # Errors
    ///
    /// A mean beyond ±10, a tau outside 0 to 10, or either not a number.
    ///
    /// ```
    /// # use plumule_agronomy::TimeFactor;
    /// assert_eq!(TimeFactor::new(0.2, 0.4)?.tau, 0.4);
    /// assert!(TimeFactor::new(0.2, -0.4).is_err());
    /// # Ok::<(), plumule_agronomy::Error>(())
    /// ```
    pub fn new(mean_ln: f64, tau: f64) -> Result<Self, Error> {
        let factor = Self { mean_ln, tau };
        factor.check()?;
        Ok(factor)
    }

    pub(crate) fn check(self) -> Result<(), Error> {
        if !(-10.0..=10.0).contains(&self.mean_ln) {
            return Err(Error::TimeFactor(self.mean_ln));
        }
        if !(0.0..=10.0).contains(&self.tau) {
            return Err(Error::Tau(self.tau));
        }
        Ok(())
    }
}

pub(crate) fn check_sigma(sigma: f64) -> Result<(), Error> {
    if (0.001..=10.0).contains(&sigma) {
        Ok(())
    } else {
        Err(Error::Sigma(sigma))
    }
}

/// The share of living seeds that are up at thermal progress `progress` (1 is
/// the time at which half are, for a time factor of 1).
///
/// F(p) = Φ((ln p - ln s)/σ), 0 at p = 0. `time_factor` is s, above 0; `sigma`
/// is σ, the spread in ln p, 0.001 to 10. Log-normal times to emergence are the
/// usual population model of seed science.
///
/// # Errors
///
/// A negative or unbounded progress, a time factor not above 0, a sigma out of
/// range, or any of them not a number.
///
/// ```
/// # use plumule_agronomy::emerged_share;
/// assert_eq!(emerged_share(1.0, 1.0, 0.28)?, 0.5);
/// assert_eq!(emerged_share(0.0, 1.0, 0.28)?, 0.0);
/// assert!(emerged_share(-1.0, 1.0, 0.28).is_err());
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn emerged_share(progress: f64, time_factor: f64, sigma: f64) -> Result<f64, Error> {
    check_sigma(sigma)?;
    if !(progress.is_finite() && progress >= 0.0) {
        return Err(Error::Progress(progress));
    }
    if !(time_factor.is_finite() && time_factor > 0.0) {
        return Err(Error::TimeFactor(time_factor));
    }
    Ok(average_emerged_share(
        progress,
        time_factor.ln(),
        0.0,
        sigma,
    ))
}

/// The share of living seeds that are up at `progress`, on average over what is
/// not known of the time factor: Φ((ln p - m)/√(σ² + τ²)).
///
/// `mean_ln_s` is m, the mean of ln s, `tau` its standard deviation. 0 where
/// progress is not above 0 or an argument is not a number; a spread of 0 is a
/// step at ln p = m.
///
/// ```
/// # use plumule_agronomy::average_emerged_share;
/// let sure = average_emerged_share(1.3, 0.0, 0.0, 0.28);
/// let unsure = average_emerged_share(1.3, 0.0, 0.25, 0.28);
/// assert!(0.5 < unsure && unsure < sure);
/// ```
pub fn average_emerged_share(progress: f64, mean_ln_s: f64, tau: f64, sigma: f64) -> f64 {
    let late = progress.ln() - mean_ln_s;
    let spread = sigma.hypot(tau);
    if late.is_nan() || spread.is_nan() {
        0.0
    } else if spread == 0.0 || late.is_infinite() {
        if late >= 0.0 { 1.0 } else { 0.0 }
    } else {
        normal::cdf(late / spread)
    }
}

/// τ, the standard deviation of ln s, from its two parts: √(τ_kind² + τ_temp²).
///
/// `tau_kind` is how far packets differ ([`TAU_KIND`] until finished sowings
/// narrow it; under 0 or not a number is 0). τ_temp is what is not known of the temperature: it falls in a
/// straight line from 0.35 with no reading to 0.15 with one each day, by
/// `share_of_days_with_reading`, held to 0 to 1, 0 for what is not a number (judgement).
///
/// ```
/// # use plumule_agronomy::{TAU_KIND, tau};
/// assert!((tau(TAU_KIND, 1.0) - 0.25).abs() < 1e-12);
/// assert!((tau(TAU_KIND, 0.0) - 0.4031).abs() < 1e-4);
/// ```
pub fn tau(tau_kind: f64, share_of_days_with_reading: f64) -> f64 {
    tau_kind
        .max(0.0)
        .hypot(tau_of_temperature(share_of_days_with_reading))
}

/// τ_temp, what the readings leave unknown of the temperature.
pub(crate) fn tau_of_temperature(share_of_days_with_reading: f64) -> f64 {
    let share = if share_of_days_with_reading.is_nan() {
        0.0
    } else {
        share_of_days_with_reading.clamp(0.0, 1.0)
    };
    TAU_UNREAD + (TAU_READ_DAILY - TAU_UNREAD) * share
}

/// The time factor to start from for old seed: mean ln s 0.2, τ 0.4, where the
/// expected `germination` has fallen under three quarters of `packed_germination`,
/// what it was packed at (judgement: old seed is slower and less even). `None`
/// for seed that has not.
///
/// ```
/// # use plumule_agronomy::old_seed_time_factor;
/// assert!(old_seed_time_factor(0.6, 0.9).is_some());
/// assert!(old_seed_time_factor(0.8, 0.9).is_none());
/// ```
pub fn old_seed_time_factor(germination: f64, packed_germination: f64) -> Option<TimeFactor> {
    (germination < OLD_SEED_SHARE * packed_germination).then_some(OLD_SEED)
}

/// The mean of ln s by the days to come up that a packet states.
///
/// `days` are the fewest and most, above 0; `at_c` the temperature they are for,
/// °C. Half are taken to be up after √(fewest · most) days, the middle of a span
/// of log-normal times, so that ln s is the logarithm of the progress that
/// `curve` makes in them; held to a factor of 4 either way (judgement). `None`
/// where the curve has none come up at that temperature, or for days that cannot
/// be.
///
/// ```
/// # use plumule_agronomy::{crops, stated_mean_ln};
/// let tomato = &crops().get("tomato").unwrap().curve;
/// // 8 days at 20 °C by the crop book: 16 are twice as many.
/// let slow = stated_mean_ln(tomato, (8.0, 32.0), 20.0).unwrap();
/// assert!((slow - 2.0_f64.ln()).abs() < 1e-9);
/// assert_eq!(stated_mean_ln(tomato, (8.0, 32.0), 2.0), None);
/// ```
pub fn stated_mean_ln(curve: &Curve, days: (f64, f64), at_c: f64) -> Option<f64> {
    let progress = (days.0 * days.1).sqrt() * curve.rate_per_day(at_c);
    let most = STATED_FACTOR.ln();
    (progress.is_finite() && progress > 0.0).then(|| progress.ln().clamp(-most, most))
}

//! On which days seedlings are to be expected.

use crate::emergence::check_sigma;
use crate::{
    Error, Outlook, PROGRESS_EPSILON, TimeFactor, average_emerged_share, beta_binomial, normal,
};

/// For how many days, the day of sowing among them, a forecast looks ahead.
pub const HORIZON_DAYS: u32 = 365;

/// The most seeds in one forecast (judgement: far more than a tray holds).
pub(crate) const MAX_SEEDS: u32 = 100_000;

/// Days from the day of sowing (0) by whose end a mark is reached; `None` where
/// it is not within [`HORIZON_DAYS`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Forecast {
    /// At least one seedling is up with probability 1/2.
    pub first: Option<u32>,
    /// A tenth of those that will come up are up, on average.
    pub d10: Option<u32>,
    /// Half of those that will come up are up, on average.
    pub d50: Option<u32>,
    /// Nine tenths of those that will come up are up, on average.
    pub d90: Option<u32>,
}

/// The forecast of a sowing of `seeds` seeds.
///
/// `increments` is the progress gained on each day from the day of sowing on,
/// at least one; the last repeats. `outlook` is the share π that will come up,
/// `time_factor` what is known of ln s, `sigma` the spread of ln progress.
///
/// The share up at progress p is, on average over s, Φ((ln p - m)/√(σ² + τ²));
/// a mark counts as reached from [`PROGRESS_EPSILON`] short of it. The first
/// seedling's day is the first by whose end [`probability_any_up`] is at least
/// 1/2, over s and π.
///
/// # Errors
///
/// No seeds or more than 100,000, no days, a negative increment, a parameter
/// out of range, or any of them not a number.
///
/// ```
/// # use plumule_agronomy::{Outlook, TimeFactor, forecast};
/// // An eighth a day, as tomatoes at 20 °C: half are up by the end of the eighth day.
/// let outlook = Outlook::new(9.0, 3.0)?;
/// let found = forecast([0.125], 20, outlook, TimeFactor::new(0.0, 0.25)?, 0.28)?;
/// assert_eq!(found.d50, Some(7));
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn forecast(
    increments: impl IntoIterator<Item = f64>,
    seeds: u32,
    outlook: Outlook,
    time_factor: TimeFactor,
    sigma: f64,
) -> Result<Forecast, Error> {
    let nobody = NobodyUp::new(seeds, outlook, time_factor, sigma)?;
    let progress = progress_by_day(increments)?;
    let spread = sigma.hypot(time_factor.tau);
    let share_reaches = |share: f64| {
        let mark = (time_factor.mean_ln + spread * normal::quantile(share)).exp();
        first_day(&progress, |p| p > 0.0 && p >= mark - PROGRESS_EPSILON)
    };
    Ok(Forecast {
        first: first_day(&progress, |p| {
            p > 0.0 && nobody.probability(p + PROGRESS_EPSILON) <= 0.5
        }),
        d10: share_reaches(0.1),
        d50: share_reaches(0.5),
        d90: share_reaches(0.9),
    })
}

/// The probability that at least one of `seeds` seeds is up at `progress`, over
/// what is not known of the time factor s and of the share π that will come up:
/// 1 - E[(1 - π F(p))ⁿ] with F(p) = Φ((ln p - ln s)/σ).
///
/// Over π it is exact, over ln s it is a quadrature good to 1e-6.
///
/// # Errors
///
/// As [`forecast()`], or a progress that is negative or not finite.
///
/// ```
/// # use plumule_agronomy::{Outlook, TimeFactor, probability_any_up};
/// // One seed that comes up for sure, at a known time.
/// let sure = Outlook::new(1e9, 1e-9)?;
/// let found = probability_any_up(1.0, 1, sure, TimeFactor::new(0.0, 0.0)?, 0.28)?;
/// assert!((found - 0.5).abs() < 1e-6);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn probability_any_up(
    progress: f64,
    seeds: u32,
    outlook: Outlook,
    time_factor: TimeFactor,
    sigma: f64,
) -> Result<f64, Error> {
    if !(progress.is_finite() && progress >= 0.0) {
        return Err(Error::Progress(progress));
    }
    let nobody = NobodyUp::new(seeds, outlook, time_factor, sigma)?;
    Ok((1.0 - nobody.probability(progress)).clamp(0.0, 1.0))
}

/// The progress by the end of each day of the horizon.
fn progress_by_day(increments: impl IntoIterator<Item = f64>) -> Result<Vec<f64>, Error> {
    let mut increments = increments.into_iter();
    let mut last = None;
    let mut progress = 0.0;
    let mut by_day = Vec::with_capacity(HORIZON_DAYS as usize);
    for _ in 0..HORIZON_DAYS {
        last = increments.next().or(last);
        let gained = last.ok_or(Error::NoDays)?;
        if !(gained.is_finite() && gained >= 0.0) {
            return Err(Error::Progress(gained));
        }
        progress = f64::min(progress + gained, f64::MAX);
        by_day.push(progress);
    }
    Ok(by_day)
}

/// The first day whose progress passes, by halving: progress never falls.
fn first_day(progress: &[f64], reached: impl Fn(f64) -> bool) -> Option<u32> {
    let day = progress.partition_point(|&p| !reached(p));
    (day < progress.len()).then_some(day as u32)
}

/// The probability that none is up, as a function of progress.
///
/// Given s, it is E[(1 - πF)ⁿ] = Σᵣ P(r) (1 - F)ʳ, with P the Beta-binomial
/// chance that r of the n seeds will come up. All terms are positive, so it is
/// exact for any parameters; midpoints of Beta quantiles are not, for small
/// ones, and the closed form ₂F₁(-n, a; a+b; F) alternates.
struct NobodyUp {
    /// P(r) for r = 0, 1 … n.
    chances: Vec<f64>,
    time_factor: TimeFactor,
    sigma: f64,
    /// Step of ln s.
    step: f64,
}

impl NobodyUp {
    fn new(
        seeds: u32,
        outlook: Outlook,
        time_factor: TimeFactor,
        sigma: f64,
    ) -> Result<Self, Error> {
        if !(1..=MAX_SEEDS).contains(&seeds) {
            return Err(Error::Seeds { seeds });
        }
        outlook.check()?;
        time_factor.check()?;
        check_sigma(sigma)?;
        // The first of n seedlings is more certain than each alone.
        let width = sigma / (1.0 + 2.0 * f64::from(seeds).ln()).sqrt();
        Ok(Self {
            chances: beta_binomial::chances(seeds, outlook),
            time_factor,
            sigma,
            step: time_factor.tau.min(width) / 1.5,
        })
    }

    fn probability(&self, progress: f64) -> f64 {
        let TimeFactor { mean_ln, tau } = self.time_factor;
        if tau == 0.0 {
            return self.given(progress, mean_ln);
        }
        let points = (6.5 * tau / self.step).ceil() as i32;
        let (mut sum, mut weights) = (0.0, 0.0);
        for point in -points..=points {
            let offset = f64::from(point) * self.step;
            let weight = (-0.5 * (offset / tau).powi(2)).exp();
            sum += weight * self.given(progress, mean_ln + offset);
            weights += weight;
        }
        sum / weights
    }

    /// The probability that none is up, given ln s.
    fn given(&self, progress: f64, ln_s: f64) -> f64 {
        let seeds = self.chances.len() as f64;
        let up = average_emerged_share(progress, ln_s, 0.0, self.sigma);
        if up * seeds < 1e-12 {
            return 1.0;
        }
        let down = 1.0 - up;
        let mut power = 1.0;
        let mut sum = 0.0;
        for chance in &self.chances {
            sum += chance * power;
            power *= down;
            if power < 1e-15 {
                break;
            }
        }
        sum
    }
}

//! When to feel the compost.

use crate::Error;
use std::ops::RangeInclusive;

/// Days between feels before emergence, uncovered, at [`REFERENCE_C`] (common
/// practice: every couple of days).
const REFERENCE_DAYS: f64 = 2.0;
const REFERENCE_C: f64 = 18.0;

/// What a cover leaves of the drying (judgement).
const COVERED: f64 = 0.25;

/// Days between feels, at least and at most (judgement).
const DAYS: (f64, f64) = (1.0, 4.0);

/// How far a tray's own answers may move it (judgement).
const TRAY_FACTOR: (f64, f64) = (0.5, 2.0);

const TEMPERATURE_C: RangeInclusive<f64> = -60.0..=100.0;

/// The vapour pressure of saturated air in kPa at a temperature in °C (-60 to
/// 100): 0.6108·exp(17.27 T/(T + 237.3)), FAO Irrigation and Drainage Paper 56,
/// equation 11.
///
/// # Errors
///
/// A temperature out of range or not a number.
///
/// ```
/// # use plumule_agronomy::vapour_pressure_kpa;
/// assert!((vapour_pressure_kpa(24.5)? - 3.075).abs() < 5e-4);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn vapour_pressure_kpa(temperature_c: f64) -> Result<f64, Error> {
    if TEMPERATURE_C.contains(&temperature_c) {
        Ok(0.6108 * (17.27 * temperature_c / (temperature_c + 237.3)).exp())
    } else {
        Err(Error::Temperature(temperature_c))
    }
}

/// Days after which to feel the compost of a tray again, before emergence, 1 to
/// 4.
///
/// Drying goes with the vapour pressure deficit at a relative humidity of 65 %,
/// a quarter of it under a cover: 2 days · deficit at 18 °C / deficit at
/// `mean_c`, held to 1 to 4 days; then times `tray_factor`, what the tray's own
/// answers have taught (held to 0.5 to 2), and held again. The humidity falls
/// out, being the same in both.
///
/// # Errors
///
/// A temperature out of range or a tray factor not above 0.
///
/// ```
/// # use plumule_agronomy::drying_interval_days;
/// assert_eq!(drying_interval_days(18.0, false, 1.0)?, 2.0);
/// assert_eq!(drying_interval_days(18.0, true, 1.0)?, 4.0);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn drying_interval_days(mean_c: f64, covered: bool, tray_factor: f64) -> Result<f64, Error> {
    if !(tray_factor.is_finite() && tray_factor > 0.0) {
        return Err(Error::TrayFactor(tray_factor));
    }
    let cover = if covered { COVERED } else { 1.0 };
    let drying = vapour_pressure_kpa(mean_c)? * cover / vapour_pressure_kpa(REFERENCE_C)?;
    let days = (REFERENCE_DAYS / drying).clamp(DAYS.0, DAYS.1);
    Ok((days * tray_factor.clamp(TRAY_FACTOR.0, TRAY_FACTOR.1)).clamp(DAYS.0, DAYS.1))
}

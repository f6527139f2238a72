//! The sun of a day, and how much of it reaches a seedling.

use crate::Error;
use crate::error::check_probability;
use chrono::{Datelike, NaiveDate};
use std::f64::consts::PI;

/// Share of the sun's radiation above the air that comes down, on an average day
/// (clearness; judgement).
const CLEARNESS: f64 = 0.5;

/// Photons of photosynthetic light in a megajoule of sunlight, mol (common
/// figure of the field; from memory).
const MOL_PER_MJ: f64 = 2.02;

/// Daily light, mol m⁻² d⁻¹, under which seedlings are too dim, and from which
/// on they have enough (judgement, from 10 to 15 as the optimum for transplants).
const DIM_AND_GOOD: (f64, f64) = (5.0, 10.0);

/// FAO-56 equations 23 to 25 for a day at a latitude.
struct Sun {
    /// Inverse relative distance of the earth.
    distance: f64,
    latitude: f64,
    declination: f64,
    /// Hour angle of sunset, radians.
    sunset: f64,
}

impl Sun {
    fn new(latitude: f64, date: NaiveDate) -> Result<Self, Error> {
        if !(-90.0..=90.0).contains(&latitude) {
            return Err(Error::Latitude(latitude));
        }
        let year = 2.0 * PI / 365.0 * f64::from(date.ordinal());
        let declination = 0.409 * (year - 1.39).sin();
        let latitude = latitude.to_radians();
        // Beyond ±1 the sun does not rise, or does not set.
        let sunset = (-latitude.tan() * declination.tan())
            .clamp(-1.0, 1.0)
            .acos();
        Ok(Self {
            distance: 1.0 + 0.033 * year.cos(),
            latitude,
            declination,
            sunset,
        })
    }
}

/// Hours of daylight at a latitude in degrees (south below 0), 0 to 24: 24/π
/// times the hour angle of sunset, FAO Irrigation and Drainage Paper 56,
/// equations 24, 25 and 34. The sun as a point without refraction: some 9 to 14
/// minutes shorter than by the almanac in mid-latitudes.
///
/// # Errors
///
/// A latitude beyond ±90.
///
/// ```
/// # use plumule_agronomy::day_length_hours;
/// # use chrono::NaiveDate;
/// // FAO-56, example 9: 20° S on 3 September.
/// let date = NaiveDate::from_ymd_opt(2015, 9, 3).unwrap();
/// assert!((day_length_hours(-20.0, date)? - 11.7).abs() < 0.05);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn day_length_hours(latitude: f64, date: NaiveDate) -> Result<f64, Error> {
    Ok(24.0 / PI * Sun::new(latitude, date)?.sunset)
}

/// Solar radiation above the air on a level surface in a day, MJ m⁻² d⁻¹: FAO
/// Irrigation and Drainage Paper 56, equations 21 and 23 to 25, with the solar
/// constant 0.0820 MJ m⁻² min⁻¹.
///
/// # Errors
///
/// A latitude beyond ±90.
///
/// ```
/// # use plumule_agronomy::extraterrestrial_radiation;
/// # use chrono::NaiveDate;
/// // FAO-56, example 8: 20° S on 3 September.
/// let date = NaiveDate::from_ymd_opt(2015, 9, 3).unwrap();
/// assert!((extraterrestrial_radiation(-20.0, date)? - 32.2).abs() < 0.05);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn extraterrestrial_radiation(latitude: f64, date: NaiveDate) -> Result<f64, Error> {
    let sun = Sun::new(latitude, date)?;
    let height = sun.sunset * sun.latitude.sin() * sun.declination.sin()
        + sun.latitude.cos() * sun.declination.cos() * sun.sunset.sin();
    Ok((24.0 * 60.0 / PI * 0.0820 * sun.distance * height).max(0.0))
}

/// The light of a day at a place, mol m⁻² d⁻¹: radiation above the air · 0.5
/// (clearness) · 2.02 mol/MJ · the place's `transmission` (0 to 1).
///
/// # Errors
///
/// A radiation that is negative, not finite or beyond 100, or a transmission out
/// of range.
///
/// ```
/// # use plumule_agronomy::{Light, daily_light_integral};
/// // A tenth of a February day at 50° N, behind glass.
/// let sill = daily_light_integral(13.0, 0.1)?;
/// assert_eq!(Light::of(sill), Light::TooDim);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn daily_light_integral(radiation_mj: f64, transmission: f64) -> Result<f64, Error> {
    if !(0.0..=100.0).contains(&radiation_mj) {
        return Err(Error::Measure("radiation", radiation_mj));
    }
    if transmission != 0.0 && transmission != 1.0 {
        check_probability("transmission", transmission)?;
    }
    Ok(radiation_mj * CLEARNESS * MOL_PER_MJ * transmission)
}

/// The light of a day under a lamp, mol m⁻² d⁻¹: `ppfd` in µmol m⁻² s⁻¹ (0 to
/// 3000) for so many hours (0 to 24).
///
/// # Errors
///
/// Either out of range or not a number.
///
/// ```
/// # use plumule_agronomy::lamp_light_integral;
/// assert!((lamp_light_integral(200.0, 16.0)? - 11.52).abs() < 1e-9);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn lamp_light_integral(ppfd: f64, hours: f64) -> Result<f64, Error> {
    if !(0.0..=3000.0).contains(&ppfd) {
        return Err(Error::Measure("light", ppfd));
    }
    if !(0.0..=24.0).contains(&hours) {
        return Err(Error::Duration("hours of light", hours));
    }
    Ok(ppfd * hours * 3600.0 / 1e6)
}

/// What a day's light is to a seedling. A window is uncertain threefold, so
/// there is no finer word.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Light {
    /// Under 5 mol m⁻² d⁻¹.
    TooDim,
    /// From 5 to 10.
    Fair,
    /// Above 10.
    Good,
}

impl Light {
    /// The word for a daily light integral.
    ///
    /// ```
    /// # use plumule_agronomy::Light;
    /// assert_eq!([4.9, 10.0, 10.1].map(Light::of), [Light::TooDim, Light::Fair, Light::Good]);
    /// ```
    pub fn of(daily_light_integral: f64) -> Self {
        if daily_light_integral > DIM_AND_GOOD.1 {
            Self::Good
        } else if daily_light_integral >= DIM_AND_GOOD.0 {
            Self::Fair
        } else {
            Self::TooDim
        }
    }
}

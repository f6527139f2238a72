//! A day's temperatures as one sine between its minimum and its maximum.

use std::f64::consts::TAU;
use std::sync::LazyLock;

/// The hour at which the sine crosses the day's mean on its way up.
const RISING_HOUR: f64 = 9.0;

/// The day's sine at the middle of each hour.
static HOURLY_SINE: LazyLock<[f64; 24]> =
    LazyLock::new(|| std::array::from_fn(|hour| sine_at(hour as f64 + 0.5)));

fn sine_at(hour: f64) -> f64 {
    (TAU * (hour - RISING_HOUR) / 24.0).sin()
}

/// The middle of each hour and the temperature then, in °C. A minimum above the
/// maximum is taken as the two exchanged.
pub(crate) fn hourly(min_c: f64, max_c: f64) -> impl Iterator<Item = (f64, f64)> {
    let mean = min_c.midpoint(max_c);
    let half_range = (max_c / 2.0 - min_c / 2.0).abs();
    HOURLY_SINE
        .iter()
        .enumerate()
        .map(move |(hour, sine)| (hour as f64 + 0.5, mean + half_range * sine))
}

/// The temperature in °C at an hour (0 to 24, local) of a day that runs from
/// `min_c` to `max_c`.
///
/// T(h) = (max + min)/2 + (max - min)/2 · sin(2π(h - 9)/24): warmest at 15:00,
/// coldest at 03:00 (judgement). A minimum above the maximum is taken as the
/// two exchanged.
///
/// ```
/// # use plumule_agronomy::day_temperature_at;
/// assert!((day_temperature_at(10.0, 20.0, 15.0) - 20.0).abs() < 1e-9);
/// assert!((day_temperature_at(10.0, 20.0, 9.0) - 15.0).abs() < 1e-9);
/// ```
pub fn day_temperature_at(min_c: f64, max_c: f64, hour: f64) -> f64 {
    min_c.midpoint(max_c) + (max_c / 2.0 - min_c / 2.0).abs() * sine_at(hour)
}

/// The mean in °C of the day on which a thermometer shows `temperature_c` at
/// `hour` (0 to 24, local), where the day swings by `half_range_c` to either
/// side of its mean.
///
/// It undoes [`day_temperature_at`], so that a place's usual minimum and
/// maximum can be moved until their sine passes through one reading.
///
/// ```
/// # use plumule_agronomy::mean_from_reading_now;
/// // 22 °C at the warmest hour of a day that swings by 4 °C.
/// assert!((mean_from_reading_now(22.0, 15.0, 4.0) - 18.0).abs() < 1e-9);
/// ```
pub fn mean_from_reading_now(temperature_c: f64, hour: f64, half_range_c: f64) -> f64 {
    temperature_c - half_range_c.abs() * sine_at(hour)
}

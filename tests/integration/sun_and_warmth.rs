//! The sun, degree-days and light against published examples.

use crate::golden::assert_near;
use chrono::NaiveDate;
use plumule_agronomy::{
    Light, daily_light_integral, day_length_hours, degree_days, extraterrestrial_radiation,
    lamp_light_integral, vapour_pressure_kpa,
};

/// The day of a number in a year of 365 days.
fn day(number: u32) -> NaiveDate {
    NaiveDate::from_yo_opt(2015, number).unwrap()
}

/// FAO Irrigation and Drainage Paper 56, examples 8 and 9 (20° S, 3 September), 10
/// (22.9° S, 15 May), 17 (13.73° N, 15 April) and 18 (50.8° N, 6 July), with as
/// many digits as printed.
#[test]
fn the_sun_of_fao_56s_examples() {
    for (latitude, number, radiation, hours) in [
        (-20.0, 246, (32.2, 0.05), (11.7, 0.05)),
        (-22.9, 135, (25.1, 0.05), (10.9, 0.05)),
        (13.73, 105, (38.06, 0.005), (12.31, 0.01)),
        (50.8, 187, (41.09, 0.01), (16.1, 0.05)),
    ] {
        let found = extraterrestrial_radiation(latitude, day(number)).unwrap();
        assert_near(found, radiation.0, radiation.1, number);
        let found = day_length_hours(latitude, day(number)).unwrap();
        assert_near(found, hours.0, hours.1, number);
    }
}

/// NCAR's NCL library, its example of FAO-56 daylight: 11.66559 h.
#[test]
fn day_length_is_another_librarys_fao_day_length() {
    let found = day_length_hours(-20.0, day(246)).unwrap();
    assert_near(found, 11.66559, 5e-6, "20° S, 3 September");
}

/// NOAA's and Spencer's series with the sun's upper limb and refraction (-0.833°),
/// worked out apart. FAO-56 has neither, and so a shorter day by 6 to 14 minutes.
#[test]
fn an_almanacs_day_is_a_little_longer() {
    for (latitude, number, hours) in [
        (51.5, 80, 12.1674),
        (51.5, 172, 16.6412),
        (51.5, 355, 7.8305),
        (40.0, 46, 10.6677),
    ] {
        let minutes = 60.0 * (hours - day_length_hours(latitude, day(number)).unwrap());
        assert!(
            (6.0..=16.0).contains(&minutes),
            "{latitude} {number}: {minutes}"
        );
    }
}

/// Beyond the polar circles: geometry.
#[test]
fn the_poles_have_one_day_a_year() {
    for (latitude, number, hours) in [(90.0, 172, 24.0), (90.0, 355, 0.0), (-80.0, 172, 0.0)] {
        assert_near(
            day_length_hours(latitude, day(number)).unwrap(),
            hours,
            1e-12,
            number,
        );
    }
    assert_eq!(extraterrestrial_radiation(90.0, day(355)), Ok(0.0));
    for latitude in [90.1, -91.0, f64::NAN] {
        assert_eq!(
            day_length_hours(latitude, day(1)).unwrap_err().code(),
            "bad_latitude"
        );
    }
}

/// FAO-56, examples 3, 5 and 6: saturation at 24.5, 15, 18 and 25 °C, and the
/// actual vapour pressure and deficit of example 5 from the last two.
#[test]
fn vapour_of_fao_56s_examples() {
    let at = |temperature| vapour_pressure_kpa(temperature).unwrap();
    for (temperature, kpa) in [(24.5, 3.075), (15.0, 1.705), (18.0, 2.064), (25.0, 3.168)] {
        assert_near(at(temperature), kpa, 5e-4, temperature);
    }
    let actual = (at(18.0) * 0.82 + at(25.0) * 0.54) / 2.0;
    assert_near(actual, 1.70, 5e-3, "example 5");
    assert_near(
        (at(18.0) + at(25.0)) / 2.0 - actual,
        0.91,
        6e-3,
        "example 6",
    );
}

/// The tests of a published package (TrenchR) for thresholds 12 and 33 °C, but for
/// its 35 to 40 by the single sine, where it has 5 and its own double sine, like
/// the formula, 21.
#[test]
fn degree_days_by_the_single_sine() {
    for (min, max, wanted) in [
        (7.0, 14.0, 0.47),
        (7.0, 10.0, 0.0),
        (13.0, 14.0, 1.5),
        (13.0, 40.0, 12.94),
        (7.0, 40.0, 10.94),
        (7.0, 20.0, 2.87),
        (35.0, 40.0, 21.0),
    ] {
        assert_near(
            degree_days(min, max, 12.0, 33.0).unwrap(),
            wanted,
            0.006,
            min,
        );
    }
    // Worked out by a numerical integral of the sine.
    for (min, max, lower, upper, wanted) in [
        (2.0, 16.0, 5.0, 30.0, 4.6030),
        (4.0, 12.0, 7.0, 28.0, 1.8132),
        (10.0, 22.0, 8.7, 28.0, 7.3000),
        (15.0, 35.0, 10.0, 30.0, 13.9100),
    ] {
        assert_near(
            degree_days(min, max, lower, upper).unwrap(),
            wanted,
            6e-5,
            min,
        );
    }
}

#[test]
fn degree_days_that_cannot_be() {
    for (min, max, lower, upper, code) in [
        (9.0, 8.0, 5.0, 30.0, "minimum_above_maximum"),
        (1.0, 8.0, 5.0, 5.0, "bad_thresholds"),
        (f64::NAN, 8.0, 5.0, 30.0, "bad_temperature"),
        (1.0, f64::INFINITY, 5.0, 30.0, "bad_temperature"),
    ] {
        assert_eq!(
            degree_days(min, max, lower, upper).unwrap_err().code(),
            code
        );
    }
}

/// From the definition, ppfd · hours · 3600/10⁶; tomato plugs at 250 µmol for 12 h
/// and 14 h and at 300 for 12 h (Horticulturae 2024).
#[test]
fn light_under_lamps() {
    for (ppfd, hours, wanted) in [
        (100.0, 16.0, 5.76),
        (250.0, 12.0, 10.8),
        (250.0, 14.0, 12.6),
        (300.0, 12.0, 12.96),
    ] {
        assert_near(
            lamp_light_integral(ppfd, hours).unwrap(),
            wanted,
            1e-9,
            ppfd,
        );
    }
    assert!(lamp_light_integral(100.0, 25.0).is_err());
}

/// A windowsill in February at 50° N has 1 to 4 mol (recalled): too dim, and in
/// June under the open sky there is more than enough.
#[test]
fn a_winter_window_is_too_dim_and_a_summer_garden_is_not() {
    let light = |number, transmission| {
        let radiation = extraterrestrial_radiation(50.0, day(number)).unwrap();
        daily_light_integral(radiation, transmission).unwrap()
    };
    assert!((1.0..4.0).contains(&light(46, 0.15)), "{}", light(46, 0.15));
    assert_eq!(Light::of(light(46, 0.15)), Light::TooDim);
    assert_eq!(Light::of(light(172, 0.9)), Light::Good);
    assert!(daily_light_integral(20.0, 1.1).is_err() && daily_light_integral(-1.0, 0.5).is_err());
}

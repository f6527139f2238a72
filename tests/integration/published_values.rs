//! Single published figures: a regulation and a table of saturated vapour.

use crate::golden::assert_near;
use plumule_agronomy::{Storage, crops, drying_interval_days, packet_outlook, vapour_pressure_kpa};

/// 7 CFR 201.31, germination standards in percent, typed apart from the book.
const LEGAL_MINIMA: [(&str, f64); 24] = [
    ("asparagus", 70.0),
    ("bean_lima", 70.0),
    ("bean_snap", 70.0),
    ("beet", 65.0),
    ("cabbage", 75.0),
    ("carrot", 55.0),
    ("cauliflower", 75.0),
    ("celery", 55.0),
    ("corn_sweet", 75.0),
    ("cucumber", 80.0),
    ("eggplant", 60.0),
    ("lettuce", 80.0),
    ("muskmelon", 75.0),
    ("okra", 50.0),
    ("onion", 70.0),
    ("parsley", 60.0),
    ("parsnip", 60.0),
    ("pea", 80.0),
    ("pepper", 55.0),
    ("radish", 75.0),
    ("spinach", 60.0),
    ("tomato", 75.0),
    ("turnip", 80.0),
    ("watermelon", 70.0),
];

#[test]
fn legal_minima_are_those_of_the_regulation() {
    for (key, percent) in LEGAL_MINIMA {
        let found = crops().get(key).unwrap().legal_minimum.unwrap();
        assert_near(found, percent / 100.0, 1e-12, key);
    }
}

/// By its own definition, an unlabelled packet meets the legal minimum when the
/// handbook's years are over.
#[test]
fn an_unlabelled_packet_reaches_the_legal_minimum_at_its_life_expectancy() {
    for (key, percent) in LEGAL_MINIMA {
        let crop = crops().get(key).unwrap();
        let found = packet_outlook(crop, crop.life_years, None, Storage::CoolCupboard, &[]);
        assert_near(found.unwrap().germination, percent / 100.0, 1e-9, key);
    }
}

/// FAO Irrigation and Drainage Paper 56, Annex 2, Table 2.3, and Example 3.
#[test]
fn saturated_vapour_pressure_is_fao_56s() {
    for (temperature, kpa) in [
        (1.0, 0.657),
        (5.0, 0.872),
        (10.0, 1.228),
        (15.0, 1.705),
        (18.0, 2.064),
        (20.0, 2.338),
        (22.0, 2.644),
        (24.5, 3.075),
        (25.0, 3.168),
        (30.0, 4.243),
        (35.0, 5.623),
        (40.0, 7.376),
    ] {
        assert_near(
            vapour_pressure_kpa(temperature).unwrap(),
            kpa,
            6e-4,
            temperature,
        );
    }
}

/// Days between feels from the pressures of the same table: 2·2.064/kPa.
#[test]
fn the_feel_follows_the_tables_pressures() {
    for (temperature, kpa) in [(15.0, 1.705), (22.0, 2.644), (25.0, 3.168)] {
        let found = drying_interval_days(temperature, false, 1.0).unwrap();
        assert_near(found, 2.0 * 2.064 / kpa, 2e-3, temperature);
    }
    // Held to 1 to 4 days, before the tray's factor and after it.
    let days = |c, covered, factor| drying_interval_days(c, covered, factor).unwrap();
    assert_eq!(days(40.0, false, 1.0), 1.0);
    assert_eq!(days(40.0, false, 2.0), 2.0);
    assert_eq!(days(18.0, true, 0.5), 2.0);
    assert_eq!(days(18.0, true, 2.0), 4.0);
    // A tray's factor is itself held to 0.5 to 2.
    assert_eq!(days(18.0, true, 0.3), 2.0);
    assert_eq!(days(40.0, false, 3.0), 2.0);
    // A cover leaves a quarter: 7.376 kPa at 40 °C.
    assert_near(
        days(40.0, true, 1.0),
        2.0 * 2.064 / 7.376 / 0.25,
        2e-3,
        "covered",
    );
}

//! Frost and the year's windows, on records made by hand.

use chrono::{Datelike, Days, NaiveDate};
use plumule_agronomy::{
    FrostOdds, Half, Hemisphere, MaturityFrom, Window, end_of_growth, frost_date,
    last_useful_sowing, set_out_window, sowing_window,
};

fn date(year: i32, month: u32, day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(year, month, day).unwrap()
}

/// Every day of so many years from 2001 on, without frost but on the dates given.
fn minima(years: i32, frosts: &[NaiveDate]) -> Vec<(NaiveDate, f64)> {
    date(2001, 1, 1)
        .iter_days()
        .take_while(|day| day.year() < 2001 + years)
        .map(|day| (day, if frosts.contains(&day) { -2.0 } else { 5.0 }))
        .collect()
}

/// Last frosts on 10, 12 … 18 April: mean 14 April, sample deviation √10 days; the
/// normal quantile of 9 in 10 is 1.2816, so 4.05 days later, and the next day.
#[test]
fn the_last_frost_of_spring() {
    let springs: Vec<NaiveDate> = (0..5)
        .map(|i| date(2001 + i, 4, 10 + 2 * i as u32))
        .collect();
    let records = minima(5, &springs);
    let at = |chance| frost_date(&records, 0.0, chance, Half::Spring, Hemisphere::North).unwrap();
    let (found, years) = at(0.1);
    assert_eq!((found.unwrap().to_string().as_str(), years), ("04-19", 5));
    // A leap year among them moves nothing: the mean is a date itself.
    assert_eq!(at(0.5).0.unwrap().to_string(), "04-14");
    assert_eq!(at(0.9).0.unwrap().to_string(), "04-10");
}

/// The same in autumn, to the other side: 1 to 9 October, mean 5, 4.05 days earlier
/// and the day before.
#[test]
fn the_first_frost_of_autumn() {
    let autumns: Vec<NaiveDate> = (0..5)
        .map(|i| date(2001 + i, 10, 1 + 2 * i as u32))
        .collect();
    // Later frosts of the same autumn do not count.
    let later: Vec<NaiveDate> = autumns.iter().map(|day| *day + Days::new(20)).collect();
    let records = minima(5, &[autumns, later].concat());
    let (found, _) = frost_date(&records, 0.0, 0.1, Half::Autumn, Hemisphere::North).unwrap();
    assert_eq!(found.unwrap().to_string(), "09-30");
}

/// South of the equator spring runs to 15 January and autumn to 15 July.
#[test]
fn the_south_has_its_halves_elsewhere() {
    let frosts: Vec<NaiveDate> = (0..6)
        .flat_map(|i| [date(2001 + i, 10, 20), date(2001 + i, 5, 3)])
        .collect();
    let records = minima(6, &frosts);
    let south = |half| frost_date(&records, 0.0, 0.1, half, Hemisphere::South).unwrap();
    let spring = south(Half::Spring);
    assert_eq!(
        (spring.0.unwrap().to_string().as_str(), spring.1),
        ("10-20", 6)
    );
    assert_eq!(south(Half::Autumn).0.unwrap().to_string(), "05-03");
}

/// Frost in 5 of 10 springs: a chance of 0.25 on the mean day, and none of 0.5 or
/// more on any.
#[test]
fn where_frost_is_rare_its_chance_is_less() {
    let springs: Vec<NaiveDate> = (0..5)
        .map(|i| date(2001 + i, 4, 10 + 2 * i as u32))
        .collect();
    let records = minima(10, &springs);
    let odds = FrostOdds::from_minima(&records, 0.0, Half::Spring, Hemisphere::North).unwrap();
    assert_eq!((odds.years(), odds.share_of_years()), (5, 0.5));
    assert!((odds.chance(date(2026, 4, 14)) - 0.25).abs() < 1e-9);
    assert_eq!(odds.date_at(0.25).unwrap().unwrap().to_string(), "04-14");
    assert_eq!(odds.date_at(0.5), Ok(None));
    assert!(odds.chance(date(2026, 8, 1)) == 0.0 && odds.chance(date(2026, 1, 20)) > 0.49);
}

#[test]
fn years_with_holes_are_left_out() {
    let springs: Vec<NaiveDate> = (0..6).map(|i| date(2001 + i, 4, 10)).collect();
    let ask = |holes: u64| {
        let mut records = minima(6, &springs);
        let (from, to) = (date(2003, 5, 1), date(2003, 5, 1) + Days::new(holes));
        records.retain(|(day, _)| !(from..to).contains(day));
        frost_date(&records, 0.0, 0.1, Half::Spring, Hemisphere::North)
            .unwrap()
            .1
    };
    // Of 181 days a tenth is 18.
    assert_eq!((ask(18), ask(19)), (6, 5));
}

#[test]
fn frost_that_cannot_be_told() {
    let springs: Vec<NaiveDate> = (0..4).map(|i| date(2001 + i, 4, 10)).collect();
    let records = minima(4, &springs);
    let ask = |records: &[_], threshold, chance| {
        let found = frost_date(records, threshold, chance, Half::Spring, Hemisphere::North);
        found.unwrap_err().code()
    };
    assert_eq!(ask(&records, 0.0, 0.1), "too_few_years");
    assert_eq!(ask(&[], 0.0, 0.1), "too_few_years");
    assert_eq!(ask(&records, f64::NAN, 0.1), "bad_temperature");
    assert_eq!(
        ask(&[(date(2001, 1, 1), f64::NAN)], 0.0, 0.1),
        "bad_temperature"
    );
    let enough = minima(
        5,
        &(0..5).map(|i| date(2001 + i, 4, 10)).collect::<Vec<_>>(),
    );
    assert_eq!(ask(&enough, 0.0, 1.0), "bad_probability");
}

/// By hand on a calendar: tomatoes raised for 5 to 7 weeks, set out 1 to 3 weeks
/// after a last frost on 1 May.
#[test]
fn windows_follow_the_last_frost() {
    let out = set_out_window(date(2026, 5, 1), (1.0, 3.0)).unwrap();
    assert_eq!(
        out,
        Window {
            first: date(2026, 5, 8),
            last: date(2026, 5, 22)
        }
    );
    let sow = sowing_window(out, Some((5.0, 7.0))).unwrap();
    assert_eq!(
        sow,
        Window {
            first: date(2026, 3, 20),
            last: date(2026, 4, 17)
        }
    );
    assert_eq!(sowing_window(out, None), Ok(out));
    for weeks in [(3.0, 1.0), (f64::NAN, 1.0), (0.0, 1e9)] {
        assert_eq!(
            set_out_window(date(2026, 5, 1), weeks).unwrap_err().code(),
            "bad_duration"
        );
    }
    assert!(sowing_window(out, Some((-1.0, 2.0))).is_err());
    assert_eq!(
        set_out_window(NaiveDate::MAX, (1.0, 1.0))
            .unwrap_err()
            .code(),
        "date_out_of_range"
    );
}

/// By hand: 50 days, and 14 for what ripens after the equinox; three weeks of
/// raising come before days that count from planting out.
#[test]
fn the_last_useful_sowing() {
    let ask = |end, from, side| {
        last_useful_sowing(end, 50.0, from, Some((3.0, 5.0)), side, false).unwrap()
    };
    let (north, south) = (Hemisphere::North, Hemisphere::South);
    assert_eq!(
        ask(date(2026, 9, 20), MaturityFrom::Sowing, north),
        date(2026, 8, 1)
    );
    assert_eq!(
        ask(date(2026, 10, 20), MaturityFrom::Sowing, north),
        date(2026, 8, 17)
    );
    assert_eq!(
        ask(date(2026, 10, 20), MaturityFrom::PlantingOut, north),
        date(2026, 7, 27)
    );
    // In the south autumn begins in March.
    assert_eq!(
        ask(date(2026, 4, 20), MaturityFrom::Sowing, south),
        date(2026, 2, 15)
    );
    assert_eq!(
        ask(date(2026, 10, 20), MaturityFrom::Sowing, south),
        date(2026, 8, 31)
    );
    // Before the equinox it is the crop that tells whether it ripens after.
    let ripening = |after| {
        let end = date(2026, 9, 20);
        last_useful_sowing(end, 50.0, MaturityFrom::Sowing, None, north, after).unwrap()
    };
    assert_eq!(ripening(false), date(2026, 8, 1));
    assert_eq!(ripening(true), date(2026, 7, 18));
    let bad = last_useful_sowing(
        date(2026, 9, 20),
        -1.0,
        MaturityFrom::Sowing,
        None,
        north,
        false,
    );
    assert_eq!(bad.unwrap_err().code(), "bad_duration");
}

/// Common practice: growth stops when there are less than 10 hours of day, in the
/// last days of October at 51° and half a year later in the south.
#[test]
fn growth_ends_with_the_light() {
    let north = end_of_growth(51.0, 2026).unwrap().unwrap();
    assert!(
        (date(2026, 10, 18)..date(2026, 11, 2)).contains(&north),
        "{north}"
    );
    let south = end_of_growth(-51.0, 2026).unwrap().unwrap();
    assert!(
        (date(2026, 4, 18)..date(2026, 5, 2)).contains(&south),
        "{south}"
    );
    assert_eq!(end_of_growth(5.0, 2026), Ok(None));
    assert_eq!(
        end_of_growth(f64::NAN, 2026).unwrap_err().code(),
        "bad_latitude"
    );
}

//! Why: when to plant out hangs on the last frost, and whoever has a record of
//! minima need not guess it. The record is looked through before it is taken
//! over, its bad lines by number, and from then on frost is spoken of as odds.

use crate::growing::{add_packet, add_place, begin};
use crate::real::story;
use chrono::{Datelike, NaiveDate};
use std::fmt::Write as _;
use std::fs;

/// Six years of minima. The last frost of spring falls on 10 April, two days
/// later each year; the first of autumn on 5 October, likewise. Two lines are
/// no minima.
fn record() -> String {
    let mut lines = "day,lowest\n2019-01-01,mild\n2019-02-30,-4.0\n".to_owned();
    let first = NaiveDate::from_ymd_opt(2019, 1, 2).unwrap();
    for day in first.iter_days().take_while(|day| day.year() < 2025) {
        let later = 2 * (day.year() - 2019).unsigned_abs();
        let spring = (day.month(), day.day()) <= (4, 10 + later);
        let autumn = (day.month(), day.day()) >= (10, 5 + later);
        let low = if spring || autumn { -1.5 } else { 6.0 };
        writeln!(lines, "{day},{low}").unwrap();
    }
    lines
}

#[test]
fn a_record_of_minima_gives_frost_dates_and_odds() {
    story(async |world| {
        let window = begin(world).await;
        add_place(&window, "Windowsill", "Kitchen sill").await;
        add_packet(&window, "Tomato", "Ruby Lantern").await;
        let file = world.saved().join("minima.csv");
        fs::write(&file, record()).unwrap();

        window.go_to_settings().await;
        let field = window
            .await_one("field", "Record of daily minima", &[])
            .await;
        field.send_keys(file.to_str().unwrap()).await.unwrap();
        window.sees("2 lines could not be read").await;
        window.press("2 lines could not be read").await;
        window.sees("Line 2: No number: mild").await;
        window.sees("Line 3: No day: 2019-02-30").await;
        window.sees("from 6 of 6 full years").await;
        // On average 15 April and 10 October. The days are 3.74 apart (standard
        // deviation of 10, 12 … 20), so at one and nine in ten 4.8 days off
        // (1.2816 deviations, table of the normal distribution), rounded to the
        // safe side.
        for (half, days) in [
            ("The day after which", ["20 Apr", "15 Apr", "11 Apr"]),
            ("The day before which", ["5 Oct", "10 Oct", "14 Oct"]),
        ] {
            window.sees_in(&[("table", half)], &days).await;
        }
        window.press("Keep these frost dates").await;
        window.sees("The frost dates are kept").await;
        window.close().await;

        let window = world.open(&[]).await;
        window.go_to_settings().await;
        let last = window.value("Last frost of spring").await;
        let first = window.value("First frost of autumn").await;
        assert!(
            last.ends_with("-04-15") && first.ends_with("-10-10"),
            "{last} {first}"
        );
        // A tomato goes out a week after the last frost at the earliest (crop
        // book): 1.9 deviations on, 3 in 100.
        window.go("Sow").await;
        window.press("Ruby Lantern").await;
        window.sees("has odds of less than 1 in 20").await;
        window.close().await;
    });
}

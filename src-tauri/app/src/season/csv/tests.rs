//! Records as growers bring them, and as nobody should.

use super::{MAX_BYTES, preview};
use crate::view::{FrostCsvOptions, FrostPreview};
use chrono::{Datelike, NaiveDate};
use plumule_agronomy::Hemisphere;
use std::fmt::Write as _;

fn read(file: &[u8]) -> FrostPreview {
    preview(file, &FrostCsvOptions::default(), Hemisphere::North).unwrap()
}

fn refused(file: &[u8]) -> String {
    let error = preview(file, &FrostCsvOptions::default(), Hemisphere::North);
    error.unwrap_err().code
}

/// Every day of some years; frost up to 20 April and from 10 October.
fn days(years: std::ops::Range<i32>) -> Vec<(NaiveDate, f64)> {
    let first = NaiveDate::from_ymd_opt(years.start, 1, 1).unwrap();
    first
        .iter_days()
        .take_while(|day| day.year() < years.end)
        .map(|day| {
            let spring = (day.month(), day.day()) <= (4, 20);
            let autumn = (day.month(), day.day()) >= (10, 10);
            (day, if spring || autumn { -1.5 } else { 6.0 })
        })
        .collect()
}

fn record(years: std::ops::Range<i32>, line: impl Fn(NaiveDate, f64) -> String) -> String {
    days(years)
        .into_iter()
        .fold(String::new(), |mut all, (day, low)| {
            writeln!(all, "{}", line(day, low)).unwrap();
            all
        })
}

#[track_caller]
fn tells_april_and_october(view: &FrostPreview) {
    let dates = |half: &crate::view::FrostHalf| half.dates.clone().unwrap().map(Option::unwrap);
    assert_eq!(view.bad_lines, 0, "{:?}", view.bad);
    assert_eq!(dates(&view.spring), ["04-20"; 3]);
    assert_eq!(dates(&view.autumn), ["10-10"; 3]);
    let odds = view.odds.unwrap();
    assert_eq!(odds.spring.unwrap().years, 6);
}

#[test]
fn a_plain_record() {
    let file = record(2019..2025, |day, low| format!("{day},{low}"));
    let view = read(file.as_bytes());
    tells_april_and_october(&view);
    assert_eq!((view.days, view.missing), (2192, 0));
    let span = view.span.unwrap().map(|day| day.to_string());
    assert_eq!(span, ["2019-01-01", "2024-12-31"]);
}

#[test]
fn headings_semicolons_decimal_commas_and_days_before_months() {
    let mut file = "\u{feff}Station;Datum;TMAX;TMIN\n".to_owned();
    file += &record(2019..2025, |day, low| {
        let low = low.to_string().replace('.', ",");
        format!("17;{};21,5;{low}", day.format("%d.%m.%Y"))
    });
    let view = read(file.as_bytes());
    tells_april_and_october(&view);
    assert_eq!(view.columns, ["Station", "Datum", "TMAX", "TMIN"]);
    let with = view.read_with;
    assert_eq!((with.day_column, with.low_column), (Some(1), Some(3)));
    assert_eq!(with.day_order.as_deref(), Some("dmy"));
}

#[test]
fn degrees_fahrenheit_months_first_and_eight_digits() {
    let file = record(2019..2025, |day, low| {
        format!("{}\t{}", day.format("%m/%d/%Y"), low * 1.8 + 32.0)
    });
    let options = FrostCsvOptions {
        fahrenheit: true,
        ..FrostCsvOptions::default()
    };
    let view = preview(file.as_bytes(), &options, Hemisphere::North).unwrap();
    tells_april_and_october(&view);
    assert_eq!(view.read_with.day_order.as_deref(), Some("mdy"));

    let file = record(2019..2025, |day, low| {
        format!("{},{low}", day.format("%Y%m%d"))
    });
    tells_april_and_october(&read(file.as_bytes()));
}

#[test]
fn the_columns_that_were_chosen_hold() {
    let file = record(2019..2025, |day, low| format!("{day},99,{low}"));
    let options = FrostCsvOptions {
        low_column: Some(2),
        ..FrostCsvOptions::default()
    };
    let view = preview(file.as_bytes(), &options, Hemisphere::North).unwrap();
    tells_april_and_october(&view);
    let none_such = FrostCsvOptions {
        low_column: Some(7),
        ..FrostCsvOptions::default()
    };
    let error = preview(file.as_bytes(), &none_such, Hemisphere::North).unwrap_err();
    assert_eq!(error.code, "bad_request");
}

#[test]
fn each_bad_line_by_its_number_and_what_is_wrong() {
    let mut file = record(2019..2025, |day, low| format!("{day},{low}")).into_bytes();
    let lines = 2192;
    for bad in [
        &b"2025-02-30,1.0"[..],
        b"2025-01-01",
        b"2025-01-02,cold",
        b"2025-01-03,NA",
        b"2025-01-04,-99999",
        b"2025-01-05,\xff\xfe",
        b"# a remark",
        b"2025-01-06,NaN0",
    ] {
        file.extend_from_slice(bad);
        file.push(b'\n');
    }
    let view = read(&file);
    let told: Vec<(u32, &str)> = view
        .bad
        .iter()
        .map(|bad| (bad.line - lines, bad.what.code.as_str()))
        .collect();
    assert_eq!(
        told,
        [
            (1, "no_day"),
            (2, "too_few_columns"),
            (3, "no_number"),
            (5, "beyond_belief"),
            (6, "not_text"),
            (8, "no_number"),
        ]
    );
    assert_eq!((view.missing, view.bad_lines), (1, 6));
}

#[test]
fn markup_and_formulas_are_text_and_short() {
    let mut file = record(2019..2025, |day, low| format!("{day},{low}"));
    file += &format!("=HYPERLINK(\"x\")<b>{},1\n", "y".repeat(500));
    let bad = &read(file.as_bytes()).bad[0];
    let crate::say::Arg::Text(text) = &bad.what.say.args["text"] else {
        panic!("{bad:?}");
    };
    assert!(text.chars().count() <= 24);
}

#[test]
fn a_quotation_mark_that_is_not_closed_does_not_pass_for_a_record() {
    let mut file = record(2019..2025, |day, low| format!("{day},{low}"));
    file += "2025-01-01,\"1.0\n";
    file += &record(2025..2026, |day, low| format!("{day},{low}"));
    let view = read(file.as_bytes());
    assert_eq!((view.days, view.bad_lines), (2192, 1));
    assert_eq!(view.bad[0].what.code, "too_long");
    assert_eq!(view.bad[0].line, 2193);
}

#[test]
fn many_bad_lines_are_counted_and_the_first_shown() {
    let mut file = record(2019..2025, |day, low| format!("{day},{low}"));
    file += &"2025-13-01,1\n".repeat(1000);
    let view = read(file.as_bytes());
    assert_eq!((view.bad.len(), view.bad_lines), (20, 1000));
}

#[test]
fn what_is_no_record_is_refused_with_what_to_do() {
    assert_eq!(refused(b""), "frost_csv_empty");
    assert_eq!(refused(&[0xff; 4000]), "frost_csv_empty");
    assert_eq!(refused(b"one,two\nthree,four\n"), "frost_csv_no_days");
    assert_eq!(
        refused(b"2025-01-01,cold\n2025-01-02,mild\n"),
        "frost_csv_no_minima"
    );
    assert_eq!(refused(&vec![b'1'; MAX_BYTES + 1]), "frost_csv_too_large");
    let wild = FrostCsvOptions {
        threshold_c: f64::NAN,
        ..FrostCsvOptions::default()
    };
    let error = preview(b"2025-01-01,1\n", &wild, Hemisphere::North).unwrap_err();
    assert_eq!(error.code, "frost_threshold_out_of_range");
}

#[test]
fn too_few_years_give_no_odds() {
    let file = record(2021..2025, |day, low| format!("{day},{low}"));
    let view = read(file.as_bytes());
    assert!(view.odds.is_none() && view.spring.dates.is_none());
    assert_eq!(
        (view.spring.say.key.as_str(), view.spring.years),
        ("frost-too-few-spring", 4)
    );
}

//! Daily minima that the grower brings as CSV: read with what can be read, and
//! each bad line by its number.

mod day;
mod table;
#[cfg(test)]
mod tests;

use super::odds::HALVES;
use crate::error::AppError;
use crate::say::{Arg, Say};
use crate::view::{
    BadLine, Coded, FrostCsvOptions, FrostHalf, FrostOddsForm, FrostPreview, FrostSpreadForm,
};
use chrono::NaiveDate;
use day::DayOrder;
use plumule_agronomy::{Error, FrostOdds, Half, Hemisphere};
use table::{Line, Table};

/// Larger than two centuries of days, bytes.
pub(crate) const MAX_BYTES: usize = 8 * 1024 * 1024;

/// Bad lines that are shown.
const BAD_SHOWN: usize = 20;

/// Odds that dates are told for.
const CHANCES: [f64; 3] = [0.1, 0.5, 0.9];

/// What a thermometer in a garden can show, °C (judgement).
const MINIMA_C: std::ops::RangeInclusive<f64> = -70.0..=50.0;

/// No minimum: how records write it (common practice).
const MISSING: &[&str] = &[
    "", "-", "na", "n/a", "nan", "null", "-99", "-99.9", "-999", "-999.9", "-9999",
];

/// Reads a record.
///
/// # Errors
/// A file that is too large, that has no lines or no such columns.
pub(crate) fn preview(
    bytes: &[u8],
    options: &FrostCsvOptions,
    hemisphere: Hemisphere,
) -> Result<FrostPreview, AppError> {
    if bytes.len() > MAX_BYTES {
        return Err(AppError::plain("frost_csv_too_large"));
    }
    if !MINIMA_C.contains(&options.threshold_c) {
        return Err(AppError::plain("frost_threshold_out_of_range"));
    }
    let table = Table::read(bytes);
    let found = table.columns(options)?;
    let order = match options.day_order.as_deref() {
        Some(order) => DayOrder::from_word(order).ok_or_else(|| AppError::bad_request(order))?,
        None => DayOrder::found_in(&table.lines, found.day),
    };
    let mut record = Record::default();
    for line in &table.lines {
        record.take(line, (found.day, found.low), order, options.fahrenheit);
    }
    let [spring, autumn] = HALVES
        .map(|half| FrostOdds::from_minima(&record.minima, options.threshold_c, half, hemisphere));
    let span = record.span();
    let form = |odds: &Result<FrostOdds, Error>| odds.as_ref().ok().map(spread);
    let odds = span
        .filter(|_| spring.is_ok() || autumn.is_ok())
        .map(|[first_day, last_day]| FrostOddsForm {
            threshold_c: options.threshold_c,
            first_day,
            last_day,
            spring: form(&spring),
            autumn: form(&autumn),
        });
    Ok(FrostPreview {
        columns: found.names,
        read_with: FrostCsvOptions {
            day_column: u32::try_from(found.day).ok(),
            low_column: u32::try_from(found.low).ok(),
            day_order: Some(order.word().to_owned()),
            ..options.clone()
        },
        days: count(record.minima.len()),
        missing: record.missing,
        span,
        bad_lines: record.bad_lines,
        bad: record.bad,
        spring: half(Half::Spring, &spring),
        autumn: half(Half::Autumn, &autumn),
        odds,
    })
}

#[derive(Default)]
struct Record {
    minima: Vec<(NaiveDate, f64)>,
    missing: u32,
    bad: Vec<BadLine>,
    bad_lines: u32,
}

impl Record {
    fn take(&mut self, line: &Line, (day, low): (usize, usize), order: DayOrder, fahrenheit: bool) {
        match read(line, (day, low), order, fahrenheit) {
            Ok(Some(minimum)) => self.minima.push(minimum),
            Ok(None) => self.missing += 1,
            Err(what) => {
                self.bad_lines += 1;
                if self.bad.len() < BAD_SHOWN {
                    let number = line.number;
                    self.bad.push(BadLine { line: number, what });
                }
            }
        }
    }

    fn span(&self) -> Option<[NaiveDate; 2]> {
        let days = self.minima.iter().map(|(day, _)| *day);
        Some([days.clone().min()?, days.max()?])
    }
}

/// The day and minimum of a line, in °C; none where the minimum is missing.
fn read(
    line: &Line,
    (day, low): (usize, usize),
    order: DayOrder,
    fahrenheit: bool,
) -> Result<Option<(NaiveDate, f64)>, Coded> {
    let fields = line.fields.as_ref().map_err(|code| coded(code, ""))?;
    let field = |column: usize| fields.get(column).map(String::as_str);
    let (Some(day), Some(low)) = (field(day), field(low)) else {
        return Err(coded("too_few_columns", ""));
    };
    let Some(date) = order.read(day) else {
        return Err(coded("no_day", day));
    };
    if MISSING.contains(&low.to_ascii_lowercase().as_str()) {
        return Ok(None);
    }
    let Ok(value) = low.replace(',', ".").parse::<f64>() else {
        return Err(coded("no_number", low));
    };
    let minimum = if fahrenheit {
        (value - 32.0) / 1.8
    } else {
        value
    };
    if !MINIMA_C.contains(&minimum) {
        return Err(coded("beyond_belief", low));
    }
    Ok(Some((date, minimum)))
}

/// What is wrong with a line, with as much of it as fits on one.
fn coded(code: &str, text: &str) -> Coded {
    let shown: String = text
        .chars()
        .filter(|it| !it.is_control())
        .take(24)
        .collect();
    Coded {
        code: code.to_owned(),
        say: Say::new(crate::words::key("frost-line", code)).with("text", Arg::Text(shown)),
    }
}

fn spread(odds: &FrostOdds) -> FrostSpreadForm {
    FrostSpreadForm {
        mean_day: odds.mean_day(),
        deviation_days: odds.deviation_days(),
        years: count(odds.years()),
        full_years: count(odds.full_years()),
    }
}

fn half(half: Half, odds: &Result<FrostOdds, Error>) -> FrostHalf {
    let season = match half {
        Half::Spring => "spring",
        Half::Autumn => "autumn",
    };
    match odds {
        Ok(odds) => {
            let dates = CHANCES.map(|chance| {
                let day = odds.date_at(chance).ok().flatten();
                day.map(|day| day.to_string())
            });
            let (years, full_years) = (count(odds.years()), count(odds.full_years()));
            FrostHalf {
                years,
                full_years,
                dates: Some(dates),
                say: Say::new(format!("frost-years-{season}"))
                    .with("years", Arg::Number(f64::from(years)))
                    .with("full", Arg::Number(f64::from(full_years))),
            }
        }
        Err(error) => {
            let years = match error {
                Error::TooFewYears(years) => count(*years),
                _ => 0,
            };
            FrostHalf {
                years,
                full_years: years,
                dates: None,
                say: Say::new(format!("frost-too-few-{season}"))
                    .with("years", Arg::Number(f64::from(years))),
            }
        }
    }
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

//! The lines and columns of a CSV file.

use super::day::DayOrder;
use crate::error::AppError;
use crate::view::FrostCsvOptions;
use csv::{ByteRecord, ReaderBuilder};

/// A longer line is none of a record of minima, bytes. Judgement.
const MAX_LINE: usize = 2048;

/// More columns than any record has. Judgement.
const MAX_COLUMNS: usize = 60;

/// Lines that are asked for delimiter and columns.
const ASKED: usize = 200;

/// Parts of the headings of a column of days and of one of minima, in lower
/// case (common practice of weather services).
const DAY_NAMES: &[&str] = &["date", "day", "datum", "time"];
const LOW_NAMES: &[&str] = &["tmin", "min", "tn", "low"];

/// A line, by its number in the file; its fields, or the code of what is wrong.
pub(super) struct Line {
    pub(super) number: u32,
    pub(super) fields: Result<Vec<String>, &'static str>,
}

pub(super) struct Table {
    heading: Vec<String>,
    pub(super) lines: Vec<Line>,
}

pub(super) struct Columns {
    pub(super) names: Vec<String>,
    pub(super) day: usize,
    pub(super) low: usize,
}

impl Table {
    pub(super) fn read(bytes: &[u8]) -> Self {
        let bytes = bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(bytes);
        let mut reader = ReaderBuilder::new()
            .delimiter(delimiter(bytes))
            .has_headers(false)
            .flexible(true)
            .from_reader(bytes);
        let mut lines = Vec::new();
        let mut record = ByteRecord::new();
        // Reading from memory does not fail; of what cannot be parsed the rest
        // is left, and told.
        loop {
            let fields = match reader.read_byte_record(&mut record) {
                Ok(false) => break,
                Ok(true) => fields(&record),
                Err(_) => Err("no_csv"),
            };
            let number = record.position().map_or(0, csv::Position::line);
            let stop = matches!(fields, Err("no_csv"));
            let comment = fields
                .as_ref()
                .is_ok_and(|fields| fields.first().is_some_and(|it| it.starts_with('#')));
            if !comment {
                lines.push(Line {
                    number: u32::try_from(number).unwrap_or(u32::MAX),
                    fields,
                });
            }
            if stop {
                break;
            }
        }
        let heading = heading(&mut lines);
        Self { heading, lines }
    }

    /// Which columns hold days and minima: as said, else by heading, else the
    /// first in which days, and the first after it in which numbers, are found.
    pub(super) fn columns(&self, options: &FrostCsvOptions) -> Result<Columns, AppError> {
        let read: Vec<&Vec<String>> = self
            .lines
            .iter()
            .take(ASKED)
            .filter_map(|line| line.fields.as_ref().ok())
            .collect();
        let width = read
            .iter()
            .map(|fields| fields.len())
            .chain([self.heading.len()])
            .max()
            .unwrap_or(0);
        if read.is_empty() {
            return Err(AppError::plain("frost_csv_empty"));
        }
        let column_of = |found: &dyn Fn(usize) -> bool| (0..width).find(|column| found(*column));
        let most = |column: usize, is: &dyn Fn(&str) -> bool| {
            let of = read.iter().filter_map(|fields| fields.get(column));
            let fit = of.filter(|field| is(field.as_str())).count();
            fit * 2 > read.len()
        };
        let named = |names: &[&str], column: usize| {
            let heading = self.heading.get(column).map(|it| it.to_lowercase());
            heading.is_some_and(|heading| names.iter().any(|name| heading.contains(name)))
        };
        let is_day = |column| {
            most(column, &|field| {
                [DayOrder::Ymd, DayOrder::Dmy, DayOrder::Mdy]
                    .iter()
                    .any(|order| order.read(field).is_some())
            })
        };
        let is_number = |column| {
            most(column, &|field| {
                field.replace(',', ".").parse::<f64>().is_ok()
            })
        };
        let within = |column: Option<u32>| match column {
            Some(column) => match usize::try_from(column) {
                Ok(column) if column < width => Ok(Some(column)),
                _ => Err(AppError::bad_request(&column.to_string())),
            },
            None => Ok(None),
        };
        let day = within(options.day_column)?
            .or_else(|| column_of(&|column| named(DAY_NAMES, column) && is_day(column)))
            .or_else(|| column_of(&is_day))
            .ok_or_else(|| AppError::plain("frost_csv_no_days"))?;
        let low = within(options.low_column)?
            .or_else(|| column_of(&|column| column != day && named(LOW_NAMES, column)))
            .or_else(|| column_of(&|column| column != day && is_number(column)))
            .ok_or_else(|| AppError::plain("frost_csv_no_minima"))?;
        let name = |column: usize| {
            let heading = self.heading.get(column).filter(|it| !it.is_empty());
            let first = read.first().and_then(|fields| fields.get(column));
            heading
                .or(first)
                .map_or(String::new(), |it| it.chars().take(40).collect())
        };
        Ok(Columns {
            names: (0..width).map(name).collect(),
            day,
            low,
        })
    }
}

/// Takes the first line off if it holds no day: it has the headings.
fn heading(lines: &mut Vec<Line>) -> Vec<String> {
    let orders = [DayOrder::Ymd, DayOrder::Dmy, DayOrder::Mdy];
    let has_day = |fields: &Vec<String>| {
        let mut fields = fields.iter();
        fields.any(|field| orders.iter().any(|order| order.read(field).is_some()))
    };
    let heads = lines
        .first()
        .is_some_and(|line| line.fields.as_ref().is_ok_and(|fields| !has_day(fields)));
    if !heads {
        return Vec::new();
    }
    lines.remove(0).fields.unwrap_or_default()
}

fn fields(record: &ByteRecord) -> Result<Vec<String>, &'static str> {
    if record.as_slice().len() > MAX_LINE {
        return Err("too_long");
    }
    if record.len() > MAX_COLUMNS {
        return Err("too_many_columns");
    }
    let text = |field: &[u8]| std::str::from_utf8(field).map(|text| text.trim().to_owned());
    let fields: Result<Vec<String>, _> = record.iter().map(text).collect();
    fields.map_err(|_| "not_text")
}

/// The one that is most frequent in the first lines; decimal commas do not make
/// a comma of a semicolon.
fn delimiter(bytes: &[u8]) -> u8 {
    let head = bytes.get(..MAX_LINE).unwrap_or(bytes);
    let times = |delimiter: u8| head.iter().filter(|it| **it == delimiter).count();
    if times(b';') > 0 {
        b';'
    } else if times(b'\t') > times(b',') {
        b'\t'
    } else {
        b','
    }
}

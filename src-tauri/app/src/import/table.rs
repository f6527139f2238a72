//! The lines and cells of a CSV file (RFC 4180, and what else is common).

use crate::error::AppError;
use csv::{ByteRecord, ReaderBuilder};

/// A file may have so many bytes.
pub(super) const MAX_BYTES: usize = 5 * 1024 * 1024;

/// So many lines …
const MAX_ROWS: usize = 5_000;

/// … so many columns (judgement) …
const MAX_COLUMNS: usize = 60;

/// … and so many characters in a cell.
const MAX_CELL: usize = 10_000;

/// With these a formula begins, for a spreadsheet.
const FORMULA: [char; 6] = ['=', '+', '-', '@', '\t', '\r'];

/// A line by its number in the file; its cells, or the code of what is wrong.
pub(super) struct Row {
    pub(super) number: u32,
    pub(super) cells: Result<Vec<String>, &'static str>,
}

pub(super) struct Table {
    pub(super) names: Vec<String>,
    pub(super) rows: Vec<Row>,
}

impl Table {
    /// # Errors
    /// A file that is too large, has too many lines, is no text, or has no line
    /// below the names.
    pub(super) fn read(bytes: &[u8]) -> Result<Self, AppError> {
        if bytes.len() > MAX_BYTES {
            return Err(AppError::plain("import_too_large"));
        }
        let bytes = bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(bytes);
        if bytes.contains(&0) {
            return Err(AppError::plain("import_not_text"));
        }
        let mut reader = ReaderBuilder::new()
            .delimiter(delimiter(bytes))
            .has_headers(false)
            .flexible(true)
            .from_reader(bytes);
        let mut rows = Vec::new();
        let mut record = ByteRecord::new();
        // Reading from memory fails at nothing.
        while reader.read_byte_record(&mut record).is_ok_and(|it| it) {
            if record.iter().all(|cell| cell.trim_ascii().is_empty()) {
                continue;
            }
            if rows.len() > MAX_ROWS {
                return Err(AppError::plain("import_too_many"));
            }
            rows.push(Row {
                number: record.position().map_or(0, |at| line_number(bytes, at)),
                cells: cells(&record),
            });
        }
        if rows.len() < 2 {
            return Err(AppError::plain("import_empty"));
        }
        match rows.remove(0).cells {
            Ok(names) => Ok(Self { names, rows }),
            Err(_) => Err(AppError::plain("import_not_text")),
        }
    }
}

/// Of a record; the reader gives the first of the empty lines before it.
fn line_number(bytes: &[u8], at: &csv::Position) -> u32 {
    let from = usize::try_from(at.byte()).unwrap_or(usize::MAX);
    let rest = bytes.get(from..).unwrap_or_default();
    let blank = rest.iter().take_while(|it| b"\r\n".contains(it));
    let skipped = blank.filter(|it| **it == b'\n').count();
    u32::try_from(at.line())
        .unwrap_or(u32::MAX)
        .saturating_add(u32::try_from(skipped).unwrap_or(0))
}

fn cells(record: &ByteRecord) -> Result<Vec<String>, &'static str> {
    if record.len() > MAX_COLUMNS {
        return Err("too_many_columns");
    }
    let mut cells = Vec::new();
    for cell in record {
        let cell = std::str::from_utf8(cell).map_err(|_| "not_text")?;
        if cell.chars().nth(MAX_CELL).is_some() {
            return Err("too_long");
        }
        cells.push(without_apostrophe(cell).to_owned());
    }
    Ok(cells)
}

/// Without the apostrophe that keeps a spreadsheet from taking a text for a
/// formula, as the tables written here have it.
fn without_apostrophe(cell: &str) -> &str {
    match cell.strip_prefix('\'') {
        Some(rest) if rest.starts_with(FORMULA) || rest.starts_with('\'') => rest,
        _ => cell,
    }
}

/// The most frequent one of the first line, outside quotes; a comma if none is.
fn delimiter(bytes: &[u8]) -> u8 {
    let mut quoted = false;
    let mut found = [(b',', 0_usize), (b';', 0), (b'\t', 0)];
    for byte in bytes {
        match byte {
            b'"' => quoted = !quoted,
            b'\n' | b'\r' if !quoted => break,
            _ if quoted => {}
            byte => {
                for (delimiter, times) in &mut found {
                    *times += usize::from(byte == delimiter);
                }
            }
        }
    }
    let most = found.iter().map(|(_, times)| *times).max().unwrap_or(0);
    let first = found.iter().find(|(_, times)| *times == most);
    first.map_or(b',', |(delimiter, _)| *delimiter)
}

//! Tables as CSV (RFC 4180): one line of names, lines ended by CR LF, numbers
//! with a point, days and times as ISO 8601, temperatures in °C.
//!
//! A text that a spreadsheet would take for a formula gets an apostrophe
//! before it; numbers have none (OWASP, "CSV Injection").

use super::season;
use crate::error::AppError;
use chrono::NaiveDate;
use plumule_journal::Journal;
use plumule_journal::content::{Seeds, Shown};
use std::collections::BTreeMap;

/// With these a formula begins, or a spreadsheet trims to what is one.
const FORMULA: [char; 6] = ['=', '+', '-', '@', '\t', '\r'];

/// A cell.
enum Cell {
    Text(String),
    /// Made here: a number, a day, a word of a closed set.
    Plain(String),
}

fn text(text: &str) -> Cell {
    Cell::Text(text.to_owned())
}

fn plain(value: impl ToString) -> Cell {
    Cell::Plain(value.to_string())
}

fn maybe<T: ToString>(value: Option<T>) -> Cell {
    Cell::Plain(value.map_or_else(String::new, |value| value.to_string()))
}

fn safe(cell: Cell) -> String {
    match cell {
        Cell::Text(text) if text.starts_with(FORMULA) || text.starts_with('\'') => {
            format!("'{text}")
        }
        Cell::Text(text) | Cell::Plain(text) => text,
    }
}

fn table(names: &[&str], rows: impl IntoIterator<Item = Vec<Cell>>) -> Result<Vec<u8>, AppError> {
    let mut writer = csv::WriterBuilder::new()
        .terminator(csv::Terminator::CRLF)
        .from_writer(Vec::new());
    let failed = |_| AppError::plain("file_failed");
    writer.write_record(names).map_err(failed)?;
    for row in rows {
        writer
            .write_record(row.into_iter().map(safe))
            .map_err(failed)?;
    }
    writer
        .into_inner()
        .map_err(|_| AppError::plain("file_failed"))
}

pub(super) fn sowings(journal: &Journal) -> Result<Vec<u8>, AppError> {
    let names = [
        "sown",
        "crop",
        "variety",
        "packet_year",
        "tray",
        "place",
        "cells",
        "seeds",
        "seeds_as",
        "depth_mm",
        "plants_wanted",
        "up",
        "pricked_out_or_on",
        "thinned",
        "lost",
        "missing",
        "planted_out",
        "sold",
        "given_away",
        "still_there",
        "first_counted_up",
        "ended",
        "end",
    ];
    let rows = season::sowings(journal)?.into_iter().map(|past| {
        let (packet, sowing) = (past.packet.described, past.sowing);
        let numbers = sowing.plants.numbers;
        let (seeds, how) = match sowing.sown.seeds {
            Seeds::Exact(number) => (Some(number), "exact"),
            Seeds::About(number) => (Some(number), "about"),
            Seeds::Pinch => (None, "pinch"),
        };
        let first = sowing.counts.iter().find(|count| count.ever_up > 0);
        let end = sowing.plants.ended.as_ref();
        vec![
            plain(moment(&sowing.opened_by.at.local)),
            text(&packet.crop),
            text(&packet.variety),
            maybe(packet.packed_year.or(packet.harvested_year)),
            text(&past.tray),
            text(&past.place),
            plain(sowing.sown.cells.len()),
            maybe(seeds),
            plain(how),
            maybe(sowing.sown.depth_mm),
            maybe(sowing.sown.wanted),
            plain(numbers.up),
            plain(numbers.gone_on),
            plain(numbers.thinned),
            plain(numbers.lost),
            plain(numbers.missing),
            plain(numbers.planted_out),
            plain(numbers.sold),
            plain(numbers.given_away),
            plain(numbers.there),
            maybe(first.map(|count| moment(&count.at.at.local))),
            maybe(end.map(|end| moment(&end.at.at.local))),
            plain(match end {
                None => "",
                Some(end) if end.nothing_came_up => "nothing_came_up",
                Some(_) => "finished",
            }),
        ]
    });
    table(&names, rows)
}

pub(super) fn packets(journal: &Journal) -> Result<Vec<u8>, AppError> {
    let names = [
        "crop",
        "variety",
        "packed",
        "harvested",
        "sow_by",
        "stated_germination",
        "seeds",
        "seeds_left",
        "sowings",
        "storage",
        "treated",
        "source",
        "note",
        "in_use",
        "f1",
        "price",
        "stated_days",
        "stated_at_c",
    ];
    let rows = journal.packets()?.into_iter().map(|packet| {
        let left = packet.seeds_left();
        let it = packet.described;
        let at = it.stated_days.and_then(|stated| stated.at);
        vec![
            text(&it.crop),
            text(&it.variety),
            maybe(it.packed_year),
            maybe(it.harvested_year),
            maybe(it.sow_by),
            maybe(it.stated_germination),
            maybe(it.seeds),
            maybe(left),
            plain(packet.sowings.len()),
            plain(it.storage.as_str()),
            plain(it.treated),
            text(&it.source),
            text(&it.note),
            plain(!it.retired),
            plain(it.f1),
            text(&it.price),
            maybe(it.stated_days.map(|it| format!("{} to {}", it.from, it.to))),
            maybe(at.map(|at| format!("{} to {}", at.min_c, at.max_c))),
        ]
    });
    table(&names, rows)
}

pub(super) fn readings(journal: &Journal) -> Result<Vec<u8>, AppError> {
    let names = ["at", "place", "of", "lowest_c", "highest_c", "now_c"];
    let places: BTreeMap<_, _> = journal
        .places()?
        .into_iter()
        .map(|place| (place.described.place, place.described.name))
        .collect();
    let since = NaiveDate::from_ymd_opt(1900, 1, 1).unwrap_or_default();
    let rows = journal.readings(since)?.into_iter().map(|reading| {
        let (low, high, now) = match reading.shown {
            Shown::LowHigh { min_c, max_c } => (Some(min_c), Some(max_c), None),
            Shown::Now { temperature_c } => (None, None, Some(temperature_c)),
        };
        vec![
            plain(moment(&reading.mark.at.local)),
            text(places.get(&reading.place).map_or("", String::as_str)),
            plain(reading.of.as_str()),
            maybe(low),
            maybe(high),
            maybe(now),
        ]
    });
    table(&names, rows)
}

fn moment(at: &chrono::NaiveDateTime) -> String {
    at.format("%Y-%m-%dT%H:%M:%S").to_string()
}

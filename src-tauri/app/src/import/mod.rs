//! Packets from a table (CSV): read whole and checked before anything is
//! written, and written as one act.

mod field;
mod table;
#[cfg(test)]
mod tests;

use crate::act::{Made, described};
use crate::error::AppError;
use crate::say::{Arg, Say};
use crate::text::fold;
use crate::view::{BadLine, Coded, ImportColumn, ImportForm, ImportLine, ImportView, PacketForm};
use field::{Field, Reader};
use plumule_journal::content::{Content, PacketDescribed};
use plumule_journal::id::PacketId;
use plumule_journal::stamp::Stamp;
use plumule_journal::{Ids, Journal};
use std::collections::BTreeSet;
use table::{Row, Table};

/// Lines that are shown before they are taken in (judgement).
const SHOWN: usize = 20;

/// Bad lines that are told one by one; a table is mended in an editor, so all
/// that a screen can hold (judgement).
const BAD_SHOWN: usize = 200;

/// What a table says, read.
struct Read {
    columns: Vec<ImportColumn>,
    lines: Vec<Line>,
    bad: Vec<BadLine>,
}

struct Line {
    number: u32,
    form: PacketForm,
    retired: bool,
    duplicate: bool,
}

/// What would be taken in.
pub(crate) fn view(
    journal: &Journal,
    stamp: &Stamp,
    bytes: &[u8],
    form: &ImportForm,
) -> Result<ImportView, AppError> {
    let read = read(journal, stamp, bytes, form)?;
    let duplicates = read.lines.iter().filter(|line| line.duplicate).count();
    let taken = if form.duplicates {
        read.lines.len()
    } else {
        read.lines.len() - duplicates
    };
    Ok(ImportView {
        fields: Field::ALL.iter().map(|it| it.key().to_owned()).collect(),
        columns: read.columns,
        packets: count(taken),
        duplicates: count(duplicates),
        first: read.lines.into_iter().take(SHOWN).map(shown).collect(),
        bad_lines: count(read.bad.len()),
        bad: read.bad.into_iter().take(BAD_SHOWN).collect(),
    })
}

/// What is to be written for it, as one act.
pub(crate) fn made(
    journal: &Journal,
    stamp: &Stamp,
    bytes: &[u8],
    form: &ImportForm,
) -> Result<Made, AppError> {
    let read = read(journal, stamp, bytes, form)?;
    let mut ids = Ids::new(stamp, "packets of a table");
    let mut made = Made::default();
    for line in read.lines {
        if !line.duplicate || form.duplicates {
            let packet = described(PacketId(ids.next()), &line.form, line.retired)?;
            made.contents.push(Content::PacketDescribed(packet));
        }
    }
    Ok(made)
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

fn shown(line: Line) -> ImportLine {
    ImportLine {
        line: line.number,
        packet: line.form,
        retired: line.retired,
        duplicate: line.duplicate,
    }
}

fn read(
    journal: &Journal,
    stamp: &Stamp,
    bytes: &[u8],
    form: &ImportForm,
) -> Result<Read, AppError> {
    let table = Table::read(bytes)?;
    let reader = Reader::new();
    let fields = fields(&table, form)?;
    let mut here: BTreeSet<Likeness> = journal
        .packets()?
        .iter()
        .map(|packet| likeness(&packet.described))
        .collect();
    let (mut lines, mut bad) = (Vec::new(), Vec::new());
    for row in &table.rows {
        match line(&reader, stamp, row, &fields) {
            Ok((form, retired, packet)) => lines.push(Line {
                number: row.number,
                form,
                retired,
                duplicate: !here.insert(likeness(&packet)),
            }),
            Err(what) => bad.push(BadLine {
                line: row.number,
                what,
            }),
        }
    }
    let sample = |column: usize| {
        let cells = table.rows.iter().filter_map(|row| row.cells.as_ref().ok());
        let mut filled = cells.filter_map(|cells| cells.get(column).filter(|it| !it.is_empty()));
        filled.next().map(|it| it.chars().take(40).collect())
    };
    let columns = table.names.iter().zip(&fields).enumerate();
    Ok(Read {
        columns: columns
            .map(|(at, (name, field))| ImportColumn {
                name: name.chars().take(40).collect(),
                sample: sample(at).unwrap_or_default(),
                field: field.map_or_else(String::new, |field| field.key().to_owned()),
            })
            .collect(),
        lines,
        bad,
    })
}

/// What each column is: as said, else by its name.
fn fields(table: &Table, form: &ImportForm) -> Result<Vec<Option<Field>>, AppError> {
    if form.columns.is_empty() {
        let mut taken = BTreeSet::new();
        return Ok(table
            .names
            .iter()
            .map(|name| Field::of_name(name).filter(|field| taken.insert(*field)))
            .collect());
    }
    let field = |key: &String| match key.as_str() {
        "" => Ok(None),
        key => Field::of_key(key)
            .map(Some)
            .ok_or_else(|| AppError::bad_request(key)),
    };
    let mut fields: Vec<Option<Field>> =
        form.columns.iter().map(field).collect::<Result<_, _>>()?;
    fields.resize(table.names.len(), None);
    Ok(fields)
}

fn line(
    reader: &Reader,
    stamp: &Stamp,
    row: &Row,
    fields: &[Option<Field>],
) -> Result<(PacketForm, bool, PacketDescribed), Coded> {
    let cells = row.cells.as_ref().map_err(|code| coded(code, ""))?;
    let (mut form, mut retired) = (blank(), false);
    for (cell, field) in cells.iter().zip(fields) {
        if let Some(field) = field {
            reader.fill(&mut form, &mut retired, *field, cell.trim())?;
        }
    }
    let bad = |error: AppError| Coded {
        code: error.code,
        say: error.say,
    };
    if form.crop.is_empty() {
        return Err(coded("no_crop", ""));
    }
    let packet = described(PacketId(uuid::Uuid::nil()), &form, retired).map_err(bad)?;
    Journal::packet_fits(stamp, &packet).map_err(|error| bad(error.into()))?;
    Ok((form, retired, packet))
}

fn coded(code: &str, text: &str) -> Coded {
    let shown: String = text
        .chars()
        .filter(|it| !it.is_control())
        .take(40)
        .collect();
    Coded {
        code: code.to_owned(),
        say: Say::new(crate::words::key("import-line", code)).with("text", Arg::Text(shown)),
    }
}

/// By what two packets are taken to be the same.
type Likeness = (String, String, Option<i32>, Option<i32>, String);

fn likeness(packet: &PacketDescribed) -> Likeness {
    (
        fold(&packet.crop),
        fold(&packet.variety),
        packet.packed_year,
        packet.harvested_year,
        fold(&packet.source),
    )
}

fn blank() -> PacketForm {
    PacketForm {
        crop: String::new(),
        variety: String::new(),
        packed_year: None,
        harvested_year: None,
        stated_germination: None,
        stated_days: None,
        seeds: None,
        storage: plumule_journal::words::Storage::CoolCupboard
            .as_str()
            .to_owned(),
        treated: false,
        source: String::new(),
        note: String::new(),
        sow_by: None,
        f1: false,
        saved_from: None,
        price: String::new(),
    }
}

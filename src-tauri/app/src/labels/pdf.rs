//! Sheets of labels as PDF.

use super::fit::{LEADING, Line, Space, fit};
use super::letters::Letters;
use super::{qr, stock};
use crate::error::AppError;
use crate::view::{LabelSheet, LabelText};
use krilla::Document;
use krilla::color::luma;
use krilla::geom::{PathBuilder, Point, Rect};
use krilla::metadata::Metadata;
use krilla::num::NormalizedF32;
use krilla::page::PageSettings;
use krilla::paint::{Fill, Stroke};
use krilla::surface::Surface;
use krilla::text::TextDirection;

/// Points in a millimetre: 72 in an inch of 25.4 mm.
const MM: f32 = 72.0 / 25.4;
/// Kept free along a label's edge, mm: printers are that much off. Judgement.
const EDGE: f32 = 1.5;
/// The square takes at most so much of a label's length. Judgement.
const SQUARE: f32 = 0.42;
/// A square is read well from an arm's length at so many mm. Judgement.
const LARGEST_SQUARE: f32 = 24.0;
/// Sizes of letters, points: the code is to be read from a metre, the name
/// and day from an arm's length. Judgement.
const CODE: (f32, f32) = (30.0, 9.0);
const NAME: (f32, f32) = (16.0, 6.0);
const DATE: (f32, f32) = (12.0, 6.0);
/// How much of the height the code and the day take. Judgement.
const CODE_SHARE: f32 = 0.42;
const DATE_SHARE: f32 = 0.22;
/// A line to cut along, mm.
const HAIR: f32 = 0.1;

/// A part of the paper, mm from its left and top edge.
#[derive(Clone, Copy)]
struct Area {
    x: f32,
    y: f32,
    width: f32,
    height: f32,
}

/// Draws labels: what the square of each says, and its words.
pub(super) fn draw(
    labels: &[(String, LabelText)],
    sheet: &LabelSheet,
) -> Result<Vec<u8>, AppError> {
    let failed = || AppError::plain("unexpected");
    let letters = Letters::new()?;
    let (wide, high) = stock::paper(&sheet.stock)?;
    let spots = stock::spots(&sheet.stock, sheet.first)?;
    let placed: Vec<_> = spots.zip(labels).collect();
    let sheets = placed
        .iter()
        .map(|((sheet, ..), _)| sheet + 1)
        .max()
        .unwrap_or(1);
    let mut document = Document::new();
    document.set_metadata(Metadata::new().title("Labels".to_owned()));
    for number in 0..sheets {
        let size = PageSettings::from_wh(wide * MM, high * MM).ok_or_else(failed)?;
        let mut page = document.start_page_with(size);
        let mut surface = page.surface();
        for ((on, x, y), (square, text)) in &placed {
            if *on != number {
                continue;
            }
            let area = Area {
                x: *x,
                y: *y,
                width: sheet.stock.width,
                height: sheet.stock.height,
            };
            if sheet.cut_lines {
                outline(&mut surface, area).ok_or_else(failed)?;
            }
            label(&mut surface, &letters, area, square, text)?;
        }
        surface.finish();
        page.finish();
    }
    document.finish().map_err(|_| failed())
}

fn rect(area: Area) -> Option<Rect> {
    Rect::from_xywh(area.x * MM, area.y * MM, area.width * MM, area.height * MM)
}

fn outline(surface: &mut Surface<'_>, area: Area) -> Option<()> {
    let mut path = PathBuilder::new();
    path.push_rect(rect(area)?);
    surface.set_fill(None);
    surface.set_stroke(Some(Stroke {
        paint: luma::Color::new(128).into(),
        width: HAIR * MM,
        ..Stroke::default()
    }));
    surface.draw_path(&path.finish()?);
    surface.set_stroke(None);
    Some(())
}

/// The square at the right end, or at the foot of a label that is higher than
/// wide; the words in the rest.
fn label(
    surface: &mut Surface<'_>,
    letters: &Letters,
    area: Area,
    square: &str,
    text: &LabelText,
) -> Result<(), AppError> {
    surface.set_fill(Some(Fill {
        paint: luma::Color::black().into(),
        opacity: NormalizedF32::ONE,
        ..Fill::default()
    }));
    let lying = area.width >= area.height;
    let (long, short) = if lying {
        (area.width, area.height)
    } else {
        (area.height, area.width)
    };
    let side = short.min(long * SQUARE).min(LARGEST_SQUARE);
    let across = (short - side) / 2.0;
    let (at, words) = if lying {
        let at = (area.x + area.width - side, area.y + across);
        let words = Area {
            x: area.x + EDGE,
            y: area.y + EDGE,
            width: area.width - side - EDGE,
            height: area.height - 2.0 * EDGE,
        };
        (at, words)
    } else {
        let at = (area.x + across, area.y + area.height - side);
        let words = Area {
            x: area.x + EDGE,
            y: area.y + EDGE,
            width: area.width - 2.0 * EDGE,
            height: area.height - side - EDGE,
        };
        (at, words)
    };
    draw_square(surface, square, at, side)?;
    draw_words(surface, letters, words, text);
    Ok(())
}

/// Runs of dark modules as bars, the white around them within the side.
fn draw_square(
    surface: &mut Surface<'_>,
    square: &str,
    (x, y): (f32, f32),
    side: f32,
) -> Result<(), AppError> {
    let (dark, modules) = qr::drawn(square)?;
    let module = side / (modules + 2 * qr::QUIET) as f32;
    let mut path = PathBuilder::new();
    let rows = dark.chunks(usize::try_from(modules).unwrap_or(1).max(1));
    for (row, cells) in rows.enumerate() {
        let mut column = 0;
        for run in cells.chunk_by(|a, b| a == b) {
            let bar = Area {
                x: x + (qr::QUIET as f32 + column as f32) * module,
                y: y + (qr::QUIET as f32 + row as f32) * module,
                width: run.len() as f32 * module,
                height: module,
            };
            if let (Some(true), Some(bar)) = (run.first(), rect(bar)) {
                path.push_rect(bar);
            }
            column += run.len();
        }
    }
    if let Some(path) = path.finish() {
        surface.draw_path(&path);
    }
    Ok(())
}

/// The code on top, the names below, the day at the foot.
fn draw_words(surface: &mut Surface<'_>, letters: &Letters, area: Area, text: &LabelText) {
    let width = |text: &str| letters.width(text);
    let space = |height: f32, sizes: (f32, f32), lines: usize| Space {
        width: area.width * MM,
        height: height * MM,
        sizes,
        lines,
    };
    let (head, foot) = (area.height * CODE_SHARE, area.height * DATE_SHARE);
    let middle = area.height - head - foot;
    let code = fit(&text.code, space(head, CODE, 1), &width);
    let date = fit(&text.date, space(foot, DATE, 1), &width);
    let names = match &text.names[..] {
        [one] => fit(one, space(middle, NAME, 3), &width),
        several => {
            let each = middle / several.len().max(1) as f32;
            // Each on a line of its own while that can be read, else all in one.
            if each * MM >= NAME.1 * LEADING {
                let line = |name: &String| fit(name, space(each, NAME, 1), &width);
                several.iter().flat_map(line).collect()
            } else {
                fit(&several.join(", "), space(middle, NAME, 3), &width)
            }
        }
    };
    let mut y = area.y * MM;
    for (lines, height) in [(code, head), (names, middle), (date, foot)] {
        draw_lines(surface, letters, (area.x * MM, y), &lines);
        y += height * MM;
    }
}

/// How far a line's foot lies below its top, as a share of its letters' size:
/// the font's own is 0.93, less what is white above its capitals.
const FOOT: f32 = 0.86;

fn draw_lines(
    surface: &mut Surface<'_>,
    letters: &Letters,
    (x, mut y): (f32, f32),
    lines: &[Line],
) {
    for line in lines {
        let foot = Point::from_xy(x, y + line.size * FOOT);
        surface.draw_text(
            foot,
            letters.font.clone(),
            line.size,
            &line.text,
            false,
            TextDirection::Auto,
        );
        y += line.size * LEADING;
    }
}

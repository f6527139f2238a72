//! Paper and the labels on it.

use crate::error::AppError;
use crate::view::LabelStock;

/// A usual stock. The sizes are those that the trade in sticky labels has in
/// common; common practice, no source. mm.
#[derive(Clone, Debug)]
pub struct Stock {
    paper: &'static str,
    size: (f32, f32),
    corner: (f32, f32),
    gap: (f32, f32),
}

const fn stock(
    paper: &'static str,
    size: (f32, f32),
    corner: (f32, f32),
    gap: (f32, f32),
) -> Stock {
    Stock {
        paper,
        size,
        corner,
        gap,
    }
}

/// Usual stocks; the last of each paper is plain paper, cut into strips that
/// go into a plastic stick label's place.
pub const STOCKS: &[Stock] = &[
    stock("a4", (63.5, 38.1), (7.2, 15.1), (2.5, 0.0)),
    stock("a4", (70.0, 37.0), (0.0, 0.5), (0.0, 0.0)),
    stock("a4", (99.1, 38.1), (4.65, 15.1), (2.5, 0.0)),
    stock("a4", (48.5, 25.4), (8.0, 21.5), (0.0, 0.0)),
    stock("a4", (38.1, 21.2), (4.7, 10.7), (2.5, 0.0)),
    stock("a4", (95.0, 18.0), (9.5, 13.0), (1.0, 1.0)),
    stock("letter", (66.7, 25.4), (4.8, 12.7), (3.1, 0.0)),
    stock("letter", (101.6, 50.8), (4.0, 12.7), (4.7, 0.0)),
    stock("letter", (44.4, 12.7), (7.6, 12.7), (7.6, 0.0)),
    stock("letter", (98.0, 18.0), (9.4, 13.0), (1.0, 1.0)),
];

impl From<Stock> for LabelStock {
    fn from(stock: Stock) -> Self {
        Self {
            paper: stock.paper.to_owned(),
            width: stock.size.0,
            height: stock.size.1,
            left: stock.corner.0,
            top: stock.corner.1,
            across: stock.gap.0,
            down: stock.gap.1,
        }
    }
}

/// Width and height of a paper, mm (ISO 216; ANSI/ASME Y14.1).
pub(super) fn paper(stock: &LabelStock) -> Result<(f32, f32), AppError> {
    match stock.paper.as_str() {
        "a4" => Ok((210.0, 297.0)),
        "letter" => Ok((215.9, 279.4)),
        other => Err(AppError::bad_request(other)),
    }
}

/// The smallest label that holds a code that can be read off a photo, mm.
/// Judgement.
const LEAST: (f32, f32) = (25.0, 10.0);
/// What a measure may be off before a label counts as over the edge, mm.
const SLACK: f32 = 0.05;

/// How many labels stand beside and above each other.
///
/// # Errors
/// `label_off_the_paper` if not one does, `label_too_small`, `bad_request` for
/// an unknown paper or what is no length.
pub(super) fn fits(stock: LabelStock) -> Result<(u32, u32), AppError> {
    let (wide, high) = paper(&stock)?;
    let lengths = [
        stock.width,
        stock.height,
        stock.left,
        stock.top,
        stock.across,
        stock.down,
    ];
    if lengths.iter().any(|it| !it.is_finite() || *it < 0.0) {
        return Err(AppError::plain("label_off_the_paper"));
    }
    if stock.width < LEAST.0 || stock.height < LEAST.1 {
        return Err(AppError::plain("label_too_small"));
    }
    let count = |paper: f32, start: f32, size: f32, gap: f32| {
        let room = paper - 2.0 * start + gap + SLACK;
        (room / (size + gap)).floor().max(0.0) as u32
    };
    let columns = count(wide, stock.left, stock.width, stock.across);
    let rows = count(high, stock.top, stock.height, stock.down);
    if columns == 0 || rows == 0 {
        return Err(AppError::plain("label_off_the_paper"));
    }
    Ok((columns, rows))
}

/// Where the labels from the `first` on go: the sheet, from 0, and the label's
/// left and top edge, mm.
///
/// # Errors
/// As [`fits`].
pub(super) fn spots(
    stock: &LabelStock,
    first: u32,
) -> Result<impl Iterator<Item = (u32, f32, f32)>, AppError> {
    let (columns, rows) = fits(stock.clone())?;
    let a_sheet = columns.saturating_mul(rows);
    let start = first.clamp(1, a_sheet) - 1;
    let (step_x, step_y) = (stock.width + stock.across, stock.height + stock.down);
    let (left, top) = (stock.left, stock.top);
    Ok((start..).map(move |n| {
        let on_sheet = n % a_sheet;
        let (row, column) = (on_sheet / columns, on_sheet % columns);
        (
            n / a_sheet,
            left + column as f32 * step_x,
            top + row as f32 * step_y,
        )
    }))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_usual_stocks_hold_as_many_as_they_are_sold_with() {
        let counts: Vec<u32> = STOCKS
            .iter()
            .map(|stock| {
                let (columns, rows) = fits(stock.clone().into()).unwrap();
                columns * rows
            })
            .collect();
        assert_eq!(counts, [21, 24, 14, 40, 65, 28, 30, 10, 80, 26]);
    }

    #[test]
    fn none_reaches_over_the_edge_of_its_paper() {
        for stock in STOCKS {
            let stock: LabelStock = stock.clone().into();
            let (wide, high) = paper(&stock).unwrap();
            let (columns, rows) = fits(stock.clone()).unwrap();
            let all = usize::try_from(columns * rows).unwrap();
            for (sheet, x, y) in spots(&stock, 1).unwrap().take(all) {
                assert_eq!(sheet, 0);
                assert!(x + stock.width <= wide + SLACK && y + stock.height <= high + SLACK);
            }
        }
    }

    #[test]
    fn a_half_used_sheet_is_gone_on_with() {
        let stock: LabelStock = STOCKS[0].clone().into();
        let spots: Vec<_> = spots(&stock, 20).unwrap().take(3).collect();
        assert_eq!(spots[0], (0, 7.2 + 66.0, 15.1 + 6.0 * 38.1));
        assert_eq!((spots[1].0, spots[2]), (0, (1, 7.2, 15.1)));
    }

    #[test]
    fn what_does_not_fit_is_said() {
        let code = |change: fn(&mut LabelStock)| {
            let mut stock: LabelStock = STOCKS[0].clone().into();
            change(&mut stock);
            fits(stock).unwrap_err().code
        };
        assert_eq!(code(|it| it.width = 300.0), "label_off_the_paper");
        assert_eq!(code(|it| it.top = f32::NAN), "label_off_the_paper");
        assert_eq!(code(|it| it.left = -5.0), "label_off_the_paper");
        assert_eq!(code(|it| it.height = 9.0), "label_too_small");
        assert_eq!(code(|it| it.paper = "a5".to_owned()), "bad_request");
    }
}

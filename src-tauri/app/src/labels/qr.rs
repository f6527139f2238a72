//! The square code on a label: what it says, drawn and read.

use crate::error::AppError;
use image::GrayImage;
use image::imageops::{self, FilterType};
use plumule_journal::id::TrayId;
use qrcode::{Color, EcLevel, QrCode};
use rqrr::PreparedImage;

/// What it begins with: it is for this app and nobody else's.
const MARK: &str = "PLUMULE:TRAY:";
/// White around it, in modules (ISO/IEC 18004, 9.1: four).
pub(super) const QUIET: u32 = 4;
/// A photo is looked at so small as well, pixels: in a large one, grain and
/// blur can hide what a smaller one shows.
const SMALLER: [u32; 2] = [800, 400];

/// What the square of a tray says. Only capitals, digits and colons, so that
/// it stays small.
pub(super) fn text(tray: TrayId) -> String {
    format!("{MARK}{}", tray.0.simple()).to_uppercase()
}

/// The tray that a square names; none if it is another's.
pub(super) fn tray(text: &str) -> Option<TrayId> {
    let id = text.trim().to_uppercase();
    id.strip_prefix(MARK)?.parse().ok()
}

/// The dark modules of a square, row by row, and how many a side has. It can
/// still be read with a quarter of it gone (level Q).
///
/// # Errors
/// `unexpected` if the text is too long for one.
pub(super) fn drawn(text: &str) -> Result<(Vec<bool>, u32), AppError> {
    let code = QrCode::with_error_correction_level(text, EcLevel::Q)
        .map_err(|_| AppError::plain("unexpected"))?;
    let side = u32::try_from(code.width()).unwrap_or(0);
    let dark = code.to_colors().into_iter().map(|it| it == Color::Dark);
    Ok((dark.collect(), side))
}

/// What the squares in a photo say.
pub(super) fn read(photo: &GrayImage) -> Vec<String> {
    let mut found = squares(photo);
    for longest in SMALLER {
        if found.is_empty() && photo.width().max(photo.height()) > longest {
            let scale = f64::from(longest) / f64::from(photo.width().max(photo.height()));
            let side = |length: u32| ((f64::from(length) * scale) as u32).max(1);
            let (width, height) = (side(photo.width()), side(photo.height()));
            found = squares(&imageops::resize(
                photo,
                width,
                height,
                FilterType::Triangle,
            ));
        }
    }
    found
}

fn squares(photo: &GrayImage) -> Vec<String> {
    let (width, height) = (photo.width() as usize, photo.height() as usize);
    let shade = |x: usize, y: usize| {
        let at = y.saturating_mul(width).saturating_add(x);
        photo.as_raw().get(at).copied().unwrap_or(255)
    };
    PreparedImage::prepare_from_greyscale(width, height, shade)
        .detect_grids()
        .iter()
        .filter_map(|grid| Some(grid.decode().ok()?.1))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::Luma;

    fn id() -> TrayId {
        "0190aaaa-bbbb-7ccc-8ddd-eeeeffff0123".parse().unwrap()
    }

    /// A square drawn with modules of so many pixels, on white.
    fn photo(text: &str, pixels: u32) -> GrayImage {
        let (dark, side) = drawn(text).unwrap();
        let all = (side + 2 * QUIET) * pixels;
        GrayImage::from_fn(all, all, |x, y| {
            let (x, y) = (
                (x / pixels).wrapping_sub(QUIET),
                (y / pixels).wrapping_sub(QUIET),
            );
            let on = x < side && y < side && dark[(y * side + x) as usize];
            Luma([if on { 20 } else { 235 }])
        })
    }

    #[test]
    fn a_square_names_its_tray_and_is_small() {
        assert_eq!(text(id()), "PLUMULE:TRAY:0190AAAABBBB7CCC8DDDEEEEFFFF0123");
        assert_eq!(tray(&text(id())), Some(id()));
        assert_eq!(
            tray(" plumule:tray:0190aaaabbbb7ccc8dddeeeeffff0123\n"),
            Some(id())
        );
        assert_eq!(tray("https://example.org"), None);
        assert_eq!(tray("PLUMULE:TRAY:"), None);
        // ISO/IEC 18004, table 7: version 3 at level Q holds 47 of these.
        assert_eq!(drawn(&text(id())).unwrap().1, 29);
    }

    #[test]
    fn it_is_read_large_small_and_turned() {
        for pixels in [3, 8, 40] {
            assert_eq!(read(&photo(&text(id()), pixels)), [text(id())], "{pixels}");
        }
        let turned = imageops::rotate90(&photo(&text(id()), 6));
        assert_eq!(read(&turned), [text(id())]);
    }

    #[test]
    fn it_is_read_with_compost_on_a_corner() {
        let mut photo = photo(&text(id()), 8);
        for (x, y) in (150..200).flat_map(|x| (150..200).map(move |y| (x, y))) {
            photo.put_pixel(x, y, Luma([60]));
        }
        assert_eq!(read(&photo), [text(id())]);
    }

    #[test]
    fn a_photo_without_one_says_nothing() {
        assert!(read(&GrayImage::from_pixel(300, 200, Luma([120]))).is_empty());
        assert!(read(&GrayImage::new(0, 0)).is_empty());
    }
}

//! The font of the labels, and how wide words are in it.

use crate::error::AppError;
use krilla::text::Font;
use rustybuzz::{Face, UnicodeBuffer};

/// DejaVu Sans Condensed Bold 2.37, from Debian's fonts-dejavu-extra: Latin,
/// Greek, Cyrillic, Armenian, Georgian, Hebrew and Arabic letters. Its licence
/// stands beside it.
const FONT: &[u8] = include_bytes!("../../fonts/DejaVuSansCondensed-Bold.ttf");

/// Letters of that font.
pub(super) struct Letters {
    face: Face<'static>,
    pub(super) font: Font,
}

impl Letters {
    /// # Errors
    /// `unexpected` if the font cannot be read, which a test excludes.
    pub(super) fn new() -> Result<Self, AppError> {
        let face = Face::from_slice(FONT, 0);
        let font = Font::new(FONT.to_vec().into(), 0);
        match (face, font) {
            (Some(face), Some(font)) => Ok(Self { face, font }),
            _ => Err(AppError::plain("unexpected")),
        }
    }

    /// How wide a line of text is, as a share of the letters' size.
    pub(super) fn width(&self, text: &str) -> f32 {
        let mut buffer = UnicodeBuffer::new();
        buffer.push_str(text);
        buffer.guess_segment_properties();
        let shaped = rustybuzz::shape(&self.face, &[], buffer);
        let advance: i64 = shaped
            .glyph_positions()
            .iter()
            .map(|glyph| i64::from(glyph.x_advance))
            .sum();
        advance as f32 / self.face.units_per_em() as f32
    }
}

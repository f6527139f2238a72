//! Decoding, turning upright, scaling and writing.

use super::check;
use crate::error::AppError;
use crate::photos::MOST_PIXELS;
use chrono::NaiveDateTime;
use exif::{In, Reader, Tag, Value};
use image::codecs::jpeg::JpegEncoder;
use image::imageops::FilterType;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageError, ImageReader, Limits, Rgb, RgbImage};
use std::io::{Cursor, ErrorKind};

/// How good a written JPEG is, 1 to 100: no blocks can be seen at full size.
/// Judgement.
const QUALITY: u8 = 82;
/// The most bytes a pixel may take when decoded: 8 bits of red, green, blue
/// and a fourth.
const BYTES_A_PIXEL: u64 = 4;

/// A photo as it is looked at.
pub(super) struct Decoded {
    pub upright: DynamicImage,
    pub taken: Option<NaiveDateTime>,
}

/// Decodes a picture that passes the checks, its longer side at most so long.
pub(super) fn decode(bytes: &[u8], longest: u32) -> Result<Decoded, AppError> {
    let mut reader = ImageReader::with_format(Cursor::new(bytes), check::format(bytes)?);
    let mut limits = Limits::default();
    limits.max_alloc = Some(MOST_PIXELS * BYTES_A_PIXEL);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().map_err(failed)?;
    let (width, height) = decoder.dimensions();
    let pixels = u64::from(width) * u64::from(height);
    if pixels > MOST_PIXELS || decoder.total_bytes() > MOST_PIXELS * BYTES_A_PIXEL {
        return Err(check::most(
            "photo_too_many_pixels",
            "megapixels",
            MOST_PIXELS as f64,
        ));
    }
    let taken = decoder.exif_metadata().ok().flatten().and_then(taken);
    let turned = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    let picture = DynamicImage::from_decoder(decoder).map_err(failed)?;
    let mut upright = on_white(within(picture, longest));
    upright.apply_orientation(turned);
    Ok(Decoded { upright, taken })
}

fn failed(error: ImageError) -> AppError {
    match error {
        ImageError::IoError(error) if error.kind() == ErrorKind::UnexpectedEof => {
            AppError::plain("photo_truncated")
        }
        ImageError::Limits(_) => {
            check::most("photo_too_many_pixels", "megapixels", MOST_PIXELS as f64)
        }
        _ => AppError::plain("photo_damaged"),
    }
}

/// When the camera says it was taken (Exif 2.32, 4.6.5: DateTimeOriginal).
fn taken(exif: Vec<u8>) -> Option<NaiveDateTime> {
    let exif = Reader::new().read_raw(exif).ok()?;
    let Value::Ascii(texts) = &exif.get_field(Tag::DateTimeOriginal, In::PRIMARY)?.value else {
        return None;
    };
    let text = str::from_utf8(texts.first()?).ok()?;
    NaiveDateTime::parse_from_str(text.trim(), "%Y:%m:%d %H:%M:%S").ok()
}

/// The same with its longer side at most so long.
///
/// The filter keeps four floats for each pixel of a line it has shortened, so
/// that what is far larger is first made smaller by whole averages.
pub(super) fn within(mut picture: DynamicImage, longest: u32) -> DynamicImage {
    let side = |picture: &DynamicImage| picture.width().max(picture.height());
    let twice = longest.saturating_mul(2);
    if side(&picture) > twice {
        picture = picture.thumbnail(twice, twice);
    }
    if side(&picture) > longest {
        picture = picture.resize(longest, longest, FilterType::Triangle);
    }
    picture
}

/// What is see-through becomes white: a JPEG has no fourth channel.
fn on_white(picture: DynamicImage) -> DynamicImage {
    if !picture.color().has_alpha() {
        return DynamicImage::ImageRgb8(picture.into_rgb8());
    }
    let seen = picture.into_rgba8();
    let mut flat = RgbImage::new(seen.width(), seen.height());
    for (to, from) in flat.pixels_mut().zip(seen.pixels()) {
        let [r, g, b, a] = from.0.map(u16::from);
        let over = |colour: u16| u8::try_from((colour * a + 255 * (255 - a)) / 255).unwrap_or(255);
        *to = Rgb([over(r), over(g), over(b)]);
    }
    DynamicImage::ImageRgb8(flat)
}

/// As JPEG, without metadata.
pub(super) fn jpeg(picture: &DynamicImage) -> Result<Vec<u8>, AppError> {
    let mut bytes = Vec::new();
    JpegEncoder::new_with_quality(&mut bytes, QUALITY)
        .encode_image(picture)
        .map_err(|_| AppError::plain("photo_damaged"))?;
    Ok(bytes)
}

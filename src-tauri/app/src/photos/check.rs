//! What a file is, by its first bytes and its structure; nothing is decoded.

use crate::error::AppError;
use crate::photos::MOST_BYTES;
use crate::say::Arg;
use image::ImageFormat;

const MEGA: f64 = 1_000_000.0;

/// An error with the most there may be.
pub(super) fn most(code: &str, name: &str, most: f64) -> AppError {
    let mut error = AppError::plain(code);
    error.say = error.say.with(name, Arg::Number(most / MEGA));
    error
}

/// The format of a whole, still picture.
pub(super) fn format(bytes: &[u8]) -> Result<ImageFormat, AppError> {
    if bytes.is_empty() {
        return Err(AppError::plain("photo_empty"));
    }
    if bytes.len() > MOST_BYTES {
        return Err(most("photo_too_large", "megabytes", MOST_BYTES as f64));
    }
    let found = if bytes.starts_with(b"\xFF\xD8\xFF") {
        Some((ImageFormat::Jpeg, jpeg(bytes)))
    } else if bytes.starts_with(b"\x89PNG\r\n\x1A\n") {
        Some((ImageFormat::Png, png(bytes)))
    } else if bytes.starts_with(b"RIFF") && bytes.get(8..12) == Some(b"WEBP") {
        Some((ImageFormat::WebP, webp(bytes)))
    } else {
        None
    };
    match found {
        Some((format, Shape::Whole)) => Ok(format),
        Some((_, Shape::Animated)) => Err(AppError::plain("photo_animated")),
        Some((_, Shape::CutShort)) => Err(AppError::plain("photo_truncated")),
        None if other_picture(bytes) => Err(AppError::plain("photo_other_format")),
        None => Err(AppError::plain("photo_not_a_picture")),
    }
}

/// GIF, BMP, TIFF, and the family of HEIC and AVIF (ISO/IEC 14496-12).
fn other_picture(bytes: &[u8]) -> bool {
    let starts: [&[u8]; 4] = [b"GIF8", b"BM", b"II*\0", b"MM\0*"];
    starts.iter().any(|start| bytes.starts_with(start)) || bytes.get(4..8) == Some(b"ftyp")
}

enum Shape {
    Whole,
    Animated,
    CutShort,
}

/// Walks the segments of a JPEG (ITU-T T.81, annex B) to its end. What follows
/// the end is not looked at: phones hang more pictures on.
fn jpeg(bytes: &[u8]) -> Shape {
    let mut rest = bytes.get(2..).unwrap_or_default();
    let mut scanned = false;
    loop {
        let Some(at) = rest.iter().position(|byte| *byte == 0xFF) else {
            return Shape::CutShort;
        };
        let Some(after) = rest.get(at + 1..) else {
            return Shape::CutShort;
        };
        let Some((marker, after)) = after.split_first() else {
            return Shape::CutShort;
        };
        rest = match marker {
            // A filling byte: the marker is still to come.
            0xFF => rest.get(at + 1..).unwrap_or_default(),
            // A byte of the scan, or a place to start again.
            0x00 | 0x01 | 0xD0..=0xD7 => after,
            0xD9 if scanned => return Shape::Whole,
            0xD9 => return Shape::CutShort,
            _ => {
                scanned |= *marker == 0xDA;
                let Some([high, low]) = after.first_chunk() else {
                    return Shape::CutShort;
                };
                match after.get(usize::from(u16::from_be_bytes([*high, *low]))..) {
                    Some(after) => after,
                    None => return Shape::CutShort,
                }
            }
        };
    }
}

/// Walks the chunks of a PNG (W3C PNG, third edition, 5.3) to its end.
fn png(bytes: &[u8]) -> Shape {
    let mut rest = bytes.get(8..).unwrap_or_default();
    loop {
        let Some((length, after)) = rest.split_first_chunk() else {
            return Shape::CutShort;
        };
        match after.get(..4) {
            Some(b"acTL") => return Shape::Animated,
            Some(b"IEND") if after.len() >= 8 => return Shape::Whole,
            Some(_) => {}
            None => return Shape::CutShort,
        }
        let whole = usize::try_from(u32::from_be_bytes(*length))
            .ok()
            .and_then(|length| length.checked_add(8))
            .and_then(|length| after.get(length..));
        match whole {
            Some(next) => rest = next,
            None => return Shape::CutShort,
        }
    }
}

/// Reads the head of a WebP file (RFC 9649, 2.4 and 2.7).
fn webp(bytes: &[u8]) -> Shape {
    let length = bytes.get(4..).and_then(|it| it.first_chunk());
    let length = length.and_then(|it| usize::try_from(u32::from_le_bytes(*it)).ok());
    if length.is_none_or(|length| bytes.len() - 8 < length) {
        return Shape::CutShort;
    }
    let extended = bytes.get(12..16) == Some(b"VP8X");
    let flags = bytes.get(20).copied().unwrap_or(0);
    if extended && flags & 0b10 != 0 {
        return Shape::Animated;
    }
    Shape::Whole
}

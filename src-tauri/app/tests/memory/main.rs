//! How much memory a photo may take, measured over all that is allocated. In a
//! binary of its own with one test: what others allocate would count too.
#![cfg(test)]

use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::PngEncoder;
use image::codecs::webp::WebPEncoder;
use image::{ExtendedColorType, ImageEncoder, Rgb, RgbImage};
use peak_alloc::PeakAlloc;
use plumule_app::photos::{MOST_BYTES, MOST_PIXELS, Photo};

#[global_allocator]
static MEMORY: PeakAlloc = PeakAlloc;

const MB: usize = 1_000_000;
/// What is turned away by its size or its head may cost no more beside the
/// file itself: the tables of a decoder.
const TURNED_AWAY: usize = MB;

/// What came of a file, and the most memory that was held for it at a time
/// beside the file itself.
fn held(file: &[u8]) -> (Result<Photo, String>, usize) {
    MEMORY.reset_peak_usage();
    let before = MEMORY.current_usage();
    let photo = Photo::new(file).map_err(|error| error.code);
    (photo, MEMORY.peak_usage() - before)
}

#[track_caller]
fn is_turned_away(file: &[u8], code: &str) {
    let (photo, peak) = held(file);
    assert_eq!(photo.map(drop), Err(code.to_owned()));
    assert!(peak < TURNED_AWAY, "{code}: {peak} bytes");
}

/// The lower bound is what the decoded picture takes at the least: the meter is
/// no dummy.
#[track_caller]
fn is_taken_in(file: &[u8], least: usize, most: usize) {
    let (photo, peak) = held(file);
    assert!(photo.is_ok_and(|it| !it.jpeg().is_empty()));
    assert!((least..=most).contains(&peak), "{peak} bytes");
}

fn leaf(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        let grain = (x * 31 + y * 17 + x * y % 97) % 64;
        Rgb([60, 120 + u8::try_from(grain).unwrap(), 40])
    })
}

fn jpeg(picture: &RgbImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    JpegEncoder::new_with_quality(&mut bytes, 90)
        .encode_image(picture)
        .unwrap();
    bytes
}

/// A JPEG whose head claims another size (ITU-T T.81, B.2.2: the frame's height
/// and width follow its precision).
fn claiming(jpeg: &[u8], width: u16, height: u16) -> Vec<u8> {
    let mut file = jpeg.to_vec();
    let frame = file.windows(2).position(|it| it == [0xFF, 0xC0]).unwrap();
    file[frame + 5..frame + 7].copy_from_slice(&height.to_be_bytes());
    file[frame + 7..frame + 9].copy_from_slice(&width.to_be_bytes());
    file
}

/// The same as a progressive one (T.81, table B.1: SOF2), whose coefficients
/// are all held until the end.
fn progressive(jpeg: &[u8]) -> Vec<u8> {
    let mut file = jpeg.to_vec();
    let frame = file.windows(2).position(|it| it == [0xFF, 0xC0]).unwrap();
    file[frame + 1] = 0xC2;
    file
}

fn with(encode: impl FnOnce(&mut Vec<u8>)) -> Vec<u8> {
    let mut bytes = Vec::new();
    encode(&mut bytes);
    bytes
}

#[test]
fn no_photo_takes_more_memory_than_it_may() {
    let picture = leaf(64, 64);
    let small = jpeg(&picture);
    let rgb = ExtendedColorType::Rgb8;
    let mut png = with(|to| {
        PngEncoder::new(to)
            .write_image(&picture, 64, 64, rgb)
            .unwrap()
    });
    let webp = with(|to| {
        let encoder = WebPEncoder::new_lossless(to);
        encoder.write_image(&picture, 64, 64, rgb).unwrap();
    });

    // A hundred megapixels by the head.
    is_turned_away(&claiming(&small, 10_000, 10_000), "photo_too_many_pixels");
    is_turned_away(
        &progressive(&claiming(&small, 10_000, 10_000)),
        "photo_too_many_pixels",
    );
    // W3C PNG, third edition, 11.2.1: width and height begin the header, whose
    // checksum stands after its thirteen bytes.
    png[16..24].copy_from_slice(&[0, 0, 0x27, 0x10, 0, 0, 0x27, 0x10]);
    let sum = crc(&png[12..29]).to_be_bytes();
    png[29..33].copy_from_slice(&sum);
    is_turned_away(&png, "photo_too_many_pixels");
    // Cut short, and what is no picture at all.
    is_turned_away(&webp[..webp.len() / 2], "photo_truncated");
    is_turned_away(&vec![0xFF; MOST_BYTES + 1], "photo_too_large");
    is_turned_away(&vec![0; MOST_BYTES], "photo_not_a_picture");
    is_turned_away(
        &[&small[..400], &vec![0; MOST_BYTES - 400]].concat(),
        "photo_truncated",
    );

    // The most pixels there may be: in a picture as cameras write it, in one of
    // a single line, which a filter of floats would make sixteen times as large,
    // and in the kind of JPEG that holds all its coefficients.
    let most = usize::try_from(MOST_PIXELS).unwrap();
    let camera = claiming(&small, 8_000, 5_000);
    let one_line = with(|to| {
        let (line, grey) = (vec![0; most], ExtendedColorType::L8);
        let width = u32::try_from(most).unwrap();
        PngEncoder::new(to)
            .write_image(&line, width, 1, grey)
            .unwrap();
    });
    is_taken_in(&camera, 3 * most, 4 * most);
    is_taken_in(&one_line, most, 4 * most);
    is_taken_in(&progressive(&camera), 9 * most, 10 * most);

    // The largest file there may be, with what phones hang on behind the end.
    let mut file = jpeg(&leaf(4000, 3000));
    assert!(file.len() < MOST_BYTES);
    file.resize(MOST_BYTES, 0);
    is_taken_in(&file, 36 * MB, MOST_BYTES + 80 * MB);
}

/// The checksum of a PNG chunk (W3C PNG, third edition, annex D).
fn crc(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| {
            if crc & 1 == 1 {
                crc >> 1 ^ 0xEDB8_8320
            } else {
                crc >> 1
            }
        })
    })
}

//! Photos: what is taken in, how it comes out, and what is turned away.

use crate::Bench;
use crate::acts::{Sown, packet, place, sown};
use chrono::NaiveDateTime;
use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::PngEncoder;
use image::{DynamicImage, ExtendedColorType, ImageEncoder, Rgb, RgbImage, Rgba, RgbaImage};
use plumule_app::acts::Act;
use plumule_app::photos::{self, CODES, MOST_BYTES, OfPhoto, Photo};
use plumule_app::view::{Answer, PhotoView, PlantsRef};
use plumule_app::words::{key, known};
use std::fs;

/// A picture of the size, its left half red, its right half blue.
fn halves(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, _| {
        Rgb(if x < width / 2 {
            [220, 30, 30]
        } else {
            [30, 30, 220]
        })
    })
}

fn jpeg(picture: &RgbImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    JpegEncoder::new_with_quality(&mut bytes, 90)
        .encode_image(picture)
        .unwrap();
    bytes
}

fn png(picture: &RgbImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    PngEncoder::new(&mut bytes)
        .write_image(
            picture,
            picture.width(),
            picture.height(),
            ExtendedColorType::Rgb8,
        )
        .unwrap();
    bytes
}

fn webp(picture: &RgbImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    image::codecs::webp::WebPEncoder::new_lossless(&mut bytes)
        .write_image(
            picture,
            picture.width(),
            picture.height(),
            ExtendedColorType::Rgb8,
        )
        .unwrap();
    bytes
}

/// A field of an image file directory (TIFF 6.0, section 2), big end first.
fn field(tag: u16, kind: u16, count: u32, value: [u8; 4]) -> Vec<u8> {
    [
        tag.to_be_bytes().to_vec(),
        kind.to_be_bytes().to_vec(),
        count.to_be_bytes().to_vec(),
        value.to_vec(),
    ]
    .concat()
}

/// Exif (2.32, 4.6): turned by a quarter, taken at a time, and a position.
fn exif() -> Vec<u8> {
    let tiff = [
        b"MM\0*\0\0\0\x08".to_vec(),
        3_u16.to_be_bytes().to_vec(),
        field(0x0112, 3, 1, [0, 6, 0, 0]),
        field(0x8769, 4, 1, 50_u32.to_be_bytes()),
        field(0x8825, 4, 1, 88_u32.to_be_bytes()),
        vec![0; 4],
        // At 50.
        1_u16.to_be_bytes().to_vec(),
        field(0x9003, 2, 20, 68_u32.to_be_bytes()),
        vec![0; 4],
        // At 68.
        b"2026:04:18 17:45:09\0".to_vec(),
        // At 88: north.
        1_u16.to_be_bytes().to_vec(),
        field(0x0001, 2, 2, *b"N\0\0\0"),
        vec![0; 4],
    ]
    .concat();
    [b"Exif\0\0".to_vec(), tiff].concat()
}

/// With a segment after the start of the file.
fn with_segment(jpeg: &[u8], marker: u8, what: &[u8]) -> Vec<u8> {
    let length = u16::try_from(what.len() + 2).unwrap().to_be_bytes();
    [&jpeg[..2], &[0xFF, marker], &length, what, &jpeg[2..]].concat()
}

fn decoded(bytes: &[u8]) -> RgbImage {
    image::load_from_memory(bytes).unwrap().into_rgb8()
}

#[track_caller]
fn is_turned_away(bytes: &[u8], code: &str) {
    let error = Photo::new(bytes).map(drop).unwrap_err();
    assert_eq!(error.code, code);
}

#[test]
fn a_photo_is_turned_upright_and_loses_all_but_its_time() {
    let file = with_segment(&jpeg(&halves(80, 40)), 0xE1, &exif());
    let file = with_segment(&file, 0xFE, b"a remark");
    let photo = Photo::new(&file).unwrap();
    let at: NaiveDateTime = "2026-04-18T17:45:09".parse().unwrap();
    assert_eq!(photo.taken(), Some(at));
    for gone in [&b"Exif"[..], b"2026", b"remark"] {
        assert!(!photo.jpeg().windows(gone.len()).any(|it| it == gone));
    }
    // Value 6: the first row is the right-hand side; so left comes to the top.
    let upright = decoded(photo.jpeg());
    assert_eq!(upright.dimensions(), (40, 80));
    let Rgb([red, _, blue]) = *upright.get_pixel(20, 10);
    assert!(red > blue);
    let Rgb([red, _, blue]) = *upright.get_pixel(20, 70);
    assert!(blue > red);
}

#[test]
fn a_large_photo_is_made_smaller_and_a_small_one_left() {
    let photo = Photo::new(&jpeg(&halves(2000, 1000))).unwrap();
    assert_eq!(decoded(photo.jpeg()).dimensions(), (1600, 800));
    let photo = Photo::new(&jpeg(&halves(300, 200))).unwrap();
    assert_eq!(decoded(photo.jpeg()).dimensions(), (300, 200));
}

#[test]
fn png_and_webp_are_read_and_what_is_see_through_is_white() {
    let picture = halves(60, 30);
    for file in [png(&picture), webp(&picture)] {
        let photo = Photo::new(&file).unwrap();
        assert_eq!(photo.taken(), None);
        assert_eq!(decoded(photo.jpeg()).dimensions(), (60, 30));
    }
    let clear = RgbaImage::from_pixel(16, 16, Rgba([0, 0, 0, 0]));
    let mut bytes = Vec::new();
    DynamicImage::ImageRgba8(clear)
        .write_with_encoder(PngEncoder::new(&mut bytes))
        .unwrap();
    let white = decoded(Photo::new(&bytes).unwrap().jpeg());
    assert_eq!(*white.get_pixel(8, 8), Rgb([255, 255, 255]));
}

#[test]
fn each_broken_file_is_turned_away_in_its_own_words() {
    let (jpeg, png, webp) = (
        jpeg(&halves(64, 64)),
        png(&halves(64, 64)),
        webp(&halves(64, 64)),
    );
    is_turned_away(b"", "photo_empty");
    is_turned_away(&vec![0xFF; MOST_BYTES + 1], "photo_too_large");
    is_turned_away(b"PK\x03\x04 a zip by another name", "photo_not_a_picture");
    is_turned_away(b"sown on Tuesday", "photo_not_a_picture");
    is_turned_away(b"GIF89a", "photo_other_format");
    is_turned_away(b"\0\0\0\x18ftypheic", "photo_other_format");
    for whole in [&jpeg, &png, &webp] {
        Photo::new(whole).unwrap();
        for part in [4, 2] {
            is_turned_away(
                &whole[..whole.len() - whole.len() / part],
                "photo_truncated",
            );
        }
        is_turned_away(&whole[..whole.len() - 2], "photo_truncated");
    }
    // The thumbnail in a photo's Exif has an end of its own.
    let inner = with_segment(&jpeg, 0xE1, &[b"Exif\0\0", &jpeg[..]].concat());
    is_turned_away(&inner[..inner.len() - 40], "photo_truncated");
    // W3C PNG, third edition, 11.3.4.1: animation control.
    let animated = [&png[..33], &[0, 0, 0, 8], b"acTL", &[0; 12], &png[33..]].concat();
    is_turned_away(&animated, "photo_animated");
    // RFC 9649, 2.7.1: the extended head with its animation flag.
    let head = [b"VP8X\x0a\0\0\0\x02\0\0\0", &[63, 0, 0, 63, 0, 0][..]].concat();
    let size = u32::try_from(webp.len() - 8 + head.len()).unwrap();
    let moving = [
        b"RIFF",
        &size.to_le_bytes()[..],
        b"WEBP",
        &head,
        &webp[12..],
    ]
    .concat();
    is_turned_away(&moving, "photo_animated");
    let mut damaged = png;
    damaged[45] ^= 0xFF;
    is_turned_away(&damaged, "photo_damaged");
}

#[test]
fn a_head_that_claims_a_hundred_megapixels_is_believed_and_turned_away() {
    let mut large = jpeg(&halves(64, 64));
    // ITU-T T.81, B.2.2: the frame's height and width follow its precision.
    let frame = large.windows(2).position(|it| it == [0xFF, 0xC0]).unwrap();
    large[frame + 5..frame + 9].copy_from_slice(&[0x27, 0x10, 0x27, 0x10]);
    is_turned_away(&large, "photo_too_many_pixels");
}

#[test]
fn every_reason_has_its_words() {
    for code in CODES {
        assert!(known(&key("error", code)), "{code}");
    }
}

fn add(bench: &mut Bench, about: Option<&str>) -> String {
    let photo = Photo::new(&jpeg(&halves(600, 300))).unwrap();
    let of = OfPhoto {
        about: about.map(str::to_owned),
        ..OfPhoto::default()
    };
    let stamp = bench.stamp();
    match bench.app.add_photo(&stamp, &photo, &of).unwrap() {
        Answer::Written { act, .. } => act,
        Answer::AsksFirst { questions } => panic!("asks first: {questions:?}"),
    }
}

fn listed(bench: &Bench, about: Option<&str>) -> Vec<PhotoView> {
    bench.app.photos(about).unwrap()
}

#[test]
fn a_photo_taken_now_is_named_later_taken_out_and_brought_back() {
    let mut bench = Bench::new();
    let (_, sill) = bench.done(place("Sill", "windowsill", (14.0, 22.0), "bright"));
    let about = format!("place:{sill}");
    add(&mut bench, None);
    let [photo] = &listed(&bench, None)[..] else {
        panic!("it waits to be named");
    };
    assert!(!photo.missing);
    let entry = photo.entry.clone();
    bench.done(Act::NamePhoto {
        photo: entry.clone(),
        about: about.clone(),
    });
    assert!(listed(&bench, None).is_empty());
    assert_eq!(listed(&bench, Some(&about)).len(), 1);

    let stamp = bench.stamp();
    let Ok(Answer::Written { act, .. }) = bench.app.remove_photo(&stamp, &entry) else {
        panic!("it asks nothing");
    };
    assert!(listed(&bench, Some(&about)).is_empty());
    let stamp = bench.stamp();
    bench.app.undo(&stamp, &act, false).unwrap();
    assert_eq!(listed(&bench, Some(&about)).len(), 1);
    assert_eq!(
        bench.app.remove_photo(&stamp, &sill).unwrap_err().code,
        "bad_request"
    );
}

#[test]
fn a_photo_of_a_packet_is_seen_large_and_small() {
    let mut bench = Bench::new();
    let (_, id) = bench.done(Act::AddPacket { packet: packet() });
    let about = format!("packet:{id}");
    add(&mut bench, Some(&about));
    let photo = listed(&bench, Some(&about)).remove(0).photo;
    let home = bench.home.path();
    let whole = photos::read(home, &photo, false).unwrap();
    assert_eq!(decoded(&whole).dimensions(), (600, 300));
    let small = photos::read(home, &photo, true).unwrap();
    assert_eq!(decoded(&small).dimensions(), (400, 200));
    // Made again when it is missing.
    fs::remove_dir_all(home.join("thumbnails")).unwrap();
    assert_eq!(
        photos::read(home, &photo, true).map(|it| decoded(&it).dimensions()),
        Some((400, 200))
    );
    assert!(
        home.join("thumbnails")
            .join(format!("{photo}.jpg"))
            .exists()
    );

    fs::remove_file(home.join(format!("journal/photos/{photo}"))).unwrap();
    assert_eq!(photos::read(home, &photo, false), None);
    assert!(listed(&bench, Some(&about)).remove(0).missing);
}

#[test]
fn a_photo_of_a_sowing_stands_with_it_and_in_its_trays_timeline() {
    let mut this = sown();
    let PlantsRef::Sowing(id) = this.plants.clone() else {
        panic!("it was sown");
    };
    let about = format!("sowing:{id}");
    add(&mut this.bench, Some(&about));
    let of_it = listed(&this.bench, Some(&about));
    let seen = |this: &mut Sown| -> Vec<PhotoView> {
        let lines = this.page().timeline.into_iter();
        lines.filter_map(|line| line.photo).collect()
    };
    assert_eq!((of_it.len(), seen(&mut this)), (1, of_it.clone()));
    let stamp = this.bench.stamp();
    let removed = this.bench.app.remove_photo(&stamp, &of_it[0].entry);
    assert!(matches!(removed, Ok(Answer::Written { .. })));
    assert!(listed(&this.bench, Some(&about)).is_empty());
    assert!(seen(&mut this).is_empty());
}

#[test]
fn a_withdrawn_photo_goes_after_thirty_days_with_its_thumbnail() {
    let mut bench = Bench::new();
    let act = add(&mut bench, None);
    let photo = listed(&bench, None).remove(0).photo;
    let stamp = bench.stamp();
    bench.app.undo(&stamp, &act, false).unwrap();
    bench.wait_days(29);
    let stamp = bench.stamp();
    assert_eq!(photos::sweep(bench.home.path(), &stamp).unwrap(), 0);
    bench.wait_days(1);
    let stamp = bench.stamp();
    assert_eq!(photos::sweep(bench.home.path(), &stamp).unwrap(), 1);
    assert_eq!(photos::read(bench.home.path(), &photo, true), None);
    assert!(
        !bench
            .home
            .path()
            .join(format!("thumbnails/{photo}.jpg"))
            .exists()
    );
}

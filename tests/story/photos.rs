//! Why: a photo must not tell where a garden is, and a label must open its
//! tray. What comes out is read by programs of others: ExifTool, ZBar, Poppler.
//! And what is no good photo is turned away, each in its own words, and leaves
//! nothing behind.

use crate::growing::{open_tray, tomatoes};
use crate::real::{Window, story};
use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::PngEncoder;
use image::{Rgb, RgbImage};
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// What a program prints.
fn told(program: &str, args: &[&Path]) -> String {
    let output = Command::new(program).args(args).output();
    let output = output.unwrap_or_else(|e| panic!("{program} does not start: {e}"));
    String::from_utf8(output.stdout).unwrap()
}

/// What ExifTool reads in a picture.
fn metadata(picture: &Path) -> Value {
    let told = told("exiftool", &["-json".as_ref(), "-n".as_ref(), picture]);
    let mut pictures: Vec<Value> = serde_json::from_str(&told).unwrap();
    pictures.remove(0)
}

/// A photo as a phone takes it: lying on its side, with a position.
pub fn photo(folder: &Path) -> PathBuf {
    let picture = RgbImage::from_fn(900, 600, |x, _| {
        Rgb(if x < 450 { [90, 140, 70] } else { [60, 45, 35] })
    });
    let mut bytes = Vec::new();
    JpegEncoder::new(&mut bytes).encode_image(&picture).unwrap();
    let path = folder.join("seedlings.jpg");
    fs::write(&path, bytes).unwrap();
    let written = Command::new("exiftool")
        .args(["-q", "-overwrite_original", "-n"])
        .args(["-GPSLatitude=47.5", "-GPSLatitudeRef=N", "-Orientation=6"])
        .args(["-Make=A camera", "-DateTimeOriginal=2026:03:01 17:45:00"])
        .arg(&path)
        .status();
    assert!(written.unwrap().success());
    path
}

/// What is in the journal's folder of photos.
fn kept(journals: &Path) -> Vec<PathBuf> {
    let folder = journals.join("own/journal/photos");
    let files = fs::read_dir(folder).unwrap();
    files.map(|file| file.unwrap().path()).collect()
}

/// Takes a file in by a field.
pub async fn choose(window: &Window, label: &str, file: &Path) {
    let field = window.await_one("field", label, &[]).await;
    field.send_keys(file.to_str().unwrap()).await.unwrap();
}

#[test]
fn a_photo_loses_its_position_and_a_label_opens_its_tray() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        open_tray(&window, &code).await;
        let page = format!("Tray {code}");

        let file = photo(&world.saved());
        assert_eq!(metadata(&file)["GPSLatitude"], 47.5);
        choose(&window, "Choose a photo", &file).await;
        window.sees("Photo taken").await;
        window.await_one("button", "Photo of", &[]).await;
        window.draws("main img").await;
        let [stored] = &kept(&world.journals())[..] else {
            panic!("one photo is kept")
        };
        let left = metadata(stored);
        assert_eq!(
            (&left["ImageWidth"], &left["ImageHeight"]),
            (&600.into(), &900.into())
        );
        for gone in ["GPSLatitude", "Orientation", "Make", "DateTimeOriginal"] {
            assert!(left[gone].is_null(), "{gone} is left: {left}");
        }

        window.follow("Print its label").await;
        window.press("Save as PDF").await;
        window.sees("Saved. Print it at full size").await;
        let pdf = world.saved().join("labels.pdf");
        let words = told("pdftotext", &["-layout".as_ref(), &pdf, "-".as_ref()]);
        for part in [code.as_str(), "Tomato", "2 Mar 2026"] {
            assert!(words.contains(part), "{part} does not stand on: {words}");
        }
        let sheet = world.saved().join("sheet");
        let drawn = ["-png", "-singlefile", "-r", "200"].map(Path::new);
        told("pdftoppm", &[&drawn[..], &[&pdf, &sheet]].concat());
        let sheet = sheet.with_extension("png");
        let square = told("zbarimg", &["--quiet".as_ref(), "--raw".as_ref(), &sheet]);
        assert!(square.starts_with("PLUMULE:TRAY:"), "read: {square}");

        window.go("Trays").await;
        window.follow("Find by label").await;
        choose(&window, "Choose a photo of it", &sheet).await;
        window.await_one("heading", &page, &[]).await;
        window.go("Trays").await;
        window.follow("Find by label").await;
        window.fill("Code on the label", "Z99").await;
        window.press("Find").await;
        window.sees("No tray here has the code Z99.").await;
        window.fill("Code on the label", &code.to_lowercase()).await;
        window.press("Find").await;
        window.await_one("heading", &page, &[]).await;
        window.close().await;
    });
}

/// Files that are no good photo, and the beginning of what is said of each.
fn broken() -> Vec<(&'static str, Vec<u8>, &'static str)> {
    let picture = RgbImage::from_pixel(64, 64, Rgb([90, 140, 70]));
    let mut jpeg = Vec::new();
    JpegEncoder::new(&mut jpeg).encode_image(&picture).unwrap();
    let mut png = Vec::new();
    picture
        .write_with_encoder(PngEncoder::new(&mut png))
        .unwrap();
    // ITU-T T.81, B.2.2: the frame's height and width follow its precision.
    let mut vast = jpeg.clone();
    let frame = vast.windows(2).position(|it| it == [0xFF, 0xC0]).unwrap();
    vast[frame + 5..frame + 9].copy_from_slice(&[0x27, 0x10, 0x27, 0x10]);
    // W3C PNG, third edition, 11.3.4.1: animation control, after the header.
    let moving = [&png[..33], &[0, 0, 0, 8], b"acTL", &[0; 12], &png[33..]].concat();
    let cut = jpeg[..jpeg.len() / 2].to_vec();
    vec![
        ("empty.jpg", Vec::new(), "That file is empty."),
        ("cut.jpg", cut, "That photo is cut short"),
        (
            "zip.jpg",
            b"PK\x05\x06".repeat(40),
            "That file is not a photo.",
        ),
        ("vast.jpg", vast, "larger than 40 megapixels"),
        ("moving.png", moving, "That picture moves."),
        (
            "huge.jpg",
            vec![0xFF; 25_000_001],
            "That file is over 25 MB.",
        ),
    ]
}

#[test]
fn a_packet_and_what_was_sown_have_photos_and_broken_files_leave_nothing() {
    story(async |world| {
        let (window, code) = tomatoes(world).await;
        window.go("Seed").await;
        window.follow("Tomato ‘Ruby Lantern’").await;
        window
            .await_one("heading", "Photos of the packet", &[])
            .await;
        for (name, bytes, says) in broken() {
            let file = world.saved().join(name);
            fs::write(&file, bytes).unwrap();
            choose(&window, "Choose a photo", &file).await;
            window.sees(says).await;
            assert_eq!(kept(&world.journals()), [PathBuf::new(); 0], "{name}");
            assert_eq!(window.count("button", "Photo of", &[]).await, 0, "{name}");
        }

        let file = photo(&world.saved());
        choose(&window, "Choose a photo", &file).await;
        window.sees("Photo taken").await;
        window.draws("main img").await;
        open_tray(&window, &code).await;
        window.press("Photograph Tomato").await;
        choose(&window, "Choose a photo: Tomato", &file).await;
        window.sees("Photo taken").await;
        window.await_one("button", "Photo of", &[]).await;
        window.press("Photo of").await;
        window.press("Delete").await;
        window.sees("was withdrawn").await;
        window.has_no("button", "Photo of").await;
        window.press("Undo").await;
        window.await_one("button", "Photo of", &[]).await;
        window.close().await;

        // Both are there when the app is opened again.
        let window = world.open(&[]).await;
        open_tray(&window, &code).await;
        window.await_one("button", "Photo of", &[]).await;
        window.go("Seed").await;
        window.follow("Tomato ‘Ruby Lantern’").await;
        window.await_one("button", "Photo of", &[]).await;
        window.close().await;
    });
}

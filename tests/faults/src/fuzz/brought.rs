//! Decoders of what a grower brings: tables of packets, records of minima and
//! photos.

use crate::fuzz::targets::{as_it_adds_up, folder};
use crate::writes::stamp;
use plumule_app::photos::{self, Photo};
use plumule_app::view::{FrostCsvOptions, ImportForm};
use plumule_app::{App, AppError, labels};
use plumule_journal::Journal;

/// One of these, or the fault would be sought elsewhere.
fn said(error: &AppError, known: &[&str]) -> String {
    assert!(known.contains(&error.code.as_str()), "{error:?}");
    error.code.clone()
}

/// What a table is said to bring is what it brings, once.
pub fn packets(input: &[u8]) -> String {
    let known = [
        "import_too_large",
        "import_not_text",
        "import_too_many",
        "import_empty",
        "nothing_to_write",
    ];
    let place = folder();
    let mut app = App::open(place.path(), &stamp(0)).unwrap();
    app.begin(&stamp(1)).unwrap();
    let form = ImportForm::default();
    let before = app.seed(&stamp(2)).unwrap().packets.len();
    let view = match app.read_packets(&stamp(2), input, &form) {
        Ok(view) => view,
        Err(error) => return said(&error, &known),
    };
    let brought = app.import_packets(&stamp(3), input, &form);
    let after = app.seed(&stamp(4)).unwrap();
    let answer = match brought {
        Ok(_) => format!("{} packets, {} bad lines", view.packets, view.bad_lines),
        Err(error) => {
            assert_eq!(view.packets, 0, "{error:?}");
            said(&error, &known)
        }
    };
    let came = after.packets.len() - before;
    assert_eq!(came, view.packets as usize);
    let again = app.read_packets(&stamp(5), input, &form).unwrap();
    assert_eq!(again.packets, 0, "the same packet twice");
    drop(app);
    as_it_adds_up(&mut Journal::open(place.path(), &stamp(6)).unwrap());
    let kinds: Vec<_> = view
        .bad
        .iter()
        .map(|line| line.what.code.as_str())
        .collect();
    format!("{answer}: {}", kinds.join(" "))
}

/// A record is read the same way whether its columns are found or told.
pub fn minima(input: &[u8]) -> String {
    let known = [
        "frost_csv_too_large",
        "frost_csv_empty",
        "frost_csv_no_days",
        "frost_csv_no_minima",
    ];
    let place = folder();
    let app = App::open(place.path(), &stamp(0)).unwrap();
    match app.frost_preview(input, &FrostCsvOptions::default()) {
        Ok(found) => {
            let told = app.frost_preview(input, &found.read_with).unwrap();
            assert_eq!(told, found);
            assert!(found.bad.len() <= found.bad_lines as usize);
            let codes: Vec<_> = found
                .bad
                .iter()
                .map(|line| line.what.code.as_str())
                .collect();
            format!(
                "{} days, odds {:?}: {codes:?}",
                found.days,
                found.odds.is_some()
            )
        }
        Err(error) => said(&error, &known),
    }
}

/// A picture comes out without what was written beside it, and comes in again.
pub fn photo(input: &[u8]) -> String {
    match Photo::new(input) {
        Ok(photo) => {
            let has = |words: &[u8]| photo.jpeg().windows(words.len()).any(|it| it == words);
            assert!(!has(b"Exif\0\0") && !has(b"http://ns.adobe.com/"));
            Photo::new(photo.jpeg()).unwrap();
            let read = labels::read_photo(input).map(|read| read.len());
            format!("a photo, labels: {read:?}")
        }
        Err(error) => said(&error, photos::CODES),
    }
}

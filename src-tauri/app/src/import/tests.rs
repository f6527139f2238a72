//! Tables as they come: separators, quotes, bad lines, bounds.

use super::table::{MAX_BYTES, Table};
use super::*;
use crate::view::{RangeView, StatedDaysForm};
use crate::words::known;
use tempfile::TempDir;

fn stamp() -> Stamp {
    Stamp {
        now: "2026-04-20T08:00:00Z".parse().unwrap(),
        zone: chrono_tz::Europe::London,
        entropy: [7; 16],
    }
}

fn read_as(bytes: &[u8], form: &ImportForm) -> Result<ImportView, AppError> {
    let home = TempDir::new().unwrap();
    let journal = Journal::open(home.path(), &stamp()).unwrap();
    view(&journal, &stamp(), bytes, form)
}

fn read(text: &str) -> ImportView {
    read_as(text.as_bytes(), &ImportForm::default()).unwrap()
}

fn refused(bytes: &[u8]) -> String {
    let error = read_as(bytes, &ImportForm::default()).unwrap_err();
    assert!(known(&error.say.key), "{}", error.say.key);
    error.code
}

/// What is wrong with which lines.
fn bad(view: &ImportView) -> Vec<(u32, &str)> {
    let lines = view.bad.iter();
    lines
        .inspect(|line| assert!(known(&line.what.say.key), "{}", line.what.say.key))
        .map(|line| (line.line, line.what.code.as_str()))
        .collect()
}

#[test]
fn columns_are_known_by_their_names_and_crops_by_theirs() {
    let view = read(
        "Plant;Variety;Year packed;Germination;Seeds;Stored;Treated;Shelf\r\n\
         Aubergine;Dusk;2024;85 %;1 200;damp_shed;yes;3\r\n\
         Scorzonera;Black Giant;;0,7;;;no;4\r\n",
    );
    let fields: Vec<&str> = view.columns.iter().map(|it| it.field.as_str()).collect();
    assert_eq!(
        fields,
        [
            "crop",
            "variety",
            "packed",
            "stated_germination",
            "seeds",
            "storage",
            "treated",
            ""
        ]
    );
    assert_eq!((view.packets, view.bad_lines), (2, 0));
    let first = &view.first[0].packet;
    assert_eq!(
        (first.crop.as_str(), first.packed_year),
        ("eggplant", Some(2024))
    );
    assert_eq!(
        (first.stated_germination, first.seeds),
        (Some(0.85), Some(1200))
    );
    assert!(first.treated && first.storage == "damp_shed");
    let second = &view.first[1].packet;
    assert_eq!(
        (second.crop.as_str(), second.stated_germination),
        ("Scorzonera", Some(0.7))
    );
    assert_eq!(second.storage, "cool_cupboard");
}

/// Written by Python's csv (3.11): `csv.writer(out, delimiter=";")`, its
/// defaults else, in UTF-8 with a byte order mark.
#[test]
fn quotes_are_read_as_python_writes_them() {
    let bytes = include_bytes!("python.csv");
    let table = Table::read(bytes).unwrap();
    assert_eq!(table.names, ["crop", "variety", "note"]);
    let rows: Vec<Vec<String>> = table
        .rows
        .into_iter()
        .map(|row| row.cells.unwrap())
        .collect();
    assert_eq!(
        rows,
        [
            ["tomato", "Say \"Amber\"", "a; b, c"],
            ["leek", "two\nlines", "  kept blanks  "],
            ["pea", "Grün ✿", ""],
            ["carrot", "\"", "\"\""],
        ]
    );
}

#[test]
fn each_bad_line_is_named_and_the_others_are_taken() {
    let text = b"crop,variety,year,seeds,storage,treated,sow by\n\
        tomato,A,2024,10,,,\n\
        ,B,2024,10,,,\n\
        leek,C,MMXX,10,,,\n\
        leek,D,1066,10,,,\n\
        leek,E,2024,ten,,,\n\
        leek,F,2024,0,,,\n\
        leek,G,2024,1,attic,,\n\
        leek,H,2024,1,,perhaps,\n\
        leek,I,2024,1,,,31/12/27\n\
        leek,\xff\xfe,2024,1,,,\n\
        \n\
        leek,J,2024,1,,,2027-12-31\n";
    let view = read_as(text, &ImportForm::default()).unwrap();
    assert_eq!(
        bad(&view),
        [
            (3, "no_crop"),
            (4, "no_year"),
            (5, "year_out_of_range"),
            (6, "no_number"),
            (7, "number_zero"),
            (8, "no_storage"),
            (9, "no_yes"),
            (10, "no_day"),
            (11, "not_text"),
        ]
    );
    let read: Vec<u32> = view.first.iter().map(|line| line.line).collect();
    assert_eq!((view.packets, read), (2, vec![2, 13]));
}

#[test]
fn what_was_kept_from_being_a_formula_is_as_it_was() {
    let view = read("crop,variety\npea,'=1+1\npea,'-x\npea,''tis\npea,'quoted\n");
    let varieties: Vec<&str> = view
        .first
        .iter()
        .map(|it| it.packet.variety.as_str())
        .collect();
    assert_eq!(varieties, ["=1+1", "-x", "'tis", "'quoted"]);
}

#[test]
fn the_same_twice_is_offered_not_added() {
    let text = "crop,variety,year\nCrème,Brûlée,2024\ncreme, BRULEE ,2024\nCrème,Brûlée,2025\n";
    let view = read(text);
    assert_eq!((view.packets, view.duplicates), (2, 1));
    let form = ImportForm {
        duplicates: true,
        ..ImportForm::default()
    };
    assert_eq!(read_as(text.as_bytes(), &form).unwrap().packets, 3);
}

#[test]
fn columns_can_be_matched_by_hand() {
    let text = "a\tb\tc\nNero\tkale\tshelf 3\n";
    assert_eq!(bad(&read(text)), [(2, "no_crop")]);
    let form = |columns: &[&str]| ImportForm {
        columns: columns.iter().map(|it| (*it).to_owned()).collect(),
        duplicates: false,
    };
    let view = read_as(text.as_bytes(), &form(&["variety", "crop", "note"])).unwrap();
    let packet = &view.first[0].packet;
    assert_eq!(
        (packet.crop.as_str(), packet.variety.as_str()),
        ("kale", "Nero")
    );
    assert_eq!(packet.note, "shelf 3");
    let error = read_as(text.as_bytes(), &form(&["flavour"])).unwrap_err();
    assert_eq!(error.code, "bad_request");
}

#[test]
fn bounds_are_kept() {
    assert_eq!(refused(b""), "import_empty");
    assert_eq!(refused(b"crop,variety\n"), "import_empty");
    assert_eq!(refused(b"PK\x03\x04\x00\x00"), "import_not_text");
    assert_eq!(refused(b"\xff\xfecrop\nleek\n"), "import_not_text");
    assert_eq!(refused(&vec![b'x'; MAX_BYTES + 1]), "import_too_large");
    let rows = |number: usize| format!("crop\n{}", "leek\n".repeat(number));
    assert_eq!(refused(rows(5_001).as_bytes()), "import_too_many");
    assert_eq!(read(&rows(5_000)).duplicates, 4_999);
    let long = format!(
        "crop,note\nleek,{}\nleek,{}\n",
        "é".repeat(10_000),
        "é".repeat(10_001)
    );
    assert_eq!(bad(&read(&long)), [(3, "too_long")]);
    let wide = format!("crop\nleek{}\n", ",".repeat(60));
    assert_eq!(bad(&read(&wide)), [(2, "too_many_columns")]);
}

#[test]
fn every_field_has_a_word() {
    for field in Field::ALL {
        assert!(
            known(&crate::words::key("import-field", field.key())),
            "{field:?}"
        );
        assert_eq!(Field::of_key(field.key()), Some(*field));
        assert_eq!(Field::of_name(field.key()), Some(*field));
    }
}

#[test]
fn stated_days_are_read_as_people_write_them() {
    let view = read(
        "Plant;Days;Soil temperature\r\n\
         Tomato;7-14;18-21 °C\r\n\
         Leek;10 to 20;\r\n\
         Pea;8;10\r\n\
         Carrot;soon;\r\n\
         Onion;9;warm\r\n\
         Beet;;15\r\n\
         Celery;30-20;\r\n",
    );
    let stated = |from, to, at: Option<(f64, f64)>| {
        let at = at.map(|(min_c, max_c)| RangeView { min_c, max_c });
        Some(StatedDaysForm { from, to, at })
    };
    let lines = view.first.iter().map(|line| line.packet.stated_days);
    assert_eq!(
        lines.collect::<Vec<_>>(),
        [
            stated(7, 14, Some((18.0, 21.0))),
            stated(10, 20, None),
            stated(8, 8, Some((10.0, 10.0))),
        ]
    );
    assert_eq!(
        bad(&view),
        [
            (5, "no_days"),
            (6, "no_range"),
            (7, "days_out_of_range"),
            (8, "days_out_of_range")
        ]
    );
}

/// A table as a German spreadsheet writes it: DIN 1355-1 days with dots,
/// decimal commas, threes parted by points (DIN 1333), semicolons between cells.
#[test]
fn a_german_table_is_read() {
    let view = read(
        "Pflanze;Sorte;Erntejahr;Abgefüllt;Haltbar bis;Keimfähigkeit;Keimdauer;Keimtemperatur;Anzahl;Lagerung;Gebeizt;F1;Bezugsquelle;Preis;Bemerkung;In Gebrauch\r\n\
         Möhre;Rote Laterne;;31.03.2025;31.12.2027;85,5 %;7 bis 14 Tage;18 bis 21,5 °C;1.200;im kühlen Schrank;nein;ja;Mühlenladen;2,95 €;aus der Mühle;ja\r\n\
         Tomate;Abend;2024;;1. 2. 28;0,8;10;20;25;dicht im Kühlschrank;Ja;Nein;;;;nein\r\n",
    );
    assert_eq!(bad(&view), []);
    assert!(view.columns.iter().all(|it| !it.field.is_empty()));
    let [first, second] = &view.first[..] else {
        panic!("two packets")
    };
    let it = &first.packet;
    assert_eq!((&*it.crop, &*it.variety), ("carrot", "Rote Laterne"));
    assert_eq!((it.packed_year, it.harvested_year), (Some(2025), None));
    assert_eq!(it.sow_by.unwrap().to_string(), "2027-12-31");
    assert_eq!((it.stated_germination, it.seeds), (Some(0.855), Some(1200)));
    let stated = it.stated_days.unwrap();
    assert_eq!((stated.from, stated.to), (7, 14));
    let (min_c, max_c) = (18.0, 21.5);
    assert_eq!(stated.at, Some(RangeView { min_c, max_c }));
    assert!(it.f1 && !it.treated && !first.retired);
    assert_eq!((&*it.storage, &*it.price), ("cool_cupboard", "2,95 €"));
    let it = &second.packet;
    assert_eq!((&*it.crop, it.harvested_year), ("tomato", Some(2024)));
    assert_eq!(it.sow_by.unwrap().to_string(), "2028-02-01");
    assert_eq!(it.stated_germination, Some(0.8));
    assert!(it.treated && !it.f1 && second.retired);
    assert_eq!(it.storage, "fridge_sealed");
}

#[test]
fn what_could_be_read_in_two_ways_is_asked_about() {
    let view = read(
        "Pflanze;Haltbar bis;Anzahl;Gebeizt;Keimdauer\n\
         Lauch;03/04/2027;;;\n\
         Lauch;31.02.2027;;;\n\
         Lauch;;1.20;;\n\
         Lauch;;12,5;;\n\
         Lauch;;1.2000;;\n\
         Lauch;;;vielleicht;\n\
         Lauch;;;;2 Wochen\n",
    );
    assert_eq!(
        bad(&view),
        [
            (2, "no_day"),
            (3, "no_day"),
            (4, "no_number"),
            (5, "no_number"),
            (6, "no_number"),
            (7, "no_yes"),
            (8, "no_days"),
        ]
    );
}

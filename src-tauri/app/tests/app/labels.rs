//! Labels: what stands on them, and the tray that one names.

use crate::Bench;
use crate::acts::{new_tray, packet, place, sow};
use plumule_app::acts::Act;
use plumule_app::labels::CODES;
use plumule_app::view::{LabelSheet, LostLabel};
use plumule_app::words::{key, known};
use plumule_journal::id::TrayId;

struct Sown {
    bench: Bench,
    sill: String,
    shed: String,
    /// The first stands on the sill, the second, sown ten days later, in the shed.
    trays: [String; 2],
}

fn sown() -> Sown {
    let mut bench = Bench::new();
    let (_, sill) = bench.done(place("Sill", "windowsill", (14.0, 22.0), "bright"));
    let (_, shed) = bench.done(place("Shed", "shed", (4.0, 12.0), "dim"));
    let (_, packet) = bench.done(Act::AddPacket { packet: packet() });
    let (_, first) = bench.done(sow(&packet, new_tray(&sill, 4, 6), vec![], 24));
    bench.wait_days(10);
    let (_, second) = bench.done(sow(&packet, new_tray(&shed, 1, 1), vec![], 9));
    // Sowing answers with the packet where it knows one; the trays are read off.
    let stamp = bench.stamp();
    let trays = bench.app.labels(&stamp).unwrap().trays;
    assert_eq!(trays.len(), 2, "{first} {second}");
    let trays = [trays[0].tray.clone(), trays[1].tray.clone()];
    Sown {
        bench,
        sill,
        shed,
        trays,
    }
}

fn sheet(it: &mut Sown, first: u32) -> LabelSheet {
    let stamp = it.bench.stamp();
    LabelSheet {
        trays: it.trays.to_vec(),
        stock: it.bench.app.labels(&stamp).unwrap().stocks[0].stock.clone(),
        first,
        cut_lines: false,
    }
}

/// How many pages a PDF has (ISO 32000-1, 7.7.3.3).
fn pages(pdf: &[u8]) -> usize {
    let page = b"/Type/Page";
    let is_page = |it: &&[u8]| it.starts_with(page) && it.get(page.len()) != Some(&b's');
    pdf.windows(page.len() + 1).filter(is_page).count()
}

#[test]
fn a_label_says_what_was_sown_when() {
    let mut it = sown();
    let stamp = it.bench.stamp();
    let labels = it.bench.app.labels(&stamp).unwrap().trays;
    assert_eq!(labels[0].names, ["Tomato ‘Lantern Lane’"]);
    assert_eq!(labels[0].date, "20 Apr 2026");
    assert_eq!(labels[0].place, "Sill");
    assert_eq!(labels[1].date, "30 Apr 2026");
}

#[test]
fn a_sheet_begins_where_the_last_one_ended() {
    let mut it = sown();
    for (first, count) in [(1, 1), (20, 1), (21, 2)] {
        let sheet = sheet(&mut it, first);
        let stamp = it.bench.stamp();
        let pdf = it.bench.app.labels_pdf(&stamp, &sheet).unwrap();
        assert!(pdf.starts_with(b"%PDF-"));
        assert_eq!(pages(&pdf), count, "from {first}");
        assert_eq!(it.bench.app.labels_pdf(&stamp, &sheet).unwrap(), pdf);
    }
}

#[test]
fn what_cannot_be_printed_says_why() {
    let mut it = sown();
    let whole = sheet(&mut it, 1);
    let stamp = it.bench.stamp();
    let code = |sheet: &LabelSheet| {
        let made = it.bench.app.labels_pdf(&stamp, sheet);
        made.map(drop).unwrap_err().code
    };
    let mut none = whole.clone();
    none.trays.clear();
    assert_eq!(code(&none), "nothing_chosen");
    let mut many = whole.clone();
    many.trays = vec![it.trays[0].clone(); 501];
    assert_eq!(code(&many), "too_many_labels");
    let mut unknown = whole.clone();
    unknown.trays = vec![it.sill.clone()];
    assert_eq!(code(&unknown), "bad_request");
    let mut wide = whole;
    wide.stock.width = 400.0;
    assert_eq!(code(&wide), "label_off_the_paper");
    for code in CODES {
        assert!(known(&key("error", code)), "{code}");
    }
}

#[test]
fn a_typed_code_finds_its_tray_and_an_unknown_one_none() {
    let mut it = sown();
    let stamp = it.bench.stamp();
    let code = it.bench.app.labels(&stamp).unwrap().trays[0].code.clone();
    let found = |text: &str| {
        let found = it.bench.app.find_label(&stamp, text).unwrap();
        let trays: Vec<String> = found.trays.into_iter().map(|it| it.tray).collect();
        trays
    };
    let first = &it.trays[..1];
    assert_eq!(found(&code), first);
    assert_eq!(found(&format!(" {}-", code.to_lowercase())), first);
    assert_eq!(found(&code.replace('1', "I")), first);
    assert!(found("Ω99").is_empty());
    let id: TrayId = it.trays[0].parse().unwrap();
    assert_eq!(found(&format!("plumule:tray:{}", id.0.simple())), first);
    assert!(found("plumule:tray:00000000000000000000000000000000").is_empty());
    let not_ours = it
        .bench
        .app
        .find_photo(&stamp, &["https://example.org".to_owned()]);
    assert_eq!(not_ours.unwrap_err().code, "label_not_read");
}

#[test]
fn a_past_tray_is_found_by_its_code_too() {
    let mut it = sown();
    let tray = it.trays[0].clone();
    let stamp = it.bench.stamp();
    let code = it.bench.app.labels(&stamp).unwrap().trays[0].code.clone();
    it.bench.done(Act::Empty { tray: tray.clone() });
    let stamp = it.bench.stamp();
    let found = it.bench.app.find_label(&stamp, &code).unwrap();
    assert_eq!(found.trays[0].tray, tray);
}

#[test]
fn a_lost_label_is_looked_for_by_what_is_known() {
    let mut it = sown();
    let stamp = it.bench.stamp();
    let first = |lost: LostLabel| {
        let found = it.bench.app.lost_label(&stamp, &lost).unwrap();
        let found = found.into_iter().map(|it| (it.line.tray, it.fits));
        found.collect::<Vec<_>>()
    };
    let [on_sill, in_shed] = it.trays.clone();
    let known = LostLabel {
        place: Some(it.shed.clone()),
        ..LostLabel::default()
    };
    assert_eq!(first(known), [(in_shed.clone(), vec!["place".to_owned()])]);
    // What fits best comes first; what fits in part is still there.
    let known = LostLabel {
        place: Some(it.shed.clone()),
        cells: Some(24),
        sown: "2026-04-22".parse().ok(),
        ..LostLabel::default()
    };
    let both = ["cells".to_owned(), "sown".to_owned()].to_vec();
    let found = first(known);
    assert_eq!(found[0], (on_sill, both));
    assert_eq!(found[1].0, in_shed);
    assert_eq!(first(LostLabel::default()).len(), 2);
    let none = LostLabel {
        container: Some("bag".to_owned()),
        ..LostLabel::default()
    };
    assert!(first(none).is_empty());
}

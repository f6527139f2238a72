//! What finished sowings teach, and what is said of a tray that is late, over a
//! real journal.

use crate::acts::{Sown, sown};
use crate::said;
use plumule_app::acts::Act;
use plumule_app::view::{ChoiceKind, JobKind, PacketView, VerdictKind, VerdictView};

impl Sown {
    fn packet_page(&mut self) -> PacketView {
        let stamp = self.bench.stamp();
        self.bench.app.packet(&stamp, &self.packet).unwrap()
    }

    fn finish_after(&mut self, days: i64) {
        self.bench.wait_days(days);
        let plants = self.plants.clone();
        self.bench.done(Act::Finish { plants });
    }

    fn count_after(&mut self, days: i64, up: u32) {
        self.bench.wait_days(days);
        self.bench.done(self.count(up));
    }

    fn verdict(&mut self) -> Option<VerdictView> {
        self.page().plants[0].verdict.clone()
    }
}

/// 12 tomatoes at 22 °C, about 7 days to half of them (Harrington and Minges
/// 1954): after 16 days each had its fair chance.
#[test]
fn a_finished_sowing_teaches_its_packet_and_says_so() {
    let mut this = sown();
    let before = this.packet_page();
    assert_eq!(before.own, None);
    this.count_after(6, 0);
    this.count_after(4, 3);
    assert_eq!(this.packet_page().own, None);
    this.finish_after(8);
    let after = this.packet_page();
    assert_eq!(said::one(&after.own.unwrap()), "Your own sowing: 3 of 12");
    let mean = |span: Option<[f64; 2]>| span.map(|[low, high]| low + high).unwrap();
    assert!(mean(after.row.line.germination) < mean(before.row.line.germination));

    let packet = this.packet.clone();
    let stamp = this.bench.stamp();
    let bench = this.bench.app.bench(&stamp, Some(&packet)).unwrap();
    let chosen = bench.chosen.unwrap();
    assert_eq!(said::one(&chosen.own.unwrap()), "Your own sowing: 3 of 12");
    assert_eq!(chosen.packet.germination, after.row.line.germination);
}

#[test]
fn without_its_fair_chance_it_teaches_nothing() {
    let mut early = sown();
    early.count_after(8, 3);
    early.finish_after(1);
    assert_eq!(early.packet_page().own, None);

    let mut eaten = sown();
    let before = eaten.packet_page().row.line.germination;
    eaten.count_after(10, 3);
    let plants = eaten.plants.clone();
    eaten.bench.done(Act::Leave {
        plants,
        number: 3,
        how: "lost".to_owned(),
        cause: Some("eaten".to_owned()),
    });
    eaten.finish_after(8);
    let page = eaten.packet_page();
    assert_eq!(page.own, None);
    // It aged by 18 days, and no more.
    let [[low, high], [before_low, before_high]] =
        [page.row.line.germination, before].map(Option::unwrap);
    assert!((low - before_low).abs() < 0.003 && (high - before_high).abs() < 0.003);
    assert!(!eaten.page().plants[0].living);
    let reasons = &eaten.page().plants[0].reasons;
    assert!(said::one(&reasons[0].say).starts_with("Possibly eaten"));
}

#[test]
fn a_quick_packet_is_expected_sooner_the_next_time() {
    let due = |first: u32| {
        let mut this = sown();
        this.count_after(3, 0);
        this.count_after(1, first);
        this.count_after(14, 11);
        this.finish_after(1);
        let packet = this.packet.clone();
        let stamp = this.bench.stamp();
        let bench = this.bench.app.bench(&stamp, Some(&packet)).unwrap();
        bench.places[0].due.unwrap().d50.unwrap()
    };
    assert!(due(10) < due(0));
}

#[test]
fn a_late_tray_shows_its_verdict_and_sowing_again_answers_it() {
    let mut this = sown();
    this.count_after(20, 0);
    let stamp = this.bench.stamp();
    let round = this.bench.app.round(&stamp).unwrap();
    said::all(&round);
    let jobs = round.places.iter().flat_map(|place| &place.cards);
    let late: Vec<&VerdictView> = jobs
        .flat_map(|card| &card.jobs)
        .filter(|job| job.kind == JobKind::ItIsLate)
        .filter_map(|job| job.verdict.as_ref())
        .collect();
    assert_eq!(late.len(), 1);
    assert_eq!(late[0].kind, VerdictKind::NothingMore);
    assert_eq!(late[0].choices[0].kind, ChoiceKind::DigUp);
    said::all(&this.page());
    assert_eq!(this.verdict().unwrap().kind, VerdictKind::NothingMore);
}

#[test]
fn a_count_corrected_is_a_verdict_corrected() {
    let mut this = sown();
    this.count_after(20, 12);
    assert_eq!(this.verdict(), None);
    let entry = this.page().timeline[0].entry.clone();
    let stamp = this.bench.stamp();
    this.bench.app.withdraw(&stamp, &entry, true).unwrap();
    this.bench.done(this.count(0));
    assert_eq!(this.verdict().unwrap().kind, VerdictKind::NothingMore);
}

//! Lines corrected, withdrawn and brought back; drafts.

use crate::acts::{packet, sown};
use crate::said;
use plumule_app::acts::{Act, SeedsAnswer, UpAnswer};
use plumule_app::view::{Answer, CorrectRequest, Fix, PacketForm, RangeView, TimelineLine};
use plumule_journal::Device;

fn request(line: &TimelineLine, fix: Option<Fix>) -> CorrectRequest {
    CorrectRequest {
        entry: line.entry.clone(),
        fix,
        happened: None,
        hand: "KM".to_owned(),
        confirmed: false,
    }
}

impl crate::acts::Sown {
    fn correct(&mut self, request: &CorrectRequest) -> Result<Answer, plumule_app::AppError> {
        let stamp = self.bench.stamp();
        self.bench.app.correct(&stamp, request)
    }

    /// The newest line that says so.
    fn line(&mut self, words: &str) -> TimelineLine {
        let lines = self.page().timeline;
        let found = lines.iter().find(|it| said::one(&it.say).contains(words));
        found
            .unwrap_or_else(|| panic!("no {words}: {lines:?}"))
            .clone()
    }
}

#[test]
fn a_correction_holds_and_what_was_said_stays_to_be_read() {
    let mut this = sown();
    this.bench.wait_days(9);
    let count = this.count(3);
    this.bench.done(count);
    let line = this.line("3 tomato");
    assert_eq!(line.amended, None);
    let up = UpAnswer::Number(7);
    assert_eq!(
        line.fix,
        Some(Fix::Counted {
            up: UpAnswer::Number(3)
        })
    );
    this.correct(&request(&line, Some(Fix::Counted { up })))
        .unwrap();
    let page = this.page();
    assert_eq!(page.plants[0].line.numbers.there, 7);
    let line = this.line("7 tomato");
    assert!(line.corrected && !line.withdrawn);
    let was = line.was.clone().unwrap();
    assert!(said::one(&was.say).contains("3 tomato"));
    assert!(line.amended.unwrap() > line.at);

    // When alone is a correction too.
    let earlier = line.at - chrono::TimeDelta::days(1);
    let mut when = request(&line, None);
    when.happened = Some(earlier);
    this.correct(&when).unwrap();
    let line = this.line("7 tomato");
    assert_eq!(line.at, earlier);
    assert_eq!(line.was.unwrap().at, was.at);
}

#[test]
fn everyday_kinds_are_corrected_by_what_their_lines_offer() {
    let mut this = sown();
    let text = str::to_owned;
    this.bench.wait_days(9);
    let place = this.page().place.unwrap().id;
    let tray = this.page().tray;
    let count = this.count(8);
    let plants = this.plants.clone();
    let acts = [
        Act::Feel {
            trays: vec![tray.clone()],
            feel: Some(text("dry")),
            water: None,
        },
        count,
        Act::Leave {
            plants,
            number: 1,
            how: text("thinned"),
            cause: None,
        },
        Act::Note {
            about: format!("tray:{tray}"),
            text: text("drips"),
        },
    ];
    for act in acts {
        this.bench.done(act);
    }
    let cases = [
        (
            "felt dry",
            Fix::Felt {
                feel: Some(text("wet")),
                water: None,
            },
            "felt wet",
        ),
        (
            "Thinned",
            Fix::Left {
                number: 2,
                how: text("lost"),
                cause: Some(text("eaten")),
            },
            "2 tomato",
        ),
        (
            "drips",
            Fix::Noted {
                text: text("it drips"),
            },
            "it drips",
        ),
    ];
    for (before, fix, after) in cases {
        let line = this.line(before);
        this.correct(&request(&line, Some(fix.clone()))).unwrap();
        assert_eq!(this.line(after).fix, Some(fix));
    }

    let read = Act::Read {
        place: place.clone(),
        of: text("air"),
        range: RangeView {
            min_c: 8.0,
            max_c: 21.0,
        },
    };
    this.bench.done(read);
    let about = format!("place:{place}");
    let line = this.bench.app.history(&about).unwrap().remove(0);
    let now = Fix::ReadNow {
        of: text("compost"),
        temperature_c: 18.0,
    };
    this.correct(&request(&line, Some(now.clone()))).unwrap();
    let line = this.bench.app.history(&about).unwrap().remove(0);
    assert_eq!(line.fix, Some(now));
}

#[test]
fn a_sowing_is_put_right_down_to_its_packet_and_cells() {
    let mut this = sown();
    let line = this.line("12 seeds");
    let Some(Fix::Sown {
        packet: was, tray, ..
    }) = line.fix.clone()
    else {
        panic!("{line:?}");
    };
    let other = PacketForm {
        crop: "leek".to_owned(),
        variety: "Frosty Hollow".to_owned(),
        ..packet()
    };
    let (_, leek) = this.bench.done(Act::AddPacket { packet: other });
    let fix = Fix::Sown {
        packet: leek.clone(),
        tray,
        cells: vec![2, 3],
        seeds: SeedsAnswer::About(14),
        depth_mm: Some(8.0),
        wanted: None,
    };
    this.correct(&request(&line, Some(fix.clone()))).unwrap();
    let line = this.line("14 seeds");
    assert_eq!(line.fix, Some(fix));
    assert!(said::one(&line.say).contains("leek"), "{line:?}");
    let page = this.page();
    let plants = &page.plants[0];
    assert_eq!(
        (plants.depth_mm, &plants.line.cells),
        (Some(8.0), &vec![2, 3])
    );
    assert_eq!(plants.line.variety, "Frosty Hollow");
    // The seeds are taken off the packet they came from, and off no other.
    let stamp = this.bench.stamp();
    let box_ = this.bench.app.seed(&stamp).unwrap();
    let left = |id: &str| {
        let line = box_.packets.iter().find(|it| it.line.packet == id);
        line.unwrap().line.seeds_left
    };
    assert_eq!((left(&leek), left(&was)), (Some(86), Some(100)));
}

#[test]
fn what_does_not_fit_is_refused_and_changes_nothing() {
    let mut this = sown();
    let line = this.line("12 seeds");
    let up = UpAnswer::Half;
    let of_another = request(&line, Some(Fix::Counted { up }));
    let error = this.correct(&of_another).unwrap_err();
    assert_eq!(error.code, "correction_of_another_kind");
    said::one(&error.say);
    assert!(!this.line("12 seeds").corrected);
}

#[test]
fn a_withdrawn_line_is_brought_back() {
    let mut this = sown();
    this.bench.wait_days(9);
    let count = this.count(4);
    this.bench.done(count);
    let line = this.line("4 tomato");
    let stamp = this.bench.stamp();
    this.bench.app.withdraw(&stamp, &line.entry, false).unwrap();
    let line = this.line("4 tomato");
    assert!(line.withdrawn && line.amended.is_some());
    assert_eq!(this.page().plants[0].line.numbers.there, 0);
    this.correct(&request(&line, None)).unwrap();
    assert!(!this.line("4 tomato").withdrawn);
    assert_eq!(this.page().plants[0].line.numbers.there, 4);
}

#[test]
fn drafts_outlive_a_restart_and_are_apart_from_the_habits() {
    let this = sown();
    let app = &this.bench.app;
    assert_eq!(app.draft("note:tray:1").unwrap(), None);
    app.keep_draft("note:tray:1", Some("{\"text\":\"half a sen"))
        .unwrap();
    app.keep_draft("habits", Some("not the habits")).unwrap();
    let bench = this.bench.reopen();
    let kept = bench.app.draft("note:tray:1").unwrap();
    assert_eq!(kept.as_deref(), Some("{\"text\":\"half a sen"));
    assert_eq!(bench.app.device().unwrap().theme, "system");
    bench.app.keep_draft("note:tray:1", None).unwrap();
    assert_eq!(bench.app.draft("note:tray:1").unwrap(), None);
    for name in ["", "a b", "../device", &"n".repeat(101)] {
        assert_eq!(bench.app.draft(name).unwrap_err().code, "bad_request");
    }
    let long = "x".repeat((1 << 18) + 1);
    let error = bench.app.keep_draft("sow", Some(&long)).unwrap_err();
    assert_eq!(error.code, "draft_too_long");
    said::one(&error.say);
    let device = Device::open(bench.home.path(), &crate::stamp(bench.now, 9)).unwrap();
    assert_eq!(device.get("habits").unwrap(), None);
}

//! What a grower does, from the packet to the pot.

use crate::{Bench, request, said};
use chrono::TimeDelta;
use plumule_app::acts::{Act, PartAnswer, SeedsAnswer, TreatmentForm, Until, UpAnswer};
use plumule_app::view::{
    Answer, JobKind, PacketForm, PlaceForm, PlantsRef, RangeView, Stage, TrayChoice, TrayView,
};
use plumule_journal::content::{Content, Noted};
use plumule_journal::subject::Subject;
use plumule_journal::{Journal, Wish};

pub(crate) fn packet() -> PacketForm {
    PacketForm {
        crop: "tomato".to_owned(),
        variety: "Lantern Lane".to_owned(),
        packed_year: Some(2025),
        harvested_year: None,
        stated_germination: None,
        stated_days: None,
        seeds: Some(100),
        storage: "cool_cupboard".to_owned(),
        treated: true,
        source: String::new(),
        note: String::new(),
        sow_by: None,
        f1: false,
        saved_from: None,
        price: String::new(),
    }
}

pub(crate) fn place(name: &str, kind: &str, (min_c, max_c): (f64, f64), light: &str) -> Act {
    Act::DescribePlace {
        place: PlaceForm {
            id: None,
            name: name.to_owned(),
            kind: kind.to_owned(),
            usual: RangeView { min_c, max_c },
            unheated: None,
            light: light.to_owned(),
            covered: false,
            position: 0,
            retired: false,
        },
    }
}

pub(crate) fn new_tray(place: &str, rows: u16, columns: u16) -> TrayChoice {
    TrayChoice::New {
        code: None,
        container: "cells".to_owned(),
        rows,
        columns,
        compost: "seed".to_owned(),
        place: place.to_owned(),
        covered: true,
    }
}

pub(crate) fn sow(packet: &str, into: TrayChoice, cells: Vec<u16>, seeds: u32) -> Act {
    Act::Sow {
        packet: packet.to_owned(),
        into,
        cells,
        seeds: SeedsAnswer::Exact(seeds),
        depth_mm: Some(6.0),
        wanted: Some(8),
        again_of: None,
        treatment: TreatmentForm::default(),
        plan: None,
    }
}

/// A bench with a propagator, a sill, a packet and a tray sown with 12 seeds.
pub(crate) struct Sown {
    pub(crate) bench: Bench,
    sill: String,
    pub(crate) packet: String,
    tray: String,
    pub(crate) plants: PlantsRef,
    act: String,
}

pub(crate) fn sown() -> Sown {
    let mut bench = Bench::new();
    let (_, propagator) = bench.done(place(
        "Propagator",
        "heated_propagator",
        (20.0, 24.0),
        "dim",
    ));
    let (_, sill) = bench.done(place("Sill", "windowsill", (15.0, 20.0), "bright"));
    let (_, packet) = bench.done(Act::AddPacket { packet: packet() });
    let (act, tray) = bench.done(sow(&packet, new_tray(&propagator, 3, 4), vec![], 12));
    let mut this = Sown {
        bench,
        sill,
        packet,
        tray: tray.clone(),
        plants: PlantsRef::Sowing(String::new()),
        act,
    };
    // `done` gives the packet first; a sowing makes none, so this is the tray.
    this.plants = this.page().plants[0].line.plants.clone();
    this
}

impl Sown {
    pub(crate) fn page(&mut self) -> TrayView {
        let stamp = self.bench.stamp();
        self.bench.app.tray(&stamp, &self.tray).unwrap()
    }

    fn say(&mut self, act: Act) -> String {
        match self.bench.act(act).unwrap() {
            Answer::Written { say, .. } => said::one(&say),
            Answer::AsksFirst { questions } => panic!("asks first: {questions:?}"),
        }
    }

    fn entries(&mut self) -> u32 {
        let stamp = self.bench.stamp();
        self.bench.app.settings(&stamp, false).unwrap().entries
    }

    pub(crate) fn count(&self, up: u32) -> Act {
        Act::Count {
            plants: self.plants.clone(),
            up: UpAnswer::Number(up),
        }
    }
}

#[test]
fn from_the_packet_to_the_pot_and_all_there_after_a_restart() {
    let mut this = sown();
    let page = this.page();
    assert!(page.covered);
    let code = page.code.clone();
    assert_eq!(page.plants[0].line.cells, (0..12).collect::<Vec<u16>>());
    assert!(page.plants[0].forecast.is_some());
    this.bench.wait_days(6);
    let felt = this.say(Act::Feel {
        trays: vec![this.tray.clone()],
        feel: Some("moist".to_owned()),
        water: Some("below".to_owned()),
    });
    assert_eq!(felt, format!("{code} felt moist, watered from below"));
    let counted = this.say(this.count(9));
    assert_eq!(
        counted,
        format!("Counted in {code}: 9 tomato ‘Lantern Lane’ up")
    );
    let moved = this.say(Act::Move {
        trays: vec![this.tray.clone()],
        place: this.sill.clone(),
    });
    assert_eq!(moved, format!("{code} moved to Sill"));
    this.bench.wait_days(14);
    let part = |into, number| PartAnswer {
        into,
        cells: vec![],
        number,
    };
    let pricked = this.say(Act::GoOn {
        plants: this.plants.clone(),
        step: "pricked_out".to_owned(),
        parts: vec![
            part(new_tray(&this.sill, 2, 3), 6),
            part(new_tray(&this.sill, 2, 3), 3),
        ],
        rest_finished: true,
    });
    assert!(
        pricked.starts_with(&format!("Pricked out from {code}: 9 tomato")),
        "{pricked}"
    );

    let before = this.page();
    let stamp = this.bench.stamp();
    let (trays, entries) = (this.bench.app.trays(&stamp).unwrap(), this.entries());
    this.bench = this.bench.reopen();
    assert_eq!(this.bench.app.trays(&stamp).unwrap(), trays);
    assert_eq!(this.entries(), entries);
    let after = this.page();
    assert_eq!(after.plants, before.plants);
    assert_eq!(after.timeline, before.timeline);

    let first = &after.plants[0];
    assert!(!first.living);
    assert_eq!(first.line.stage, Stage::Gone);
    assert_eq!((first.line.numbers.up, first.line.numbers.gone_on), (9, 9));
    let numbers: Vec<_> = first.relatives.iter().map(|it| it.number).collect();
    assert_eq!(numbers, [Some(6), Some(3)]);
    let child = &first.relatives[1];
    let page = this.bench.app.tray(&stamp, &child.tray).unwrap();
    assert_eq!(page.plants[0].line.stage, Stage::PrickedOut);
    assert_eq!(page.plants[0].line.cells, [0, 1, 2]);
    assert_eq!(page.plants[0].relatives[0].code, code);
    said::all(&after);
    said::all(&page);
}

#[test]
fn every_step_can_be_undone_and_brought_back() {
    let mut this = sown();
    this.bench.wait_days(6);
    let steps = [
        Act::Feel {
            trays: vec![this.tray.clone()],
            feel: Some("dry".to_owned()),
            water: Some("rose".to_owned()),
        },
        this.count(7),
        Act::Cover {
            tray: this.tray.clone(),
            on: false,
        },
        Act::Move {
            trays: vec![this.tray.clone()],
            place: this.sill.clone(),
        },
        Act::Leave {
            plants: this.plants.clone(),
            number: 2,
            how: "lost".to_owned(),
            cause: Some("eaten".to_owned()),
        },
        Act::Empty {
            tray: this.tray.clone(),
        },
    ];
    for step in steps {
        let essence = |page: &TrayView| {
            let place = page.place.as_ref().map(|place| place.id.clone());
            let lines: Vec<_> = page.plants.iter().map(|it| it.line.clone()).collect();
            (
                place,
                page.covered,
                page.emptied,
                page.last_felt.clone(),
                lines,
            )
        };
        let before = essence(&this.page());
        let (act, _) = this.bench.done(step.clone());
        let done = essence(&this.page());
        assert_ne!(before, done, "{step:?}");
        let stamp = this.bench.stamp();
        let undone = this.bench.app.undo(&stamp, &act, false).unwrap();
        assert_eq!(essence(&this.page()), before, "{step:?}");
        let Answer::Written { act: undo, .. } = undone else {
            panic!("{step:?} asks first");
        };
        let stamp = this.bench.stamp();
        this.bench.app.undo(&stamp, &undo, false).unwrap();
        assert_eq!(essence(&this.page()), done, "{step:?}");
    }
}

#[test]
fn what_is_odd_is_asked_first_and_written_when_confirmed() {
    let mut this = sown();
    this.bench.wait_days(6);
    let before = this.entries();
    let Answer::AsksFirst { questions } = this.bench.act(this.count(20)).unwrap() else {
        panic!("20 of 12 seeds are odd");
    };
    assert_eq!(questions[0].code, "above_the_seeds");
    assert!(said::one(&questions[0].say).contains("12 seeds"));
    assert_eq!(this.entries(), before);
    let mut again = request(this.count(20));
    again.confirmed = true;
    let stamp = this.bench.stamp();
    assert!(matches!(
        this.bench.app.act(&stamp, again).unwrap(),
        Answer::Written { .. }
    ));
    assert_eq!(this.entries(), before + 1);

    let (stamp, act) = (this.bench.stamp(), this.act.clone());
    let Answer::AsksFirst { questions } = this.bench.app.undo(&stamp, &act, false).unwrap() else {
        panic!("a count builds on the sowing");
    };
    questions.iter().for_each(|question| {
        said::one(&question.say);
    });
}

#[test]
fn refused_writes_nothing_and_says_what_to_do() {
    let mut this = sown();
    let before = this.entries();
    let place = this.sill.clone();
    let read = |min_c, max_c| Act::Read {
        place: place.clone(),
        of: "air".to_owned(),
        range: RangeView { min_c, max_c },
    };
    let existing = TrayChoice::Existing {
        id: this.tray.clone(),
    };
    let mut nameless = packet();
    nameless.crop = "  ".to_owned();
    let refused = [
        (read(10.0, 80.0), "reading_out_of_range"),
        (read(20.0, 10.0), "min_above_max"),
        (sow(&this.packet, existing.clone(), vec![], 4), "cells_none"),
        (sow(&this.packet, existing, vec![3], 4), "cells_taken"),
        (
            sow(&this.packet, new_tray(&place, 0, 4), vec![], 4),
            "tray_without_cells",
        ),
        (Act::AddPacket { packet: nameless }, "name_empty"),
        (
            Act::Feel {
                trays: vec![this.tray.clone()],
                feel: Some("soggy".to_owned()),
                water: None,
            },
            "bad_request",
        ),
        (
            Act::Empty {
                tray: "nonsense".to_owned(),
            },
            "bad_request",
        ),
        (
            Act::Feel {
                trays: vec![],
                feel: Some("dry".to_owned()),
                water: None,
            },
            "nothing_chosen",
        ),
    ];
    for (act, code) in refused {
        let error = this.bench.act(act.clone()).unwrap_err();
        assert_eq!(error.code, code, "{act:?}");
        said::one(&error.say);
    }
    let mut early = request(this.count(1));
    early.happened = Some("2026-04-01T08:00:00".parse().unwrap());
    let stamp = this.bench.stamp();
    let error = this.bench.app.act(&stamp, early).unwrap_err();
    assert_eq!(error.code, "before_the_sowing");
    said::one(&error.say);
    assert_eq!(this.entries(), before);
}

#[test]
fn a_job_put_off_comes_again_at_the_round_it_was_put_off_to() {
    let mut this = sown();
    let feels = |this: &mut Sown| {
        let stamp = this.bench.stamp();
        let round = this.bench.app.round(&stamp).unwrap();
        let cards = round.places.iter().flat_map(|place| &place.cards);
        let jobs = cards.flat_map(|card| card.jobs.clone());
        jobs.filter(|job| job.kind == JobKind::FeelTheCompost)
            .map(|job| job.key)
            .next()
    };
    // Sown at half past eight; two days later at the same time.
    let due = (0..5).find_map(|_| {
        this.bench.wait_days(1);
        feels(&mut this)
    });
    let put_off = this.say(Act::PutOff {
        job: due.unwrap(),
        until: Until::Tomorrow,
    });
    assert!(put_off.contains("08:00: feel the compost"), "{put_off}");
    assert_eq!(feels(&mut this), None);
    this.bench.now += TimeDelta::hours(22);
    assert_eq!(feels(&mut this), None, "not before the round");
    this.bench.now += TimeDelta::hours(2);
    assert!(feels(&mut this).is_some());
}

#[test]
fn the_hand_is_the_devices_unless_another_is_named() {
    let mut this = sown();
    let mut device = this.bench.app.device().unwrap();
    assert_eq!(device.quiet_from, "22:00");
    device.initials = " JW ".to_owned();
    this.bench.app.set_device(&device).unwrap();
    this.bench.done(this.count(0));
    let mut other = request(this.count(1));
    other.hand = "BO".to_owned();
    let stamp = this.bench.stamp();
    this.bench.app.act(&stamp, other).unwrap();
    let hands: Vec<String> = this
        .page()
        .timeline
        .into_iter()
        .map(|line| line.hand)
        .take(2)
        .collect();
    assert_eq!(hands, ["BO", "JW"]);
    device.theme = "bright".to_owned();
    this.bench.app.set_device(&device).unwrap();
    assert_eq!(this.bench.app.device().unwrap().theme, "bright");
    for wrong in ["fahrenheit ", "kelvin"] {
        device.temperature = wrong.to_owned();
        let error = this.bench.app.set_device(&device).unwrap_err();
        assert_eq!(error.code, "bad_habit");
        said::one(&error.say);
    }
}

#[test]
fn emptying_a_tray_is_done_with_all_that_lives_in_it() {
    let mut this = sown();
    this.bench.done(Act::Empty {
        tray: this.tray.clone(),
    });
    let page = this.page();
    assert!(page.emptied && !page.plants[0].living);
    let stamp = this.bench.stamp();
    let trays = this.bench.app.trays(&stamp).unwrap();
    assert!(trays.places.is_empty());
    assert_eq!(trays.past[0].tray, this.tray);
}

#[test]
fn cuttings_start_without_a_packet_and_the_bench_shows_what_is_free() {
    let mut this = sown();
    let (_, tray) = this.bench.done(Act::StartBatch {
        origin: "cuttings".to_owned(),
        crop: "Rosemary".to_owned(),
        variety: String::new(),
        into: new_tray(&this.sill, 1, 5),
        cells: vec![0, 1, 2],
        number: 3,
    });
    let stamp = this.bench.stamp();
    let bench = this.bench.app.bench(&stamp, Some(&this.packet)).unwrap();
    said::all(&bench);
    assert_eq!(bench.trays.len(), 1, "the sown tray is full");
    assert_eq!(
        (&bench.trays[0].tray, &bench.trays[0].taken[..]),
        (&tray, &[0, 1, 2][..])
    );
    assert_eq!(bench.packets[0].packet, this.packet);
    let chosen = bench.chosen.unwrap();
    assert_eq!(chosen.packet.seeds_left, Some(88));
    let cautions: Vec<&str> = chosen.cautions.iter().map(|say| say.key.as_str()).collect();
    assert_eq!(
        cautions,
        [
            "caution-treated-seed",
            "caution-poisonous-leaves",
            "caution-electricity",
            "caution-compost-dust"
        ]
    );
}

#[test]
fn a_tray_left_alone_for_120_days_is_set_aside_and_comes_back() {
    let mut this = sown();
    this.bench.wait_days(121);
    let stamp = this.bench.stamp();
    let trays = this.bench.app.trays(&stamp).unwrap();
    assert!(trays.places.is_empty());
    assert_eq!(trays.set_aside[0].tray, this.tray);
    assert_eq!(trays.set_aside[0].plants.len(), 1);
    this.bench.done(Act::Feel {
        trays: vec![this.tray.clone()],
        feel: Some("dry".to_owned()),
        water: None,
    });
    let stamp = this.bench.stamp();
    let trays = this.bench.app.trays(&stamp).unwrap();
    assert!(trays.set_aside.is_empty());
    assert_eq!(trays.places[0].trays[0].tray, this.tray);
}

#[test]
fn acts_written_together_are_all_written_or_none() {
    let mut this = sown();
    let before = this.entries();
    let act = |at: &mut Bench, text: &str| {
        let note = Content::Noted(Noted {
            about: Subject::Garden,
            text: text.to_owned(),
        });
        let wish = Wish {
            contents: vec![note],
            happened: None,
            hand: String::new(),
            confirmed: true,
        };
        (at.stamp(), wish)
    };
    let (one, empty) = (act(&mut this.bench, "One"), act(&mut this.bench, " "));
    let two = act(&mut this.bench, "Two");
    let stamp = this.bench.stamp();
    let mut journal = Journal::open(this.bench.home.path(), &stamp).unwrap();
    let refused = journal.write_all([one.clone(), empty]).unwrap_err();
    assert_eq!(refused.code(), "text_empty");
    assert_eq!(this.entries(), before);
    journal.write_all([one, two]).unwrap();
    assert_eq!(this.entries(), before + 2);
}

#[test]
fn the_walking_order_is_one_act_and_one_undo() {
    let mut bench = Bench::new();
    let order = |bench: &mut Bench| -> Vec<String> {
        let stamp = bench.stamp();
        let places = bench.app.settings(&stamp, false).unwrap().places;
        places.into_iter().map(|place| place.name).collect()
    };
    let (_, sill) = bench.done(place("Sill", "windowsill", (14.0, 20.0), "bright"));
    let (_, shed) = bench.done(place("Shed", "shed", (5.0, 11.0), "dark"));
    let (_, frame) = bench.done(place("Frame", "cold_frame", (3.0, 15.0), "bright"));
    let walk = |places: [&String; 3]| Act::OrderPlaces {
        places: places.map(Clone::clone).to_vec(),
    };
    bench.done(walk([&sill, &shed, &frame]));
    assert_eq!(order(&mut bench), ["Sill", "Shed", "Frame"]);
    let (act, _) = bench.done(walk([&frame, &sill, &shed]));
    assert_eq!(order(&mut bench), ["Frame", "Sill", "Shed"]);
    let stamp = bench.stamp();
    bench.app.undo(&stamp, &act, false).unwrap();
    assert_eq!(order(&mut bench), ["Sill", "Shed", "Frame"]);
    let same = bench.act(walk([&sill, &shed, &frame])).unwrap_err();
    assert_eq!(same.code, "nothing_to_write");
}

//! Searching: each kind of match beside one that differs in one thing.

use crate::acts::{packet, place, sow};
use crate::stamp;
use crate::{Bench, said};
use plumule_app::App;
use plumule_app::acts::{Act, PartAnswer};
use plumule_app::search::CODES;
use plumule_app::view::{Fix, PacketForm, PlanForm, RhythmForm, SearchView, TrayChoice};
use plumule_app::words::{key, known};
use plumule_journal::content::{Content, Noted};
use plumule_journal::stamp::Happened;
use plumule_journal::subject::Subject;
use plumule_journal::{Journal, Wish};
use proptest::prelude::*;

/// Tomatoes sown over the heat on 20 April 2026, leeks on the sill on 14 May.
struct Garden {
    bench: Bench,
    tomato: String,
    leek: String,
    packet: String,
}

fn text(text: &str) -> String {
    text.to_owned()
}

fn coded(code: &str, place: &str) -> TrayChoice {
    TrayChoice::New {
        code: Some(text(code)),
        container: text("cells"),
        rows: 3,
        columns: 4,
        compost: text("seed"),
        place: text(place),
        covered: false,
    }
}

fn garden() -> Garden {
    let mut bench = Bench::new();
    let heated = place("Warm box", "heated_propagator", (20.0, 24.0), "dim");
    let (_, heated) = bench.done(heated);
    let (_, sill) = bench.done(place("Küchenfenster", "windowsill", (15.0, 20.0), "bright"));
    let tomatoes = PacketForm {
        source: text("seed swap"),
        note: text("orange, late"),
        ..packet()
    };
    let leeks = PacketForm {
        crop: text("leek"),
        variety: text("Échalion Long"),
        packed_year: Some(2023),
        ..packet()
    };
    let (_, first) = bench.done(Act::AddPacket { packet: tomatoes });
    let (_, second) = bench.done(Act::AddPacket { packet: leeks });
    let (_, tomato) = bench.done(sow(&first, coded("K1", &heated), vec![], 12));
    bench.wait_days(24);
    let (_, leek) = bench.done(sow(&second, coded("K12", &sill), vec![], 12));
    let note = |about: String, words: &str| Act::Note {
        about,
        text: text(words),
    };
    bench.done(note(
        format!("tray:{tomato}"),
        "Leaves turn yellow at 100 %",
    ));
    bench.done(note(format!("place:{sill}"), "The blind sticks."));
    Garden {
        bench,
        tomato,
        leek,
        packet: first,
    }
}

impl Garden {
    fn place_of_leek(&mut self) -> String {
        let stamp = self.bench.stamp();
        let tray = self.bench.app.tray(&stamp, &self.leek).unwrap();
        tray.place.unwrap().id
    }

    fn find(&mut self, typed: &str) -> SearchView {
        let stamp = self.bench.stamp();
        self.bench.app.search(&stamp, typed).unwrap()
    }

    /// What is found, in short: codes of trays, of sowings, plants of packets,
    /// words of notes.
    fn short(&mut self, typed: &str) -> [Vec<String>; 4] {
        let view = self.find(typed);
        assert!(view.more.is_empty(), "{typed}: {:?}", view.more);
        [
            view.trays.iter().map(|it| it.code.clone()).collect(),
            view.sowings.iter().map(|it| it.code.clone()).collect(),
            view.packets
                .iter()
                .map(|it| it.plants.crop.key.clone())
                .collect(),
            view.notes.iter().map(|it| it.text.clone()).collect(),
        ]
    }
}

const YELLOW: &str = "Leaves turn yellow at 100 %";
const BLIND: &str = "The blind sticks.";

#[test]
fn every_kind_of_word_finds_and_its_neighbour_does_not() {
    let mut it = garden();
    let cases: &[(&str, [&[&str]; 4])] = &[
        // Crop, by its name and its beginning; by its key.
        ("tomato", [&["K1"], &["K1"], &["tomato"], &[]]),
        ("TOM", [&["K1"], &["K1"], &["tomato"], &[]]),
        ("tomatoz", [&[], &[], &[], &[]]),
        ("omato", [&[], &[], &[], &[]]),
        // Variety, without accents.
        ("echalion", [&["K12"], &["K12"], &["leek"], &[]]),
        ("échalion long", [&["K12"], &["K12"], &["leek"], &[]]),
        ("échalion short", [&[], &[], &[], &[]]),
        // Where the packet came from, what is noted on it, its year.
        ("swap", [&["K1"], &["K1"], &["tomato"], &[]]),
        ("orange", [&["K1"], &["K1"], &["tomato"], &[]]),
        ("2023", [&["K12"], &["K12"], &["leek"], &[]]),
        // Codes: the beginning of one is of both.
        ("k12", [&["K12"], &["K12"], &[], &[]]),
        ("k1", [&["K12", "K1"], &["K12", "K1"], &[], &[]]),
        ("k13", [&[], &[], &[], &[]]),
        // Places.
        ("kuchenfenster", [&["K12"], &["K12"], &[], &[]]),
        ("warm", [&["K1"], &["K1"], &[], &[]]),
        ("cold", [&[], &[], &[], &[]]),
        // Days.
        ("20 April", [&["K1"], &["K1"], &[], &[]]),
        ("2026-04-20", [&["K1"], &["K1"], &[], &[]]),
        ("14/5/26", [&["K12"], &["K12"], &[], &[BLIND, YELLOW]]),
        ("may 2026", [&["K12"], &["K12"], &[], &[BLIND, YELLOW]]),
        ("may 2025", [&[], &[], &[], &[]]),
        ("21 April", [&[], &[], &[], &[]]),
        // Notes, by their words, and by what they are about beside.
        ("yellow", [&[], &[], &[], &[YELLOW]]),
        ("tomato yellow", [&[], &[], &[], &[YELLOW]]),
        ("leek yellow", [&[], &[], &[], &[]]),
        ("sticks küchen", [&[], &[], &[], &[BLIND]]),
        ("100", [&[], &[], &[], &[YELLOW]]),
        // All words are meant, wherever each stands.
        ("tomato warm april k1", [&["K1"], &["K1"], &[], &[]]),
        ("tomato küchen", [&[], &[], &[], &[]]),
        // Signs are no words and no patterns.
        ("%", [&[], &[], &[], &[]]),
        ("k_", [&["K12", "K1"], &["K12", "K1"], &[], &[]]),
        ("\"tomato\" *", [&["K1"], &["K1"], &["tomato"], &[]]),
    ];
    for (typed, wanted) in cases {
        let wanted = wanted.map(|group| group.iter().map(|it| text(it)).collect::<Vec<_>>());
        assert_eq!(it.short(typed), wanted, "{typed}");
    }
}

#[test]
fn what_is_found_leads_to_its_page() {
    let mut it = garden();
    let found = it.find("tomato");
    assert_eq!(found.trays[0].tray, it.tomato);
    assert_eq!(found.trays[0].place.as_deref(), Some("Warm box"));
    assert_eq!(found.sowings[0].tray, it.tomato);
    assert_eq!(found.packets[0].packet, it.packet);
    let notes = it.find("yellow").notes;
    let about = notes[0].about.clone().unwrap();
    assert_eq!(
        (about.page.as_str(), about.id.as_str()),
        ("tray", &*it.tomato)
    );
    assert_eq!(about.plants[0].crop.key, "tomato");
    let about = it.find("blind").notes[0].about.clone().unwrap();
    assert_eq!(
        (about.page.as_str(), about.name.as_str()),
        ("settings", "Küchenfenster")
    );
}

#[test]
fn what_went_on_is_found_by_what_was_sown() {
    let mut it = garden();
    let stamp = it.bench.stamp();
    let page = it.bench.app.tray(&stamp, &it.tomato).unwrap();
    let plants = page.plants[0].line.plants.clone();
    let place = page.place.unwrap().id;
    it.bench.done(Act::Count {
        plants: plants.clone(),
        up: plumule_app::acts::UpAnswer::Number(9),
    });
    it.bench.done(Act::GoOn {
        plants,
        step: text("pricked_out"),
        parts: vec![PartAnswer {
            into: coded("P1", &place),
            cells: vec![0, 1, 2, 3],
            number: 4,
        }],
        rest_finished: false,
    });
    it.bench.done(Act::Empty {
        tray: it.tomato.clone(),
    });
    let [trays, sowings, ..] = it.short("tomato swap");
    assert_eq!(
        (trays, sowings),
        (vec![text("P1"), text("K1")], vec![text("K1")])
    );
    let found = it.find("tomato").trays;
    let past: Vec<bool> = found.iter().map(|tray| tray.to.is_some()).collect();
    assert_eq!(past, [false, true]);
}

#[test]
fn cuttings_have_no_packet_and_are_found() {
    let mut it = garden();
    let place = it.place_of_leek();
    it.bench.done(Act::StartBatch {
        origin: text("cuttings"),
        crop: text("Dahlia"),
        variety: text("Evening Haze"),
        into: coded("D1", &place),
        cells: vec![],
        number: 6,
    });
    assert_eq!(it.short("dahlia haze")[0], ["D1"]);
    assert_eq!(it.short("dahlia küchen")[0], ["D1"]);
    assert_eq!(it.short("dahlia warm")[0], [""; 0]);
    assert_eq!(it.short("dahlia")[1], [""; 0]);
}

#[test]
fn what_was_corrected_or_withdrawn_is_found_as_it_holds() {
    let mut it = garden();
    let note = it.find("yellow").notes[0].entry.clone();
    let stamp = it.bench.stamp();
    let correction = plumule_app::view::CorrectRequest {
        entry: note.clone(),
        fix: Some(Fix::Noted {
            text: text("Leaves turn purple"),
        }),
        happened: None,
        hand: String::new(),
        confirmed: true,
    };
    it.bench.app.correct(&stamp, &correction).unwrap();
    assert!(it.find("yellow").notes.is_empty());
    assert_eq!(it.find("purple").notes.len(), 1);
    let stamp = it.bench.stamp();
    it.bench.app.withdraw(&stamp, &note, true).unwrap();
    assert!(it.find("purple").notes.is_empty());
}

#[test]
fn a_code_that_is_given_again_tells_of_the_tray_before() {
    let mut it = garden();
    let place = it.place_of_leek();
    let earlier = |it: &mut Garden, tray: &str| {
        let stamp = it.bench.stamp();
        it.bench.app.tray(&stamp, tray).unwrap().earlier
    };
    it.bench.done(Act::Empty {
        tray: it.tomato.clone(),
    });
    it.bench.wait_days(3);
    let packet = it.packet.clone();
    let (_, again) = it.bench.done(sow(&packet, coded("k1", &place), vec![], 6));
    let before = earlier(&mut it, &again);
    assert_eq!(before.len(), 1);
    assert_eq!(
        (before[0].tray.as_str(), before[0].code.as_str()),
        (&*it.tomato, "K1")
    );
    assert_eq!(before[0].plants[0].crop.key, "tomato");
    assert!(before[0].to.is_some());
    let leek = it.leek.clone();
    assert!(earlier(&mut it, &leek).is_empty());
    let tomato = it.tomato.clone();
    assert!(earlier(&mut it, &tomato).is_empty());
    let stamp = it.bench.stamp();
    let labelled = it.bench.app.find_label(&stamp, "K 1").unwrap();
    let codes: Vec<&str> = labelled.trays.iter().map(|it| it.code.as_str()).collect();
    assert_eq!(codes, ["k1"], "the living one is meant");
}

/// A plan for a sale of leeks from the packet there is, one of spinach every
/// three weeks, seed of it to buy; each described with a neighbour.
fn planned() -> Garden {
    let mut it = garden();
    let leek = it.find("echalion").packets[0].packet.clone();
    let sale = PlanForm {
        crop: text("leek"),
        variety: String::new(),
        packet: Some(leek),
        wanted: 40,
        rhythm: RhythmForm::Sale {
            day: "2026-09-12".parse().unwrap(),
            over_percent: 15,
        },
        raise_weeks: Some(10),
    };
    let again = PlanForm {
        crop: text("spinach"),
        variety: text("Dusk Giant"),
        packet: None,
        wanted: 12,
        rhythm: RhythmForm::Every {
            weeks: 3,
            from: "2026-08-01".parse().unwrap(),
            to: "2026-10-03".parse().unwrap(),
        },
        raise_weeks: None,
    };
    for plan in [sale, again] {
        it.bench.done(Act::Plan { id: None, plan });
    }
    it.bench.done(Act::WantToBuy {
        crop: text("spinach"),
        variety: text("Dusk Giant"),
        note: text("two packets, from the mill shop"),
    });
    it
}

impl Garden {
    /// Crops of plans, of things to buy.
    fn wanted(&mut self, typed: &str) -> [Vec<String>; 2] {
        let view = self.find(typed);
        let plans = view.plans.iter();
        let items = view.items.iter();
        [
            plans.map(|it| it.plants.crop.key.clone()).collect(),
            items.map(|it| it.plants.crop.key.clone()).collect(),
        ]
    }
}

#[test]
fn plans_and_what_to_buy_are_found_and_their_neighbours_are_not() {
    let mut it = planned();
    let cases: &[(&str, [&[&str]; 2])] = &[
        // Crop, in every language; variety; what its packet says.
        ("leek", [&["leek"], &[]]),
        ("Lauch", [&["leek"], &[]]),
        ("spinat", [&["spinach"], &["spinach"]]),
        ("SPINACH dusk", [&["spinach"], &["spinach"]]),
        ("spinach dawn", [&[], &[]]),
        ("echalion", [&["leek"], &[]]),
        ("leek 2023", [&["leek"], &[]]),
        // A sale by its word, in every language.
        ("sale", [&["leek"], &[]]),
        ("Verkauf Lauch", [&["leek"], &[]]),
        ("spinach sale", [&[], &[]]),
        // The day it is for; the first and last day of sowing again and again.
        ("12 September", [&["leek"], &[]]),
        ("12. Sept. 2026", [&["leek"], &[]]),
        ("13 September", [&[], &[]]),
        ("1 August", [&["spinach"], &[]]),
        ("October 2026 spinach", [&["spinach"], &[]]),
        ("October 2027", [&[], &[]]),
        // What is noted on the list.
        ("mill", [&[], &["spinach"]]),
        ("mills", [&[], &[]]),
        ("spinach mill shop", [&[], &["spinach"]]),
        ("leek mill", [&[], &[]]),
    ];
    for (typed, wanted) in cases {
        let wanted = wanted.map(|group| group.iter().map(|it| text(it)).collect::<Vec<_>>());
        assert_eq!(it.wanted(typed), wanted, "{typed}");
    }
    let plan = it.find("sale").plans.remove(0);
    assert!(plan.listed);
    let said = said::one(&plan.say);
    assert!(said.contains("40 plants for the sale on"), "{said}");
}

#[test]
fn what_is_over_is_found_and_leads_nowhere() {
    let mut it = planned();
    let plan = it.find("sale").plans.remove(0).plan;
    it.bench.done(Act::EndPlan { plan });
    let plan = it.find("sale").plans.remove(0);
    assert!(!plan.listed);
    let set = |it: &mut Garden, standing: &str| {
        let item = it.find("mill").items.remove(0).item;
        it.bench.done(Act::SetToBuy {
            item,
            standing: text(standing),
        });
    };
    set(&mut it, "bought");
    it.bench.wait_days(60);
    let item = it.find("mill").items.remove(0);
    assert!(item.bought && item.listed);
    it.bench.wait_days(1);
    assert!(!it.find("mill").items.remove(0).listed);
    set(&mut it, "dropped");
    assert!(it.find("mill").items.is_empty());
    // Of which nothing was said for years is not among the plans either.
    assert!(it.find("spinach").plans.remove(0).listed);
    it.bench.wait_days(800);
    assert!(!it.find("spinach").plans.remove(0).listed);
}

#[test]
fn a_note_on_a_plan_is_found_by_the_plan_and_leads_to_it() {
    let mut it = planned();
    let plan = it.find("sale").plans.remove(0).plan;
    it.bench.done(Act::Note {
        about: format!("plan:{plan}"),
        text: text("Ask for a stall near the gate."),
    });
    let found = |it: &mut Garden, typed: &str| it.find(typed).notes;
    let about = found(&mut it, "stall leek")[0].about.clone().unwrap();
    assert_eq!((&*about.page, &*about.id), ("year", &*plan));
    assert_eq!(about.plants[0].crop.key, "leek");
    assert!(found(&mut it, "stall spinach").is_empty());
}

#[test]
fn there_is_an_end_to_what_is_listed_and_that_is_said() {
    let mut it = garden();
    let tomato = it.tomato.clone();
    for number in 0..51 {
        it.bench.done(Act::Note {
            about: format!("tray:{tomato}"),
            text: format!("Aphids again, {number}"),
        });
    }
    let found = it.find("aphids");
    assert_eq!((found.notes.len(), found.more), (50, vec![text("notes")]));
    assert!(found.notes[0].text.ends_with(", 50"), "the newest first");
    let found = it.find("aphids 7");
    assert_eq!((found.notes.len(), found.more.len()), (1, 0));
}

#[test]
fn hostile_queries_find_nothing_and_hurt_nothing() {
    let mut it = garden();
    for typed in [
        "", " \t\n ", "%", "_", "''", "\"", "\0", "\u{202e}", "🌱", "--", "();", "\u{301}",
    ] {
        assert_eq!(it.find(typed), SearchView::default(), "{typed:?}");
    }
    for typed in [
        "' OR 1=1 --",
        "tomato\0",
        "NULL",
        "*",
        "{\"a\":1}",
        "\\",
        "a".repeat(200).as_str(),
    ] {
        let found = it.find(typed);
        assert!(found.more.is_empty(), "{typed:?}");
    }
    assert_eq!(it.short("tomato\0")[2], ["tomato"]);
    let stamp = it.bench.stamp();
    for typed in [
        "x".repeat(100_000),
        "tomato ".repeat(15_000),
        "é".repeat(201),
    ] {
        let error = it.bench.app.search(&stamp, &typed).unwrap_err();
        assert_eq!(error.code, "search_too_long");
    }
    for code in CODES {
        assert!(known(&key("error", code)), "{code}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Whatever is noted is found by each of its words, and by the beginning of
    /// each.
    #[test]
    fn every_note_is_found_by_any_of_its_words(
        notes in proptest::collection::vec("[ -~äöüßéèñçİΣσςЖ日本0-9,.%_'\"-]{1,60}", 1..6),
    ) {
        let home = tempfile::tempdir().unwrap();
        let now = "2026-04-20T07:30:00Z".parse().unwrap();
        let mut journal = Journal::open(home.path(), &stamp(now, 1)).unwrap();
        let mut kept = Vec::new();
        for (number, words) in notes.iter().enumerate() {
            let wish = Wish {
                contents: vec![Content::Noted(Noted { about: Subject::Garden, text: words.clone() })],
                happened: Some(Happened::at(now, chrono_tz::Europe::London)),
                hand: String::new(),
                confirmed: true,
            };
            let stamp = stamp(now, 2 + u8::try_from(number).unwrap());
            // Blanks alone are refused.
            if journal.write(&stamp, wish).is_ok() {
                kept.push(words.clone());
            }
        }
        drop(journal);
        let app = App::open(home.path(), &stamp(now, 100)).unwrap();
        for words in kept {
            for word in words.split(|it: char| !it.is_alphanumeric()).filter(|it| !it.is_empty()) {
                let begun: String = word.chars().take(3).collect();
                for typed in [word, &begun] {
                    let found = app.search(&stamp(now, 101), typed).unwrap().notes;
                    prop_assert!(found.iter().any(|it| it.text == words.trim()|| it.text == words), "{typed:?} of {words:?}");
                }
            }
        }
    }
}

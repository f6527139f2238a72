//! Each refusal is provoked by its own code, and nothing is written.

use crate::codes::REFUSALS;
use crate::content::*;
use crate::id::*;
use crate::stamp::Happened;
use crate::subject::Subject;
use crate::testing::*;
use crate::words::*;
use crate::{Answer, Error, Journal, Wish};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};

type Provoke = fn(&mut World) -> Result<Answer, Error>;

fn write(world: &mut World, contents: Vec<Content>) -> Result<Answer, Error> {
    world.try_at(3, contents, true)
}

fn place_with(change: fn(&mut PlaceDescribed)) -> Content {
    let mut what = place(PLACE);
    change(&mut what);
    Content::PlaceDescribed(what)
}

fn packet_with(change: fn(&mut PacketDescribed)) -> Content {
    let mut what = packet(PACKET);
    change(&mut what);
    Content::PacketDescribed(what)
}

fn garden_with(change: fn(&mut GardenDescribed)) -> Content {
    let mut what = garden();
    change(&mut what);
    Content::GardenDescribed(what)
}

fn tray_with(n: u128, change: fn(&mut TrayDescribed)) -> Content {
    let mut what = tray(n, "A9");
    change(&mut what);
    Content::TrayDescribed(what)
}

fn sown_with(change: fn(&mut Sown)) -> Content {
    let mut what = sown(21, 11, cells(0, 6), 6);
    change(&mut what);
    Content::Sown(what)
}

fn tray_of(n: u128) -> OfTray {
    OfTray {
        tray: TrayId(id(n)),
    }
}

fn noted(about: Subject, text: &str) -> Content {
    Content::Noted(Noted {
        about,
        text: text.into(),
    })
}

fn at(world: &mut World, happened: Happened, content: Content) -> Result<Answer, Error> {
    let stamp = world.stamp(3);
    let wish = Wish {
        contents: vec![content],
        happened: Some(happened),
        hand: String::new(),
        confirmed: true,
    };
    world.journal.write(&stamp, wish)
}

/// A line of a kind that is not known here.
fn unknown_line() -> String {
    format!(
        r#"{{"id":"{0}","act":"{0}","device":"{0}","seq":1,"lamport":1,"happened":{{"local":"2026-04-01T09:00:00","offset_min":120,"zone":"Europe/Berlin"}},"written":"2026-04-01T07:00:00Z","hand":"","kind":"sung_to","v":1,"what":{{}}}}"#,
        id(900)
    )
}

fn provocations() -> BTreeMap<&'static str, Provoke> {
    BTreeMap::from([
        ("nothing_to_write", (|w| write(w, vec![])) as Provoke),
        ("nothing_to_undo", |w| {
            let act = w.at(1, vec![felt(10, Feel::Dry)]);
            w.undo(1, act);
            let stamp = w.stamp(2);
            w.journal.undo(&stamp, act, "", true)
        }),
        ("amendment_by_hand", |w| {
            let amended = Amended {
                root: EntryId(id(1)),
                content: None,
                happened: None,
            };
            write(w, vec![Content::Amended(amended)])
        }),
        ("entry_too_large", |w| {
            let mut trays = Vec::new();
            let mut parts = Vec::new();
            for n in 0..130 {
                let mut one = tray(1000 + n, &format!("X{n}"));
                (one.rows, one.columns) = (40, 50);
                trays.push(Content::TrayDescribed(one));
                parts.push((5000 + n, 1000 + n, cells(0, 2000), 1));
            }
            w.at(1, trays);
            write(w, vec![went_on(sowing(20), &parts)])
        }),
        ("reading_out_of_range", |w| {
            write(w, vec![reading(10.0, 80.0)])
        }),
        ("min_above_max", |w| write(w, vec![reading(20.0, 10.0)])),
        ("before_the_sowing", |w| {
            let mut before = day(0);
            before.local -= chrono::Duration::days(1);
            at(w, before, counted(sowing(20), 3))
        }),
        ("in_the_future", |w| at(w, day(5), felt(10, Feel::Dry))),
        ("zone_unknown", |w| {
            write(w, vec![garden_with(|g| g.zone = "Middle/Earth".into())])
        }),
        ("name_empty", |w| {
            write(w, vec![place_with(|p| p.name = "  ".into())])
        }),
        ("name_too_long", |w| {
            write(w, vec![place_with(|p| p.name = "x".repeat(81))])
        }),
        ("text_empty", |w| {
            write(w, vec![noted(Subject::Garden, " ")])
        }),
        ("text_too_long", |w| {
            write(w, vec![noted(Subject::Garden, &"ü".repeat(10_001))])
        }),
        ("tray_without_cells", |w| {
            write(w, vec![tray_with(13, |t| t.rows = 0)])
        }),
        ("tray_too_large", |w| {
            write(w, vec![tray_with(13, |t| (t.rows, t.columns) = (3, 667))])
        }),
        ("tray_would_lose_cells", |w| {
            write(w, vec![tray_with(10, |t| t.rows = 1)])
        }),
        ("cells_none", |w| {
            write(w, vec![sown_with(|s| s.cells.clear())])
        }),
        ("cells_outside", |w| {
            write(w, vec![sown_with(|s| s.cells = cells(23, 25))])
        }),
        ("cells_taken", |w| {
            write(
                w,
                vec![sown_with(|s| {
                    (s.tray, s.cells) = (TrayId(id(10)), cells(11, 12));
                })],
            )
        }),
        ("code_taken", |w| {
            write(w, vec![tray_with(13, |t| t.code = " a1".into())])
        }),
        ("place_unknown", |w| {
            let moved = TrayMoved {
                tray: TrayId(id(10)),
                place: PlaceId(id(99)),
            };
            write(w, vec![Content::TrayMoved(moved)])
        }),
        ("packet_unknown", |w| {
            write(w, vec![sown_with(|s| s.packet = PacketId(id(99)))])
        }),
        ("tray_unknown", |w| write(w, vec![felt(99, Feel::Dry)])),
        ("sowing_unknown", |w| write(w, vec![counted(sowing(99), 1)])),
        ("batch_unknown", |w| write(w, vec![counted(batch(99), 1)])),
        ("entry_unknown", |w| {
            let stamp = w.stamp(2);
            w.journal.withdraw(&stamp, EntryId(id(99)), "", true)
        }),
        ("entry_not_understood", |w| {
            let stamp = w.stamp(2);
            let line = unknown_line();
            w.journal.take_in(&stamp, [line.as_str()].into_iter())?;
            let stamp = w.stamp(2);
            w.journal.withdraw(&stamp, EntryId(id(900)), "", true)
        }),
        ("id_taken", |w| {
            write(w, vec![sown_with(|s| s.sowing = SowingId(id(20)))])
        }),
        ("place_retired", |w| {
            w.at(1, vec![place_with(|p| p.retired = true)]);
            let moved = TrayMoved {
                tray: TrayId(id(11)),
                place: PlaceId(id(PLACE)),
            };
            write(w, vec![Content::TrayMoved(moved)])
        }),
        ("tray_emptied", |w| {
            w.at(1, vec![Content::TrayEmptied(tray_of(11))]);
            write(w, vec![felt(11, Feel::Dry)])
        }),
        ("tray_occupied", |w| {
            write(w, vec![Content::TrayEmptied(tray_of(10))])
        }),
        ("already_ended", |w| {
            w.at(1, vec![Content::Finished(OfPlants { of: sowing(20) })]);
            write(w, vec![left(sowing(20), 1, Leaving::Sold)])
        }),
        ("something_came_up", |w| {
            w.at(1, vec![counted(sowing(20), 2)]);
            let of = OfSowing {
                sowing: SowingId(id(20)),
            };
            write(w, vec![Content::NothingCameUp(of)])
        }),
        ("number_zero", |w| {
            write(w, vec![left(batch(30), 0, Leaving::Sold)])
        }),
        ("number_too_large", |w| {
            write(w, vec![sown_with(|s| s.seeds = Seeds::About(2_000_000))])
        }),
        ("parts_none", |w| write(w, vec![went_on(batch(30), &[])])),
        ("more_than_there", |w| {
            write(w, vec![went_on(batch(30), &[(31, 11, cells(0, 7), 7)])])
        }),
        ("more_than_seeds", |w| {
            let dug = DugUp {
                sowing: SowingId(id(20)),
                firm: 20,
                soft: 1,
            };
            write(w, vec![Content::DugUp(dug)])
        }),
        ("latitude_out_of_range", |w| {
            write(w, vec![garden_with(|g| g.latitude = Some(f64::NAN))])
        }),
        ("month_day_unknown", |w| {
            write(
                w,
                vec![garden_with(|g| {
                    g.first_frost = Some(MonthDay { month: 2, day: 30 });
                })],
            )
        }),
        ("germination_out_of_range", |w| {
            write(w, vec![packet_with(|p| p.stated_germination = Some(1.01))])
        }),
        ("days_out_of_range", |w| {
            let packet = packet_with(|p| {
                p.stated_days = Some(StatedDays {
                    from: 14,
                    to: 7,
                    at: None,
                });
            });
            write(w, vec![packet])
        }),
        ("test_unknown", |w| write(w, vec![test_counted(40, 1)])),
        ("item_unknown", |w| {
            let noted = Noted {
                about: Subject::Item(ItemId(id(44))),
                text: "two of them".into(),
            };
            write(w, vec![Content::Noted(noted)])
        }),
        ("plan_unknown", |w| {
            let sown = Sown {
                plan: Some(PlanId(id(50))),
                ..sown(21, 11, cells(0, 4), 8)
            };
            write(w, vec![Content::Sown(sown)])
        }),
        ("reservation_unknown", |w| {
            let left = Left {
                of: batch(30),
                number: 1,
                how: Leaving::Sold,
                reservation: Some(ReservationId(id(52))),
            };
            write(w, vec![Content::Left(left)])
        }),
        ("plan_too_far_ahead", |w| write(w, vec![plan_for(800)])),
        ("plan_day_is_past", |w| write(w, vec![plan_for(-1)])),
        ("saved_from_f1", |w| {
            w.at(1, vec![packet_with(|p| p.f1 = true)]);
            let saved = packet(3);
            let saved = PacketDescribed {
                saved_from: Some(sowing(20)),
                ..saved
            };
            write(w, vec![Content::PacketDescribed(saved)])
        }),
        ("test_closed", |w| {
            w.at(1, vec![test_started(40, 20), test_closed(40, 12)]);
            write(w, vec![test_counted(40, 13)])
        }),
        ("more_than_tested", |w| {
            write(w, vec![test_started(40, 20), test_counted(40, 21)])
        }),
        ("before_the_test", |w| {
            w.at(5, vec![test_started(40, 20)]);
            write(w, vec![test_counted(40, 1)])
        }),
        ("year_out_of_range", |w| {
            write(w, vec![packet_with(|p| p.packed_year = Some(2028))])
        }),
        ("depth_out_of_range", |w| {
            write(w, vec![sown_with(|s| s.depth_mm = Some(300.5))])
        }),
        ("soak_out_of_range", |w| {
            write(w, vec![sown_with(|s| s.treatment.soaked_hours = Some(0.0))])
        }),
        ("night_out_of_range", |w| write(w, vec![night(60, -2.0)])),
        ("night_temperature_out_of_range", |w| {
            write(w, vec![night(0, f64::NAN)])
        }),
        ("frost_nothing_reckoned", |w| write(w, vec![frost(None)])),
        ("frost_out_of_range", |w| {
            write(w, vec![frost(Some((200.0, 9)))])
        }),
        ("not_away", |w| {
            let on = stamp(1).happened().local.date();
            write(w, vec![Content::CameBack(CameBack { on })])
        }),
        ("heat_not_off", |w| {
            let back = HeatBack {
                place: PlaceId(id(PLACE)),
                at: stamp(1).happened().local,
                meanwhile: None,
            };
            write(w, vec![Content::HeatBack(back)])
        }),
        ("photo_malformed", |w| {
            let photo = PhotoTaken {
                photo: "../../etc".into(),
                taken: None,
                about: None,
            };
            write(w, vec![Content::PhotoTaken(photo)])
        }),
        ("felt_nothing", |w| {
            let felt = Felt {
                tray: TrayId(id(10)),
                feel: None,
                water: None,
            };
            write(w, vec![Content::Felt(felt)])
        }),
        ("ends_before_it_starts", |w| {
            let day = |day| NaiveDate::from_ymd_opt(2026, 6, day).unwrap();
            let away = Away {
                from: day(9),
                to: day(8),
                open: false,
            };
            write(w, vec![Content::Away(away)])
        }),
        ("job_malformed", |w| {
            let job = JobKey {
                kind: String::new(),
                subject: Subject::Garden,
                opened_by: EntryId(id(1)),
            };
            write(w, vec![Content::JobDismissed(JobDismissed { job })])
        }),
        ("correction_of_another_kind", |w| {
            let root = w.at(1, vec![counted(sowing(20), 3)]);
            let stamp = w.stamp(2);
            let content = felt(10, Feel::Dry);
            w.journal.correct(&stamp, root, content, None, "", true)
        }),
        ("correction_does_not_add_up", |w| {
            let root = w.at(1, vec![left(batch(30), 2, Leaving::Sold)]);
            w.at(2, vec![left(batch(30), 3, Leaving::Sold)]);
            let stamp = w.stamp(3);
            let content = left(batch(30), 4, Leaving::Sold);
            w.journal.correct(&stamp, root, content, None, "", true)
        }),
    ])
}

#[test]
fn every_refusal_is_provoked_and_writes_nothing() {
    let provocations = provocations();
    let codes: BTreeSet<_> = REFUSALS.iter().copied().collect();
    assert_eq!(codes.len(), REFUSALS.len());
    let provoked: BTreeSet<_> = provocations.keys().copied().collect();
    assert_eq!(provoked, codes);
    for (code, provoke) in provocations {
        let mut world = World::new();
        let error = provoke(&mut world).unwrap_err();
        assert_eq!(error.code(), code);
        assert!(matches!(error, Error::Refused(_)), "{code}: {error}");
        assert_eq!(world.journal.count().unwrap(), world.count_before, "{code}");
    }
}

#[test]
fn a_refusal_rolls_back_the_whole_wish() {
    let mut world = World::new();
    world.refuses(
        "tray_unknown",
        1,
        vec![felt(10, Feel::Dry), felt(99, Feel::Dry)],
    );
    world.refuses("reading_out_of_range", 1, vec![reading(f64::NAN, 1.0)]);
    world.refuses("reading_out_of_range", 1, vec![reading(1.0, f64::INFINITY)]);
    let next = vec![went_on(
        sowing(20),
        &[(31, 11, cells(0, 2), 2), (32, 11, cells(1, 3), 2)],
    )];
    world.refuses("cells_taken", 1, next);
    let same = vec![went_on(
        sowing(20),
        &[(31, 11, cells(0, 2), 2), (31, 12, cells(0, 2), 2)],
    )];
    world.refuses("id_taken", 1, same);
    world.refuses(
        "entry_unknown",
        1,
        vec![Content::PhotoNamed(PhotoNamed {
            taken: EntryId(id(5)),
            about: Subject::Garden,
        })],
    );
}

#[test]
fn each_content_is_checked_against_what_the_earlier_ones_leave() {
    let mut world = World::new();
    world.at(
        1,
        vec![
            Content::TrayDescribed(tray(13, "A4")),
            Content::Sown(sown(21, 13, cells(0, 6), 6)),
            counted(sowing(21), 4),
        ],
    );
    world.refuses(
        "cells_taken",
        2,
        vec![
            Content::Sown(sown(22, 13, cells(6, 9), 6)),
            Content::Sown(sown(23, 13, cells(8, 10), 6)),
        ],
    );
}

#[test]
fn a_code_is_free_again_once_its_tray_is_emptied() {
    let mut world = World::new();
    world.at(1, vec![Content::TrayEmptied(tray_of(11))]);
    let act = world.at(2, vec![Content::TrayDescribed(tray(13, "A2"))]);
    world.undo(2, act);
    world.at(2, vec![Content::TrayDescribed(tray(14, "A2"))]);
}

#[test]
fn a_hand_is_bounded_and_a_crossed_zone_refused() {
    let mut world = World::new();
    let mut wrong = day(2);
    wrong.offset_min = i32::MIN + 1;
    assert_eq!(
        at(&mut world, wrong, felt(10, Feel::Dry))
            .unwrap_err()
            .code(),
        "zone_unknown"
    );
    let stamp = world.stamp(2);
    let wish = Wish {
        contents: vec![felt(10, Feel::Dry)],
        happened: None,
        hand: "x".repeat(1000),
        confirmed: true,
    };
    assert_eq!(
        world.journal.write(&stamp, wish).unwrap_err().code(),
        "name_too_long"
    );
}

#[test]
fn the_journal_is_there_after_opening_again() {
    let mut world = World::new();
    world.at(1, vec![counted(sowing(20), 5)]);
    let before = world.dump();
    let home = world.home;
    drop(world.journal);
    let again = Journal::open(home.path(), &stamp(2)).unwrap();
    assert_eq!(dump(&again, false), before);
    assert!(home.path().join("journal/photos").is_dir());
    assert!(home.path().join("journal/backups").is_dir());
}

#[test]
fn a_full_disk_writes_all_of_an_act_or_nothing() {
    let mut world = World::new();
    let pages: i64 = world
        .journal
        .connection()
        .query_row("PRAGMA page_count", [], |row| row.get(0))
        .unwrap();
    world
        .journal
        .connection()
        .pragma_update(None, "max_page_count", pages + 8)
        .unwrap();
    let note = || noted(Subject::Garden, &"x".repeat(9_000));
    let error = loop {
        let before = world.dump();
        match world.try_at(2, vec![felt(10, Feel::Dry), note(), note()], true) {
            Ok(_) => {}
            Err(error) => {
                assert_eq!(world.dump(), before);
                break error;
            }
        }
    };
    assert_eq!(error.code(), "disk_full");
    world
        .journal
        .connection()
        .pragma_update(None, "max_page_count", pages + 1000)
        .unwrap();
    world.at(3, vec![note()]);
}

fn night(days: i64, low_c: f64) -> Content {
    Content::NightForecast(NightForecast {
        night: stamp(1).happened().local.date() + chrono::Duration::days(days),
        place: None,
        low_c,
    })
}

/// By the mean day of the last frosts, and in how many of nine years.
fn frost(spring: Option<(f64, u32)>) -> Content {
    let day = |year| NaiveDate::from_ymd_opt(year, 1, 1).unwrap();
    Content::FrostReckoned(FrostReckoned {
        threshold_c: 0.0,
        first_day: day(2015),
        last_day: day(2025),
        spring: spring.map(|(mean_day, years)| FrostSpread {
            mean_day,
            deviation_days: 10.0,
            years,
            full_years: 9,
        }),
        autumn: None,
    })
}

/// A plan for a day so many days off.
fn plan_for(days: i64) -> Content {
    let day = stamp(1).happened().local.date() + chrono::Duration::days(days);
    Content::PlanDescribed(PlanDescribed {
        rhythm: Rhythm::By { day },
        ..planned(50)
    })
}

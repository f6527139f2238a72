//! What entries add up to.

use crate::Answer;
use crate::content::*;
use crate::id::*;
use crate::state::*;
use crate::subject::Subject;
use crate::testing::*;
use crate::words::*;
use std::collections::BTreeSet;

fn sowing_state(world: &World, n: u128) -> SowingState {
    world.journal.sowing(SowingId(id(n))).unwrap().unwrap()
}

fn batch_state(world: &World, n: u128) -> BatchState {
    world.journal.batch(BatchId(id(n))).unwrap().unwrap()
}

#[test]
fn numbers_follow_a_sowing_from_count_to_pricking_out() {
    let mut world = World::new();
    world.at(7, vec![counted(sowing(20), 8)]);
    world.at(8, vec![left(sowing(20), 1, Leaving::Thinned)]);
    world.at(9, vec![counted(sowing(20), 10)]);
    world.at(10, vec![counted(sowing(20), 9)]);
    world.at(
        11,
        vec![left(sowing(20), 2, Leaving::Lost(LossCause::Eaten))],
    );
    world.at(
        12,
        vec![went_on(
            sowing(20),
            &[(31, 11, cells(0, 6), 6), (32, 12, cells(0, 3), 3)],
        )],
    );
    let state = sowing_state(&world, 20);
    // 8, then 10 beside the one thinned: 11; 1 missing, 2 eaten; 7 there, 9
    // went on, so 2 more had come up, and the missing one stays missing.
    let want = Numbers {
        up: 13,
        gone_on: 9,
        thinned: 1,
        lost: 2,
        missing: 1,
        there: 0,
        ..Numbers::default()
    };
    assert_eq!(state.plants.numbers, want);
    assert!(want.balance());
    let counts: Vec<_> = state.counts.iter().map(|c| (c.there, c.ever_up)).collect();
    assert_eq!(counts, [(8, 8), (10, 11), (9, 11)]);
    assert!(state.plants.ended.is_none(), "seeds may still come");
    assert_eq!(batch_state(&world, 31).plants.numbers.up, 6);
    assert_eq!(batch_state(&world, 32).plants.numbers.there, 3);
    let tray = world.journal.tray(TrayId(id(11))).unwrap().unwrap();
    assert_eq!(tray.occupants[0].plants, batch(31));
    let packet = world.journal.packet(PacketId(id(PACKET))).unwrap().unwrap();
    assert_eq!(packet.seeds_left(), Some(180));
}

#[test]
fn few_half_and_nearly_all_are_shares_of_the_seeds() {
    let mut world = World::new();
    for (up, number) in [(Up::Few, 4), (Up::Half, 10), (Up::NearlyAll, 18)] {
        let of = sowing(20);
        world.at(5, vec![Content::Counted(Counted { of, up })]);
        let counts = sowing_state(&world, 20).counts;
        let last = counts.last().unwrap();
        assert_eq!((last.there, last.exact), (number, false));
    }
}

#[test]
fn a_batch_ends_when_none_are_left_and_a_sowing_when_its_seeds_are_accounted_for() {
    let mut world = World::new();
    world.at(5, vec![left(batch(30), 4, Leaving::PlantedOut)]);
    assert!(batch_state(&world, 30).plants.ended.is_none());
    world.at(6, vec![left(batch(30), 2, Leaving::Sold)]);
    assert!(batch_state(&world, 30).plants.ended.is_some());
    assert!(world.journal.living_batches().unwrap().is_empty());
    // What ended by itself may be called done with all the same.
    world.at(6, vec![Content::Finished(OfPlants { of: batch(30) })]);

    world.at(
        7,
        vec![
            counted(sowing(20), 18),
            Content::DugUp(DugUp {
                sowing: SowingId(id(20)),
                firm: 0,
                soft: 2,
            }),
        ],
    );
    world.at(8, vec![went_on(sowing(20), &[(31, 11, cells(0, 18), 18)])]);
    let state = sowing_state(&world, 20);
    assert!(
        state
            .plants
            .ended
            .is_some_and(|ended| !ended.nothing_came_up)
    );
    assert!(world.journal.living_sowings().unwrap().is_empty());
}

#[test]
fn a_recount_of_a_batch_finds_the_missing_first() {
    let mut world = World::new();
    world.at(5, vec![counted(batch(30), 4)]);
    world.at(6, vec![counted(batch(30), 7)]);
    let numbers = batch_state(&world, 30).plants.numbers;
    assert_eq!((numbers.up, numbers.there, numbers.missing), (7, 7, 0));
}

#[test]
fn more_cannot_have_come_up_than_seeds_while_some_are_missing() {
    let mut world = World::new();
    world.at(5, vec![counted(sowing(20), 20)]);
    world.at(6, vec![counted(sowing(20), 15)]);
    world.at(7, vec![counted(sowing(20), 18)]);
    let numbers = sowing_state(&world, 20).plants.numbers;
    assert_eq!((numbers.up, numbers.there, numbers.missing), (20, 18, 2));
}

#[test]
fn a_count_after_the_end_brings_a_sowing_back() {
    let mut world = World::new();
    let of = OfSowing {
        sowing: SowingId(id(20)),
    };
    world.at(20, vec![Content::NothingCameUp(of)]);
    let given_up = sowing_state(&world, 20).plants.ended.unwrap();
    assert!(given_up.nothing_came_up);
    world.at(25, vec![counted(sowing(20), 3)]);
    let state = sowing_state(&world, 20);
    assert!(state.plants.ended.is_none());
    assert!(state.plants.problems.is_empty());
}

#[test]
fn a_count_dated_back_falls_into_its_place() {
    let mut world = World::new();
    world.at(9, vec![counted(sowing(20), 12)]);
    let stamp = world.stamp(10);
    let wish = crate::Wish {
        contents: vec![counted(sowing(20), 5)],
        happened: Some(day(7)),
        hand: String::new(),
        confirmed: false,
    };
    let answer = world.journal.write(&stamp, wish).unwrap();
    assert!(matches!(answer, Answer::Written { .. }), "{answer:?}");
    let counts: Vec<_> = sowing_state(&world, 20)
        .counts
        .iter()
        .map(|c| c.there)
        .collect();
    assert_eq!(counts, [5, 12]);
}

#[test]
fn a_tray_tells_where_it_stood_and_what_is_free() {
    let mut world = World::new();
    let mut shed = place(3);
    shed.name = "Shed".into();
    world.at(1, vec![Content::PlaceDescribed(shed)]);
    world.at(
        4,
        vec![
            Content::TrayMoved(TrayMoved {
                tray: TrayId(id(10)),
                place: PlaceId(id(3)),
            }),
            Content::CoverChanged(CoverChanged {
                tray: TrayId(id(10)),
                on: true,
            }),
        ],
    );
    let tray = world.journal.tray(TrayId(id(10))).unwrap().unwrap();
    assert_eq!(tray.place(), Some(PlaceId(id(3))));
    assert_eq!(tray.place_at(day(3).instant()), Some(PlaceId(id(PLACE))));
    assert!(tray.is_covered());
    let both = BTreeSet::from([sowing(20), batch(30)]);
    assert_eq!(tray.free_cells(&both), cells(18, 24));
    assert_eq!(tray.free_cells(&BTreeSet::from([batch(30)])).len(), 18);
    assert!(tray.cells_twice(&both).is_empty());
}

#[test]
fn readings_and_job_answers_are_rows() {
    let mut world = World::new();
    world.at(1, vec![reading(10.0, 20.0)]);
    let act = world.at(2, vec![reading(11.0, 21.0)]);
    assert_eq!(
        world.journal.readings(day(1).local.date()).unwrap().len(),
        2
    );
    assert_eq!(
        world.journal.readings(day(2).local.date()).unwrap().len(),
        1
    );
    world.undo(2, act);
    assert!(
        world
            .journal
            .readings(day(2).local.date())
            .unwrap()
            .is_empty()
    );

    let key = |kind: &str| JobKey {
        kind: kind.into(),
        subject: Subject::Tray(TrayId(id(11))),
        opened_by: EntryId(id(7)),
    };
    let put_off = |n| {
        Content::JobPutOff(JobPutOff {
            job: key("feel"),
            until: day(n).local,
        })
    };
    world.at(3, vec![put_off(5)]);
    world.at(
        3,
        vec![
            put_off(4),
            Content::JobDismissed(JobDismissed { job: key("feed") }),
        ],
    );
    let garden = world.journal.garden().unwrap();
    assert_eq!(garden.put_off.len(), 1);
    assert_eq!(garden.put_off[0].until, day(4).local);
    assert_eq!(garden.dismissed, BTreeSet::from([key("feed")]));
    // Of a tray no longer in use nothing is due.
    world.at(
        4,
        vec![Content::TrayEmptied(OfTray {
            tray: TrayId(id(11)),
        })],
    );
    assert!(world.journal.garden().unwrap().put_off.is_empty());
}

#[test]
fn places_come_in_walking_order_and_retired_ones_last() {
    let mut world = World::new();
    for (n, position, retired) in [(50, 2, false), (51, 0, true), (52, 1, false)] {
        let mut one = place(n);
        (one.position, one.retired) = (position, retired);
        world.at(1, vec![Content::PlaceDescribed(one)]);
    }
    let order: Vec<_> = world
        .journal
        .places()
        .unwrap()
        .into_iter()
        .map(|place| place.described.place.0.as_u128())
        .collect();
    assert_eq!(order, [PLACE, 52, 50, 51]);
}

#[test]
fn codes_are_short_unmistakable_and_not_in_use() {
    let mut world = World::new();
    let mut given = BTreeSet::new();
    for n in 0..12_u128 {
        let code = world.journal.next_code().unwrap();
        assert!(code.len() <= 4, "{code}");
        assert!(!code.starts_with(|c| "IOLSZBGQ".contains(c)), "{code}");
        assert!(given.insert(code.clone()), "{code} twice");
        world.at(2, vec![Content::TrayDescribed(tray(60 + n, &code))]);
    }
}

#[test]
fn a_timeline_is_latest_first_and_tells_what_was_withdrawn() {
    let mut world = World::new();
    world.at(2, vec![felt(10, Feel::Moist)]);
    let act = world.at(1, vec![felt(10, Feel::Dry)]);
    world.undo(3, act);
    let subjects = [Subject::Tray(TrayId(id(10))), sowing(20).into()];
    let lines = world.journal.timeline(&subjects, 3).unwrap();
    let seen: Vec<_> = lines
        .iter()
        .map(|line| (line.entry.kind.as_str(), line.withdrawn))
        .collect();
    assert_eq!(seen[..2], [("felt", false), ("felt", true)]);
    assert_eq!(lines.len(), 3);
    let all = world.journal.timeline(&subjects, 100).unwrap();
    let ids: BTreeSet<_> = all.iter().map(|line| line.entry.id).collect();
    assert_eq!(ids.len(), all.len());
}

fn seeds_lost(number: u32) -> Content {
    Content::SeedsLost(SeedsLost {
        sowing: SowingId(id(20)),
        number,
        cause: LossCause::Eaten,
    })
}

#[test]
fn seeds_lost_before_they_came_up_are_not_seedlings() {
    let mut world = World::new();
    world.at(5, vec![seeds_lost(12)]);
    let state = sowing_state(&world, 20);
    assert_eq!((state.seeds_lost(), state.seeds_left()), (12, 8));
    assert_eq!(state.plants.numbers.up, 0);
    assert!(state.plants.ended.is_none());
    world.refuses("more_than_seeds", 6, vec![seeds_lost(9)]);
    let act = world.at(6, vec![seeds_lost(8)]);
    let state = sowing_state(&world, 20);
    assert!(
        state
            .plants
            .ended
            .is_some_and(|ended| ended.nothing_came_up)
    );
    world.undo(7, act);
    assert!(sowing_state(&world, 20).plants.ended.is_none());
}

fn explained(causes: &[Blame], text: &str) -> Content {
    Content::Explained(Explained {
        sowing: SowingId(id(20)),
        causes: causes.iter().copied().collect(),
        text: text.to_owned(),
    })
}

#[test]
fn the_last_explanation_holds_and_an_empty_one_takes_it_back() {
    let mut world = World::new();
    world.at(5, vec![explained(&[Blame::TooCold], "")]);
    world.at(6, vec![explained(&[Blame::Eaten, Blame::Spilt], " mice ")]);
    let said = sowing_state(&world, 20).explained.unwrap();
    assert_eq!(said.causes, [Blame::Eaten, Blame::Spilt].into());
    assert_eq!(said.text, "mice");
    world.at(7, vec![explained(&[], " ")]);
    assert!(sowing_state(&world, 20).explained.is_none());
    // Also of what is over and done with.
    world.at(8, vec![Content::Finished(OfPlants { of: sowing(20) })]);
    world.at(9, vec![explained(&[], "nobody knows")]);
    assert!(sowing_state(&world, 20).explained.is_some());
}

#[test]
fn how_plants_look_is_kept_by_time() {
    let mut world = World::new();
    let of = sowing(20);
    for (day, sight) in [(5, Sight::Sturdy), (8, Sight::Leggy)] {
        world.at(day, vec![Content::Noticed(Noticed { of, sight })]);
    }
    let sights = sowing_state(&world, 20).plants.sights;
    let seen: Vec<Sight> = sights.iter().map(|seen| seen.sight).collect();
    assert_eq!(seen, [Sight::Sturdy, Sight::Leggy]);
}

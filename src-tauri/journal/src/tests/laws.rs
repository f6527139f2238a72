//! Laws that hold for any sequence of acts over a small world: dated back,
//! corrected, undone, merged in any order.

use crate::content::*;
use crate::entry::Entry;
use crate::id::*;
use crate::stamp::Happened;
use crate::subject::Subject;
use crate::testing::*;
use crate::words::*;
use crate::{Answer, Wish};
use proptest::prelude::*;

/// An act in the making: what, on which things, how many, on which day.
pub(super) type Step = (u8, u8, u8, u8);

pub(super) fn steps(most: usize) -> impl Strategy<Value = Vec<Step>> {
    prop::collection::vec((0_u8..36, 0_u8..6, 0_u8..12, 0_u8..30), 1..most)
}

fn plants(n: u8) -> crate::subject::Plants {
    let n = u128::from(n);
    if n < 3 { sowing(20 + n) } else { batch(27 + n) }
}

/// The content of a step; many of them the door refuses, which is as good.
fn content((what, on, number, _): Step) -> Content {
    use Content as C;
    let tray_n = 10 + u128::from(on % 4);
    let of = plants(on);
    let wide = u16::from(number);
    let some = cells(wide, wide + u16::from(on) + 1);
    let n = u32::from(number);
    let of_sowing = SowingId(id(20 + u128::from(on % 3)));
    match what {
        0 | 1 => counted(of, n),
        2 => C::Counted(Counted {
            of,
            up: [Up::Few, Up::Half, Up::NearlyAll][usize::from(number % 3)],
        }),
        3 => left(of, n, Leaving::Thinned),
        4 => left(of, n, Leaving::Lost(LossCause::Eaten)),
        5 => left(
            of,
            n,
            [Leaving::PlantedOut, Leaving::Sold, Leaving::GivenAway][usize::from(number % 3)],
        ),
        6 | 7 => went_on(of, &[(31 + u128::from(number % 3), tray_n, some, n.max(1))]),
        8 => went_on(
            of,
            &[(34, 11, cells(20, 22), 2), (35, 12, cells(20, 21), 1)],
        ),
        9 | 10 => C::Sown(sown(21 + u128::from(number % 2), tray_n, some, n + 4)),
        11 => C::BatchStarted(started(30 + u128::from(number % 6), tray_n, some, n + 1)),
        12 => felt(
            tray_n,
            [Feel::Dry, Feel::Moist, Feel::Wet][usize::from(number % 3)],
        ),
        13 => reading(f64::from(n), f64::from(n) + 8.0),
        14 => C::Finished(OfPlants { of }),
        15 => C::NothingCameUp(OfSowing { sowing: of_sowing }),
        16 => C::DugUp(DugUp {
            sowing: of_sowing,
            firm: n % 3,
            soft: n % 4,
        }),
        17 => C::TrayEmptied(OfTray {
            tray: TrayId(id(tray_n)),
        }),
        18 => C::TrayDescribed(tray(tray_n, &format!("B{number}"))),
        19 => C::Ready(OfPlants { of }),
        20 => C::TrayMoved(TrayMoved {
            tray: TrayId(id(tray_n)),
            place: PlaceId(id(PLACE)),
        }),
        21 => C::Noted(Noted {
            about: of.into(),
            text: format!("note {number}"),
        }),
        22 => C::JobPutOff(JobPutOff {
            job: JobKey {
                kind: "feel".into(),
                subject: Subject::Tray(TrayId(id(tray_n))),
                opened_by: EntryId(id(7)),
            },
            until: day(number).local,
        }),
        23 => C::SeedsLost(SeedsLost {
            sowing: of_sowing,
            number: n % 4,
            cause: LossCause::Eaten,
        }),
        24 => C::Explained(Explained {
            sowing: of_sowing,
            causes: [Blame::Eaten]
                .into_iter()
                .take(usize::from(number % 2))
                .collect(),
            text: String::new(),
        }),
        25 => C::Noticed(Noticed {
            of,
            sight: Sight::Leggy,
        }),
        26 => C::TestStarted(TestStarted {
            test: TestId(id(40 + u128::from(on % 3))),
            packet: PacketId(id(PACKET)),
            seeds: n + 1,
        }),
        27 => C::TestCounted(TestCounted {
            test: TestId(id(40 + u128::from(on % 3))),
            sprouted: n / 2,
        }),
        28 => C::TestClosed(TestClosed {
            test: TestId(id(40 + u128::from(on % 3))),
            packet: PacketId(id(PACKET)),
            sprouted: n / 2,
        }),
        29 => C::SeedsCounted(SeedsCounted {
            packet: PacketId(id(PACKET)),
            left: n,
        }),
        30 => C::ToBuy(ToBuy {
            item: ItemId(id(44 + u128::from(on % 2))),
            crop: "leek".into(),
            variety: String::new(),
            note: String::new(),
            standing: [Standing::Wanted, Standing::Bought, Standing::Dropped]
                [usize::from(number % 3)],
        }),
        31 => C::PlanDescribed(PlanDescribed {
            wanted: n + 1,
            ended: number % 4 == 3,
            ..planned(50 + u128::from(on % 2))
        }),
        32 => C::Reserved(Reserved {
            released: number % 4 == 3,
            ..reserved(52 + u128::from(number % 2), of, n + 1)
        }),
        33 => C::Sown(Sown {
            plan: Some(PlanId(id(50 + u128::from(on % 2)))),
            ..sown(21 + u128::from(number % 2), tray_n, some, n + 4)
        }),
        34 => C::Left(Left {
            of,
            number: n,
            how: Leaving::Sold,
            reservation: Some(ReservationId(id(52 + u128::from(number % 2)))),
        }),
        _ => C::HeatOff(HeatOff {
            place: PlaceId(id(PLACE)),
            from: day(number).local,
            to: None,
            meanwhile: None,
        }),
    }
}

/// Takes a step: a new act, or (one in six) a correction of an earlier one or
/// an undo. The act, if one was written.
fn take(world: &mut World, step: Step, acts: &[EntryId]) -> Option<EntryId> {
    let stamp = world.stamp(30);
    let earlier = acts.get(usize::from(step.2) % acts.len().max(1)).copied();
    let answer = match (step.3, earlier) {
        (0..=2, Some(act)) => world.journal.undo(&stamp, act, "", true),
        (3..=4, Some(root)) => {
            let content = content(step);
            world.journal.correct(&stamp, root, content, None, "", true)
        }
        (n, _) => world.journal.write(
            &stamp,
            Wish {
                contents: vec![content(step)],
                happened: Some(day(n)),
                hand: String::new(),
                confirmed: true,
            },
        ),
    };
    match answer {
        Ok(Answer::Written { act, .. }) => Some(act),
        Ok(Answer::AsksFirst(questions)) => panic!("asked though confirmed: {questions:?}"),
        Err(crate::Error::Refused(_)) => None,
        Err(error) => panic!("{error}"),
    }
}

pub(super) fn run(world: &mut World, steps: &[Step]) -> Vec<EntryId> {
    let mut acts = Vec::new();
    for step in steps {
        acts.extend(take(world, *step, &acts));
    }
    acts
}

fn assert_balance(world: &World) {
    for n in 20..24 {
        if let Some(state) = world.journal.sowing(SowingId(id(n))).unwrap() {
            assert!(state.plants.numbers.balance(), "{state:?}");
        }
    }
    for n in 30..37 {
        if let Some(state) = world.journal.batch(BatchId(id(n))).unwrap() {
            assert!(state.plants.numbers.balance(), "{state:?}");
        }
    }
}

pub(super) fn take_in(world: &mut World, lines: &[String]) {
    let stamp = world.stamp(31);
    world
        .journal
        .take_in(&stamp, lines.iter().map(String::as_str))
        .unwrap();
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(32))]

    #[test]
    fn one_by_one_equals_a_rebuild_and_numbers_balance(steps in steps(40)) {
        let mut world = World::new();
        run(&mut world, &steps);
        assert_balance(&world);
        let before = world.dump();
        world.journal.rebuild().unwrap();
        prop_assert_eq!(world.dump(), before);
    }

    #[test]
    fn undoing_the_last_act_gives_the_states_before_it(steps in steps(16)) {
        let mut world = World::new();
        let mut acts = Vec::new();
        for step in steps {
            let before = world.states();
            if let Some(act) = take(&mut world, step, &acts) {
                let after = world.states();
                let undone = world.undo(30, act);
                prop_assert_eq!(&world.states(), &before);
                world.undo(30, undone);
                prop_assert_eq!(&world.states(), &after);
                acts.push(act);
            }
        }
    }

    #[test]
    fn merging_is_a_union_in_any_order_any_number_of_times(
        here in steps(14),
        there in steps(14),
        order in any::<prop::sample::Index>(),
        seed in any::<[u8; 8]>(),
    ) {
        let mut a = World::new();
        let mut b = World::empty(0xD0);
        take_in(&mut b, &a.journal.lines().unwrap());
        run(&mut a, &here);
        run(&mut b, &there);
        let mut all = a.journal.lines().unwrap();
        all.extend(b.journal.lines().unwrap());
        take_in(&mut a, &b.journal.lines().unwrap());
        take_in(&mut b, &all);
        prop_assert_eq!(a.states(), b.states());

        // A third gets them shuffled, in two overlapping parts.
        all.sort_by_key(|line| {
            use sha2::Digest;
            sha2::Sha256::new().chain_update(seed).chain_update(line).finalize()
        });
        let cut = order.index(all.len());
        let mut c = World::empty(0xC0);
        take_in(&mut c, &all[cut..]);
        take_in(&mut c, &all);
        take_in(&mut c, &all[..cut]);
        prop_assert_eq!(a.states(), c.states());
        assert_balance(&c);
        let before = c.dump();
        c.journal.rebuild().unwrap();
        prop_assert_eq!(c.dump(), before);
    }

    #[test]
    fn wild_contents_never_break_the_fold_and_are_kept(
        steps in steps(20),
        wild in prop::collection::vec((any::<prop::sample::Index>(), any::<prop::sample::Index>(), 0_usize..12), 1..12),
    ) {
        let mut world = World::new();
        run(&mut world, &steps);
        let lines = world.journal.lines().unwrap();
        let made: Vec<String> = wild
            .into_iter()
            .map(|(line, leaf, value)| mutate(&lines[line.index(lines.len())], leaf, value))
            .collect();
        take_in(&mut world, &made);
        assert_balance(&world);
        world.journal.garden().unwrap();
        let kept = world.journal.lines().unwrap();
        for line in made.iter().filter(|line| Entry::parse(line).is_ok()) {
            prop_assert!(kept.contains(line));
        }
        let before = world.dump();
        world.journal.rebuild().unwrap();
        prop_assert_eq!(world.dump(), before);
    }

    #[test]
    fn any_text_is_parsed_or_refused(text in ".*", bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        drop(Entry::parse(&text));
        drop(Entry::parse(&String::from_utf8_lossy(&bytes)));
    }

    #[test]
    fn any_local_time_has_an_instant(seconds in any::<i64>(), offset in any::<i32>()) {
        let local = chrono::DateTime::from_timestamp(seconds % 8_000_000_000_000, 0)
            .unwrap()
            .naive_utc();
        let happened = Happened { local, offset_min: offset, zone: String::new() };
        let _ = happened.instant();
        let _ = crate::stamp::instant_of(local, chrono_tz::Australia::Lord_Howe);
    }
}

/// A line with one of its leaves made wild.
fn mutate(line: &str, leaf: prop::sample::Index, value: usize) -> String {
    let mut json: serde_json::Value = serde_json::from_str(line).unwrap();
    let wild = [
        serde_json::json!(null),
        serde_json::json!(0),
        serde_json::json!(-1),
        serde_json::json!(4_294_967_295_u32),
        serde_json::json!(65_535),
        serde_json::json!(1e300),
        serde_json::json!(9_007_199_254_740_993_u64),
        serde_json::json!("+262142-12-31T23:59:59"),
        serde_json::json!("-262143-01-01T00:00:00"),
        serde_json::json!(id(20).to_string()),
        serde_json::json!({"as": "number", "number": 4_294_967_295_u32}),
        serde_json::json!([[], {}, "'; DROP TABLE entries; --"]),
    ];
    let mut paths = Vec::new();
    leaves(&json, String::new(), &mut paths);
    let path = &paths[leaf.index(paths.len())];
    *json.pointer_mut(path).unwrap() = wild[value].clone();
    json.to_string()
}

fn leaves(json: &serde_json::Value, path: String, paths: &mut Vec<String>) {
    match json {
        serde_json::Value::Object(map) => {
            for (key, value) in map {
                leaves(value, format!("{path}/{key}"), paths);
            }
        }
        serde_json::Value::Array(list) => {
            for (n, value) in list.iter().enumerate() {
                leaves(value, format!("{path}/{n}"), paths);
            }
        }
        _ => paths.push(path),
    }
}

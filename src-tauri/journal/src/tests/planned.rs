//! Plans, and plants kept for somebody.

use crate::content::*;
use crate::id::*;
use crate::state::{PlanState, ReservationState};
use crate::testing::*;
use chrono::Duration;

fn plan(world: &World) -> Option<PlanState> {
    world.journal.plan(PlanId(id(50))).unwrap()
}

fn kept(world: &World) -> Option<ReservationState> {
    world.journal.reservation(ReservationId(id(52))).unwrap()
}

fn for_plan(n: u128) -> Content {
    Content::Sown(Sown {
        plan: Some(PlanId(id(50))),
        ..sown(n, 11, cells(0, 4), 8)
    })
}

fn handed(number: u32) -> Content {
    Content::Left(Left {
        of: batch(30),
        number,
        how: Leaving::Sold,
        reservation: Some(ReservationId(id(52))),
    })
}

#[test]
fn a_plan_knows_the_sowings_that_answer_it_and_its_last_word() {
    let mut world = World::new();
    world.at(1, vec![Content::PlanDescribed(planned(50))]);
    let act = world.at(2, vec![for_plan(21)]);
    let more = PlanDescribed {
        wanted: 12,
        ..planned(50)
    };
    world.at(3, vec![Content::PlanDescribed(more)]);
    let state = plan(&world).unwrap();
    assert_eq!(state.described.wanted, 12);
    assert_eq!((state.opened_by.at, state.last.at), (day(1), day(3)));
    assert_eq!(state.sowings.len(), 1);
    assert_eq!(state.sowings[0].sowing, SowingId(id(21)));
    world.undo(4, act);
    assert!(plan(&world).unwrap().sowings.is_empty());
}

#[test]
fn a_plan_that_is_undone_leaves_what_was_sown_for_it() {
    let mut world = World::new();
    let act = world.at(1, vec![Content::PlanDescribed(planned(50))]);
    world.at(2, vec![for_plan(21)]);
    world.undo(3, act);
    assert_eq!(plan(&world), None);
    let sowing = world.journal.sowing(SowingId(id(21))).unwrap();
    assert!(sowing.unwrap().plants.ended.is_none());
}

#[test]
fn a_plan_that_is_ended_is_no_longer_among_those_that_live() {
    let mut world = World::new();
    let living = |world: &World| {
        let since = stamp(0).now - Duration::days(9);
        world.journal.plans_touched_since(since).unwrap().len()
    };
    world.at(1, vec![Content::PlanDescribed(planned(50))]);
    assert_eq!(living(&world), 1);
    let ended = PlanDescribed {
        ended: true,
        ..planned(50)
    };
    let act = world.at(2, vec![Content::PlanDescribed(ended)]);
    assert_eq!(living(&world), 0);
    world.undo(3, act);
    assert_eq!(living(&world), 1);
}

#[test]
fn a_sale_has_some_over_rounded_up() {
    let sale = |wanted, over_percent| {
        let day = day(60).local.date();
        PlanDescribed {
            wanted,
            rhythm: Rhythm::Sale { day, over_percent },
            ..planned(50)
        }
        .to_raise()
    };
    assert_eq!([sale(60, 15), sale(10, 15), sale(10, 0)], [69, 12, 10]);
    assert_eq!(planned(50).to_raise(), 10);
}

#[test]
fn handing_over_lessens_what_is_kept_until_nothing_is() {
    let mut world = World::new();
    world.at(1, vec![Content::Reserved(reserved(52, batch(30), 4))]);
    world.at(2, vec![handed(3)]);
    assert_eq!(kept(&world).unwrap().remaining(), 1);
    assert_eq!(world.journal.reservations().unwrap().len(), 1);
    let act = world.at(3, vec![handed(1)]);
    assert!(world.journal.reservations().unwrap().is_empty());
    world.undo(4, act);
    assert_eq!(kept(&world).unwrap().remaining(), 1);
    let released = Reserved {
        released: true,
        ..reserved(52, batch(30), 4)
    };
    world.at(5, vec![Content::Reserved(released)]);
    assert_eq!(kept(&world).unwrap().remaining(), 0);
}

/// Six cuttings are there.
#[test]
fn more_is_kept_than_is_raised_only_after_asking() {
    let mut world = World::new();
    world.at(1, vec![Content::Reserved(reserved(52, batch(30), 4))]);
    let two = world.try_at(
        1,
        vec![Content::Reserved(reserved(53, batch(30), 2))],
        false,
    );
    assert!(matches!(two, Ok(crate::Answer::Written { .. })));
    let three = Content::Reserved(reserved(53, batch(30), 3));
    world.asks("more_reserved_than_raised", 2, three);
}

#[test]
fn of_a_crop_all_that_is_there_or_may_come_up_counts() {
    let mut world = World::new();
    let of = |number| {
        Content::Reserved(Reserved {
            of: Wares::Crop {
                crop: "tomato".into(),
                variety: String::new(),
            },
            ..reserved(52, batch(30), number)
        })
    };
    // Twenty seeds may come up.
    let answer = world.try_at(1, vec![of(20)], false);
    assert!(matches!(answer, Ok(crate::Answer::Written { .. })));
    world.asks("more_reserved_than_raised", 1, of(21));
}

#[test]
fn plants_that_others_were_promised_are_sold_only_after_asking() {
    let mut world = World::new();
    world.at(1, vec![Content::Reserved(reserved(52, batch(30), 4))]);
    let two = world.try_at(2, vec![left(batch(30), 2, Leaving::Sold)], false);
    assert!(matches!(two, Ok(crate::Answer::Written { .. })));
    let own = world.try_at(2, vec![handed(1)], false);
    assert!(matches!(own, Ok(crate::Answer::Written { .. })));
    let one = left(batch(30), 1, Leaving::Sold);
    world.asks("others_were_promised", 3, one);
}

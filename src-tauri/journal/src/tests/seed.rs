//! Seeds left, germination tests, what to buy.

use crate::content::*;
use crate::id::*;
use crate::state::{PacketState, TestState};
use crate::testing::*;
use crate::words::*;

fn packet_state(world: &World) -> PacketState {
    let packet = world.journal.packet(PacketId(id(PACKET))).unwrap();
    packet.unwrap()
}

fn test_state(world: &World) -> Option<TestState> {
    world.journal.test(TestId(id(40))).unwrap()
}

fn counted_left(left: u32) -> Content {
    Content::SeedsCounted(SeedsCounted {
        packet: PacketId(id(PACKET)),
        left,
    })
}

#[test]
fn sowing_and_testing_take_seeds_off_until_they_are_counted() {
    let mut world = World::new();
    assert_eq!(packet_state(&world).seeds_left(), Some(180));
    world.at(2, vec![test_started(40, 20)]);
    assert_eq!(packet_state(&world).seeds_left(), Some(160));
    let act = world.at(3, vec![counted_left(90)]);
    assert_eq!(packet_state(&world).seeds_left(), Some(90));
    let next = Content::Sown(sown(21, 11, cells(0, 4), 8));
    world.at(4, vec![next]);
    assert_eq!(packet_state(&world).seeds_left(), Some(82));
    assert_eq!(packet_state(&world).seeds_sown, 28);
    world.undo(5, act);
    assert_eq!(packet_state(&world).seeds_left(), Some(152));
}

#[test]
fn a_test_runs_from_its_start_to_its_close() {
    let mut world = World::new();
    let start = world.at(1, vec![test_started(40, 20)]);
    world.at(6, vec![test_counted(40, 9)]);
    let running = world.journal.running_tests().unwrap();
    assert_eq!(running.len(), 1);
    assert_eq!(running[0].counts[0].sprouted, 9);
    assert!(packet_state(&world).tests[0].closed.is_none());
    let close = world.at(15, vec![test_closed(40, 14)]);
    assert!(world.journal.running_tests().unwrap().is_empty());
    let closed = packet_state(&world).tests[0].closed.clone().unwrap();
    assert_eq!(closed.sprouted, 14);
    assert_eq!(closed.at.at, day(15));
    world.undo(16, close);
    assert_eq!(test_state(&world).unwrap().closed, None);
    // Without its start nothing is left of it, and one undo brings all back.
    let gone = world.undo(17, start);
    assert_eq!(test_state(&world), None);
    assert!(packet_state(&world).tests.is_empty());
    world.undo(18, gone);
    assert_eq!(test_state(&world).unwrap().counts.len(), 1);
}

#[test]
fn a_stocktake_leaves_its_last_word() {
    let mut world = World::new();
    for (n, found) in [(3, Stock::Test), (5, Stock::Keep)] {
        let packet = PacketId(id(PACKET));
        world.at(n, vec![Content::StockTaken(StockTaken { packet, found })]);
    }
    let stock = packet_state(&world).stock.unwrap();
    assert_eq!((stock.found, stock.at.at), (Stock::Keep, day(5)));
}

#[test]
fn what_is_wanted_lives_until_it_is_bought() {
    let mut world = World::new();
    let item = |standing| {
        Content::ToBuy(ToBuy {
            item: ItemId(id(44)),
            crop: "leek".into(),
            variety: String::new(),
            note: String::new(),
            standing,
        })
    };
    world.at(1, vec![item(Standing::Wanted)]);
    assert_eq!(world.journal.to_buy(0).unwrap().len(), 1);
    let bought = world.at(2, vec![item(Standing::Bought)]);
    assert!(world.journal.to_buy(0).unwrap().is_empty());
    let past = world.journal.to_buy(5).unwrap();
    assert_eq!(
        (past[0].opened_by.at.clone(), past[0].last.at.clone()),
        (day(1), day(2))
    );
    world.undo(3, bought);
    assert_eq!(world.journal.to_buy(0).unwrap().len(), 1);
}

//! Correcting, withdrawing, undoing and redoing.

use crate::content::*;
use crate::id::*;
use crate::subject::Subject;
use crate::testing::*;
use crate::words::*;
use crate::{Answer, Error};

fn correct(world: &mut World, root: EntryId, content: Content) -> Result<EntryId, Error> {
    let stamp = world.stamp(9);
    match world
        .journal
        .correct(&stamp, root, content, None, "", true)?
    {
        Answer::Written { act, .. } => Ok(act),
        Answer::AsksFirst(questions) => panic!("{questions:?}"),
    }
}

#[test]
fn undo_redo_and_undo_again() {
    let mut world = World::new();
    let before = world.states();
    let act = world.at(5, vec![counted(sowing(20), 7), felt(10, Feel::Dry)]);
    let after = world.states();
    let undone = world.undo(5, act);
    assert_eq!(world.states(), before);
    let redone = world.undo(6, undone);
    assert_eq!(world.states(), after);
    world.undo(6, redone);
    assert_eq!(world.states(), before);
}

#[test]
fn a_correction_holds_and_its_undo_restores_the_earlier_one() {
    let mut world = World::new();
    let root = world.at(5, vec![counted(sowing(20), 7)]);
    correct(&mut world, root, counted(sowing(20), 8)).unwrap();
    let with_eight = world.states();
    let second = correct(&mut world, root, counted(sowing(20), 9)).unwrap();
    let line = world.journal.entry(root).unwrap().unwrap();
    assert!(line.corrected && !line.withdrawn);
    assert_eq!(line.holds, Some(counted(sowing(20), 9)));
    world.undo(9, second);
    assert_eq!(world.states(), with_eight);
}

#[test]
fn an_amendment_names_the_root_and_lets_the_subjects_of_both_contents_know() {
    let mut world = World::new();
    let root = world.at(5, vec![felt(10, Feel::Dry)]);
    let felt_in = |world: &World, n| {
        let tray = world.journal.tray(TrayId(id(n))).unwrap().unwrap();
        tray.felt.len()
    };
    correct(&mut world, root, felt(11, Feel::Dry)).unwrap();
    assert_eq!((felt_in(&world, 10), felt_in(&world, 11)), (0, 1));
    correct(&mut world, root, felt(10, Feel::Dry)).unwrap();
    assert_eq!((felt_in(&world, 10), felt_in(&world, 11)), (1, 0));
}

#[test]
fn a_correction_can_move_an_entry_in_time_and_must_add_up() {
    let mut world = World::new();
    let root = world.at(5, vec![counted(sowing(20), 7)]);
    let stamp = world.stamp(9);
    let content = counted(sowing(20), 7);
    world
        .journal
        .correct(&stamp, root, content.clone(), Some(day(4)), "", true)
        .unwrap();
    let state = world.journal.sowing(SowingId(id(20))).unwrap().unwrap();
    assert_eq!(state.counts[0].at.at, day(4));
    // Back to what was written, time and all.
    world
        .journal
        .correct(
            &world_stamp(),
            root,
            content.clone(),
            Some(day(5)),
            "",
            true,
        )
        .unwrap();
    let state = world.journal.sowing(SowingId(id(20))).unwrap().unwrap();
    assert_eq!(state.counts[0].at.at, day(5));
    let mut early = day(0);
    early.local -= chrono::Duration::days(2);
    let error = world
        .journal
        .correct(&world_stamp(), root, content, Some(early), "", true)
        .unwrap_err();
    assert_eq!(error.code(), "before_the_sowing");
}

fn world_stamp() -> crate::stamp::Stamp {
    stamp(9)
}

#[test]
fn withdrawing_a_sowing_takes_all_of_it_and_one_undo_brings_it_back() {
    let mut world = World::new();
    world.at(5, vec![counted(sowing(20), 7)]);
    world.at(6, vec![went_on(sowing(20), &[(31, 11, cells(0, 6), 6)])]);
    world.at(7, vec![left(batch(31), 2, Leaving::Sold)]);
    let before = world.states();
    let sown = world.journal.sowing(SowingId(id(20))).unwrap().unwrap();
    let stamp = world.stamp(8);
    let root = sown.opened_by.entry;
    let Answer::Written { act, touched } = world.journal.withdraw(&stamp, root, "", true).unwrap()
    else {
        panic!("it was confirmed");
    };
    assert!(touched.contains(&batch(31).into()));
    assert!(world.journal.sowing(SowingId(id(20))).unwrap().is_none());
    assert!(world.journal.batch(BatchId(id(31))).unwrap().is_none());
    let tray = world.journal.tray(TrayId(id(11))).unwrap().unwrap();
    assert!(tray.occupants.is_empty());
    world.undo(8, act);
    assert_eq!(world.states(), before);
}

#[test]
fn plants_do_not_come_back_to_cells_that_others_live_in() {
    let mut world = World::new();
    let act = world.at(5, vec![Content::Finished(OfPlants { of: sowing(20) })]);
    world.at(6, vec![Content::Sown(sown(21, 10, cells(0, 3), 3))]);
    let before = world.dump();
    let stamp = world.stamp(7);
    let error = world.journal.undo(&stamp, act, "", true).unwrap_err();
    assert_eq!(error.code(), "cells_taken");
    assert_eq!(world.dump(), before);
    world.refuses("cells_taken", 7, vec![counted(sowing(20), 3)]);
}

#[test]
fn a_sowing_can_be_corrected_in_place() {
    let mut world = World::new();
    world.at(5, vec![counted(sowing(20), 7)]);
    let root = world
        .journal
        .sowing(SowingId(id(20)))
        .unwrap()
        .unwrap()
        .opened_by
        .entry;
    let content = Content::Sown(sown(20, 10, cells(0, 10), 24));
    correct(&mut world, root, content).unwrap();
    let state = world.journal.sowing(SowingId(id(20))).unwrap().unwrap();
    assert_eq!((state.seeds(), state.plants.numbers.up), (24, 7));
    let error = correct(
        &mut world,
        root,
        Content::Sown(sown(20, 10, cells(10, 14), 24)),
    );
    assert_eq!(error.unwrap_err().code(), "cells_taken");
}

#[test]
fn undoing_a_sowing_says_how_many_entries_go_with_it() {
    let mut world = World::new();
    let before = world.states();
    let act = world.at(
        5,
        vec![
            Content::TrayDescribed(tray(13, "A4")),
            Content::TrayMoved(TrayMoved {
                tray: TrayId(id(13)),
                place: PlaceId(id(PLACE)),
            }),
            Content::Sown(sown(21, 13, cells(0, 6), 6)),
        ],
    );
    world.at(6, vec![felt(13, Feel::Dry)]);
    world.at(7, vec![counted(sowing(21), 2)]);
    let after = world.states();
    let stamp = world.stamp(8);
    let Answer::AsksFirst(questions) = world.journal.undo(&stamp, act, "", false).unwrap() else {
        panic!("others_build_on_it was not asked");
    };
    assert_eq!(questions[0].code, "others_build_on_it");
    assert_eq!(questions[0].args["entries"], crate::Value::Number(2.0));
    assert_eq!(world.states(), after);
    let undone = world.undo(8, act);
    assert_eq!(world.states(), before);
    world.undo(8, undone);
    assert_eq!(world.states(), after);
}

#[test]
fn what_was_sown_again_stands_by_itself() {
    let mut world = World::new();
    let first = sowing_of(&world, 20).opened_by.entry;
    let again = Sown {
        again_of: Some(SowingId(id(20))),
        ..sown(21, 11, cells(0, 6), 10)
    };
    world.at(3, vec![Content::Sown(again)]);
    let of_first = world
        .journal
        .timeline(&[Subject::Sowing(SowingId(id(20)))], 9)
        .unwrap();
    assert_eq!(of_first.len(), 2);
    let stamp = world.stamp(4);
    world.journal.withdraw(&stamp, first, "", true).unwrap();
    assert!(world.journal.sowing(SowingId(id(21))).unwrap().is_some());
    assert!(world.journal.sowing(SowingId(id(20))).unwrap().is_none());
}

fn sowing_of(world: &World, n: u128) -> crate::state::SowingState {
    world.journal.sowing(SowingId(id(n))).unwrap().unwrap()
}

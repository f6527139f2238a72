//! Taking in another journal.

use crate::Answer;
use crate::content::*;
use crate::entry::{Entry, MAX_COUNTER};
use crate::id::*;
use crate::state::Problem;
use crate::subject::Subject;
use crate::testing::*;
use crate::words::*;

fn take_in(world: &mut World, lines: &[String]) -> crate::Report {
    let stamp = world.stamp(9);
    world
        .journal
        .take_in(&stamp, lines.iter().map(String::as_str))
        .unwrap()
}

#[test]
fn another_device_comes_to_the_same_states() {
    let mut here = World::new();
    here.at(5, vec![counted(sowing(20), 7), reading(10.0, 20.0)]);
    let mut there = World::empty(0xD0);
    let lines = here.journal.lines().unwrap();
    let report = take_in(&mut there, &lines);
    assert_eq!((report.new, report.known), (lines.len() as u64, 0));
    assert_eq!(there.states(), here.states());
    let again = take_in(&mut there, &lines);
    assert_eq!((again.new, again.known), (0, lines.len() as u64));
    assert!(again.touched.is_empty() && !again.new_identity);
    // Both go on, and meet again.
    there.at(6, vec![counted(sowing(20), 9)]);
    here.at(6, vec![felt(10, Feel::Dry)]);
    take_in(&mut here, &there.journal.lines().unwrap());
    take_in(&mut there, &here.journal.lines().unwrap());
    assert_eq!(there.states(), here.states());
}

#[test]
fn damaged_lines_are_named_and_left_out() {
    let mut world = World::new();
    let mut good = World::empty(0xD0);
    good.at(1, vec![Content::PlaceDescribed(place(70))]);
    let line = good.journal.lines().unwrap().remove(0);
    let beyond = line.replace("\"lamport\":1", &format!("\"lamport\":{}", MAX_COUNTER + 1));
    assert_ne!(beyond, line);
    let lines = [
        "{".to_owned(),
        line.clone(),
        String::new(),
        beyond,
        "[".repeat(100_000),
        line.replace("\"seq\":1", "\"seq\":0"),
        format!("{line}\r"),
        "x".repeat(crate::entry::MAX_LINE + 1),
    ];
    let report = take_in(&mut world, &lines);
    assert_eq!(report.damaged, [1, 4, 5, 6, 8]);
    assert_eq!((report.new, report.known), (1, 1));
}

#[test]
fn a_cloned_identity_keeps_both_entries_and_makes_a_new_one() {
    let mut here = World::new();
    let device = here.journal.device();
    here.at(5, vec![felt(10, Feel::Dry)]);
    let last = here.journal.lines().unwrap().pop().unwrap();
    let other = last.replace("\"dry\"", "\"wet\"");
    assert_ne!(other, last);
    let report = take_in(&mut here, &[other]);
    assert!(report.new_identity);
    assert_ne!(here.journal.device(), device);
    let tray = here.journal.tray(TrayId(id(10))).unwrap().unwrap();
    assert_eq!(tray.felt.len(), 2);
    here.at(6, vec![felt(10, Feel::Moist)]);
    let written = Entry::parse(here.journal.lines().unwrap().last().unwrap()).unwrap();
    assert_eq!((written.device, written.seq), (here.journal.device(), 1));
}

#[test]
fn unknown_kinds_and_versions_are_kept_byte_for_byte() {
    let world = World::new();
    let line = world.journal.lines().unwrap().remove(0);
    let lines = [
        line.replace("\"kind\":\"garden_described\"", "\"kind\" : \"sung_to\""),
        line.replace("\"v\":1", "\"v\":2, \"later\": [1.50]"),
    ];
    let mut there = World::empty(0xD0);
    let report = take_in(&mut there, &lines);
    assert_eq!((report.new, report.unknown_kinds), (2, 2));
    there.journal.rebuild().unwrap();
    assert_eq!(there.journal.lines().unwrap(), lines);
    let shown = there.journal.timeline(&[Subject::Garden], 9).unwrap();
    assert!(shown.len() == 2 && shown.iter().all(|line| line.unknown));
}

#[test]
fn a_count_of_a_withdrawn_sowing_is_shown_as_a_problem() {
    let mut here = World::new();
    let mut there = World::empty(0xD0);
    take_in(&mut there, &here.journal.lines().unwrap());
    there.at(6, vec![counted(sowing(20), 4)]);
    let sown = here.journal.sowing(SowingId(id(20))).unwrap().unwrap();
    let stamp = here.stamp(6);
    let answer = here
        .journal
        .withdraw(&stamp, sown.opened_by.entry, "", false)
        .unwrap();
    assert!(
        matches!(answer, Answer::Written { .. }),
        "nothing builds on it here"
    );
    take_in(&mut here, &there.journal.lines().unwrap());
    let state = here.journal.sowing(SowingId(id(20))).unwrap().unwrap();
    assert!(state.plants.problems.contains(&Problem::NeverDescribed));
    assert_eq!(state.plants.numbers.there, 4);
}

#[test]
fn sales_beyond_a_batch_are_a_problem_and_still_balance() {
    let mut here = World::new();
    let mut there = World::empty(0xD0);
    take_in(&mut there, &here.journal.lines().unwrap());
    there.at(6, vec![left(batch(30), 4, Leaving::Sold)]);
    here.at(6, vec![left(batch(30), 5, Leaving::GivenAway)]);
    take_in(&mut here, &there.journal.lines().unwrap());
    let state = here.journal.batch(BatchId(id(30))).unwrap().unwrap();
    assert!(state.plants.numbers.balance());
    assert_eq!(state.plants.numbers.up, 9);
    assert!(state.plants.problems.contains(&Problem::MoreLeftThanThere));
}

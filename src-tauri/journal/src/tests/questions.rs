//! Each question is asked before anything is written, and a yes writes it.

use crate::codes::QUESTIONS;
use crate::content::*;
use crate::testing::*;
use crate::{Answer, Value, Wish};
use std::collections::BTreeSet;

#[test]
fn every_question_is_asked_first() {
    let mut asked = BTreeSet::new();
    let mut world = World::new();
    let question = world.asks("above_the_seeds", 1, counted(sowing(20), 21));
    assert_eq!(question.args["seeds"], Value::Number(20.0));
    asked.insert(question.code);

    let question = world.asks("count_falls", 2, counted(sowing(20), 18));
    assert_eq!(question.args["lost"], Value::Number(3.0));
    asked.insert(question.code);

    let question = world.asks("above_the_batch", 2, counted(batch(30), 8));
    assert_eq!(question.args["before"], Value::Number(6.0));
    asked.insert(question.code);

    world.at(3, vec![reading(12.0, 20.0)]);
    let question = world.asks("reading_differs", 4, reading(35.0, 45.0));
    assert_eq!(question.args["before"], Value::Celsius(16.0));
    asked.insert(question.code);

    world.at(5, vec![Content::Finished(OfPlants { of: batch(30) })]);
    asked.insert(world.asks("after_the_end", 6, counted(batch(30), 8)).code);

    world.at(6, vec![test_started(40, 20), test_counted(40, 9)]);
    let question = world.asks("test_count_falls", 7, test_counted(40, 8));
    assert_eq!(question.args["before"], Value::Number(9.0));
    asked.insert(question.code);

    let mut stall = World::new();
    let seven = Content::Reserved(reserved(52, batch(30), 7));
    let question = stall.asks("more_reserved_than_raised", 1, seven);
    assert_eq!(question.args["raised"], Value::Number(6.0));
    asked.insert(question.code);
    let sold = left(batch(30), 1, Leaving::Sold);
    let question = stall.asks("others_were_promised", 2, sold);
    assert_eq!(question.args["rest"], Value::Number(5.0));
    asked.insert(question.code);

    let stamp = world.stamp(40);
    let wish = |confirmed| Wish {
        contents: vec![counted(sowing(20), 18)],
        happened: Some(day(8)),
        hand: String::new(),
        confirmed,
    };
    let before = world.dump();
    let Answer::AsksFirst(questions) = world.journal.write(&stamp, wish(false)).unwrap() else {
        panic!("far_back was not asked");
    };
    assert_eq!(questions[0].code, "far_back");
    assert_eq!(world.dump(), before);
    assert!(matches!(
        world.journal.write(&stamp, wish(true)).unwrap(),
        Answer::Written { .. }
    ));
    asked.insert("far_back");

    let sown = world
        .journal
        .sowing(crate::id::SowingId(id(20)))
        .unwrap()
        .unwrap()
        .opened_by
        .entry;
    let before = world.dump();
    let Answer::AsksFirst(questions) = world.journal.withdraw(&stamp, sown, "", false).unwrap()
    else {
        panic!("others_build_on_it was not asked");
    };
    assert_eq!(questions[0].code, "others_build_on_it");
    assert_eq!(questions[0].args["entries"], Value::Number(3.0));
    assert_eq!(world.dump(), before);
    asked.insert(questions[0].code);

    assert_eq!(asked, QUESTIONS.iter().copied().collect());
}

#[test]
fn what_is_as_usual_is_not_asked_about() {
    let mut world = World::new();
    for content in [
        counted(sowing(20), 5),
        counted(sowing(20), 20),
        left(sowing(20), 4, Leaving::Thinned),
        counted(sowing(20), 16),
        counted(batch(30), 6),
        reading(5.0, 30.0),
        reading(9.0, 31.0),
    ] {
        let answer = world.try_at(2, vec![content.clone()], false).unwrap();
        assert!(
            matches!(answer, Answer::Written { .. }),
            "{content:?}: {answer:?}"
        );
    }
}

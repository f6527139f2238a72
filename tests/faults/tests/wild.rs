//! Wild inputs to every decoder: the corpus, and some mutations of it.
//! `cargo xtask soak fuzz` does the same for longer.

use plumule_faults::fuzz::{self, Figures, TARGETS};

/// Mutations of each target: seconds in a plain build.
const MUTATIONS: u64 = 150;

#[test]
fn the_corpus_and_mutations_of_it_break_no_promise() {
    for target in TARGETS {
        let seeds = fuzz::seeds(target);
        assert!(!seeds.is_empty(), "{}: no corpus", target.name);
        let mut figures = Figures::default();
        let most = seeds.len() as u64 + MUTATIONS;
        if let Err((input, what)) = fuzz::run(target, 7, &mut figures, &mut |n| n < most) {
            let input = String::from_utf8_lossy(&input);
            panic!("{}: {what}\n{input:.2000}", target.name);
        }
        let kinds = figures.answers.len();
        println!(
            "{}: {} inputs, {kinds} kinds of answer",
            target.name, figures.inputs
        );
        assert!(kinds > 4, "{}: {:?}", target.name, figures.answers);
    }
}

#[test]
fn the_seeds_that_are_made_are_as_they_are_kept() {
    for (target, name, bytes) in fuzz::made() {
        let target = TARGETS.iter().find(|it| it.name == target).unwrap();
        let kept = std::fs::read(fuzz::corpus(target).join(&name)).unwrap();
        assert!(kept == bytes, "{name}: `fuzz seeds` writes it anew");
    }
}

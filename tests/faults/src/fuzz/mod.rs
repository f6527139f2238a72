//! Wild inputs to every decoder that reads what others wrote: from a committed
//! corpus by seeded mutations, as ordinary tests in short and for as long as
//! one likes as `cargo xtask soak fuzz`.
//!
//! The stable toolchain counts no coverage, so a mutation is kept for more of
//! them when the decoder answers it in a way that was not met before.

pub mod archive;
mod brought;
mod mutate;
mod targets;

pub use targets::{TARGETS, Target, made};

use crate::chance::Chance;
use mutate::mutated;
use std::collections::BTreeSet;
use std::fs;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

/// One input takes no longer than this, seconds: forty times what the slowest
/// takes in a plain build on a machine that does nothing else (judgement).
const SLOWEST_SECS: u64 = 120;
/// Inputs kept for more mutations, of each target.
const MOST_KEPT: usize = 2_000;
/// Longest input, bytes.
const LONGEST: usize = 1 << 20;

/// What a run came to.
#[derive(Clone, Debug, Default)]
pub struct Figures {
    /// Inputs.
    pub inputs: u64,
    /// Answers that differ in kind.
    pub answers: BTreeSet<String>,
    /// The slowest, and its time.
    pub slowest: Duration,
    /// Inputs that more are made from.
    kept: Vec<Vec<u8>>,
}

/// Where the corpus of a target is.
pub fn corpus(target: &Target) -> PathBuf {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("corpus");
    folder.join(target.name)
}

/// The corpus of a target, by the names of its files.
pub fn seeds(target: &Target) -> Vec<(String, Vec<u8>)> {
    let mut found: Vec<_> = fs::read_dir(corpus(target))
        .unwrap()
        .map(|file| file.unwrap().path())
        .map(|path| {
            let name = path.file_name().unwrap().to_str().unwrap().to_owned();
            (name, fs::read(path).unwrap())
        })
        .collect();
    found.sort();
    found
}

/// Gives an input to a target and notes what it answers.
///
/// # Errors
/// If the target panics, breaks one of its promises or takes too long.
pub fn give(target: &Target, input: &[u8], figures: &mut Figures) -> Result<bool, String> {
    let began = Instant::now();
    let answer = catch_unwind(AssertUnwindSafe(|| (target.give)(input)));
    let took = began.elapsed();
    figures.inputs += 1;
    figures.slowest = figures.slowest.max(took);
    if took > Duration::from_secs(SLOWEST_SECS) {
        return Err(format!("took {took:?}"));
    }
    let answer = answer.map_err(|panic| {
        let text = panic.downcast_ref::<String>().cloned();
        let word = panic.downcast_ref::<&str>().map(|text| (*text).to_owned());
        text.or(word).unwrap_or_else(|| "a panic".to_owned())
    })?;
    // Numbers and names differ without end.
    let kind: String = answer
        .chars()
        .filter(|letter| !letter.is_ascii_digit())
        .take(100)
        .collect();
    Ok(figures.answers.insert(kind))
}

/// Gives mutations of the corpus until told to stop.
///
/// # Errors
/// The input and what came of it, at the first that fails.
pub fn run(
    target: &Target,
    seed: u64,
    figures: &mut Figures,
    go_on: &mut dyn FnMut(u64) -> bool,
) -> Result<(), (Vec<u8>, String)> {
    let mut chance = Chance(seed);
    if figures.kept.is_empty() {
        for (_, input) in seeds(target) {
            give(target, &input, figures).map_err(|what| (input.clone(), what))?;
            figures.kept.push(input);
        }
    }
    while go_on(figures.inputs) {
        let mut input = mutated(&figures.kept, &mut chance);
        input.truncate(LONGEST);
        let new = give(target, &input, figures).map_err(|what| (input.clone(), what))?;
        if new && figures.kept.len() < MOST_KEPT {
            figures.kept.push(input);
        }
    }
    Ok(())
}

//! The rows that need no window: each a set of ratios of paired runs.

mod entry;
mod opening;
mod scaling;
mod search;
mod taking_in;
mod verdicts;
mod works;

use crate::world::{World, copy};
use serde::Serialize;
use std::cmp::Reverse;
use std::error::Error;
use std::num::NonZero;
use std::path::Path;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Instant;

type Outcome<T> = Result<T, Box<dyn Error>>;

/// A row as it is printed, one JSON object a line.
#[derive(Serialize)]
struct Row {
    /// Its name, as in the table of budgets.
    name: &'static str,
    /// What was measured over what it is held against, run by run.
    ratios: Vec<f64>,
    /// Anything worth telling about how it was measured.
    note: String,
}

/// Measures what the first argument names and prints its rows.
pub fn measure() -> Outcome<()> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let rows = match words.iter().map(String::as_str).collect::<Vec<_>>()[..] {
        ["opening", runs, worlds] => opening::rows(runs.parse()?, worlds.as_ref())?,
        ["entry", runs, worlds] => entry::rows(runs.parse()?, worlds.as_ref())?,
        ["taking-in", runs, worlds] => taking_in::rows(runs.parse()?, worlds.as_ref())?,
        ["search", runs, worlds] => search::rows(runs.parse()?, worlds.as_ref())?,
        ["scaling", runs, worlds] => scaling::rows(runs.parse()?, worlds.as_ref())?,
        ["seconds", worlds] => {
            println!("{}", serde_json::to_string(&works::seconds(worlds.as_ref())?)?);
            return Ok(());
        }
        ["questions", file] => return verdicts::questions(file.as_ref()),
        ["verdicts", file] => return verdicts::answer(file.as_ref()),
        ["worlds", worlds, home] => return make(worlds.as_ref(), home.as_ref()),
        _ => return Err("opening | entry | taking-in | search | scaling RUNS WORLDS, seconds WORLDS, questions | verdicts FILE, worlds WORLDS HOME".into()),
    };
    for row in rows {
        println!("{}", serde_json::to_string(&row)?);
    }
    Ok(())
}

/// Makes the journals of all rows, and in a home one of fifty years that ends
/// today, on all cores.
fn make(worlds: &Path, home: &Path) -> Outcome<()> {
    let longest = World::of(50, 200);
    let mut all = scaling::worlds();
    all.retain(|world| world.years < longest.years);
    // The longest first.
    all.sort_by_key(|world| Reverse(world.years * world.a_year + world.living));
    let next = AtomicUsize::new(0);
    let work = || {
        loop {
            let made = match next.fetch_add(1, Ordering::Relaxed) {
                0 => twice(longest, worlds, home),
                number => match all.get(number - 1) {
                    Some(world) => world.kept_in(worlds).map(drop),
                    None => return Ok(()),
                },
            };
            made.map_err(|e: Box<dyn Error>| e.to_string())?;
        }
    };
    std::thread::scope(|scope| {
        let cores = std::thread::available_parallelism().map_or(1, NonZero::get);
        let workers: Vec<_> = (0..cores).map(|_| scope.spawn(work)).collect();
        let done = workers.into_iter().map(|it| it.join());
        done.collect::<Result<Result<(), String>, _>>()
    })
    .map_err(|_| "making a journal ended early")??;
    Ok(())
}

/// A journal among the others, and in a home one of the same past that ends
/// today.
fn twice(world: World, worlds: &Path, home: &Path) -> Outcome<()> {
    world.past(home)?;
    let kept = world.home(worlds);
    copy(home, &kept)?;
    world.end(&kept)?;
    let today = chrono::Utc::now().date_naive();
    Ok(World { today, ..world }.end(home)?)
}

/// Seconds that some work takes.
fn seconds<T>(work: impl FnOnce() -> Outcome<T>) -> Outcome<f64> {
    let begun = Instant::now();
    work()?;
    Ok(begun.elapsed().as_secs_f64())
}

/// Ratios of two kinds of work done in turn, so that both meet the same
/// machine; the first pair only warms up.
fn paired(
    runs: usize,
    mut ours: impl FnMut() -> Outcome<f64>,
    mut theirs: impl FnMut() -> Outcome<f64>,
) -> Outcome<Vec<f64>> {
    let mut ratios = Vec::new();
    for run in 0..=runs {
        let (a, b) = if run % 2 == 0 {
            let a = ours()?;
            (a, theirs()?)
        } else {
            let b = theirs()?;
            (ours()?, b)
        };
        if run > 0 {
            ratios.push(a / b);
        }
    }
    Ok(ratios)
}

/// The middle one.
fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or(f64::NAN)
}

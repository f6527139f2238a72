//! `cargo xtask bench`: every budget measured against its like, in one run.

mod profiles;
mod row;
mod window;

pub use profiles::profiles;

use std::fs;
use std::path::Path;
use std::thread;

use serde::Deserialize;

use crate::command::{Command, Words};
use crate::house::House;
use crate::{app, cross, need};
use row::{Row, SLOW_DISK};

/// Paired runs of a row, of which the median counts.
const RUNS: usize = 5;
/// Runs of what takes long.
const FEW: usize = 3;
/// Runs of what waits for the disk, which is quick and slow by turns.
const MANY: usize = 9;
/// Taps on the round, and keys in the seed box.
const TAPS: usize = 24;
/// Where the figures are kept for readers.
const PAGE: &str = "tests/bench/FIGURES.md";
const INTRO: &str = "# The budgets, measured\n\nMade by `cargo xtask bench`. Each figure is a ratio of two \
    kinds of work done in turn on the same machine in one run, so it means the same on another; those that \
    are not are a weight in kB and times that the browser measures on a processor slowed four times.\n\n";

/// Measures all rows, prints them and writes the page; true if every row is
/// inside its budget.
///
/// # Errors
/// When something cannot be built or does not run.
pub fn bench(house: &House, json: bool, as_is: bool) -> Result<bool, String> {
    need::node()?;
    need::packages(&[need::TO_RUN, need::TO_TEST, need::TO_MEASURE], as_is)?;
    let say = |what: &str| {
        if !json {
            println!("{what}");
        }
    };
    let [folder, user] = ["bench", "windows"].map(|name| house.empty_folder(name));
    let (folder, user) = (folder?, user?);
    let others = ["plumule-empty", "plumule-bench"];
    let [empty, measure] = others.map(|name| house.target.join("release").join(named(name)));
    let full = thread::scope(|scope| {
        // Mostly waits for the network.
        let python = scope.spawn(|| cross::environment(house, Words::KeptBack));
        say("building: an empty app, the measures");
        app::others_alike(house, &others, Words::KeptBack)?;
        say("building the app; making journals of up to fifty years");
        let worlds = Command::new(&measure).args(["worlds"]);
        let worlds = worlds.args([&folder, &window::home(&user)]);
        let worlds = scope.spawn(|| worlds.text());
        let full = app::for_people_beside(house, &others, Words::KeptBack)?;
        python.join().map_err(|_| "SciPy: ended early")??;
        worlds.join().map_err(|_| "journals: ended early")??;
        Ok::<_, String>(full)
    })?;
    let mut rows: Vec<Row> = Vec::new();
    let mut told = |more: Vec<Row>| {
        for row in &more {
            say(&row.line());
        }
        rows.extend(more);
    };
    for (what, runs) in [
        ("opening", RUNS),
        ("entry", MANY),
        ("taking-in", RUNS),
        ("search", RUNS),
        ("scaling", RUNS),
    ] {
        told(measured(Command::new(&measure), what, runs, &folder)?);
    }
    told(slow_disk(&measure, &folder)?);
    told(vec![verdicts(house, &measure, &folder)?]);
    told(window::rows(&user, &full, &empty, FEW)?);
    told(vec![binary(&full, &empty)?, bundle(house)?]);
    told(taps(house)?);
    // Some hundred megabytes of journals.
    for name in ["bench", "windows"] {
        house.empty_folder(name)?;
    }
    let page = house.path(PAGE);
    fs::write(&page, row::page(INTRO, &rows)).map_err(|e| format!("{}: {e}", page.display()))?;
    if json {
        println!("{}", row::json(&rows)?);
    } else {
        println!("\n{}", row::table(&rows));
    }
    Ok(rows.iter().all(Row::holds))
}

fn named(program: &str) -> String {
    format!("{program}{}", std::env::consts::EXE_SUFFIX)
}

/// The rows that the program measures by itself.
fn measured(measure: Command, what: &str, runs: usize, worlds: &Path) -> Result<Vec<Row>, String> {
    #[derive(Deserialize)]
    struct Told {
        name: String,
        ratios: Vec<f64>,
        note: String,
    }
    let text = measure
        .args([what, &runs.to_string()])
        .args([worlds])
        .text()?;
    let read = |line: &str| {
        let told: Told = serde_json::from_str(line).map_err(|e| format!("{what}: {e}: {line}"))?;
        Row::new(&told.name, told.ratios, told.note)
    };
    text.lines().map(read).collect()
}

/// The entry once more with each sync a millisecond longer. A disk that is kept
/// in the memory of its host answers at once, and then the row tells what the
/// processor does; no flash of a telephone is so quick (judgement).
fn slow_disk(measure: &Path, worlds: &Path) -> Result<Vec<Row>, String> {
    let slowed = Command::new("strace")
        .args(["--follow-forks", "--seccomp-bpf", "--output=/dev/null"])
        .args(["--trace=fsync,fdatasync"])
        .args(["--inject=fsync,fdatasync:delay_exit=1000"])
        .args([measure]);
    let rows = measured(slowed, "entry", MANY, worlds)?;
    Ok(rows.into_iter().map(|row| row.named(SLOW_DISK)).collect())
}

/// Ten thousand verdicts here and by SciPy, in turn, after both gave the same
/// sums.
fn verdicts(house: &House, measure: &Path, folder: &Path) -> Result<Row, String> {
    #[derive(Deserialize)]
    struct Told {
        seconds: f64,
        any_more: f64,
        reach: f64,
    }
    let file = folder.join("questions.jsonl");
    let file = file.to_string_lossy().into_owned();
    Command::new(measure).args(["questions", &file]).text()?;
    let python = cross::environment(house, Words::KeptBack)?;
    let script = house.path("tests/bench/verdicts.py");
    let told = |command: Command| {
        let text = command.text()?;
        serde_json::from_str::<Told>(&text).map_err(|e| format!("verdicts: {e}: {text}"))
    };
    let mut ratios = Vec::new();
    for _ in 0..FEW {
        let ours = told(Command::new(measure).args(["verdicts", &file]))?;
        let theirs = told(
            Command::new(&python)
                .args([&script])
                .args([&file])
                // One core, as the answers here have.
                .env("OPENBLAS_NUM_THREADS", "1"),
        )?;
        for (a, b) in [(ours.any_more, theirs.any_more), (ours.reach, theirs.reach)] {
            // The same to a thousandth of a verdict each.
            if (a - b).abs() > 10.0 {
                return Err(format!("the verdicts differ: {a} here, {b} by SciPy"));
            }
        }
        ratios.push(ours.seconds / theirs.seconds);
    }
    let note = "10,000 questions, one core each, their sums alike".to_owned();
    Row::new("10,000 verdicts against NumPy and SciPy", ratios, note)
}

fn binary(full: &Path, empty: &Path) -> Result<Row, String> {
    let size = |path: &Path| {
        let found = fs::metadata(path).map_err(|e| format!("{}: {e}", path.display()))?;
        Ok::<_, String>(found.len() as f64)
    };
    let ratio = size(full)? / size(empty)?;
    let note = "the same profile and web view".to_owned();
    Row::new("release binary against an empty app's", vec![ratio], note)
}

/// What the UI weighs before the round is on the screen, of its budget.
fn bundle(house: &House) -> Result<Row, String> {
    let text = Command::new("node")
        .args(["scripts/bundle-size.mjs"])
        .folder(house.path("ui"))
        .text()?;
    let kilobytes = text
        .lines()
        .find(|line| line.contains("before the round"))
        .and_then(|line| line.split_whitespace().next()?.parse().ok())
        .ok_or_else(|| format!("the bundle's size is not told:\n{text}"))?;
    let all = text.lines().last().unwrap_or_default().trim().to_owned();
    Row::new("UI bundle at the start, kB gzip", vec![kilobytes], all)
}

/// Taps on the round, keys in the seed box, and its list swept through.
fn taps(house: &House) -> Result<Vec<Row>, String> {
    #[derive(Deserialize)]
    struct Took {
        taps: usize,
        median: f64,
        p98: f64,
    }
    #[derive(Deserialize)]
    struct Swept {
        pictures: usize,
        late: f64,
    }
    #[derive(Deserialize)]
    struct Told {
        round: Vec<Took>,
        seed: Vec<Took>,
        few: Took,
        sweep: Swept,
    }
    house.npm(["run", "screens:build"]).kept()?;
    let text = Command::new("node")
        .args(["scripts/taps.mjs", "main"])
        .args([TAPS, FEW].map(|number| number.to_string()))
        .folder(house.path("ui"))
        .text()?;
    let told: Told = serde_json::from_str(&text).map_err(|e| format!("taps: {e}: {text}"))?;
    let row = |name: &str, of: &[Took], among: &str| {
        let number = of.first().map_or(0, |of| of.taps);
        let medians: Vec<String> = of.iter().map(|of| of.median.to_string()).collect();
        let note = format!(
            "98th percentile of {number}, {among}, a processor slowed four times; medians {} of 100",
            medians.join(", ")
        );
        Row::new(name, of.iter().map(|of| of.p98).collect(), note)
    };
    let ratios = told.seed.iter().map(|many| many.median / told.few.median);
    Ok(vec![
        row("a tap to its picture, ms", &told.round, "200 trays")?,
        row(
            "a key in the seed box to its picture, ms",
            &told.seed,
            "500 packets",
        )?,
        Row::new(
            "a key among 500 packets against one among a few",
            ratios.collect(),
            "medians, a processor slowed four times".to_owned(),
        )?,
        Row::new(
            "pictures that came more than one too late, share",
            vec![told.sweep.late],
            format!(
                "of {} while 500 packets are swept through",
                told.sweep.pictures
            ),
        )?,
    ])
}

//! `cargo xtask bench --profiles`: what the settings of the release profile
//! cost and bring, each against the same programs built one way.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use super::row::{self, Row};
use super::{FEW, named};
use crate::command::{Command, Words};
use crate::house::House;
use crate::{need, ui};

/// Where the figures are kept for readers.
const PAGE: &str = "tests/bench/PROFILES.md";
const INTRO: &str = "# The release profile, measured\n\n\
    Made by `cargo xtask bench --profiles`. Each figure is that of the programs built one way over \
    that of the programs built as they are released, in turn, another one first each time, on the \
    same machine in one run. They are released mixed: as small as can be, but for the packages that \
    `Cargo.toml` names; two units each, no LTO.\n\n";
/// Package overrides begin so in `Cargo.toml`.
const OVERRIDE: &str = "[profile.release.package.";
const PROGRAMS: [&str; 2] = ["plumule", "plumule-bench"];

/// A way to build, and what it sets otherwise than `Cargo.toml`.
struct Way {
    name: &'static str,
    settings: Vec<String>,
}

fn ways(house: &House) -> Result<Vec<Way>, String> {
    let manifest = house.path("Cargo.toml");
    let text = fs::read_to_string(&manifest).map_err(|e| format!("{}: {e}", manifest.display()))?;
    let way = |name, settings: &[&str]| Way {
        name,
        settings: settings
            .iter()
            .map(|it| format!("profile.release.{it}"))
            .collect(),
    };
    let packages = text.lines().filter_map(|line| line.strip_prefix(OVERRIDE));
    let small = packages.filter_map(|line| line.strip_suffix(']'));
    let small: Vec<String> = small
        .map(|name| format!("package.{name}.opt-level=\"z\""))
        .collect();
    let small: Vec<&str> = small.iter().map(String::as_str).collect();
    Ok(vec![
        way("as released", &[]),
        way("all for speed", &["opt-level=3"]),
        way("all for size", &small),
        way(
            "a little larger, four units",
            &["opt-level=\"s\"", "codegen-units=4"],
        ),
        way("fat LTO, one unit", &["lto=\"fat\"", "codegen-units=1"]),
    ])
}

/// Builds the app each way, measures, prints the rows and writes the page.
///
/// # Errors
/// When something cannot be built or does not run.
pub fn profiles(house: &House, as_is: bool) -> Result<(), String> {
    need::node()?;
    need::packages(&[need::TO_RUN], as_is)?;
    ui::built(house, Words::KeptBack)?;
    let folder = house.empty_folder("profiles")?;
    let ways = ways(house)?;
    let mut built = Vec::new();
    for (number, way) in ways.iter().enumerate() {
        println!("building {}", way.name);
        built.push(build(house, way, &folder.join(number.to_string()))?);
    }
    let worlds = folder.join("worlds");
    fs::create_dir_all(&worlds).map_err(|e| format!("{}: {e}", worlds.display()))?;
    let mut ratios: BTreeMap<(usize, String), Vec<f64>> = BTreeMap::new();
    for run in 0..=FEW {
        // Another one first each time: what comes after a rest is quicker.
        let turns = (0..built.len()).cycle().skip(run).take(built.len());
        let mut seconds = vec![BTreeMap::new(); built.len()];
        for turn in turns {
            if let (Some(programs), Some(took)) = (built.get(turn), seconds.get_mut(turn)) {
                *took = measured(programs, &worlds)?;
            }
        }
        // The first run only warms up.
        if run == 0 {
            continue;
        }
        for (number, work, ratio) in against_the_first(&seconds) {
            ratios.entry((number, work)).or_default().push(ratio);
        }
    }
    let sizes = built
        .iter()
        .map(|programs| size(&programs.join(named(PROGRAMS[0]))));
    let sizes: Vec<BTreeMap<String, f64>> = sizes.collect::<Result<_, _>>()?;
    for (number, what, ratio) in against_the_first(&sizes) {
        ratios.insert((number, what), vec![ratio]);
    }
    let row = |((number, what), ratios): ((usize, String), Vec<f64>)| {
        let name = ways.get(number).map_or("", |way| way.name);
        Row::new(&format!("{name}: {what}"), ratios, String::new())
    };
    let rows = ratios.into_iter().map(row).collect::<Result<Vec<_>, _>>()?;
    house.empty_folder("profiles")?;
    let page = house.path(PAGE);
    fs::write(&page, row::page(INTRO, &rows)).map_err(|e| format!("{}: {e}", page.display()))?;
    println!("\n{}", row::table(&rows));
    Ok(())
}

/// Each of the others' figures over that of the first.
fn against_the_first(
    all: &[BTreeMap<String, f64>],
) -> impl Iterator<Item = (usize, String, f64)> + '_ {
    let first = all.first();
    let others = all.iter().enumerate().skip(1);
    others.flat_map(move |(number, of)| {
        of.iter().filter_map(move |(what, figure)| {
            Some((number, what.clone(), figure / first?.get(what)?))
        })
    })
}

/// The folder with the programs, built that way.
fn build(house: &House, way: &Way, folder: &Path) -> Result<PathBuf, String> {
    let settings = way.settings.iter().flat_map(|it| ["--config", it]);
    house
        .cargo(["build", "--locked", "--release"])
        .args(settings)
        .args(PROGRAMS.iter().flat_map(|name| ["-p", name, "--bin", name]))
        .kept()?;
    fs::create_dir_all(folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    for program in PROGRAMS.map(named) {
        let from = house.target.join("release").join(&program);
        fs::copy(&from, folder.join(&program)).map_err(|e| format!("{}: {e}", from.display()))?;
    }
    Ok(folder.to_owned())
}

/// Seconds that some works take.
fn measured(programs: &Path, worlds: &Path) -> Result<BTreeMap<String, f64>, String> {
    let text = Command::new(programs.join(named(PROGRAMS[1])))
        .args(["seconds"])
        .args([worlds])
        .text()?;
    serde_json::from_str(&text).map_err(|e| format!("seconds: {e}: {text}"))
}

fn size(program: &Path) -> Result<BTreeMap<String, f64>, String> {
    let found = fs::metadata(program).map_err(|e| format!("{}: {e}", program.display()))?;
    Ok(BTreeMap::from([("binary".to_owned(), found.len() as f64)]))
}

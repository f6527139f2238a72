//! `cargo xtask test`: everything that must hold before a change is taken in.

use std::env;
use std::fs;

use crate::command::Words;
use crate::house::House;
use crate::step::{self, Outcome, Step, Turn};
use crate::{app, bindings, cross, layers, need, phones, shots, tidy, ui, wasm};

/// The steps, the cheap ones first as far as one can go before another.
const STEPS: &[Step] = &[
    step("format", "formatting", format),
    step("tidy", "house rules", tidy::check),
    step("layers", "layers", layers::check),
    step("ui-install", "UI: packages", ui_install),
    step("ui-lint", "UI: lints", |house| npm_script(house, "lint")),
    step("ui-check", "UI: types", |house| npm_script(house, "check")),
    step("ui-build", "UI: build", |house| {
        ui::build(house, Words::KeptBack).map(none)
    }),
    step("wasm", "agronomy without a system", wasm::check).beside(),
    step("phones", "the shell's types for phones", phones::check).beside(),
    step("rust", "inner crates: tests", inner_tests),
    step("cross", "the mathematics against SciPy", cross::short),
    step("exchange", "exports read back by Python", cross::exchange),
    step("bindings", "types shared with the UI", bindings::check),
    step("ui-test", "UI: tests", |house| npm_script(house, "test")),
    step("ui-screens", "UI: screens, in a browser", |house| {
        npm_script(house, "screens")
    }),
    step("docs", "documentation", docs),
    step("lints", "lints", lints),
    step("app", "the app for tests: build", |house| {
        app::for_tests(house, Words::KeptBack).map(none)
    }),
    step("shell", "shell: tests", shell_tests),
    // Its windows are waited for, but not for ever.
    step("story", "the real app, end to end", story).alone(),
    step(
        "release",
        "no test clock for people",
        app::has_no_test_clock,
    ),
];

const INNER: [&str; 3] = ["plumule-agronomy", "plumule-journal", "plumule-app"];

const fn step(name: &'static str, about: &'static str, check: fn(&House) -> Outcome) -> Step {
    Step {
        name,
        about,
        check,
        turn: Turn::Next,
    }
}

/// Installs what is missing and runs every step, or the one that is wanted;
/// true if all passed.
///
/// # Errors
/// When there is no such step or something cannot be installed.
pub fn test(house: &House, only: Option<&str>, as_is: bool) -> Result<bool, String> {
    let chosen = choose(only)?;
    need::node()?;
    need::packages(&[need::TO_RUN, need::TO_TEST], as_is)?;
    Ok(step::run_all(house, &chosen))
}

/// The steps by name, one a line, in their order.
pub fn names() -> String {
    let line = |Step { name, about, .. }: &Step| format!("    {name:<12} {about}");
    STEPS.iter().map(line).collect::<Vec<_>>().join("\n")
}

fn choose(only: Option<&str>) -> Result<Vec<&'static Step>, String> {
    let wanted = |step: &&Step| only.is_none_or(|name| step.name == name);
    let chosen: Vec<_> = STEPS.iter().filter(wanted).collect();
    match (chosen.is_empty(), only) {
        (true, Some(name)) => Err(format!(
            "there is no step {name}; `cargo xtask help` names them"
        )),
        _ => Ok(chosen),
    }
}

fn none<T>(_: T) -> String {
    String::new()
}

fn format(house: &House) -> Outcome {
    let words = ["fmt", "--all", "--check", "--", "--color", "never"];
    house.cargo(words).kept().map(none)
}

fn ui_install(house: &House) -> Outcome {
    let fresh = ui::install(house, Words::KeptBack)?;
    Ok(if fresh { "installed" } else { "as locked" }.into())
}

fn npm_script(house: &House, script: &str) -> Outcome {
    ui::install(house, Words::KeptBack)?;
    house
        .npm(["run", script])
        .env("CI", "true")
        .kept()
        .map(none)
}

fn lints(house: &House) -> Outcome {
    ui::built(house, Words::KeptBack)?;
    house
        .cargo(["clippy", "--locked", "--workspace", "--all-targets"])
        // These two are no tests of a plain run, so that all targets leaves them out.
        .args(["--test", "story", "--test", "shots"])
        .args(["--features", "plumule/test-hooks", "--", "-D", "warnings"])
        .kept()
        .map(none)
}

fn docs(house: &House) -> Outcome {
    let packages = INNER.iter().flat_map(|name| ["-p", *name]);
    house
        .cargo(["doc", "--locked", "--no-deps", "--document-private-items"])
        .args(packages)
        .env("RUSTDOCFLAGS", "-D warnings")
        .kept()
        .map(none)
}

/// The tests of all that needs no web view, with the examples in the docs; they
/// have a home of their own and must leave it empty.
fn inner_tests(house: &House) -> Outcome {
    house.cargo(["test", "--locked", "--no-run"]).kept()?;
    let home = house.empty_folder("home")?;
    let mut command = house
        .cargo(["test", "--locked", "--no-fail-fast"])
        .env("HOME", &home)
        .env("TS_RS_EXPORT_DIR", house.empty_folder("bindings-of-tests")?);
    for (name, usual) in [("CARGO_HOME", ".cargo"), ("RUSTUP_HOME", ".rustup")] {
        if let (None, Some(home)) = (env::var_os(name), env::home_dir()) {
            command = command.env(name, home.join(usual));
        }
    }
    for name in [
        "XDG_DATA_HOME",
        "XDG_CONFIG_HOME",
        "XDG_CACHE_HOME",
        "XDG_STATE_HOME",
    ] {
        command = command.without(name);
    }
    let output = command.kept()?;
    let left: Vec<_> = fs::read_dir(&home)
        .map_err(|e| e.to_string())?
        .filter_map(|entry| Some(entry.ok()?.file_name().to_string_lossy().into_owned()))
        .collect();
    if !left.is_empty() {
        return Err(format!(
            "a test wrote to the home folder: {}",
            left.join(", ")
        ));
    }
    passed(&output)
}

fn shell_tests(house: &House) -> Outcome {
    ui::built(house, Words::KeptBack)?;
    let words = [
        "test",
        "--locked",
        "-p",
        "plumule",
        "--features",
        "test-hooks",
    ];
    passed(&house.cargo(words).kept()?)
}

fn story(house: &House) -> Outcome {
    let app = app::for_tests(house, Words::KeptBack)?;
    let told = match shots::drive(house, "story", &app)?.run() {
        Ok(told) => return passed(&told),
        Err(told) => told,
    };
    let failed = failed(&told);
    // A press may meet a window that is still moving: one or two stories are
    // told once more, and which is said.
    if failed.is_empty() || failed.len() > 2 {
        return Err(told);
    }
    let again = shots::drive(house, "story", &app)?.only(&failed).run();
    again.map_err(|again| format!("{told}\n{again}"))?;
    Ok(format!("only when told again: {}", failed.join(", ")))
}

/// The tests that failed, by cargo's output.
fn failed(output: &str) -> Vec<String> {
    let name = |line: &str| {
        let name = line.strip_prefix("test ")?.strip_suffix(" ... FAILED")?;
        Some(name.to_owned())
    };
    output.lines().filter_map(name).collect()
}

/// How many tests cargo's output tells of; none at all is a failure.
fn passed(output: &str) -> Outcome {
    let count = |line: &str| -> Option<u32> {
        let (number, _) = line
            .strip_prefix("test result: ok. ")?
            .split_once(" passed")?;
        number.parse().ok()
    };
    match output.lines().filter_map(count).sum::<u32>() {
        0 => Err(format!("{output}\nno test was run")),
        1 => Ok("1 test".into()),
        number => Ok(format!("{number} tests")),
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    #[test]
    fn a_step_is_chosen_by_its_name() {
        assert_eq!(choose(Some("lints")).unwrap().len(), 1);
        assert_eq!(choose(None).unwrap().len(), STEPS.len());
        assert!(choose(Some("lint")).is_err());
        let names: BTreeSet<_> = STEPS.iter().map(|step| step.name).collect();
        assert_eq!(names.len(), STEPS.len());
    }

    #[test]
    fn failed_tests_are_known_by_their_names() {
        let output = "test a::b ... ok\ntest c::d ... FAILED\ntest result: FAILED. 1 passed";
        assert_eq!(failed(output), ["c::d"]);
    }

    #[test]
    fn tests_are_counted_over_all_binaries() {
        let output = "test result: ok. 3 passed; 0 failed; 0 ignored\nx\n\
                      test result: ok. 14 passed; 0 failed; 0 ignored\n";
        assert_eq!(passed(output), Ok("17 tests".into()));
        assert!(passed("test result: ok. 0 passed; 0 failed").is_err());
    }
}

//! The house commands: `cargo xtask run | test | shots | soak | bindings`.
//!
//! Nothing here depends on the other crates or on Tauri, so that it builds in
//! seconds on a machine that cannot build the app yet.
#![allow(
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "a command line program speaks by printing"
)]

mod app;
mod args;
mod bindings;
mod command;
mod cross;
mod display;
mod house;
mod layers;
mod need;
mod run;
mod shots;
mod soak;
mod sources;
mod step;
mod test;
mod tidy;
mod tree;
mod ui;
mod wasm;

use std::process::ExitCode;

use args::Task;

fn main() -> ExitCode {
    match carry_out() {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(message) => {
            eprintln!("xtask: {message}");
            ExitCode::FAILURE
        }
    }
}

fn carry_out() -> Result<bool, String> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let task = Task::read(&words)?;
    let house = house::House::find()?;
    match task {
        Task::Help => {
            println!("{}\n{}", args::HELP, test::names());
            Ok(true)
        }
        Task::Run {
            demo,
            as_is,
            passed_on,
        } => run::run(&house, demo, as_is, &passed_on).map(|()| true),
        Task::Test { only, as_is } => test::test(&house, only.as_deref(), as_is),
        Task::Shots { folder, as_is } => shots::shots(&house, &folder, as_is).map(|()| true),
        Task::SoakCrash { kills } => soak::crash(&house, kills).map(|()| true),
        Task::Bindings => bindings::write(&house).map(|()| true),
        Task::Cross => cross::full(&house).map(|()| true),
    }
}

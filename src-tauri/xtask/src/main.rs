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
mod bench;
mod bindings;
mod command;
mod cross;
mod display;
mod house;
mod layers;
mod need;
mod package;
mod phones;
mod run;
mod second;
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

use args::{Args, Soak, Task};
use clap::Parser;

fn main() -> ExitCode {
    match carry_out(Args::parse()) {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(message) => {
            eprintln!("xtask: {message}");
            ExitCode::FAILURE
        }
    }
}

fn carry_out(Args { as_is, task }: Args) -> Result<bool, String> {
    let house = house::House::find()?;
    let done = match task {
        Task::Bench { profiles: true, .. } => bench::profiles(&house, as_is),
        Task::Bench { json, .. } => return bench::bench(&house, json, as_is),
        Task::Test { only } => return test::test(&house, only.as_deref(), as_is),
        Task::Run { demo, passed_on } => run::run(&house, demo, as_is, &passed_on),
        Task::Shots { folder, only } => shots::shots(&house, &folder, only.as_deref(), as_is),
        Task::Soak { what } => match what {
            Soak::Crash { kills } => soak::crash(&house, kills),
            Soak::Fuzz { minutes } => soak::fuzz(&house, minutes),
            Soak::Clock => soak::clock(&house),
            Soak::Judgement => soak::judgement(&house),
        },
        Task::Package { debug } => package::package(&house, debug, as_is),
        Task::Bindings => bindings::write(&house),
        Task::Cross => cross::full(&house),
    };
    done.map(|()| true)
}

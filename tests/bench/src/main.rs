//! Measures what the budgets speak of; `cargo xtask bench` asks for it.
#![allow(
    clippy::indexing_slicing,
    clippy::cast_possible_truncation,
    clippy::print_stdout,
    reason = "a program that measures, over worlds of its own making"
)]

mod rows;
mod world;

use std::process::ExitCode;

fn main() -> ExitCode {
    match rows::measure() {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            println!("{}", serde_json::json!({ "error": why.to_string() }));
            ExitCode::FAILURE
        }
    }
}

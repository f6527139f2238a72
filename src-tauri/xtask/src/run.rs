//! `cargo xtask run`: from a bare machine to the open app.

use crate::command::{Command, Words};
use crate::display::{self, Display};
use crate::house::House;
use crate::{app, need, ui};

/// Installs, builds and opens.
///
/// # Errors
/// A sentence, or the output of what failed.
pub fn run(house: &House, demo: bool, as_is: bool, passed_on: &[String]) -> Result<(), String> {
    need::node()?;
    need::packages(&[need::TO_RUN], as_is)?;
    println!("building the UI");
    ui::build(house, Words::Shown)?;
    println!("building the app (some minutes, the first time)");
    let binary = app::for_people(house, Words::Shown)?;

    let command = if display::has_bus() {
        Command::new(binary)
    } else {
        display::with_bus(binary)
    };
    let command = command
        .args(demo.then_some("--demo"))
        .args(passed_on)
        .folder(&house.root);
    if display::is_there() {
        println!("opening Plumule");
        return command.shown();
    }
    let virtual_display = Display::start()?;
    println!(
        "there is no display here, so Plumule is now open on a virtual one, unseen, until \
         stopped (Ctrl+C).\nTo see its screens as pictures: cargo xtask shots FOLDER"
    );
    virtual_display.on(command).shown()
}

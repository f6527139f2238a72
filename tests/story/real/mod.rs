//! The real app under a virtual display, driven by WebDriver.

pub mod desk;
pub mod notices;
mod process;
pub mod walk;
pub mod window;
mod world;

pub use window::Window;
pub use world::World;

use std::sync::{Mutex, PoisonError};

/// One window at a time: two would only slow each other down.
static TURN: Mutex<()> = Mutex::new(());

/// Tells a story in a world of its own.
pub fn story(tell: impl AsyncFnOnce(&World)) {
    let _turn = TURN.lock().unwrap_or_else(PoisonError::into_inner);
    telling("C", tell);
}

/// The same without waiting for others, where the system speaks a language.
pub fn telling(language: &str, tell: impl AsyncFnOnce(&World)) {
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build()
        .unwrap();
    let world = World::new("Europe/Berlin", language);
    runtime.block_on(tell(&world));
    world.assert_hermetic();
}

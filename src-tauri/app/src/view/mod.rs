//! What crosses to the UI. Types only; ids are UUIDs as text, dates ISO 8601,
//! temperatures °C, lengths mm, shares 0 to 1.

mod bench;
mod common;
mod judgement;
mod round;
mod seed;
mod settings;
mod tray;

pub use bench::*;
pub use common::*;
pub use judgement::*;
pub use round::*;
pub use seed::*;
pub use settings::*;
pub use tray::*;

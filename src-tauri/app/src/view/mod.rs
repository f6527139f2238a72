//! What crosses to the UI. Types only; ids are UUIDs as text, dates ISO 8601,
//! temperatures °C, lengths mm, shares 0 to 1.

mod bench;
mod common;
mod import;
mod judgement;
mod keep;
mod labels;
mod paper;
mod photo;
mod results;
mod round;
mod search;
mod season;
mod seed;
mod settings;
mod timeline;
mod tray;
mod year;

pub use bench::*;
pub use common::*;
pub use import::*;
pub use judgement::*;
pub use keep::*;
pub use labels::*;
pub use paper::*;
pub use photo::*;
pub use results::*;
pub use round::*;
pub use search::*;
pub use season::*;
pub use seed::*;
pub use settings::*;
pub use timeline::*;
pub use tray::*;
pub use year::*;

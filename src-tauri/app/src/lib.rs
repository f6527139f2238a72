//! What a grower can ask and say: the round, forecasts, decisions, notices.
//!
//! Every user action is a plain function here, with time handed in; the shell
//! only wraps it.

mod act;
pub mod acts;
mod app;
mod bench;
pub mod demo;
mod device;
pub mod error;
mod growth;
pub mod job_key;
mod jobs;
mod judgement;
#[cfg(test)]
mod laws;
mod line;
mod nagging;
mod names;
mod notices;
mod packet_words;
mod picture;
mod round;
mod rounds;
pub mod say;
mod seed;
mod settings;
mod stage;
mod temperature;
mod timeline;
mod tray_page;
mod trays;
pub mod view;
pub mod words;
#[cfg(test)]
mod world;

pub use app::App;
pub use error::AppError;
pub use notices::{Notice, NoticePlan};

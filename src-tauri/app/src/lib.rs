//! What a grower can ask and say: the round, forecasts, decisions, notices.
//!
//! Every user action is a plain function here, with time handed in; the shell
//! only wraps it.

mod act;
pub mod acts;
mod app;
mod bench;
mod correct;
pub mod demo;
mod device;
mod drafts;
pub mod error;
mod exchange;
mod growth;
mod import;
pub mod job_key;
mod jobs;
mod judgement;
pub mod keep;
pub mod labels;
#[cfg(test)]
mod laws;
mod line;
mod nagging;
mod names;
pub mod notices;
mod packet_words;
mod paper;
pub mod photos;
mod picture;
mod plans;
mod results;
mod round;
mod rounds;
pub mod say;
pub mod search;
mod season;
mod seed;
mod settings;
mod stage;
mod temperature;
mod text;
mod timeline;
mod tray_page;
mod trays;
pub mod view;
pub mod words;
#[cfg(test)]
mod world;

pub use app::App;
pub use error::AppError;
pub use notices::{Ahead, Notice, NoticePlan};

//! What a grower can ask and say: the round, forecasts, decisions, notices.
//!
//! Every user action is a plain function here, with time handed in; the shell
//! only wraps it.

mod act;
pub mod acts;
mod app;
mod device;
pub mod error;
pub mod job_key;
mod line;
mod names;
pub mod say;
mod settings;
pub mod view;
pub mod words;

pub use app::App;
pub use error::AppError;

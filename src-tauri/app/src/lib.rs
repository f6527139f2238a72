//! What a grower can ask and say: the round, forecasts, decisions, notices.
//!
//! Every user action is a plain function here, with time handed in; the shell
//! only wraps it.

pub mod acts;
pub mod error;
pub mod say;
pub mod view;

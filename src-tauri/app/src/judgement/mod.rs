//! Judgement on sowings: wait or sow again, and why one did badly.

mod kept;
mod reason_words;
mod season;
#[cfg(test)]
mod tests;
mod verdict;
mod verdict_words;

pub(crate) use reason_words::reasons;
pub(crate) use season::in_year;
pub(crate) use verdict::{Case, living};
pub(crate) use verdict_words::{too_early_view, verdict_view};

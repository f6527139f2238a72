//! Judgement on sowings: wait or sow again, and why one did badly.

mod choices;
mod kept;
mod reason_words;
#[cfg(test)]
mod soak;
mod verdict;
mod verdict_words;

pub(crate) use reason_words::reasons;
pub(crate) use verdict::{Case, living};
pub(crate) use verdict_words::{Finding, odds, too_early_view, verdict_view};

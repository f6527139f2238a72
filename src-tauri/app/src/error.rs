//! What can go wrong, as the UI sees it: a code and the words.

use crate::say::{Arg, Say};
use crate::words;
use plumule_journal::{Error, Question, Value};
use serde::Serialize;
use std::collections::BTreeMap;

/// An error with a stable code the UI acts on, and a sentence that says what
/// to do.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct AppError {
    /// Stable code, snake_case.
    pub code: String,
    /// What to show.
    pub say: Say,
}

impl AppError {
    /// An error whose sentence needs nothing filled in.
    pub(crate) fn plain(code: &str) -> Self {
        Self {
            code: code.to_owned(),
            say: Say::new(words::key("error", code)),
        }
    }

    /// An error about a text that was sent.
    pub(crate) fn of_text(code: &str, text: &str) -> Self {
        let mut error = Self::plain(code);
        error.say = error.say.with("text", Arg::Text(text.to_owned()));
        error
    }

    /// What the journal would refuse too.
    pub(crate) fn refused(code: &str) -> Self {
        Self {
            code: code.to_owned(),
            say: Say::new(words::key("refused", code)),
        }
    }

    /// An id or a word that names nothing here.
    pub(crate) fn bad_request(text: &str) -> Self {
        Self::of_text("bad_request", text)
    }
}

impl std::fmt::Display for AppError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.code)
    }
}

impl std::error::Error for AppError {}

impl From<Error> for AppError {
    fn from(error: Error) -> Self {
        match &error {
            Error::Refused(refusal) => Self {
                code: refusal.code.to_owned(),
                say: coded("refused", refusal.code, &refusal.args),
            },
            other => Self::plain(other.code()),
        }
    }
}

/// A question of the journal in words.
pub(crate) fn asked(question: &Question) -> crate::view::Coded {
    crate::view::Coded {
        code: question.code.to_owned(),
        say: coded("asks", question.code, &question.args),
    }
}

/// A code with its arguments in words.
pub(crate) fn coded(set: &str, code: &str, args: &BTreeMap<&'static str, Value>) -> Say {
    args.iter()
        .fold(Say::new(words::key(set, code)), |say, (name, value)| {
            say.with(
                name,
                match value {
                    Value::Text(text) => Arg::Text(text.clone()),
                    Value::Number(number) => Arg::Number(*number),
                    Value::Celsius(celsius) => Arg::Celsius(*celsius),
                    Value::Millimetres(mm) => Arg::Millimetres(*mm),
                    Value::Day(day) => Arg::Day(*day),
                    Value::Moment(moment) => Arg::Moment(*moment),
                },
            )
        })
}

//! Words to be said: a message key and what fills it.
//!
//! The words themselves are in the message files (Fluent) under `ui/src/text`;
//! the UI renders them, and `words` renders them here for notices.

use chrono::{NaiveDate, NaiveDateTime};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A message key with its arguments.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct Say {
    /// Key in the message files.
    pub key: String,
    /// Arguments by name.
    pub args: BTreeMap<String, Arg>,
}

/// An argument of a message, typed so that the UI can show it in the grower's
/// units and language.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "as", content = "value", rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum Arg {
    /// Text as it is: a name, a code.
    Text(String),
    /// A plain number.
    Number(f64),
    /// A temperature in °C.
    Celsius(f64),
    /// A length in mm.
    Millimetres(f64),
    /// A share from 0 to 1, shown as a percentage.
    Share(f64),
    /// A day.
    Day(NaiveDate),
    /// A day and a time, local.
    Moment(NaiveDateTime),
    /// The key of another message: a crop, a kind of place.
    Word(String),
    /// A variety after its plant, in the quotation marks of the language and
    /// with its own leading blank; empty: none.
    Variety(String),
    /// Several, shown as a list.
    List(Vec<Arg>),
}

impl Say {
    /// A message without arguments.
    #[must_use]
    pub fn new(key: impl Into<String>) -> Self {
        Self {
            key: key.into(),
            args: BTreeMap::new(),
        }
    }

    /// The same with an argument more.
    #[must_use]
    pub fn with(mut self, name: &str, arg: Arg) -> Self {
        self.args.insert(name.to_owned(), arg);
        self
    }
}

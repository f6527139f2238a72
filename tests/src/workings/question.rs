//! Each question and its answer.

mod emergence;
mod moisture;
mod packet;
mod results;
mod season;
mod sowing;

use chrono::NaiveDate;
use plumule_agronomy::{Crop, Error, crops};
use serde::de::DeserializeOwned;
use serde_json::Value;

/// Why a line is not answered.
#[derive(Debug, thiserror::Error)]
pub(super) enum WrongQuestion {
    #[error("the line is longer than a mebibyte")]
    TooLong,
    #[error("the line is not UTF-8")]
    NotUtf8,
    #[error("the line is not one JSON object: {0}")]
    NotJson(serde_json::Error),
    #[error("the line has no \"ask\" that is a string")]
    NoAsk,
    #[error("there is no question {0:?}")]
    UnknownAsk(String),
    #[error("a field is missing or of the wrong kind: {0}")]
    BadField(serde_json::Error),
    #[error("the crop book has no {0:?}")]
    UnknownCrop(String),
    #[error("{on} is before {packed}, when the seed was packed")]
    BeforePacked { packed: NaiveDate, on: NaiveDate },
    #[error(transparent)]
    Agronomy(#[from] Error),
}

impl WrongQuestion {
    pub(super) fn code(&self) -> &'static str {
        match self {
            Self::TooLong => "line_too_long",
            Self::NotUtf8 => "not_utf8",
            Self::NotJson(_) => "not_json",
            Self::NoAsk => "no_ask",
            Self::UnknownAsk(_) => "unknown_ask",
            Self::BadField(_) => "bad_field",
            Self::UnknownCrop(_) => "unknown_crop",
            Self::BeforePacked { .. } => "before_packed",
            Self::Agronomy(error) => error.code(),
        }
    }
}

type Answer = Result<Value, WrongQuestion>;

/// The answer to a question that is JSON.
pub(super) fn answer(question: Value) -> Answer {
    let ask = question
        .get("ask")
        .and_then(Value::as_str)
        .ok_or(WrongQuestion::NoAsk)?;
    match ask {
        "rate" => emergence::rate(read(question)?),
        "day_progress" => emergence::day_progress(read(question)?),
        "emerged_share" => emergence::share(read(question)?),
        "forecast" => emergence::dates(read(question)?),
        "packet_outlook" => packet::packet(read(question)?),
        "seeds_to_sow" => sowing::seeds(read(question)?),
        "cells_to_sow" => sowing::cells(read(question)?),
        "wait_or_sow_again" => sowing::wait_or_sow_again(read(question)?),
        "drying_interval" => moisture::drying(read(question)?),
        "vapour_pressure" => moisture::vapour(read(question)?),
        "day_length" => season::day_length(read(question)?),
        "extraterrestrial_radiation" => season::radiation(read(question)?),
        "degree_days" => season::warmth(read(question)?),
        "frost_chance" => season::frost(read(question)?),
        "germination_indices" => results::indices(read(question)?),
        "interval" => results::share(read(question)?),
        "higher" => results::higher(read(question)?),
        unknown => Err(WrongQuestion::UnknownAsk(unknown.to_owned())),
    }
}

fn read<T: DeserializeOwned>(question: Value) -> Result<T, WrongQuestion> {
    serde_json::from_value(question).map_err(WrongQuestion::BadField)
}

fn crop(key: &str) -> Result<&'static Crop, WrongQuestion> {
    crops()
        .get(key)
        .ok_or_else(|| WrongQuestion::UnknownCrop(key.to_owned()))
}

/// The progress over a day of a crop.
fn progress(crop: &Crop, (min_c, max_c): (f64, f64)) -> Result<f64, WrongQuestion> {
    if min_c > max_c {
        return Err(Error::MinimumAboveMaximum(min_c, max_c).into());
    }
    Ok(crop.curve.day_progress(min_c, max_c))
}

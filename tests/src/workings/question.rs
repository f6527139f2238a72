//! Each question and its answer.

use chrono::{Days, NaiveDate};
use plumule_agronomy::{
    Crop, Error, Outlook, Storage, Test, TimeFactor, crops, drying_interval_days, emerged_share,
    forecast, packet_outlook, vapour_pressure_kpa,
};
use serde::Deserialize;
use serde::de::DeserializeOwned;
use serde_json::{Value, json};

/// How many days of progress a forecast shows.
const SHOWN_DAYS: usize = 30;

/// Days in a year of age.
const YEAR_DAYS: f64 = 365.25;

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
    #[error("a day's minimum of {0} °C is above its maximum of {1} °C")]
    MinimumAboveMaximum(f64, f64),
    #[error("{on} is before {packed}, when the seed was packed")]
    BeforePacked { packed: NaiveDate, on: NaiveDate },
    #[error("the dates run past the end of the calendar")]
    DateOutOfRange,
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
            Self::MinimumAboveMaximum(..) => "minimum_above_maximum",
            Self::BeforePacked { .. } => "before_packed",
            Self::DateOutOfRange => "date_out_of_range",
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
        "rate" => rate(read(question)?),
        "day_progress" => day_progress(read(question)?),
        "emerged_share" => share(read(question)?),
        "forecast" => dates(read(question)?),
        "packet_outlook" => packet(read(question)?),
        "drying_interval" => drying(read(question)?),
        "vapour_pressure" => vapour(read(question)?),
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
        return Err(WrongQuestion::MinimumAboveMaximum(min_c, max_c));
    }
    Ok(crop.curve.day_progress(min_c, max_c))
}

#[derive(Deserialize)]
struct Rate {
    crop: String,
    temperature_c: f64,
}

fn rate(asked: Rate) -> Answer {
    let rate = crop(&asked.crop)?.curve.rate_per_day(asked.temperature_c);
    Ok(json!({"rate_per_day": rate}))
}

#[derive(Deserialize)]
struct DayProgress {
    crop: String,
    min_c: f64,
    max_c: f64,
}

fn day_progress(asked: DayProgress) -> Answer {
    let progress = progress(crop(&asked.crop)?, (asked.min_c, asked.max_c))?;
    Ok(json!({"progress": progress}))
}

#[derive(Deserialize)]
struct Share {
    progress: f64,
    time_factor: f64,
    sigma: f64,
}

fn share(asked: Share) -> Answer {
    let share = emerged_share(asked.progress, asked.time_factor, asked.sigma)?;
    Ok(json!({"share": share}))
}

#[derive(Deserialize)]
struct Forecast {
    crop: String,
    seeds: u32,
    beta: (f64, f64),
    tau: f64,
    sigma: f64,
    #[serde(default)]
    mean_ln_s: f64,
    sown: NaiveDate,
    days: Vec<(f64, f64)>,
}

fn dates(asked: Forecast) -> Answer {
    let crop = crop(&asked.crop)?;
    let increments: Vec<f64> = asked
        .days
        .iter()
        .map(|day| progress(crop, *day))
        .collect::<Result<_, _>>()?;
    let found = forecast(
        increments.iter().copied(),
        asked.seeds,
        Outlook::new(asked.beta.0, asked.beta.1)?,
        TimeFactor::new(asked.mean_ln_s, asked.tau)?,
        asked.sigma,
    )?;
    let date = |offset: Option<u32>| {
        let Some(offset) = offset else {
            return Ok(None);
        };
        let date = asked.sown.checked_add_days(Days::new(u64::from(offset)));
        date.map(Some).ok_or(WrongQuestion::DateOutOfRange)
    };
    let last = increments.last().copied().unwrap_or_default();
    let progress_by_day: Vec<f64> = increments
        .into_iter()
        .chain(std::iter::repeat(last))
        .scan(0.0, |sum, gained| {
            *sum += gained;
            Some(*sum)
        })
        .take(SHOWN_DAYS)
        .collect();
    Ok(json!({
        "first": date(found.first)?,
        "d10": date(found.d10)?,
        "d50": date(found.d50)?,
        "d90": date(found.d90)?,
        "progress_by_day": progress_by_day,
    }))
}

#[derive(Deserialize)]
struct Packet {
    crop: String,
    packed: NaiveDate,
    on: NaiveDate,
    stated: Option<f64>,
    storage: Storage,
    #[serde(default)]
    tests: Vec<(u32, u32)>,
}

fn packet(asked: Packet) -> Answer {
    let Packet { packed, on, .. } = asked;
    if on < packed {
        return Err(WrongQuestion::BeforePacked { packed, on });
    }
    let age_years = (on - packed).num_days() as f64 / YEAR_DAYS;
    let tests: Vec<Test> = asked
        .tests
        .iter()
        .map(|&(germinated, of)| Test {
            germinated,
            of,
            age_years: 0.0,
        })
        .collect();
    let crop = crop(&asked.crop)?;
    let found = packet_outlook(crop, age_years, asked.stated, asked.storage, &tests)?;
    Ok(json!({
        "germination": found.germination,
        "beta": [found.outlook.a, found.outlook.b],
    }))
}

#[derive(Deserialize)]
struct Drying {
    mean_c: f64,
    covered: bool,
    tray_factor: f64,
}

fn drying(asked: Drying) -> Answer {
    let days = drying_interval_days(asked.mean_c, asked.covered, asked.tray_factor)?;
    Ok(json!({"days": days}))
}

#[derive(Deserialize)]
struct Vapour {
    temperature_c: f64,
}

fn vapour(asked: Vapour) -> Answer {
    Ok(json!({"kpa": vapour_pressure_kpa(asked.temperature_c)?}))
}

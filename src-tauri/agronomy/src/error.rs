//! What can be wrong with a question.

use crate::CurveError;

/// A question that has no answer, and which part of it is at fault.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum Error {
    /// Thermal progress is negative or not a number.
    #[error("progress must be a number of 0 or more, not {0}")]
    Progress(f64),
    /// A time factor is not above 0, or its mean log is beyond ±10.
    #[error("the time factor must be above 0 and finite, not {0}")]
    TimeFactor(f64),
    /// The spread of emergence is outside its range.
    #[error("sigma must be between 0.001 and 10, not {0}")]
    Sigma(f64),
    /// The uncertainty of the time factor is outside its range.
    #[error("tau must be between 0 and 10, not {0}")]
    Tau(f64),
    /// A Beta parameter is outside its range.
    #[error("both Beta parameters must be between 1e-9 and 1e9, not {0} and {1}")]
    Outlook(f64, f64),
    /// The level of a span is not between 0 and 1.
    #[error("the level of a span must be between 0 and 1, not {0}")]
    Level(f64),
    /// More seeds than one sowing can have, or none.
    #[error("seeds must be between 1 and {max}, not {seeds}", max = crate::forecast::MAX_SEEDS)]
    Seeds {
        /// The number asked about.
        seeds: u32,
    },
    /// A forecast was asked for without a single day.
    #[error("a forecast needs the progress of at least one day")]
    NoDays,
    /// A temperature is not a number or outside what weather and heaters reach.
    #[error("the temperature must be between -60 and 100 °C, not {0}")]
    Temperature(f64),
    /// An age is negative, not a number or beyond 1000 years.
    #[error("the age must be between 0 and 1000 years, not {0}")]
    Age(f64),
    /// A stated germination is not between 0 and 1.
    #[error("the stated germination must be between 0 and 1, not {0}")]
    Germination(f64),
    /// More seeds germinated in a test than were in it, or none were in it.
    #[error(
        "a germination test needs at least one seed and no more up than seeds, not {germinated} of {of}"
    )]
    Test {
        /// How many germinated.
        germinated: u32,
        /// How many were in the test.
        of: u32,
    },
    /// A tray factor is not above 0.
    #[error("the tray factor must be above 0 and finite, not {0}")]
    TrayFactor(f64),
    /// A figure of the crop itself is out of range.
    #[error("the crop's {0} is out of range")]
    CropFigure(&'static str),
    /// A probability or share is out of its range.
    #[error("the {0} must be between 0 and 1, not {1}")]
    Probability(&'static str, f64),
    /// No seeds in a cell, or more than one can hold.
    #[error("a cell must have between 1 and 100 seeds, not {0}")]
    SeedsPerCell(u32),
    /// No seeds are watched, or more than one sowing has.
    #[error("a watched sowing has between 1 and {max} seeds, not {0}", max = crate::MOST_SEEDS)]
    SeedsWatched(u32),
    /// A count lies before the one that it follows.
    #[error("counts must be in order of progress, but {0} is followed by {1}")]
    CountOrder(f64, f64),
    /// Seedlings were counted before any could have come up.
    #[error("{0} are up without any progress: the record of temperatures is wrong")]
    UpWithoutProgress(u32),
    /// More seeds were dug up than are not up.
    #[error("{dug} seeds cannot have been dug up where {left} are not up")]
    Dug {
        /// How many were dug up.
        dug: u64,
        /// How many are not up.
        left: u32,
    },
    /// A latitude beyond the poles.
    #[error("the latitude must be between -90 and 90 degrees, not {0}")]
    Latitude(f64),
    /// A day's minimum is above its maximum.
    #[error("a day's minimum of {0} °C is above its maximum of {1} °C")]
    MinimumAboveMaximum(f64, f64),
    /// The upper threshold is not above the lower.
    #[error("the upper threshold must be above the lower, not {1} °C over {0} °C")]
    Thresholds(f64, f64),
    /// Too few years remain for odds of frost.
    #[error("odds of frost need at least {least} years with frost and a full record, not {0}", least = crate::frost::LEAST_YEARS)]
    TooFewYears(usize),
    /// A length of time is negative, not a number or too long.
    #[error("{0} must be a length of time in range, not {1}")]
    Duration(&'static str, f64),
    /// The dates run past the end of the calendar.
    #[error("the dates run past the end of the calendar")]
    DateOutOfRange,
    /// A measure is negative, not a number or too large.
    #[error("{0} must be a measure in range, not {1}")]
    Measure(&'static str, f64),
    /// A curve cannot be made from its nodes.
    #[error(transparent)]
    Curve(#[from] CurveError),
}

impl Error {
    /// A short name that stays the same between versions.
    pub fn code(&self) -> &'static str {
        match self {
            Self::Progress(_) => "bad_progress",
            Self::TimeFactor(_) => "bad_time_factor",
            Self::Sigma(_) => "bad_sigma",
            Self::Tau(_) => "bad_tau",
            Self::Outlook(..) => "bad_outlook",
            Self::Level(_) => "bad_level",
            Self::Seeds { .. } => "bad_seeds",
            Self::NoDays => "no_days",
            Self::Temperature(_) => "bad_temperature",
            Self::Age(_) => "bad_age",
            Self::Germination(_) => "bad_germination",
            Self::Test { .. } => "bad_test",
            Self::TrayFactor(_) => "bad_tray_factor",
            Self::CropFigure(_) => "bad_crop_figure",
            Self::Probability(..) => "bad_probability",
            Self::SeedsPerCell(_) => "bad_seeds_per_cell",
            Self::SeedsWatched(_) => "bad_seeds",
            Self::CountOrder(..) => "count_order",
            Self::UpWithoutProgress(_) => "up_without_progress",
            Self::Dug { .. } => "bad_dug",
            Self::Latitude(_) => "bad_latitude",
            Self::MinimumAboveMaximum(..) => "minimum_above_maximum",
            Self::Thresholds(..) => "bad_thresholds",
            Self::TooFewYears(_) => "too_few_years",
            Self::Duration(..) => "bad_duration",
            Self::DateOutOfRange => "date_out_of_range",
            Self::Measure(..) => "bad_measure",
            Self::Curve(error) => error.code(),
        }
    }
}

/// Refuses what is not strictly between 0 and 1.
pub(crate) fn check_probability(what: &'static str, value: f64) -> Result<(), Error> {
    if value > 0.0 && value < 1.0 {
        Ok(())
    } else {
        Err(Error::Probability(what, value))
    }
}

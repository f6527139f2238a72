//! Days as records write them.

use super::table::Line;
use chrono::NaiveDate;

/// In which order a day is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum DayOrder {
    /// Year, month, day.
    Ymd,
    /// Day, month, year.
    Dmy,
    /// Month, day, year.
    Mdy,
}

/// Lines that are asked for their order.
const ASKED: usize = 1000;

impl DayOrder {
    const ALL: [Self; 3] = [Self::Ymd, Self::Dmy, Self::Mdy];

    pub(super) fn word(self) -> &'static str {
        match self {
            Self::Ymd => "ymd",
            Self::Dmy => "dmy",
            Self::Mdy => "mdy",
        }
    }

    pub(super) fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|order| order.word() == word)
    }

    /// The order in which the most of a column's days can be read; of equals the
    /// first of year, day, month first.
    pub(super) fn found_in(lines: &[Line], column: usize) -> Self {
        let asked = lines.iter().take(ASKED);
        let days: Vec<&str> = asked
            .filter_map(|line| line.fields.as_ref().ok()?.get(column).map(String::as_str))
            .collect();
        let read = |order: &Self| days.iter().filter(|day| order.read(day).is_some()).count();
        let best = Self::ALL.iter().map(read).max().unwrap_or(0);
        let mut orders = Self::ALL.into_iter();
        orders
            .find(|order| read(order) == best)
            .unwrap_or(Self::Ymd)
    }

    /// A day; a time of day after it is left out.
    pub(super) fn read(self, text: &str) -> Option<NaiveDate> {
        let text = text.trim();
        let day = text.split(['T', ' ']).next()?;
        let parts: Vec<&str> = day.split(['-', '/', '.']).collect();
        let [one, two, three] = match parts.as_slice() {
            [one, two, three] => [*one, *two, *three],
            [whole] if self == Self::Ymd && whole.len() == 8 && whole.is_ascii() => {
                [whole.get(0..4)?, whole.get(4..6)?, whole.get(6..8)?]
            }
            _ => return None,
        };
        let (year, month, day) = match self {
            Self::Ymd => (one, two, three),
            Self::Dmy => (three, two, one),
            Self::Mdy => (three, one, two),
        };
        let digits = |text: &str| text.bytes().all(|it| it.is_ascii_digit());
        if year.len() != 4 || ![year, month, day].into_iter().all(digits) {
            return None;
        }
        NaiveDate::from_ymd_opt(year.parse().ok()?, month.parse().ok()?, day.parse().ok()?)
    }
}

//! Days, times and numbers as a language writes them: by the locale data of
//! Unicode (CLDR 46: <https://github.com/unicode-org/cldr-json/tree/46.0.0>,
//! `ca-gregorian.json` and `numbers.json` of each), named from memory and held
//! against `Intl` in the UI's tests.

use super::Language;
use chrono::{Datelike, Month, NaiveDate, NaiveTime, Timelike};

const WEEKDAYS_DE: [&str; 7] = [
    "Montag",
    "Dienstag",
    "Mittwoch",
    "Donnerstag",
    "Freitag",
    "Samstag",
    "Sonntag",
];

/// In full, and short.
const MONTHS_DE: [(&str, &str); 12] = [
    ("Januar", "Jan."),
    ("Februar", "Feb."),
    ("März", "März"),
    ("April", "Apr."),
    ("Mai", "Mai"),
    ("Juni", "Juni"),
    ("Juli", "Juli"),
    ("August", "Aug."),
    ("September", "Sept."),
    ("Oktober", "Okt."),
    ("November", "Nov."),
    ("Dezember", "Dez."),
];

/// What a month, 1 to 12, is called in the languages, in full.
pub(crate) fn months(number: u32) -> impl Iterator<Item = &'static str> {
    let named = u8::try_from(number).ok();
    let english = named.and_then(|number| Month::try_from(number).ok());
    let german = MONTHS_DE.iter().zip(1..).find(|(_, it)| *it == number);
    let english = english.map(|month| month.name());
    english
        .into_iter()
        .chain(german.map(|((name, _), _)| *name))
}

/// A day with its weekday, and with its year where that has to be said.
pub(super) fn long(day: NaiveDate, year: bool, language: Language) -> String {
    let written = match language {
        Language::EnGb => day.format("%A %-d %B").to_string(),
        Language::EnUs => day.format("%A, %B %-d").to_string(),
        Language::De => {
            let weekday = day.weekday().num_days_from_monday() as usize;
            let weekday = WEEKDAYS_DE.get(weekday).copied().unwrap_or_default();
            format!("{weekday}, {}. {}", day.day(), month_de(day).0)
        }
    };
    match language {
        _ if !year => written,
        Language::EnUs => format!("{written}, {}", day.year()),
        Language::EnGb | Language::De => format!("{written} {}", day.year()),
    }
}

/// A day short, with its year.
pub(super) fn short(day: NaiveDate, language: Language) -> String {
    match language {
        // British English alone shortens this one to four letters.
        Language::EnGb if day.month() == 9 => day.format("%-d Sept %Y").to_string(),
        Language::EnGb => day.format("%-d %b %Y").to_string(),
        Language::EnUs => day.format("%b %-d, %Y").to_string(),
        Language::De => format!("{}. {} {}", day.day(), month_de(day).1, day.year()),
    }
}

fn month_de(day: NaiveDate) -> (&'static str, &'static str) {
    let months = MONTHS_DE.get(day.month0() as usize);
    months.copied().unwrap_or_default()
}

/// A time of day, by the clock of 24 hours or of 12; the latter sets a narrow
/// no-break blank before its half of the day.
pub(super) fn time(at: NaiveTime, h12: bool, language: Language) -> String {
    if !h12 {
        return at.format("%H:%M").to_string();
    }
    let (afternoon, hour) = at.hour12();
    let half = match (language, afternoon) {
        (Language::EnGb, false) => "am",
        (Language::EnGb, true) => "pm",
        (_, false) => "AM",
        (_, true) => "PM",
    };
    format!("{hour}:{:02}\u{202f}{half}", at.minute())
}

/// A number with at most so many decimals, none of them a 0 at the end.
pub(super) fn number(number: f64, decimals: usize, language: Language) -> String {
    let (group, point) = match language {
        Language::EnGb | Language::EnUs => (',', '.'),
        Language::De => ('.', ','),
    };
    let fixed = format!("{:.decimals$}", number.abs());
    let (whole, part) = fixed.split_once('.').unwrap_or((&fixed, ""));
    let part = part.trim_end_matches('0');
    let mut written = String::new();
    if number < 0.0 && (!part.is_empty() || whole != "0") {
        written.push('-');
    }
    for (i, digit) in whole.chars().enumerate() {
        if i > 0 && (whole.len() - i) % 3 == 0 {
            written.push(group);
        }
        written.push(digit);
    }
    if !part.is_empty() {
        written.push(point);
        written.push_str(part);
    }
    written
}

#[cfg(test)]
mod tests {
    use super::*;
    use Language::{De, EnGb, EnUs};

    fn day(year: i32, month: u32, day: u32) -> NaiveDate {
        NaiveDate::from_ymd_opt(year, month, day).unwrap()
    }

    /// CLDR 46, `dateFormats` and `availableFormats` (yMMMMEEEEd, MMMMEEEEd,
    /// yMMMd) of en-GB, en and de; values typed in from memory.
    #[test]
    fn days() {
        for (language, with_year, without, short_form, september) in [
            (
                EnGb,
                "Thursday 14 May 2026",
                "Thursday 14 May",
                "14 May 2026",
                "3 Sept 2026",
            ),
            (
                EnUs,
                "Thursday, May 14, 2026",
                "Thursday, May 14",
                "May 14, 2026",
                "Sep 3, 2026",
            ),
            (
                De,
                "Donnerstag, 14. Mai 2026",
                "Donnerstag, 14. Mai",
                "14. Mai 2026",
                "3. Sept. 2026",
            ),
        ] {
            let may = day(2026, 5, 14);
            assert_eq!(long(may, true, language), with_year);
            assert_eq!(long(may, false, language), without);
            assert_eq!(short(may, language), short_form);
            assert_eq!(short(day(2026, 9, 3), language), september);
        }
        assert_eq!(long(day(2026, 3, 1), false, De), "Sonntag, 1. März");
        assert_eq!(long(day(2026, 12, 28), false, De), "Montag, 28. Dezember");
    }

    /// CLDR 46, `timeFormats-short` and `dayPeriods` (abbreviated): en-GB
    /// writes am and pm small; noon and midnight are 12.
    #[test]
    fn times() {
        let at = |hour, minute| NaiveTime::from_hms_opt(hour, minute, 0).unwrap();
        for (language, eight, midnight, noon) in [
            (EnGb, "8:05\u{202f}am", "12:00\u{202f}am", "12:30\u{202f}pm"),
            (EnUs, "8:05\u{202f}AM", "12:00\u{202f}AM", "12:30\u{202f}PM"),
            (De, "8:05\u{202f}AM", "12:00\u{202f}AM", "12:30\u{202f}PM"),
        ] {
            assert_eq!(time(at(8, 5), true, language), eight);
            assert_eq!(time(at(0, 0), true, language), midnight);
            assert_eq!(time(at(12, 30), true, language), noon);
            assert_eq!(time(at(8, 5), false, language), "08:05");
        }
    }

    /// CLDR 46, `symbols-numberSystem-latn` of en and de.
    #[test]
    fn numbers() {
        for (value, english, german) in [
            (0.0, "0", "0"),
            (-0.001, "0", "0"),
            (0.5, "0.5", "0,5"),
            (-3.25, "-3.25", "-3,25"),
            (12.0, "12", "12"),
            (1234.5, "1,234.5", "1.234,5"),
            (1_234_567.0, "1,234,567", "1.234.567"),
        ] {
            assert_eq!(number(value, 2, EnGb), english);
            assert_eq!(number(value, 2, EnUs), english);
            assert_eq!(number(value, 2, De), german);
        }
    }
}

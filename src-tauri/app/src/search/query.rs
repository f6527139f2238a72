//! What is typed, read: words that are all meant, and days among them.

use crate::error::AppError;
use crate::text::{a_word_begins, fold, plain, words_of};
use crate::words;
use chrono::{Datelike, NaiveDate};

/// Longest that is looked for, in characters. Judgement.
const LONGEST: usize = 200;
/// Parts that are told apart; what is beyond stands in one text with the last.
const PARTS: usize = 16;
/// Years that are taken for one when they stand alone.
const YEARS: std::ops::RangeInclusive<i32> = 1900..=2199;

/// What is looked for: each of its parts is to be met. Which are is told as a
/// number of so many bits.
#[derive(Debug, Default, PartialEq)]
pub(super) struct Query {
    parts: Vec<Part>,
}

/// Words that begin words of one text, or the days that they name.
#[derive(Debug, Default, PartialEq)]
struct Part {
    words: Vec<String>,
    when: Option<When>,
}

/// Days: those of a year, a month, a day, as far as they are told.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct When {
    year: Option<i32>,
    month: Option<u32>,
    day: Option<u32>,
}

impl Query {
    /// None if there is no word in it.
    ///
    /// # Errors
    /// `search_too_long`.
    pub fn read(typed: &str) -> Result<Option<Self>, AppError> {
        let typed = typed.trim();
        if typed.chars().take(LONGEST + 1).count() > LONGEST {
            return Err(AppError::plain("search_too_long"));
        }
        let folded = fold(typed);
        let tokens: Vec<&str> = folded
            .split_whitespace()
            .map(|token| token.trim_matches([',', ';']))
            .filter(|token| words_of(token).next().is_some())
            .collect();
        let mut parts: Vec<Part> = Vec::new();
        let mut rest = tokens.as_slice();
        while let [first, others @ ..] = rest {
            let (when, used) = match When::read(rest) {
                Some((when, used)) => (Some(when), used),
                None => (None, 1),
            };
            let (these, after) = rest.split_at_checked(used).unwrap_or((rest, others));
            let these = if these.is_empty() { &[*first] } else { these };
            let words = these.iter().flat_map(|it| words_of(it)).map(str::to_owned);
            match parts.get_mut(PARTS - 1) {
                Some(last) => last.words.extend(words),
                None => parts.push(Part {
                    words: words.collect(),
                    when,
                }),
            }
            rest = after;
        }
        Ok((!parts.is_empty()).then_some(Self { parts }))
    }

    /// All parts.
    pub fn all(&self) -> u32 {
        self.which(|_| true)
    }

    /// The parts that a text meets.
    pub fn met(&self, text: &str) -> u32 {
        let text = plain(text);
        self.which(|part| part.words.iter().all(|word| a_word_begins(&text, word)))
    }

    /// The parts that a day meets.
    pub fn on(&self, day: NaiveDate) -> u32 {
        self.which(|part| part.when.is_some_and(|when| when.holds(day)))
    }

    /// The parts that some day meets.
    pub fn days(&self) -> u32 {
        self.which(|part| part.when.is_some())
    }

    /// About so many days in a hundred years meet a part.
    pub fn days_of(&self, part: u32) -> usize {
        let when = self.parts.get(part as usize).and_then(|part| part.when);
        when.map_or(0, |when| {
            let years = if when.year.is_some() { 1 } else { 100 };
            let days = match (when.month, when.day) {
                (Some(_), Some(_)) => 1,
                (Some(_), None) => 30,
                _ => 365,
            };
            years * days
        })
    }

    fn which(&self, meets: impl Fn(&Part) -> bool) -> u32 {
        let parts = self.parts.iter().enumerate();
        parts
            .filter(|(_, part)| meets(part))
            .fold(0, |all, (number, _)| all | 1 << number)
    }
}

impl When {
    fn holds(self, day: NaiveDate) -> bool {
        self.year.is_none_or(|year| year == day.year())
            && self.month.is_none_or(|month| month == day.month())
            && self.day.is_none_or(|it| it == day.day())
    }

    /// Days that the first of some words name, and how many words those are.
    fn read(tokens: &[&str]) -> Option<(Self, usize)> {
        let (first, second, third) = (tokens.first()?, tokens.get(1), tokens.get(2));
        if let Some(when) = Self::in_numbers(first) {
            return Some((when, 1));
        }
        let month_after = second.and_then(|it| month(it));
        if let (Some(day), Some(month)) = (day(first), month_after) {
            let year = third.and_then(|it| short_year(it));
            return Some((Self::of(year, month, day), 2 + usize::from(year.is_some())));
        }
        if let Some(month) = month(first) {
            if let Some(day) = second.and_then(|it| day(it)) {
                let year = third.and_then(|it| year(it));
                return Some((Self::of(year, month, day), 2 + usize::from(year.is_some())));
            }
            let year = second.and_then(|it| year(it));
            let when = Self {
                year,
                month: Some(month),
                day: None,
            };
            return Some((when, 1 + usize::from(year.is_some())));
        }
        let when = Self {
            year: Some(year(first)?),
            ..Self::default()
        };
        Some((when, 1))
    }

    fn of(year: Option<i32>, month: u32, day: u32) -> Self {
        Self {
            year,
            month: Some(month),
            day: Some(day),
        }
    }

    /// `2024-05-14`, `2024-05`, `14/5/24`, `14.5.`: the month first only where
    /// it cannot be the day.
    fn in_numbers(token: &str) -> Option<Self> {
        let numbers: Vec<u32> = token
            .trim_end_matches('.')
            .split(['-', '/', '.'])
            .map(|it| it.parse().ok())
            .collect::<Option<_>>()?;
        let when = match numbers[..] {
            [year, month, day] if year >= 1000 => Self::of(i32::try_from(year).ok(), month, day),
            [year, month] if year >= 1000 => Self {
                year: i32::try_from(year).ok(),
                month: Some(month),
                day: None,
            },
            [day, month, year] => {
                let year = if year < 100 { 2000 + year } else { year };
                Self::of(i32::try_from(year).ok(), month, day).turned()
            }
            [day, month] => Self::of(None, month, day).turned(),
            _ => return None,
        };
        let month = when.month.is_some_and(|it| (1..=12).contains(&it));
        let day = when.day.is_none_or(|it| (1..=31).contains(&it));
        (month && day).then_some(when)
    }

    fn turned(self) -> Self {
        match (self.month, self.day) {
            (Some(month), Some(day)) if month > 12 && day <= 12 => Self {
                month: Some(day),
                day: Some(month),
                ..self
            },
            _ => self,
        }
    }
}

/// `14`, `14.`, `14th`.
fn day(token: &str) -> Option<u32> {
    let number = token.trim_end_matches(|it: char| it == '.' || it.is_ascii_lowercase());
    let after = token.strip_prefix(number)?;
    let day = number.parse().ok()?;
    (["", ".", "st", "nd", "rd", "th"].contains(&after) && (1..=31).contains(&day)).then_some(day)
}

fn year(token: &str) -> Option<i32> {
    let year = token.parse().ok().filter(|_| token.len() == 4)?;
    YEARS.contains(&year).then_some(year)
}

/// After a day and a month a year may be of two figures.
fn short_year(token: &str) -> Option<i32> {
    let short = || -> Option<i32> {
        let year: i32 = token.parse().ok().filter(|_| token.len() == 2)?;
        Some(2000 + year)
    };
    year(token).or_else(short)
}

/// A month by its name in any language or at least three letters of it.
fn month(token: &str) -> Option<u32> {
    let token = token.trim_end_matches('.');
    let begins = |number: &u32| words::months(*number).any(|name| fold(name).starts_with(token));
    (token.len() >= 3).then(|| (1..=12).find(begins)).flatten()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn query(typed: &str) -> Query {
        Query::read(typed).unwrap().unwrap()
    }

    fn on(typed: &str, day: &str) -> bool {
        let query = query(typed);
        query.on(day.parse().unwrap()) == query.all()
    }

    #[test]
    fn days_are_read_as_they_are_written() {
        for typed in [
            "14 May",
            "14 may 2024",
            "14th May",
            "May 14",
            "may 14 2024",
            "14 May 24",
            "May 2024",
            "2024-05-14",
            "2024-05",
            "14/5/24",
            "14/05/2024",
            "14.5.2024",
            "14.5.",
            "5/14/2024",
            "May",
            "2024",
            "14. may",
            "14. Mai 2024",
        ] {
            assert!(on(typed, "2024-05-14"), "{typed}");
        }
        for typed in [
            "15 May",
            "14 June",
            "14 May 2023",
            "2024-06-14",
            "15/5/24",
            "14/5/23",
            "June 2024",
            "April",
            "2025",
            "2024-06",
        ] {
            assert!(!on(typed, "2024-05-14"), "{typed}");
        }
    }

    #[test]
    fn months_are_read_in_every_language() {
        for typed in ["3. März", "3. Mär. 2024", "3 Mar", "März 2024"] {
            assert!(on(typed, "2024-03-03"), "{typed}");
            assert!(!on(typed, "2024-05-03"), "{typed}");
        }
        assert!(on("Okt. 2024", "2024-10-03") && on("Dezember", "2024-12-03"));
    }

    #[test]
    fn what_is_no_day_is_words_only() {
        for typed in [
            "14 ma", "99/99/99", "K14", "1.5.2.7", "0-0-0", "12345", "1899",
        ] {
            assert_eq!(query(typed).days(), 0, "{typed}");
        }
    }

    #[test]
    fn a_day_may_be_words_of_a_text_too() {
        let query = query("14 may tomato");
        assert_eq!(query.met("Tomatoes: sow by 14 May"), query.all());
        assert_ne!(query.met("Tomatoes: sow by 15 May"), query.all());
    }

    #[test]
    fn every_word_is_meant_and_may_be_begun_only() {
        let query = query("amb ÉCHIN");
        assert_eq!(query.met("Échinacée, the amber one"), query.all());
        assert_eq!(query.met("echinacea AMBER"), query.all());
        assert_ne!(query.met("Échinacée"), query.all());
        assert_eq!(query.met("Clamber, mechinacea"), 0);
    }

    #[test]
    fn signs_and_blanks_are_no_words() {
        for typed in ["", "  ", "%", "_ %", "\0", "' OR ''='", "\"*\"", "–"] {
            let read = Query::read(typed).unwrap();
            let words = read.map(|it| it.parts.len()).unwrap_or_default();
            assert_eq!(words, usize::from(typed.contains("OR")), "{typed:?}");
        }
        let long = "x".repeat(100_000);
        assert_eq!(Query::read(&long).unwrap_err().code, "search_too_long");
        let many = query(&"a ".repeat(100));
        assert_eq!(many.parts.len(), PARTS);
        assert_eq!(many.met("an apple"), many.all());
    }
}

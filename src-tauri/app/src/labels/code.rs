//! A code as a person types it off a label.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// Characters that are mistaken for one another in a hand's writing, as one of
/// them. Judgement.
fn alike(letter: char) -> char {
    match letter {
        'O' | 'Q' => '0',
        'I' | 'L' | '|' | '!' => '1',
        'Z' => '2',
        'S' => '5',
        'B' => '8',
        other => other,
    }
}

/// Letters and digits only, large, without accents.
fn folded(code: &str) -> String {
    code.nfd()
        .filter(|letter| !is_combining_mark(*letter))
        .flat_map(char::to_uppercase)
        .filter(|letter| letter.is_alphanumeric() || ['|', '!'].contains(letter))
        .collect()
}

/// How well a typed code is that of a label.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Match {
    /// But for case, accents and marks between.
    Same,
    /// But for letters that look alike, and noughts in front of its number.
    Alike,
}

/// Whether a typed code is that of a label; none if it is not.
pub(super) fn matches(typed: &str, code: &str) -> Option<Match> {
    let (typed, code) = (folded(typed), folded(code));
    if typed.is_empty() {
        return None;
    }
    if typed == code {
        return Some(Match::Same);
    }
    let shape = |text: &str| -> String {
        let mut letters = text.chars();
        let first = letters.next().map(alike);
        let rest: String = letters.map(alike).collect();
        let rest = rest.trim_start_matches('0');
        first.into_iter().chain(rest.chars()).collect()
    };
    (shape(&typed) == shape(&code)).then_some(Match::Alike)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn case_accents_and_marks_do_not_matter() {
        for typed in ["K10", "k10", " k-10 ", "K 10"] {
            assert_eq!(matches(typed, "K10"), Some(Match::Same), "{typed}");
        }
        assert_eq!(matches("é7", "E7"), Some(Match::Same));
    }

    #[test]
    fn letters_that_look_alike_do() {
        for typed in ["KIO", "kl0", "K|O", "K1o", "K010"] {
            assert_eq!(matches(typed, "K10"), Some(Match::Alike), "{typed}");
        }
        assert_eq!(matches("A5", "AS"), Some(Match::Alike));
    }

    #[test]
    fn another_is_another() {
        for typed in ["K1", "K100", "A10", "", "  ", "-"] {
            assert_eq!(matches(typed, "K10"), None, "{typed}");
        }
    }
}

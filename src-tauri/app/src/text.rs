//! Text as it is compared: no case, no accents, no doubled blanks.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// Folded for comparing; not for showing.
pub(crate) fn fold(text: &str) -> String {
    let small = if text.is_ascii() {
        text.to_ascii_lowercase()
    } else {
        let plain = text.to_lowercase();
        let plain = plain.nfd().filter(|it| !is_combining_mark(*it));
        // At the end of a word it is written otherwise.
        plain.map(|it| if it == 'ς' { 'σ' } else { it }).collect()
    };
    let words: Vec<&str> = small.split_whitespace().collect();
    words.join(" ")
}

/// The words of a folded text: what stands between signs.
pub(crate) fn words_of(folded: &str) -> impl Iterator<Item = &str> {
    folded
        .split(|it: char| !it.is_alphanumeric())
        .filter(|word| !word.is_empty())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn case_accents_and_blanks_make_no_difference() {
        assert_eq!(fold("  Crème\u{a0}BRÛLÉE "), "creme brulee");
        assert_eq!(fold("cre\u{300}me"), fold("crème"));
        assert_eq!(fold("İΣ"), fold("iσ"));
        assert_ne!(fold("leek"), fold("leeks"));
    }
}

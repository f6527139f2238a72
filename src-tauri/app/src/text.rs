//! Text as it is compared: no case, no accents, no doubled blanks.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// Folded for comparing; not for showing.
pub(crate) fn fold(text: &str) -> String {
    let plain = plain(text);
    let words: Vec<&str> = plain.split_whitespace().collect();
    words.join(" ")
}

/// Without case and accents.
pub(crate) fn plain(text: &str) -> String {
    if text.is_ascii() {
        return text.to_ascii_lowercase();
    }
    let small = text.to_lowercase();
    let plain = small.nfd().filter(|it| !is_combining_mark(*it));
    // At the end of a word it is written otherwise.
    plain.map(|it| if it == 'ς' { 'σ' } else { it }).collect()
}

/// Whether a word of a plain text begins so. The beginning is of one plain word.
pub(crate) fn a_word_begins(plain: &str, so: &str) -> bool {
    let at_a_word = |at: usize| {
        plain
            .get(..at)
            .is_some_and(|before| !before.ends_with(char::is_alphanumeric))
    };
    plain.match_indices(so).any(|(at, _)| at_a_word(at))
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
    use proptest::prelude::*;

    #[test]
    fn case_accents_and_blanks_make_no_difference() {
        assert_eq!(fold("  Crème\u{a0}BRÛLÉE "), "creme brulee");
        assert_eq!(fold("cre\u{300}me"), fold("crème"));
        assert_eq!(fold("İΣ"), fold("iσ"));
        assert_ne!(fold("leek"), fold("leeks"));
    }

    proptest! {
        #[test]
        fn a_word_begins_so_if_one_of_the_words_does(text in "[a-cé .-]{0,12}", so in "[a-c]{1,2}") {
            let plain = plain(&text);
            let by_words = words_of(&plain).any(|word| word.starts_with(&so));
            prop_assert_eq!(a_word_begins(&plain, &so), by_words);
        }
    }
}

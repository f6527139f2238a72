//! Text as it is compared: no case, no accents, no doubled blanks.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// Folded for comparing; not for showing.
pub(crate) fn fold(text: &str) -> String {
    let plain: String = text.nfd().filter(|it| !is_combining_mark(*it)).collect();
    let words: Vec<String> = plain.split_whitespace().map(str::to_lowercase).collect();
    words.join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn case_accents_and_blanks_make_no_difference() {
        assert_eq!(fold("  Crème\u{a0}BRÛLÉE "), "creme brulee");
        assert_eq!(fold("cre\u{300}me"), fold("crème"));
        assert_ne!(fold("leek"), fold("leeks"));
    }
}

//! Names, notes and photos.

use super::{Check, known, number, refuse, refuse_with};
use crate::content::{Content, Explained, Noted, PhotoNamed, PhotoTaken};
use crate::error::Error;
use crate::photos;
use crate::store::read;
use crate::subject::Subject;

/// Longest note, characters.
pub(crate) const MAX_TEXT: u32 = 10_000;
/// Longest name, characters.
pub(crate) const MAX_NAME: u32 = 80;

/// A name that must be there.
pub(super) fn name(text: &str, most: u32) -> Result<(), Error> {
    if text.trim().is_empty() {
        return refuse("name_empty");
    }
    optional_name(text, most)
}

/// A name that may be empty.
pub(crate) fn optional_name(text: &str, most: u32) -> Result<(), Error> {
    if longer(text, most) {
        return refuse_with("name_too_long", [("most", number(most))]);
    }
    Ok(())
}

/// A text that may be empty.
pub(super) fn text(text: &str) -> Result<(), Error> {
    if longer(text, MAX_TEXT) {
        return refuse_with("text_too_long", [("most", number(MAX_TEXT))]);
    }
    Ok(())
}

fn longer(text: &str, most: u32) -> bool {
    usize::try_from(most).is_ok_and(|most| text.chars().nth(most).is_some())
}

pub(super) fn noted(check: &Check, what: &Noted) -> Result<(), Error> {
    known(check, what.about)?;
    if what.text.trim().is_empty() {
        return refuse("text_empty");
    }
    text(&what.text)
}

pub(super) fn explained(check: &Check, what: &Explained) -> Result<(), Error> {
    known(check, Subject::Sowing(what.sowing))?;
    text(&what.text)
}

pub(super) fn photo(check: &Check, what: &PhotoTaken) -> Result<(), Error> {
    if !photos::is_name(&what.photo) {
        return refuse("photo_malformed");
    }
    what.about.map_or(Ok(()), |about| known(check, about))
}

pub(super) fn named(check: &Check, what: &PhotoNamed) -> Result<(), Error> {
    let photo = read::roots(check.db, what.taken)?
        .iter()
        .any(|(_, held)| matches!(held.content(), Some(Content::PhotoTaken(_))));
    if !photo {
        return refuse("entry_unknown");
    }
    known(check, what.about)
}

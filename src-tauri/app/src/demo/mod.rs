//! The demo journal: two seasons of an invented garden, written through the
//! same door as everything else, with dates that lead up to today.
//!
//! What truly comes up is reckoned apart from the forecasts: another spread,
//! weather that only the thermometers see, and small miscounts.

mod chance;
mod diary;
mod life;
mod plans;
mod scenario;
mod weather;

use crate::error::AppError;
use crate::words::Language;
use diary::Diary;
use plumule_journal::Journal;
use plumule_journal::stamp::Stamp;
use std::path::Path;

/// Plants the demo journal in a home of its own, its places and notes named in
/// a language.
///
/// # Errors
/// If the journal cannot be opened or refuses an entry.
pub fn plant(home: &Path, stamp: &Stamp, language: Language) -> Result<(), AppError> {
    let mut diary = Diary::new(stamp, language);
    scenario::garden(&mut diary);
    plans::plans(&mut diary);
    for (index, raise) in scenario::RAISED.iter().enumerate() {
        life::play(&mut diary, raise, index);
    }
    scenario::cuttings(&mut diary);
    scenario::readings(&mut diary);
    let mut journal = Journal::open(home, &diary.stamp(diary.first()))?;
    diary.write(&mut journal)?;
    diary.second_thoughts(&mut journal)
}

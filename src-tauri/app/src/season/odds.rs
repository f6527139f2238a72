//! Frost as odds, where a record of daily minima was brought.

use crate::picture::Picture;
use chrono::NaiveDate;
use plumule_agronomy::{FrostOdds, Half, Hemisphere};
use plumule_journal::content::FrostSpread;

/// Both halves of the year that have frosts.
pub(crate) const HALVES: [Half; 2] = [Half::Spring, Half::Autumn];

pub(crate) fn hemisphere(picture: &Picture) -> Hemisphere {
    if picture.southern() {
        Hemisphere::South
    } else {
        Hemisphere::North
    }
}

/// The odds of a record; none of one that cannot be.
pub(crate) fn odds_of(
    spread: FrostSpread,
    half: Half,
    hemisphere: Hemisphere,
) -> Option<FrostOdds> {
    FrostOdds::from_spread(
        half,
        hemisphere,
        (spread.mean_day, spread.deviation_days),
        usize::try_from(spread.years).ok()?,
        usize::try_from(spread.full_years).ok()?,
    )
    .ok()
}

/// The odds of a half of the year. None where there is no record, or where the
/// grower has set another frost date since: the grower's own word holds.
pub(crate) fn odds(picture: &Picture, half: Half) -> Option<FrostOdds> {
    let (frost, garden) = (
        picture.garden.frost.as_ref()?,
        picture.garden.described.as_ref()?,
    );
    let (spread, set) = match half {
        Half::Spring => (frost.spring?, garden.last_frost?),
        Half::Autumn => (frost.autumn?, garden.first_frost?),
    };
    let odds = odds_of(spread, half, hemisphere(picture))?;
    let average = odds.average();
    ((average.month, average.day) == (set.month, set.day)).then_some(odds)
}

/// The chance of a frost after a day of spring.
pub(crate) fn chance_after(picture: &Picture, day: NaiveDate) -> Option<f64> {
    Some(odds(picture, Half::Spring)?.chance(day))
}

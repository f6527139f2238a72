//! The tray that a label names, and trays that may have lost theirs.

use super::code::{Match, matches};
use super::qr;
use crate::act::known;
use crate::error::AppError;
use crate::photos;
use crate::picture::Picture;
use crate::round::place_head;
use crate::trays::quiet_lines;
use crate::view::{Candidate, FoundLabel, LostLabel, TrayLine};
use chrono::NaiveDate;
use plumule_journal::Journal;
use plumule_journal::id::{PlaceId, TrayId};
use plumule_journal::stamp::Stamp;
use plumule_journal::state::{PlaceState, TrayState};
use std::collections::{BTreeMap, BTreeSet};

/// A remembered day may be so many days off. Judgement.
const ABOUT_DAYS: i64 = 7;
/// The most trays that are shown. Judgement.
const MOST: usize = 20;

/// The trays of a code that was typed, or of what a square code says.
pub(super) fn by_text(
    journal: &Journal,
    stamp: &Stamp,
    text: &str,
) -> Result<FoundLabel, AppError> {
    if let Some(tray) = qr::tray(text) {
        return by_id(journal, stamp, tray);
    }
    let named = journal.codes(|code| matches(text, code))?;
    let named: BTreeSet<TrayId> = named.into_iter().map(|(tray, _)| tray).collect();
    let (mut living, mut past) = (Vec::new(), Vec::new());
    for id in named.into_iter().rev().take(MOST) {
        if let Some(tray) = journal.tray(id)?
            && let Some(how) = matches(text, &tray.described.code)
        {
            let which = if tray.emptied.is_none() {
                &mut living
            } else {
                &mut past
            };
            which.push((how, tray));
        }
    }
    let best = |found: &[(Match, TrayState)]| found.iter().map(|(how, _)| *how).min();
    // Codes are given again: what lives is meant, unless only what is past is
    // written so.
    let found = match (best(&living), best(&past)) {
        (Some(living_best), past_best) if past_best.is_none_or(|it| it >= living_best) => living,
        (None, None) => Vec::new(),
        _ => past,
    };
    let how = best(&found);
    let trays = found
        .into_iter()
        .filter_map(|(it, tray)| (Some(it) == how).then_some(tray));
    Ok(FoundLabel {
        code: text.trim().to_owned(),
        trays: lines(journal, stamp, trays.collect())?,
    })
}

/// The tray of the square code in a photo.
pub(super) fn by_photo(
    journal: &Journal,
    stamp: &Stamp,
    read: &[String],
) -> Result<FoundLabel, AppError> {
    let tray = read.iter().find_map(|text| qr::tray(text));
    by_id(
        journal,
        stamp,
        tray.ok_or_else(|| AppError::plain("label_not_read"))?,
    )
}

fn by_id(journal: &Journal, stamp: &Stamp, tray: TrayId) -> Result<FoundLabel, AppError> {
    let trays = lines(journal, stamp, journal.tray(tray)?.into_iter().collect())?;
    Ok(FoundLabel {
        code: trays.first().map(|it| it.code.clone()).unwrap_or_default(),
        trays,
    })
}

fn lines(
    journal: &Journal,
    stamp: &Stamp,
    trays: Vec<TrayState>,
) -> Result<Vec<TrayLine>, AppError> {
    let garden = Picture::of_the_living(journal, stamp)?;
    quiet_lines(journal, &garden, trays, garden.now(stamp))
}

/// What the squares in a photo say, for `by_photo`. Takes a while.
///
/// # Errors
/// As [`photos::Photo::new`].
pub fn read_photo(bytes: &[u8]) -> Result<Vec<String>, AppError> {
    Ok(qr::read(&photos::grey(bytes)?))
}

/// Trays in use that may be the one of a lost label: those that most of what
/// is known fits come first.
pub(super) fn candidates(
    journal: &Journal,
    stamp: &Stamp,
    lost: &LostLabel,
) -> Result<Vec<Candidate>, AppError> {
    let place: Option<PlaceId> = lost.place.as_deref().map(known).transpose()?;
    let places: BTreeMap<PlaceId, PlaceState> = journal
        .places()?
        .into_iter()
        .map(|place| (place.described.place, place))
        .collect();
    let trays = journal.living_trays(None)?;
    let states: BTreeMap<TrayId, TrayState> = trays
        .iter()
        .map(|tray| (tray.described.tray, tray.clone()))
        .collect();
    let asked = [
        place.is_some(),
        lost.container.is_some(),
        lost.cells.is_some(),
        lost.sown.is_some(),
    ];
    let mut found = Vec::new();
    for line in lines(journal, stamp, trays)? {
        let Some(state) = line.tray.parse().ok().and_then(|id| states.get(&id)) else {
            continue;
        };
        let stands = state.stays.last().map(|stay| stay.place);
        let began = began(journal, state)?;
        let off = began.zip(lost.sown).map(|(a, b)| (a - b).num_days().abs());
        let described = &state.described;
        let cells = u32::from(described.rows) * u32::from(described.columns);
        let fit = [
            ("place", place.is_some() && stands == place),
            (
                "container",
                lost.container.as_deref() == Some(described.container.as_str()),
            ),
            ("cells", lost.cells == Some(cells)),
            ("sown", off.is_some_and(|off| off <= ABOUT_DAYS)),
        ];
        let fits: Vec<String> = fit
            .into_iter()
            .filter(|(_, it)| *it)
            .map(|(name, _)| name.to_owned())
            .collect();
        if asked.contains(&true) && fits.is_empty() {
            continue;
        }
        let place = stands.and_then(|place| places.get(&place)).map(place_head);
        found.push((
            off,
            Candidate {
                line,
                place,
                began,
                fits,
            },
        ));
    }
    found.sort_by_key(|(off, it)| {
        let latest = std::cmp::Reverse(it.began);
        let code = crate::trays::code_order(&it.line.code);
        (
            std::cmp::Reverse(it.fits.len()),
            off.unwrap_or(i64::MAX),
            latest,
            code,
        )
    });
    Ok(found.into_iter().map(|(_, it)| it).take(MOST).collect())
}

/// When the first of what is in a tray was sown or begun.
fn began(journal: &Journal, tray: &TrayState) -> Result<Option<NaiveDate>, AppError> {
    use plumule_journal::subject::Plants;
    let mut first = None;
    for occupant in &tray.occupants {
        let began = match occupant.plants {
            Plants::Sowing(id) => journal.sowing(id)?.map(|it| it.opened_by),
            Plants::Batch(id) => journal.batch(id)?.map(|it| it.opened_by),
        };
        let day = began.map(|mark| mark.at.local.date());
        first = match (first, day) {
            (Some(a), Some(b)) => Some(std::cmp::min(a, b)),
            (a, b) => a.or(b),
        };
    }
    Ok(first)
}

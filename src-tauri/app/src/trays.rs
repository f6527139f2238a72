//! The living trays by place, those set aside, and the past ones.

use crate::error::AppError;
use crate::jobs::{Job, jobs};
use crate::picture::Picture;
use crate::round::place_head;
use crate::stage::plants_line;
use crate::view::{PlaceTrays, TrayLine, TraysView};
use chrono::NaiveDateTime;
use plumule_journal::Journal;
use plumule_journal::id::TrayId;
use plumule_journal::stamp::Stamp;
use plumule_journal::state::{Parent, TrayState};
use plumule_journal::subject::Plants;
use std::collections::BTreeSet;

/// The most past trays that are listed.
const PAST: usize = 200;

pub(crate) fn view(journal: &Journal, stamp: &Stamp) -> Result<TraysView, AppError> {
    let picture = Picture::of_the_living(journal, stamp)?;
    let now = picture.now(stamp);
    let due = jobs(&picture, now);
    let all = journal.living_trays(None)?;
    let aside = all
        .into_iter()
        .filter(|tray| !picture.trays.contains_key(&tray.described.tray))
        .collect();
    let places = picture
        .walk()
        .into_iter()
        .map(|place| PlaceTrays {
            place: place_head(place),
            trays: lines(&picture, &due, now, |tray| {
                tray.stays.last().map(|stay| stay.place) == Some(place.described.place)
            }),
        })
        .filter(|place| !place.trays.is_empty())
        .collect();
    Ok(TraysView {
        places,
        nowhere: lines(&picture, &due, now, |tray| picture.place_of(tray).is_none()),
        set_aside: quiet_lines(journal, &picture, aside, now)?,
        past: quiet_lines(journal, &picture, journal.past_trays(PAST)?, now)?,
    })
}

/// Living trays by code.
fn lines(
    picture: &Picture,
    due: &[Job],
    now: NaiveDateTime,
    here: impl Fn(&TrayState) -> bool,
) -> Vec<TrayLine> {
    let mut lines: Vec<TrayLine> = picture
        .trays
        .values()
        .filter(|tray| here(tray))
        .map(|tray| line(picture, due, tray, now))
        .collect();
    lines.sort_by(|a, b| (code_order(&a.code), &a.tray).cmp(&(code_order(&b.code), &b.tray)));
    lines
}

/// `K2` before `K10`.
pub(crate) fn code_order(code: &str) -> (String, u64, String) {
    let mark = code.trim_end_matches(|last: char| last.is_ascii_digit());
    let number = code.strip_prefix(mark).and_then(|it| it.parse().ok());
    (mark.to_owned(), number.unwrap_or(0), code.to_owned())
}

/// Trays of which nothing is due, in the order they come in.
pub(crate) fn quiet_lines(
    journal: &Journal,
    garden: &Picture,
    trays: Vec<TrayState>,
    now: NaiveDateTime,
) -> Result<Vec<TrayLine>, AppError> {
    let order: Vec<TrayId> = trays.iter().map(|tray| tray.described.tray).collect();
    let picture = remembered(journal, garden, trays)?;
    let found = order.iter().filter_map(|id| picture.trays.get(id));
    Ok(found.map(|tray| line(&picture, &[], tray, now)).collect())
}

/// A picture of trays with all that is and was in them, without readings.
fn remembered(
    journal: &Journal,
    garden: &Picture,
    trays: Vec<TrayState>,
) -> Result<Picture, AppError> {
    let mut picture = Picture {
        garden: garden.garden.clone(),
        zone: garden.zone,
        places: garden.places.clone(),
        ..Picture::default()
    };
    let mut wanted: Vec<Plants> = trays
        .iter()
        .flat_map(|tray| tray.occupants.iter().map(|occupant| occupant.plants))
        .collect();
    let mut seen = BTreeSet::new();
    while let Some(plants) = wanted.pop() {
        if !seen.insert(plants) {
            continue;
        }
        match plants {
            Plants::Sowing(id) => {
                if let Some(sowing) = journal.sowing(id)? {
                    let packet = sowing.packet();
                    if !picture.packets.contains_key(&packet)
                        && let Some(state) = journal.packet(packet)?
                    {
                        picture.packets.insert(packet, state);
                    }
                    picture.sowings.insert(id, sowing);
                }
            }
            Plants::Batch(id) => {
                if let Some(batch) = journal.batch(id)? {
                    if let Parent::Plants { of, .. } = batch.parent {
                        wanted.push(of);
                    }
                    picture.batches.insert(id, batch);
                }
            }
        }
    }
    for tray in trays {
        picture.trays.insert(tray.described.tray, tray);
    }
    Ok(picture)
}

fn line(picture: &Picture, due: &[Job], tray: &TrayState, now: NaiveDateTime) -> TrayLine {
    let id = tray.described.tray;
    let (living, past): (Vec<Plants>, Vec<Plants>) = tray
        .occupants
        .iter()
        .map(|occupant| occupant.plants)
        .partition(|plants| lives(picture, *plants));
    let shown = if living.is_empty() { past } else { living };
    let due = due.iter().filter(|job| job.tray == Some(id)).count();
    TrayLine {
        tray: id.to_string(),
        code: tray.described.code.clone(),
        container: tray.described.container.as_str().to_owned(),
        plants: shown
            .into_iter()
            .filter_map(|plants| plants_line(picture, plants, now))
            .collect(),
        due: u32::try_from(due).unwrap_or(u32::MAX),
        free_cells: free_cells(picture, tray),
        emptied: tray.emptied.as_ref().map(|mark| mark.at.local.date()),
    }
}

pub(crate) fn lives(picture: &Picture, plants: Plants) -> bool {
    picture
        .plants(plants)
        .is_some_and(|state| state.ended.is_none())
}

/// Cells of a tray that living plants stand in.
pub(crate) fn taken_cells(picture: &Picture, tray: &TrayState) -> BTreeSet<u16> {
    tray.occupants
        .iter()
        .filter(|occupant| lives(picture, occupant.plants))
        .flat_map(|occupant| occupant.cells.iter().copied())
        .collect()
}

fn free_cells(picture: &Picture, tray: &TrayState) -> u32 {
    if tray.emptied.is_some() {
        return 0;
    }
    let all = u32::from(tray.described.rows) * u32::from(tray.described.columns);
    let taken = u32::try_from(taken_cells(picture, tray).len()).unwrap_or(u32::MAX);
    all.saturating_sub(taken)
}

//! What became of the plants.

use super::crop_named;
use super::record::History;
use crate::error::AppError;
use crate::names::Names;
use crate::view::{CropNumbers, ResultsAsked};
use plumule_journal::Journal;
use plumule_journal::content::Wares;
use plumule_journal::id::BatchId;
use plumule_journal::state::{BatchState, Parent, PlantsState};
use plumule_journal::subject::Plants;
use std::collections::BTreeMap;

/// Plants by crop: of the year they were sown or set in, where one is asked for.
pub(super) fn by_crop(
    journal: &Journal,
    history: &History,
    asked: &ResultsAsked,
) -> Result<Vec<CropNumbers>, AppError> {
    let mut by_crop: BTreeMap<String, CropNumbers> = BTreeMap::new();
    let mut add = |crop: String, year: i32, plants: &PlantsState| {
        let wanted = asked.year.is_none_or(|of| of == year);
        if !wanted || asked.crop.as_ref().is_some_and(|of| *of != crop) {
            return;
        }
        let sums = by_crop.entry(crop).or_insert_with_key(|crop| none(crop));
        let numbers = &plants.numbers;
        let here = if plants.ended.is_some() {
            0
        } else {
            numbers.there
        };
        if plants.ready.is_some() {
            sums.ready += here;
        } else {
            sums.growing += here;
        }
        sums.planted_out += numbers.planted_out;
        sums.sold += numbers.sold;
        sums.given_away += numbers.given_away;
    };
    for sowing in history.sowings() {
        let year = history.years.year_of(sowing.opened_by.at.local.date());
        add(history.crop(sowing), year, &sowing.plants);
    }
    let mut batches = journal.living_batches()?;
    batches.extend(journal.past_batches(usize::MAX)?);
    let batches: BTreeMap<BatchId, BatchState> =
        batches.into_iter().map(|it| (it.batch, it)).collect();
    for batch in batches.values() {
        let year = history.years.year_of(batch.opened_by.at.local.date());
        add(crop(history, &batches, batch), year, &batch.plants);
    }
    for kept in journal.reservations()? {
        let crop = match &kept.described.of {
            Wares::Plants { of } => Names(journal).plants(*of)?.crop,
            Wares::Crop { crop, .. } => crop.clone(),
        };
        if asked.crop.as_ref().is_none_or(|of| *of == crop) {
            let sums = by_crop.entry(crop).or_insert_with_key(|crop| none(crop));
            sums.reserved = sums.reserved.saturating_add(kept.remaining());
        }
    }
    let any = |it: &CropNumbers| {
        it.growing + it.ready + it.reserved + it.planted_out + it.sold + it.given_away > 0
    };
    let free = |mut it: CropNumbers| {
        it.free = i32::try_from(i64::from(it.ready) - i64::from(it.reserved)).unwrap_or(0);
        it
    };
    Ok(by_crop.into_values().filter(any).map(free).collect())
}

fn none(crop: &str) -> CropNumbers {
    CropNumbers {
        crop: crop_named(crop),
        growing: 0,
        ready: 0,
        reserved: 0,
        free: 0,
        planted_out: 0,
        sold: 0,
        given_away: 0,
    }
}

/// The crop of a batch: of the sowing it came from, or as it was started.
fn crop(history: &History, batches: &BTreeMap<BatchId, BatchState>, batch: &BatchState) -> String {
    let mut parent = &batch.parent;
    // A ring of batches, as a merge might bring, comes to an end here.
    for _ in 0..=batches.len() {
        match parent {
            Parent::Started { crop, .. } => return crop.clone(),
            Parent::Plants {
                of: Plants::Sowing(id),
                ..
            } => {
                return history
                    .sowing(*id)
                    .map_or_else(String::new, |it| history.crop(it));
            }
            Parent::Plants {
                of: Plants::Batch(id),
                ..
            } => match batches.get(id) {
                Some(batch) => parent = &batch.parent,
                None => break,
            },
        }
    }
    String::new()
}

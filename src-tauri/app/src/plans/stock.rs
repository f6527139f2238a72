//! Plants that are ready, and those kept for somebody.

use crate::error::AppError;
use crate::names::Names;
use plumule_journal::Journal;
use plumule_journal::content::Wares;
use plumule_journal::state::{Mark, PlantsState};
use plumule_journal::subject::Plants;

/// Plants that are ready of what is meant, and how many of each are there: the
/// first that were ready first.
pub(crate) fn ready(journal: &Journal, of: &Wares) -> Result<Vec<(Plants, u32)>, AppError> {
    let mut found: Vec<(Mark, Plants, u32)> = Vec::new();
    let mut add = |plants: Plants, state: &PlantsState| -> Result<(), AppError> {
        if let Some(mark) = &state.ready
            && state.numbers.there > 0
            && is(journal, of, plants)?
        {
            found.push((mark.clone(), plants, state.numbers.there));
        }
        Ok(())
    };
    for sowing in journal.living_sowings()? {
        add(Plants::Sowing(sowing.sown.sowing), &sowing.plants)?;
    }
    for batch in journal.living_batches()? {
        add(Plants::Batch(batch.batch), &batch.plants)?;
    }
    found.sort_by_key(|(mark, plants, _)| (mark.at.instant(), *plants));
    Ok(found
        .into_iter()
        .map(|(_, plants, there)| (plants, there))
        .collect())
}

fn is(journal: &Journal, of: &Wares, plants: Plants) -> Result<bool, AppError> {
    match of {
        Wares::Plants { of } => Ok(*of == plants),
        Wares::Crop { crop, variety } => {
            let name = Names(journal).plants(plants)?;
            let variety = variety.trim();
            Ok(name.crop == *crop && (variety.is_empty() || name.variety.trim() == variety))
        }
    }
}

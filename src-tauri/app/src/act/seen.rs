//! What a grower saw of plants, and thinks of it.

use super::Made;
use super::parse::{known, plants};
use crate::error::AppError;
use crate::view::PlantsRef;
use plumule_journal::content::{Content, Explained, Noticed, SeedsLost};

pub(super) fn seeds_lost(sowing: &str, number: u32, cause: &str) -> Result<Made, AppError> {
    Ok(Made::one(Content::SeedsLost(SeedsLost {
        sowing: known(sowing)?,
        number,
        cause: known(cause)?,
    })))
}

pub(super) fn explain(sowing: &str, causes: &[String], text: &str) -> Result<Made, AppError> {
    let causes: Result<_, _> = causes.iter().map(|cause| known(cause)).collect();
    Ok(Made::one(Content::Explained(Explained {
        sowing: known(sowing)?,
        causes: causes?,
        text: text.trim().to_owned(),
    })))
}

pub(super) fn notice(of: &PlantsRef, sight: &str) -> Result<Made, AppError> {
    Ok(Made::one(Content::Noticed(Noticed {
        of: plants(of)?,
        sight: known(sight)?,
    })))
}

//! The garden. Jobs put off and dismissed are rows beside it.

use super::held::{Held, events, last_word};
use crate::content::Content;
use crate::state::GardenState;

pub(super) fn fold(held: &[Held]) -> Option<GardenState> {
    let described = last_word(held, |content| match content {
        Content::GardenDescribed(what) => Some(what.clone()),
        _ => None,
    });
    let away: Vec<_> = events(held)
        .into_iter()
        .filter_map(|(_, content)| match content {
            Content::Away(away) => Some(away.clone()),
            _ => None,
        })
        .collect();
    (described.is_some() || !away.is_empty()).then(|| GardenState {
        described,
        away,
        ..GardenState::default()
    })
}

//! A place.

use super::held::{Held, events, last_word};
use crate::content::{Content, PlaceDescribed};
use crate::id::PlaceId;
use crate::state::{PlaceState, Unheated};

pub(super) fn fold(id: PlaceId, held: &[Held]) -> Option<PlaceState> {
    let pick = |content| described(id, content);
    let events = events(held);
    let opened_by = events
        .iter()
        .find(|(_, content)| pick(content).is_some())
        .map(|(held, _)| held.mark())?;
    let mut heat_off: Vec<_> = events
        .iter()
        .filter_map(|(held, content)| match content {
            Content::HeatOff(what) if what.place == id => Some(Unheated {
                from: what.from,
                to: what.to,
                meanwhile: what.meanwhile,
                entry: held.entry.id,
            }),
            _ => None,
        })
        .collect();
    heat_off.sort_by_key(|stretch| stretch.from);
    Some(PlaceState {
        described: last_word(held, pick)?.clone(),
        opened_by,
        heat_off,
    })
}

fn described(id: PlaceId, content: &Content) -> Option<&PlaceDescribed> {
    match content {
        Content::PlaceDescribed(what) if what.place == id => Some(what),
        _ => None,
    }
}

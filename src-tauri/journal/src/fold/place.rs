//! A place.

use super::held::{Held, events, last_word};
use crate::content::{Content, HeatBack, PlaceDescribed};
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
    heat_off.sort_by_key(|stretch: &Unheated| stretch.from);
    for (_, content) in &events {
        if let Content::HeatBack(back) = content
            && back.place == id
        {
            come_back(&mut heat_off, back);
        }
    }
    let aired = events
        .iter()
        .rev()
        .find_map(|(held, content)| match content {
            Content::Aired(what) if what.place == id => Some(held.mark()),
            _ => None,
        });
    Some(PlaceState {
        described: last_word(held, pick)?.clone(),
        opened_by,
        heat_off,
        aired,
    })
}

/// Ends the last stretch that had begun by then and was open.
fn come_back(heat_off: &mut [Unheated], back: &HeatBack) {
    let mut stretches = heat_off.iter_mut().rev();
    let open = stretches.find(|stretch| stretch.to.is_none() && stretch.from <= back.at);
    if let Some(stretch) = open {
        stretch.to = Some(back.at);
        stretch.meanwhile = back.meanwhile.or(stretch.meanwhile);
    }
}

fn described(id: PlaceId, content: &Content) -> Option<&PlaceDescribed> {
    match content {
        Content::PlaceDescribed(what) if what.place == id => Some(what),
        _ => None,
    }
}

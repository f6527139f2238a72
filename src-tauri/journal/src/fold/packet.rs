//! A packet.

use super::held::{Held, events, last_word, withdrawn_word};
use crate::content::{Content, PacketDescribed};
use crate::id::PacketId;
use crate::state::PacketState;

pub(super) fn fold(id: PacketId, held: &[Held]) -> Option<PacketState> {
    let pick = |content| described(id, content);
    let events = events(held);
    let mut seeds_sown: u32 = 0;
    let mut sowings = Vec::new();
    for (_, content) in &events {
        if let Content::Sown(what) = content
            && what.packet == id
        {
            seeds_sown = seeds_sown.saturating_add(what.seeds.number());
            sowings.push(what.sowing);
        }
    }
    let opened = events.iter().find(|(_, content)| pick(content).is_some());
    let (opened_by, described) = match opened {
        Some((held_by, _)) => (held_by.mark(), last_word(held, pick)?),
        // Withdrawn, yet seeds were sown from it on another device: what it
        // was is better than a sowing of nothing.
        None if !sowings.is_empty() => {
            let (held_by, described) = withdrawn_word(held, pick)?;
            (held_by.mark(), described)
        }
        None => return None,
    };
    Some(PacketState {
        described: described.clone(),
        opened_by,
        seeds_sown,
        sowings,
    })
}

fn described(id: PacketId, content: &Content) -> Option<&PacketDescribed> {
    match content {
        Content::PacketDescribed(what) if what.packet == id => Some(what),
        _ => None,
    }
}

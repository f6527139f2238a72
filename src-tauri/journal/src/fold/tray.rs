//! A tray. It lives from its description until it is emptied.

use super::held::{Held, events, last_word, withdrawn_word};
use crate::content::{Content, TrayDescribed};
use crate::id::TrayId;
use crate::state::{Cover, FeltAt, Occupant, Problem, ShelteredAt, Stay, TrayState};
use crate::subject::Plants;

pub(super) fn fold(id: TrayId, held: &[Held]) -> Option<TrayState> {
    let pick = |content| described(id, content);
    let events = events(held);
    let mut others = false;
    let opened = events.iter().find(|(_, content)| pick(content).is_some());
    let (opened_by, described, known) = match opened {
        Some((held_by, _)) => (held_by.mark(), last_word(held, pick)?, true),
        None => {
            let (held_by, described) = withdrawn_word(held, pick)?;
            (held_by.mark(), described, false)
        }
    };
    let mut state = TrayState {
        described: described.clone(),
        opened_by,
        stays: Vec::new(),
        covers: Vec::new(),
        felt: Vec::new(),
        fed: Vec::new(),
        hardened: Vec::new(),
        sheltered: Vec::new(),
        occupants: Vec::new(),
        emptied: None,
        problems: Default::default(),
    };
    for (held, content) in &events {
        if add(id, &mut state, held, content) {
            others = true;
            if state
                .emptied
                .as_ref()
                .is_some_and(|mark| mark.entry != held.entry.id)
            {
                state.problems.insert(Problem::AfterTheEnd);
            }
        }
    }
    if !known {
        state.problems.insert(Problem::NeverDescribed);
    }
    let cells = state.cell_count();
    if state
        .occupants
        .iter()
        .any(|occupant| occupant.cells.iter().any(|cell| u32::from(*cell) >= cells))
    {
        state.problems.insert(Problem::CellsTwice);
    }
    (known || others).then_some(state)
}

/// A tray in use with one more of what is done to it day by day.
pub(super) fn then(state: &TrayState, held: &Held) -> Option<TrayState> {
    let content = held.content()?;
    let daily = matches!(
        content,
        Content::TrayMoved(_)
            | Content::CoverChanged(_)
            | Content::Felt(_)
            | Content::Fed(_)
            | Content::HardenedOff(_)
            | Content::Sheltered(_)
    );
    (daily && state.emptied.is_none()).then(|| {
        let mut state = state.clone();
        add(state.described.tray, &mut state, held, content);
        state
    })
}

/// Adds what a content says about the tray; whether it says anything.
fn add(id: TrayId, state: &mut TrayState, held: &Held, content: &Content) -> bool {
    let mark = || held.mark();
    match content {
        Content::TrayMoved(what) if what.tray == id => state.stays.push(Stay {
            place: what.place,
            since: mark(),
        }),
        Content::CoverChanged(what) if what.tray == id => state.covers.push(Cover {
            on: what.on,
            at: mark(),
        }),
        Content::Felt(what) if what.tray == id => state.felt.push(FeltAt {
            at: mark(),
            feel: what.feel,
            water: what.water,
        }),
        Content::Fed(what) if what.tray == id => state.fed.push(mark()),
        Content::HardenedOff(what) if what.tray == id => state.hardened.push(mark()),
        Content::Sheltered(what) if what.tray == id => state.sheltered.push(ShelteredAt {
            at: mark(),
            how: what.how,
        }),
        Content::TrayEmptied(what) if what.tray == id => {
            state.emptied.get_or_insert_with(mark);
        }
        Content::Sown(what) if what.tray == id => {
            occupy(state, Plants::Sowing(what.sowing), &what.cells);
        }
        Content::BatchStarted(what) if what.tray == id => {
            occupy(state, Plants::Batch(what.batch), &what.cells);
        }
        Content::WentOn(what) if what.parts.iter().any(|part| part.tray == id) => {
            for part in what.parts.iter().filter(|part| part.tray == id) {
                occupy(state, Plants::Batch(part.batch), &part.cells);
            }
        }
        _ => return false,
    }
    true
}

fn occupy(state: &mut TrayState, plants: Plants, cells: &std::collections::BTreeSet<u16>) {
    if !state.occupants.iter().any(|there| there.plants == plants) {
        state.occupants.push(Occupant {
            plants,
            cells: cells.clone(),
        });
    }
}

fn described(id: TrayId, content: &Content) -> Option<&TrayDescribed> {
    match content {
        Content::TrayDescribed(what) if what.tray == id => Some(what),
        _ => None,
    }
}

//! A sowing and a batch.

use super::about;
use super::held::{Held, events, withdrawn_word};
use super::plants::Tally;
use crate::content::{Content, Explained, Seeds, Sown};
use crate::id::{BatchId, SowingId, TrayId};
use crate::state::{
    BatchState, Dug, ExplainedAt, Mark, Parent, PlantsState, Problem, SeedsLostAt, SowingState,
};
use crate::subject::Plants;
use std::collections::BTreeSet;

pub(super) fn sowing(id: SowingId, held: &[Held]) -> Option<SowingState> {
    let plants = Plants::Sowing(id);
    let events = events(held);
    let others = events.iter().any(|(_, content)| about(plants, content));
    let (opened_by, sown, known) = opener(held, &events, others, |content| sown(id, content))?;
    let seeds = sown.seeds.number();
    let mut tally = Tally::sowing((sown.seeds != Seeds::Pinch).then_some(seeds), seeds);
    let mut counts = Vec::new();
    let mut dug = Vec::new();
    let mut seeds_lost = Vec::new();
    let mut explained = None;
    for (held, content) in events.iter().filter(|(_, content)| about(plants, content)) {
        match content {
            Content::DugUp(what) => dug.push(Dug {
                at: held.mark(),
                firm: what.firm,
                soft: what.soft,
            }),
            Content::SeedsLost(what) => seeds_lost.push(SeedsLostAt {
                at: held.mark(),
                number: what.number,
                cause: what.cause,
            }),
            Content::Explained(what) => explained = explanation(held.mark(), what),
            _ => {}
        }
        counts.extend(tally.add(held, content));
    }
    Some(SowingState {
        sown: sown.clone(),
        opened_by,
        counts,
        dug,
        seeds_lost,
        explained,
        plants: finish(tally, known),
    })
}

pub(super) fn batch(id: BatchId, held: &[Held]) -> Option<BatchState> {
    let plants = Plants::Batch(id);
    let events = events(held);
    let others = events.iter().any(|(_, content)| about(plants, content));
    let (opened_by, start, known) = opener(held, &events, others, |content| start(id, content))?;
    let mut tally = Tally::batch(start.number);
    for (held, content) in events.iter().filter(|(_, content)| about(plants, content)) {
        tally.add(held, content);
    }
    Some(BatchState {
        batch: id,
        parent: start.parent,
        tray: start.tray,
        cells: start.cells,
        opened_by,
        plants: finish(tally, known),
    })
}

/// The first that says it began; if that was withdrawn and others still speak
/// of it, what was withdrawn.
fn opener<'a, T>(
    held: &'a [Held],
    events: &[(&'a Held, &'a Content)],
    others: bool,
    pick: impl Fn(&'a Content) -> Option<T>,
) -> Option<(Mark, T, bool)> {
    let first = events
        .iter()
        .find_map(|(held, content)| Some((held.mark(), pick(content)?, true)));
    if first.is_some() || !others {
        return first;
    }
    withdrawn_word(held, pick).map(|(held, found)| (held.mark(), found, false))
}

/// None where it says nothing: that takes back what was said.
fn explanation(at: Mark, what: &Explained) -> Option<Box<ExplainedAt>> {
    let text = what.text.trim();
    (!what.causes.is_empty() || !text.is_empty()).then(|| {
        Box::new(ExplainedAt {
            at,
            causes: what.causes.clone(),
            text: text.to_owned(),
        })
    })
}

fn finish(tally: Tally, known: bool) -> PlantsState {
    let mut plants = tally.done();
    if !known {
        plants.problems.insert(Problem::NeverDescribed);
    }
    plants
}

fn sown(id: SowingId, content: &Content) -> Option<&Sown> {
    match content {
        Content::Sown(what) if what.sowing == id => Some(what),
        _ => None,
    }
}

struct Start {
    parent: Parent,
    tray: TrayId,
    cells: BTreeSet<u16>,
    number: u32,
}

fn start(id: BatchId, content: &Content) -> Option<Start> {
    match content {
        Content::BatchStarted(what) if what.batch == id => Some(Start {
            parent: Parent::Started {
                origin: what.origin,
                crop: what.crop.clone(),
                variety: what.variety.clone(),
            },
            tray: what.tray,
            cells: what.cells.clone(),
            number: what.number,
        }),
        Content::WentOn(what) => {
            let part = what.parts.iter().find(|part| part.batch == id)?;
            Some(Start {
                parent: Parent::Plants {
                    of: what.of,
                    step: what.step,
                },
                tray: part.tray,
                cells: part.cells.clone(),
                number: part.number,
            })
        }
        _ => None,
    }
}

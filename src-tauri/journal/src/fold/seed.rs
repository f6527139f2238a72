//! A germination test, and something to buy.

use super::held::{Held, events, last_word};
use crate::content::{Content, TestClosed, TestStarted, ToBuy};
use crate::id::{ItemId, TestId};
use crate::state::{ItemState, TestCount, TestState};

pub(super) fn test(id: TestId, held: &[Held]) -> Option<TestState> {
    let events = events(held);
    let (opened_by, what) = events
        .iter()
        .find_map(|(held, content)| Some((held.mark(), started(id, content)?)))?;
    let mut counts = Vec::new();
    let mut last = None;
    for (held, content) in &events {
        match content {
            Content::TestCounted(counted) if counted.test == id => counts.push(TestCount {
                at: held.mark(),
                sprouted: counted.sprouted.min(what.seeds),
            }),
            Content::TestClosed(end) if end.test == id => {
                last = Some(closed(held, end, what.seeds));
            }
            _ => {}
        }
    }
    Some(TestState {
        test: id,
        packet: what.packet,
        seeds: what.seeds,
        opened_by,
        counts,
        closed: last,
    })
}

fn started(id: TestId, content: &Content) -> Option<&TestStarted> {
    match content {
        Content::TestStarted(what) if what.test == id => Some(what),
        _ => None,
    }
}

/// The last count of a test: no more than there were seeds.
pub(super) fn closed(held: &Held, what: &TestClosed, seeds: u32) -> TestCount {
    TestCount {
        at: held.mark(),
        sprouted: what.sprouted.min(seeds),
    }
}

pub(super) fn item(id: ItemId, held: &[Held]) -> Option<ItemState> {
    let pick = |content| named(id, content);
    let events = events(held);
    let mut marks = events
        .iter()
        .filter(|(_, content)| pick(content).is_some())
        .map(|(held, _)| held.mark());
    let opened_by = marks.next()?;
    let last = marks.next_back().unwrap_or_else(|| opened_by.clone());
    Some(ItemState {
        described: last_word(held, pick)?.clone(),
        opened_by,
        last,
    })
}

fn named(id: ItemId, content: &Content) -> Option<&ToBuy> {
    match content {
        Content::ToBuy(what) if what.item == id => Some(what),
        _ => None,
    }
}

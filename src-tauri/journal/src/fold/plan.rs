//! A plan with its sowings, and plants kept for somebody.

use super::held::{Held, events, last_word};
use crate::content::{Content, PlanDescribed, Reserved};
use crate::id::{PlanId, ReservationId};
use crate::state::{Mark, PlanSown, PlanState, ReservationState};

pub(super) fn plan(id: PlanId, held: &[Held]) -> Option<PlanState> {
    let pick = |content| described(id, content);
    let sowings = events(held)
        .into_iter()
        .filter_map(|(held, content)| match content {
            Content::Sown(sown) if sown.plan == Some(id) => Some(PlanSown {
                sowing: sown.sowing,
                at: held.mark(),
            }),
            _ => None,
        });
    let words = held
        .iter()
        .filter(|one| one.content().is_some_and(|it| described(id, it).is_some()));
    Some(PlanState {
        described: last_word(held, pick)?.clone(),
        opened_by: first(held, |content| described(id, content).is_some())?,
        last: words.max_by(|a, b| a.word().cmp(&b.word()))?.mark(),
        sowings: sowings.collect(),
    })
}

fn described(id: PlanId, content: &Content) -> Option<&PlanDescribed> {
    match content {
        Content::PlanDescribed(what) if what.plan == id => Some(what),
        _ => None,
    }
}

pub(super) fn reservation(id: ReservationId, held: &[Held]) -> Option<ReservationState> {
    let pick = |content| reserved(id, content);
    let handed = events(held)
        .into_iter()
        .filter_map(|(_, content)| match content {
            Content::Left(left) if left.reservation == Some(id) => Some(left.number),
            _ => None,
        });
    Some(ReservationState {
        described: last_word(held, pick)?.clone(),
        opened_by: first(held, |content| reserved(id, content).is_some())?,
        handed_over: handed.fold(0, u32::saturating_add),
    })
}

fn reserved(id: ReservationId, content: &Content) -> Option<&Reserved> {
    match content {
        Content::Reserved(what) if what.reservation == id => Some(what),
        _ => None,
    }
}

fn first(held: &[Held], is: impl Fn(&Content) -> bool) -> Option<Mark> {
    let events = events(held);
    let found = events.into_iter().find(|(_, content)| is(content));
    found.map(|(held, _)| held.mark())
}

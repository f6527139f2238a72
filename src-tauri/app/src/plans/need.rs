//! What is to be sown for a plan, and by when.

use super::count::{Count, count};
use super::raise::{Raising, raising};
use crate::bench::seeds_enough;
use crate::growth::{Learnt, outlook_of};
use crate::jobs::{Plan, true_leaves_of};
use crate::picture::Picture;
use chrono::{NaiveDate, TimeDelta};
use plumule_journal::content::{PlanDescribed, Rhythm};
use plumule_journal::id::EntryId;
use plumule_journal::state::{PacketState, PlanState};
use std::cmp::Ordering;

/// How a plan stands.
#[derive(Clone, Debug)]
pub(crate) struct Need<'a> {
    pub(crate) plan: &'a PlanState,
    /// The packet to sow from.
    pub(crate) packet: Option<&'a PacketState>,
    /// Plants to raise, of each sowing where there are several.
    pub(crate) raise: u32,
    pub(crate) count: Count,
    /// Days from sowing to ready, for a plan that has a day to be ready on.
    pub(crate) raising: Option<Raising<'a>>,
    /// The next sowing, if one is to come.
    pub(crate) next: Option<Next>,
}

/// A sowing that is to be made.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Next {
    /// For so many plants.
    pub(crate) plants: u32,
    /// From this day; it may lie in the past.
    pub(crate) from: NaiveDate,
    /// The last day on which it is of use.
    pub(crate) last: NaiveDate,
    /// The entry that opened the need.
    pub(crate) opened_by: EntryId,
    /// Something was sown and fell short.
    pub(crate) short: bool,
    /// The day from which it is to be asked for: not before it was known.
    pub(crate) ask: NaiveDate,
}

/// Of all plans that have not ended, by their ids.
pub(crate) fn needs<'a>(plan: &Plan<'a>) -> Vec<Need<'a>> {
    let plans = plan.picture.plans.values();
    plans.map(|it| need(plan, it)).collect()
}

/// Of one plan.
pub(crate) fn need<'a>(plan: &Plan<'a>, of: &'a PlanState) -> Need<'a> {
    let described = &of.described;
    // Of sowings one after another nobody asks what is still to come.
    let to_a_day = described.rhythm.first_day().is_none();
    let count = count(plan, of.sowings.iter().map(|sown| sown.sowing), to_a_day);
    let packet = best_packet(plan.picture, described, plan.now.date());
    let mut need = Need {
        plan: of,
        packet,
        raise: described.to_raise(),
        raising: to_a_day
            .then(|| raising(plan.picture, described, packet))
            .flatten(),
        count,
        next: None,
    };
    need.next = need.next(plan);
    need
}

impl Need<'_> {
    /// The entry that opened the need for the next sowing: the last one made,
    /// or the last word on the plan if that is later; and its day.
    fn opened(&self) -> (EntryId, NaiveDate) {
        let last = &self.plan.last;
        let sown = self.plan.sowings.last().map(|sown| &sown.at);
        let mark = sown
            .filter(|sown| sown.at.instant() >= last.at.instant())
            .unwrap_or(last);
        (mark.entry, mark.at.local.date())
    }

    fn next(&self, plan: &Plan<'_>) -> Option<Next> {
        let (opened_by, known) = self.opened();
        let last_sown = self.plan.sowings.last();
        let sown = last_sown.map(|sown| sown.at.at.local.date());
        let (plants, from, last) = match self.plan.described.rhythm {
            Rhythm::By { day } | Rhythm::Sale { day, .. } => {
                let missing = self.raise.saturating_sub(self.count.expected());
                if missing == 0 || self.count.unknown {
                    return None;
                }
                let raising = self.raising.as_ref()?;
                let before = |days| day - TimeDelta::days(days);
                (missing, before(raising.longest), before(raising.shortest))
            }
            Rhythm::Every { weeks, from, to } => {
                let next = sown.map_or(from, |sown| sown + TimeDelta::weeks(i64::from(weeks)));
                (self.raise, next, to)
            }
            Rhythm::TrueLeaves { from, to } => {
                let next = match last_sown {
                    Some(sown) => true_leaves_of(plan, sown.sowing)?,
                    None => from,
                };
                (self.raise, next, to)
            }
        };
        if from > last {
            return None;
        }
        // What fell short was known when it was last seen.
        let seen = self.count.seen.filter(|_| self.raising.is_some());
        let known = seen.map_or(known, |seen| known.max(seen.date()));
        Some(Next {
            plants,
            from,
            last,
            opened_by,
            short: sown.is_some() && self.raising.is_some(),
            ask: from.max(known),
        })
    }

    /// Seeds that are enough for the next sowing; none where the packet is not
    /// good enough or not known.
    pub(crate) fn seeds(&self, plan: &Plan<'_>) -> Option<u32> {
        let (packet, next) = (self.packet?, self.next.as_ref()?);
        let learnt = Learnt::of(plan.picture, packet);
        let worth = outlook_of(packet, &learnt, plan.now.date())?;
        seeds_enough(next.plants, super::ODDS, worth.outlook)
    }
}

/// The packet that the plan names, while it is in use; else of those of its crop
/// and variety that have seed left the one that is best.
fn best_packet<'a>(
    picture: &'a Picture,
    plan: &PlanDescribed,
    today: NaiveDate,
) -> Option<&'a PacketState> {
    let variety = plan.variety.trim();
    let usable = picture.packets_of(&plan.crop).filter(|packet| {
        let described = &packet.described;
        !described.retired && packet.seeds_left() != Some(0)
    });
    let worth = |packet: &PacketState| {
        outlook_of(packet, &Learnt::of(picture, packet), today)
            .map_or(0.0, |worth| worth.outlook.mean())
    };
    let usable: Vec<&PacketState> = usable.collect();
    let named = usable
        .iter()
        .find(|packet| Some(packet.described.packet) == plan.packet);
    if named.is_some() {
        return named.copied();
    }
    let fits =
        |packet: &&&PacketState| variety.is_empty() || packet.described.variety.trim() == variety;
    let best = usable.iter().filter(fits).max_by(|one, other| {
        let order = worth(one).partial_cmp(&worth(other));
        order
            .unwrap_or(Ordering::Equal)
            .then_with(|| one.described.packet.cmp(&other.described.packet))
    });
    best.copied()
}

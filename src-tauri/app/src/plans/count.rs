//! What the sowings of a plan gave: plants there, gone where they were wanted,
//! and still to come.

use crate::jobs::Plan;
use chrono::NaiveDateTime;
use plumule_journal::id::SowingId;
use plumule_journal::state::{PlantsState, SowingState};
use plumule_journal::subject::Plants;
use std::collections::BTreeSet;

/// Plants of a plan.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Count {
    /// Living, in whatever tray.
    pub(crate) there: u32,
    /// Of those, called ready.
    pub(crate) ready: u32,
    /// Planted out, sold or given away.
    pub(crate) gone: u32,
    /// Expected to come up yet, on average.
    pub(crate) to_come: f64,
    /// Of some sowing nobody can say how many are to come.
    pub(crate) unknown: bool,
    /// When something was last seen of them.
    pub(crate) seen: Option<NaiveDateTime>,
}

impl Count {
    /// Those that count towards what is wanted, in whole plants.
    pub(crate) fn expected(&self) -> u32 {
        self.there + self.gone + self.to_come.round() as u32
    }

    fn add(&mut self, plants: &PlantsState) {
        let numbers = &plants.numbers;
        if plants.ended.is_none() {
            self.there += numbers.there;
            if plants.ready.is_some() {
                self.ready += numbers.there;
            }
        }
        self.gone += numbers.planted_out + numbers.sold + numbers.given_away;
        let left = plants.left.iter().map(|left| left.at.at.local);
        let ended = plants.ended.iter().map(|ended| ended.at.at.local);
        self.see(left.chain(ended).max());
    }

    fn see(&mut self, at: Option<NaiveDateTime>) {
        self.seen = self.seen.max(at);
    }
}

/// Of some sowings and all that came from them; what is to come only where it
/// is asked for, since it takes time to reckon.
pub(crate) fn count(
    plan: &Plan<'_>,
    sowings: impl Iterator<Item = SowingId>,
    coming: bool,
) -> Count {
    let mut count = Count::default();
    let mut open: Vec<Plants> = sowings.map(Plants::Sowing).collect();
    let mut seen = BTreeSet::new();
    while let Some(plants) = open.pop() {
        if !seen.insert(plants) {
            continue;
        }
        let Some(state) = plan.picture.plants(plants) else {
            continue;
        };
        count.add(state);
        let parts = state.went_on.iter().flat_map(|step| &step.parts);
        open.extend(parts.map(|part| Plants::Batch(part.batch)));
        if let Plants::Sowing(id) = plants
            && let Some(sowing) = plan.picture.sowings.get(&id)
        {
            count.see(sowing.counts.last().map(|count| count.at.at.local));
            if coming {
                match to_come(plan, sowing) {
                    Some(number) => count.to_come += number,
                    None => count.unknown = true,
                }
            }
        }
    }
    count
}

/// Seedlings still to come of a sowing; none where nobody can say.
fn to_come(plan: &Plan<'_>, sowing: &SowingState) -> Option<f64> {
    if sowing.plants.ended.is_some() || !sowing.plants.went_on.is_empty() {
        return Some(0.0);
    }
    let growth = plan.growth(sowing.sown.sowing)?;
    let case = plan.case(sowing, growth);
    let all = case.expected_final().unwrap_or_else(|| growth.mean_final());
    Some((all - f64::from(growth.up)).max(0.0))
}

//! What is wanted: plans, and things to buy.

use super::known::{Known, name};
use crate::error::AppError;
use crate::picture::plans_from;
use crate::plans::planned;
use crate::seed::on_the_list;
use crate::view::{FoundItem, FoundPlan};
use crate::words;
use plumule_journal::content::{PlanDescribed, Rhythm, ToBuy};
use plumule_journal::id::{ItemId, PlanId};
use plumule_journal::stamp::Stamp;
use plumule_journal::words::Standing;
use std::collections::{BTreeMap, BTreeSet};

/// Something wanted, which parts of the query it meets, and whether it is still
/// on a list.
pub(super) struct Wanted<T> {
    pub met: u32,
    pub of: T,
    pub listed: bool,
}

impl Wanted<PlanDescribed> {
    pub fn found(&self) -> FoundPlan {
        FoundPlan {
            plan: self.of.plan.to_string(),
            plants: name(&self.of.crop, &self.of.variety),
            say: planned(&self.of),
            listed: self.listed,
        }
    }
}

impl Wanted<ToBuy> {
    pub fn found(&self) -> FoundItem {
        FoundItem {
            item: self.of.item.to_string(),
            plants: name(&self.of.crop, &self.of.variety),
            note: self.of.note.clone(),
            bought: self.of.standing == Standing::Bought,
            listed: self.listed,
        }
    }
}

/// All plans, by id: the last is the newest.
pub(super) fn plans(
    known: &mut Known<'_>,
    stamp: &Stamp,
) -> Result<BTreeMap<PlanId, Wanted<PlanDescribed>>, AppError> {
    let (query, journal) = (known.query, known.journal);
    let listed = journal.plans_touched_since(plans_from(stamp))?;
    let listed: BTreeSet<PlanId> = listed.iter().map(|it| it.described.plan).collect();
    let sale = words::in_all_languages("search-plan-sale").join(" ");
    let mut all = BTreeMap::new();
    for plan in journal.plans()? {
        let of = plan.described;
        let kind = match of.rhythm {
            Rhythm::Sale { .. } => &*sale,
            _ => "",
        };
        let words = format!("{} {} {kind}", known.crops.words(&of.crop), of.variety);
        let days = [of.rhythm.first_day(), Some(of.rhythm.last_day())];
        let days = days.into_iter().flatten();
        let packet = of.packet.and_then(|id| known.packets.get(&id));
        let met = query.met(&words)
            | days.fold(0, |met, day| met | query.on(day))
            | packet.map_or(0, |packet| packet.met);
        let (plan, listed) = (of.plan, listed.contains(&of.plan));
        all.insert(plan, Wanted { met, of, listed });
    }
    Ok(all)
}

/// All that is to be bought or was, by id: the last is the newest.
pub(super) fn items(
    known: &mut Known<'_>,
    stamp: &Stamp,
) -> Result<BTreeMap<ItemId, Wanted<ToBuy>>, AppError> {
    let today = stamp.now.with_timezone(&known.zone).date_naive();
    let mut all = BTreeMap::new();
    for item in known.journal.to_buy(usize::MAX)? {
        let listed = on_the_list(&item, today);
        let of = item.described;
        if of.standing == Standing::Dropped {
            continue;
        }
        let words = format!("{} {} {}", known.crops.words(&of.crop), of.variety, of.note);
        let met = known.query.met(&words);
        all.insert(of.item, Wanted { met, of, listed });
    }
    Ok(all)
}

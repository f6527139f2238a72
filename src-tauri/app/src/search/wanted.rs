//! What is wanted: plans, and things to buy.

use super::known::{Known, name};
use crate::error::AppError;
use crate::picture::plans_from;
use crate::plans::planned;
use crate::seed::on_the_list;
use crate::view::{FoundItem, FoundPlan};
use crate::words;
use plumule_journal::content::Rhythm;
use plumule_journal::id::{ItemId, PlanId};
use plumule_journal::stamp::Stamp;
use plumule_journal::words::Standing;
use std::collections::{BTreeMap, BTreeSet};

/// Something wanted, and which parts of the query it meets.
pub(super) struct Wanted<T> {
    pub met: u32,
    pub found: T,
}

/// All plans, by id: the last is the newest.
pub(super) fn plans(
    known: &mut Known<'_>,
    stamp: &Stamp,
) -> Result<BTreeMap<PlanId, Wanted<FoundPlan>>, AppError> {
    let (query, journal) = (known.query, known.journal);
    let listed = journal.plans_touched_since(plans_from(stamp))?;
    let listed: BTreeSet<PlanId> = listed.iter().map(|it| it.described.plan).collect();
    let sale = words::in_all_languages("search-plan-sale").join(" ");
    let mut all = BTreeMap::new();
    for plan in journal.plans()? {
        let it = plan.described;
        let kind = match it.rhythm {
            Rhythm::Sale { .. } => &*sale,
            _ => "",
        };
        let words = format!("{} {} {kind}", known.crops.words(&it.crop), it.variety);
        let days = [it.rhythm.first_day(), Some(it.rhythm.last_day())];
        let days = days.into_iter().flatten();
        let packet = it.packet.and_then(|id| known.packets.get(&id));
        let met = query.met(&words)
            | days.fold(0, |met, day| met | query.on(day))
            | packet.map_or(0, |packet| packet.met);
        let found = FoundPlan {
            plan: it.plan.to_string(),
            plants: name(&it.crop, &it.variety),
            say: planned(&it),
            listed: listed.contains(&it.plan),
        };
        all.insert(it.plan, Wanted { met, found });
    }
    Ok(all)
}

/// All that is to be bought or was, by id: the last is the newest.
pub(super) fn items(
    known: &mut Known<'_>,
    stamp: &Stamp,
) -> Result<BTreeMap<ItemId, Wanted<FoundItem>>, AppError> {
    let today = stamp.now.with_timezone(&known.zone).date_naive();
    let mut all = BTreeMap::new();
    for item in known.journal.to_buy(usize::MAX)? {
        let listed = on_the_list(&item, today);
        let it = item.described;
        if it.standing == Standing::Dropped {
            continue;
        }
        let words = format!("{} {} {}", known.crops.words(&it.crop), it.variety, it.note);
        let found = FoundItem {
            item: it.item.to_string(),
            plants: name(&it.crop, &it.variety),
            note: it.note,
            bought: it.standing == Standing::Bought,
            listed,
        };
        let met = known.query.met(&words);
        all.insert(it.item, Wanted { met, found });
    }
    Ok(all)
}

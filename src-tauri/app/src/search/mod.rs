//! Looking for words and days through the whole journal.
//!
//! Nothing is kept for it but narrow indices. Packets, plans, things to buy and
//! label codes are gone through whole; of what a query asks, the part that
//! fewest things meet says which trays and sowings are looked at, and those are
//! held against the rest, the newest first, until there are more than are shown.

mod known;
mod notes;
mod query;
mod wanted;

use crate::error::AppError;
use crate::picture::Picture;
use crate::view::{SearchView, TrayBrief};
use known::Known;
use plumule_journal::Journal;
use plumule_journal::content::{PlanDescribed, ToBuy};
use plumule_journal::id::TrayId;
use plumule_journal::stamp::Stamp;
use plumule_journal::state::TrayState;
use plumule_journal::subject::Plants;
use query::Query;
use std::cmp::Reverse;
use std::collections::BTreeSet;
use uuid::Uuid;
use wanted::Wanted;

/// The most of a group that are listed. Judgement.
const MOST: usize = 50;
/// So many trays that last came to a place are looked at, beside those in use
/// (judgement: fifty years of a small garden).
const CAME: usize = 2_000;
/// So many trays that had a code before are told. Judgement.
const EARLIER: usize = 20;

/// What can go wrong: `error-<code>`.
pub const CODES: &[&str] = &["search_too_long"];

pub(crate) fn view(journal: &Journal, stamp: &Stamp, typed: &str) -> Result<SearchView, AppError> {
    let Some(query) = Query::read(typed)? else {
        return Ok(SearchView::default());
    };
    let garden = Picture::of_the_garden(journal, stamp)?;
    let mut known = Known::new(journal, &query, &garden)?;
    known.read_wanted(stamp)?;
    let mut view = SearchView::default();
    let mut more = Vec::new();
    let packets = known.packets.iter().rev();
    let packets = packets.filter(|(_, packet)| packet.met == query.all());
    if newest(packets, |(id, it)| it.found(*id), &mut view.packets) {
        more.push("packets");
    }
    let plans = known.plans.values().rev();
    let plans = plans.filter(|plan| plan.met == query.all());
    if newest(plans, Wanted::<PlanDescribed>::found, &mut view.plans) {
        more.push("plans");
    }
    let items = known.items.values().rev();
    let items = items.filter(|item| item.met == query.all());
    if newest(items, Wanted::<ToBuy>::found, &mut view.items) {
        more.push("items");
    }
    if let Some(part) = known.fewest() {
        let candidates = candidates(&known, part)?;
        let mut found = Found::default();
        for candidate in candidates {
            if found.full() {
                break;
            }
            found.look(&mut known, candidate)?;
        }
        for tray in &found.trays {
            view.trays.extend(known.tray_brief(*tray)?);
        }
        for sowing in &found.sowings {
            view.sowings.extend(known.sowing(*sowing)?);
        }
        view.trays.sort_by_key(|tray| Reverse(tray.from));
        view.sowings.sort_by_key(|sowing| Reverse(sowing.sown));
        if found.more_trays {
            more.push("trays");
        }
        if found.more_sowings {
            more.push("sowings");
        }
    }
    if notes::find(&mut known, &mut view.notes)? {
        more.push("notes");
    }
    view.more = more.into_iter().map(str::to_owned).collect();
    Ok(view)
}

/// Trays that had the code of one before it was begun, the latest first.
pub(crate) fn earlier(
    journal: &Journal,
    garden: &Picture,
    tray: &TrayState,
) -> Result<Vec<TrayBrief>, AppError> {
    let (id, begun) = (tray.described.tray, tray.opened_by.at.instant());
    let before =
        |other: &TrayState| other.described.tray != id && other.opened_by.at.instant() <= begun;
    let others = journal.trays_of_code(tray.described.code.trim())?;
    let mut others = others.into_iter().filter(before).peekable();
    if others.peek().is_none() {
        return Ok(Vec::new());
    }
    let nothing = Query::default();
    let mut known = Known::new(journal, &nothing, garden)?;
    let mut earlier = Vec::new();
    for other in others.take(EARLIER) {
        earlier.extend(known.tray_brief(other.described.tray)?);
    }
    Ok(earlier)
}

/// Something that may be meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Candidate {
    Plants(Plants),
    Tray(TrayId),
}

impl Candidate {
    /// Ids rise with time.
    fn age(self) -> Reverse<Uuid> {
        Reverse(match self {
            Self::Plants(Plants::Sowing(id)) => id.0,
            Self::Plants(Plants::Batch(id)) => id.0,
            Self::Tray(id) => id.0,
        })
    }
}

/// All that may meet a part, the newest first.
fn candidates(known: &Known<'_>, part: u32) -> Result<Vec<Candidate>, AppError> {
    let meets = |met: u32| met & 1 << part != 0;
    let sowing = |id| Candidate::Plants(Plants::Sowing(id));
    let batch = |id| Candidate::Plants(Plants::Batch(id));
    let journal = known.journal;
    let mut all = BTreeSet::new();
    let packets = known.packets.values().filter(|packet| meets(packet.met));
    all.extend(packets.flat_map(|packet| packet.sowings.iter().copied().map(sowing)));
    all.extend(journal.started_batches()?.into_iter().map(batch));
    let codes = known.codes.iter().filter(|(_, met)| meets(**met));
    all.extend(codes.map(|(tray, _)| Candidate::Tray(*tray)));
    for (place, _) in known.places.iter().filter(|(_, place)| meets(place.met)) {
        let came = journal.trays_that_came_to(*place, CAME)?;
        let living = journal.living_trays(None)?;
        let living = living.iter().map(|tray| tray.described.tray);
        all.extend(came.into_iter().chain(living).map(Candidate::Tray));
    }
    if meets(known.query.days()) {
        let when = |at: chrono::DateTime<chrono::Utc>| {
            let day = at.with_timezone(&known.zone).date_naive();
            // Days are those of the zone it was done in.
            let near = [day.pred_opt(), Some(day), day.succ_opt()];
            near.into_iter()
                .flatten()
                .any(|day| meets(known.query.on(day)))
        };
        all.extend(journal.sowings_when(&when)?.into_iter().map(sowing));
    }
    let mut all: Vec<Candidate> = all.into_iter().collect();
    all.sort_by_key(|candidate| candidate.age());
    Ok(all)
}

/// Trays and sowings that were found, and what was looked at.
#[derive(Default)]
struct Found {
    trays: Vec<TrayId>,
    sowings: Vec<Plants>,
    more_trays: bool,
    more_sowings: bool,
    seen_trays: BTreeSet<TrayId>,
    seen_plants: BTreeSet<Plants>,
}

impl Found {
    fn full(&self) -> bool {
        self.more_trays && self.more_sowings
    }

    /// Looks at a candidate and at all that came of it.
    fn look(&mut self, known: &mut Known<'_>, candidate: Candidate) -> Result<(), AppError> {
        let mut open = match candidate {
            Candidate::Plants(plants) => vec![plants],
            Candidate::Tray(tray) => {
                self.tray(known, tray)?;
                known.occupants(tray)?
            }
        };
        while let Some(plants) = open.pop() {
            if !self.seen_plants.insert(plants) {
                continue;
            }
            let Some(of) = known.plants(plants)? else {
                continue;
            };
            let (tray, met) = (of.tray, of.met);
            open.extend(of.gave.iter().copied());
            self.tray(known, tray)?;
            if matches!(plants, Plants::Sowing(_)) && !self.more_sowings {
                let met = met | known.own(tray)?;
                if met == known.query.all() {
                    add(&mut self.sowings, plants, &mut self.more_sowings);
                }
            }
        }
        Ok(())
    }

    fn tray(&mut self, known: &mut Known<'_>, tray: TrayId) -> Result<(), AppError> {
        if !self.more_trays
            && self.seen_trays.insert(tray)
            && known.met_by_tray(tray)? == known.query.all()
        {
            add(&mut self.trays, tray, &mut self.more_trays);
        }
        Ok(())
    }
}

/// Lists the first; whether there are more.
fn newest<T, F>(mut met: impl Iterator<Item = T>, found: impl Fn(T) -> F, to: &mut Vec<F>) -> bool {
    to.extend(met.by_ref().take(MOST).map(found));
    met.next().is_some()
}

fn add<T>(list: &mut Vec<T>, one: T, more: &mut bool) {
    if list.len() < MOST {
        list.push(one);
    } else {
        *more = true;
    }
}

//! What to buy: what is on the list, and what may be missing of what was sown
//! in the last two years.

use crate::error::AppError;
use crate::growth::{Learnt, outlook_of};
use crate::picture::Picture;
use crate::say::{Arg, Say};
use crate::text::fold;
use crate::view::{CropName, ItemView, Suggested, ToBuyView};
use chrono::{NaiveDate, TimeDelta};
use plumule_agronomy::crops;
use plumule_journal::Journal;
use plumule_journal::state::{ItemState, PacketState};
use plumule_journal::words::Standing;
use std::collections::{BTreeMap, BTreeSet};

/// Bought things are shown so long, in days (judgement: until the parcel is
/// unpacked).
const BOUGHT_DAYS: i64 = 60;

/// What was dropped is not suggested again for so long, in days (judgement: a
/// year).
const DROPPED_DAYS: i64 = 365;

/// So many of what was bought or dropped last are looked at.
const PAST: usize = 200;

/// Sown in these days it is taken to be wanted again (judgement: two seasons).
const SOWN_DAYS: i64 = 730;

/// Seed of which less than this share is likely to come up is doubtful
/// (judgement).
const DOUBTFUL: f64 = 0.4;

/// Crop and variety, as they are compared.
type Kind = (String, String);

fn kind(crop: &str, variety: &str) -> Kind {
    (fold(crop), fold(variety))
}

pub(crate) fn crop_name(key: &str) -> CropName {
    CropName {
        key: key.to_owned(),
        known: crops().get(key).is_some(),
    }
}

pub(super) fn view(
    journal: &Journal,
    picture: &Picture,
    (in_use, retired): (&[PacketState], &[PacketState]),
    today: NaiveDate,
) -> Result<ToBuyView, AppError> {
    let items = journal.to_buy(PAST)?;
    let shown = items.iter().filter(|item| on_the_list(item, today));
    let settled: BTreeSet<Kind> = items
        .iter()
        .filter(|item| {
            let dropped = item.described.standing == Standing::Dropped;
            on_the_list(item, today) || dropped && days(item, today) <= DROPPED_DAYS
        })
        .map(|item| kind(&item.described.crop, &item.described.variety))
        .collect();
    let mut sown = sown_lately(journal, in_use.iter().chain(retired), today)?;
    sown.retain(|kind, _| !settled.contains(kind));
    Ok(ToBuyView {
        items: shown.map(item_view).collect(),
        suggested: sown
            .into_values()
            .filter_map(|wanted| wanted.suggested(picture, today))
            .collect(),
    })
}

/// Whether the list shows it.
pub(crate) fn on_the_list(item: &ItemState, today: NaiveDate) -> bool {
    match item.described.standing {
        Standing::Wanted => true,
        Standing::Bought => days(item, today) <= BOUGHT_DAYS,
        Standing::Dropped => false,
    }
}

/// Since the last word on it.
fn days(item: &ItemState, today: NaiveDate) -> i64 {
    (today - item.last.at.local.date()).num_days()
}

fn item_view(item: &ItemState) -> ItemView {
    let described = &item.described;
    ItemView {
        item: described.item.to_string(),
        crop: crop_name(&described.crop),
        variety: described.variety.clone(),
        note: described.note.clone(),
        bought: described.standing == Standing::Bought,
    }
}

/// What is sown of a crop and variety.
struct Wanted<'a> {
    packets: Vec<&'a PacketState>,
    last_sown: NaiveDate,
    /// Seeds sown in the twelve months before that.
    seeds: u32,
}

fn sown_lately<'a>(
    journal: &Journal,
    packets: impl Iterator<Item = &'a PacketState>,
    today: NaiveDate,
) -> Result<BTreeMap<Kind, Wanted<'a>>, AppError> {
    let mut found: BTreeMap<Kind, Wanted<'a>> = BTreeMap::new();
    let mut sowings: BTreeMap<Kind, Vec<(NaiveDate, u32)>> = BTreeMap::new();
    for packet in packets {
        let kind = kind(&packet.described.crop, &packet.described.variety);
        let wanted = found.entry(kind.clone()).or_insert(Wanted {
            packets: Vec::new(),
            last_sown: NaiveDate::MIN,
            seeds: 0,
        });
        wanted.packets.push(packet);
        for id in packet.sowings.iter().rev() {
            let Some(sowing) = journal.sowing(*id)? else {
                continue;
            };
            let day = sowing.opened_by.at.local.date();
            if today - day > TimeDelta::days(SOWN_DAYS) {
                break;
            }
            let of_kind = sowings.entry(kind.clone()).or_default();
            of_kind.push((day, sowing.seeds()));
        }
    }
    found.retain(|kind, _| sowings.contains_key(kind));
    for (kind, wanted) in &mut found {
        let sown = sowings.get(kind).map(Vec::as_slice).unwrap_or_default();
        wanted.last_sown = sown.iter().map(|(day, _)| *day).max().unwrap_or(today);
        let year = sown
            .iter()
            .filter(|(day, _)| wanted.last_sown - *day < TimeDelta::days(365));
        wanted.seeds = year.fold(0, |sum, (_, seeds)| sum.saturating_add(*seeds));
    }
    Ok(found)
}

impl Wanted<'_> {
    /// Why it may be wanted; none where there is enough good seed.
    fn suggested(&self, picture: &Picture, today: NaiveDate) -> Option<Suggested> {
        let described = &self.packets.first()?.described;
        let there = self
            .packets
            .iter()
            .filter(|packet| !packet.described.retired && packet.seeds_left() != Some(0));
        let there: Vec<&&PacketState> = there.collect();
        let sound = there.iter().filter(|packet| {
            let worth = outlook_of(packet, &Learnt::of(picture, packet), today);
            worth.is_none_or(|worth| worth.outlook.mean() >= DOUBTFUL)
        });
        let left: Option<u32> = sound.clone().map(|packet| packet.seeds_left()).sum();
        let why = if there.is_empty() {
            Say::new("buy-out").with("day", Arg::Day(self.last_sown))
        } else if sound.count() == 0 {
            Say::new("buy-doubtful")
        } else if let Some(left) = left.filter(|left| *left < self.seeds) {
            Say::new("buy-short")
                .with("left", Arg::Number(f64::from(left)))
                .with("sown", Arg::Number(f64::from(self.seeds)))
        } else {
            return None;
        };
        Some(Suggested {
            crop: crop_name(&described.crop),
            variety: described.variety.clone(),
            why,
        })
    }
}

//! What is kept of each sowing for looking back.

use super::{crop_named, days_between, name, packet_name, year_named};
use crate::error::AppError;
use crate::say::{Arg, Say};
use crate::season::Years;
use crate::view::GroupBy;
use crate::words;
use chrono::{Days, NaiveDateTime};
use plumule_agronomy::{crops, germination_indices};
use plumule_journal::Journal;
use plumule_journal::content::{Leaving, Seeds};
use plumule_journal::id::{PacketId, PlaceId, SowingId, TrayId};
use plumule_journal::state::{PacketState, PlaceState, SowingState, TrayState};
use plumule_journal::words::{Compost, LossCause, Storage};
use std::collections::BTreeMap;

/// A sowing that is not ended has told what it will give after so many days
/// (judgement: nine in ten crops of the book are through by then at 18 °C).
const THROUGH_DAYS: u64 = 42;

/// Deeper than so many times the advised depth is deep, under its half shallow
/// (judgement).
const DEEP: f64 = 1.5;

/// All sowings, with what they lay in and came from.
pub(super) struct History {
    sowings: BTreeMap<SowingId, SowingState>,
    packets: BTreeMap<PacketId, PacketState>,
    trays: BTreeMap<TrayId, TrayState>,
    places: BTreeMap<PlaceId, PlaceState>,
    pub(super) years: Years,
}

/// A sowing, as far as looking back needs it.
pub(super) struct Record {
    /// That it was sown in.
    pub(super) year: i32,
    pub(super) crop: String,
    packet: PacketId,
    place: Option<PlaceId>,
    compost: Option<Compost>,
    storage: Option<Storage>,
    depth: Option<&'static str>,
    /// Seeds that came up, of how many; none where that is not known.
    pub(super) told: Option<(u32, u32)>,
    pub(super) half_days: Option<f64>,
    pub(super) spread_days: Option<f64>,
    pub(super) lost: Vec<(LossCause, u32)>,
}

impl History {
    pub(super) fn read(journal: &Journal) -> Result<Self, AppError> {
        let mut sowings = journal.living_sowings()?;
        sowings.extend(journal.past_sowings(usize::MAX)?);
        let mut trays = journal.living_trays(None)?;
        trays.extend(journal.past_trays(usize::MAX)?);
        Ok(Self {
            sowings: by(sowings, |it| it.sown.sowing),
            packets: by(journal.packets()?, |it| it.described.packet),
            trays: by(trays, |it| it.described.tray),
            places: by(journal.places()?, |it| it.described.place),
            years: Years::of(journal)?,
        })
    }

    pub(super) fn records(&self, now: NaiveDateTime) -> Vec<Record> {
        self.sowings()
            .map(|sowing| self.record(sowing, now))
            .collect()
    }

    pub(super) fn sowings(&self) -> impl Iterator<Item = &SowingState> {
        self.sowings.values()
    }

    pub(super) fn sowing(&self, id: SowingId) -> Option<&SowingState> {
        self.sowings.get(&id)
    }

    pub(super) fn crop(&self, sowing: &SowingState) -> String {
        let packet = self.packets.get(&sowing.sown.packet);
        packet.map_or_else(String::new, |it| it.described.crop.clone())
    }

    fn record(&self, sowing: &SowingState, now: NaiveDateTime) -> Record {
        let packet = self.packets.get(&sowing.sown.packet);
        let tray = self.trays.get(&sowing.sown.tray);
        let began = sowing.opened_by.at.local;
        let place = tray.and_then(|tray| {
            let before = |stay: &&plumule_journal::state::Stay| stay.since.at.local <= began;
            let stay = tray.stays.iter().rfind(before).or(tray.stays.first())?;
            Some(stay.place)
        });
        let crop = self.crop(sowing);
        let (half_days, spread_days) = course(sowing);
        Record {
            year: self.years.year_of(began.date()),
            packet: sowing.sown.packet,
            place,
            compost: tray.map(|tray| tray.described.compost),
            storage: packet.map(|packet| packet.described.storage),
            depth: depth(&crop, sowing.sown.depth_mm),
            told: told(sowing, &crop, now),
            half_days,
            spread_days,
            lost: lost(sowing),
            crop,
        }
    }

    /// How a group of that key is called.
    pub(super) fn name(&self, by: GroupBy, key: &str) -> Say {
        let id = || key.parse().ok();
        match by {
            GroupBy::Crop => crop_named(key).name,
            GroupBy::Packet => {
                let packet = id().and_then(|id| self.packets.get(&PacketId(id)));
                let Some(PacketState { described, .. }) = packet else {
                    return name(Arg::Text("?".to_owned()));
                };
                let year = described.packed_year.or(described.harvested_year);
                packet_name(words::crop(&described.crop), &described.variety, year)
            }
            GroupBy::Place => {
                let place = id().and_then(|id| self.places.get(&PlaceId(id)));
                let place = place.map_or("?", |place| place.described.name.as_str());
                name(Arg::Text(place.to_owned()))
            }
            GroupBy::Compost => named("compost", key),
            GroupBy::Storage => named("storage", key),
            GroupBy::Depth => named("depth", key),
            GroupBy::Year => match key.parse() {
                Ok(year) => year_named(self.years, year).name,
                Err(_) => name(Arg::Text(key.to_owned())),
            },
        }
    }
}

impl Record {
    /// What it has in common with others.
    pub(super) fn key(&self, by: GroupBy) -> Option<String> {
        Some(match by {
            GroupBy::Crop => self.crop.clone(),
            GroupBy::Packet => self.packet.to_string(),
            GroupBy::Place => self.place?.to_string(),
            GroupBy::Compost => self.compost?.as_str().to_owned(),
            GroupBy::Storage => self.storage?.as_str().to_owned(),
            GroupBy::Depth => self.depth?.to_owned(),
            GroupBy::Year => self.year.to_string(),
        })
    }
}

fn by<K: Ord, V>(all: Vec<V>, key: impl Fn(&V) -> K) -> BTreeMap<K, V> {
    all.into_iter().map(|it| (key(&it), it)).collect()
}

fn named(set: &str, word: &str) -> Say {
    name(words::word(set, word))
}

/// Shallow, as advised or deep.
fn depth(crop: &str, depth_mm: Option<f64>) -> Option<&'static str> {
    let (low, high) = crops().get(crop)?.depth_mm;
    let depth = depth_mm?;
    Some(if depth > high * DEEP {
        "deep"
    } else if depth < low / 2.0 {
        "shallow"
    } else {
        "advised"
    })
}

/// Seeds that came up, of how many: of sowings that are counted and through.
/// Of clusters nobody knows how many seeds gave those that are up.
fn told(sowing: &SowingState, crop: &str, now: NaiveDateTime) -> Option<(u32, u32)> {
    let seeds = match sowing.sown.seeds {
        Seeds::Exact(seeds) | Seeds::About(seeds) if seeds > 0 => seeds,
        _ => return None,
    };
    let clusters = crops()
        .get(crop)
        .is_some_and(|it| it.seedlings_per_seed > 1.0);
    let through = sowing
        .opened_by
        .at
        .local
        .checked_add_days(Days::new(THROUGH_DAYS))?;
    let ended = sowing.plants.ended.as_ref();
    let nothing = ended.is_some_and(|end| end.nothing_came_up);
    let counted = nothing || !sowing.counts.is_empty();
    let over = ended.is_some() || through <= now;
    let told = !clusters && counted && over;
    told.then_some((sowing.plants.numbers.up.min(seeds), seeds))
}

/// Days until half were up, and the standard deviation of the days: what came
/// between two counts is spread over the days between them. None where half
/// were up at the first count, since nobody saw them come.
fn course(sowing: &SowingState) -> (Option<f64>, Option<f64>) {
    let began = sowing.opened_by.at.local;
    let final_up = sowing.counts.iter().map(|it| it.ever_up).max();
    let mut daily: Vec<u32> = Vec::new();
    let mut before = 0;
    for count in &sowing.counts {
        let day = days_between(began, count.at.at.local).round();
        // A year at most; on the day of sowing nothing is up.
        if !(1.0..=366.0).contains(&day) {
            continue;
        }
        if daily.is_empty() && Some(count.ever_up * 2) > final_up {
            return (None, None);
        }
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "1 to 366"
        )]
        let day = day as usize;
        let from = if daily.is_empty() {
            day - 1
        } else {
            daily.len()
        };
        daily.resize(day.max(daily.len()), 0);
        let new = count.ever_up.saturating_sub(before);
        before = before.max(count.ever_up);
        match daily.get_mut(from..) {
            Some(days) if !days.is_empty() => spread(new, days),
            _ => spread(
                new,
                daily
                    .last_mut()
                    .map(std::slice::from_mut)
                    .unwrap_or_default(),
            ),
        }
    }
    match germination_indices(&daily, before.max(1)) {
        Ok(indices) => (indices.t50_coolbear, indices.variance.map(f64::sqrt)),
        Err(_) => (None, None),
    }
}

/// Adds a number to days as evenly as whole seedlings go.
fn spread(number: u32, days: &mut [u32]) {
    let mut left = number;
    let mut rest = u32::try_from(days.len()).unwrap_or(1);
    for day in days {
        let share = left / rest;
        *day += share;
        left -= share;
        rest -= 1;
    }
}

fn lost(sowing: &SowingState) -> Vec<(LossCause, u32)> {
    let left = sowing.plants.left.iter();
    left.filter_map(|left| match left.how {
        Leaving::Lost(cause) => Some((cause, left.number)),
        _ => None,
    })
    .collect()
}

//! What is known of packets, places, trays and plants while they are looked
//! through: which parts of the query each meets.

use super::Query;
use super::wanted::{self, Wanted};
use crate::error::AppError;
use crate::picture::Picture;
use crate::seed::crop_name;
use crate::view::{FoundPacket, FoundSowing, PlantName, TrayBrief};
use crate::words;
use chrono::NaiveDate;
use chrono_tz::Tz;
use plumule_agronomy::crops;
use plumule_journal::Journal;
use plumule_journal::content::{PlanDescribed, ToBuy};
use plumule_journal::id::{ItemId, PacketId, PlaceId, PlanId, SowingId, TrayId};
use plumule_journal::stamp::Stamp;
use plumule_journal::state::{Parent, PlantsState, TrayState};
use plumule_journal::subject::Plants;
use std::collections::BTreeMap;

/// What a query is held against.
pub(super) struct Known<'a> {
    pub journal: &'a Journal,
    pub query: &'a Query,
    pub zone: Tz,
    /// By id, so the last is the newest.
    pub packets: BTreeMap<PacketId, Packet>,
    pub places: BTreeMap<PlaceId, Place>,
    /// None until they are read.
    pub plans: BTreeMap<PlanId, Wanted<PlanDescribed>>,
    /// None until they are read.
    pub items: BTreeMap<ItemId, Wanted<ToBuy>>,
    pub crops: Crops,
    /// Trays whose code, as it is or once was, meets a part.
    pub codes: BTreeMap<TrayId, u32>,
    plants: BTreeMap<Plants, Option<Of>>,
    trays: BTreeMap<TrayId, Option<Tray>>,
}

pub(super) struct Packet {
    pub met: u32,
    pub sowings: Vec<SowingId>,
    name: PlantName,
    year: Option<i32>,
    source: String,
    retired: bool,
}

pub(super) struct Place {
    pub met: u32,
    pub name: String,
}

/// Plants.
#[derive(Clone)]
pub(super) struct Of {
    pub met: u32,
    pub name: PlantName,
    pub tray: TrayId,
    pub began: NaiveDate,
    pub living: bool,
    /// What went on from them.
    pub gave: Vec<Plants>,
}

/// Crops as they may be called: by the key, or the grower's own word, and the
/// names in all languages.
#[derive(Default)]
pub(super) struct Crops(BTreeMap<String, String>);

impl Crops {
    pub fn words(&mut self, key: &str) -> &str {
        self.0.entry(key.to_owned()).or_insert_with(|| {
            if crops().get(key).is_some() {
                let name = words::key("crop", key);
                format!("{key} {}", words::in_all_languages(&name).join(" "))
            } else {
                key.to_owned()
            }
        })
    }
}

struct Tray {
    state: TrayState,
    /// Met by its code and its places.
    own: u32,
}

impl Packet {
    pub fn found(&self, id: PacketId) -> FoundPacket {
        FoundPacket {
            packet: id.to_string(),
            plants: self.name.clone(),
            year: self.year,
            source: self.source.clone(),
            retired: self.retired,
        }
    }
}

impl<'a> Known<'a> {
    pub fn new(journal: &'a Journal, query: &'a Query, garden: &Picture) -> Result<Self, AppError> {
        let mut crops = Crops::default();
        let mut packets = BTreeMap::new();
        for packet in journal.packets()? {
            let it = packet.described;
            let year = it.packed_year.or(it.harvested_year);
            let words = format!(
                "{} {} {} {} {}",
                crops.words(&it.crop),
                it.variety,
                it.source,
                it.note,
                year.map_or_else(String::new, |year| year.to_string())
            );
            let known = Packet {
                met: query.met(&words),
                sowings: packet.sowings,
                name: name(&it.crop, &it.variety),
                year,
                source: it.source,
                retired: it.retired,
            };
            packets.insert(it.packet, known);
        }
        let places = garden.places.iter().map(|(id, place)| {
            let name = place.described.name.clone();
            let met = query.met(&name);
            (*id, Place { met, name })
        });
        let mut codes = BTreeMap::new();
        let met = |code: &str| Some(query.met(code)).filter(|met| *met != 0);
        for (tray, met) in journal.codes(met)? {
            *codes.entry(tray).or_default() |= met;
        }
        Ok(Self {
            journal,
            query,
            zone: garden.zone,
            packets,
            places: places.collect(),
            plans: BTreeMap::new(),
            items: BTreeMap::new(),
            crops,
            codes,
            plants: BTreeMap::new(),
            trays: BTreeMap::new(),
        })
    }

    /// Reads the plans and the things to buy.
    pub fn read_wanted(&mut self, stamp: &Stamp) -> Result<(), AppError> {
        self.plans = wanted::plans(self, stamp)?;
        self.items = wanted::items(self, stamp)?;
        Ok(())
    }

    /// The part that fewest things are likely to meet; none where one is met by
    /// nothing that grows.
    pub fn fewest(&self) -> Option<u32> {
        let started = self
            .journal
            .started_batches()
            .is_ok_and(|it| !it.is_empty());
        (0..self.query.all().count_ones())
            .map(|part| (self.about(part), part))
            .min()
            .filter(|(number, _)| *number > 0 || started)
            .map(|(_, part)| part)
    }

    /// About so many things meet a part.
    fn about(&self, part: u32) -> usize {
        let meets = |met: u32| met & 1 << part != 0;
        let packets = self.packets.values().filter(|packet| meets(packet.met));
        let sowings: usize = packets.map(|packet| packet.sowings.len()).sum();
        let codes = self.codes.values().filter(|met| meets(**met)).count();
        let places = self
            .places
            .values()
            .filter(|place| meets(place.met))
            .count();
        sowings + codes + places * super::CAME + self.query.days_of(part)
    }

    /// What met by plants' names is possible at all.
    pub fn possible(&self) -> u32 {
        let packets = self.packets.values().map(|packet| packet.met);
        let places = self.places.values().map(|place| place.met);
        let plans = self.plans.values().map(|plan| plan.met);
        let items = self.items.values().map(|item| item.met);
        let all = packets.chain(places).chain(self.codes.values().copied());
        let all = all.chain(plans).chain(items);
        all.fold(0, |all, met| all | met)
    }

    /// What is known of plants; none if they are no more.
    pub fn plants(&mut self, plants: Plants) -> Result<Option<&Of>, AppError> {
        if !self.plants.contains_key(&plants) {
            // What came from itself, as it may after a merge, is not followed.
            self.plants.insert(plants, None);
            let of = self.read(plants)?;
            self.plants.insert(plants, of);
        }
        Ok(self.plants.get(&plants).and_then(Option::as_ref))
    }

    fn read(&mut self, plants: Plants) -> Result<Option<Of>, AppError> {
        let (state, tray, began, of) = match plants {
            Plants::Sowing(id) => {
                let Some(sowing) = self.journal.sowing(id)? else {
                    return Ok(None);
                };
                let packet = self.packets.get(&sowing.packet());
                let of = packet.map(|packet| (packet.met, packet.name.clone()));
                (sowing.plants, sowing.sown.tray, sowing.opened_by, of)
            }
            Plants::Batch(id) => {
                let Some(batch) = self.journal.batch(id)? else {
                    return Ok(None);
                };
                let of = match &batch.parent {
                    Parent::Plants { of, .. } => {
                        self.plants(*of)?.map(|of| (of.met, of.name.clone()))
                    }
                    Parent::Started { crop, variety, .. } => {
                        let words = format!("{} {variety}", self.crops.words(crop));
                        Some((self.query.met(&words), name(crop, variety)))
                    }
                };
                (batch.plants, batch.tray, batch.opened_by, of)
            }
        };
        let (met, name) = of.unwrap_or_else(|| (0, name("?", "")));
        let began = began.at.local.date();
        Ok(Some(Of {
            met: met | self.query.on(began),
            name,
            tray,
            began,
            living: state.ended.is_none(),
            gave: gave(&state),
        }))
    }

    fn tray(&mut self, id: TrayId) -> Result<Option<&Tray>, AppError> {
        if !self.trays.contains_key(&id) {
            let state = self.journal.tray(id)?;
            let tray = state.map(|state| {
                let stays = state.stays.iter();
                let places = stays.filter_map(|stay| self.places.get(&stay.place));
                let places = places.fold(0, |all, place| all | place.met);
                let own = self.query.met(&state.described.code) | places;
                Tray { state, own }
            });
            self.trays.insert(id, tray);
        }
        Ok(self.trays.get(&id).and_then(Option::as_ref))
    }

    /// What a tray's code and places meet.
    pub fn own(&mut self, id: TrayId) -> Result<u32, AppError> {
        Ok(self.tray(id)?.map_or(0, |tray| tray.own))
    }

    pub fn code(&mut self, id: TrayId) -> Result<String, AppError> {
        let tray = self.tray(id)?;
        Ok(tray.map_or_else(String::new, |tray| tray.state.described.code.clone()))
    }

    /// What is and was in a tray.
    pub fn occupants(&mut self, id: TrayId) -> Result<Vec<Plants>, AppError> {
        Ok(self.tray(id)?.map_or_else(Vec::new, |tray| {
            let all = tray.state.occupants.iter();
            all.map(|occupant| occupant.plants).collect()
        }))
    }

    /// What a tray meets with all that is and was in it.
    pub fn met_by_tray(&mut self, id: TrayId) -> Result<u32, AppError> {
        let mut met = self.own(id)?;
        for plants in self.occupants(id)? {
            met |= self.plants(plants)?.map_or(0, |of| of.met);
        }
        Ok(met)
    }

    /// A tray in short; none if it is no more.
    pub fn tray_brief(&mut self, id: TrayId) -> Result<Option<TrayBrief>, AppError> {
        let mut inside = Vec::new();
        for plants in self.occupants(id)? {
            inside.extend(self.plants(plants)?.cloned());
        }
        let Some(tray) = self.trays.get(&id).and_then(Option::as_ref) else {
            return Ok(None);
        };
        let opened = tray.state.opened_by.at.local.date();
        let place = tray.state.stays.last();
        let place = place.and_then(|stay| self.places.get(&stay.place));
        let living: Vec<Of> = inside.iter().filter(|of| of.living).cloned().collect();
        let from = inside.iter().map(|of| of.began).min();
        Ok(Some(TrayBrief {
            tray: id.to_string(),
            code: tray.state.described.code.clone(),
            place: place.map(|place| place.name.clone()),
            plants: names(if living.is_empty() { &inside } else { &living }),
            from: from.unwrap_or(opened),
            to: tray.state.emptied.as_ref().map(|mark| mark.at.local.date()),
        }))
    }

    pub fn sowing(&mut self, plants: Plants) -> Result<Option<FoundSowing>, AppError> {
        let Plants::Sowing(id) = plants else {
            return Ok(None);
        };
        let Some(of) = self.plants(plants)?.cloned() else {
            return Ok(None);
        };
        Ok(Some(FoundSowing {
            sowing: id.to_string(),
            plants: of.name,
            tray: of.tray.to_string(),
            code: self.code(of.tray)?,
            sown: of.began,
            living: of.living,
        }))
    }

    pub fn packet_name(&self, id: PacketId) -> Option<PlantName> {
        self.packets.get(&id).map(|packet| packet.name.clone())
    }
}

/// Names, each once.
fn names(plants: &[Of]) -> Vec<PlantName> {
    let mut names: Vec<PlantName> = Vec::new();
    for of in plants {
        if !names.contains(&of.name) {
            names.push(of.name.clone());
        }
    }
    names
}

fn gave(state: &PlantsState) -> Vec<Plants> {
    let parts = state.went_on.iter().flat_map(|went| &went.parts);
    parts.map(|part| Plants::Batch(part.batch)).collect()
}

pub(super) fn name(crop: &str, variety: &str) -> PlantName {
    PlantName {
        crop: crop_name(crop),
        variety: variety.to_owned(),
    }
}

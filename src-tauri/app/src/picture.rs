//! What is alive, held in memory: all that the round, the forecasts and the
//! notices are reckoned from.

use crate::growth::{self, Learnt, PAST_SOWINGS, Past};
use crate::seed::{Stocktake, stocktake_in_season};
use chrono::{DateTime, Days, NaiveDate, NaiveDateTime, TimeDelta, Utc};
use chrono_tz::Tz;
use plumule_agronomy::{Crop, crops};
use plumule_journal::content::Content;
use plumule_journal::id::{BatchId, PacketId, PlaceId, PlanId, SowingId, TrayId};
use plumule_journal::stamp::Stamp;
use plumule_journal::state::{
    BatchState, GardenState, PacketState, Parent, PlaceState, PlanState, PlantsState, Reading,
    SowingState, TestState, TrayState,
};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::{Error, Journal};
use std::collections::{BTreeMap, BTreeSet};

/// Trays of which nothing was said for so many days are set aside, so that the
/// living stay few.
pub(crate) const SET_ASIDE_DAYS: i64 = 120;

/// Readings further back than this are not needed for what is alive, nor do
/// they show that a thermometer is still in use (judgement: a year and a
/// month, so that last spring's thermometer is asked for this spring).
const READINGS_DAYS: u64 = 400;

/// Among so many of a packet's last sowings the finished ones are looked for.
const SOWINGS_ASKED: usize = PAST_SOWINGS + 2;

/// So many packets of a crop are looked at (judgement: what a grower keeps of
/// one, and the round stays as cheap as what is alive).
const KIN: usize = 6;

/// Among so many last lines about a sowing it is looked for what repeats it.
const AGAIN_LINES: usize = 200;

/// Plans of which nothing was said or sown for so many days are no longer
/// looked at (judgement: longer than the door lets anybody plan ahead).
const PLANS_DAYS: i64 = 800;

/// From when on plans are looked at.
pub(crate) fn plans_from(stamp: &Stamp) -> DateTime<Utc> {
    stamp.now - TimeDelta::days(PLANS_DAYS)
}

/// Days before a tray's first that still tell its temperature.
const CARRY_DAYS: u64 = 7;

/// The living of a garden, or one tray with its past.
#[derive(Clone, Debug, Default)]
pub(crate) struct Picture {
    pub(crate) garden: GardenState,
    pub(crate) zone: Tz,
    pub(crate) places: BTreeMap<PlaceId, PlaceState>,
    pub(crate) packets: BTreeMap<PacketId, PacketState>,
    pub(crate) trays: BTreeMap<TrayId, TrayState>,
    pub(crate) sowings: BTreeMap<SowingId, SowingState>,
    pub(crate) batches: BTreeMap<BatchId, BatchState>,
    /// By place, each by time.
    pub(crate) readings: BTreeMap<PlaceId, Vec<Reading>>,
    /// Other packets of the crops that live: what they taught holds where a
    /// packet's own sowings did not, and they may be sown in its place.
    pub(crate) kin: BTreeMap<PacketId, PacketState>,
    /// The last finished sowings of packets, and what they taught.
    pub(crate) past: BTreeMap<PacketId, Vec<Past>>,
    pub(crate) learnt: BTreeMap<PacketId, Learnt>,
    /// Plans that have not ended.
    pub(crate) plans: BTreeMap<PlanId, PlanState>,
    /// Germination tests that run.
    pub(crate) tests: Vec<TestState>,
    /// The stocktake, in its season.
    pub(crate) stocktake: Option<Stocktake>,
}

impl Picture {
    /// All living trays but those set aside.
    pub(crate) fn of_the_living(journal: &Journal, stamp: &Stamp) -> Result<Self, Error> {
        let since = stamp.now - TimeDelta::days(SET_ASIDE_DAYS);
        let mut picture = Self::of_the_garden(journal, stamp)?;
        for sowing in journal.sowings_touched_since(since)? {
            picture.sowings.insert(sowing.sown.sowing, sowing);
        }
        for batch in journal.batches_touched_since(since)? {
            picture.batches.insert(batch.batch, batch);
        }
        for tray in journal.living_trays(Some(since))? {
            picture.trays.insert(tray.described.tray, tray);
        }
        picture.read_trays_of_plants(journal)?;
        picture.read_occupants(journal)?;
        picture.read_plans(journal, stamp)?;
        picture.read_ancestors(journal)?;
        let today = picture.now(stamp).date();
        picture.read_seed(journal, today)?;
        picture.read_readings(journal, days_before(today, READINGS_DAYS))?;
        picture.learn(journal, stamp)?;
        Ok(picture)
    }

    /// What is said of plants is said of their tray.
    fn read_trays_of_plants(&mut self, journal: &Journal) -> Result<(), Error> {
        let of_sowings = self.sowings.values().map(|sowing| sowing.sown.tray);
        let of_batches = self.batches.values().map(|batch| batch.tray);
        let trays: BTreeSet<TrayId> = of_sowings.chain(of_batches).collect();
        for id in trays {
            if !self.trays.contains_key(&id)
                && let Some(tray) = journal.tray(id)?
                && tray.emptied.is_none()
            {
                self.trays.insert(id, tray);
            }
        }
        let trays = &self.trays;
        self.sowings
            .retain(|_, sowing| trays.contains_key(&sowing.sown.tray));
        self.batches
            .retain(|_, batch| trays.contains_key(&batch.tray));
        Ok(())
    }

    /// All that lives in its trays, whenever something was said of it.
    fn read_occupants(&mut self, journal: &Journal) -> Result<(), Error> {
        let trays = self.trays.values();
        let plants: BTreeSet<Plants> = trays
            .flat_map(|tray| tray.occupants.iter().map(|held| held.plants))
            .collect();
        for plants in plants {
            self.read_plants(journal, plants)?;
        }
        self.sowings.retain(|_, it| it.plants.ended.is_none());
        self.batches.retain(|_, it| it.plants.ended.is_none());
        Ok(())
    }

    /// The plans, all that came of their sowings, and the packets they may be
    /// sown from.
    fn read_plans(&mut self, journal: &Journal, stamp: &Stamp) -> Result<(), Error> {
        for plan in journal.plans_touched_since(plans_from(stamp))? {
            let mut open: Vec<Plants> = plan
                .sowings
                .iter()
                .map(|sown| Plants::Sowing(sown.sowing))
                .collect();
            let mut seen = BTreeSet::new();
            while let Some(plants) = open.pop() {
                if !seen.insert(plants) {
                    continue;
                }
                self.read_plants(journal, plants)?;
                let state = self.plants(plants);
                let steps = state.into_iter().flat_map(|state| &state.went_on);
                let parts = steps.flat_map(|step| &step.parts);
                open.extend(parts.map(|part| Plants::Batch(part.batch)));
            }
            for packet in journal.packets_of_crop(&plan.described.crop, KIN)? {
                self.kin.insert(packet.described.packet, packet);
            }
            if let Some(id) = plan.described.packet
                && let Some(packet) = journal.packet(id)?
            {
                self.kin.insert(id, packet);
            }
            self.plans.insert(plan.described.plan, plan);
        }
        Ok(())
    }

    /// The tests that run, and the stocktake: the packets are gone through in
    /// its season only.
    fn read_seed(&mut self, journal: &Journal, today: NaiveDate) -> Result<(), Error> {
        self.tests = journal.running_tests()?;
        for test in &self.tests {
            if let Some(packet) = journal.packet(test.packet)? {
                self.packets.insert(test.packet, packet);
            }
        }
        if let Some(from) = stocktake_in_season(self, today) {
            self.stocktake = Stocktake::of(&journal.packets_in_use()?, from);
        }
        Ok(())
    }

    /// Some packets with what is learnt of them, and no trays.
    pub(crate) fn of_packets(
        journal: &Journal,
        stamp: &Stamp,
        packets: &[PacketState],
    ) -> Result<Self, Error> {
        let mut picture = Self::of_the_garden(journal, stamp)?;
        let today = picture.now(stamp).date();
        picture.read_readings(journal, days_before(today, READINGS_DAYS))?;
        picture.learn_of(journal, stamp, packets)?;
        Ok(picture)
    }

    /// Takes in packets, and what is learnt of them.
    pub(crate) fn learn_of(
        &mut self,
        journal: &Journal,
        stamp: &Stamp,
        packets: &[PacketState],
    ) -> Result<(), Error> {
        for packet in packets {
            self.packets.insert(packet.described.packet, packet.clone());
        }
        self.learn(journal, stamp)
    }

    /// What the last finished sowings of its packets taught. Those that ended
    /// before the readings begin run at what is usual in their places.
    fn learn(&mut self, journal: &Journal, stamp: &Stamp) -> Result<(), Error> {
        let named = self.packets.values();
        let crops: BTreeSet<String> = named.map(|it| it.described.crop.clone()).collect();
        for crop in crops {
            for packet in journal.packets_of_crop(&crop, KIN)? {
                if !self.packets.contains_key(&packet.described.packet) {
                    self.kin.insert(packet.described.packet, packet);
                }
            }
        }
        for packet in self.packets.values().chain(self.kin.values()) {
            let mut past = Vec::new();
            let lives = |id: &&SowingId| {
                let sowing = self.sowings.get(*id);
                sowing.is_some_and(|sowing| sowing.plants.ended.is_none())
            };
            let others = packet.sowings.iter().rev().filter(|id| !lives(id));
            for id in others.take(SOWINGS_ASKED) {
                let Some(sowing) = journal.sowing(*id)? else {
                    continue;
                };
                if past.len() < PAST_SOWINGS
                    && sowing.plants.ended.is_some()
                    && let Some(tray) = journal.tray(sowing.sown.tray)?
                {
                    past.push(Past { sowing, tray });
                }
            }
            if !past.is_empty() {
                self.past.insert(packet.described.packet, past);
            }
        }
        self.learnt = growth::learn(self, self.now(stamp));
        Ok(())
    }

    /// One tray with all that is and was in it, what that came from and went
    /// on to, and the readings of the whole time.
    pub(crate) fn of_tray(journal: &Journal, stamp: &Stamp, id: TrayId) -> Result<Self, Error> {
        let mut picture = Self::of_the_garden(journal, stamp)?;
        let Some(tray) = journal.tray(id)? else {
            return Ok(picture);
        };
        for occupant in &tray.occupants {
            picture.read_plants(journal, occupant.plants)?;
        }
        let first = tray.opened_by.at.local.date();
        picture.trays.insert(id, tray);
        picture.read_descendants(journal)?;
        picture.read_again(journal)?;
        picture.read_ancestors(journal)?;
        let relatives: BTreeSet<TrayId> = picture
            .sowings
            .values()
            .map(|sowing| sowing.sown.tray)
            .chain(picture.batches.values().map(|batch| batch.tray))
            .collect();
        for relative in relatives {
            if relative != id
                && let Some(tray) = journal.tray(relative)?
            {
                picture.trays.insert(relative, tray);
            }
        }
        let sown = picture.sowings.values();
        let earliest = sown
            .map(|sowing| sowing.opened_by.at.local.date())
            .min()
            .map_or(first, |sown| sown.min(first));
        let recent = days_before(picture.now(stamp).date(), READINGS_DAYS);
        picture.read_readings(journal, days_before(earliest, CARRY_DAYS).min(recent))?;
        picture.learn(journal, stamp)?;
        Ok(picture)
    }

    /// The garden and its places, and nothing that grows.
    pub(crate) fn of_the_garden(journal: &Journal, stamp: &Stamp) -> Result<Self, Error> {
        let garden = journal.garden()?;
        let zone = garden
            .described
            .as_ref()
            .and_then(|described| described.zone.parse().ok())
            .unwrap_or(stamp.zone);
        let places = journal.places()?;
        Ok(Self {
            garden,
            zone,
            places: places
                .into_iter()
                .map(|place| (place.described.place, place))
                .collect(),
            ..Self::default()
        })
    }

    fn read_plants(&mut self, journal: &Journal, plants: Plants) -> Result<(), Error> {
        match plants {
            Plants::Sowing(id) => {
                if !self.sowings.contains_key(&id)
                    && let Some(sowing) = journal.sowing(id)?
                {
                    self.sowings.insert(id, sowing);
                }
            }
            Plants::Batch(id) => {
                if !self.batches.contains_key(&id)
                    && let Some(batch) = journal.batch(id)?
                {
                    self.batches.insert(id, batch);
                }
            }
        }
        Ok(())
    }

    /// What the batches went back to, and the packets of all sowings.
    fn read_ancestors(&mut self, journal: &Journal) -> Result<(), Error> {
        let mut wanted: Vec<Plants> = self.batches.values().filter_map(parent).collect();
        let mut seen = BTreeSet::new();
        while let Some(plants) = wanted.pop() {
            if !seen.insert(plants) {
                continue;
            }
            self.read_plants(journal, plants)?;
            if let Plants::Batch(id) = plants {
                wanted.extend(self.batches.get(&id).and_then(parent));
            }
        }
        let packets: BTreeSet<PacketId> = self.sowings.values().map(SowingState::packet).collect();
        for id in packets {
            if let Some(packet) = journal.packet(id)? {
                self.packets.insert(id, packet);
            }
        }
        Ok(())
    }

    /// The sowings that those in the tray repeat, and those that repeat them.
    fn read_again(&mut self, journal: &Journal) -> Result<(), Error> {
        let sown = self.sowings.values().map(|sowing| &sowing.sown);
        let before: Vec<SowingId> = sown.filter_map(|sown| sown.again_of).collect();
        let ids: Vec<SowingId> = self.sowings.keys().copied().collect();
        let mut wanted = before;
        for id in ids {
            for line in journal.timeline(&[Subject::Sowing(id)], AGAIN_LINES)? {
                match line.holds {
                    Some(Content::Sown(sown)) if sown.again_of == Some(id) => {
                        wanted.push(sown.sowing);
                    }
                    _ => {}
                }
            }
        }
        for id in wanted {
            self.read_plants(journal, Plants::Sowing(id))?;
        }
        Ok(())
    }

    /// The batches that what is in the tray went on to.
    fn read_descendants(&mut self, journal: &Journal) -> Result<(), Error> {
        let plants = |state: &PlantsState| {
            let parts = state.went_on.iter().flat_map(|step| &step.parts);
            parts.map(|part| part.batch).collect::<Vec<_>>()
        };
        let children: Vec<BatchId> = self
            .sowings
            .values()
            .map(|sowing| &sowing.plants)
            .chain(self.batches.values().map(|batch| &batch.plants))
            .flat_map(plants)
            .collect();
        for id in children {
            self.read_plants(journal, Plants::Batch(id))?;
        }
        Ok(())
    }

    fn read_readings(&mut self, journal: &Journal, since: NaiveDate) -> Result<(), Error> {
        for reading in journal.readings(since)? {
            self.readings
                .entry(reading.place)
                .or_default()
                .push(reading);
        }
        Ok(())
    }

    /// The packets of a crop that are in the picture.
    pub(crate) fn packets_of(&self, crop: &str) -> impl Iterator<Item = &PacketState> {
        let others = self.kin.iter();
        let others = others.filter(move |(id, _)| !self.packets.contains_key(*id));
        let all = self
            .packets
            .values()
            .chain(others.map(|(_, packet)| packet));
        all.filter(move |packet| packet.described.crop == crop)
    }

    /// Now, in the garden's local time.
    pub(crate) fn now(&self, stamp: &Stamp) -> NaiveDateTime {
        stamp.now.with_timezone(&self.zone).naive_local()
    }

    /// Places in walking order, whether or not in use.
    pub(crate) fn walk(&self) -> Vec<&PlaceState> {
        let mut places: Vec<&PlaceState> = self.places.values().collect();
        places.sort_by_key(|place| (place.described.position, place.described.place));
        places
    }

    /// Where a tray stands.
    pub(crate) fn place_of(&self, tray: &TrayState) -> Option<&PlaceState> {
        self.places.get(&tray.stays.last()?.place)
    }

    /// What happened to some plants.
    pub(crate) fn plants(&self, plants: Plants) -> Option<&PlantsState> {
        match plants {
            Plants::Sowing(id) => self.sowings.get(&id).map(|sowing| &sowing.plants),
            Plants::Batch(id) => self.batches.get(&id).map(|batch| &batch.plants),
        }
    }

    /// The sowing that plants go back to.
    pub(crate) fn origin(&self, plants: Plants) -> Option<&SowingState> {
        let mut of = plants;
        let mut seen = BTreeSet::new();
        while seen.insert(of) {
            match of {
                Plants::Sowing(id) => return self.sowings.get(&id),
                Plants::Batch(id) => of = parent(self.batches.get(&id)?)?,
            }
        }
        None
    }

    /// Crop (a key of the book or the grower's word) and variety of plants.
    pub(crate) fn crop_of(&self, plants: Plants) -> Option<(&str, &str)> {
        if let Some(sowing) = self.origin(plants) {
            let packet = &self.packets.get(&sowing.packet())?.described;
            return Some((&packet.crop, &packet.variety));
        }
        let mut of = plants;
        let mut seen = BTreeSet::new();
        while let Plants::Batch(id) = of
            && seen.insert(of)
        {
            match &self.batches.get(&id)?.parent {
                Parent::Plants { of: before, .. } => of = *before,
                Parent::Started { crop, variety, .. } => return Some((crop, variety)),
            }
        }
        None
    }

    /// Their crop in the crop book.
    pub(crate) fn book_crop(&self, plants: Plants) -> Option<&'static Crop> {
        crops().get(self.crop_of(plants)?.0)
    }

    /// Last day away, if the grower is away on a day.
    pub(crate) fn away_until(&self, day: NaiveDate) -> Option<NaiveDate> {
        let away = self.garden.away.iter();
        away.filter(|away| away.from <= day && day <= away.to)
            .map(|away| away.to)
            .max()
    }

    /// Whether the garden lies in the southern hemisphere.
    pub(crate) fn southern(&self) -> bool {
        let described = self.garden.described.as_ref();
        described
            .and_then(|described| described.latitude)
            .is_some_and(|latitude| latitude < 0.0)
    }
}

fn parent(batch: &BatchState) -> Option<Plants> {
    match batch.parent {
        Parent::Plants { of, .. } => Some(of),
        Parent::Started { .. } => None,
    }
}

fn days_before(day: NaiveDate, days: u64) -> NaiveDate {
    day.checked_sub_days(Days::new(days)).unwrap_or(day)
}

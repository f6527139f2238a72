//! A small garden for tests, made of states: what the journal would fold.

use crate::jobs::{Job, Plan};
use crate::nagging;
use crate::picture::Picture;
use crate::view::JobKind;
use crate::words::{Units, render};
use chrono::{NaiveDate, NaiveDateTime, NaiveTime};
use plumule_journal::content::{
    FrostReckoned, FrostSpread, GardenDescribed, Leaving, MonthDay, PacketDescribed, Part,
    PlaceDescribed, RangeC, Seeds, Shown, Sown, TrayDescribed, Treatment,
};
use plumule_journal::id::{BatchId, EntryId, PacketId, PlaceId, SowingId, TrayId};
use plumule_journal::stamp::Happened;
use plumule_journal::state::{
    AwayAt, BatchState, CountAt, Cover, FeltAt, LeftAt, Mark, NightAt, Numbers, Occupant,
    PacketState, Parent, PlaceState, PlantsState, Reading, ShelteredAt, SowingState, Stay,
    TrayState, Unheated, WentOnAt,
};
use plumule_journal::subject::Plants;
use plumule_journal::words::{
    Compost, Container, Feel, Light, Medium, Origin, PlaceKind, Shelter, Step, Storage, Watering,
};
use std::collections::BTreeSet;
use uuid::Uuid;

pub(crate) struct World {
    pub(crate) picture: Picture,
    made: u128,
}

pub(crate) fn at(text: &str) -> NaiveDateTime {
    NaiveDateTime::parse_from_str(text, "%Y-%m-%d %H:%M").unwrap()
}

pub(crate) fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

impl World {
    /// Berlin, rounds at 8 and 18, last frost 10 May, first 15 October.
    pub(crate) fn new() -> Self {
        Self::in_zone("Europe/Berlin", 52.5)
    }

    pub(crate) fn in_zone(zone: &str, latitude: f64) -> Self {
        let mut picture = Picture {
            zone: zone.parse().unwrap(),
            ..Picture::default()
        };
        picture.garden.described = Some(GardenDescribed {
            zone: zone.to_owned(),
            latitude: Some(latitude),
            last_frost: Some(MonthDay { month: 5, day: 10 }),
            first_frost: Some(MonthDay { month: 10, day: 15 }),
            morning: NaiveTime::from_hms_opt(8, 0, 0).unwrap(),
            evening: NaiveTime::from_hms_opt(18, 0, 0).unwrap(),
        });
        Self { picture, made: 0 }
    }

    pub(crate) fn garden(&mut self) -> &mut GardenDescribed {
        self.picture.garden.described.as_mut().unwrap()
    }

    /// A record of minima: last frosts about 10 May, give or take 10 days; in 8
    /// of 10 years.
    pub(crate) fn frost_record(&mut self) {
        self.picture.garden.frost = Some(FrostReckoned {
            threshold_c: 0.0,
            first_day: day("2010-01-01"),
            last_day: day("2019-12-31"),
            spring: Some(FrostSpread {
                mean_day: f64::from(-66),
                deviation_days: 10.0,
                years: 8,
                full_years: 10,
            }),
            autumn: None,
        });
    }

    fn id(&mut self) -> Uuid {
        self.made += 1;
        Uuid::from_u128(self.made)
    }

    pub(crate) fn mark(&mut self, when: &str) -> Mark {
        Mark {
            entry: EntryId(self.id()),
            at: Happened::at_local(at(when), self.picture.zone),
        }
    }

    pub(crate) fn place(&mut self, kind: PlaceKind, min_c: f64, max_c: f64) -> PlaceId {
        let place = PlaceId(self.id());
        let opened_by = self.mark("2026-01-01 08:00");
        let position = self.picture.places.len() as u32;
        let described = PlaceDescribed {
            place,
            name: kind.as_str().to_owned(),
            kind,
            usual: RangeC { min_c, max_c },
            unheated: None,
            light: Light::Bright,
            covered: false,
            position,
            retired: false,
        };
        let state = PlaceState {
            described,
            opened_by,
            heat_off: Vec::new(),
            aired: None,
        };
        self.picture.places.insert(place, state);
        place
    }

    pub(crate) fn describe(&mut self, place: PlaceId) -> &mut PlaceDescribed {
        &mut self.picture.places.get_mut(&place).unwrap().described
    }

    pub(crate) fn heat_off(&mut self, place: PlaceId, from: &str, to: Option<&str>, c: (f64, f64)) {
        let entry = self.mark(from).entry;
        let stretch = Unheated {
            from: at(from),
            to: to.map(at),
            meanwhile: Some(RangeC {
                min_c: c.0,
                max_c: c.1,
            }),
            entry,
        };
        let state = self.picture.places.get_mut(&place).unwrap();
        state.heat_off.push(stretch);
    }

    pub(crate) fn away(&mut self, from: &str, to: &str) {
        let entry = self.mark("2026-01-01 08:00").entry;
        self.picture.garden.away.push(AwayAt {
            entry,
            from: day(from),
            to: day(to),
            open: false,
        });
    }

    /// Outdoors, or in a place.
    pub(crate) fn night(&mut self, when: &str, place: Option<PlaceId>, low_c: f64) {
        let mark = self.mark(when);
        self.picture.garden.nights.push(NightAt {
            night: mark.at.local.date(),
            mark,
            place,
            low_c,
        });
    }

    pub(crate) fn shelter(&mut self, tray: TrayId, when: &str, how: Shelter) {
        let at = self.mark(when);
        let sheltered = &mut self.tray_state(tray).sheltered;
        sheltered.push(ShelteredAt { at, how });
    }

    pub(crate) fn read(&mut self, place: PlaceId, when: &str, shown: Shown) {
        let mark = self.mark(when);
        let readings = self.picture.readings.entry(place).or_default();
        readings.push(Reading {
            place,
            mark,
            of: Medium::Air,
            shown,
        });
    }

    pub(crate) fn tray(&mut self, container: Container, place: PlaceId, when: &str) -> TrayId {
        let tray = TrayId(self.id());
        let opened_by = self.mark(when);
        let columns = match container {
            Container::Cells | Container::Pots => 24,
            _ => 1,
        };
        let state = TrayState {
            described: TrayDescribed {
                tray,
                code: format!("K{}", self.picture.trays.len() + 1),
                container,
                rows: 1,
                columns,
                compost: Compost::Seed,
            },
            stays: vec![Stay {
                place,
                since: opened_by.clone(),
            }],
            opened_by,
            covers: Vec::new(),
            felt: Vec::new(),
            fed: Vec::new(),
            hardened: Vec::new(),
            sheltered: Vec::new(),
            occupants: Vec::new(),
            emptied: None,
            problems: BTreeSet::new(),
        };
        self.picture.trays.insert(tray, state);
        tray
    }

    pub(crate) fn tray_state(&mut self, tray: TrayId) -> &mut TrayState {
        self.picture.trays.get_mut(&tray).unwrap()
    }

    pub(crate) fn move_to(&mut self, tray: TrayId, place: PlaceId, when: &str) {
        let since = self.mark(when);
        self.tray_state(tray).stays.push(Stay { place, since });
    }

    pub(crate) fn cover(&mut self, tray: TrayId, on: bool, when: &str) {
        let at = self.mark(when);
        self.tray_state(tray).covers.push(Cover { on, at });
    }

    pub(crate) fn feel(&mut self, tray: TrayId, when: &str, feel: Feel, water: Option<Watering>) {
        let at = self.mark(when);
        self.tray_state(tray).felt.push(FeltAt {
            at,
            feel: Some(feel),
            water,
        });
    }

    pub(crate) fn harden(&mut self, tray: TrayId, when: &str) {
        let mark = self.mark(when);
        self.tray_state(tray).hardened.push(mark);
    }

    fn occupy(&mut self, tray: TrayId, plants: Plants, cells: u16) {
        let occupants = &mut self.tray_state(tray).occupants;
        let taken = occupants
            .iter()
            .map(|held| held.cells.len() as u16)
            .sum::<u16>();
        let cells = (taken..taken + cells).collect();
        occupants.push(Occupant { plants, cells });
    }

    /// Fresh seed of a crop, into as many cells.
    pub(crate) fn sow(
        &mut self,
        crop: &str,
        seeds: u32,
        tray: TrayId,
        cells: u16,
        when: &str,
    ) -> SowingId {
        let (packet, sowing) = (PacketId(self.id()), SowingId(self.id()));
        let opened_by = self.mark(when);
        let described = PacketDescribed {
            packet,
            crop: crop.to_owned(),
            variety: String::new(),
            packed_year: Some(2026),
            harvested_year: None,
            sow_by: None,
            stated_germination: None,
            stated_days: None,
            seeds: None,
            storage: Storage::CoolCupboard,
            treated: false,
            source: String::new(),
            note: String::new(),
            f1: false,
            saved_from: None,
            price: String::new(),
            retired: false,
        };
        self.picture.packets.insert(
            packet,
            PacketState {
                described,
                opened_by: opened_by.clone(),
                seeds_sown: seeds,
                sowings: vec![sowing],
                seeds_counted: None,
                seeds_used: seeds,
                tests: Vec::new(),
                stock: None,
            },
        );
        self.occupy(tray, Plants::Sowing(sowing), cells);
        let held = self
            .tray_state(tray)
            .occupants
            .last()
            .unwrap()
            .cells
            .clone();
        let sown = Sown {
            sowing,
            packet,
            tray,
            cells: held,
            seeds: Seeds::Exact(seeds),
            depth_mm: Some(6.0),
            wanted: None,
            again_of: None,
            treatment: Treatment::default(),
            plan: None,
        };
        self.picture.sowings.insert(
            sowing,
            SowingState {
                sown,
                opened_by,
                counts: Vec::new(),
                dug: Vec::new(),
                seeds_lost: Vec::new(),
                explained: None,
                plants: PlantsState::default(),
            },
        );
        sowing
    }

    pub(crate) fn count(&mut self, sowing: SowingId, when: &str, there: u32) {
        let at = self.mark(when);
        let state = self.picture.sowings.get_mut(&sowing).unwrap();
        let numbers = &mut state.plants.numbers;
        let gone = numbers.up - numbers.there - numbers.missing;
        numbers.up = numbers.up.max(gone + there);
        numbers.missing = numbers.up - gone - there;
        numbers.there = there;
        state.counts.push(CountAt {
            at,
            there,
            ever_up: numbers.up,
            exact: true,
        });
    }

    pub(crate) fn thin(&mut self, sowing: SowingId, when: &str, number: u32) {
        let at = self.mark(when);
        let plants = &mut self.picture.sowings.get_mut(&sowing).unwrap().plants;
        plants.numbers.thinned += number;
        plants.numbers.there -= number;
        plants.left.push(LeftAt {
            at,
            number,
            how: Leaving::Thinned,
        });
    }

    /// All of a sowing goes on.
    pub(crate) fn go_on(
        &mut self,
        sowing: SowingId,
        step: Step,
        tray: TrayId,
        when: &str,
    ) -> BatchId {
        let batch = BatchId(self.id());
        let mark = self.mark(when);
        let plants = &mut self.picture.sowings.get_mut(&sowing).unwrap().plants;
        let number = plants.numbers.there;
        plants.numbers.gone_on += number;
        plants.numbers.there = 0;
        let parent = Parent::Plants {
            of: Plants::Sowing(sowing),
            step,
        };
        self.occupy(tray, Plants::Batch(batch), number as u16);
        let cells = self
            .tray_state(tray)
            .occupants
            .last()
            .unwrap()
            .cells
            .clone();
        let part = Part {
            batch,
            tray,
            cells,
            number,
        };
        let plants = &mut self.picture.sowings.get_mut(&sowing).unwrap().plants;
        plants.went_on.push(WentOnAt {
            at: mark.clone(),
            step,
            parts: vec![part],
        });
        self.batch(batch, parent, tray, number, mark)
    }

    pub(crate) fn start(
        &mut self,
        origin: Origin,
        number: u32,
        tray: TrayId,
        when: &str,
    ) -> BatchId {
        let batch = BatchId(self.id());
        let mark = self.mark(when);
        self.occupy(tray, Plants::Batch(batch), number as u16);
        let parent = Parent::Started {
            origin,
            crop: "moonflower".to_owned(),
            variety: String::new(),
        };
        self.batch(batch, parent, tray, number, mark)
    }

    fn batch(
        &mut self,
        batch: BatchId,
        parent: Parent,
        tray: TrayId,
        number: u32,
        opened_by: Mark,
    ) -> BatchId {
        let cells = self
            .tray_state(tray)
            .occupants
            .last()
            .unwrap()
            .cells
            .clone();
        let numbers = Numbers {
            up: number,
            there: number,
            ..Numbers::default()
        };
        self.picture.batches.insert(
            batch,
            BatchState {
                batch,
                parent,
                tray,
                cells,
                opened_by,
                plants: PlantsState {
                    numbers,
                    ..PlantsState::default()
                },
            },
        );
        batch
    }

    pub(crate) fn all(&self, now: &str) -> Vec<Job> {
        Plan::of(&self.picture, at(now)).all()
    }

    /// Of a kind, whether due or not yet.
    pub(crate) fn job(&self, kind: JobKind, now: &str) -> Option<Job> {
        self.all(now).into_iter().find(|job| job.kind == kind)
    }

    /// Of a kind, if it is shown.
    pub(crate) fn shown(&self, kind: JobKind, now: &str) -> Option<Job> {
        let job = self.job(kind, now)?;
        nagging::shown(&self.picture, &job, at(now)).then_some(job)
    }

    /// Fails unless one of a kind is shown, for that reason.
    #[track_caller]
    pub(crate) fn shows(&self, kind: JobKind, now: &str, why: &str) {
        let job = self.shown(kind, now);
        let job = job.unwrap_or_else(|| panic!("{kind:?} is not shown at {now}"));
        assert_eq!(job.why.key, why);
    }

    /// Fails if one of a kind is shown.
    #[track_caller]
    pub(crate) fn hides(&self, kind: JobKind, now: &str) {
        let job = self.shown(kind, now);
        assert!(job.is_none(), "{job:?} is shown at {now}");
    }

    /// Why the first of a kind is due, in words.
    pub(crate) fn said(&self, kind: JobKind, now: &str) -> String {
        let job = self.job(kind, now).unwrap();
        render(&job.why, Units::default(), at(now).date())
    }
}

//! Laws of the round over any sequence of acts, written through the real door.

use crate::jobs::{Plan, due, jobs};
use crate::judgement::{Case, reasons, verdict_view};
use crate::notices::notice_plan;
use crate::picture::Picture;
use crate::round::round_view;
use crate::say::{Arg, Say};
use crate::temperature::Temperatures;
use crate::view::DeviceForm;
use crate::words::{self, Units};
use crate::{growth, stage};
use chrono::{DateTime, TimeDelta, TimeZone, Utc};
use plumule_journal::content::{
    Away, BatchStarted, Content, Counted, CoverChanged, Felt, GardenDescribed, HeatOff,
    JobDismissed, JobPutOff, Leaving, Left, MonthDay, OfPlants, OfSowing, OfTray, PacketDescribed,
    Part, PlaceDescribed, PlanDescribed, RangeC, ReadingTaken, Rhythm, Seeds, Shown, Sown,
    TrayDescribed, TrayMoved, Treatment, Up, WentOn,
};
use plumule_journal::id::{BatchId, EntryId, PacketId, PlaceId, PlanId, SowingId, TrayId};
use plumule_journal::stamp::Stamp;
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::{
    Compost, Container, Feel, Light, LossCause, Medium, Origin, PlaceKind, Step, Storage, Watering,
};
use plumule_journal::{Answer, Journal, Wish};
use proptest::prelude::*;
use std::collections::BTreeSet;
use uuid::Uuid;

/// What a grower does next; the numbers pick among what there is.
#[derive(Clone, Copy, Debug)]
struct Op {
    kind: u8,
    pick: u8,
    other: u8,
    hours: u8,
}

const KINDS: u8 = 21;

fn op() -> impl Strategy<Value = Op> {
    (0..KINDS, any::<u8>(), any::<u8>(), 0..60_u8).prop_map(|(kind, pick, other, hours)| Op {
        kind,
        pick,
        other,
        hours,
    })
}

struct Grower {
    journal: Journal,
    now: DateTime<Utc>,
    made: u128,
    places: Vec<PlaceId>,
    packets: Vec<PacketId>,
    trays: Vec<TrayId>,
    plants: Vec<Plants>,
    plans: Vec<PlanId>,
    acts: Vec<EntryId>,
}

fn choose<T: Copy>(from: &[T], pick: u8) -> Option<T> {
    from.get(usize::from(pick).checked_rem(from.len())?)
        .copied()
}

impl Grower {
    fn new(home: &std::path::Path) -> Self {
        let now = Utc.with_ymd_and_hms(2026, 3, 1, 8, 0, 0).unwrap();
        let journal = Journal::open(home, &stamp_at(now, 0)).unwrap();
        let mut grower = Self {
            journal,
            now,
            made: 0,
            places: Vec::new(),
            packets: Vec::new(),
            trays: Vec::new(),
            plants: Vec::new(),
            plans: Vec::new(),
            acts: Vec::new(),
        };
        grower.describe(true);
        for (kind, light, min_c, max_c) in [
            (PlaceKind::HeatedPropagator, Light::Dim, 20.0, 24.0),
            (PlaceKind::Windowsill, Light::Bright, 15.0, 21.0),
            (PlaceKind::Shed, Light::Dark, 2.0, 9.0),
            (PlaceKind::Greenhouse, Light::Bright, 6.0, 24.0),
            (PlaceKind::Fridge, Light::Dark, 3.0, 5.0),
        ] {
            let place = PlaceId(grower.id());
            grower.places.push(place);
            grower.write(vec![Content::PlaceDescribed(PlaceDescribed {
                place,
                name: kind.as_str().to_owned(),
                kind,
                usual: RangeC { min_c, max_c },
                unheated: None,
                light,
                covered: false,
                position: 0,
                retired: false,
            })]);
        }
        for crop in [
            "tomato",
            "pepper",
            "lettuce",
            "carrot",
            "onion",
            "moonflower",
        ] {
            let packet = PacketId(grower.id());
            grower.packets.push(packet);
            grower.write(vec![Content::PacketDescribed(PacketDescribed {
                packet,
                crop: crop.to_owned(),
                variety: String::new(),
                packed_year: Some(2024),
                harvested_year: None,
                sow_by: None,
                stated_germination: None,
                stated_days: None,
                seeds: None,
                storage: Storage::WarmRoom,
                treated: false,
                source: String::new(),
                note: String::new(),
                f1: false,
                saved_from: None,
                price: String::new(),
                retired: false,
            })]);
        }
        assert_eq!(grower.acts.len(), 12, "the garden is refused");
        grower
    }

    fn id(&mut self) -> Uuid {
        self.made += 1;
        Uuid::from_u128(0xA000_0000_0000_7000_8000_0000_0000_0000 + self.made)
    }

    fn stamp(&self) -> Stamp {
        stamp_at(self.now, self.made)
    }

    fn describe(&mut self, frost: bool) {
        let day = |month| frost.then_some(MonthDay { month, day: 10 });
        let time = chrono::NaiveTime::from_hms_opt(8, 0, 0).unwrap();
        self.write(vec![Content::GardenDescribed(GardenDescribed {
            zone: "Europe/Berlin".to_owned(),
            latitude: Some(52.0),
            last_frost: day(5),
            first_frost: day(10),
            morning: time,
            evening: time + TimeDelta::hours(10),
        })]);
    }

    /// True if it was written; the door may refuse.
    fn write(&mut self, contents: Vec<Content>) -> bool {
        self.made += 1;
        let wish = Wish {
            contents,
            happened: None,
            hand: String::new(),
            confirmed: true,
        };
        match self.journal.write(&self.stamp(), wish) {
            Ok(Answer::Written { act, .. }) => {
                self.acts.push(act);
                true
            }
            _ => false,
        }
    }

    fn new_tray(&mut self, pick: u8, other: u8) -> Option<(TrayId, Vec<Content>)> {
        let tray = TrayId(self.id());
        let place = choose(&self.places, other)?;
        let code = format!("T{}", self.made);
        let described = Content::TrayDescribed(TrayDescribed {
            tray,
            code,
            container: choose(Container::ALL, pick)?,
            rows: 1,
            columns: 12,
            compost: Compost::Seed,
        });
        let moved = Content::TrayMoved(TrayMoved { tray, place });
        Some((tray, vec![described, moved]))
    }

    fn act(&mut self, op: Op) -> Option<()> {
        let Op { pick, other, .. } = op;
        self.now += TimeDelta::hours(i64::from(op.hours));
        let tray = choose(&self.trays, pick);
        let plants = choose(&self.plants, pick);
        let place = choose(&self.places, pick)?;
        let local = self.now.naive_utc();
        let content = match op.kind {
            0 | 1 => {
                let sowing = SowingId(self.id());
                let (tray, mut contents) = self.new_tray(pick, other)?;
                let seeds = match other % 4 {
                    0 => Seeds::Pinch,
                    number => Seeds::Exact(u32::from(number) * 6),
                };
                contents.push(Content::Sown(Sown {
                    sowing,
                    packet: choose(&self.packets, other)?,
                    tray,
                    cells: (0..6).collect(),
                    seeds,
                    depth_mm: (pick > 99).then_some(f64::from(pick % 3)),
                    wanted: None,
                    again_of: None,
                    treatment: Treatment::default(),
                    plan: choose(&self.plans, pick),
                }));
                if self.write(contents) {
                    self.trays.push(tray);
                    self.plants.push(Plants::Sowing(sowing));
                }
                return Some(());
            }
            2 => {
                let sowing = SowingId(self.id());
                let content = Content::Sown(Sown {
                    sowing,
                    packet: choose(&self.packets, other)?,
                    tray: tray?,
                    cells: (6..9).collect(),
                    seeds: Seeds::About(9),
                    depth_mm: None,
                    wanted: None,
                    again_of: None,
                    treatment: Treatment::default(),
                    plan: choose(&self.plans, pick),
                });
                if self.write(vec![content]) {
                    self.plants.push(Plants::Sowing(sowing));
                }
                return Some(());
            }
            3 => {
                let batch = BatchId(self.id());
                let (tray, mut contents) = self.new_tray(pick, other)?;
                contents.push(Content::BatchStarted(BatchStarted {
                    batch,
                    origin: choose(Origin::ALL, pick)?,
                    crop: "moonflower".to_owned(),
                    variety: String::new(),
                    tray,
                    cells: (0..4).collect(),
                    number: 4,
                }));
                if self.write(contents) {
                    self.trays.push(tray);
                    self.plants.push(Plants::Batch(batch));
                }
                return Some(());
            }
            4 => {
                let batch = BatchId(self.id());
                let (tray, mut contents) = self.new_tray(other, other)?;
                contents.push(Content::WentOn(WentOn {
                    of: plants?,
                    step: choose(Step::ALL, other)?,
                    parts: vec![Part {
                        batch,
                        tray,
                        cells: (0..3).collect(),
                        number: u32::from(other % 4),
                    }],
                }));
                if self.write(contents) {
                    self.trays.push(tray);
                    self.plants.push(Plants::Batch(batch));
                }
                return Some(());
            }
            5 => Content::Felt(Felt {
                tray: tray?,
                feel: choose(Feel::ALL, other),
                water: choose(Watering::ALL, other).filter(|_| other > 99),
            }),
            6 | 7 => Content::Counted(Counted {
                of: plants?,
                up: match other % 8 {
                    0 => Up::Few,
                    1 => Up::Half,
                    2 => Up::NearlyAll,
                    number => Up::Number(u32::from(number) - 3),
                },
            }),
            8 => Content::TrayMoved(TrayMoved {
                tray: tray?,
                place: choose(&self.places, other)?,
            }),
            9 => Content::CoverChanged(CoverChanged {
                tray: tray?,
                on: other > 99,
            }),
            10 => Content::ReadingTaken(ReadingTaken {
                place,
                of: choose(Medium::ALL, other)?,
                shown: match other % 2 {
                    0 => Shown::LowHigh {
                        min_c: f64::from(other % 16),
                        max_c: f64::from(other % 16 + 9),
                    },
                    _ => Shown::Now {
                        temperature_c: f64::from(other % 28),
                    },
                },
            }),
            11 => Content::HeatOff(HeatOff {
                place,
                from: local - TimeDelta::hours(i64::from(other % 9)),
                to: (other > 99).then_some(local),
                meanwhile: None,
            }),
            12 => Content::Left(Left {
                of: plants?,
                number: u32::from(other % 3) + 1,
                how: match other % 4 {
                    0 => Leaving::Thinned,
                    1 => Leaving::PlantedOut,
                    2 => Leaving::Sold,
                    _ => Leaving::Lost(LossCause::Eaten),
                },
                reservation: None,
            }),
            13 => Content::HardenedOff(OfTray { tray: tray? }),
            14 => match plants? {
                Plants::Sowing(sowing) if other > 99 => Content::NothingCameUp(OfSowing { sowing }),
                of if other > 50 => Content::Ready(OfPlants { of }),
                of => Content::Finished(OfPlants { of }),
            },
            15 => Content::TrayEmptied(OfTray { tray: tray? }),
            16 | 17 => {
                let picture = Picture::of_the_living(&self.journal, &self.stamp()).unwrap();
                let shown = jobs(&picture, picture.now(&self.stamp()));
                let keys: Vec<_> = shown.into_iter().map(|job| job.key).collect();
                let job = keys
                    .get(usize::from(pick).checked_rem(keys.len())?)?
                    .clone();
                let until = local + TimeDelta::hours(i64::from(other));
                if op.kind == 16 {
                    Content::JobPutOff(JobPutOff { job, until })
                } else {
                    Content::JobDismissed(JobDismissed { job })
                }
            }
            20 => {
                let plan = choose(&self.plans, pick).filter(|_| other > 99);
                let plan = plan.unwrap_or_else(|| PlanId(self.id()));
                let day = local.date() + TimeDelta::days(i64::from(other));
                let crops = ["tomato", "lettuce", "carrot", "moonflower"];
                let planned = Content::PlanDescribed(PlanDescribed {
                    plan,
                    crop: choose(&crops, pick)?.to_owned(),
                    variety: String::new(),
                    packet: None,
                    wanted: u32::from(pick % 9) + 1,
                    rhythm: match other % 4 {
                        0 => Rhythm::By { day },
                        1 => Rhythm::Sale {
                            day,
                            over_percent: 15,
                        },
                        2 => Rhythm::Every {
                            weeks: 2,
                            from: local.date(),
                            to: day,
                        },
                        _ => Rhythm::TrueLeaves {
                            from: local.date(),
                            to: day,
                        },
                    },
                    raise_weeks: (pick > 199).then_some(3),
                    ended: other % 11 == 0,
                });
                if self.write(vec![planned]) {
                    self.plans.push(plan);
                }
                return Some(());
            }
            18 if other > 128 => {
                self.describe(other > 190);
                return Some(());
            }
            18 => Content::Away(Away {
                from: local.date(),
                to: local.date() + TimeDelta::days(2),
                open: false,
            }),
            _ => {
                self.made += 1;
                let own = self.acts.get(12..)?.to_vec();
                let act = choose(&own, pick)?;
                let _ = self.journal.undo(&self.stamp(), act, "", true);
                return Some(());
            }
        };
        self.write(vec![content]);
        Some(())
    }

    /// In the journal, read anew: what a job is about lives.
    fn lives(&self, subject: Subject) -> bool {
        match subject {
            Subject::Garden => !self.journal.packets_in_use().unwrap().is_empty(),
            Subject::Packet(_) | Subject::Item(_) | Subject::Reservation(_) => false,
            Subject::Plan(id) => {
                let plan = self.journal.plan(id).unwrap();
                plan.is_some_and(|plan| !plan.described.ended)
            }
            Subject::Test(id) => {
                let test = self.journal.test(id).unwrap();
                test.is_some_and(|test| test.closed.is_none())
            }
            Subject::Place(id) => self.journal.place(id).unwrap().is_some(),
            Subject::Tray(id) => {
                let tray = self.journal.tray(id).unwrap();
                tray.is_some_and(|tray| {
                    let mut held = tray.occupants.iter().map(|held| held.plants);
                    tray.emptied.is_none() && held.any(|plants| self.lives(plants.into()))
                })
            }
            Subject::Sowing(id) => {
                let sowing = self.journal.sowing(id).unwrap();
                sowing.is_some_and(|sowing| sowing.plants.ended.is_none())
            }
            Subject::Batch(id) => {
                let batch = self.journal.batch(id).unwrap();
                batch.is_some_and(|batch| batch.plants.ended.is_none())
            }
        }
    }

    fn check(&self) {
        let stamp = self.stamp();
        let picture = Picture::of_the_living(&self.journal, &stamp).unwrap();
        let now = picture.now(&stamp);
        let all = Plan::of(&picture, now).all();
        let mut keys = BTreeSet::new();
        for job in &all {
            assert!(self.lives(job.key.subject), "not alive: {job:?}");
            assert!(job.tray.is_none_or(|tray| self.lives(Subject::Tray(tray))));
            assert!(keys.insert(job.key.clone()), "twice: {job:?}");
            assert!(self.journal.entry(job.key.opened_by).unwrap().is_some());
            said(&job.why);
        }
        let shown = jobs(&picture, now);
        let due = due(&picture, now);
        assert!(shown.iter().all(|job| due.contains(job) && job.due <= now));

        let view = round_view(&picture, now);
        let in_view: usize = view
            .places
            .iter()
            .map(|place| {
                let cards = place.cards.iter().map(|card| card.jobs.len());
                place.jobs.len() + cards.sum::<usize>()
            })
            .sum();
        let nowhere: usize = view.nowhere.iter().map(|card| card.jobs.len()).sum();
        let in_view = in_view + view.seed.len();
        assert_eq!(in_view + nowhere, shown.len());
        assert!(
            view.next
                .as_ref()
                .is_none_or(|next| next.at > now && in_view == 0)
        );
        if let Some(next) = &view.next {
            said(&next.say);
        }
        let plan = notice_plan(
            &picture,
            &DeviceForm::default(),
            (self.now, picture.zone),
            14,
        );
        assert!(plan.plan_again > self.now);
        assert!(plan.wanted.iter().all(|notice| notice.at >= self.now));
        let keys: BTreeSet<&str> = plan
            .wanted
            .iter()
            .map(|notice| notice.key.as_str())
            .collect();
        assert_eq!(keys.len(), plan.wanted.len());
        assert!(plan.wanted.iter().all(|notice| !notice.body.contains("{$")));
    }

    /// Every tray's page, past ones too.
    fn check_trays(&self) {
        let stamp = self.stamp();
        for tray in &self.trays {
            let picture = Picture::of_tray(&self.journal, &stamp, *tray).unwrap();
            let now = picture.now(&stamp);
            let occupants = picture.trays.get(tray).map(|tray| &tray.occupants);
            for held in occupants.into_iter().flatten() {
                let line = stage::plants_line(&picture, held.plants, now).unwrap();
                assert_eq!(line.cells.len(), held.cells.len());
                if let Plants::Sowing(id) = held.plants
                    && let Some(growth) = growth::growth(&picture, &picture.sowings[&id], now)
                {
                    let case = Case {
                        picture: &picture,
                        temperatures: &Temperatures::of(&picture),
                        sowing: &picture.sowings[&id],
                        growth: &growth,
                        now,
                    };
                    said(
                        &growth
                            .forecast_view(case.picture, case.sowing, now.date())
                            .say,
                    );
                    check_judgement(&case);
                }
            }
        }
    }
}

/// Odds are odds, and everything has words.
fn check_judgement(case: &Case<'_>) {
    if let Some(verdict) = verdict_view(case) {
        said(&verdict.say);
        for p in [verdict.p_any_more, verdict.p_reach].into_iter().flatten() {
            assert!((0.0..=1.0).contains(&p), "{p}");
        }
        verdict.choices.iter().for_each(|choice| said(&choice.say));
    }
    let reasons = reasons(case);
    assert!(reasons.len() <= 2);
    for reason in &reasons {
        assert!(reason.seedlings >= 1.0);
        let says = [&reason.say, &reason.remedy].into_iter();
        says.chain(&reason.facts).for_each(said);
    }
}

/// A message exists and finds all it needs.
fn said(say: &Say) {
    assert!(words::known(&say.key), "no message {}", say.key);
    let today = chrono::NaiveDate::default();
    let text = words::render(say, Units::default(), today);
    assert!(!text.contains("{$") && !text.contains("NaN"), "{text}");
    for arg in say.args.values() {
        if let Arg::Word(key) = arg {
            assert!(words::known(key), "no message {key}");
        }
    }
}

fn stamp_at(now: DateTime<Utc>, made: u128) -> Stamp {
    Stamp {
        now,
        zone: chrono_tz::Europe::Berlin,
        entropy: (made + 1)
            .wrapping_mul(0x9E37_79B9_7F4A_7C15_F39C_C060_5CED_C835)
            .to_be_bytes(),
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(16))]

    #[test]
    fn the_round_holds_over_any_acts(ops in proptest::collection::vec(op(), 5..60)) {
        let home = tempfile::tempdir().unwrap();
        let mut grower = Grower::new(home.path());
        for op in ops {
            grower.act(op);
            grower.check();
        }
        grower.check_trays();
    }
}

#[test]
fn a_tray_of_which_nothing_was_said_for_120_days_is_set_aside() {
    let home = tempfile::tempdir().unwrap();
    let mut grower = Grower::new(home.path());
    let sow = Op {
        kind: 0,
        pick: 0,
        other: 1,
        hours: 0,
    };
    grower.act(sow);
    let trays_after = |days| {
        let stamp = stamp_at(grower.now + TimeDelta::days(days), 0);
        let picture = Picture::of_the_living(&grower.journal, &stamp).unwrap();
        assert_eq!(picture.trays.is_empty(), picture.sowings.is_empty());
        picture.trays.len()
    };
    assert_eq!(trays_after(119), 1);
    assert_eq!(trays_after(121), 0);
}

#[test]
fn the_page_of_a_tray_knows_what_its_plants_went_on_to() {
    let home = tempfile::tempdir().unwrap();
    let mut grower = Grower::new(home.path());
    let does = |kind, pick, other| Op {
        kind,
        pick,
        other,
        hours: 1,
    };
    // Sown; five up; three pricked out into a tray of their own.
    for op in [does(0, 0, 1), does(6, 0, 7), does(4, 0, 3)] {
        grower.act(op);
    }
    let &[old, new] = grower.trays.as_slice() else {
        panic!("{:?}", grower.trays);
    };
    for tray in [old, new] {
        let picture = Picture::of_tray(&grower.journal, &grower.stamp(), tray).unwrap();
        let known: Vec<TrayId> = picture.trays.keys().copied().collect();
        assert_eq!(known, [old, new]);
        for plants in &grower.plants {
            assert_eq!(picture.crop_of(*plants).unwrap().0, "pepper");
        }
    }
}

//! What the tests of this crate share: a made-up small world of one place,
//! one packet and trays, in a home of its own.

use crate::content::*;
use crate::id::*;
use crate::stamp::{Happened, Stamp};
use crate::subject::Plants;
use crate::words::*;
use crate::{Answer, Error, Journal, Question, Wish};
use chrono::{Duration, NaiveTime, TimeZone, Utc};
use std::collections::BTreeSet;
use tempfile::TempDir;
use uuid::Uuid;

/// Day `n` of a made-up season, at 09:00 in Berlin's summer, with entropy of
/// its own.
pub(crate) fn stamp(n: u8) -> Stamp {
    Stamp {
        now: Utc.with_ymd_and_hms(2026, 4, 1, 7, 0, 0).unwrap() + Duration::days(i64::from(n)),
        zone: chrono_tz::Europe::Berlin,
        entropy: [n; 16],
    }
}

/// A moment of that season.
pub(crate) fn day(n: u8) -> Happened {
    stamp(n).happened()
}

pub(crate) fn id(n: u128) -> Uuid {
    Uuid::from_u128(n)
}

pub(crate) fn cells(from: u16, to: u16) -> BTreeSet<u16> {
    (from..to).collect()
}

pub(crate) const PLACE: u128 = 1;
pub(crate) const PACKET: u128 = 2;

pub(crate) fn garden() -> GardenDescribed {
    GardenDescribed {
        zone: "Europe/Berlin".into(),
        latitude: Some(52.0),
        last_frost: Some(MonthDay { month: 5, day: 12 }),
        first_frost: None,
        morning: NaiveTime::from_hms_opt(8, 0, 0).unwrap(),
        evening: NaiveTime::from_hms_opt(18, 0, 0).unwrap(),
    }
}

pub(crate) fn place(n: u128) -> PlaceDescribed {
    PlaceDescribed {
        place: PlaceId(id(n)),
        name: "South sill".into(),
        kind: PlaceKind::Windowsill,
        usual: RangeC {
            min_c: 14.0,
            max_c: 22.0,
        },
        unheated: None,
        light: Light::Bright,
        covered: false,
        position: 0,
        retired: false,
    }
}

pub(crate) fn packet(n: u128) -> PacketDescribed {
    PacketDescribed {
        packet: PacketId(id(n)),
        crop: "tomato".into(),
        variety: "Evening Red".into(),
        packed_year: Some(2025),
        harvested_year: None,
        sow_by: None,
        stated_germination: Some(0.9),
        stated_days: None,
        seeds: Some(200),
        storage: Storage::CoolCupboard,
        treated: false,
        source: String::new(),
        note: String::new(),
        f1: false,
        saved_from: None,
        price: String::new(),
        retired: false,
    }
}

pub(crate) fn tray(n: u128, code: &str) -> TrayDescribed {
    TrayDescribed {
        tray: TrayId(id(n)),
        code: code.into(),
        container: Container::Cells,
        rows: 4,
        columns: 6,
        compost: Compost::Seed,
    }
}

pub(crate) fn sown(n: u128, tray: u128, cells: BTreeSet<u16>, seeds: u32) -> Sown {
    Sown {
        sowing: SowingId(id(n)),
        packet: PacketId(id(PACKET)),
        tray: TrayId(id(tray)),
        cells,
        seeds: Seeds::Exact(seeds),
        depth_mm: Some(6.0),
        wanted: Some(6),
        again_of: None,
        treatment: Treatment::default(),
        plan: None,
    }
}

pub(crate) fn started(n: u128, tray: u128, cells: BTreeSet<u16>, number: u32) -> BatchStarted {
    BatchStarted {
        batch: BatchId(id(n)),
        origin: Origin::Cuttings,
        crop: "lavender".into(),
        variety: String::new(),
        tray: TrayId(id(tray)),
        cells,
        number,
    }
}

pub(crate) fn sowing(n: u128) -> Plants {
    Plants::Sowing(SowingId(id(n)))
}

pub(crate) fn batch(n: u128) -> Plants {
    Plants::Batch(BatchId(id(n)))
}

pub(crate) fn counted(of: Plants, number: u32) -> Content {
    Content::Counted(Counted {
        of,
        up: Up::Number(number),
    })
}

pub(crate) fn left(of: Plants, number: u32, how: Leaving) -> Content {
    Content::Left(Left {
        of,
        number,
        how,
        reservation: None,
    })
}

pub(crate) fn went_on(of: Plants, parts: &[(u128, u128, BTreeSet<u16>, u32)]) -> Content {
    Content::WentOn(WentOn {
        of,
        step: Step::PrickedOut,
        parts: parts
            .iter()
            .map(|(batch, tray, cells, number)| Part {
                batch: BatchId(id(*batch)),
                tray: TrayId(id(*tray)),
                cells: cells.clone(),
                number: *number,
            })
            .collect(),
    })
}

pub(crate) fn felt(tray: u128, feel: Feel) -> Content {
    Content::Felt(Felt {
        tray: TrayId(id(tray)),
        feel: Some(feel),
        water: None,
    })
}

pub(crate) fn reading(min_c: f64, max_c: f64) -> Content {
    Content::ReadingTaken(ReadingTaken {
        place: PlaceId(id(PLACE)),
        of: Medium::Air,
        shown: Shown::LowHigh { min_c, max_c },
    })
}

/// Ten plants for day 60 of the season.
pub(crate) fn planned(n: u128) -> PlanDescribed {
    PlanDescribed {
        plan: PlanId(id(n)),
        crop: "tomato".into(),
        variety: String::new(),
        packet: Some(PacketId(id(PACKET))),
        wanted: 10,
        rhythm: Rhythm::By {
            day: day(60).local.date(),
        },
        raise_weeks: None,
        ended: false,
    }
}

pub(crate) fn reserved(n: u128, of: Plants, number: u32) -> Reserved {
    Reserved {
        reservation: ReservationId(id(n)),
        of: Wares::Plants { of },
        number,
        note: "M.".into(),
        released: false,
    }
}

pub(crate) fn test_started(n: u128, seeds: u32) -> Content {
    Content::TestStarted(TestStarted {
        test: TestId(id(n)),
        packet: PacketId(id(PACKET)),
        seeds,
    })
}

pub(crate) fn test_counted(n: u128, sprouted: u32) -> Content {
    Content::TestCounted(TestCounted {
        test: TestId(id(n)),
        sprouted,
    })
}

pub(crate) fn test_closed(n: u128, sprouted: u32) -> Content {
    Content::TestClosed(TestClosed {
        test: TestId(id(n)),
        packet: PacketId(id(PACKET)),
        sprouted,
    })
}

/// A journal in a folder of its own.
pub(crate) struct World {
    pub home: TempDir,
    pub journal: Journal,
    /// Entries there were when the last stamp was made.
    pub count_before: u64,
    stamps: u8,
    entropy: u8,
}

impl World {
    /// With nothing in it.
    pub fn empty(entropy: u8) -> Self {
        let home = tempfile::tempdir().unwrap();
        let mut first = stamp(0);
        first.entropy = [entropy; 16];
        let journal = Journal::open(home.path(), &first).unwrap();
        Self {
            home,
            journal,
            count_before: 0,
            stamps: 0,
            entropy,
        }
    }

    /// With the garden, place 1, packet 2 and the trays 10 (A1), 11 and 12;
    /// 20 seeds are sown in cells 0 to 11 of tray 10 as sowing 20, and 6
    /// cuttings stand in cells 12 to 17 as batch 30. It is day 0.
    pub fn new() -> Self {
        let mut world = Self::empty(0xE0);
        world.at(
            0,
            vec![
                Content::GardenDescribed(garden()),
                Content::PlaceDescribed(place(PLACE)),
                Content::PacketDescribed(packet(PACKET)),
                Content::TrayDescribed(tray(10, "A1")),
                Content::TrayDescribed(tray(11, "A2")),
                Content::TrayDescribed(tray(12, "A3")),
                Content::TrayMoved(TrayMoved {
                    tray: TrayId(id(10)),
                    place: PlaceId(id(PLACE)),
                }),
                Content::Sown(sown(20, 10, cells(0, 12), 20)),
                Content::BatchStarted(started(30, 10, cells(12, 18), 6)),
            ],
        );
        world
    }

    /// Closes the journal and gives its folder.
    pub fn close(self) -> TempDir {
        self.home
    }

    /// Closed, changed and opened again.
    pub fn reopened(self, change: impl FnOnce(&std::path::Path)) -> Self {
        let Self {
            home,
            journal,
            entropy,
            stamps,
            ..
        } = self;
        drop(journal);
        change(home.path());
        let mut now = stamp(0);
        now.entropy = [entropy; 16];
        let journal = Journal::open(home.path(), &now).unwrap();
        Self {
            home,
            journal,
            count_before: 0,
            stamps,
            entropy,
        }
    }

    /// A fresh stamp of a day.
    pub fn stamp(&mut self, n: u8) -> Stamp {
        self.stamps = self.stamps.wrapping_add(1);
        self.count_before = self.journal.count().unwrap();
        let mut stamp = stamp(n);
        stamp.entropy = [self.entropy; 16];
        stamp.entropy[0] = self.stamps;
        stamp
    }

    pub fn try_at(
        &mut self,
        n: u8,
        contents: Vec<Content>,
        confirmed: bool,
    ) -> Result<Answer, Error> {
        let stamp = self.stamp(n);
        self.journal.write(
            &stamp,
            Wish {
                contents,
                happened: None,
                hand: "R.".into(),
                confirmed,
            },
        )
    }

    /// Writes on a day; whatever is asked is confirmed.
    pub fn at(&mut self, n: u8, contents: Vec<Content>) -> EntryId {
        match self.try_at(n, contents, true).unwrap() {
            Answer::Written { act, .. } => act,
            Answer::AsksFirst(_) => unreachable!("it was confirmed"),
        }
    }

    pub fn undo(&mut self, n: u8, act: EntryId) -> EntryId {
        let stamp = self.stamp(n);
        match self.journal.undo(&stamp, act, "", true).unwrap() {
            Answer::Written { act, .. } => act,
            Answer::AsksFirst(_) => unreachable!("it was confirmed"),
        }
    }

    /// It is refused with this code, and nothing is written.
    #[track_caller]
    pub fn refuses(&mut self, code: &str, n: u8, contents: Vec<Content>) {
        let before = self.dump();
        let error = self.try_at(n, contents, true).unwrap_err();
        assert_eq!(error.code(), code);
        assert!(matches!(error, Error::Refused(_)));
        assert_eq!(self.dump(), before);
    }

    /// It asks exactly this first and nothing is written; once confirmed it
    /// is written.
    #[track_caller]
    pub fn asks(&mut self, code: &str, n: u8, content: Content) -> Question {
        let before = self.dump();
        let answer = self.try_at(n, vec![content.clone()], false).unwrap();
        let Answer::AsksFirst(mut questions) = answer else {
            panic!("{code} was not asked");
        };
        assert_eq!(questions.len(), 1, "{questions:?}");
        assert_eq!(questions[0].code, code);
        assert_eq!(self.dump(), before);
        self.at(n, vec![content]);
        assert_ne!(self.dump(), before);
        questions.remove(0)
    }

    /// All rows of all tables but the entries' lines, and the lines.
    pub fn dump(&self) -> Vec<String> {
        dump(&self.journal, false)
    }

    /// The rows of states, readings and jobs, as they mean the same on every
    /// copy.
    pub fn states(&self) -> Vec<String> {
        dump(&self.journal, true)
    }
}

pub(crate) fn dump(journal: &Journal, states_only: bool) -> Vec<String> {
    let mut queries = vec![
        "SELECT 'state', subject, kind, alive, last_ms, state FROM states",
        "SELECT 'reading', hex(e.hash), r.place, r.at_ms, r.reading
         FROM readings r JOIN entries e ON e.nr = r.entry",
        "SELECT 'job', hex(e.hash), j.subject, j.lamport, hex(j.device), j.seq, j.answer
         FROM jobs j JOIN entries e ON e.nr = j.entry",
    ];
    if !states_only {
        queries.extend([
            "SELECT 'touch', t.subject, hex(e.hash), t.weighs, t.at_ms
             FROM touches t JOIN entries e ON e.nr = t.entry",
            "SELECT 'amends', hex(a.root), hex(a.hash), a.lamport, hex(a.device), a.seq
             FROM amendments a",
            "SELECT 'entry', hex(hash), hex(id), hex(act), hex(device), seq, lamport, kind, line
             FROM entries",
        ]);
    }
    let mut rows = Vec::new();
    for query in queries {
        let mut query = journal.connection().prepare(query).unwrap();
        let columns = query.column_count();
        let mut found = query.query([]).unwrap();
        while let Some(row) = found.next().unwrap() {
            let row: Vec<_> = (0..columns)
                .map(|column| format!("{:?}", row.get::<_, rusqlite::types::Value>(column)))
                .collect();
            rows.push(row.join(" "));
        }
    }
    rows.sort();
    rows
}

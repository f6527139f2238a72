//! Journals of so many years that end alike: the same trays live at the end.
//!
//! A year has 300 sowings in trays of their own and about 7,500 entries, by the
//! same door as everything else.

use chrono::{DateTime, Datelike, Days, NaiveDate, NaiveDateTime, NaiveTime, TimeDelta, Utc};
use chrono_tz::Tz;
use plumule_journal::content::{
    Content, Counted, Felt, GardenDescribed, Leaving, Left, MonthDay, OfPlants, OfTray,
    PacketDescribed, Part, PlaceDescribed, RangeC, ReadingTaken, Seeds, Shown, Sown, TrayDescribed,
    TrayMoved, Treatment, Up, WentOn,
};
use plumule_journal::id::{BatchId, PacketId, PlaceId, SowingId, TrayId};
use plumule_journal::stamp::{Stamp, instant_of};
use plumule_journal::subject::Plants;
use plumule_journal::words::{
    Compost, Container, Feel, Light, Medium, PlaceKind, Step, Storage, Watering,
};
use plumule_journal::{Error, Ids, Journal, Wish};
use std::path::{Path, PathBuf};
use uuid::Uuid;

/// Sowings of a past year.
pub const SOWINGS_A_YEAR: u64 = 300;
/// Crops of the packets, in turn.
const CROPS: [&str; 8] = [
    "tomato",
    "leek",
    "cabbage",
    "lettuce",
    "sweet_pepper",
    "onion",
    "celery",
    "cauliflower",
];
/// Packets in use over the years: each year adds so many.
const PACKETS_A_YEAR: u64 = 24;
const ZONE: Tz = chrono_tz::Europe::Berlin;

/// How a journal is made.
#[derive(Clone, Copy, Debug)]
pub struct World {
    /// Years before the living trays.
    pub years: u64,
    /// Sowings of a past year.
    pub a_year: u64,
    /// Sowings that live at the end, each in a tray of its own.
    pub living: u64,
    /// The day it is at the end.
    pub today: NaiveDate,
}

/// The morning at which every journal is opened.
pub fn now() -> DateTime<Utc> {
    instant_of(usual_today().and_time(time(8, 0)), ZONE)
}

/// A stamp at that moment, the chance of its own for each number.
pub fn stamp(number: u64) -> Stamp {
    stamp_at(now(), number)
}

fn usual_today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 5, 1).unwrap_or_default()
}

fn time(hour: u32, minute: u32) -> NaiveTime {
    NaiveTime::from_hms_opt(hour, minute, 0).unwrap_or_default()
}

fn stamp_at(now: DateTime<Utc>, number: u64) -> Stamp {
    let mut entropy = *b"plumule benches.";
    for (to, from) in entropy.iter_mut().zip(number.to_le_bytes()) {
        *to ^= from;
    }
    Stamp {
        now,
        zone: ZONE,
        entropy,
    }
}

fn wish(contents: Vec<Content>) -> Wish {
    Wish {
        contents,
        happened: None,
        hand: String::new(),
        confirmed: true,
    }
}

/// More than a past can have ids, or acts.
const PAST: u64 = 1 << 40;

/// Acts of a journal.
struct Acts {
    acts: Vec<(NaiveDateTime, Vec<Content>)>,
    /// Numbers, of ids and of acts, that went before.
    before: u64,
    made: u64,
}

impl Acts {
    fn after(before: u64) -> Self {
        Self {
            acts: Vec::new(),
            before,
            made: before,
        }
    }

    fn id(&mut self) -> Uuid {
        self.made += 1;
        Ids::new(&stamp(self.made), "bench").next()
    }

    fn say(&mut self, day: NaiveDate, at: NaiveTime, contents: Vec<Content>) {
        self.acts.push((day.and_time(at), contents));
    }

    /// Writes them in the order of their time.
    fn write(mut self, home: &Path) -> Result<(), Error> {
        self.acts.sort_by_key(|(at, _)| *at);
        let first = self.acts.first().map(|(at, _)| instant_of(*at, ZONE));
        let mut number = self.before;
        let mut journal = Journal::open(home, &stamp_at(first.unwrap_or_else(now), number))?;
        for chunk in self.acts.chunks(20_000) {
            journal.write_all(chunk.iter().map(|(at, contents)| {
                number += 1;
                (
                    stamp_at(instant_of(*at, ZONE), number),
                    wish(contents.clone()),
                )
            }))?;
        }
        Ok(())
    }
}

impl World {
    /// So many usual years, and so many living sowings at [`now`].
    pub fn of(years: u64, living: u64) -> Self {
        Self {
            years,
            a_year: SOWINGS_A_YEAR,
            living,
            today: usual_today(),
        }
    }

    /// Its home in a folder of such: made once, then found there. What writes
    /// takes a [`copy`].
    ///
    /// # Errors
    /// If it cannot be made.
    pub fn kept_in(self, folder: &Path) -> Result<PathBuf, Box<dyn std::error::Error>> {
        let home = self.home(folder);
        if !home.exists() {
            let part = home.with_extension("part");
            self.past(&part)?;
            self.end(&part)?;
            std::fs::rename(part, &home)?;
        }
        Ok(home)
    }

    /// Where it is in a folder of such.
    pub fn home(self, folder: &Path) -> PathBuf {
        folder.join(format!("{} {} {}", self.years, self.a_year, self.living))
    }

    /// Its past years: the same whatever day it is at the end.
    ///
    /// # Errors
    /// If the door refuses an entry or the disk fails.
    pub fn past(self, home: &Path) -> Result<(), Error> {
        let mut acts = Acts::after(0);
        let first = usual_today() - Days::new(366 * self.years + 60);
        let places = garden(&mut acts, first);
        let mut tray = 0;
        for year in 0..self.years {
            let begins = first + Days::new(366 * year);
            let packets = packets(&mut acts, begins);
            for number in 0..self.a_year {
                let day = begins + Days::new(number * 240 / self.a_year.max(1));
                tray += 1;
                past(&mut acts, day, number, tray, &packets, &places);
            }
            readings(&mut acts, begins, 366, &places);
        }
        acts.write(home)
    }

    /// What lives at the end, in a home that has its past.
    ///
    /// # Errors
    /// If the door refuses an entry or the disk fails.
    pub fn end(self, home: &Path) -> Result<(), Error> {
        let mut acts = Acts::after(PAST);
        let (today, begins) = (self.today, self.today - Days::new(59));
        // Told with the past, under the first numbers.
        let places = garden(&mut Acts::after(0), begins);
        let packets = packets(&mut acts, begins);
        for number in 0..self.living {
            let tray = self.years * self.a_year + 1 + number;
            // Sown over the last four weeks: some up, some due, some late.
            let day = today - Days::new(1 + number * 27 / self.living.max(1));
            living(&mut acts, day, number, tray, &packets, &places, today);
        }
        readings(&mut acts, begins, 59, &places);
        acts.write(home)
    }
}

/// A journal with the same entries in a new home.
///
/// # Errors
/// If the disk fails.
pub fn copy(from: &Path, to: &Path) -> std::io::Result<()> {
    let database = Path::new("journal/journal.db");
    std::fs::create_dir_all(to.join("journal"))?;
    std::fs::copy(from.join(database), to.join(database)).map(drop)
}

fn garden(acts: &mut Acts, day: NaiveDate) -> [PlaceId; 3] {
    let kinds = [
        (
            PlaceKind::HeatedPropagator,
            "Propagator",
            19.0,
            25.0,
            Light::Dark,
        ),
        (
            PlaceKind::Windowsill,
            "South sill",
            14.0,
            22.0,
            Light::Bright,
        ),
        (
            PlaceKind::Greenhouse,
            "Glasshouse",
            8.0,
            22.0,
            Light::Bright,
        ),
    ];
    let mut contents = vec![Content::GardenDescribed(GardenDescribed {
        latitude: Some(52.0),
        last_frost: Some(MonthDay { month: 5, day: 12 }),
        first_frost: Some(MonthDay { month: 10, day: 14 }),
        zone: ZONE.name().to_owned(),
        morning: time(8, 0),
        evening: time(18, 0),
    })];
    let mut position = 0;
    let places = kinds.map(|(kind, name, min_c, max_c, light)| {
        let place = PlaceId(acts.id());
        position += 1;
        contents.push(Content::PlaceDescribed(PlaceDescribed {
            place,
            name: name.to_owned(),
            kind,
            usual: RangeC { min_c, max_c },
            unheated: None,
            light,
            covered: kind == PlaceKind::HeatedPropagator,
            position,
            retired: false,
        }));
        place
    });
    acts.say(day, time(7, 0), contents);
    places
}

fn packets(acts: &mut Acts, day: NaiveDate) -> Vec<PacketId> {
    let mut packets = Vec::new();
    for crop in CROPS.iter().cycle().take(PACKETS_A_YEAR as usize) {
        let packet = PacketId(acts.id());
        let described = PacketDescribed {
            packet,
            crop: (*crop).to_owned(),
            variety: format!("Trial {}", acts.made),
            packed_year: Some(day.year() - 1),
            harvested_year: None,
            sow_by: None,
            stated_germination: Some(0.88),
            stated_days: None,
            seeds: Some(500),
            storage: Storage::CoolCupboard,
            treated: false,
            source: String::new(),
            note: String::new(),
            f1: false,
            saved_from: None,
            price: String::new(),
            retired: false,
        };
        acts.say(day, time(7, 30), vec![Content::PacketDescribed(described)]);
        packets.push(packet);
    }
    packets
}

/// A thermometer read every second morning in turn.
fn readings(acts: &mut Acts, from: NaiveDate, days: u64, places: &[PlaceId; 3]) {
    for day in 0..days {
        let place = places[day as usize % places.len()];
        let wave = (day % 11) as f64;
        let shown = Shown::LowHigh {
            min_c: 12.0 + wave / 2.0,
            max_c: 20.0 + wave / 2.0,
        };
        let of = Medium::Air;
        let reading = Content::ReadingTaken(ReadingTaken { place, of, shown });
        acts.say(from + Days::new(day), time(8, 30), vec![reading]);
    }
}

/// A new tray with seeds in it.
fn sow(
    acts: &mut Acts,
    day: NaiveDate,
    number: u64,
    tray_number: u64,
    packets: &[PacketId],
    place: PlaceId,
) -> (TrayId, SowingId) {
    let (tray, sowing) = (TrayId(acts.id()), SowingId(acts.id()));
    let described = TrayDescribed {
        tray,
        code: format!("B{tray_number}"),
        container: Container::Cells,
        rows: 4,
        columns: 6,
        compost: Compost::Seed,
    };
    let sown = Sown {
        sowing,
        packet: packets[number as usize % packets.len()],
        tray,
        cells: (0..24).collect(),
        seeds: Seeds::Exact(24),
        depth_mm: Some(6.0),
        wanted: Some(15),
        again_of: None,
        treatment: Treatment::default(),
        plan: None,
    };
    let contents = vec![
        Content::TrayDescribed(described),
        Content::TrayMoved(TrayMoved { tray, place }),
        Content::Sown(sown),
    ];
    acts.say(day, time(17, 30), contents);
    (tray, sowing)
}

fn feel(acts: &mut Acts, day: NaiveDate, tray: TrayId, number: u64) {
    let (feel, water) = match number % 4 {
        0 => (Feel::Dry, Some(Watering::Below)),
        3 => (Feel::Wet, None),
        _ => (Feel::Moist, None),
    };
    let felt = Content::Felt(Felt {
        tray,
        feel: Some(feel),
        water,
    });
    acts.say(day, time(8, 10), vec![felt]);
}

fn count(acts: &mut Acts, day: NaiveDate, of: Plants, up: u32) {
    let up = Up::Number(up);
    acts.say(day, time(8, 20), vec![Content::Counted(Counted { of, up })]);
}

/// A sowing from its tray to the open ground: 25 entries.
fn past(
    acts: &mut Acts,
    day: NaiveDate,
    number: u64,
    tray_number: u64,
    packets: &[PacketId],
    places: &[PlaceId; 3],
) {
    let (tray, sowing) = sow(
        acts,
        day,
        number,
        tray_number,
        packets,
        places[number as usize % 3],
    );
    let after = |days: u64| day + Days::new(days);
    for (turn, days) in (2..24).step_by(2).enumerate() {
        feel(acts, after(days), tray, number + turn as u64);
    }
    let of = Plants::Sowing(sowing);
    let rest = 1 + (number % 4) as u32;
    for (days, up) in [(10, 3), (13, 12), (17, 16 + rest)] {
        count(acts, after(days), of, up);
    }
    let (new, batch) = (TrayId(acts.id()), BatchId(acts.id()));
    let described = TrayDescribed {
        tray: new,
        code: format!("P{tray_number}"),
        container: Container::Cells,
        rows: 4,
        columns: 6,
        compost: Compost::Potting,
    };
    let part = Part {
        batch,
        tray: new,
        cells: (0..16).collect(),
        number: 16,
    };
    let went_on = vec![
        Content::TrayDescribed(described),
        Content::TrayMoved(TrayMoved {
            tray: new,
            place: places[2],
        }),
        Content::WentOn(WentOn {
            of,
            step: Step::PrickedOut,
            parts: vec![part],
        }),
        Content::Left(Left {
            of,
            number: rest,
            how: Leaving::Thinned,
            reservation: None,
        }),
        Content::Finished(OfPlants { of }),
        Content::TrayEmptied(OfTray { tray }),
    ];
    acts.say(after(28), time(16, 0), went_on);
    let of = Plants::Batch(batch);
    let how = Leaving::PlantedOut;
    let out = vec![
        Content::Left(Left {
            of,
            number: 16,
            how,
            reservation: None,
        }),
        Content::TrayEmptied(OfTray { tray: new }),
    ];
    acts.say(after(59), time(16, 0), out);
}

/// A sowing that lives: felt every second day, counted once it may be up.
fn living(
    acts: &mut Acts,
    day: NaiveDate,
    number: u64,
    tray_number: u64,
    packets: &[PacketId],
    places: &[PlaceId; 3],
    today: NaiveDate,
) {
    let (tray, sowing) = sow(
        acts,
        day,
        number,
        tray_number,
        packets,
        places[number as usize % 3],
    );
    let mut at = day + TimeDelta::days(2);
    while at < today {
        feel(acts, at, tray, number);
        let days = (at - day).num_days();
        if days >= 12 && !number.is_multiple_of(3) {
            count(acts, at, Plants::Sowing(sowing), (days as u32 - 10).min(18));
        }
        at += TimeDelta::days(2);
    }
}

//! The scenario: an invented garden with its places, packets and two seasons.
//! Every name in it is made up.

use super::chance::Chance;
use super::diary::Diary;
use super::weather;
use chrono::{Datelike, NaiveTime};
use plumule_journal::content::{
    BatchStarted, Content, Counted, CoverChanged, Felt, GardenDescribed, MonthDay, Noted, OfTray,
    PacketDescribed, PlaceDescribed, RangeC, ReadingTaken, Shown, TrayDescribed, TrayMoved, Up,
};
use plumule_journal::id::{BatchId, PacketId, PlaceId, TrayId};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::{
    Compost, Container, Feel, Light, LossCause, Medium, Origin, PlaceKind, Storage, Watering,
};

/// The places, in walking order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Where {
    Propagator,
    Sill,
    Shed,
    Greenhouse,
    Frame,
}

impl Where {
    const ALL: [Self; 5] = [
        Self::Propagator,
        Self::Sill,
        Self::Shed,
        Self::Greenhouse,
        Self::Frame,
    ];

    fn described(self, place: PlaceId, diary: &Diary) -> PlaceDescribed {
        use {Light as L, PlaceKind as K};
        let (name, kind, usual, light) = match self {
            Self::Propagator => ("propagator", K::HeatedPropagator, (19.0, 24.0), L::Dim),
            Self::Sill => ("sill", K::Windowsill, (15.0, 20.0), L::Bright),
            Self::Shed => ("shed", K::Shed, (4.0, 10.0), L::Dark),
            Self::Greenhouse => ("greenhouse", K::Greenhouse, (7.0, 18.0), L::Bright),
            Self::Frame => ("frame", K::ColdFrame, (5.0, 15.0), L::Bright),
        };
        let range = |(min_c, max_c)| RangeC { min_c, max_c };
        PlaceDescribed {
            place,
            name: diary.word(name),
            kind,
            usual: range(usual),
            unheated: (self == Self::Propagator).then(|| range((9.0, 15.0))),
            light,
            covered: matches!(self, Self::Propagator | Self::Frame),
            position: self as u32 + 1,
            retired: false,
        }
    }
}

/// A packet: name in this scenario, crop, variety, years ago packed, seeds.
type Packet = (&'static str, &'static str, &'static str, i32, u32);

/// The packets; the old one has lain in the kitchen.
const PACKETS: &[Packet] = &[
    ("lantern", "tomato", "Lantern Lane", 1, 120),
    ("kettle", "tomato", "Old Kettle", 7, 60),
    ("fogbell", "pepper", "Fogbell", 1, 80),
    ("ferry", "eggplant", "Night Ferry", 2, 60),
    ("quilt", "lettuce", "Patchwork Quilt", 1, 400),
    ("stout", "cabbage", "Stoutgate", 1, 200),
    ("whitewash", "cauliflower", "Whitewash Wall", 2, 100),
    ("hoop", "onion", "Copper Hoop", 1, 500),
    ("towpath", "celery", "Towpath", 1, 600),
    ("slipway", "cucumber", "Slipway", 1, 40),
    ("fair", "muskmelon", "Harvest Fair", 2, 30),
    ("collar", "parsley", "Ruffle Collar", 1, 300),
    ("inkwell", "beet", "Inkwell Round", 1, 200),
    ("broadsheet", "spinach", "Broadsheet", 1, 250),
    ("tale", "pea", "Taller Tale", 1, 200),
    ("plumb", "bean_snap", "Plumb Line", 1, 120),
    ("noonday", "corn_sweet", "Noonday", 1, 80),
    ("haze", "Phacelia", "Evening Haze", 1, 100),
];

/// What was raised, in which tray, and what became of it.
pub(super) struct Raise {
    /// Name of the packet here.
    pub(super) packet: &'static str,
    /// Day of sowing, counted from today.
    pub(super) day: i64,
    pub(super) place: Where,
    /// Rows and columns; none: beside the one before, in the same tray.
    pub(super) tray: Option<(u16, u16)>,
    /// First cell and how many; none: all.
    pub(super) cells: Option<(u16, u16)>,
    pub(super) seeds: u32,
    pub(super) kept: Kept,
    pub(super) then: &'static [Then],
}

/// How it was kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kept {
    Well,
    /// Felt wet again and again: half of it rots.
    Wet,
    /// Old seed: a third of it lives, and slowly.
    Old,
    /// None of it lives.
    Dead,
}

/// What came then, so many days after sowing.
#[derive(Clone, Copy)]
pub(super) enum Then {
    To(i64, Where),
    Thin(i64, u32),
    PrickOut(i64, Where, &'static [(u16, u16)]),
    PotOn(i64, Where, (u16, u16)),
    /// Out by day from that day, for so many days.
    Harden(i64, i64),
    Ready(i64),
    Sell(i64, u32),
    Give(i64, u32),
    Lose(i64, u32, LossCause),
    PlantOut(i64),
    NothingCameUp(i64),
    DigUp(i64, u32, u32),
    Feed(i64),
    Note(i64, &'static str),
}

use Kept::{Dead, Old, Well, Wet};
use Then::{
    DigUp, Feed, Give, Harden, Lose, Note, NothingCameUp, PlantOut, PotOn, PrickOut, Ready, Sell,
    Thin, To,
};
use Where::{Frame, Greenhouse, Propagator, Shed, Sill};

const TOMATO: &[Then] = &[
    To(11, Sill),
    PrickOut(21, Sill, &[(4, 6)]),
    PotOn(40, Greenhouse, (3, 6)),
    Feed(50),
    Harden(62, 9),
    Give(66, 2),
    PlantOut(73),
];
const PEPPER: &[Then] = &[
    To(16, Sill),
    PrickOut(30, Sill, &[(3, 5)]),
    PotOn(52, Greenhouse, (3, 5)),
    Lose(58, 1, LossCause::Eaten),
    Harden(70, 8),
    PlantOut(80),
];
const CABBAGE: &[Then] = &[
    PrickOut(24, Greenhouse, &[(4, 6), (3, 4)]),
    Harden(42, 8),
    Sell(46, 6),
    PlantOut(52),
];
const LETTUCE: &[Then] = &[
    Thin(18, 4),
    Harden(30, 7),
    Ready(37),
    Sell(38, 4),
    PlantOut(40),
];
const CELLS: &[Then] = &[Harden(24, 7), PlantOut(33)];
const ONION: &[Then] = &[Thin(40, 10), Harden(60, 8), PlantOut(70)];
const PARSLEY: &[Then] = &[To(24, Greenhouse), Harden(45, 8), Give(50, 3), PlantOut(54)];
const CUCUMBER: &[Then] = &[
    To(7, Sill),
    PotOn(22, Greenhouse, (2, 4)),
    Harden(34, 7),
    PlantOut(43),
];
const MIXED: &[Then] = &[Note(9, "card")];
const IN_THE_SHED: &[Then] = &[Note(14, "room")];
const TOO_WET: &[Then] = &[Note(8, "let-it-be"), Lose(14, 2, LossCause::DampedOff)];
const GIVEN_UP: &[Then] = &[DigUp(30, 1, 5), NothingCameUp(31)];
const FROSTED: &[Then] = &[Lose(26, 5, LossCause::Frosted), Harden(28, 6), PlantOut(36)];
const NOTHING_YET: &[Then] = &[];

const fn raise(
    packet: &'static str,
    day: i64,
    place: Where,
    tray: (u16, u16),
    seeds: u32,
    then: &'static [Then],
) -> Raise {
    Raise {
        packet,
        day,
        place,
        tray: Some(tray),
        cells: None,
        seeds,
        kept: Well,
        then,
    }
}

const fn kept(raise: Raise, kept: Kept) -> Raise {
    Raise { kept, ..raise }
}

const fn beside(raise: Raise, first: u16, cells: u16) -> Raise {
    Raise {
        tray: if first == 0 { raise.tray } else { None },
        cells: Some((first, cells)),
        ..raise
    }
}

/// All that was raised, in any order.
pub(super) const RAISED: &[Raise] = &[
    // Last year.
    raise("lantern", -445, Propagator, (4, 6), 24, TOMATO),
    raise("fogbell", -450, Propagator, (4, 5), 20, PEPPER),
    raise("ferry", -446, Propagator, (3, 4), 12, PEPPER),
    raise("hoop", -440, Greenhouse, (6, 1), 60, ONION),
    raise("towpath", -438, Propagator, (6, 1), 40, CABBAGE),
    raise("stout", -430, Greenhouse, (6, 1), 40, CABBAGE),
    raise("whitewash", -428, Greenhouse, (6, 1), 36, CABBAGE),
    raise("quilt", -432, Sill, (4, 6), 30, LETTUCE),
    raise("collar", -425, Sill, (3, 4), 30, PARSLEY),
    raise("tale", -424, Greenhouse, (5, 8), 40, CELLS),
    raise("broadsheet", -422, Greenhouse, (5, 8), 40, CELLS),
    raise("inkwell", -418, Greenhouse, (4, 6), 24, CELLS),
    raise("haze", -410, Sill, (3, 4), 15, CELLS),
    raise("quilt", -408, Greenhouse, (4, 6), 30, LETTUCE),
    raise("lantern", -405, Propagator, (4, 6), 18, TOMATO),
    kept(raise("kettle", -404, Propagator, (3, 4), 12, TOMATO), Old),
    raise("plumb", -398, Greenhouse, (5, 8), 36, FROSTED),
    raise("slipway", -395, Propagator, (2, 4), 8, CUCUMBER),
    kept(raise("fair", -394, Greenhouse, (2, 4), 8, GIVEN_UP), Dead),
    raise("noonday", -390, Greenhouse, (5, 8), 40, CELLS),
    raise("stout", -388, Frame, (6, 1), 40, CABBAGE),
    raise("quilt", -385, Greenhouse, (4, 6), 30, LETTUCE),
    raise("fair", -380, Propagator, (2, 4), 8, CUCUMBER),
    raise("inkwell", -378, Frame, (4, 6), 24, CELLS),
    raise("tale", -376, Frame, (5, 8), 40, CELLS),
    raise("plumb", -370, Greenhouse, (5, 8), 36, CELLS),
    raise("slipway", -366, Sill, (2, 4), 8, CUCUMBER),
    raise("quilt", -362, Frame, (4, 6), 30, LETTUCE),
    raise("haze", -360, Greenhouse, (3, 4), 15, CELLS),
    raise("noonday", -356, Frame, (5, 8), 30, CELLS),
    raise("collar", -350, Greenhouse, (3, 4), 30, PARSLEY),
    raise("broadsheet", -320, Frame, (5, 8), 40, CELLS),
    raise("quilt", -300, Frame, (4, 6), 30, LETTUCE),
    raise("stout", -295, Frame, (6, 1), 36, CABBAGE),
    // This year, done with.
    raise("hoop", -82, Greenhouse, (6, 1), 60, ONION),
    raise("quilt", -64, Sill, (4, 6), 30, LETTUCE),
    raise("tale", -62, Greenhouse, (5, 8), 40, CELLS),
    raise("broadsheet", -58, Greenhouse, (5, 8), 40, CELLS),
    raise("collar", -70, Sill, (3, 4), 30, PARSLEY),
    kept(raise("towpath", -60, Shed, (6, 1), 40, GIVEN_UP), Dead),
    raise("inkwell", -46, Greenhouse, (4, 6), 24, CELLS),
    raise("haze", -42, Sill, (3, 4), 15, CELLS),
    raise("whitewash", -62, Greenhouse, (6, 1), 30, CABBAGE),
    raise("tale", -44, Frame, (5, 8), 40, CELLS),
    raise("broadsheet", -40, Frame, (5, 8), 40, CELLS),
    raise("haze", -38, Sill, (3, 4), 15, CELLS),
    // This year, alive.
    raise("lantern", -68, Propagator, (4, 6), 24, TOMATO),
    raise("fogbell", -58, Propagator, (4, 5), 20, PEPPER),
    raise("ferry", -44, Propagator, (3, 4), 12, PEPPER),
    raise("stout", -36, Greenhouse, (6, 1), 40, CABBAGE),
    raise(
        "quilt",
        -37,
        Greenhouse,
        (4, 6),
        30,
        &[Thin(18, 4), Harden(30, 7), Ready(36)],
    ),
    kept(
        raise("kettle", -20, Propagator, (3, 4), 12, &[To(14, Sill)]),
        Old,
    ),
    raise("lantern", -30, Propagator, (4, 6), 24, &[To(11, Sill)]),
    beside(raise("lantern", -17, Propagator, (3, 6), 6, MIXED), 0, 6),
    beside(
        raise("fogbell", -17, Propagator, (3, 6), 6, NOTHING_YET),
        6,
        6,
    ),
    kept(
        beside(
            raise("ferry", -17, Propagator, (3, 6), 6, NOTHING_YET),
            12,
            6,
        ),
        Dead,
    ),
    raise("fogbell", -24, Shed, (3, 4), 12, IN_THE_SHED),
    raise("stout", -26, Greenhouse, (6, 1), 36, NOTHING_YET),
    kept(
        raise("broadsheet", -18, Greenhouse, (4, 6), 24, TOO_WET),
        Wet,
    ),
    raise("whitewash", -6, Propagator, (6, 1), 30, NOTHING_YET),
    raise("slipway", -4, Propagator, (2, 4), 8, NOTHING_YET),
    raise("inkwell", -2, Greenhouse, (4, 6), 24, NOTHING_YET),
];

/// The garden, its places and its packets, the day before the first sowing.
pub(super) fn garden(diary: &mut Diary) {
    let today = diary.today();
    let in_days = |days: i64| {
        let day = today + chrono::TimeDelta::days(days);
        Some(MonthDay {
            month: day.month(),
            day: day.day(),
        })
    };
    let first = RAISED.iter().map(|raise| raise.day).min().unwrap_or(0) - 1;
    // The season of the scenario is spring, on the half of the earth where it
    // is that now.
    let north = today.month() <= 7;
    let time = |hour| NaiveTime::from_hms_opt(hour, 0, 0).unwrap_or_default();
    let garden = GardenDescribed {
        zone: diary.zone().name().to_owned(),
        latitude: Some(if north { 52.0 } else { -42.0 }),
        last_frost: in_days(18),
        first_frost: in_days(190),
        morning: time(8),
        evening: time(18),
    };
    diary.say(first, (19, 0), Content::GardenDescribed(garden));
    for place in Where::ALL {
        let id = diary.place(place);
        let described = place.described(id, diary);
        diary.say(first, (19, 0), Content::PlaceDescribed(described));
    }
    for (name, crop, variety, years, seeds) in PACKETS {
        let packet = PacketId(diary.id(name));
        diary.say(
            first,
            (19, 10),
            Content::PacketDescribed(PacketDescribed {
                packet,
                crop: (*crop).to_owned(),
                variety: (*variety).to_owned(),
                packed_year: Some(today.year() - years),
                harvested_year: None,
                sow_by: None,
                stated_germination: (*years == 1).then_some(0.88),
                stated_days: None,
                seeds: Some(*seeds),
                storage: if *years > 5 {
                    Storage::WarmRoom
                } else {
                    Storage::CoolCupboard
                },
                treated: *name == "noonday",
                source: String::new(),
                note: String::new(),
                f1: false,
                saved_from: None,
                price: String::new(),
                retired: false,
            }),
        );
    }
}

/// Ten rosemary cuttings, of which some rot.
pub(super) fn cuttings(diary: &mut Diary) {
    let (tray, batch) = (TrayId(diary.id("cuttings")), BatchId(diary.id("rosemary")));
    let of = Plants::Batch(batch);
    for content in [
        Content::TrayDescribed(TrayDescribed {
            tray,
            code: String::new(),
            container: Container::Pots,
            rows: 2,
            columns: 5,
            compost: Compost::MultiPurpose,
        }),
        Content::TrayMoved(TrayMoved {
            tray,
            place: diary.place(Sill),
        }),
        Content::CoverChanged(CoverChanged { tray, on: true }),
        Content::BatchStarted(BatchStarted {
            batch,
            origin: Origin::Cuttings,
            crop: "rosemary".to_owned(),
            variety: String::new(),
            tray,
            cells: (0..10).collect(),
            number: 10,
        }),
    ] {
        diary.say(-26, (16, 30), content);
    }
    for day in (-24..-2).step_by(2) {
        let dry = day % 3 == 0;
        let felt = Felt {
            tray,
            feel: Some(if dry { Feel::Dry } else { Feel::Moist }),
            water: dry.then_some(Watering::Mist),
        };
        diary.say(day, (8, 10), Content::Felt(felt));
    }
    diary.say(
        -9,
        (17, 0),
        Content::Counted(Counted {
            of,
            up: Up::Number(8),
        }),
    );
    diary.say(
        -4,
        (17, 0),
        Content::Noted(Noted {
            about: Subject::Tray(tray),
            text: diary.word("roots"),
        }),
    );
    diary.say(-3, (17, 0), Content::Fed(OfTray { tray }));
}

/// Lowest and highest on most mornings, at the two places with thermometers,
/// while something is raised.
pub(super) fn readings(diary: &mut Diary) {
    let mut chance = Chance::new(42);
    for day in (-450..-255).chain(-82..0) {
        for place in [Propagator, Greenhouse] {
            if !chance.happens(0.86) {
                continue;
            }
            // The night's lowest with the highest of the afternoon before.
            let (low, _) = weather::day(place, day);
            let (_, high) = weather::day(place, day - 1);
            let reading = ReadingTaken {
                place: diary.place(place),
                of: if place == Propagator {
                    Medium::Compost
                } else {
                    Medium::Air
                },
                shown: Shown::LowHigh {
                    min_c: low.min(high),
                    max_c: high.max(low),
                },
            };
            diary.say(day, (8, 5), Content::ReadingTaken(reading));
        }
    }
}

/// The crop of a packet of this scenario.
pub(super) fn crop(packet: &str) -> &'static str {
    let found = PACKETS.iter().find(|(name, ..)| *name == packet);
    found.map_or("", |(_, crop, ..)| crop)
}

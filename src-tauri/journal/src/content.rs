//! What an entry says: one variant a kind, and the payload of each.
//!
//! These are the stored types. A kind never changes its meaning; fields are
//! only added, with a default, and a kind that is not listed here is kept as
//! it was written and passed on.

mod care;
mod plan;
mod seed;
mod seen;

pub use care::{
    CameBack, FrostReckoned, FrostSpread, HeatBack, NightForecast, OfPlace, Sheltered, Treatment,
};
pub use plan::{PlanDescribed, Reserved, Rhythm, Wares};
pub use seed::{
    PacketDescribed, SeedsCounted, StatedDays, StockTaken, TestClosed, TestCounted, TestStarted,
    ToBuy,
};
pub use seen::{Explained, Noticed, SeedsLost};

use crate::id::{BatchId, EntryId, PacketId, PlaceId, PlanId, ReservationId, SowingId, TrayId};
use crate::subject::{Plants, Subject};
use crate::words::{
    Compost, Container, Feel, Light, LossCause, Medium, Origin, PlaceKind, Step, Watering,
};
use chrono::{NaiveDate, NaiveDateTime, NaiveTime};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// A lowest and a highest temperature, °C.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct RangeC {
    /// Lowest, °C.
    pub min_c: f64,
    /// Highest, °C.
    pub max_c: f64,
}

/// The payload of an entry, by kind.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "kind", content = "what", rename_all = "snake_case")]
pub enum Content {
    /// What is true of the growing; the last holds.
    GardenDescribed(GardenDescribed),
    /// The grower is away.
    Away(Away),
    /// The grower came back.
    CameBack(CameBack),
    /// When frosts come, from a record; the last holds.
    FrostReckoned(FrostReckoned),
    /// How cold a night is to be.
    NightForecast(NightForecast),
    /// A place and its attributes; the last holds.
    PlaceDescribed(PlaceDescribed),
    /// A packet and its attributes; the last holds.
    PacketDescribed(PacketDescribed),
    /// The seeds left in a packet were counted.
    SeedsCounted(SeedsCounted),
    /// A packet was gone through at the stocktake.
    StockTaken(StockTaken),
    /// A germination test was started.
    TestStarted(TestStarted),
    /// The sprouted seeds of a germination test were counted.
    TestCounted(TestCounted),
    /// A germination test was closed.
    TestClosed(TestClosed),
    /// Something to buy, and how it stands with it; the last holds.
    ToBuy(ToBuy),
    /// A plan to raise plants; the last holds.
    PlanDescribed(PlanDescribed),
    /// Plants are kept for somebody; the last holds.
    Reserved(Reserved),
    /// A tray and its attributes; the last holds.
    TrayDescribed(TrayDescribed),
    /// A tray came to stand in a place.
    TrayMoved(TrayMoved),
    /// A tray was covered or its cover taken off.
    CoverChanged(CoverChanged),
    /// A tray was emptied: it is no longer in use.
    TrayEmptied(OfTray),
    /// Seeds were sown.
    Sown(Sown),
    /// Cuttings, tubers, bulbs or plugs were started.
    BatchStarted(BatchStarted),
    /// The compost was felt, or the tray watered, or both.
    Felt(Felt),
    /// A tray was fed.
    Fed(OfTray),
    /// A tray was put out by day to harden off.
    HardenedOff(OfTray),
    /// A tray was sheltered for the night.
    Sheltered(Sheltered),
    /// A lid was opened on a sunny day.
    Aired(OfPlace),
    /// A thermometer was read.
    ReadingTaken(ReadingTaken),
    /// The heat of a place was off.
    HeatOff(HeatOff),
    /// The heat of a place came back.
    HeatBack(HeatBack),
    /// Plants were counted.
    Counted(Counted),
    /// Plants went on into other cells, as batches.
    WentOn(WentOn),
    /// Plants left: thinned, lost, planted out, sold, given away.
    Left(Left),
    /// Plants are ready.
    Ready(OfPlants),
    /// Seeds were dug up and looked at.
    DugUp(DugUp),
    /// Seeds were lost before they came up.
    SeedsLost(SeedsLost),
    /// A sowing was given up: nothing came up.
    NothingCameUp(OfSowing),
    /// The grower says why a sowing did badly.
    Explained(Explained),
    /// The grower saw how plants look.
    Noticed(Noticed),
    /// A sowing or batch is done with.
    Finished(OfPlants),
    /// A note.
    Noted(Noted),
    /// A photo, stored beside the database by its hash.
    PhotoTaken(PhotoTaken),
    /// A photo was given its subject.
    PhotoNamed(PhotoNamed),
    /// A job was put off.
    JobPutOff(JobPutOff),
    /// A job was dismissed.
    JobDismissed(JobDismissed),
    /// An entry was corrected, withdrawn or brought back.
    Amended(Amended),
}

/// What is true of the growing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct GardenDescribed {
    /// IANA name of the time zone.
    pub zone: String,
    /// Degrees north, -66 to 66.
    #[serde(default)]
    pub latitude: Option<f64>,
    /// Usual last frost of spring, as month and day of any year.
    #[serde(default)]
    pub last_frost: Option<MonthDay>,
    /// Usual first frost of autumn.
    #[serde(default)]
    pub first_frost: Option<MonthDay>,
    /// When the day's round is gathered.
    pub morning: NaiveTime,
    /// When the evening's round is gathered, in its season.
    pub evening: NaiveTime,
}

/// A day of any year.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct MonthDay {
    /// 1 to 12.
    pub month: u32,
    /// 1 to 31.
    pub day: u32,
}

/// First and last day away.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Away {
    /// First day away.
    pub from: NaiveDate,
    /// Last day away.
    pub to: NaiveDate,
    /// Until the grower says so: `to` is only the latest.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub open: bool,
}

/// A place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PlaceDescribed {
    /// Which place.
    pub place: PlaceId,
    /// The grower's name for it.
    pub name: String,
    /// Its kind.
    pub kind: PlaceKind,
    /// Usual lowest and highest of a day.
    pub usual: RangeC,
    /// The same with the heat off, for a heated place.
    #[serde(default)]
    pub unheated: Option<RangeC>,
    /// Its light.
    pub light: Light,
    /// Whether trays stand under a cover there.
    #[serde(default)]
    pub covered: bool,
    /// Its turn in the walk; ties by id.
    #[serde(default)]
    pub position: u32,
    /// No longer used.
    #[serde(default)]
    pub retired: bool,
}

/// A tray. Cells are numbered from 0, row by row.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct TrayDescribed {
    /// Which tray.
    pub tray: TrayId,
    /// Short code for its label.
    pub code: String,
    /// What it is.
    pub container: Container,
    /// Rows of cells, at least 1.
    pub rows: u16,
    /// Columns of cells, at least 1.
    pub columns: u16,
    /// What it is filled with.
    pub compost: Compost,
}

/// A tray came to a place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct TrayMoved {
    /// The tray.
    pub tray: TrayId,
    /// Where it stands from now on.
    pub place: PlaceId,
}

/// A cover on or off.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct CoverChanged {
    /// The tray.
    pub tray: TrayId,
    /// Whether it is covered from now on.
    pub on: bool,
}

/// About one tray.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct OfTray {
    /// The tray.
    pub tray: TrayId,
}

/// About some plants.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct OfPlants {
    /// The plants.
    pub of: Plants,
}

/// About one sowing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct OfSowing {
    /// The sowing.
    pub sowing: SowingId,
}

/// How many seeds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "as", content = "number", rename_all = "snake_case")]
pub enum Seeds {
    /// Counted.
    Exact(u32),
    /// About so many.
    About(u32),
    /// A pinch: nobody counted.
    Pinch,
}

/// Seeds were sown.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Sown {
    /// The sowing.
    pub sowing: SowingId,
    /// Its packet.
    pub packet: PacketId,
    /// Its tray.
    pub tray: TrayId,
    /// Its cells.
    pub cells: BTreeSet<u16>,
    /// How many seeds.
    pub seeds: Seeds,
    /// How deep, mm.
    #[serde(default)]
    pub depth_mm: Option<f64>,
    /// How many plants are wanted of it.
    #[serde(default)]
    pub wanted: Option<u32>,
    /// The sowing it repeats or stands beside.
    #[serde(default)]
    pub again_of: Option<SowingId>,
    /// What was done to the seed before.
    #[serde(default, skip_serializing_if = "Treatment::is_none")]
    pub treatment: Treatment,
    /// The plan that it answers.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub plan: Option<PlanId>,
}

/// Plants without seed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct BatchStarted {
    /// The batch.
    pub batch: BatchId,
    /// What it began as.
    pub origin: Origin,
    /// Key of the crop in the crop book, or the grower's own word.
    pub crop: String,
    /// Variety.
    #[serde(default)]
    pub variety: String,
    /// Its tray.
    pub tray: TrayId,
    /// Its cells.
    pub cells: BTreeSet<u16>,
    /// How many.
    pub number: u32,
}

/// The compost felt, the tray watered, or both.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Felt {
    /// The tray.
    pub tray: TrayId,
    /// How it felt, unless it was only watered.
    #[serde(default)]
    pub feel: Option<Feel>,
    /// How it was watered, if it was.
    #[serde(default)]
    pub water: Option<Watering>,
}

/// A thermometer reading.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ReadingTaken {
    /// The place.
    pub place: PlaceId,
    /// What the thermometer was in.
    pub of: Medium,
    /// What it showed.
    pub shown: Shown,
}

/// What a thermometer showed, °C.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "as", rename_all = "snake_case")]
pub enum Shown {
    /// Lowest and highest since the last reading.
    LowHigh {
        /// Lowest, °C.
        min_c: f64,
        /// Highest, °C.
        max_c: f64,
    },
    /// The temperature at that moment.
    Now {
        /// °C.
        temperature_c: f64,
    },
}

/// The heat of a place was off, from and to, local time of the garden.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct HeatOff {
    /// The place.
    pub place: PlaceId,
    /// From.
    pub from: NaiveDateTime,
    /// To, if it is known.
    #[serde(default)]
    pub to: Option<NaiveDateTime>,
    /// The temperatures meanwhile, if known.
    #[serde(default)]
    pub meanwhile: Option<RangeC>,
}

/// How many are up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "as", content = "number", rename_all = "snake_case")]
pub enum Up {
    /// So many living plants are there now.
    Number(u32),
    /// A few: counted as 20 % of the seeds.
    Few,
    /// Half: counted as 50 % of the seeds.
    Half,
    /// Nearly all: counted as 90 % of the seeds.
    NearlyAll,
}

/// A count of what lives and is still where it was.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Counted {
    /// Of which plants.
    pub of: Plants,
    /// How many.
    pub up: Up,
}

/// Plants went on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct WentOn {
    /// From where.
    pub of: Plants,
    /// How.
    pub step: Step,
    /// Into what; at least one part.
    pub parts: Vec<Part>,
}

/// A new batch.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Part {
    /// The batch.
    pub batch: BatchId,
    /// Its tray.
    pub tray: TrayId,
    /// Its cells.
    pub cells: BTreeSet<u16>,
    /// How many plants.
    pub number: u32,
}

/// How plants left.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(tag = "by", content = "cause", rename_all = "snake_case")]
pub enum Leaving {
    /// Thinned out.
    Thinned,
    /// Lost, and why.
    Lost(LossCause),
    /// Planted out.
    PlantedOut,
    /// Sold.
    Sold,
    /// Given away.
    GivenAway,
}

/// Plants left.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Left {
    /// Which plants.
    pub of: Plants,
    /// How many.
    pub number: u32,
    /// How.
    pub how: Leaving,
    /// Handed over to whom they were kept for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reservation: Option<ReservationId>,
}

/// Seeds dug up from those not up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct DugUp {
    /// The sowing.
    pub sowing: SowingId,
    /// Firm ones.
    pub firm: u32,
    /// Soft or empty ones.
    pub soft: u32,
}

/// A note.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Noted {
    /// About what.
    pub about: Subject,
    /// The words, as they were typed.
    pub text: String,
}

/// A photo.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PhotoTaken {
    /// SHA-256 of the file, 64 hexadecimal digits.
    pub photo: String,
    /// When the camera says it was taken, local time by the camera's clock.
    #[serde(default)]
    pub taken: Option<NaiveDateTime>,
    /// About what, unless it is to be named later.
    #[serde(default)]
    pub about: Option<Subject>,
}

/// A photo found its subject.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PhotoNamed {
    /// The entry of the photo.
    pub taken: EntryId,
    /// About what.
    pub about: Subject,
}

/// Which job: its kind, its subject and the entry that opened the need.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct JobKey {
    /// Kind, as `app` names it.
    pub kind: String,
    /// Subject.
    pub subject: Subject,
    /// The entry that opened the need.
    pub opened_by: EntryId,
}

/// A job was put off.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct JobPutOff {
    /// Which job.
    pub job: JobKey,
    /// Not before this, local time of the garden.
    pub until: NaiveDateTime,
}

/// A job was dismissed: not again for this need.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct JobDismissed {
    /// Which job.
    pub job: JobKey,
}

/// A correction (content), a withdrawal (none) or a bringing back of an entry.
/// It always names the root entry; of several the greatest by (lamport,
/// device, seq) holds.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Amended {
    /// The root entry.
    pub root: EntryId,
    /// What holds instead; none withdraws it.
    pub content: Option<Box<Content>>,
    /// When it truly happened, if that is what is corrected.
    #[serde(default)]
    pub happened: Option<crate::stamp::Happened>,
}

//! What the entries about one thing add up to. Each state is
//! `fold(the entries that touch it)` and can be thrown away and made again.

mod plan;
mod seed;

pub use plan::{PlanSown, PlanState, ReservationState};
pub use seed::{ItemState, PacketState, PacketTest, SeedsAt, StockAt, TestCount, TestState};

use crate::content::{
    FrostReckoned, GardenDescribed, JobKey, Leaving, Part, PlaceDescribed, RangeC, Seeds, Shown,
    Sown, TrayDescribed,
};
use crate::id::{BatchId, EntryId, PacketId, PlaceId, TrayId};
use crate::stamp::Happened;
use crate::subject::Plants;
use crate::words::{Blame, Feel, LossCause, Medium, Origin, Shelter, Sight, Step, Watering};
use chrono::{NaiveDate, NaiveDateTime};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// Seeds in a pinch, for reading "half are up" as a number. Judgement.
pub const PINCH_SEEDS: u32 = 30;

/// When something happened and which entry says so.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(from = "KeptMark", into = "KeptMark")]
pub struct Mark {
    /// The entry.
    pub entry: EntryId,
    /// When.
    pub at: Happened,
}

/// A mark as a state keeps it: a state is mostly marks, so their parts go
/// without names.
type KeptMark = (EntryId, NaiveDateTime, i32, String);

impl From<KeptMark> for Mark {
    fn from((entry, local, offset_min, zone): KeptMark) -> Self {
        let at = Happened {
            local,
            offset_min,
            zone,
        };
        Self { entry, at }
    }
}

impl From<Mark> for KeptMark {
    fn from(mark: Mark) -> Self {
        (mark.entry, mark.at.local, mark.at.offset_min, mark.at.zone)
    }
}

/// Something that merged or withdrawn entries left odd; shown, never refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Problem {
    /// More plants left than there were.
    MoreLeftThanThere,
    /// Cells that lie outside the tray or hold two things at once.
    CellsTwice,
    /// It was never described: its first entry is missing or withdrawn.
    NeverDescribed,
    /// Entries after it was finished.
    AfterTheEnd,
}

/// The garden.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct GardenState {
    /// What is true of the growing, once it was said.
    pub described: Option<GardenDescribed>,
    /// Times away.
    pub away: Vec<AwayAt>,
    /// When frosts come, from a record.
    pub frost: Option<FrostReckoned>,
    /// How cold nights were to be: the last few said.
    pub nights: Vec<NightAt>,
    /// Jobs put off, the last word for each.
    pub put_off: Vec<PutOff>,
    /// Jobs dismissed.
    pub dismissed: BTreeSet<JobKey>,
}

/// A job put off until a local time of the garden.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PutOff {
    /// Which job.
    pub job: JobKey,
    /// Until when.
    pub until: NaiveDateTime,
}

/// A place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PlaceState {
    /// Its attributes.
    pub described: PlaceDescribed,
    /// The entry that first described it.
    pub opened_by: Mark,
    /// Stretches without heat, by start.
    pub heat_off: Vec<Unheated>,
    /// When its lid was last opened on a sunny day.
    pub aired: Option<Mark>,
}

/// A stretch without heat.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Unheated {
    /// From, local.
    pub from: NaiveDateTime,
    /// To, local; none: still.
    pub to: Option<NaiveDateTime>,
    /// Temperatures meanwhile.
    pub meanwhile: Option<RangeC>,
    /// Which entry says so.
    pub entry: EntryId,
}

/// A reading, a row of its own.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Reading {
    /// The place.
    pub place: PlaceId,
    /// Which entry, and when.
    pub mark: Mark,
    /// Of what.
    pub of: Medium,
    /// What it showed.
    pub shown: Shown,
}

/// A tray.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct TrayState {
    /// Its attributes.
    pub described: TrayDescribed,
    /// The entry that first described it.
    pub opened_by: Mark,
    /// Where it stood, by time; the last is where it stands.
    pub stays: Vec<Stay>,
    /// Covers on and off, by time.
    pub covers: Vec<Cover>,
    /// Feeling and watering, by time.
    pub felt: Vec<FeltAt>,
    /// Feeds, by time.
    pub fed: Vec<Mark>,
    /// Days put out to harden off, by time.
    pub hardened: Vec<Mark>,
    /// Nights for which it was sheltered, by time.
    pub sheltered: Vec<ShelteredAt>,
    /// What was sown or set in it, by time; whether it lives is its own state.
    pub occupants: Vec<Occupant>,
    /// When it was emptied.
    pub emptied: Option<Mark>,
    /// What is odd about it.
    pub problems: BTreeSet<Problem>,
}

/// Days away, as they came to be.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct AwayAt {
    /// Which entry said so first.
    pub entry: EntryId,
    /// First day away.
    pub from: NaiveDate,
    /// Last day away; before `from` where the grower did not go.
    pub to: NaiveDate,
    /// Until the grower says so: `to` is only the latest.
    pub open: bool,
}

/// How cold a night is to be.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct NightAt {
    /// Which entry says so, and when.
    pub mark: Mark,
    /// The day on whose evening the night begins.
    pub night: NaiveDate,
    /// In a place; none: outdoors.
    pub place: Option<PlaceId>,
    /// Lowest expected, °C.
    pub low_c: f64,
}

/// Sheltered for a night.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ShelteredAt {
    /// When.
    pub at: Mark,
    /// How.
    pub how: Shelter,
}

/// A dated stay in a place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Stay {
    /// The place.
    pub place: PlaceId,
    /// Since when.
    pub since: Mark,
}

/// A cover on or off.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Cover {
    /// Covered from then on.
    pub on: bool,
    /// When.
    pub at: Mark,
}

/// Felt or watered.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct FeltAt {
    /// When.
    pub at: Mark,
    /// How it felt.
    pub feel: Option<Feel>,
    /// How it was watered.
    pub water: Option<Watering>,
}

/// What stands in some cells of a tray.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Occupant {
    /// The plants.
    pub plants: Plants,
    /// Their cells.
    pub cells: BTreeSet<u16>,
}

/// How many are where. Always in balance:
/// `up = gone_on + thinned + lost + missing + planted_out + sold + given_away + there`.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Numbers {
    /// All that ever came up, or were set in.
    pub up: u32,
    /// Went on as other batches.
    pub gone_on: u32,
    /// Thinned out.
    pub thinned: u32,
    /// Lost, with a cause said.
    pub lost: u32,
    /// Gone between two counts, nobody said why.
    pub missing: u32,
    /// Planted out.
    pub planted_out: u32,
    /// Sold.
    pub sold: u32,
    /// Given away.
    pub given_away: u32,
    /// Still there.
    pub there: u32,
}

/// A sowing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SowingState {
    /// What was sown.
    pub sown: Sown,
    /// The entry, and when.
    pub opened_by: Mark,
    /// Counts, by time.
    pub counts: Vec<CountAt>,
    /// Seeds dug up, by time.
    pub dug: Vec<Dug>,
    /// Seeds lost before they came up, by time.
    #[serde(default)]
    pub seeds_lost: Vec<SeedsLostAt>,
    /// Why it did badly, by the grower's own judgement.
    #[serde(default)]
    pub explained: Option<Box<ExplainedAt>>,
    /// What happened to its plants.
    pub plants: PlantsState,
}

/// Seeds that were lost before they came up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SeedsLostAt {
    /// When.
    pub at: Mark,
    /// How many.
    pub number: u32,
    /// To what.
    pub cause: LossCause,
}

/// The grower's own judgement on a sowing that did badly.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ExplainedAt {
    /// When it was said.
    pub at: Mark,
    /// What was to blame.
    pub causes: BTreeSet<Blame>,
    /// In the grower's words; may be empty.
    pub text: String,
}

/// How plants looked.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SightAt {
    /// When.
    pub at: Mark,
    /// What was seen.
    pub sight: Sight,
}

/// A count as a number.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct CountAt {
    /// When.
    pub at: Mark,
    /// Living and there, as counted (few, half, nearly all as a number).
    pub there: u32,
    /// All that had ever come up by then: what is there and what had gone.
    pub ever_up: u32,
    /// Whether it was a number and not few, half or nearly all.
    pub exact: bool,
}

/// Seeds dug up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Dug {
    /// When.
    pub at: Mark,
    /// Firm ones.
    pub firm: u32,
    /// Soft ones.
    pub soft: u32,
}

/// What happened to the plants of a sowing or a batch.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct PlantsState {
    /// How many are where.
    pub numbers: Numbers,
    /// What went on, by time.
    pub went_on: Vec<WentOnAt>,
    /// What left, by time.
    pub left: Vec<LeftAt>,
    /// How they looked, by time.
    #[serde(default)]
    pub sights: Vec<SightAt>,
    /// When they were called ready.
    pub ready: Option<Mark>,
    /// When it ended: nothing came up, done with, or none left.
    pub ended: Option<Ended>,
    /// What is odd.
    pub problems: BTreeSet<Problem>,
}

/// The end of a sowing or batch.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Ended {
    /// When.
    pub at: Mark,
    /// Given up as "nothing came up".
    pub nothing_came_up: bool,
}

/// Plants that went on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct WentOnAt {
    /// When.
    pub at: Mark,
    /// How.
    pub step: Step,
    /// Into what.
    pub parts: Vec<Part>,
}

/// Plants that left.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct LeftAt {
    /// When.
    pub at: Mark,
    /// How many.
    pub number: u32,
    /// How.
    pub how: Leaving,
}

/// A batch.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct BatchState {
    /// The batch.
    pub batch: BatchId,
    /// Where it came from.
    pub parent: Parent,
    /// Its tray.
    pub tray: TrayId,
    /// Its cells.
    pub cells: BTreeSet<u16>,
    /// The entry it began with, and when.
    pub opened_by: Mark,
    /// What happened to its plants.
    pub plants: PlantsState,
}

/// Where a batch came from.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "type", rename_all = "snake_case")]
pub enum Parent {
    /// From a sowing or another batch.
    Plants {
        /// Which.
        of: Plants,
        /// How it went on.
        step: Step,
    },
    /// Without seed.
    Started {
        /// As what.
        origin: Origin,
        /// Crop key, or the grower's word.
        crop: String,
        /// Variety.
        variety: String,
    },
}

impl SowingState {
    /// Seeds sown, a pinch counted as [`PINCH_SEEDS`].
    #[must_use]
    pub fn seeds(&self) -> u32 {
        self.sown.seeds.number()
    }

    /// Seeds lost before they came up.
    #[must_use]
    pub fn seeds_lost(&self) -> u32 {
        let numbers = self.seeds_lost.iter().map(|lost| lost.number);
        numbers.fold(0, u32::saturating_add)
    }

    /// Seeds that are neither up nor found soft nor lost.
    #[must_use]
    pub fn seeds_left(&self) -> u32 {
        let soft = self.dug.iter().map(|dug| dug.soft);
        let gone = soft.fold(self.seeds_lost(), u32::saturating_add);
        self.seeds()
            .saturating_sub(self.plants.numbers.up.saturating_add(gone))
    }

    /// Its packet.
    #[must_use]
    pub fn packet(&self) -> PacketId {
        self.sown.packet
    }
}

impl Numbers {
    /// All that went from where they were: everything but what is there.
    #[must_use]
    pub fn gone(&self) -> u32 {
        self.up.saturating_sub(self.there)
    }

    /// Whether they add up.
    #[must_use]
    pub fn balance(&self) -> bool {
        let parts = [
            self.gone_on,
            self.thinned,
            self.lost,
            self.missing,
            self.planted_out,
            self.sold,
            self.given_away,
            self.there,
        ];
        parts.into_iter().map(u64::from).sum::<u64>() == u64::from(self.up)
    }
}

impl Reading {
    /// The mean of what it showed, °C.
    #[must_use]
    pub fn mean_c(&self) -> f64 {
        self.shown.mean_c()
    }
}

impl Shown {
    /// The mean of lowest and highest, or the temperature of the moment, °C.
    #[must_use]
    pub fn mean_c(&self) -> f64 {
        match self {
            Shown::LowHigh { min_c, max_c } => f64::midpoint(*min_c, *max_c),
            Shown::Now { temperature_c } => *temperature_c,
        }
    }
}

impl Seeds {
    /// As a number; a pinch counts as [`PINCH_SEEDS`].
    #[must_use]
    pub fn number(self) -> u32 {
        match self {
            Seeds::Exact(number) | Seeds::About(number) => number,
            Seeds::Pinch => PINCH_SEEDS,
        }
    }
}

//! What a grower can say: every change to the journal, as the UI sends it.

use crate::view::{
    FrostOddsForm, GardenForm, PacketForm, PlaceForm, PlanForm, PlantsRef, RangeView, TrayChoice,
    WaresForm,
};
use chrono::{NaiveDate, NaiveDateTime};
use serde::{Deserialize, Serialize};

/// An act, when and by whom.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct ActRequest {
    /// What.
    pub act: Act,
    /// When it happened, local time of the garden; none: now.
    #[serde(default)]
    pub happened: Option<NaiveDateTime>,
    /// Whose hand; empty: the device's own.
    #[serde(default)]
    pub hand: String,
    /// The questions it raises were answered with yes.
    #[serde(default)]
    pub confirmed: bool,
}

/// An act.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(
    tag = "do",
    rename_all = "snake_case",
    rename_all_fields = "snake_case"
)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum Act {
    /// Feel the compost of trays, water them, or both; one entry a tray.
    Feel {
        /// Trays.
        trays: Vec<String>,
        /// `dry`, `moist` or `wet`.
        feel: Option<String>,
        /// `below`, `rose` or `mist`.
        water: Option<String>,
    },
    /// Read the lowest and highest.
    Read {
        /// Place.
        place: String,
        /// `air` or `compost`.
        of: String,
        /// Lowest and highest since the last reading.
        range: RangeView,
    },
    /// Read the temperature of the moment.
    ReadNow {
        /// Place.
        place: String,
        /// `air` or `compost`.
        of: String,
        /// °C.
        temperature_c: f64,
    },
    /// The heat of a place was off.
    HeatOff {
        /// Place.
        place: String,
        /// From.
        from: NaiveDateTime,
        /// To; none: still.
        to: Option<NaiveDateTime>,
        /// Temperatures meanwhile.
        meanwhile: Option<RangeView>,
    },
    /// The heat of a place came back.
    HeatBack {
        /// Place.
        place: String,
        /// When.
        at: NaiveDateTime,
        /// Temperatures meanwhile.
        meanwhile: Option<RangeView>,
    },
    /// Count what is up or alive.
    Count {
        /// Of which plants.
        plants: PlantsRef,
        /// How many.
        up: UpAnswer,
    },
    /// Move trays to a place.
    Move {
        /// Trays.
        trays: Vec<String>,
        /// Place.
        place: String,
    },
    /// Cover on or off.
    Cover {
        /// Tray.
        tray: String,
        /// On.
        on: bool,
    },
    /// Plants left.
    Leave {
        /// Which.
        plants: PlantsRef,
        /// How many.
        number: u32,
        /// `thinned`, `lost`, `planted_out`, `sold` or `given_away`.
        how: String,
        /// For `lost`: `eaten`, `damped_off`, `frosted`, `baked`,
        /// `dried_out`, `spilt` or `unknown`.
        cause: Option<String>,
    },
    /// Plants go on into other trays.
    GoOn {
        /// Which.
        plants: PlantsRef,
        /// `cut_apart`, `sown_on`, `pricked_out` or `potted_on`.
        step: String,
        /// Into what.
        parts: Vec<PartAnswer>,
        /// The rest is done with.
        rest_finished: bool,
    },
    /// Feed a tray.
    Feed {
        /// Tray.
        tray: String,
    },
    /// A tray was put out for the day.
    HardenOff {
        /// Tray.
        tray: String,
    },
    /// Plants are ready.
    Ready {
        /// Which.
        plants: PlantsRef,
    },
    /// Seeds were dug up.
    DigUp {
        /// Sowing.
        sowing: String,
        /// Firm ones.
        firm: u32,
        /// Soft ones.
        soft: u32,
    },
    /// Seeds were lost before they came up.
    SeedsLost {
        /// Sowing.
        sowing: String,
        /// How many.
        number: u32,
        /// As for `lost`.
        cause: String,
    },
    /// Why a sowing did badly, as the grower sees it; nothing said takes it
    /// back.
    Explain {
        /// Sowing.
        sowing: String,
        /// Causes, as `too_cold` or `eaten`; `other` where the words say it.
        causes: Vec<String>,
        /// In the grower's words; may be empty.
        text: String,
    },
    /// How plants look.
    Notice {
        /// Which.
        plants: PlantsRef,
        /// `leggy`, `sturdy`, `pale_leaves` or `true_leaves`.
        sight: String,
    },
    /// Nothing came up.
    NothingCameUp {
        /// Sowing.
        sowing: String,
    },
    /// Plants are done with.
    Finish {
        /// Which.
        plants: PlantsRef,
    },
    /// A tray is emptied, and all that is in it done with.
    Empty {
        /// Tray.
        tray: String,
    },
    /// A note about a tray, plants, a packet or a place.
    Note {
        /// Subject, as `tray:…`, `sowing:…`, `batch:…`, `packet:…`, `place:…`.
        about: String,
        /// Words.
        text: String,
    },
    /// Say what a photo is of that was taken without saying so.
    NamePhoto {
        /// The entry that took it in.
        photo: String,
        /// Subject, as for a note.
        about: String,
    },
    /// Put a job off.
    PutOff {
        /// Its key.
        job: String,
        /// Until when.
        until: Until,
    },
    /// Not this job again for this need.
    Dismiss {
        /// Its key.
        job: String,
    },
    /// Add a packet.
    AddPacket {
        /// What it says.
        packet: PacketForm,
    },
    /// Describe a packet anew.
    DescribePacket {
        /// Which.
        id: String,
        /// What it says.
        packet: PacketForm,
        /// No longer used.
        retired: bool,
    },
    /// The seeds left in a packet were counted.
    CountSeeds {
        /// Packet.
        packet: String,
        /// Left.
        left: u32,
    },
    /// A packet was gone through at the stocktake; used up and given away take
    /// it out of use.
    TakeStock {
        /// Packet.
        packet: String,
        /// `keep`, `test`, `used_up` or `given_away`.
        found: String,
    },
    /// Seeds were laid on damp paper.
    StartTest {
        /// Packet.
        packet: String,
        /// How many.
        seeds: u32,
    },
    /// The sprouted seeds of a test were counted.
    CountTest {
        /// Test.
        test: String,
        /// All that have sprouted.
        sprouted: u32,
    },
    /// A test was closed.
    CloseTest {
        /// Test.
        test: String,
        /// All that sprouted.
        sprouted: u32,
    },
    /// Something is to be bought.
    WantToBuy {
        /// Crop key or own word.
        crop: String,
        /// Variety.
        variety: String,
        /// How much, where from.
        note: String,
    },
    /// How it stands with something to buy.
    SetToBuy {
        /// Item.
        item: String,
        /// `wanted`, `bought` or `dropped`.
        standing: String,
    },
    /// Make a plan (no id) or describe one anew.
    Plan {
        /// Which.
        id: Option<String>,
        /// What it says.
        plan: PlanForm,
    },
    /// A plan is over, or given up.
    EndPlan {
        /// Which.
        plan: String,
    },
    /// Plants are kept for somebody.
    Reserve {
        /// Of what.
        of: WaresForm,
        /// How many.
        number: u32,
        /// For whom; may be empty.
        note: String,
    },
    /// They are no longer kept.
    Release {
        /// Reservation.
        reservation: String,
    },
    /// Ready plants of a crop leave, the first that were ready first; of a
    /// reservation, those that are kept.
    HandOver {
        /// Crop key or own word.
        crop: String,
        /// How many.
        number: u32,
        /// `sold`, `given_away` or `planted_out`.
        how: String,
        /// Reservation.
        reservation: Option<String>,
    },
    /// Add a place (no id) or describe one anew.
    DescribePlace {
        /// The place.
        place: PlaceForm,
    },
    /// Put places into walking order.
    OrderPlaces {
        /// All places in use, in the order of the walk.
        places: Vec<String>,
    },
    /// Say what is true of the growing.
    DescribeGarden {
        /// The garden.
        garden: GardenForm,
    },
    /// The grower will be away.
    Away {
        /// First day.
        from: NaiveDate,
        /// Last day; none: until the grower says so.
        to: Option<NaiveDate>,
    },
    /// The grower is back.
    CameBack {
        /// The first day back.
        on: NaiveDate,
    },
    /// How cold a night is to be.
    NightLow {
        /// The day on whose evening the night begins.
        night: NaiveDate,
        /// In a place; none: outdoors.
        place: Option<String>,
        /// Lowest expected, °C.
        low_c: f64,
    },
    /// Trays are sheltered for the night; one entry a tray.
    Shelter {
        /// Trays.
        trays: Vec<String>,
        /// `brought_in` or `fleece`.
        how: String,
    },
    /// The lid of a place was opened on a sunny day.
    Air {
        /// Place.
        place: String,
    },
    /// When frosts come, from a record.
    FrostOdds {
        /// As the preview of the record gives it.
        odds: FrostOddsForm,
    },
    /// Sow.
    Sow {
        /// Packet.
        packet: String,
        /// Into what.
        into: TrayChoice,
        /// Cells; empty: all that are free.
        cells: Vec<u16>,
        /// How many seeds.
        seeds: SeedsAnswer,
        /// Depth, mm.
        depth_mm: Option<f64>,
        /// Plants wanted.
        wanted: Option<u32>,
        /// The sowing it repeats or stands beside.
        again_of: Option<String>,
        /// What was done to the seed before, and what it goes through first.
        #[serde(default)]
        treatment: TreatmentForm,
        /// The plan that it answers.
        #[serde(default)]
        plan: Option<String>,
    },
    /// Start cuttings, tubers, bulbs or plugs.
    StartBatch {
        /// `cuttings`, `tubers`, `bulbs` or `plugs`.
        origin: String,
        /// Crop key or own word.
        crop: String,
        /// Variety.
        variety: String,
        /// Into what.
        into: TrayChoice,
        /// Cells; empty: all that are free.
        cells: Vec<u16>,
        /// How many.
        number: u32,
    },
}

/// What is done to seed before it is sown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct TreatmentForm {
    /// Soaked, hours.
    #[serde(default)]
    pub soaked_hours: Option<f64>,
    /// The seed coat was nicked or rubbed.
    #[serde(default)]
    pub chipped: bool,
    /// So many weeks in the cold from now, then warm.
    #[serde(default)]
    pub cold_weeks: Option<u32>,
}

/// How many are up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "as", content = "number", rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum UpAnswer {
    /// So many.
    Number(u32),
    /// A few.
    Few,
    /// Half.
    Half,
    /// Nearly all.
    NearlyAll,
}

/// How many seeds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "as", content = "number", rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum SeedsAnswer {
    /// Counted.
    Exact(u32),
    /// About so many.
    About(u32),
    /// A pinch.
    Pinch,
}

/// Part of a going on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PartAnswer {
    /// Into what.
    pub into: TrayChoice,
    /// Cells; empty: as many of the free ones as there are plants, or all.
    pub cells: Vec<u16>,
    /// How many plants.
    pub number: u32,
}

/// Until when a job is put off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "as", content = "day", rename_all = "snake_case")]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub enum Until {
    /// The next round.
    NextRound,
    /// Tomorrow's first round.
    Tomorrow,
    /// The first round of a day.
    Day(NaiveDate),
}

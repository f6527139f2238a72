//! Settings: what is true of the growing, and habits of the device.

use super::RangeView;
use crate::say::Say;
use chrono::{NaiveDate, NaiveDateTime};
use serde::{Deserialize, Serialize};

/// The settings screen.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct SettingsView {
    /// Of the growing: entries.
    pub garden: GardenForm,
    /// When frosts come, in words, where a record was brought.
    pub frost: Option<Say>,
    /// Days away that are not over.
    pub away: Vec<AwayView>,
    /// Places in walking order, retired ones last.
    pub places: Vec<PlaceForm>,
    /// Of this device.
    pub device: DeviceForm,
    /// Whether this is the demo journal.
    pub demo: bool,
    /// Entries in the journal.
    pub entries: u32,
}

/// Days away.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct AwayView {
    /// First day away.
    pub from: NaiveDate,
    /// Last day away; none: until the grower says so.
    pub to: Option<NaiveDate>,
    /// Away today.
    pub now: bool,
}

/// What is true of the growing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct GardenForm {
    /// IANA zone.
    pub zone: String,
    /// Degrees north.
    pub latitude: Option<f64>,
    /// `MM-DD`.
    pub last_frost: Option<String>,
    /// `MM-DD`.
    pub first_frost: Option<String>,
    /// `HH:MM`.
    pub morning: String,
    /// `HH:MM`.
    pub evening: String,
}

/// When frosts come, from a record.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FrostOddsForm {
    /// A frost is a minimum at or under this, °C.
    pub threshold_c: f64,
    /// First day of the record.
    pub first_day: NaiveDate,
    /// Last day of the record.
    pub last_day: NaiveDate,
    /// The last frosts of spring.
    pub spring: Option<FrostSpreadForm>,
    /// The first frosts of autumn.
    pub autumn: Option<FrostSpreadForm>,
}

/// When frosts come in one half of the year.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct FrostSpreadForm {
    /// Mean day, counted from 15 July.
    pub mean_day: f64,
    /// Sample standard deviation, days.
    pub deviation_days: f64,
    /// Half-years with a frost and a full record.
    pub years: u32,
    /// Half-years with a full record.
    pub full_years: u32,
}

/// A place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct PlaceForm {
    /// Id; none for a new one.
    pub id: Option<String>,
    /// Name.
    pub name: String,
    /// Kind of place.
    pub kind: String,
    /// Usual temperatures.
    pub usual: RangeView,
    /// The same with the heat off.
    pub unheated: Option<RangeView>,
    /// Light.
    pub light: String,
    /// Covered.
    pub covered: bool,
    /// Turn in the walk.
    pub position: u32,
    /// No longer used.
    pub retired: bool,
}

/// Habits of this device: never merged into another's.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
// What an older version kept lacks what came since.
#[serde(default)]
pub struct DeviceForm {
    /// `system`, or a language's tag: `en-GB`, `en-US`, `de`.
    pub language: String,
    /// `celsius` or `fahrenheit`.
    pub temperature: String,
    /// `mm` or `inch`.
    pub length: String,
    /// `h24` or `h12`: the hours of a day's clock.
    pub clock: String,
    /// `system`, `light`, `dark` or `bright`: most contrast, for full sun.
    pub theme: String,
    /// `right` or `left`.
    pub hand: String,
    /// Quiet hours `HH:MM`, start inclusive, end exclusive; equal means none.
    pub quiet_from: String,
    /// End of the quiet hours.
    pub quiet_to: String,
    /// Notices wanted.
    pub notices: bool,
    /// Kept running when the window is closed, so that notices come.
    #[serde(default)]
    pub stay: bool,
    /// Helper's initials for what is written here; may be empty.
    pub initials: String,
}

/// How notices stand on this device.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct NoticesView {
    /// Wanted here, by the habits.
    pub wanted: bool,
    /// `granted`, `refused`, `ask` (not asked yet) or `nobody` (nothing here
    /// shows notices).
    pub permission: String,
    /// The system saves the battery by holding this app back.
    pub held_back: bool,
    /// `linux`, `windows`, `macos`, `android` or `ios`: where it is changed.
    pub system: String,
    /// Whether the app starts at login; none where that is not offered.
    pub at_login: Option<bool>,
}

/// The next notice, if one comes within two weeks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct NextNoticeView {
    /// Local time of the garden.
    pub at: NaiveDateTime,
    /// What it will say; a line a place.
    pub says: String,
}

/// How the app stands at start.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export, export_to = "types.ts"))]
pub struct StartView {
    /// `choose` (first start: empty or demo), `own`, `demo`, or what keeps the
    /// own one from being opened: `damaged`.
    pub journal: String,
    /// It was written by a newer version and can only be read.
    pub read_only: bool,
    /// What was found, where it cannot be opened.
    pub trouble: Option<super::Coded>,
    /// Habits of this device.
    pub device: DeviceForm,
    /// The language that suits the system's, by its tag.
    pub language: String,
    /// Zone of the device, to begin a garden with.
    pub zone: String,
}

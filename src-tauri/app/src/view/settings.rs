//! Settings: what is true of the growing, and habits of the device.

use super::RangeView;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The settings screen.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export, export_to = "types.ts")]
pub struct SettingsView {
    /// Of the growing: entries.
    pub garden: GardenForm,
    /// Places in walking order, retired ones last.
    pub places: Vec<PlaceForm>,
    /// Of this device.
    pub device: DeviceForm,
    /// Whether this is the demo journal.
    pub demo: bool,
    /// Entries in the journal.
    pub entries: u32,
}

/// What is true of the growing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[ts(export, export_to = "types.ts")]
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

/// A place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[ts(export, export_to = "types.ts")]
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
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[ts(export, export_to = "types.ts")]
pub struct DeviceForm {
    /// `celsius` or `fahrenheit`.
    pub temperature: String,
    /// `mm` or `inch`.
    pub length: String,
    /// `system`, `light` or `dark`.
    pub theme: String,
    /// `right` or `left`.
    pub hand: String,
    /// Quiet hours `HH:MM`, start inclusive, end exclusive; equal means none.
    pub quiet_from: String,
    /// End of the quiet hours.
    pub quiet_to: String,
    /// Notices wanted.
    pub notices: bool,
    /// Helper's initials for what is written here; may be empty.
    pub initials: String,
}

/// How the app stands at start.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export, export_to = "types.ts")]
pub struct StartView {
    /// `choose` (first start: empty or demo), `own` or `demo`.
    pub journal: String,
    /// Habits of this device.
    pub device: DeviceForm,
    /// Zone of the device, to begin a garden with.
    pub zone: String,
}

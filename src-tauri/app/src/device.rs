//! Habits of this device: never part of the journal.

use crate::act::time;
use crate::error::AppError;
use crate::notices::Notice;
use crate::view::DeviceForm;
use plumule_journal::{Device, HABITS};

/// Where it is kept which notices the system was handed.
const HANDED_OVER: &str = "notices";

/// Longest initials, in characters.
const INITIALS: usize = 12;

impl Default for DeviceForm {
    fn default() -> Self {
        let text = str::to_owned;
        Self {
            temperature: text("celsius"),
            length: text("mm"),
            theme: text("system"),
            hand: text("right"),
            quiet_from: text("22:00"),
            quiet_to: text("07:00"),
            notices: true,
            stay: false,
            initials: String::new(),
        }
    }
}

/// As kept, else as a new device has them.
pub(crate) fn load(device: &Device) -> Result<DeviceForm, AppError> {
    Ok(device
        .get(HABITS)?
        .and_then(|text| serde_json::from_str(&text).ok())
        // They may have come with somebody's archive.
        .and_then(|form| checked(&form).ok())
        .unwrap_or_default())
}

pub(crate) fn save(device: &Device, form: &DeviceForm) -> Result<(), AppError> {
    let form = checked(form)?;
    let text = serde_json::to_string(&form).map_err(|_| AppError::plain("bad_habit"))?;
    device.set(HABITS, &text)?;
    Ok(())
}

/// The notices that the system was handed and has not been asked to drop.
pub(crate) fn handed_over(device: &Device) -> Result<Vec<Notice>, AppError> {
    Ok(device
        .get(HANDED_OVER)?
        .and_then(|text| serde_json::from_str(&text).ok())
        .unwrap_or_default())
}

pub(crate) fn hand_over(device: &Device, notices: &[Notice]) -> Result<(), AppError> {
    let text = serde_json::to_string(notices).map_err(|_| AppError::plain("unexpected"))?;
    device.set(HANDED_OVER, &text)?;
    Ok(())
}

fn checked(form: &DeviceForm) -> Result<DeviceForm, AppError> {
    for (word, set) in [
        (&form.temperature, &["celsius", "fahrenheit"][..]),
        (&form.length, &["mm", "inch"]),
        (&form.theme, &["system", "light", "dark", "bright"]),
        (&form.hand, &["right", "left"]),
    ] {
        if !set.contains(&word.as_str()) {
            return Err(AppError::of_text("bad_habit", word));
        }
    }
    for quiet in [&form.quiet_from, &form.quiet_to] {
        time(quiet)?;
    }
    let initials = form.initials.trim();
    if initials.chars().count() > INITIALS {
        return Err(AppError::of_text("initials_too_long", initials));
    }
    Ok(DeviceForm {
        initials: initials.to_owned(),
        ..form.clone()
    })
}

//! Habits of this device: never part of the journal.

use crate::act::time;
use crate::error::AppError;
use crate::notices::Notice;
use crate::view::DeviceForm;
use crate::words::Language;
use plumule_journal::{Device, HABITS};

/// Where it is kept which notices the system was handed.
const HANDED_OVER: &str = "notices";

/// To speak as the system does.
const SYSTEM: &str = "system";

/// Longest initials, in characters.
const INITIALS: usize = 12;

impl Default for DeviceForm {
    fn default() -> Self {
        let text = str::to_owned;
        Self {
            language: text(SYSTEM),
            temperature: text("celsius"),
            length: text("mm"),
            clock: text("h24"),
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

impl DeviceForm {
    /// As a new device has them whose system speaks a language.
    #[must_use]
    pub fn new_in(language: Language) -> Self {
        let usual = Self::default();
        match language {
            Language::EnUs => Self {
                temperature: "fahrenheit".to_owned(),
                length: "inch".to_owned(),
                clock: "h12".to_owned(),
                ..usual
            },
            Language::EnGb | Language::De => usual,
        }
    }
}

/// As kept, else as a new device has them whose system speaks this.
pub(crate) fn load(device: &Device, system: Language) -> Result<DeviceForm, AppError> {
    Ok(device
        .get(HABITS)?
        .and_then(|text| serde_json::from_str(&text).ok())
        // They may have come with somebody's archive.
        .and_then(|form| checked(&form).ok())
        .unwrap_or_else(|| DeviceForm::new_in(system)))
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
    if form.language != SYSTEM && Language::of_tag(&form.language).is_none() {
        return Err(AppError::of_text("bad_habit", &form.language));
    }
    for (word, set) in [
        (&form.temperature, &["celsius", "fahrenheit"][..]),
        (&form.length, &["mm", "inch"]),
        (&form.clock, &["h24", "h12"]),
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

#[cfg(test)]
mod tests {
    use super::*;
    use plumule_journal::stamp::Stamp;

    fn device(home: &std::path::Path) -> Device {
        let stamp = Stamp {
            now: chrono::DateTime::UNIX_EPOCH,
            zone: chrono_tz::UTC,
            entropy: [1; 16],
        };
        Device::open(home, &stamp).unwrap()
    }

    #[test]
    fn a_new_device_measures_as_its_language_does_and_an_old_one_as_it_did() {
        let home = tempfile::tempdir().unwrap();
        let device = device(home.path());
        let american = load(&device, Language::EnUs).unwrap();
        let measures = |form: &DeviceForm| {
            let all = [&form.language, &form.temperature, &form.length, &form.clock];
            all.map(String::clone)
        };
        assert_eq!(measures(&american), ["system", "fahrenheit", "inch", "h12"]);
        for other in [Language::EnGb, Language::De] {
            let form = load(&device, other).unwrap();
            assert_eq!(measures(&form), ["system", "celsius", "mm", "h24"]);
        }
        // As a version without languages kept them.
        device.set(HABITS, r#"{"temperature":"celsius"}"#).unwrap();
        let old = load(&device, Language::EnUs).unwrap();
        assert_eq!(measures(&old), ["system", "celsius", "mm", "h24"]);
    }

    #[test]
    fn an_unknown_language_or_clock_is_refused() {
        for form in [
            DeviceForm {
                language: "xx".to_owned(),
                ..DeviceForm::default()
            },
            DeviceForm {
                clock: "h13".to_owned(),
                ..DeviceForm::default()
            },
        ] {
            assert_eq!(checked(&form).unwrap_err().code, "bad_habit");
        }
    }
}

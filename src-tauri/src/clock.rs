//! The one place that reads the clock, the zone, the system's language and
//! chance.

use chrono::{DateTime, Utc};
use chrono_tz::Tz;
use plumule_app::words::Language;
use plumule_journal::stamp::Stamp;
use std::time::{Duration, SystemTime};

/// Now, the zone of the device, and fresh entropy; read anew at every call.
///
/// A device that does not know its zone is taken to be on UTC.
///
/// # Errors
/// If the system gives no random bytes.
pub fn stamp() -> Result<Stamp, getrandom::Error> {
    let (now, zone) = read();
    let mut entropy = [0; 16];
    getrandom::fill(&mut entropy)?;
    Ok(Stamp { now, zone, entropy })
}

/// Now and the zone of the device.
#[must_use]
pub fn read() -> (DateTime<Utc>, Tz) {
    #[cfg(feature = "test-hooks")]
    if let Some(set) = hook::read() {
        return set;
    }
    let zone = iana_time_zone::get_timezone()
        .ok()
        .and_then(|name| name.parse().ok())
        .unwrap_or(Tz::UTC);
    (SystemTime::now().into(), zone)
}

/// The language that suits the system's; British English where it says none.
#[must_use]
pub fn language() -> Language {
    let system = sys_locale::get_locale();
    Language::suiting(system.as_deref().unwrap_or_default())
}

/// The longest time to sleep without looking at the clock: a device that was
/// asleep, or whose clock or zone was set, is noticed within it.
#[must_use]
pub fn longest_sleep() -> Duration {
    #[cfg(feature = "test-hooks")]
    if hook::read().is_some() {
        return Duration::from_millis(100);
    }
    Duration::from_secs(30)
}

/// The clock of a test: a file whose first line is an instant (RFC 3339) and
/// whose second is an IANA zone. It is replaced whole to move time on.
#[cfg(feature = "test-hooks")]
mod hook {
    use super::{DateTime, Tz, Utc};

    pub fn read() -> Option<(DateTime<Utc>, Tz)> {
        let path = std::env::var_os("PLUMULE_TEST_CLOCK")?;
        let text = std::fs::read_to_string(path).ok()?;
        let mut lines = text.lines();
        let now = DateTime::parse_from_rfc3339(lines.next()?.trim()).ok()?;
        let zone = lines.next()?.trim().parse().ok()?;
        Some((now.with_timezone(&Utc), zone))
    }
}

//! What the tests of this crate share.

use crate::stamp::Stamp;
use chrono::{Duration, TimeZone, Utc};

/// Day `n` of a made-up season, at 09:00 in Berlin's summer, with entropy of
/// its own.
pub(crate) fn stamp(n: u8) -> Stamp {
    Stamp {
        now: Utc.with_ymd_and_hms(2026, 4, 1, 7, 0, 0).unwrap() + Duration::days(i64::from(n)),
        zone: chrono_tz::Europe::Berlin,
        entropy: [n; 16],
    }
}

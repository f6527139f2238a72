//! Time and chance, handed in by the shell.

use chrono::{DateTime, FixedOffset, NaiveDateTime, Offset, TimeZone, Utc};
use chrono_tz::Tz;
use serde::{Deserialize, Serialize};

/// When something happened: the local time on the spot, its offset from UTC
/// and the zone it was in. A journal's day does not move when the phone
/// travels.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Happened {
    /// Local date and time.
    pub local: NaiveDateTime,
    /// Minutes east of UTC.
    pub offset_min: i32,
    /// IANA name of the zone.
    pub zone: String,
}

impl Happened {
    /// At an instant, in a zone.
    #[must_use]
    pub fn at(instant: DateTime<Utc>, zone: Tz) -> Self {
        let local = instant.with_timezone(&zone);
        Self {
            local: local.naive_local(),
            offset_min: local.offset().fix().local_minus_utc() / 60,
            zone: zone.name().to_owned(),
        }
    }

    /// At a local time in a zone: in a gap shifted forward by it, in a fold
    /// the first.
    #[must_use]
    pub fn at_local(local: NaiveDateTime, zone: Tz) -> Self {
        Self::at(instant_of(local, zone), zone)
    }

    /// The instant, for ordering.
    #[must_use]
    pub fn instant(&self) -> DateTime<Utc> {
        let offset = chrono::Duration::minutes(i64::from(self.offset_min));
        self.local
            .checked_sub_signed(offset)
            .unwrap_or(self.local)
            .and_utc()
    }
}

/// The instant of a local time in a zone: a time in a gap is shifted forward
/// by the gap, of a repeated one the first is taken (RFC 5545, 3.3.5).
#[must_use]
pub fn instant_of(local: NaiveDateTime, zone: Tz) -> DateTime<Utc> {
    if let Some(found) = zone.from_local_datetime(&local).earliest() {
        return found.with_timezone(&Utc);
    }
    // In a gap: read the local time with the offset from before the gap.
    let day_before = local
        .checked_sub_signed(chrono::Duration::days(1))
        .unwrap_or(local);
    let before: FixedOffset = zone.offset_from_utc_datetime(&day_before).fix();
    let shift = chrono::Duration::seconds(i64::from(before.local_minus_utc()));
    local.checked_sub_signed(shift).unwrap_or(local).and_utc()
}

/// What the shell hands in with every request: now, the zone of the device,
/// and fresh entropy.
#[derive(Clone, Debug)]
pub struct Stamp {
    /// The instant.
    pub now: DateTime<Utc>,
    /// The zone of the device.
    pub zone: Tz,
    /// Fresh random bytes; all ids made under this stamp come from them.
    pub entropy: [u8; 16],
}

impl Stamp {
    /// Now as something that happens.
    #[must_use]
    pub fn happened(&self) -> Happened {
        Happened::at(self.now, self.zone)
    }
}

//! Notices that time has moved on, also over a sleep or a set clock.

use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use chrono_tz::Tz;
use std::time::Duration;

/// Between two looks at the clock it cannot have moved so far, unless the
/// device slept or the clock was set. Three times the longest sleep.
const JUMP: TimeDelta = TimeDelta::seconds(90);

/// What was last seen of the clock, and when to look again.
#[derive(Default)]
pub struct Watch {
    seen: Option<(DateTime<Utc>, Tz)>,
    wake: Option<DateTime<Utc>>,
}

impl Watch {
    /// Whether what is due may have changed since the last look: the hour that
    /// was waited for is there, a day or a zone is new, the clock jumped.
    pub fn moved_on(&mut self, now: DateTime<Utc>, zone: Tz) -> bool {
        let Some((then, zone_then)) = self.seen.replace((now, zone)) else {
            return false;
        };
        let passed = now - then;
        self.wake.is_some_and(|wake| wake <= now)
            || zone != zone_then
            || day(now, zone) != day(then, zone)
            || passed < TimeDelta::zero()
            || passed > JUMP
    }

    /// When to look again; none: when told to.
    pub fn wake_at(&mut self, wake: Option<DateTime<Utc>>) {
        self.wake = wake;
    }

    /// How long to sleep now.
    pub fn pause(&self, now: DateTime<Utc>, longest: Duration) -> Duration {
        let until = self
            .wake
            .map(|wake| (wake - now).to_std().unwrap_or_default());
        // A moment even if the hour is past already, so that a plan that asks
        // to be made again at once cannot keep the processor busy.
        until.map_or(longest, |until| {
            until.clamp(Duration::from_millis(50), longest)
        })
    }
}

fn day(at: DateTime<Utc>, zone: Tz) -> NaiveDate {
    at.with_timezone(&zone).date_naive()
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono_tz::{Europe, Pacific};

    fn at(text: &str) -> DateTime<Utc> {
        text.parse().unwrap()
    }

    fn watch(now: &str, wake: &str) -> Watch {
        let mut watch = Watch::default();
        assert!(!watch.moved_on(at(now), Europe::Berlin));
        watch.wake_at(Some(at(wake)));
        watch
    }

    #[test]
    fn nothing_moves_on_while_waiting() {
        let mut watch = watch("2026-04-18T05:00:00Z", "2026-04-18T06:00:00Z");
        assert!(!watch.moved_on(at("2026-04-18T05:00:30Z"), Europe::Berlin));
        let longest = Duration::from_secs(30);
        assert_eq!(watch.pause(at("2026-04-18T05:00:30Z"), longest), longest);
        let close = watch.pause(at("2026-04-18T05:59:50Z"), longest);
        assert_eq!(close, Duration::from_secs(10));
    }

    #[test]
    fn the_hour_waited_for_a_jump_and_a_zone_move_it_on() {
        let cases = [
            ("2026-04-18T06:00:00Z", Europe::Berlin),
            ("2026-04-18T05:02:00Z", Europe::Berlin),
            ("2026-04-18T04:59:59Z", Europe::Berlin),
            ("2026-04-18T05:00:10Z", Pacific::Auckland),
        ];
        for (now, zone) in cases {
            let mut watch = watch("2026-04-18T05:00:00Z", "2026-04-18T06:00:00Z");
            assert!(watch.moved_on(at(now), zone), "{now} {zone}");
        }
    }

    #[test]
    fn midnight_of_the_zone_moves_it_on() {
        let mut watch = watch("2026-04-18T21:59:50Z", "2026-04-19T06:00:00Z");
        assert!(watch.moved_on(at("2026-04-18T22:00:10Z"), Europe::Berlin));
    }
}

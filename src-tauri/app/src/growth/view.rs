//! A forecast as the tray's page shows it.

use super::{Growth, TENTH};
use crate::say::{Arg, Say};
use crate::view::{BandPoint, CountPoint, ForecastView};
use crate::words;
use chrono::{Days, NaiveDate};
use plumule_agronomy::average_emerged_share;
use plumule_journal::state::SowingState;

/// Days of the band after the 90 % day.
const BAND_AFTER_DAYS: u64 = 4;

/// Days of the band after today where no 90 % day is in sight.
const BAND_BLIND_DAYS: u64 = 14;

impl Growth {
    /// The forecast with its band, its words and the counts so far.
    pub(crate) fn forecast_view(&self, sowing: &SowingState, today: NaiveDate) -> ForecastView {
        ForecastView {
            due: self.due,
            say: self.say(today),
            progress: self.course.progress,
            expected: self.expected(),
            band: self.band(today),
            counts: sowing
                .counts
                .iter()
                .map(|count| CountPoint {
                    at: count.at.at.local,
                    up: count.ever_up,
                })
                .collect(),
            today,
        }
    }

    /// Seedlings expected by the end of each day.
    fn band(&self, today: NaiveDate) -> Vec<BandPoint> {
        let (from, days) = match self.due.d90 {
            Some(d90) => (d90.max(today), BAND_AFTER_DAYS),
            None => (today, BAND_BLIND_DAYS),
        };
        let last = from.checked_add_days(Days::new(days)).unwrap_or(from);
        let count = usize::try_from((last - self.sown).num_days() + 1).unwrap_or(0);
        let total = self.mean_final();
        let off = TENTH * self.time_factor.tau;
        let certain = |progress: f64, ln_s: f64| {
            total * average_emerged_share(progress, ln_s, 0.0, self.crop.sigma)
        };
        let mut progress = 0.0;
        let mut gained = 0.0;
        let mut by_day = self.course.by_day.iter();
        self.sown
            .iter_days()
            .take(count)
            .map(|day| {
                gained = by_day.next().copied().unwrap_or(gained);
                progress += gained;
                let mid = total * self.share(progress);
                BandPoint {
                    day,
                    low: certain(progress, self.time_factor.mean_ln + off).min(mid),
                    mid,
                    high: certain(progress, self.time_factor.mean_ln - off).max(mid),
                }
            })
            .collect()
    }

    fn say(&self, today: NaiveDate) -> Say {
        let [low, high] = self.expected();
        let say = match self.due {
            _ if self.cold_weeks => Say::new("forecast-cold-weeks"),
            crate::view::DueView {
                d10: Some(d10),
                d50: Some(d50),
                d90: Some(d90),
                ..
            } if d90 >= today => Say::new("forecast-due")
                .with("first", Arg::Day(self.due.first.unwrap_or(d10)))
                .with("half", Arg::Day(d50))
                .with("most", Arg::Day(d90)),
            crate::view::DueView { d90: Some(d90), .. } => {
                Say::new("forecast-past").with("most", Arg::Day(d90))
            }
            _ => Say::new("forecast-none")
                .with("temperature", Arg::Celsius(self.course.mean_to_come_c)),
        };
        say.with("low", Arg::Number(low))
            .with("spread", Arg::Number(high - low))
            .with("high", Arg::Number(high))
            .with("progress", Arg::Share(self.course.progress))
            .with("crop", words::crop(&self.crop.key))
    }
}

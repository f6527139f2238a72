//! A forecast as the tray's page shows it.

use super::{ColdKind, Growth, TENTH};
use crate::picture::Picture;
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

/// The way to the time at which half are up is told in quarters; from a little
/// beyond it, and from half as long again, it is past.
const QUARTER: f64 = 0.25;
const PAST: f64 = 1.125;
const LONG_PAST: f64 = 1.5;

impl Growth {
    /// The forecast with its band, its words and the counts so far.
    pub(crate) fn forecast_view(
        &self,
        picture: &Picture,
        sowing: &SowingState,
        today: NaiveDate,
    ) -> ForecastView {
        ForecastView {
            due: self.due,
            say: self.say(picture, today),
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

    fn say_cold(&self) -> Say {
        let until = self.cold.and_then(|cold| cold.until);
        let key = match (self.cold.map(|cold| cold.kind), until) {
            (Some(ColdKind::Winter), _) => "forecast-winter",
            (Some(ColdKind::Weeks), _) => "forecast-cold-until",
            (_, Some(_)) => "forecast-cold-fridge-until",
            (_, None) => "forecast-cold-weeks",
        };
        let say = Say::new(key);
        match until {
            Some(until) => say.with("until", Arg::Day(until.date())),
            None => say,
        }
    }

    /// How far it is, in words.
    pub(crate) fn way(&self) -> Arg {
        let progress = self.course.progress;
        let way = if progress >= LONG_PAST {
            6.0
        } else if progress >= PAST {
            5.0
        } else {
            (progress / QUARTER).round().clamp(0.0, 4.0)
        };
        Arg::Word(format!("way-{way}"))
    }

    fn say(&self, picture: &Picture, today: NaiveDate) -> Say {
        let [low, high] = self.expected();
        let (place, mean_c) = self.course.here.unzip();
        let place = place.and_then(|place| picture.places.get(&place));
        let place = place.map_or_else(String::new, |place| place.described.name.clone());
        let due = |key: &str| {
            Say::new(key)
                .with("way", self.way())
                .with("place", Arg::Text(place.clone()))
                .with(
                    "temperature",
                    Arg::Celsius(mean_c.unwrap_or(self.course.mean_to_come_c).round()),
                )
        };
        let say = match self.due {
            _ if self.cold_weeks => self.say_cold(),
            crate::view::DueView {
                d10: Some(d10),
                d50: Some(d50),
                d90: Some(d90),
                ..
            } if d90 >= today => due(if self.sown == today {
                "forecast-due-today"
            } else if d50 < today {
                "forecast-half-up"
            } else {
                "forecast-due"
            })
            .with("first", Arg::Day(self.due.first.unwrap_or(d10)))
            .with("half", Arg::Day(d50))
            .with("most", Arg::Day(d90)),
            crate::view::DueView { d90: Some(d90), .. } => {
                due("forecast-past").with("most", Arg::Day(d90))
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

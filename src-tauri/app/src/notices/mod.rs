//! The notices to come: one digest a round time, and alone only what cannot
//! wait for one. Reckoned as if nothing were answered meanwhile; whoever rings
//! them asks again after every change and at `plan_again`.

mod ahead;
mod digest;
mod quiet;
mod rings;
#[cfg(test)]
mod tests;

pub use ahead::Ahead;
pub use quiet::Quiet;
pub use rings::Rings;

use crate::job_key;
use crate::jobs::{Job, Plan};
use crate::nagging;
use crate::picture::Picture;
use crate::rounds;
use crate::say::Say;
use crate::view::{DeviceForm, JobKind, NextNoticeView};
use crate::words::{self, Language, Units};
use chrono::{DateTime, NaiveDateTime, TimeDelta, Utc};
use chrono_tz::Tz;
use plumule_journal::stamp::instant_of;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// How many days ahead notices are planned for a system that shows them by
/// itself.
const AHEAD_DAYS: usize = 14;

/// For one that is asked again at every round: until the next is sure to be in
/// it.
const SOON_DAYS: usize = 2;

/// What is up in the dark is told of alone so long after it fell due: whoever
/// counted the seedlings is still standing there (judgement).
const ALONE_AFTER_HOURS: i64 = 1;

/// The answers that a notice about one tray to feel takes.
pub const ANSWERS: [&str; 3] = ["dry", "moist", "wet"];

/// The notices wanted from now on, and when to ask again.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NoticePlan {
    /// By time; one whose time is now was missed.
    pub wanted: Vec<Notice>,
    /// At the latest then.
    pub plan_again: DateTime<Utc>,
}

impl NoticePlan {
    /// No more than so many: the soonest days first, of a day the most
    /// pressing first.
    pub fn keep(&mut self, most: usize, now: DateTime<Utc>) {
        let day = |notice: &Notice| (notice.at - now).num_days();
        self.wanted
            .sort_by_key(|notice| (day(notice), notice.rank, notice.at));
        self.wanted.truncate(most);
        self.wanted
            .sort_by(|one, other| (one.at, &one.key).cmp(&(other.at, &other.key)));
    }
}

/// How pressing a notice is, the most first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Rank {
    /// Cannot wait for a round.
    Alone,
    /// A round with something that is for today.
    Today,
    /// A round of what can wait.
    CanWait,
}

/// What an answer to a notice is called.
#[must_use]
pub fn answer_words(answer: &str, language: Language) -> String {
    words::plain_text(&words::key("notice-answer", answer), language)
}

/// One notice.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Notice {
    /// For the system's own list; made from the key.
    pub id: i32,
    /// What it is about: never delivered twice.
    pub key: String,
    /// When.
    pub at: DateTime<Utc>,
    /// How pressing.
    pub rank: Rank,
    /// First line.
    pub title: String,
    /// One line a place.
    pub body: String,
    /// The one tray that it is about, by its id.
    pub tray: Option<String>,
    /// Feeling that tray is all there is to do: it can be answered from the
    /// notice, with one of [`ANSWERS`].
    pub feel: bool,
    /// In which words, those of its answers too.
    #[serde(default)]
    pub language: Language,
    /// Not to be shown in these hours, should the device be in another zone
    /// by then.
    pub quiet: Quiet,
}

/// All that notices are reckoned from.
#[derive(Debug)]
pub struct NoticeDesk {
    pub(crate) picture: Picture,
    pub(crate) device: DeviceForm,
    pub(crate) now: DateTime<Utc>,
    pub(crate) zone: Tz,
}

impl NoticeDesk {
    /// The notices wanted in two weeks, delivered or not.
    #[must_use]
    pub fn plan(&self) -> NoticePlan {
        let now = (self.now, self.zone);
        notice_plan(&self.picture, &self.device, now, AHEAD_DAYS)
    }

    /// Those of today and tomorrow: enough where it is asked for again.
    #[must_use]
    pub fn plan_soon(&self) -> NoticePlan {
        let now = (self.now, self.zone);
        notice_plan(&self.picture, &self.device, now, SOON_DAYS)
    }

    /// The first of a plan that is still to come, for the settings.
    #[must_use]
    pub fn next(&self, plan: NoticePlan) -> Option<NextNoticeView> {
        let mut wanted = plan.wanted.into_iter();
        let next = wanted.find(|notice| notice.at > self.now)?;
        Some(NextNoticeView {
            at: next.at.with_timezone(&self.picture.zone).naive_local(),
            says: next.body,
        })
    }
}

impl Notice {
    /// One that is shown at once, about nothing.
    pub(crate) fn test(at: DateTime<Utc>, body: String, language: Language) -> Self {
        let key = "test".to_owned();
        Self {
            id: id(&key),
            key,
            at,
            rank: Rank::Today,
            title: words::plain_text("notice-test-title", language),
            body,
            tray: None,
            feel: false,
            language,
            quiet: Quiet::default(),
        }
    }
}

/// Plans them; `zone` is the device's.
pub(crate) fn notice_plan(
    picture: &Picture,
    device: &DeviceForm,
    (now, zone): (DateTime<Utc>, Tz),
    days: usize,
) -> NoticePlan {
    let desk = Desk {
        picture,
        units: Units::of(device),
        rings: Rings {
            garden: picture.zone,
            device: zone,
            quiet: Quiet::of(device),
        },
        now,
        local: now.with_timezone(&picture.zone).naive_local(),
    };
    let rounds = desk.rounds(days);
    let mut wanted = Vec::new();
    if device.notices {
        wanted = desk.digests(&rounds);
        wanted.extend(desk.alone());
        wanted.sort_by(|one, other| (one.at, &one.key).cmp(&(other.at, &other.key)));
    }
    NoticePlan {
        wanted,
        plan_again: desk.plan_again(&rounds),
    }
}

struct Desk<'a> {
    picture: &'a Picture,
    units: Units,
    rings: Rings,
    now: DateTime<Utc>,
    /// The same by the garden's clock.
    local: NaiveDateTime,
}

impl Desk<'_> {
    /// The rounds that ring from the beginning of today on.
    fn rounds(&self, days: usize) -> BTreeMap<DateTime<Utc>, NaiveDateTime> {
        let today = self.local.date();
        // Quiet hours may have kept yesterday's evening until today.
        let first = today.pred_opt().unwrap_or(today);
        let days = first.iter_days().take(days + 2);
        let rounds = days.flat_map(|day| {
            let morning = Some(rounds::morning(self.picture, day));
            [morning, rounds::evening(self.picture, day)]
        });
        let mut rounds = self.rings.all(rounds.flatten());
        let zone = self.picture.zone;
        rounds.retain(|at, _| at.with_timezone(&zone).date_naive() >= today);
        rounds
    }

    /// The next round, in quiet hours too, or the next ringing: the earlier.
    fn plan_again(&self, rounds: &BTreeMap<DateTime<Utc>, NaiveDateTime>) -> DateTime<Utc> {
        let latest = self.now + TimeDelta::days(1);
        let begun = |round: &NaiveDateTime| instant_of(*round, self.picture.zone);
        let times = rounds.iter().flat_map(|(at, round)| [*at, begun(round)]);
        times
            .filter(|at| *at > self.now)
            .fold(latest, DateTime::min)
    }

    /// One a round; of those of today that passed, the last one, now.
    fn digests(&self, rounds: &BTreeMap<DateTime<Utc>, NaiveDateTime>) -> Vec<Notice> {
        let coming = rounds.iter().filter(|(at, _)| **at > self.now);
        let coming: Vec<_> = coming.map(|(at, round)| (*at, *round)).collect();
        let now = self.rings.not_before(self.now);
        // Overnight it is the next day's round that tells.
        let today = now.with_timezone(&self.picture.zone).date_naive() == self.local.date();
        let told = !today || coming.first().is_some_and(|(at, _)| *at <= now);
        let missed = rounds.range(..=self.now).next_back();
        let missed = missed.filter(|_| !told).map(|(_, round)| (now, *round));
        let all = missed.into_iter().chain(coming);
        all.filter_map(|(at, round)| self.digest(round, at))
            .collect()
    }

    /// What the round will show at that time, if nothing is answered.
    fn digest(&self, round: NaiveDateTime, at: DateTime<Utc>) -> Option<Notice> {
        let plan = Plan::of(self.picture, round.max(self.local));
        let evening = rounds::evening(self.picture, round.date()) == Some(round);
        let jobs = plan.all();
        let shown: Vec<&Job> = jobs
            .iter()
            .filter(|job| !evening || job.today)
            .filter(|job| nagging::shown(self.picture, job, round))
            .collect();
        let lines = digest::lines(&plan, self.units, &shown);
        let (title, half) = if evening {
            ("notice-evening", "evening")
        } else {
            ("notice-morning", "morning")
        };
        let key = format!("digest/{}/{half}", round.date());
        let today = shown.iter().any(|job| job.today);
        let rank = if today { Rank::Today } else { Rank::CanWait };
        let notice = self.notice(key, at, rank, title, lines.join("\n"));
        (!lines.is_empty()).then(|| about(notice, &shown, lines.len()))
    }

    /// What cannot wait for the next round.
    fn alone(&self) -> Vec<Notice> {
        let plan = Plan::of(self.picture, self.local);
        let jobs = plan.all();
        let pressing = jobs.iter().filter_map(|job| match job.kind {
            JobKind::IntoTheLight => Some((job, "notice-light-title")),
            JobKind::FrostTonight => Some((job, "notice-frost-title")),
            _ => None,
        });
        let notices = pressing.filter_map(|(job, title)| {
            let zone = self.picture.zone;
            let ready = instant_of(job.due + TimeDelta::hours(ALONE_AFTER_HOURS), zone);
            let ready = ready.max(self.now);
            let at = self.rings.not_before(ready);
            let local = at.with_timezone(&zone).naive_local();
            let told = rounds::next_round(self.picture, job.due) <= local;
            // When quiet hours end the frost has been.
            let late = job.kind == JobKind::FrostTonight && at > ready;
            if told || late || !nagging::shown(self.picture, job, local) {
                return None;
            }
            let lines = digest::lines(&plan, self.units, &[job]);
            let key = format!("alone/{}", job_key::text(&job.key));
            let notice = self.notice(key, at, Rank::Alone, title, lines.join("\n"));
            (!lines.is_empty()).then(|| about(notice, &[job], lines.len()))
        });
        notices.collect()
    }

    fn notice(
        &self,
        key: String,
        at: DateTime<Utc>,
        rank: Rank,
        title: &str,
        body: String,
    ) -> Notice {
        Notice {
            id: id(&key),
            key,
            at,
            rank,
            title: words::render(&Say::new(title), self.units, self.local.date()),
            body,
            tray: None,
            feel: false,
            language: self.units.language,
            quiet: self.rings.quiet,
        }
    }
}

/// The notice with the one tray it is about, if it is about one.
fn about(notice: Notice, shown: &[&Job], lines: usize) -> Notice {
    let Some((first, rest)) = shown.split_first() else {
        return notice;
    };
    let one = lines == 1 && rest.iter().all(|job| job.tray == first.tray);
    Notice {
        tray: first.tray.filter(|_| one).map(|tray| tray.to_string()),
        feel: one && rest.is_empty() && first.kind == JobKind::FeelTheCompost,
        ..notice
    }
}

/// A number that stays the same for a key: FNV-1a of 32 bits (Fowler, Noll and
/// Vo), without the sign.
fn id(key: &str) -> i32 {
    let hash = key.bytes().fold(0x811c_9dc5_u32, |hash, byte| {
        (hash ^ u32::from(byte)).wrapping_mul(0x0100_0193)
    });
    i32::try_from(hash & 0x7fff_ffff).unwrap_or(0)
}

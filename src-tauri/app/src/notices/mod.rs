//! The notices to come: one digest a round time, and alone only what cannot
//! wait for one. Reckoned as if nothing were answered meanwhile; whoever rings
//! them asks again after every change and at `plan_again`.

mod quiet;
#[cfg(test)]
mod tests;

use crate::job_key;
use crate::jobs::{Job, LivingTray, Plan, kind_word};
use crate::nagging;
use crate::picture::Picture;
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::{DeviceForm, JobKind};
use crate::words::{self, Units};
use chrono::{DateTime, NaiveDate, NaiveDateTime, TimeDelta, Utc};
use plumule_journal::id::PlaceId;
use plumule_journal::stamp::instant_of;
use plumule_journal::subject::Plants;
use quiet::Quiet;
use std::collections::{BTreeMap, BTreeSet};

/// How far ahead notices are planned.
const DAYS: usize = 14;

/// A phone keeps 64 notices; a few are left to others.
const MOST: usize = 60;

/// "Into the light" comes alone so long after it fell due: whoever counted the
/// seedlings is still standing there (judgement).
const ALONE_AFTER_HOURS: i64 = 1;

/// The notices wanted from now on, and when to ask again.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NoticePlan {
    /// By time; one whose time is now was missed.
    pub wanted: Vec<Notice>,
    /// At the latest then.
    pub plan_again: DateTime<Utc>,
}

/// One notice.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notice {
    /// For the system's own list; made from the key.
    pub id: i32,
    /// What it is about: never delivered twice.
    pub key: String,
    /// When.
    pub at: DateTime<Utc>,
    /// First line.
    pub title: String,
    /// One line a place.
    pub body: String,
}

/// Plans them. `delivered` tells of a key whether it was.
pub(crate) fn notice_plan(
    picture: &Picture,
    device: &DeviceForm,
    now: DateTime<Utc>,
    delivered: &dyn Fn(&str) -> bool,
) -> NoticePlan {
    let local = now.with_timezone(&picture.zone).naive_local();
    let plan = Plan::of(picture, local);
    let desk = Desk {
        picture,
        jobs: plan.all(),
        hardened: hardened_today(&plan),
        quiet: Quiet::of(device),
        units: Units::of(device),
        now,
        today: local.date(),
        plan,
    };
    let mut wanted = Vec::new();
    if device.notices {
        wanted = desk.digests();
        wanted.extend(desk.alone());
        wanted.retain(|notice| !delivered(&notice.key));
        wanted.sort_by(|one, other| (one.at, &one.key).cmp(&(other.at, &other.key)));
        wanted.truncate(MOST);
    }
    NoticePlan {
        wanted,
        plan_again: desk.next_round(),
    }
}

struct Desk<'a> {
    picture: &'a Picture,
    plan: Plan<'a>,
    jobs: Vec<Job>,
    /// Plants put out today, to be brought in.
    hardened: Vec<(Option<PlaceId>, Vec<Plants>)>,
    quiet: Quiet,
    units: Units,
    now: DateTime<Utc>,
    today: NaiveDate,
}

impl Desk<'_> {
    /// The round times from today on: local time, whether evening, and when
    /// that is, out of quiet hours.
    fn rounds(&self) -> Vec<(NaiveDateTime, bool, DateTime<Utc>)> {
        let days = self.today.iter_days().take(DAYS + 1);
        let of_day = |day| {
            let morning = Some((rounds::morning(self.picture, day), false));
            let evening = rounds::evening(self.picture, day).map(|evening| (evening, true));
            [morning, evening].into_iter().flatten()
        };
        let times = days.flat_map(of_day);
        let zone = self.picture.zone;
        times
            .map(|(round, evening)| (round, evening, instant_of(self.quiet.after(round), zone)))
            .collect()
    }

    /// The next round, in quiet hours too, or the next ringing: the earlier.
    fn next_round(&self) -> DateTime<Utc> {
        let latest = self.now + TimeDelta::days(1);
        let rounds = self.rounds().into_iter();
        let times =
            rounds.flat_map(|(round, _, rung)| [instant_of(round, self.picture.zone), rung]);
        times
            .filter(|at| *at > self.now)
            .fold(latest, DateTime::min)
    }

    /// One a round; of those of today that passed, the last one, now.
    fn digests(&self) -> Vec<Notice> {
        let (passed, coming): (Vec<_>, Vec<_>) = self
            .rounds()
            .into_iter()
            .partition(|(_, _, at)| *at <= self.now);
        let missed = passed.last().map(|(round, evening, _)| {
            let local = self.now.with_timezone(&self.picture.zone).naive_local();
            let at = instant_of(self.quiet.after(local), self.picture.zone);
            (*round, *evening, at.max(self.now))
        });
        // A day that a zone skips has the same instant as the next.
        let mut taken = BTreeSet::new();
        missed
            .into_iter()
            .chain(coming)
            .filter_map(|(round, evening, at)| self.digest(round, evening, at))
            .filter(|notice| taken.insert(notice.at))
            .collect()
    }

    fn digest(&self, round: NaiveDateTime, evening: bool, at: DateTime<Utc>) -> Option<Notice> {
        let shown: Vec<&Job> = self
            .jobs
            .iter()
            .filter(|job| !evening || job.today)
            .filter(|job| nagging::shown(self.picture, job, round))
            .collect();
        let bring_in =
            evening && round.date() == self.today && self.picture.away_until(self.today).is_none();
        let lines: Vec<String> = self
            .picture
            .walk()
            .into_iter()
            .filter_map(|place| {
                let id = Some(place.described.place);
                let here = shown.iter().copied().filter(|job| job.place == id);
                let mut parts = self.parts(here);
                if bring_in {
                    parts.extend(self.bring_in(id));
                }
                (!parts.is_empty()).then(|| self.line(&place.described.name, &parts))
            })
            .collect();
        let title = if evening {
            "notice-evening"
        } else {
            "notice-morning"
        };
        let key = format!("digest/{}", round.format("%Y-%m-%dT%H:%M"));
        (!lines.is_empty()).then(|| self.notice(key, at, title, lines.join("\n")))
    }

    /// What is up in the dark, before the next round would tell.
    fn alone(&self) -> Vec<Notice> {
        let zone = self.picture.zone;
        let light = self
            .jobs
            .iter()
            .filter(|job| job.kind == JobKind::IntoTheLight);
        let notices = light.filter_map(|job| {
            let ready = job.due + TimeDelta::hours(ALONE_AFTER_HOURS);
            let local = self.now.with_timezone(&zone).naive_local();
            let ring = self.quiet.after(ready.max(local));
            let told = rounds::next_round(self.picture, job.due) <= ring;
            if told || !nagging::shown(self.picture, job, ring) {
                return None;
            }
            let place = self.picture.places.get(&job.place?)?;
            let parts = self.parts(std::iter::once(job));
            let body = self.line(&place.described.name, &parts);
            let key = format!("alone/{}", job_key::text(&job.key));
            let at = instant_of(ring, zone).max(self.now);
            Some(self.notice(key, at, "notice-light-title", body))
        });
        notices.collect()
    }

    /// One a kind, the most pressing first.
    fn parts<'j>(&self, jobs: impl Iterator<Item = &'j Job>) -> Vec<String> {
        let mut kinds: BTreeMap<(bool, JobKind), Vec<&Job>> = BTreeMap::new();
        for job in jobs {
            kinds.entry((!job.today, job.kind)).or_default().push(job);
        }
        // Trays to feel are one number, pressing or not.
        let hurried = kinds.remove(&(false, JobKind::FeelTheCompost));
        if let Some(hurried) = hurried {
            let feel = kinds.entry((true, JobKind::FeelTheCompost)).or_default();
            feel.extend(hurried);
        }
        kinds
            .into_iter()
            .map(|((_, kind), jobs)| {
                let key = words::key("notice", kind_word(kind));
                let plants = jobs.iter().flat_map(|job| self.plants(job)).collect();
                self.counted(&key, jobs.len(), plants)
            })
            .collect()
    }

    /// Which plants a job is about: its own, else all of its tray that is up,
    /// else all of it.
    fn plants(&self, job: &Job) -> Vec<Plants> {
        if let Some(plants) = job.plants {
            return vec![plants];
        }
        let tray = self
            .plan
            .trays
            .iter()
            .find(|tray| Some(tray.id) == job.tray);
        tray.map(|tray| standing(self.picture, tray))
            .unwrap_or_default()
    }

    fn bring_in(&self, place: Option<PlaceId>) -> Option<String> {
        let here = self.hardened.iter().filter(|(at, _)| *at == place);
        let plants: Vec<Vec<Plants>> = here.map(|(_, plants)| plants.clone()).collect();
        let trays = plants.len();
        (trays > 0).then(|| self.counted("notice-bring-in", trays, plants.concat()))
    }

    fn counted(&self, key: &str, count: usize, plants: Vec<Plants>) -> String {
        let say = Say::new(key)
            .with("count", Arg::Number(count as f64))
            .with("crops", self.plan.crops(plants.into_iter()));
        self.render(&say)
    }

    fn line(&self, place: &str, parts: &[String]) -> String {
        let say = Say::new("notice-place")
            .with("place", Arg::Text(place.to_owned()))
            .with("what", Arg::Text(parts.join("; ")));
        self.render(&say)
    }

    fn notice(&self, key: String, at: DateTime<Utc>, title: &str, body: String) -> Notice {
        Notice {
            id: id(&key),
            key,
            at,
            title: self.render(&Say::new(title)),
            body,
        }
    }

    fn render(&self, say: &Say) -> String {
        words::render(say, self.units, self.today)
    }
}

fn standing(picture: &Picture, tray: &LivingTray<'_>) -> Vec<Plants> {
    let up = |plants: &Plants| {
        let state = picture.plants(*plants);
        state.is_some_and(|state| state.numbers.there > 0)
    };
    let standing: Vec<Plants> = tray.plants().filter(up).collect();
    if standing.is_empty() {
        tray.plants().collect()
    } else {
        standing
    }
}

fn hardened_today(plan: &Plan<'_>) -> Vec<(Option<PlaceId>, Vec<Plants>)> {
    let out = plan.trays.iter().filter(|tray| {
        let last = tray.state.hardened.last();
        last.is_some_and(|mark| mark.at.local.date() == plan.now.date())
    });
    out.map(|tray| {
        let place = tray.place.map(|place| place.described.place);
        (place, standing(plan.picture, tray))
    })
    .collect()
}

/// A number that stays the same for a key: FNV-1a of 32 bits (Fowler, Noll and
/// Vo), without the sign.
fn id(key: &str) -> i32 {
    let hash = key.bytes().fold(0x811c_9dc5_u32, |hash, byte| {
        (hash ^ u32::from(byte)).wrapping_mul(0x0100_0193)
    });
    i32::try_from(hash & 0x7fff_ffff).unwrap_or(0)
}

//! The notices to come: one digest a round time, and alone only what cannot
//! wait for one. Reckoned as if nothing were answered meanwhile; whoever rings
//! them asks again after every change and at `plan_again`.

use crate::job_key;
use crate::jobs::{Job, LivingTray, Plan, kind_word};
use crate::nagging;
use crate::picture::Picture;
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::{DeviceForm, JobKind};
use crate::words::{self, Units};
use chrono::{DateTime, NaiveDate, NaiveDateTime, NaiveTime, TimeDelta, Utc};
use plumule_journal::id::PlaceId;
use plumule_journal::stamp::instant_of;
use plumule_journal::subject::Plants;
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

/// Hours without notices: from inclusive, to exclusive, over midnight where
/// from is later; equal means none.
#[derive(Clone, Copy)]
struct Quiet {
    from: NaiveTime,
    to: NaiveTime,
}

impl Quiet {
    fn of(device: &DeviceForm) -> Self {
        let time = |text: &str| NaiveTime::parse_from_str(text, "%H:%M").unwrap_or_default();
        Self {
            from: time(&device.quiet_from),
            to: time(&device.quiet_to),
        }
    }

    /// The moment, or the end of the quiet hours it lies in.
    fn after(self, at: NaiveDateTime) -> NaiveDateTime {
        let (time, day) = (at.time(), at.date());
        let next = day.succ_opt().unwrap_or(day);
        match self {
            Self { from, to } if from < to && (from..to).contains(&time) => day.and_time(to),
            Self { from, to } if from > to && time >= from => next.and_time(to),
            Self { from, to } if from > to && time < to => day.and_time(to),
            _ => at,
        }
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::world::{World, at, day};
    use plumule_journal::id::SowingId;
    use plumule_journal::words::{Container, Feel, PlaceKind};

    fn device() -> DeviceForm {
        DeviceForm {
            quiet_from: "22:00".to_owned(),
            quiet_to: "07:00".to_owned(),
            ..DeviceForm::default()
        }
    }

    fn utc(text: &str) -> DateTime<Utc> {
        at(text).and_utc()
    }

    fn plan(world: &World, device: &DeviceForm, now: &str) -> NoticePlan {
        notice_plan(&world.picture, device, utc(now), &|_| false)
    }

    /// A heated tray in a zone: something is up, so it is felt daily, dries
    /// unwatered and is for today, at each round.
    fn busy(zone: &str, latitude: f64, sown: &str, felt: &str) -> (World, SowingId) {
        let mut world = World::in_zone(zone, latitude);
        let place = world.place(PlaceKind::HeatedPropagator, 20.0, 24.0);
        world.describe(place).name = "Propagator".to_owned();
        let tray = world.tray(Container::Cells, place, sown);
        let sowing = world.sow("tomato", 12, tray, 12, sown);
        for packet in world.picture.packets.values_mut() {
            packet.described.crop = "moonflower".to_owned();
        }
        world.feel(tray, felt, Feel::Dry, None);
        (world, sowing)
    }

    #[track_caller]
    fn check(world: &World, device: &DeviceForm, now: &str, expected: &[&str]) {
        let found = plan(world, device, now).wanted;
        let times: Vec<DateTime<Utc>> = found.iter().map(|notice| notice.at).collect();
        let expected: Vec<DateTime<Utc>> = expected.iter().map(|time| utc(time)).collect();
        assert_eq!(times[..expected.len()], expected[..], "{found:#?}");
    }

    #[test]
    fn in_berlin_eight_stays_eight_in_spring() {
        // The clocks go forward on 29 March 2026 at 1:00 UTC; an evening round
        // too, at 18:00.
        let (world, _) = busy(
            "Europe/Berlin",
            52.5,
            "2026-03-26 08:00",
            "2026-03-28 07:30",
        );
        let expected = [
            "2026-03-28 07:00",
            "2026-03-28 17:00",
            "2026-03-29 06:00",
            "2026-03-29 16:00",
        ];
        check(&world, &device(), "2026-03-28 06:40", &expected);
    }

    #[test]
    fn in_berlin_eight_stays_eight_in_autumn() {
        // Back on 25 October 2026 at 1:00 UTC; no evening round.
        let (world, _) = busy(
            "Europe/Berlin",
            52.5,
            "2026-10-22 08:00",
            "2026-10-24 07:30",
        );
        let expected = ["2026-10-24 06:00", "2026-10-25 07:00"];
        check(&world, &device(), "2026-10-24 05:40", &expected);
    }

    #[test]
    fn on_lord_howe_the_clocks_move_by_half_an_hour() {
        // To UTC+11 on 4 October 2026 at 2:00 local of UTC+10:30; the south has
        // its evening rounds from September to November.
        let (world, _) = busy(
            "Australia/Lord_Howe",
            -31.5,
            "2026-10-01 08:00",
            "2026-10-03 07:30",
        );
        let expected = [
            "2026-10-02 21:30",
            "2026-10-03 07:30",
            "2026-10-03 21:00",
            "2026-10-04 07:00",
        ];
        check(&world, &device(), "2026-10-02 21:10", &expected);
    }

    #[test]
    fn in_apia_a_day_that_never_was_rings_once() {
        // 30 December 2011 was left out: from UTC-10 to UTC+14 (with summer time).
        let (world, _) = busy(
            "Pacific/Apia",
            -13.8,
            "2011-12-27 08:00",
            "2011-12-29 07:30",
        );
        let found = plan(&world, &device(), "2011-12-29 17:40").wanted;
        let times: Vec<DateTime<Utc>> = found.iter().map(|notice| notice.at).collect();
        let expected = [utc("2011-12-29 18:00"), utc("2011-12-30 18:00")];
        assert_eq!(times[..2], expected);
        assert!(times.windows(2).all(|pair| pair[0] < pair[1]));
    }

    #[test]
    fn a_round_in_quiet_hours_rings_when_they_end() {
        let (mut world, _) = busy(
            "Europe/Berlin",
            52.5,
            "2026-01-10 08:00",
            "2026-01-11 06:30",
        );
        let time = |text| NaiveTime::parse_from_str(text, "%H:%M").unwrap();
        world.garden().morning = time("06:45");
        check(&world, &device(), "2026-01-11 05:40", &["2026-01-11 06:00"]);
        // The end is exclusive, and equal hours are none.
        world.garden().morning = time("07:00");
        check(&world, &device(), "2026-01-11 05:40", &["2026-01-11 06:00"]);
        world.garden().morning = time("06:45");
        let none = DeviceForm {
            quiet_from: "07:00".to_owned(),
            ..device()
        };
        check(&world, &none, "2026-01-11 05:40", &["2026-01-11 05:45"]);
    }

    #[test]
    fn quiet_hours_go_over_midnight_start_inclusive_end_exclusive() {
        let quiet = Quiet::of(&device());
        for (of, expected) in [
            ("2026-03-05 21:59", "2026-03-05 21:59"),
            ("2026-03-05 22:00", "2026-03-06 07:00"),
            ("2026-03-06 00:00", "2026-03-06 07:00"),
            ("2026-03-06 06:59", "2026-03-06 07:00"),
            ("2026-03-06 07:00", "2026-03-06 07:00"),
        ] {
            assert_eq!(quiet.after(at(of)), at(expected));
        }
        let noon = Quiet {
            from: at("2026-03-05 12:00").time(),
            to: at("2026-03-05 14:00").time(),
        };
        assert_eq!(noon.after(at("2026-03-05 12:00")), at("2026-03-05 14:00"));
        assert_eq!(noon.after(at("2026-03-05 14:00")), at("2026-03-05 14:00"));
    }

    #[test]
    fn into_the_light_comes_alone_between_rounds_and_not_at_night() {
        let (mut world, sowing) = busy(
            "Europe/Berlin",
            52.5,
            "2026-01-10 08:00",
            "2026-01-12 07:30",
        );
        world.count(sowing, "2026-01-12 10:00", 3);
        let alone = |world: &World, now| {
            let found = plan(world, &device(), now).wanted.into_iter();
            found
                .filter(|notice| notice.key.starts_with("alone/"))
                .collect::<Vec<_>>()
        };
        let found = alone(&world, "2026-01-12 09:00");
        assert_eq!(found.len(), 1);
        // An hour after 10:00 in Berlin.
        assert_eq!(found[0].at, utc("2026-01-12 10:00"));
        // Counted at 21:30, an hour later is night; at 7:00 it comes before the round.
        world.count(sowing, "2026-01-12 21:30", 3);
        let state = world.picture.sowings.get_mut(&sowing).unwrap();
        state.counts.remove(0);
        let found = alone(&world, "2026-01-12 20:40");
        assert_eq!(found[0].at, utc("2026-01-13 06:00"));
        // The next morning's round has told.
        assert!(alone(&world, "2026-01-13 09:00").is_empty());
    }

    #[test]
    fn what_was_delivered_is_never_wanted_again() {
        let (world, _) = busy(
            "Europe/Berlin",
            52.5,
            "2026-03-26 08:00",
            "2026-03-28 07:30",
        );
        let first = plan(&world, &device(), "2026-03-28 06:40");
        let rung = first.wanted[0].key.clone();
        let now = utc("2026-03-28 07:00");
        let again = notice_plan(&world.picture, &device(), now, &|key| key == rung);
        assert!(again.wanted.iter().all(|notice| notice.key != rung));
        // Missed, it comes now, once.
        let missed = notice_plan(&world.picture, &device(), utc("2026-03-28 09:00"), &|_| {
            false
        });
        assert_eq!(
            (&missed.wanted[0].key, missed.wanted[0].at),
            (&rung, utc("2026-03-28 09:00"))
        );
        assert_eq!(missed.wanted[0].id, first.wanted[0].id);
    }

    #[test]
    fn the_plan_says_when_to_ask_again() {
        let (world, _) = busy(
            "Europe/Berlin",
            52.5,
            "2026-01-10 08:00",
            "2026-01-12 07:30",
        );
        let again = |now| plan(&world, &device(), now).plan_again;
        assert_eq!(again("2026-01-12 06:40"), utc("2026-01-12 07:00"));
        assert_eq!(again("2026-01-12 07:00"), utc("2026-01-13 07:00"));
    }

    #[test]
    fn no_notices_where_none_are_wanted_or_the_grower_is_away() {
        let (mut world, _) = busy(
            "Europe/Berlin",
            52.5,
            "2026-03-26 08:00",
            "2026-03-28 07:30",
        );
        let none = DeviceForm {
            notices: false,
            ..device()
        };
        assert!(plan(&world, &none, "2026-03-28 06:40").wanted.is_empty());
        world
            .picture
            .garden
            .away
            .push(plumule_journal::content::Away {
                from: day("2026-03-28"),
                to: day("2026-04-30"),
            });
        assert!(
            plan(&world, &device(), "2026-03-28 06:40")
                .wanted
                .is_empty()
        );
    }

    #[test]
    fn never_more_than_sixty_and_one_line_a_place() {
        let (mut world, _) = busy(
            "Europe/Berlin",
            52.5,
            "2026-03-26 08:00",
            "2026-03-28 07:30",
        );
        let places: Vec<_> = world.picture.places.keys().copied().collect();
        for index in 0..80 {
            let tray = world.tray(Container::Cells, places[0], "2026-03-26 08:00");
            let sowing = world.sow("tomato", 2, tray, 2, "2026-03-26 08:00");
            world.count(sowing, &format!("2026-03-28 08:{:02}", index % 50), 1);
        }
        let found = plan(&world, &device(), "2026-03-28 08:00").wanted;
        assert_eq!(found.len(), MOST);
        for notice in &found {
            assert_eq!(notice.body.lines().count(), 1, "{notice:?}");
        }
        let ids: BTreeSet<i32> = found.iter().map(|notice| notice.id).collect();
        assert_eq!(ids.len(), found.len());
    }
}

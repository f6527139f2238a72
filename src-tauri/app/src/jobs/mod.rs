//! What is to be done, when and why. Computed anew each time, never stored.
//!
//! Each kind of job has a file. It says from the picture alone when its work
//! falls due, be it past or to come; what of that is shown is up to `nagging`.

mod away;
#[cfg(test)]
mod care_tests;
mod cold;
mod cooler;
mod cover;
mod empty;
mod evening;
mod feed;
mod feel;
mod frost;
mod germination;
mod harden;
mod last_chance;
mod late;
mod leaves;
mod leggy;
mod lid;
mod light;
mod look;
mod plant_out;
mod pot;
mod prick;
mod read;
mod season;
#[cfg(test)]
mod season_tests;
mod sow;
mod sow_on;
mod stocktake;
#[cfg(test)]
mod tests;
mod thin;
mod tray;
mod unknown;
mod where_it_is;

pub(crate) use away::{
    coming as coming_away, rests as rests_after_away, waits as waits_for_a_look,
};
pub(crate) use feel::pace;
pub(crate) use frost::{low_in, warmer_by};
pub(crate) use germination::test_looks;
pub(crate) use sow::true_leaves_of;
pub(crate) use tray::LivingTray;

use crate::growth::{Growth, growth_at};
use crate::judgement::Case;
use crate::nagging;
use crate::picture::Picture;
use crate::say::{Arg, Say};
use crate::temperature::Temperatures;
use crate::view::{JobKind, VerdictView};
use crate::words;
use chrono::{NaiveDate, NaiveDateTime};
use plumule_journal::content::JobKey;
use plumule_journal::id::{EntryId, PlaceId, SowingId, TrayId};
use plumule_journal::state::SowingState;
use plumule_journal::subject::{Plants, Subject};
use std::collections::BTreeMap;

/// One job.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Job {
    pub(crate) key: JobKey,
    pub(crate) kind: JobKind,
    pub(crate) place: Option<PlaceId>,
    pub(crate) tray: Option<TrayId>,
    /// Of which plants, unless of the whole tray or place.
    pub(crate) plants: Option<Plants>,
    /// When it falls due, local time of the garden.
    pub(crate) due: NaiveDateTime,
    /// After this it is another job's turn.
    pub(crate) until: Option<NaiveDateTime>,
    /// For today; else it can wait.
    pub(crate) today: bool,
    pub(crate) why: Say,
    /// What a count starts at.
    pub(crate) suggested: Option<u32>,
    /// What to do about a sowing that is late.
    pub(crate) verdict: Option<VerdictView>,
}

impl Job {
    fn new(kind: JobKind, subject: Subject, opened_by: EntryId, due: NaiveDateTime) -> Self {
        Self {
            key: JobKey {
                kind: kind_word(kind).to_owned(),
                subject,
                opened_by,
            },
            kind,
            place: None,
            tray: None,
            plants: match subject {
                Subject::Sowing(id) => Some(Plants::Sowing(id)),
                Subject::Batch(id) => Some(Plants::Batch(id)),
                _ => None,
            },
            due,
            until: None,
            today: false,
            why: Say::new("why"),
            suggested: None,
            verdict: None,
        }
    }

    fn because(mut self, why: Say) -> Self {
        self.why = why;
        self
    }

    fn for_today(mut self, today: bool) -> Self {
        self.today = today;
        self
    }

    /// It is about seed, which stands in no place.
    pub(crate) fn of_seed(&self) -> bool {
        matches!(
            self.kind,
            JobKind::Sow | JobKind::CountTheTest | JobKind::Stocktake
        )
    }

    fn in_tray(mut self, tray: &LivingTray<'_>) -> Self {
        self.tray = Some(tray.id);
        self.place = tray.place.map(|place| place.described.place);
        self
    }
}

/// The word of a kind, in keys of jobs.
pub(crate) fn kind_word(kind: JobKind) -> &'static str {
    match kind {
        JobKind::SayWhere => "say_where",
        JobKind::CoolerNow => "cooler_now",
        JobKind::LookForLegginess => "look_for_legginess",
        JobKind::Feed => "feed",
        JobKind::EmptyTheTray => "empty_the_tray",
        JobKind::FrostTonight => "frost_tonight",
        JobKind::BringIn => "bring_in",
        JobKind::OpenTheLid => "open_the_lid",
        JobKind::CloseTheLid => "close_the_lid",
        JobKind::LastChance => "last_chance",
        JobKind::BeforeYouGo => "before_you_go",
        JobKind::LookOver => "look_over",
        JobKind::IntoTheLight => "into_the_light",
        JobKind::CoverOff => "cover_off",
        JobKind::EndOfTheColdWeeks => "end_of_the_cold_weeks",
        JobKind::SowOn => "sow_on",
        JobKind::LookForSeedlings => "look_for_seedlings",
        JobKind::ItIsLate => "it_is_late",
        JobKind::FeelTheCompost => "feel_the_compost",
        JobKind::ReadTheThermometer => "read_the_thermometer",
        JobKind::Thin => "thin",
        JobKind::PrickOut => "prick_out",
        JobKind::PotOn => "pot_on",
        JobKind::HardenOff => "harden_off",
        JobKind::PlantOut => "plant_out",
        JobKind::Sow => "sow",
        JobKind::CountTheTest => "count_the_test",
        JobKind::Stocktake => "stocktake",
    }
}

/// What jobs are reckoned from: the picture with its temperatures, its living
/// trays and the growth of what is still to come up, made out once.
pub(crate) struct Plan<'a> {
    pub(crate) picture: &'a Picture,
    pub(crate) now: NaiveDateTime,
    pub(crate) temperatures: Temperatures<'a>,
    pub(crate) trays: Vec<LivingTray<'a>>,
    growths: BTreeMap<SowingId, Growth>,
    /// When what was sown again or beside a sowing was last sown.
    again: BTreeMap<SowingId, NaiveDate>,
}

impl<'a> Plan<'a> {
    pub(crate) fn of(picture: &'a Picture, now: NaiveDateTime) -> Self {
        let temperatures = Temperatures::of(picture);
        let trays = tray::living(picture);
        let growths = trays
            .iter()
            .flat_map(|tray| &tray.sowings)
            .filter_map(|sowing| {
                let growth = growth_at(picture, &temperatures, sowing, now)?;
                Some((sowing.sown.sowing, growth))
            })
            .collect();
        let mut again: BTreeMap<SowingId, NaiveDate> = BTreeMap::new();
        for sowing in picture.sowings.values() {
            if let Some(of) = sowing.sown.again_of {
                let day = sowing.opened_by.at.local.date();
                let last = again.entry(of).or_insert(day);
                *last = day.max(*last);
            }
        }
        Self {
            picture,
            now,
            temperatures,
            trays,
            growths,
            again,
        }
    }

    /// The last day on which more was sown in the place of a sowing, or beside it.
    fn sown_again(&self, sowing: SowingId) -> Option<NaiveDate> {
        self.again.get(&sowing).copied()
    }

    /// The growth of a living sowing.
    pub(crate) fn growth(&self, sowing: SowingId) -> Option<&Growth> {
        self.growths.get(&sowing)
    }

    /// A sowing to be judged as things stand.
    pub(crate) fn case<'c>(&'c self, sowing: &'c SowingState, growth: &'c Growth) -> Case<'c> {
        Case {
            picture: self.picture,
            temperatures: &self.temperatures,
            sowing,
            growth,
            now: self.now,
        }
    }

    /// Every job that is due or will fall due as things stand.
    pub(crate) fn all(&self) -> Vec<Job> {
        let mut jobs = read::jobs(self);
        for place in self.picture.places.values() {
            jobs.extend(lid::job(self, place));
            jobs.extend(evening::close_the_lid(self, place));
        }
        jobs.extend(sow::jobs(self));
        jobs.extend(germination::jobs(self));
        jobs.extend(stocktake::job(self));
        for tray in &self.trays {
            let mut of_tray: Vec<Job> = Vec::new();
            if let Some(job) = empty::job(self, tray) {
                jobs.push(job.in_tray(tray));
                continue;
            }
            of_tray.extend(where_it_is::job(self, tray));
            of_tray.extend(frost::job(self, tray));
            of_tray.extend(evening::bring_in(self, tray));
            of_tray.extend(feel::job(self, tray));
            of_tray.extend(feed::job(self, tray));
            if !tray.sprouting() {
                of_tray.extend(light::job(self, tray));
                of_tray.extend(cooler::job(self, tray));
                of_tray.extend(cover::job(self, tray));
                of_tray.extend(harden::job(self, tray));
            }
            for sowing in &tray.sowings {
                of_tray.extend(cold::job(self, tray, sowing));
                of_tray.extend(look::job(self, tray, sowing));
                of_tray.extend(late::job(self, sowing));
                of_tray.extend(unknown::job(self, sowing));
                of_tray.extend(last_chance::job(self, sowing));
                if tray.sprouting() {
                    of_tray.extend(sow_on::job(self, tray, sowing));
                    continue;
                }
                of_tray.extend(leggy::job(self, tray, sowing));
                of_tray.extend(thin::job(self, tray, sowing));
                of_tray.extend(prick::job(self, tray, sowing));
            }
            for plants in tray.plants() {
                of_tray.extend(pot::job(self, tray, plants));
                of_tray.extend(plant_out::job(self, tray, plants));
            }
            jobs.extend(of_tray.into_iter().map(|job| job.in_tray(tray)));
        }
        jobs.extend(away::jobs(self, &jobs));
        self.sort(&mut jobs);
        jobs
    }

    /// By the walk, then the most pressing first, then by label code.
    fn sort(&self, jobs: &mut [Job]) {
        let turn = |place: Option<PlaceId>| {
            let place = place.and_then(|id| self.picture.places.get(&id));
            place.map_or((u32::MAX, None), |place| {
                (place.described.position, Some(place.described.place))
            })
        };
        let code = |tray: Option<TrayId>| {
            let tray = tray.and_then(|id| self.picture.trays.get(&id));
            tray.map(|tray| tray.described.code.clone())
        };
        jobs.sort_by_cached_key(|job| {
            let order = (turn(job.place), !job.today, job.kind);
            (order, code(job.tray), job.key.clone())
        });
    }

    /// Crop and variety of plants, for a reason.
    fn named(&self, say: Say, plants: Plants) -> Say {
        let (crop, variety) = self.picture.crop_of(plants).unwrap_or(("?", ""));
        say.with("crop", words::crop(crop))
            .with("variety", words::variety(variety))
    }

    /// Crops of several plants, each once.
    pub(crate) fn crops(&self, plants: impl Iterator<Item = Plants>) -> Arg {
        let mut crops: Vec<&str> = plants
            .filter_map(|plants| Some(self.picture.crop_of(plants)?.0))
            .collect();
        crops.sort_unstable();
        crops.dedup();
        Arg::List(crops.into_iter().map(words::crop).collect())
    }
}

/// The jobs to show now, in walking order.
pub(crate) fn jobs(picture: &Picture, now: NaiveDateTime) -> Vec<Job> {
    let plan = Plan::of(picture, now);
    let all = plan.all().into_iter();
    all.filter(|job| nagging::shown(picture, job, now))
        .collect()
}

/// The jobs that are due, those also that rest because they were not answered:
/// for a tray's own page.
pub(crate) fn due(picture: &Picture, now: NaiveDateTime) -> Vec<Job> {
    let plan = Plan::of(picture, now);
    let all = plan.all().into_iter();
    all.filter(|job| nagging::open(picture, job, now)).collect()
}

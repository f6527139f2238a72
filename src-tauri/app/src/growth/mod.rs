//! How far along a sowing is, when its seedlings are due, how many.

mod cold;
mod course;
mod learnt;
mod packet;
mod place;
#[cfg(test)]
mod tests;
mod view;

pub(crate) use cold::{Cold, ColdKind};
pub(crate) use learnt::{Learnt, PAST_SOWINGS, Past, learn};
pub(crate) use packet::{outlook_of, sound_pace, stated_pace};
pub(crate) use place::growth_in;

use crate::picture::Picture;
use crate::temperature::Temperatures;
use crate::view::DueView;
use chrono::{Days, NaiveDate, NaiveDateTime};
use course::{Bed, Course, course};
use plumule_agronomy::{
    Crop, HORIZON_DAYS, Outlook, PROGRESS_EPSILON, PacketOutlook, TimeFactor,
    average_emerged_share, crops, forecast,
};
use plumule_journal::id::PlaceId;
use plumule_journal::state::{SowingState, TrayState};
use plumule_journal::words::{Container, PlaceKind};
use std::collections::BTreeSet;

/// The most seeds that a forecast takes.
const MOST_SEEDS: u32 = 100_000;

/// The share that is up on the day on which a sowing should be up.
const MOST: f64 = 0.9;

/// The root shows at so much of the days to emergence (judgement: the shoot has
/// its way to the light still before it).
const ROOT_SHOWS: f64 = 0.6;

/// Standard deviations to either side that leave a tenth of the odds beyond.
const TENTH: f64 = 1.281_551_565_544_600_4;

/// How a sowing grows.
#[derive(Clone, Debug)]
pub(crate) struct Growth {
    pub(crate) crop: &'static Crop,
    pub(crate) sown: NaiveDate,
    /// Seeds reckoned with: those sown, or what came up if that is more.
    pub(crate) seeds: u32,
    /// What the packet was worth by its age, whatever came of it.
    pub(crate) aged: PacketOutlook,
    pub(crate) outlook: Outlook,
    pub(crate) time_factor: TimeFactor,
    pub(crate) course: Course,
    pub(crate) due: DueView,
    /// It lies in the cold: that counts as cold, not as late.
    pub(crate) cold_weeks: bool,
    /// The cold it is in, or was to go through before it was warm.
    pub(crate) cold: Option<Cold>,
    /// All that ever came up.
    pub(crate) up: u32,
    /// Progress at each look, and all that had ever come up by then.
    pub(crate) looks: Vec<(f64, u32)>,
    /// Progress at its end, or now while it lives.
    pub(crate) reached: f64,
}

/// The growth of a sowing; none if its crop is not in the crop book, or its
/// tray or packet is not known.
pub(crate) fn growth(
    picture: &Picture,
    sowing: &SowingState,
    now: NaiveDateTime,
) -> Option<Growth> {
    growth_at(picture, &Temperatures::of(picture), sowing, now)
}

/// The same with the temperatures already made out.
pub(crate) fn growth_at(
    picture: &Picture,
    temperatures: &Temperatures<'_>,
    sowing: &SowingState,
    now: NaiveDateTime,
) -> Option<Growth> {
    let packet = picture.packets.get(&sowing.packet())?;
    let crop = crops().get(&packet.described.crop)?;
    let tray = picture.trays.get(&sowing.sown.tray)?;
    let began = sowing.opened_by.at.local;
    let learnt = Learnt::for_sowing(picture, sowing);
    let worth = outlook_of(packet, &learnt, began.date())?;
    let cold = cold::cold(picture, crop, sowing, tray);
    let seen = seen(picture, temperatures, (sowing, tray), crop, now)?;
    let Seen {
        course,
        looks,
        reached,
    } = seen;
    let up = sowing.plants.numbers.up;
    let least = (f64::from(up) / crop.seedlings_per_seed.max(1.0)).ceil() as u32;
    let sound = sowing.seeds().saturating_sub(sowing.seeds_lost());
    let seeds = sound.max(least).clamp(1, MOST_SEEDS);
    let time_factor = learnt.time_factor(crop, &packet.described, &worth, course.read_share);
    Some(Growth {
        crop,
        sown: began.date(),
        seeds,
        aged: outlook_of(packet, &Learnt::default(), began.date())?,
        outlook: worth.outlook,
        time_factor,
        due: due(
            crop,
            &course,
            seeds,
            worth.outlook,
            time_factor,
            began.date(),
        ),
        course,
        cold_weeks: cold.is_some_and(|cold| cold.lasts(now)),
        cold,
        up,
        looks,
        reached,
    })
}

/// The course of a sowing and what was seen on it.
struct Seen {
    course: Course,
    looks: Vec<(f64, u32)>,
    reached: f64,
}

fn seen(
    picture: &Picture,
    temperatures: &Temperatures<'_>,
    (sowing, tray): (&SowingState, &TrayState),
    crop: &Crop,
    now: NaiveDateTime,
) -> Option<Seen> {
    let began = sowing.opened_by.at.local;
    let looked = looks(sowing);
    let ended = sowing.plants.ended.as_ref().map(|ended| ended.at.at.local);
    let last = ended.unwrap_or(now).min(now).max(began);
    let moments: Vec<NaiveDateTime> = looked
        .iter()
        .map(|(at, _)| (*at).clamp(began, last))
        .chain([last])
        .collect();
    let fridges = fridges(picture);
    let cold = cold::cold(picture, crop, sowing, tray);
    let bed = Bed {
        cold_until: cold.and_then(|cold| cold.ends()),
        pace: if sprouts(tray) { 1.0 / ROOT_SHOWS } else { 1.0 },
        ..Bed::of_tray(tray, &fridges)
    };
    let course = course(
        temperatures,
        &bed,
        &crop.curve,
        began,
        now.max(began),
        &moments,
    )?;
    let (reached, at) = course.at.split_last()?;
    let ups = looked.iter().map(|(_, up)| *up);
    Some(Seen {
        looks: at.iter().copied().zip(ups).collect(),
        reached: *reached,
        course,
    })
}

/// When it was looked at and all that had ever come up by then: by counts, and
/// where more went on than were counted, by that.
fn looks(sowing: &SowingState) -> Vec<(NaiveDateTime, u32)> {
    let counts = sowing.counts.iter();
    let mut looks: Vec<(NaiveDateTime, u32)> = counts
        .map(|count| (count.at.at.local, count.ever_up))
        .collect();
    let plants = &sowing.plants;
    let counted = looks.iter().map(|(_, up)| *up).max().unwrap_or(0);
    let went = plants.went_on.iter().map(|went| went.at.at.local);
    let left = plants.left.iter().map(|left| left.at.at.local);
    if let Some(last) = went
        .chain(left)
        .max()
        .filter(|_| plants.numbers.up > counted)
    {
        looks.push((last, plants.numbers.up));
    }
    looks.sort_by_key(|(at, _)| *at);
    looks
}

impl Growth {
    /// Share of those that will come that are up at a progress, on average.
    fn share(&self, progress: f64) -> f64 {
        let TimeFactor { mean_ln, tau } = self.time_factor;
        average_emerged_share(progress, mean_ln, tau, self.crop.sigma)
    }

    /// Seedlings that a seed gives, above 1 where it is a cluster.
    fn per_seed(&self) -> f64 {
        self.crop.seedlings_per_seed.max(1.0)
    }

    /// Seedlings in the end, on average.
    pub(crate) fn mean_final(&self) -> f64 {
        f64::from(self.seeds) * self.outlook.mean() * self.crop.seedlings_per_seed.max(1.0)
    }

    /// Seedlings in the end: a tenth of the odds lies below the first and a
    /// tenth above the second; never fewer than are up.
    pub(crate) fn expected(&self) -> [f64; 2] {
        let up = f64::from(self.up);
        [-TENTH, TENTH].map(|deviations| self.final_at(deviations).round().max(up))
    }

    fn final_at(&self, deviations: f64) -> f64 {
        final_of(self.seeds, self.outlook, deviations) * self.per_seed()
    }

    /// What is usual: plants that nine in ten such sowings reach, at least 1. A
    /// cluster of seeds is good for one plant.
    pub(crate) fn usual(&self) -> u32 {
        (self.least().round() as u32).max(1)
    }

    /// The seeds of which, with odds of nine in ten, at least as many come up.
    fn least(&self) -> f64 {
        self.final_at(-TENTH) / self.per_seed()
    }

    /// The day by the end of which it has reached a progress; none if it does
    /// not within a year.
    pub(crate) fn day_reaching(&self, mark: f64) -> Option<NaiveDate> {
        let mut progress = 0.0;
        let mut gained = 0.0;
        let mut by_day = self.course.by_day.iter();
        let days = by_day.len() + HORIZON_DAYS as usize;
        self.sown.iter_days().take(days).find(|_| {
            gained = by_day.next().copied().unwrap_or(gained);
            progress += gained;
            progress >= mark - PROGRESS_EPSILON
        })
    }

    /// Whether so many are fewer than the odds of one in ten allow of seed that
    /// is as good as when it was packed.
    pub(crate) fn poor(&self, seeds: u32, up: u32) -> bool {
        let packed = self.aged.packed_germination;
        let weight = self.aged.outlook.a + self.aged.outlook.b;
        let Ok(sound) = Outlook::new(weight * packed, weight * (1.0 - packed)) else {
            return false;
        };
        f64::from(up) < MOST * final_of(seeds, sound, -TENTH)
    }

    /// Whether nine in ten of those expected are up.
    pub(crate) fn nearly_all_up(&self) -> bool {
        f64::from(self.up) >= MOST * self.mean_final()
    }

    /// Whether nothing is up, or fewer than the odds of one in ten allow by the
    /// day at which nine in ten of them should be.
    pub(crate) fn fewer_than_expected(&self) -> bool {
        self.up == 0 || f64::from(self.up) < MOST * self.least()
    }
}

/// Seeds that come up in the end, so many standard deviations from the mean of
/// the Beta-binomial.
fn final_of(seeds: u32, Outlook { a, b }: Outlook, deviations: f64) -> f64 {
    let n = f64::from(seeds);
    let mean = a / (a + b);
    let variance = n * mean * (1.0 - mean) * (a + b + n) / (a + b + 1.0);
    (n * mean + deviations * variance.sqrt()).clamp(0.0, n)
}

fn due(
    crop: &Crop,
    course: &Course,
    seeds: u32,
    outlook: Outlook,
    time_factor: TimeFactor,
    sown: NaiveDate,
) -> DueView {
    let found = forecast(
        course.by_day.iter().copied(),
        seeds,
        outlook,
        time_factor,
        crop.sigma,
    )
    .ok();
    let date = |offset: Option<u32>| sown.checked_add_days(Days::new(u64::from(offset?)));
    DueView {
        first: found.and_then(|found| date(found.first)),
        d10: found.and_then(|found| date(found.d10)),
        d50: found.and_then(|found| date(found.d50)),
        d90: found.and_then(|found| date(found.d90)),
    }
}

/// Seed is looked at on paper or in a bag: it is sprouted when the root shows.
pub(crate) fn sprouts(tray: &TrayState) -> bool {
    matches!(
        tray.described.container,
        Container::DampPaper | Container::Bag
    )
}

fn fridges(picture: &Picture) -> BTreeSet<PlaceId> {
    let places = picture.places.iter();
    places
        .filter(|(_, place)| place.described.kind == PlaceKind::Fridge)
        .map(|(id, _)| *id)
        .collect()
}

//! What is to be said of a sowing from what was seen of it.

use crate::growth::{Growth, Learnt, outlook_of};
use crate::picture::Picture;
use crate::season::last_sowing;
use crate::temperature::Temperatures;
use chrono::{Days, NaiveDate, NaiveDateTime};
use plumule_agronomy::{
    Beside, Crop, DEAD, Posterior, Remedy, Standing, VERDICT_FROM, Verdict, Watched, verdict,
};
use plumule_journal::content::{RangeC, Seeds};
use plumule_journal::id::PlaceId;
use plumule_journal::state::{PacketState, PlaceState, SowingState};
use plumule_journal::words::PlaceKind;

/// More seeds than this for a plant are not worth sowing (judgement).
const SEEDS_A_PLANT: u32 = 10;

/// Seeds dug up at a time (the design: two).
const DUG_AT_A_TIME: u32 = 2;

/// A sowing that is to be judged.
pub(crate) struct Case<'a> {
    pub(crate) picture: &'a Picture,
    pub(crate) temperatures: &'a Temperatures<'a>,
    pub(crate) sowing: &'a SowingState,
    pub(crate) growth: &'a Growth,
    pub(crate) now: NaiveDateTime,
}

/// What came of it.
pub(super) struct Judged<'a> {
    pub(super) verdict: Verdict,
    pub(super) posterior: Option<Posterior>,
    pub(super) remedy: Option<Remedy>,
    /// Seeds dug up so far.
    pub(super) dug: u32,
    /// Seeds that are not up.
    pub(super) left: u32,
    /// The last useful day to sow again.
    pub(super) last_sowing: Option<NaiveDate>,
    watched: Watched<'a>,
    standing: Standing,
    /// Where the crop has its recommended warmth, and its progress a day there.
    place: Option<(&'a PlaceState, f64)>,
}

/// What could be done about it, which takes longer to find out.
pub(super) struct Could<'a> {
    /// Where the crop has its recommended warmth, and the probability of
    /// reaching what is wanted there.
    pub(super) place: Option<(&'a PlaceState, f64)>,
    /// How many to sow beside it, where odds can be told.
    pub(super) beside: Option<Beside>,
    /// Another packet of the crop that is better seed, and how many of it.
    pub(super) better: Option<(&'a PacketState, u32)>,
    /// What digging up may find (firm, soft), and what would be thought then.
    pub(super) finds: Vec<(u32, u32, Posterior)>,
}

/// Plants wanted of a sowing: what was said, else what is usual.
pub(super) fn wanted(sowing: &SowingState, growth: &Growth) -> u32 {
    sowing.sown.wanted.unwrap_or_else(|| growth.usual())
}

/// Plants it gave that were not lost. Who thins has enough: those count.
pub(crate) fn living(sowing: &SowingState) -> u32 {
    let numbers = &sowing.plants.numbers;
    numbers.up.saturating_sub(numbers.lost + numbers.missing)
}

impl<'a> Case<'a> {
    /// Seedlings in the end, on average, by what was seen; none before it can be
    /// judged.
    pub(crate) fn expected_final(&self) -> Option<f64> {
        Some(self.judge()?.posterior?.expected_final())
    }

    /// None for a sowing that has ended or gone on, or is not far enough.
    pub(super) fn judge(&self) -> Option<Judged<'a>> {
        let (growth, plants) = (self.growth, &self.sowing.plants);
        let gone = plants.ended.is_some() || !plants.went_on.is_empty();
        // Up where none could be: that is said whenever it is seen.
        let mut looks = growth.looks.iter();
        let odd = looks.any(|(progress, up)| *progress <= 0.0 && *up > 0);
        if gone || (growth.reached < VERDICT_FROM && !odd) {
            return None;
        }
        let lost = self.sowing.seeds_lost();
        let seeds = growth
            .up
            .max(self.sowing.seeds().saturating_sub(lost))
            .max(1);
        let left = seeds.saturating_sub(growth.up);
        let dug = |of: fn(&plumule_journal::state::Dug) -> u32| {
            self.sowing.dug.iter().map(of).fold(0, u32::saturating_add)
        };
        let firm = dug(|dug| dug.firm).min(left);
        let soft = dug(|dug| dug.soft).min(left - firm);
        let watched = Watched {
            seeds,
            counts: &growth.looks,
            living: Some(living(self.sowing)),
            wanted: wanted(self.sowing, growth),
            outlook: growth.outlook,
            time_factor: growth.time_factor,
            sigma: growth.crop.sigma,
            dead: DEAD,
            firm,
            soft,
            horizon: None,
        };
        let place = self.suits();
        let last_sowing = last_sowing(self.picture, growth.crop, growth.sown);
        let standing = self.standing(place.map(|(_, rate)| rate), last_sowing);
        let (verdict, posterior) = verdict(&watched, &standing).ok()?;
        Some(Judged {
            verdict,
            remedy: standing.remedy,
            posterior,
            dug: firm + soft,
            left,
            last_sowing,
            watched,
            standing,
            place,
        })
    }

    /// What could be done about it.
    pub(super) fn could(&self, judged: &Judged<'a>) -> Could<'a> {
        let posterior = judged.posterior.as_ref();
        let reach_there = |posterior: &Posterior, rate: f64| {
            let Standing {
                days_left,
                progress,
                ..
            } = judged.standing;
            posterior.p_reach_by(days_left.map(|days| progress + days * rate))
        };
        let told = posterior.filter(|_| !matches!(judged.verdict, Verdict::None(_)));
        let beside = told.map(|posterior| self.worth_sowing(posterior.seeds_beside()));
        Could {
            place: judged
                .place
                .zip(posterior)
                .map(|((place, rate), posterior)| (place, reach_there(posterior, rate))),
            beside,
            better: told
                .zip(beside)
                .and_then(|(posterior, beside)| self.better(posterior, beside)),
            finds: match told {
                Some(_) => finds(&judged.watched, judged.left),
                None => Vec::new(),
            },
        }
    }

    /// The day on which the next is as likely as not to be up, after the day of
    /// the last look.
    pub(super) fn next(&self, judged: &Judged<'_>) -> Option<NaiveDate> {
        let posterior = judged.posterior.as_ref()?;
        self.day_to_look(posterior.next_progress()?)
    }

    /// The day on which it reaches a progress, after the day of the last look.
    fn day_to_look(&self, mark: f64) -> Option<NaiveDate> {
        let reached = self.growth.day_reaching(mark)?;
        let looked = self.sowing.counts.last();
        let after = looked.and_then(|count| count.at.at.local.date().succ_opt());
        Some(after.map_or(reached, |after| after.max(reached)))
    }

    /// More than the packet has, or than is reasonable for the plants that are
    /// missing, is to be sown from better seed.
    fn worth_sowing(&self, beside: Beside) -> Beside {
        let missing = wanted(self.sowing, self.growth).saturating_sub(living(self.sowing));
        let packet = self.picture.packets.get(&self.sowing.packet());
        let left = packet.and_then(PacketState::seeds_left).unwrap_or(u32::MAX);
        match beside {
            Beside::Seeds(seeds) if seeds > left.min(missing.saturating_mul(SEEDS_A_PLANT)) => {
                Beside::BetterSeed
            }
            beside => beside,
        }
    }

    /// Of the other packets of the crop the one of which the fewest seeds are
    /// enough, if they are fewer than of this one; its own variety first.
    fn better(&self, posterior: &Posterior, own_seed: Beside) -> Option<(&'a PacketState, u32)> {
        let own = self.picture.packets.get(&self.sowing.packet())?;
        let most = match own_seed {
            Beside::Seeds(seeds) => seeds,
            Beside::BetterSeed => u32::MAX,
            Beside::NotNeeded => return None,
        };
        let others = self.picture.packets_of(&own.described.crop);
        let enough = others.filter_map(|packet| {
            let described = &packet.described;
            if described.retired || described.packet == own.described.packet {
                return None;
            }
            let learnt = Learnt::of(self.picture, packet);
            let worth = outlook_of(packet, &learnt, self.now.date())?;
            match posterior.other_seeds_beside(worth.outlook).ok()? {
                Beside::Seeds(seeds)
                    if seeds < most && packet.seeds_left().is_none_or(|left| seeds <= left) =>
                {
                    Some((described.variety != own.described.variety, seeds, packet))
                }
                _ => None,
            }
        });
        let best =
            enough.min_by_key(|(other, seeds, packet)| (*other, *seeds, packet.described.packet));
        best.map(|(_, seeds, packet)| (packet, seeds))
    }

    fn standing(&self, there: Option<f64>, last_sowing: Option<NaiveDate>) -> Standing {
        let growth = self.growth;
        let (low, high) = growth.crop.recommended_c;
        let mean_c = growth.course.mean_to_come_c;
        let recommended = growth.crop.curve.rate_per_day(low.midpoint(high));
        // Seedlings that are up when those of a last useful sowing would be are
        // as good as those.
        let days_left = last_sowing.map(|last| {
            let emergence = if recommended > 0.0 {
                recommended.recip()
            } else {
                0.0
            };
            ((last - self.now.date()).num_days() as f64 + emergence).max(0.0)
        });
        let last_look = growth.looks.last().map_or(0.0, |(progress, _)| *progress);
        Standing {
            progress: growth.reached.max(last_look),
            per_day: growth.course.by_day.last().copied().unwrap_or(0.0),
            per_day_recommended: there.unwrap_or(recommended),
            remedy: if mean_c < low {
                Some(Remedy::Warm)
            } else if mean_c > high {
                Some(Remedy::Cool)
            } else {
                None
            },
            days_left,
            in_cold_weeks: growth.cold_weeks,
            by_the_pinch: self.sowing.sown.seeds == Seeds::Pinch,
        }
    }

    /// Of the other places in use the one in which the crop has its recommended
    /// warmth and comes up soonest, and its progress a day there.
    pub(super) fn suits(&self) -> Option<(&'a PlaceState, f64)> {
        let tray = self.picture.trays.get(&self.sowing.sown.tray)?;
        let here = tray.stays.last().map(|stay| stay.place);
        let places = self.picture.walk().into_iter().filter(|place| {
            let described = &place.described;
            !described.retired
                && described.kind != PlaceKind::Fridge
                && Some(described.place) != here
        });
        let crop = self.growth.crop;
        let suiting = places.filter_map(|place| {
            let range = self.to_come(place.described.place)?;
            let (low, high) = crop.recommended_c;
            let mean_c = range.min_c.midpoint(range.max_c);
            (low..=high)
                .contains(&mean_c)
                .then(|| (place, day_progress(crop, range)))
        });
        suiting
            .filter(|(_, rate)| *rate > 0.0)
            .reduce(|best, next| if next.1 > best.1 { next } else { best })
    }

    fn to_come(&self, place: PlaceId) -> Option<RangeC> {
        let today = self.now.date();
        let tomorrow = today.checked_add_days(Days::new(1))?;
        self.temperatures.day(place, tomorrow, today)
    }
}

/// The odds after digging up so many seeds as are dug up at a time: all firm,
/// one of each, all soft.
fn finds(watched: &Watched<'_>, left: u32) -> Vec<(u32, u32, Posterior)> {
    let more = left
        .saturating_sub(watched.firm + watched.soft)
        .min(DUG_AT_A_TIME);
    let found = (0..=more).rev().filter_map(|firm| {
        let soft = more - firm;
        let then = Watched {
            firm: watched.firm + firm,
            soft: watched.soft + soft,
            ..*watched
        };
        Some((firm, soft, Posterior::new(&then).ok()?))
    });
    found.filter(|_| more > 0).collect()
}

fn day_progress(crop: &Crop, range: RangeC) -> f64 {
    crop.curve.day_progress(range.min_c, range.max_c)
}

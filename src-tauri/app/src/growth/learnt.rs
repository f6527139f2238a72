//! What finished sowings of a packet taught: its worth and its speed.

use super::packet::{YEAR_DAYS, sound_pace, stated_pace};
use super::{Seen, seen};
use crate::picture::Picture;
use crate::temperature::Temperatures;
use chrono::{NaiveDate, NaiveDateTime};
use plumule_agronomy::{
    Crop, Finished, PacketOutlook, Test, TimeFactor, crops, learnt_time_factor,
    old_seed_time_factor, tau,
};
use plumule_journal::content::{Leaving, PacketDescribed, Seeds};
use plumule_journal::id::PacketId;
use plumule_journal::state::{PacketState, SowingState, TrayState};
use plumule_journal::words::{Blame, LossCause};
use std::collections::BTreeMap;

/// So many of a packet's last finished sowings are asked (judgement: enough to
/// tell, and the round stays as cheap as what is alive).
pub(crate) const PAST_SOWINGS: usize = 4;

/// Progress at its end from which a sowing had its fair chance.
const FAIR_CHANCE: f64 = 1.6;

/// A finished sowing with the tray it lay in.
#[derive(Clone, Debug)]
pub(crate) struct Past {
    pub(crate) sowing: SowingState,
    pub(crate) tray: TrayState,
}

/// What is learnt of a packet.
#[derive(Clone, Debug, Default)]
pub(crate) struct Learnt {
    lessons: Vec<Lesson>,
    /// How fast other packets of the crop came up: asked where its own sowings
    /// do not tell.
    of_crop: Vec<Lesson>,
}

/// How fast it came up against what is usual, and who taught that.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Pace {
    /// The usual time is 1.
    pub(crate) factor: f64,
    /// Taught by other packets of the crop.
    pub(crate) of_crop: bool,
}

/// What one finished sowing taught.
#[derive(Clone, Copy, Debug)]
struct Lesson {
    ended: NaiveDateTime,
    /// Seeds that came up, of how many; none where it had no fair chance or
    /// nobody counted.
    worth: Option<(u32, u32)>,
    /// How fast; none where nobody looked while it came up.
    speed: Option<Finished>,
}

/// What the finished sowings in a picture teach, by packet.
pub(crate) fn learn(picture: &Picture, now: NaiveDateTime) -> BTreeMap<PacketId, Learnt> {
    if picture.past.is_empty() {
        return BTreeMap::new();
    }
    let temperatures = Temperatures::of(picture);
    let packets = picture.packets.iter().chain(&picture.kin);
    let own: BTreeMap<PacketId, (&str, Vec<Lesson>)> = packets
        .filter_map(|(id, packet)| {
            let key = packet.described.crop.as_str();
            let crop = crops().get(key)?;
            let past = picture.past.get(id).into_iter().flatten();
            let lessons = past.filter_map(|past| lesson(picture, &temperatures, crop, past, now));
            Some((*id, (key, lessons.collect())))
        })
        .collect();
    own.iter()
        .map(|(id, (crop, lessons))| {
            let others = own
                .iter()
                .filter(|(other, (of, _))| *other != id && of == crop);
            let mut of_crop: Vec<Lesson> = others
                .flat_map(|(_, (_, lessons))| lessons.iter().copied())
                .filter(|lesson| lesson.speed.is_some())
                .collect();
            of_crop.sort_by_key(|lesson| std::cmp::Reverse(lesson.ended));
            of_crop.truncate(PAST_SOWINGS);
            let lessons = lessons.clone();
            (*id, Learnt { lessons, of_crop })
        })
        .collect()
}

fn lesson(
    picture: &Picture,
    temperatures: &Temperatures<'_>,
    crop: &Crop,
    past: &Past,
    now: NaiveDateTime,
) -> Option<Lesson> {
    let Past { sowing, tray } = past;
    let ended = sowing.plants.ended.as_ref()?.at.at.local;
    let until = ended.min(now);
    let seen = seen(picture, temperatures, (sowing, tray), crop, until)?;
    Some(Lesson {
        ended,
        worth: worth(sowing, crop, seen.reached),
        speed: speed(&seen),
    })
}

/// Seeds that came up, of how many.
fn worth(sowing: &SowingState, crop: &Crop, reached: f64) -> Option<(u32, u32)> {
    let harmed = harmed(sowing);
    let up = sowing.plants.numbers.up;
    let guessed = sowing
        .counts
        .iter()
        .any(|count| !count.exact && count.ever_up == up);
    let number = match sowing.sown.seeds {
        Seeds::Exact(number) | Seeds::About(number) => number,
        Seeds::Pinch => return None,
    };
    // Of clusters nobody knows how many gave those that are up.
    let told = crop.seedlings_per_seed <= 1.0 && !harmed && !guessed;
    (reached >= FAIR_CHANCE && told && number > 0).then_some((up.min(number), number))
}

/// Whether it had no fair chance, by what was lost or by what the grower says.
fn harmed(sowing: &SowingState) -> bool {
    use LossCause::{Baked, DriedOut, Eaten, Frosted, Spilt};
    let harm = [Eaten, Baked, Frosted, DriedOut, Spilt];
    let blamed = [
        Blame::Eaten,
        Blame::Baked,
        Blame::Frosted,
        Blame::DriedOut,
        Blame::Spilt,
        // As good as spilt (judgement).
        Blame::WashedOut,
    ];
    let lost = sowing.plants.left.iter();
    let mut lost = lost.filter_map(|left| match left.how {
        Leaving::Lost(cause) => Some(cause),
        _ => None,
    });
    let mut seeds = sowing.seeds_lost.iter().map(|lost| lost.cause);
    let said = sowing.explained.as_ref();
    lost.any(|cause| harm.contains(&cause))
        || seeds.any(|cause| harm.contains(&cause))
        || said.is_some_and(|said| blamed.iter().any(|blame| said.causes.contains(blame)))
}

/// From the two looks between which half of them came up.
fn speed(seen: &Seen) -> Option<Finished> {
    let up = seen.looks.iter().map(|(_, up)| *up).max()?;
    let half = f64::from(up) / 2.0;
    let after = seen
        .looks
        .iter()
        .position(|(_, up)| f64::from(*up) >= half)?;
    let (later, more) = *seen.looks.get(after)?;
    let (earlier, fewer) = *seen.looks.get(after.checked_sub(1)?)?;
    let of_the_way = (half - f64::from(fewer)) / f64::from(more.checked_sub(fewer)?).max(1.0);
    let progress_at_half = earlier + (later - earlier) * of_the_way;
    (up > 0 && progress_at_half > 0.0).then_some(Finished {
        progress_at_half,
        up,
        share_of_days_with_reading: seen.course.read_share,
    })
}

impl Learnt {
    /// Of the packet, from all its finished sowings.
    pub(crate) fn of(picture: &Picture, packet: &PacketState) -> Self {
        let learnt = picture.learnt.get(&packet.described.packet);
        learnt.cloned().unwrap_or_default()
    }

    /// For a sowing of it: itself, and what ended after it, teaches it nothing.
    pub(crate) fn for_sowing(picture: &Picture, sowing: &SowingState) -> Self {
        let learnt = picture.learnt.get(&sowing.packet());
        let mut learnt = learnt.cloned().unwrap_or_default();
        if let Some(ended) = &sowing.plants.ended {
            let own = ended.at.at.local;
            learnt.lessons.retain(|lesson| lesson.ended < own);
            learnt.of_crop.retain(|lesson| lesson.ended < own);
        }
        learnt
    }

    /// As germination tests, of their age on a day.
    pub(super) fn tests(&self, on: NaiveDate) -> Vec<Test> {
        let tests = self.lessons.iter().filter_map(|lesson| {
            let (germinated, of) = lesson.worth?;
            let days = (on - lesson.ended.date()).num_days().max(0);
            Some(Test {
                germinated,
                of,
                age_years: days as f64 / YEAR_DAYS,
            })
        });
        tests.collect()
    }

    /// How many sowings told its worth, and how many came up of how many seeds.
    pub(crate) fn own(&self) -> Option<(usize, u32, u32)> {
        let worths: Vec<(u32, u32)> = self.lessons.iter().filter_map(|it| it.worth).collect();
        let up = worths.iter().map(|(up, _)| up).sum();
        let of = worths.iter().map(|(_, of)| of).sum();
        (!worths.is_empty()).then_some((worths.len(), up, of))
    }

    /// How fast it came up so far, where that was seen.
    pub(crate) fn pace(&self, crop: &Crop, described: &PacketDescribed) -> Option<Pace> {
        let (speeds, of_crop) = self.speeds(crop, described);
        if speeds.is_empty() {
            return None;
        }
        let sound = sound_pace(crop, described);
        let learnt = learnt_time_factor(sound, crop.sigma, &speeds).ok()?;
        Some(Pace {
            factor: learnt.mean_ln.exp(),
            of_crop,
        })
    }

    /// As if sowings of other packets had taught it.
    #[cfg(test)]
    pub(super) fn told_of_others(self) -> Self {
        Self {
            lessons: Vec::new(),
            of_crop: self.lessons,
        }
    }

    /// How fast its own sowings were; where they do not tell, those of other
    /// packets, and then true. A packet that states its own days is not like
    /// others.
    fn speeds(&self, crop: &Crop, described: &PacketDescribed) -> (Vec<Finished>, bool) {
        let own = speeds(&self.lessons);
        if own.is_empty() && stated_pace(crop, described).is_none() {
            return (speeds(&self.of_crop), true);
        }
        (own, false)
    }

    /// What is known of its speed: by its age, by what it states and what came of
    /// it, and by how well its temperatures are known.
    pub(crate) fn time_factor(
        &self,
        crop: &Crop,
        described: &PacketDescribed,
        worth: &PacketOutlook,
        read_share: f64,
    ) -> TimeFactor {
        let sound = sound_pace(crop, described);
        let (mut speeds, of_crop) = self.speeds(crop, described);
        let old = old_seed_time_factor(worth.germination, worth.packed_germination);
        let kind = old.map_or(sound, |old| TimeFactor {
            mean_ln: sound.mean_ln + old.mean_ln,
            ..old
        });
        if old.is_some() {
            // What sound seed of other packets did tells nothing of old seed.
            if of_crop {
                speeds.clear();
            }
            if speeds.is_empty() {
                return kind;
            }
        }
        let kind = learnt_time_factor(kind, crop.sigma, &speeds).unwrap_or(kind);
        TimeFactor {
            mean_ln: kind.mean_ln,
            tau: tau(kind.tau, read_share),
        }
    }
}

fn speeds(lessons: &[Lesson]) -> Vec<Finished> {
    lessons.iter().filter_map(|lesson| lesson.speed).collect()
}

//! Why a sowing did badly: causes in seedlings.

mod evidence;
mod factors;

pub use evidence::{Compost, Kept, Seen};

use crate::{Error, Light, average_emerged_share, old_seed_time_factor};
use factors::{AFTER_FACTORS, FACTORS};

/// A cause with fewer seedlings is not worth a word.
const LEAST_SEEDLINGS: f64 = 0.5;

/// A cause of at least this part of what is missing is likely, else possible
/// (judgement).
const LIKELY: f64 = 0.5;

/// Without a number, what the grower saw took this part of what is missing
/// (judgement).
const SEEN_SHARE: f64 = 0.5;

/// How many causes are worth showing.
pub const CAUSES_SHOWN: usize = 2;

/// What may have gone wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum CauseKind {
    /// Colder than the crop's recommended range.
    TooCold,
    /// Hotter than it.
    TooHot,
    /// Seed that is worth less than when it was packed, and slower.
    OldSeed,
    /// Covered by more than three times its thickness.
    TooDeep,
    /// Covered by less than twice its thickness.
    TooShallow,
    /// Seed that needs light, buried.
    BuriedFromLight,
    /// The compost dried out.
    DriedOut,
    /// Kept wet in the cool.
    WetAndCool,
    /// Garden soil or coarse compost.
    WrongCompost,
    /// Washed out by a can.
    WashedOut,
    /// Eaten, as the grower saw.
    Eaten,
    /// Damped off, as the grower saw.
    DampedOff,
    /// Frosted, as the grower saw.
    Frosted,
    /// Baked by the sun or a heater, as the grower saw.
    Baked,
    /// Leggy for want of light, after coming up.
    WantOfLight,
    /// Kept too long in the heat after coming up.
    LongInTheHeat,
}

impl CauseKind {
    /// A short name that stays the same between versions.
    pub fn key(self) -> &'static str {
        match self {
            Self::TooCold => "too_cold",
            Self::TooHot => "too_hot",
            Self::OldSeed => "old_seed",
            Self::TooDeep => "too_deep",
            Self::TooShallow => "too_shallow",
            Self::BuriedFromLight => "buried_from_light",
            Self::DriedOut => "dried_out",
            Self::WetAndCool => "wet_and_cool",
            Self::WrongCompost => "wrong_compost",
            Self::WashedOut => "washed_out",
            Self::Eaten => "eaten",
            Self::DampedOff => "damped_off",
            Self::Frosted => "frosted",
            Self::Baked => "baked",
            Self::WantOfLight => "want_of_light",
            Self::LongInTheHeat => "long_in_the_heat",
        }
    }
}

/// A fact from the journal that speaks for a cause.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fact {
    /// Days whose mean lay outside the recommended range, and the mean of those.
    Days {
        /// How many.
        days: u32,
        /// Their mean in °C.
        mean_c: f64,
    },
    /// What the seed was worth when packed and is worth now, 0 to 1.
    Germination {
        /// When packed.
        packed: f64,
        /// Now.
        now: f64,
    },
    /// The depth it was sown at and the nearest right one, in mm.
    Depth {
        /// As sown.
        sown_mm: f64,
        /// As it should have been.
        right_mm: f64,
    },
    /// How often the compost was felt dry, and the longest time it was not felt.
    Dry {
        /// Times felt dry.
        felt: u32,
        /// Days between two feels.
        longest_gap_days: Option<f64>,
    },
    /// How often the compost was felt wet, and the mean temperature in °C.
    Wet {
        /// Times felt wet.
        felt: u32,
        /// Mean of the days.
        mean_c: f64,
    },
    /// What it was sown in.
    SownIn(Compost),
    /// How often it was watered by a can without a rose.
    Can(u32),
    /// What the grower saw, and how many, where that was said.
    Saw(Option<u32>),
    /// Light of a day after coming up, mol m⁻².
    Light(f64),
    /// Days in the heat after coming up.
    HeatDays(u32),
}

/// One cause, with what it cost.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cause {
    /// Which.
    pub kind: CauseKind,
    /// How many more seedlings (after coming up: how many more sound ones) had it
    /// been right. The numbers rank causes; they do not add up.
    pub seedlings: f64,
    /// Whether it is likely, else possible.
    pub likely: bool,
    /// What speaks for it.
    pub fact: Fact,
}

/// The causes that facts speak for, the costliest first; the first
/// [`CAUSES_SHOWN`] are worth showing. None where nothing to speak of is missing.
///
/// Each in seedlings: the number expected up by now had that one thing been right
/// less the number expected as it was kept. Expected is n·π·F(p) times the factor
/// of each thing that was not right, F averaged over the time factor. Too cold
/// and too hot change p: the days whose mean lay outside the recommended range are
/// put at its middle. Old seed changes π and its time factor; it is spoken of where
/// under three quarters of what was packed are expected. The other factors are
/// judgement, as is the half of what is missing that something seen takes where no
/// number is said. What harms after coming up is counted in those that are up.
///
/// # Errors
///
/// No seeds or more than 100,000; a day's minimum above its maximum or out of
/// range; a progress, depth, gap or light that is negative or not finite; a time
/// factor out of range.
///
/// ```
/// # use plumule_agronomy::*;
/// let pepper = crops().get("pepper").unwrap();
/// // Three weeks on a cool sill: 14 °C by night, 18 by day.
/// let days = [(14.0, 18.0); 21];
/// let progress = 21.0 * pepper.curve.day_progress(14.0, 18.0);
/// let packet = packet_outlook(pepper, 0.5, None, Storage::CoolCupboard, &[])?;
/// let kept = Kept::new(pepper, 20, 2, &days, progress, packet, TimeFactor::new(0.0, 0.25)?);
/// assert_eq!(causes(&kept)?.first().unwrap().kind, CauseKind::TooCold);
/// # Ok::<(), Error>(())
/// ```
pub fn causes(kept: &Kept<'_>) -> Result<Vec<Cause>, Error> {
    kept.check()?;
    let seeds = f64::from(kept.seeds);
    let packed = kept
        .packet
        .packed_germination
        .max(kept.packet.outlook.mean());
    let missing = seeds * packed - f64::from(kept.up);
    let mut found = after_coming_up(kept);
    if missing >= LEAST_SEEDLINGS {
        found.extend(before_coming_up(kept, missing));
    }
    found.retain(|cause| cause.seedlings >= LEAST_SEEDLINGS);
    found.sort_by(|one, other| other.seedlings.total_cmp(&one.seedlings));
    Ok(found)
}

fn before_coming_up(kept: &Kept<'_>, missing: f64) -> Vec<Cause> {
    let seeds = f64::from(kept.seeds);
    let now = kept.packet.outlook.mean();
    let packed = kept.packet.packed_germination;
    let slowed = old_seed_time_factor(kept.packet.germination, packed);
    let as_kept = slowed.unwrap_or(kept.time_factor);
    let share = |progress, factor: crate::TimeFactor| {
        average_emerged_share(progress, factor.mean_ln, factor.tau, kept.crop.sigma)
    };
    let wrong: Vec<(CauseKind, f64, Fact)> = FACTORS
        .iter()
        .filter_map(|(kind, judge)| judge(kept).map(|(factor, fact)| (*kind, factor, fact)))
        .collect();
    let factors: f64 = wrong.iter().map(|(_, factor, _)| factor).product();
    let expected = seeds * now * share(kept.progress, as_kept) * factors;

    // No cause can have cost more than what is missing.
    let cause = |kind, seedlings: f64, fact| {
        let seedlings = seedlings.min(missing);
        Cause {
            kind,
            seedlings,
            likely: seedlings >= LIKELY * missing,
            fact,
        }
    };
    let mut found: Vec<Cause> = wrong
        .into_iter()
        .map(|(kind, factor, fact)| cause(kind, expected / factor - expected, fact))
        .collect();
    for (kind, outside) in [
        (CauseKind::TooCold, kept.too_cold()),
        (CauseKind::TooHot, kept.too_hot()),
    ] {
        if let Some((gained, fact)) = outside {
            let right = seeds * now * share(kept.progress + gained, as_kept) * factors;
            found.push(cause(kind, right - expected, fact));
        }
    }
    if old_seed_time_factor(now, packed).is_some() {
        let right = seeds * packed * share(kept.progress, kept.time_factor) * factors;
        found.push(cause(
            CauseKind::OldSeed,
            right - expected,
            Fact::Germination { packed, now },
        ));
    }
    for &(seen, number) in kept.seen {
        let seedlings = number.map_or(SEEN_SHARE * missing, f64::from);
        found.push(cause(seen.kind(), seedlings, Fact::Saw(number)));
    }
    found
}

fn after_coming_up(kept: &Kept<'_>) -> Vec<Cause> {
    let up = f64::from(kept.up);
    AFTER_FACTORS
        .iter()
        .filter_map(|(kind, judge)| {
            let (factor, fact) = judge(kept)?;
            let weak = 1.0 - factor;
            Some(Cause {
                kind: *kind,
                seedlings: up * weak,
                likely: weak >= LIKELY,
                fact,
            })
        })
        .collect()
}

/// What a day's light leaves sound of those that are up (judgement).
fn sound_in(light: Light) -> f64 {
    match light {
        Light::TooDim => 0.4,
        Light::Fair => 0.8,
        Light::Good => 1.0,
    }
}

//! What stated mistakes leave of those that would come up. All of it judgement:
//! the direction is common practice, the size is not published.

use super::evidence::{Compost, Kept};
use super::{CauseKind, Fact, sound_in};
use crate::{Light, LightNeed};

/// The right depth as multiples of the seed's thickness (common practice).
const DEPTH: (f64, f64) = (2.0, 3.0);

/// Of seed buried at twice the greatest right depth so many still come up, and
/// as many again of those at thrice it.
const TWICE_TOO_DEEP: f64 = 0.6;

/// Of seed sown too shallow, and of seed on the surface that wants covering.
const TOO_SHALLOW: f64 = 0.85;
const UNCOVERED: f64 = 0.6;

/// Of seed that needs light, under more than this much cover, mm.
const BURIED: f64 = 0.5;
const LIGHT_REACHES_MM: f64 = 3.0;

/// For each time that the compost was felt dry; and where it was not felt for
/// longer than this many days.
const FELT_DRY: f64 = 0.8;
const LONG_GAP_DAYS: f64 = 5.0;
const LONG_GAP: f64 = 0.85;

/// Felt wet at least twice while 5 °C or more under the recommended range.
const WET_IN_THE_COOL: f64 = 0.6;
const COOL_BY_C: f64 = 5.0;

const GARDEN_SOIL: f64 = 0.6;
const COARSE: f64 = 0.8;

/// For each watering by a can, for seed thinner than this, mm.
const BY_CAN: f64 = 0.85;
const SMALL_SEED_MM: f64 = 1.5;

/// However often something was wrong, so many still come up.
const LEAST: f64 = 0.3;

/// For each day in the heat after coming up, beyond the first.
const HEAT_DAY: f64 = 0.9;

type Judge = fn(&Kept<'_>) -> Option<(f64, Fact)>;

/// What lessens those that come up.
pub(super) const FACTORS: [(CauseKind, Judge); 7] = [
    (CauseKind::TooDeep, too_deep),
    (CauseKind::TooShallow, too_shallow),
    (CauseKind::BuriedFromLight, buried),
    (CauseKind::DriedOut, dried_out),
    (CauseKind::WetAndCool, wet_and_cool),
    (CauseKind::WrongCompost, wrong_compost),
    (CauseKind::WashedOut, washed_out),
];

/// What weakens those that are up.
pub(super) const AFTER_FACTORS: [(CauseKind, Judge); 2] = [
    (CauseKind::WantOfLight, want_of_light),
    (CauseKind::LongInTheHeat, long_in_the_heat),
];

fn wants_light(kept: &Kept<'_>) -> bool {
    kept.crop.light == LightNeed::Needed
}

/// The depths that are right for the seed, by its thickness or by the book,
/// whichever is the wider.
fn right_depth(kept: &Kept<'_>) -> (f64, f64) {
    let (least, most) = kept.crop.depth_mm;
    let thickness = kept.crop.seed_thickness_mm;
    (
        least.min(DEPTH.0 * thickness),
        most.max(DEPTH.1 * thickness),
    )
}

fn too_deep(kept: &Kept<'_>) -> Option<(f64, Fact)> {
    let sown_mm = kept.depth_mm?;
    let (_, right_mm) = right_depth(kept);
    if wants_light(kept) || sown_mm <= right_mm {
        return None;
    }
    let factor = TWICE_TOO_DEEP.powf(sown_mm / right_mm - 1.0).max(LEAST);
    Some((factor, Fact::Depth { sown_mm, right_mm }))
}

fn too_shallow(kept: &Kept<'_>) -> Option<(f64, Fact)> {
    let sown_mm = kept.depth_mm?;
    let (right_mm, _) = right_depth(kept);
    if wants_light(kept) || sown_mm >= right_mm {
        return None;
    }
    let factor = if sown_mm > 0.0 {
        TOO_SHALLOW
    } else {
        UNCOVERED
    };
    Some((factor, Fact::Depth { sown_mm, right_mm }))
}

fn buried(kept: &Kept<'_>) -> Option<(f64, Fact)> {
    let sown_mm = kept.depth_mm?;
    let right_mm = kept.crop.depth_mm.1.max(LIGHT_REACHES_MM);
    (wants_light(kept) && sown_mm > right_mm).then_some((BURIED, Fact::Depth { sown_mm, right_mm }))
}

fn dried_out(kept: &Kept<'_>) -> Option<(f64, Fact)> {
    let long = kept.longest_gap_days.filter(|days| *days > LONG_GAP_DAYS);
    if kept.felt_dry == 0 && long.is_none() {
        return None;
    }
    let dry = FELT_DRY.powf(f64::from(kept.felt_dry));
    let gap = long.map_or(1.0, |_| LONG_GAP);
    let fact = Fact::Dry {
        felt: kept.felt_dry,
        longest_gap_days: long,
    };
    Some(((dry * gap).max(LEAST), fact))
}

fn wet_and_cool(kept: &Kept<'_>) -> Option<(f64, Fact)> {
    let mean_c = kept.mean_c()?;
    let cool = mean_c <= kept.crop.recommended_c.0 - COOL_BY_C;
    let fact = Fact::Wet {
        felt: kept.felt_wet,
        mean_c,
    };
    (kept.felt_wet >= 2 && cool).then_some((WET_IN_THE_COOL, fact))
}

fn wrong_compost(kept: &Kept<'_>) -> Option<(f64, Fact)> {
    let compost = kept.compost?;
    let factor = match compost {
        Compost::GardenSoil => GARDEN_SOIL,
        Compost::Coarse => COARSE,
    };
    Some((factor, Fact::SownIn(compost)))
}

fn washed_out(kept: &Kept<'_>) -> Option<(f64, Fact)> {
    let small = kept.crop.seed_thickness_mm < SMALL_SEED_MM;
    let factor = BY_CAN.powf(f64::from(kept.by_can)).max(LEAST);
    (small && kept.by_can > 0).then_some((factor, Fact::Can(kept.by_can)))
}

fn want_of_light(kept: &Kept<'_>) -> Option<(f64, Fact)> {
    if kept.leggy {
        return Some((sound_in(Light::TooDim), Fact::Saw(None)));
    }
    let light = kept.light?;
    let sound = sound_in(Light::of(light));
    (sound < 1.0).then_some((sound, Fact::Light(light)))
}

fn long_in_the_heat(kept: &Kept<'_>) -> Option<(f64, Fact)> {
    let beyond = kept.heat_days.checked_sub(1).filter(|days| *days > 0)?;
    let sound = HEAT_DAY.powf(f64::from(beyond)).max(LEAST);
    Some((sound, Fact::HeatDays(kept.heat_days)))
}

//! How a sowing was kept, as the journal has it.

use super::{CauseKind, Fact};
use crate::forecast::MAX_SEEDS;
use crate::{Crop, Error, PacketOutlook, TimeFactor};

/// Temperatures of a day that can be believed, in °C.
const TEMPERATURE_C: std::ops::RangeInclusive<f64> = -60.0..=100.0;

/// What a sowing was sown in, where that may have harmed it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Compost {
    /// Soil from the garden.
    GardenSoil,
    /// Compost with lumps and bark in it.
    Coarse,
}

/// What the grower saw happen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Seen {
    /// Slugs, mice or birds had them.
    Eaten,
    /// They fell over at the neck.
    DampedOff,
    /// Frost had them.
    Frosted,
    /// Sun or a heater had them.
    Baked,
}

impl Seen {
    pub(super) fn kind(self) -> CauseKind {
        match self {
            Self::Eaten => CauseKind::Eaten,
            Self::DampedOff => CauseKind::DampedOff,
            Self::Frosted => CauseKind::Frosted,
            Self::Baked => CauseKind::Baked,
        }
    }
}

/// A sowing and how it was kept. What the journal does not say is left as
/// [`Kept::new`] has it, and speaks for no cause.
#[derive(Debug, Clone, Copy)]
pub struct Kept<'a> {
    /// What was sown.
    pub crop: &'a Crop,
    /// How many seeds.
    pub seeds: u32,
    /// How many ever came up.
    pub up: u32,
    /// The minimum and maximum of each day since sowing, in °C.
    pub days: &'a [(f64, f64)],
    /// The thermal progress as it was kept.
    pub progress: f64,
    /// What the packet was worth when sown.
    pub packet: PacketOutlook,
    /// The time factor of sound seed.
    pub time_factor: TimeFactor,
    /// How deep it was sown, in mm; 0 is on the surface.
    pub depth_mm: Option<f64>,
    /// What it was sown in, where that is to blame.
    pub compost: Option<Compost>,
    /// How often it was felt dry.
    pub felt_dry: u32,
    /// How often it was felt wet.
    pub felt_wet: u32,
    /// The longest time between two feels, in days.
    pub longest_gap_days: Option<f64>,
    /// How often it was watered by a can without a rose before it came up.
    pub by_can: u32,
    /// What the grower saw, and how many it took.
    pub seen: &'a [(Seen, Option<u32>)],
    /// The light of a day where it stood after coming up, mol m⁻².
    pub light: Option<f64>,
    /// Whether the grower saw seedlings grow leggy.
    pub leggy: bool,
    /// Days it stood in the heat after coming up.
    pub heat_days: u32,
}

impl<'a> Kept<'a> {
    /// A sowing of which only the warmth and the packet are known.
    pub fn new(
        crop: &'a Crop,
        seeds: u32,
        up: u32,
        days: &'a [(f64, f64)],
        progress: f64,
        packet: PacketOutlook,
        time_factor: TimeFactor,
    ) -> Self {
        Self {
            crop,
            seeds,
            up,
            days,
            progress,
            packet,
            time_factor,
            depth_mm: None,
            compost: None,
            felt_dry: 0,
            felt_wet: 0,
            longest_gap_days: None,
            by_can: 0,
            seen: &[],
            light: None,
            leggy: false,
            heat_days: 0,
        }
    }

    pub(super) fn check(&self) -> Result<(), Error> {
        if !(1..=MAX_SEEDS).contains(&self.seeds) {
            return Err(Error::Seeds { seeds: self.seeds });
        }
        for &(min_c, max_c) in self.days {
            for temperature in [min_c, max_c] {
                if !TEMPERATURE_C.contains(&temperature) {
                    return Err(Error::Temperature(temperature));
                }
            }
            if min_c > max_c {
                return Err(Error::MinimumAboveMaximum(min_c, max_c));
            }
        }
        if !(self.progress.is_finite() && self.progress >= 0.0) {
            return Err(Error::Progress(self.progress));
        }
        self.packet.outlook.check()?;
        self.time_factor.check()?;
        for (what, value) in [
            ("depth", self.depth_mm),
            ("the longest gap", self.longest_gap_days),
            ("light", self.light),
        ] {
            if let Some(value) = value.filter(|value| !(0.0..=10_000.0).contains(value)) {
                return Err(Error::Measure(what, value));
            }
        }
        Ok(())
    }

    /// The mean temperature of all days.
    pub(super) fn mean_c(&self) -> Option<f64> {
        mean(
            self.days
                .iter()
                .map(|(min_c, max_c)| min_c.midpoint(*max_c)),
        )
    }

    /// The progress lost on days colder than the recommended range, and the days.
    pub(super) fn too_cold(&self) -> Option<(f64, Fact)> {
        let (low, _) = self.crop.recommended_c;
        self.outside(|mean_c| mean_c < low)
    }

    /// The same for days hotter.
    pub(super) fn too_hot(&self) -> Option<(f64, Fact)> {
        let (_, high) = self.crop.recommended_c;
        self.outside(|mean_c| mean_c > high)
    }

    fn outside(&self, is_outside: impl Fn(f64) -> bool) -> Option<(f64, Fact)> {
        let curve = &self.crop.curve;
        let (low, high) = self.crop.recommended_c;
        let right = curve.rate_per_day(low.midpoint(high));
        let days = || {
            let outside = |(min_c, max_c): &&(f64, f64)| is_outside(min_c.midpoint(*max_c));
            self.days.iter().filter(outside)
        };
        let gained: f64 = days()
            .map(|(min_c, max_c)| (right - curve.day_progress(*min_c, *max_c)).max(0.0))
            .sum();
        let mean_c = mean(days().map(|(min_c, max_c)| min_c.midpoint(*max_c)))?;
        let days = u32::try_from(days().count()).ok()?;
        (gained > 0.0).then_some((gained, Fact::Days { days, mean_c }))
    }
}

fn mean(values: impl Iterator<Item = f64>) -> Option<f64> {
    let (sum, count) = values.fold((0.0, 0.0), |(sum, count), value| (sum + value, count + 1.0));
    (count > 0.0).then(|| sum / count)
}

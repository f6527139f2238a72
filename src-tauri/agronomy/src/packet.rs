//! What a packet of seed is still worth.

use crate::{Crop, Error, Outlook, normal, outlook};
use serde::Deserialize;

/// Legal minimum germination taken for a crop that has none (judgement).
const NO_LEGAL_MINIMUM: f64 = 0.65;

/// How many seeds a packet's age and label are worth as evidence (judgement).
const PRIOR_SEEDS: f64 = 12.0;

/// A stated germination counts at least as the first, at most as the second.
const STATED: (f64, f64) = (0.01, 0.99);

/// Tests older than this age like the packet from their date.
const FRESH_TEST_YEARS: f64 = 1.0;

/// How a packet is kept (presets: judgement).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Storage {
    /// 5 °C in a sealed jar with a drying agent, 2 % drier.
    FridgeSealed,
    /// 15 °C and dry: what life expectancies are for.
    CoolCupboard,
    /// 20 °C and dry.
    WarmRoom,
    /// 15 °C, 2 % damper.
    DampShed,
}

impl Storage {
    /// How many times as fast as in a cool dry cupboard seed ages:
    /// 2^((T - 15)/5.6) · 2^(extra moisture in %), after Harrington's rule that
    /// life halves with each 10 °F and with each percent of seed moisture.
    ///
    /// ```
    /// # use plumule_agronomy::Storage;
    /// assert_eq!(Storage::CoolCupboard.multiplier(), 1.0);
    /// assert_eq!(Storage::DampShed.multiplier(), 4.0);
    /// ```
    pub fn multiplier(self) -> f64 {
        let (temperature_c, extra_moisture): (f64, f64) = match self {
            Self::FridgeSealed => (5.0, -2.0),
            Self::CoolCupboard => (15.0, 0.0),
            Self::WarmRoom => (20.0, 0.0),
            Self::DampShed => (15.0, 2.0),
        };
        ((temperature_c - 15.0) / 5.6 + extra_moisture).exp2()
    }
}

/// A germination test, or a finished sowing that had its fair chance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Test {
    /// How many germinated or came up.
    pub germinated: u32,
    /// How many were in it, at least one.
    pub of: u32,
    /// Years since, 0 to 1000.
    pub age_years: f64,
}

/// What a packet is worth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PacketOutlook {
    /// The germination expected from age, storage and label alone, 0 to 1.
    pub germination: f64,
    /// The germination it is taken to have been packed at, 0 to 1.
    pub packed_germination: f64,
    /// The share that will come up, with what tests say.
    pub outlook: Outlook,
}

/// What a packet of `crop` is worth `age_years` (of 365.25 days, 0 to 1000)
/// after packing.
///
/// Expected germination g falls on the probit scale:
/// Φ⁻¹(g) = K₀ - (K - Kmin)·(age·m/L), with K₀ = Φ⁻¹ of the germination
/// `stated` on the packet (0 to 1, held to 0.01 to 0.99), else of halfway
/// between the crop's legal minimum and 1; Kmin = Φ⁻¹ of the legal minimum (7 CFR
/// 201.31); K that of the packet without a label, whatever is stated, so that
/// older is never worth more; L the crop's life expectancy; m the multiplier of
/// its [`Storage`]. So a packet without a label meets the legal minimum when its
/// life expectancy is over. The shape on the probit scale is that of the seed
/// viability equation of Ellis and Roberts.
///
/// The outlook is Beta(12g, 12(1 - g)), to which each test of k out of n adds k
/// and n - k; a test older than a year counts with as many as would have come
/// up had its seed aged like the packet since.
///
/// # Errors
///
/// An age or a stated germination out of range, a test of no seeds or with more
/// up than seeds, a crop whose own figures cannot be.
///
/// ```
/// # use plumule_agronomy::{Storage, crops, packet_outlook};
/// let tomato = crops().get("tomato").unwrap();
/// let after_its_life = packet_outlook(tomato, 4.0, None, Storage::CoolCupboard, &[])?;
/// assert!((after_its_life.germination - 0.75).abs() < 1e-9);
/// # Ok::<(), plumule_agronomy::Error>(())
/// ```
pub fn packet_outlook(
    crop: &Crop,
    age_years: f64,
    stated: Option<f64>,
    storage: Storage,
    tests: &[Test],
) -> Result<PacketOutlook, Error> {
    check_age(age_years)?;
    let minimum = crop.legal_minimum.unwrap_or(NO_LEGAL_MINIMUM);
    if !(STATED.0..=STATED.1).contains(&minimum) {
        return Err(Error::CropFigure("legal_minimum"));
    }
    if !(0.1..=100.0).contains(&crop.life_years) {
        return Err(Error::CropFigure("life_years"));
    }
    let unlabelled = f64::midpoint(minimum, 1.0);
    let packed_germination = match stated {
        Some(stated) if !(0.0..=1.0).contains(&stated) => return Err(Error::Germination(stated)),
        Some(stated) => stated.clamp(STATED.0, STATED.1),
        None => unlabelled,
    };
    let fall_per_year = (normal::quantile(unlabelled) - normal::quantile(minimum))
        * storage.multiplier()
        / crop.life_years;
    let aged = |germination: f64, years: f64| {
        normal::cdf(normal::quantile(germination) - fall_per_year * years)
    };

    let germination = aged(packed_germination, age_years);
    let mut outlook = Outlook {
        a: PRIOR_SEEDS * germination,
        b: PRIOR_SEEDS * (1.0 - germination),
    };
    for test in tests {
        check_age(test.age_years)?;
        if test.of == 0 || test.germinated > test.of {
            return Err(Error::Test {
                germinated: test.germinated,
                of: test.of,
            });
        }
        let (of, mut up) = (f64::from(test.of), f64::from(test.germinated));
        if test.age_years > FRESH_TEST_YEARS {
            let then = (up / of).clamp(STATED.0, STATED.1);
            up = up.min(of * aged(then, test.age_years));
        }
        outlook.a += up;
        outlook.b += of - up;
    }
    let (least, most) = (outlook::PARAMETER.start(), outlook::PARAMETER.end());
    Ok(PacketOutlook {
        germination,
        packed_germination,
        outlook: Outlook {
            a: outlook.a.clamp(*least, *most),
            b: outlook.b.clamp(*least, *most),
        },
    })
}

fn check_age(years: f64) -> Result<(), Error> {
    if (0.0..=1000.0).contains(&years) {
        Ok(())
    } else {
        Err(Error::Age(years))
    }
}

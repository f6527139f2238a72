//! An entry of the crop book as it stands in the file.

use crate::crop::{Basis, Cardinals, CropGroup, Maturity, Provenance, SowingCompost, Treatment};
use crate::{BookError, Caution, Crop, Curve, DayNight, Hardiness, LightNeed, SIGMA};
use serde::Deserialize;
use std::collections::BTreeMap;

/// A value, the key of its source, and its basis: in the file an array of the
/// three, so that none can be left out.
#[derive(Deserialize)]
struct Figure<T>(T, String, Basis);

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum NoneWord {
    None,
}

#[derive(Deserialize)]
#[serde(untagged)]
enum NodeDays {
    Days(f64),
    None(NoneWord),
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Entry {
    group: CropGroup,
    species: Figure<String>,
    curve: Option<Figure<Vec<(f64, NodeDays)>>>,
    base_c: Option<Figure<f64>>,
    optimum_c: Option<Figure<(f64, f64)>>,
    days_at_optimum: Option<Figure<f64>>,
    recommended_c: Figure<(f64, f64)>,
    maximum_c: Figure<f64>,
    legal_minimum: Option<Figure<f64>>,
    life_years: Figure<f64>,
    test_days: Option<Figure<(u32, u32)>>,
    seed_length_mm: Figure<f64>,
    seed_thickness_mm: Figure<f64>,
    depth_mm: Figure<(f64, f64)>,
    light: Figure<LightNeed>,
    alternating_c: Option<Figure<(f64, f64)>>,
    before_sowing: Option<Figure<Vec<Treatment>>>,
    compost: Figure<SowingCompost>,
    seedlings_per_seed: Option<Figure<f64>>,
    sigma: Option<Figure<f64>>,
    growing_on_c: Figure<DayNight>,
    weeks_to_raise: Option<Figure<(f64, f64)>>,
    hardiness: Figure<Hardiness>,
    set_out_weeks: Option<Figure<(f64, f64)>>,
    maturity: Option<Figure<Maturity>>,
    ripens_after_equinox: Option<Figure<bool>>,
    caution: Option<Figure<Caution>>,
}

/// Takes figures out of their entries and notes where they are from.
struct Reader<'a> {
    crop: &'a str,
    sources: &'a BTreeMap<String, String>,
    provenance: BTreeMap<&'static str, Provenance>,
}

impl Reader<'_> {
    fn take<T>(
        &mut self,
        name: &'static str,
        Figure(value, source, basis): Figure<T>,
    ) -> Result<T, BookError> {
        if !self.sources.contains_key(&source) {
            return Err(BookError::UnknownSource {
                crop: self.crop.to_owned(),
                source_key: source,
            });
        }
        self.provenance.insert(name, Provenance { source, basis });
        Ok(value)
    }

    fn maybe<T>(
        &mut self,
        name: &'static str,
        figure: Option<Figure<T>>,
    ) -> Result<Option<T>, BookError> {
        figure.map(|figure| self.take(name, figure)).transpose()
    }

    fn hold(&self, figure: &'static str, holds: bool) -> Result<(), BookError> {
        if holds {
            Ok(())
        } else {
            Err(BookError::Figure {
                crop: self.crop.to_owned(),
                figure,
            })
        }
    }
}

impl Entry {
    pub(crate) fn into_crop(
        self,
        key: &str,
        sources: &BTreeMap<String, String>,
    ) -> Result<Crop, BookError> {
        let mut read = Reader {
            crop: key,
            sources,
            provenance: BTreeMap::new(),
        };
        let maximum_c = read.take("maximum_c", self.maximum_c)?;
        let published = read.maybe("curve", self.curve)?;
        let cardinals = (
            read.maybe("base_c", self.base_c)?,
            read.maybe("optimum_c", self.optimum_c)?,
            read.maybe("days_at_optimum", self.days_at_optimum)?,
        );
        let (nodes, built) = match (published, cardinals) {
            (Some(nodes), (None, None, None)) => (nodes_of(nodes), None),
            (None, (Some(base_c), Some(optimum_c), Some(days_at_optimum))) => {
                let (cool, warm) = optimum_c;
                read.hold("optimum_c", cool <= warm && warm < maximum_c)?;
                let mut nodes = vec![(base_c, None), (cool, Some(days_at_optimum))];
                if cool < warm {
                    nodes.push((warm, Some(days_at_optimum)));
                }
                let built = Cardinals {
                    base_c,
                    optimum_c,
                    days_at_optimum,
                };
                (nodes, Some(built))
            }
            _ => {
                return Err(BookError::OneCurve {
                    crop: key.to_owned(),
                });
            }
        };
        let mut crop = Crop {
            key: key.to_owned(),
            group: self.group,
            built,
            species: read.take("species", self.species)?,
            curve: Curve::new(&nodes, maximum_c).map_err(|error| BookError::Curve {
                crop: key.to_owned(),
                error,
            })?,
            recommended_c: read.take("recommended_c", self.recommended_c)?,
            maximum_c,
            legal_minimum: read.maybe("legal_minimum", self.legal_minimum)?,
            life_years: read.take("life_years", self.life_years)?,
            test_days: read.maybe("test_days", self.test_days)?,
            seed_length_mm: read.take("seed_length_mm", self.seed_length_mm)?,
            seed_thickness_mm: read.take("seed_thickness_mm", self.seed_thickness_mm)?,
            depth_mm: read.take("depth_mm", self.depth_mm)?,
            light: read.take("light", self.light)?,
            alternating_c: read.maybe("alternating_c", self.alternating_c)?,
            before_sowing: read
                .maybe("before_sowing", self.before_sowing)?
                .unwrap_or_default(),
            compost: read.take("compost", self.compost)?,
            seedlings_per_seed: read
                .maybe("seedlings_per_seed", self.seedlings_per_seed)?
                .unwrap_or(1.0),
            sigma: read.maybe("sigma", self.sigma)?.unwrap_or(SIGMA),
            growing_on_c: read.take("growing_on_c", self.growing_on_c)?,
            weeks_to_raise: read.maybe("weeks_to_raise", self.weeks_to_raise)?,
            hardiness: read.take("hardiness", self.hardiness)?,
            set_out_weeks: read.maybe("set_out_weeks", self.set_out_weeks)?,
            maturity: read.maybe("maturity", self.maturity)?,
            ripens_after_equinox: read
                .maybe("ripens_after_equinox", self.ripens_after_equinox)?
                .unwrap_or(false),
            caution: read.maybe("caution", self.caution)?,
            provenance: BTreeMap::new(),
        };
        crop.check(&read)?;
        crop.provenance = read.provenance;
        Ok(crop)
    }
}

fn nodes_of(nodes: Vec<(f64, NodeDays)>) -> Vec<(f64, Option<f64>)> {
    nodes
        .into_iter()
        .map(|(temperature, days)| match days {
            NodeDays::Days(days) => (temperature, Some(days)),
            NodeDays::None(NoneWord::None) => (temperature, None),
        })
        .collect()
}

impl Crop {
    fn check(&self, read: &Reader<'_>) -> Result<(), BookError> {
        let rises = |(low, high): (f64, f64), from: f64, to: f64| {
            (from..=to).contains(&low) && (low..=to).contains(&high)
        };
        let maybe_rises =
            |pair: Option<(f64, f64)>, from, to| pair.is_none_or(|pair| rises(pair, from, to));
        let within = |value: f64, from: f64, to: f64| (from..=to).contains(&value);
        for (figure, holds) in [
            ("recommended_c", rises(self.recommended_c, 0.0, 60.0)),
            (
                "legal_minimum",
                self.legal_minimum
                    .is_none_or(|share| within(share, 0.01, 0.99)),
            ),
            ("life_years", within(self.life_years, 0.1, 100.0)),
            (
                "test_days",
                self.test_days
                    .is_none_or(|(first, last)| (1..=last).contains(&first) && last <= 60),
            ),
            ("seed_length_mm", within(self.seed_length_mm, 0.01, 200.0)),
            (
                "seed_thickness_mm",
                within(self.seed_thickness_mm, 0.01, self.seed_length_mm),
            ),
            ("depth_mm", rises(self.depth_mm, 0.0, 500.0)),
            ("alternating_c", maybe_rises(self.alternating_c, 0.0, 60.0)),
            (
                "seedlings_per_seed",
                within(self.seedlings_per_seed, 1.0, 10.0),
            ),
            ("sigma", within(self.sigma, 0.001, 10.0)),
            ("growing_on_c day", rises(self.growing_on_c.day, 0.0, 60.0)),
            (
                "growing_on_c night",
                rises(self.growing_on_c.night, 0.0, 60.0),
            ),
            (
                "weeks_to_raise",
                maybe_rises(self.weeks_to_raise, 0.5, 104.0),
            ),
            (
                "set_out_weeks",
                maybe_rises(self.set_out_weeks, -26.0, 26.0),
            ),
            (
                "maturity",
                maybe_rises(self.maturity.map(|maturity| maturity.days), 1.0, 730.0),
            ),
            (
                "before_sowing",
                self.before_sowing.iter().all(|treatment| match *treatment {
                    Treatment::SoakHours(hours) => rises(hours, 0.1, 72.0),
                    Treatment::Chip => true,
                    Treatment::ColdWeeks(weeks) => rises(weeks, 0.5, 26.0),
                }),
            ),
        ] {
            read.hold(figure, holds)?;
        }
        Ok(())
    }
}

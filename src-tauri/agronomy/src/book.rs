//! The crop book: what is published about each crop, and where.

use crate::{Caution, Crop, Curve, CurveError, DayNight, Hardiness, LightNeed, SIGMA};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::OnceLock;

const BOOK: &str = include_str!("../crops.toml");

/// The crop book that is built in.
///
/// It is read once. A book that cannot be read is empty; the tests read it.
pub fn crops() -> &'static CropBook {
    static CROPS: OnceLock<CropBook> = OnceLock::new();
    CROPS.get_or_init(|| CropBook::parse(BOOK).unwrap_or_default())
}

/// Crops by their keys, and the sources of their figures.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct CropBook {
    crops: BTreeMap<String, Crop>,
    sources: BTreeMap<String, String>,
}

impl CropBook {
    /// Reads a book from its TOML text.
    ///
    /// # Errors
    ///
    /// Text that is not such a book, a figure without a source or a basis, a
    /// source that the book does not cite, a curve that is none, a figure that
    /// cannot be.
    pub fn parse(text: &str) -> Result<Self, BookError> {
        let file: File = toml::from_str(text)?;
        let mut crops = BTreeMap::new();
        for (key, entry) in file.crops {
            let crop = entry.into_crop(&key, &file.sources)?;
            crops.insert(key, crop);
        }
        Ok(Self {
            crops,
            sources: file.sources,
        })
    }

    /// The crop of a key.
    pub fn get(&self, key: &str) -> Option<&Crop> {
        self.crops.get(key)
    }

    /// All crops, by their keys in order.
    pub fn iter(&self) -> impl Iterator<Item = &Crop> {
        self.crops.values()
    }

    /// The full citation of each source, by its key in order.
    pub fn sources(&self) -> impl Iterator<Item = (&str, &str)> {
        self.sources
            .iter()
            .map(|(key, citation)| (key.as_str(), citation.as_str()))
    }
}

/// Why a text is no crop book.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum BookError {
    /// Not TOML, a field missing or unknown, or a figure without a source or a
    /// basis.
    #[error("the crop book cannot be read: {0}")]
    Text(#[from] toml::de::Error),
    /// A figure names a source that the book does not cite.
    #[error("{crop}: the book cites no source {source_key}")]
    UnknownSource {
        /// The crop.
        crop: String,
        /// The key that is not there.
        source_key: String,
    },
    /// The nodes make no curve.
    #[error("{crop}: {error}")]
    Curve {
        /// The crop.
        crop: String,
        /// What is wrong.
        error: CurveError,
    },
    /// A figure cannot be.
    #[error("{crop}: {figure} is out of range or the wrong way round")]
    Figure {
        /// The crop.
        crop: String,
        /// The name of the figure.
        figure: &'static str,
    },
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    sources: BTreeMap<String, String>,
    crops: BTreeMap<String, Entry>,
}

/// How a figure came into the book.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Basis {
    /// Read in the source.
    Read,
    /// Recalled from the source, not seen again.
    Memory,
    /// Judged, for want of a published figure.
    Judgement,
    /// What growers do, without a source.
    CommonPractice,
}

/// A value, the key of its source, and its basis: in the file an array of the
/// three, so that none can be left out.
#[derive(Deserialize)]
struct Figure<T>(
    T,
    String,
    #[expect(dead_code, reason = "it must be there")] Basis,
);

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
struct Entry {
    species: Figure<String>,
    curve: Figure<Vec<(f64, NodeDays)>>,
    recommended_c: Figure<(f64, f64)>,
    maximum_c: Figure<f64>,
    legal_minimum: Option<Figure<f64>>,
    life_years: Figure<f64>,
    seed_length_mm: Figure<f64>,
    seed_thickness_mm: Figure<f64>,
    depth_mm: Figure<(f64, f64)>,
    light: Figure<LightNeed>,
    seedlings_per_seed: Option<Figure<f64>>,
    sigma: Option<Figure<f64>>,
    growing_on_c: Figure<DayNight>,
    weeks_to_raise: Option<Figure<(f64, f64)>>,
    hardiness: Figure<Hardiness>,
    set_out_weeks: Option<Figure<(f64, f64)>>,
    caution: Option<Figure<Caution>>,
}

/// Takes figures out of their entries and notes their sources.
struct Reader<'a> {
    crop: &'a str,
    sources: &'a BTreeMap<String, String>,
}

impl Reader<'_> {
    fn take<T>(&self, Figure(value, source, _): Figure<T>) -> Result<T, BookError> {
        if self.sources.contains_key(&source) {
            Ok(value)
        } else {
            Err(BookError::UnknownSource {
                crop: self.crop.to_owned(),
                source_key: source,
            })
        }
    }

    fn maybe<T>(&self, figure: Option<Figure<T>>) -> Result<Option<T>, BookError> {
        figure.map(|figure| self.take(figure)).transpose()
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
    fn into_crop(self, key: &str, sources: &BTreeMap<String, String>) -> Result<Crop, BookError> {
        let read = Reader { crop: key, sources };
        let maximum_c = read.take(self.maximum_c)?;
        let nodes: Vec<(f64, Option<f64>)> = read
            .take(self.curve)?
            .into_iter()
            .map(|(temperature, days)| match days {
                NodeDays::Days(days) => (temperature, Some(days)),
                NodeDays::None(NoneWord::None) => (temperature, None),
            })
            .collect();
        let crop = Crop {
            key: key.to_owned(),
            species: read.take(self.species)?,
            curve: Curve::new(&nodes, maximum_c).map_err(|error| BookError::Curve {
                crop: key.to_owned(),
                error,
            })?,
            recommended_c: read.take(self.recommended_c)?,
            maximum_c,
            legal_minimum: read.maybe(self.legal_minimum)?,
            life_years: read.take(self.life_years)?,
            seed_length_mm: read.take(self.seed_length_mm)?,
            seed_thickness_mm: read.take(self.seed_thickness_mm)?,
            depth_mm: read.take(self.depth_mm)?,
            light: read.take(self.light)?,
            seedlings_per_seed: read.maybe(self.seedlings_per_seed)?.unwrap_or(1.0),
            sigma: read.maybe(self.sigma)?.unwrap_or(SIGMA),
            growing_on_c: read.take(self.growing_on_c)?,
            weeks_to_raise: read.maybe(self.weeks_to_raise)?,
            hardiness: read.take(self.hardiness)?,
            set_out_weeks: read.maybe(self.set_out_weeks)?,
            caution: read.maybe(self.caution)?,
        };
        crop.check(&read)?;
        Ok(crop)
    }
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
            ("seed_length_mm", within(self.seed_length_mm, 0.01, 200.0)),
            (
                "seed_thickness_mm",
                within(self.seed_thickness_mm, 0.01, self.seed_length_mm),
            ),
            ("depth_mm", rises(self.depth_mm, 0.0, 500.0)),
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
        ] {
            read.hold(figure, holds)?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn refused(from: &str, to: &str) -> String {
        let text = BOOK.replacen(from, to, 1);
        assert_ne!(text, BOOK, "{from} is not in the book");
        CropBook::parse(&text).unwrap_err().to_string()
    }

    #[test]
    fn the_book_can_be_read_and_is_complete() {
        let book = CropBook::parse(BOOK).unwrap();
        assert_eq!(book.iter().count(), 24);
        assert_eq!(crops(), &book);
        for crop in book.iter() {
            assert!(crop.legal_minimum.is_some(), "{}", crop.key);
        }
    }

    #[test]
    fn no_source_is_cited_in_vain() {
        let figures = BOOK.split_once("[crops.").unwrap().1;
        for (key, citation) in crops().sources() {
            assert!(figures.contains(&format!("\"{key}\"")), "{key}");
            assert!(citation.len() > 20, "{key}");
        }
    }

    #[test]
    fn a_figure_needs_a_known_source_and_a_basis() {
        let whole = "life_years = [4, \"front_range_longevity\", \"read\"]";
        for lacking in [
            "life_years = 4",
            "life_years = [4]",
            "life_years = [4, \"front_range_longevity\"]",
            "life_years = [4, \"front_range_longevity\", \"hearsay\"]",
        ] {
            assert!(
                refused(whole, lacking).contains("cannot be read"),
                "{lacking}"
            );
        }
        let unknown = whole.replace("front_range", "back_range");
        assert!(refused(whole, &unknown).contains("no source back_range_longevity"));
    }

    #[test]
    fn a_figure_that_cannot_be_is_refused() {
        for (from, to, named) in [
            ("life_years = [4,", "life_years = [nan,", "life_years"),
            (
                "weeks_to_raise = [[5, 7]",
                "weeks_to_raise = [[7, 5]",
                "weeks_to_raise",
            ),
            (
                "legal_minimum = [0.7,",
                "legal_minimum = [70,",
                "legal_minimum",
            ),
            ("[10, 53]", "[10, 0]", "days to emergence"),
            ("[10, 53]", "[4, 53]", "must rise"),
            ("[10, 53]", "[10, \"some\"]", "cannot be read"),
            ("[crops.beet]", "[crops.beet]\nflavour = 1", "flavour"),
        ] {
            assert!(refused(from, to).contains(named), "{to}");
        }
    }
}

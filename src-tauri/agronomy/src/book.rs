//! The crop book: what is published about each crop, and where.

use crate::entry::Entry;
use crate::{Crop, CurveError};
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
    /// Neither a published curve nor base, optimum and days to build one, or
    /// some of both.
    #[error("{crop}: needs either curve or base_c, optimum_c and days_at_optimum")]
    OneCurve {
        /// The crop.
        crop: String,
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

#[cfg(test)]
mod tests {
    use super::*;

    fn refused(from: &str, to: &str) -> String {
        let text = BOOK.replacen(from, to, 1);
        assert_ne!(text, BOOK, "{from} is not in the book");
        CropBook::parse(&text).unwrap_err().to_string()
    }

    #[test]
    fn the_book_can_be_read() {
        let book = CropBook::parse(BOOK).unwrap();
        assert!(book.iter().count() >= 60);
        assert_eq!(crops(), &book);
    }

    #[test]
    fn a_curve_is_published_or_built() {
        let optimum = "optimum_c = [[22, 26], \"house\", \"judgement\"]\n";
        assert!(refused(optimum, "").contains("either curve or"));
        let both = "base_c = [1, \"house\", \"judgement\"]\nspecies = [\"Asparagus";
        assert!(refused("species = [\"Asparagus", both).contains("either curve or"));
        assert!(refused(optimum, &optimum.replace("26]", "36]")).contains("optimum_c"));
        assert!(refused(optimum, &optimum.replace("22", "1")).contains("must rise"));
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
            (
                "alternating_c = [[20, 30]",
                "alternating_c = [[30, 20]",
                "alternating_c",
            ),
            ("hours = [12, 24]", "hours = [24, 12]", "before_sowing"),
            ("days = [65, 90]", "days = [90, 65]", "maturity"),
            ("test_days = [[4, 14]", "test_days = [[14, 4]", "test_days"),
            ("[10, 53]", "[10, 0]", "days to emergence"),
            ("[10, 53]", "[4, 53]", "must rise"),
            ("[10, 53]", "[10, \"some\"]", "cannot be read"),
            ("[crops.beet]", "[crops.beet]\nflavour = 1", "flavour"),
        ] {
            assert!(refused(from, to).contains(named), "{to}");
        }
    }
}

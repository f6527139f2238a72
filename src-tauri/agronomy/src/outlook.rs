//! What share of a packet's seeds will come up, as a distribution.

use crate::Error;
use statrs::function::beta::checked_beta_reg;

/// The smallest and greatest Beta parameter.
pub(crate) const PARAMETER: std::ops::RangeInclusive<f64> = 1e-9..=1e9;

/// Halvings that leave no bit of a share in doubt, down to 2⁻²⁰⁰.
const HALVINGS: usize = 260;

/// The share π of a packet's seeds that will come up: π ~ Beta(a, b).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outlook {
    /// First parameter, 1e-9 to 1e9: as if so many had come up.
    pub a: f64,
    /// Second parameter, 1e-9 to 1e9: as if so many had not.
    pub b: f64,
}

impl Outlook {
    /// An outlook whose parameters are in range.
    ///
    /// # Errors
    ///
    /// A parameter outside 1e-9 to 1e9 or not a number.
    ///
    /// ```
    /// # use plumule_agronomy::Outlook;
    /// // As if 9 had come up and 3 had not.
    /// assert_eq!(Outlook::new(9.0, 3.0)?.mean(), 0.75);
    /// assert!(Outlook::new(0.0, 3.0).is_err());
    /// # Ok::<(), plumule_agronomy::Error>(())
    /// ```
    pub fn new(a: f64, b: f64) -> Result<Self, Error> {
        let outlook = Self { a, b };
        outlook.check()?;
        Ok(outlook)
    }

    pub(crate) fn check(self) -> Result<(), Error> {
        if PARAMETER.contains(&self.a) && PARAMETER.contains(&self.b) {
            Ok(())
        } else {
            Err(Error::Outlook(self.a, self.b))
        }
    }

    /// The share expected to come up, a/(a + b).
    pub fn mean(self) -> f64 {
        self.a / (self.a + self.b)
    }

    /// The shares between which π lies with probability `level`, as much of the
    /// rest below as above.
    ///
    /// # Errors
    ///
    /// A level not strictly between 0 and 1, or parameters out of range.
    ///
    /// ```
    /// # use plumule_agronomy::Outlook;
    /// let (low, high) = Outlook::new(9.0, 3.0)?.span(0.9)?;
    /// assert!((low - 0.530).abs() < 1e-3 && (high - 0.921).abs() < 1e-3);
    /// # Ok::<(), plumule_agronomy::Error>(())
    /// ```
    pub fn span(self, level: f64) -> Result<(f64, f64), Error> {
        self.check()?;
        if !(level > 0.0 && level < 1.0) {
            return Err(Error::Level(level));
        }
        let rest = (1.0 - level) / 2.0;
        Ok((self.quantile(rest), self.quantile(1.0 - rest)))
    }

    /// By halving: the library's own inverse is meant for parameters near 1 and
    /// these may be anywhere.
    pub(crate) fn quantile(self, share: f64) -> f64 {
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..HALVINGS {
            let middle = f64::midpoint(low, high);
            if checked_beta_reg(self.a, self.b, middle).is_ok_and(|below| below < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        high
    }
}

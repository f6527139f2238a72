//! How fast a crop comes up at a temperature.

use crate::day;

/// Over how many °C above the warmest temperature at which some came up the
/// rate falls to 0, where the stated maximum does not lie above it (judgement).
const FALL_C: f64 = 5.0;

/// A crop's rate of progress by temperature: 1/days to emergence, in straight
/// lines between the temperatures at which it was tried.
#[derive(Debug, Clone, PartialEq)]
pub struct Curve {
    /// (temperature in °C, rate per day), by rising temperature; the last has
    /// rate 0.
    nodes: Vec<(f64, f64)>,
    /// Rise of the line below the first node, per day and °C.
    cold_slope: f64,
}

/// Why nodes make no curve.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum CurveError {
    /// A line needs two points.
    #[error("a curve needs at least two temperatures, not {0}")]
    TooFewNodes(usize),
    /// A temperature is not a number.
    #[error("a temperature of a curve must be between -60 and 100 °C, not {0}")]
    Temperature(f64),
    /// Temperatures must rise from node to node.
    #[error("the temperatures of a curve must rise, but {0} °C is followed by {1} °C")]
    Order(f64, f64),
    /// Days to emergence must be above 0.
    #[error("days to emergence must be between 0.01 and 10000, not {0}")]
    Days(f64),
    /// Nothing came up at any temperature.
    #[error("a curve needs at least one temperature at which some come up")]
    NoneComesUp,
}

impl CurveError {
    /// A short name that stays the same between versions.
    pub fn code(&self) -> &'static str {
        match self {
            Self::TooFewNodes(_) => "curve_too_few_nodes",
            Self::Temperature(_) => "curve_temperature",
            Self::Order(..) => "curve_order",
            Self::Days(_) => "curve_days",
            Self::NoneComesUp => "curve_none_comes_up",
        }
    }
}

impl Curve {
    /// A curve through `nodes`, each a temperature in °C and the days to
    /// emergence at it, or `None` where none came up.
    ///
    /// `maximum_c` is the crop's maximum soil temperature: above the highest
    /// node the rate falls to 0 in a straight line that ends there, or 5 °C
    /// above the highest node at which some came up where that node is not
    /// below `maximum_c`.
    ///
    /// # Errors
    ///
    /// Fewer than two nodes, temperatures that do not rise or lie outside -60
    /// to 100 °C, days outside 0.01 to 10000, or no node at which any come up.
    ///
    /// ```
    /// # use plumule_agronomy::Curve;
    /// let nodes = [(5.0, None), (10.0, Some(43.0)), (15.0, Some(14.0)), (20.0, Some(8.0))];
    /// let curve = Curve::new(&nodes, 35.0)?;
    /// assert_eq!(curve.rate_per_day(20.0), 1.0 / 8.0);
    /// assert_eq!(curve.rate_per_day(35.0), 0.0);
    /// # Ok::<(), plumule_agronomy::CurveError>(())
    /// ```
    pub fn new(nodes: &[(f64, Option<f64>)], maximum_c: f64) -> Result<Self, CurveError> {
        for &(temperature, days) in nodes {
            check_temperature(temperature)?;
            if let Some(days) = days.filter(|days| !(0.01..=10_000.0).contains(days)) {
                return Err(CurveError::Days(days));
            }
        }
        check_temperature(maximum_c)?;
        for (&(colder, _), &(warmer, _)) in nodes.iter().zip(nodes.iter().skip(1)) {
            if colder >= warmer {
                return Err(CurveError::Order(colder, warmer));
            }
        }
        let mut nodes: Vec<(f64, f64)> = nodes
            .iter()
            .map(|&(temperature, days)| (temperature, days.map_or(0.0, |days| 1.0 / days)))
            .collect();
        let &[first, second, ..] = nodes.as_slice() else {
            return Err(CurveError::TooFewNodes(nodes.len()));
        };
        if nodes.iter().all(|&(_, rate)| rate == 0.0) {
            return Err(CurveError::NoneComesUp);
        }
        if let Some(&(warmest, rate)) = nodes.last()
            && rate > 0.0
        {
            let end = if maximum_c > warmest {
                maximum_c
            } else {
                warmest + FALL_C
            };
            nodes.push((end, 0.0));
        }
        // A rate that falls with warmth is not followed into the cold, where it
        // would grow without end.
        let cold_slope = ((second.1 - first.1) / (second.0 - first.0)).max(0.0);
        Ok(Self { nodes, cold_slope })
    }

    /// The rate of progress at a constant temperature, per day: 1/days to
    /// emergence, 0 where none comes up.
    ///
    /// Linear in the rate between the curve's nodes. Below the lowest, the line
    /// through the two lowest, never under 0. Continuous, at least 0, and 0 for
    /// a temperature that is not a finite number.
    ///
    /// ```
    /// let tomato = plumule_agronomy::crops().get("tomato").unwrap();
    /// assert_eq!(tomato.curve.rate_per_day(20.0), 0.125);
    /// ```
    pub fn rate_per_day(&self, temperature_c: f64) -> f64 {
        if !temperature_c.is_finite() {
            return 0.0;
        }
        let above = self
            .nodes
            .partition_point(|&(node, _)| node <= temperature_c);
        let colder = above.checked_sub(1).and_then(|below| self.nodes.get(below));
        match (colder, self.nodes.get(above)) {
            (None, Some(&(lowest, rate))) => {
                (rate - self.cold_slope * (lowest - temperature_c)).max(0.0)
            }
            (Some(&(colder, slow)), Some(&(warmer, fast))) => {
                let part = (temperature_c - colder) / (warmer - colder);
                slow + (fast - slow) * part
            }
            (_, None) => 0.0,
        }
    }

    /// Progress over a whole day that runs from `min_c` to `max_c` in one sine
    /// (see [`day_temperature_at`](crate::day_temperature_at)): the rate
    /// averaged over the middles of the 24 hours.
    ///
    /// ```
    /// let tomato = plumule_agronomy::crops().get("tomato").unwrap();
    /// assert!((tomato.curve.day_progress(20.0, 20.0) - 0.125).abs() < 1e-12);
    /// ```
    pub fn day_progress(&self, min_c: f64, max_c: f64) -> f64 {
        self.part_of_day_progress(min_c, max_c, 0.0, 24.0)
    }

    /// Progress over the part of a day from `from_hour` up to but not including
    /// `to_hour` (0 to 24, local): a 24th of the rate at each middle of an hour
    /// that lies in it. The parts of a day add up to [`Curve::day_progress`].
    ///
    /// ```
    /// let tomato = plumule_agronomy::crops().get("tomato").unwrap();
    /// // Sown at noon: half of the day at 20 °C.
    /// let part = tomato.curve.part_of_day_progress(20.0, 20.0, 12.0, 24.0);
    /// assert!((part - 0.125 / 2.0).abs() < 1e-12);
    /// ```
    pub fn part_of_day_progress(
        &self,
        min_c: f64,
        max_c: f64,
        from_hour: f64,
        to_hour: f64,
    ) -> f64 {
        day::hourly(min_c, max_c)
            .filter(|(hour, _)| (from_hour..to_hour).contains(hour))
            .map(|(_, temperature)| self.rate_per_day(temperature))
            .sum::<f64>()
            / 24.0
    }
}

fn check_temperature(temperature: f64) -> Result<(), CurveError> {
    if (-60.0..=100.0).contains(&temperature) {
        Ok(())
    } else {
        Err(CurveError::Temperature(temperature))
    }
}

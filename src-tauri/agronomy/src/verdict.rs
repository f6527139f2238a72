//! Wait, warm it, give it up, or sow more beside it.

use crate::{Beside, Error, Posterior, Watched};

/// Before this progress there is no verdict (judgement: 4 in 5 of the usual time
/// is not late).
pub const VERDICT_FROM: f64 = 0.8;

/// From this probability of reaching the number wanted, waiting is advised.
const WORTH_WAITING: f64 = 0.5;

/// Under this probability that any more come, nothing more is likely.
const UNLIKELY: f64 = 0.05;

/// Where a watched sowing stands and what could be changed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Standing {
    /// The thermal progress today, not before the last count.
    pub progress: f64,
    /// Progress per day at the present temperatures, 0 or more.
    pub per_day: f64,
    /// Progress per day in the crop's recommended range, 0 or more.
    pub per_day_recommended: f64,
    /// What would bring it there.
    pub remedy: Option<Remedy>,
    /// Days until the last useful one; `None` where there is no such date.
    pub days_left: Option<f64>,
    /// Whether the seed is in its weeks of cold.
    pub in_cold_weeks: bool,
    /// Whether it was sown by the pinch, so that its number is not known.
    pub by_the_pinch: bool,
}

/// How to bring a tray into its crop's recommended range.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Remedy {
    /// It is too cold where it stands.
    Warm,
    /// It is too hot where it stands.
    Cool,
}

/// Why there is no verdict.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum NoVerdict {
    /// As many are there as are wanted.
    Reached,
    /// Seedlings were up at progress 0: the record of temperatures is wrong.
    RecordWrong,
    /// The seed is in its weeks of cold.
    ColdWeeks,
    /// Nobody knows how many seeds are in a pinch: say what is usual.
    Pinch,
    /// Too early, or not looked at since it was: the last count is what counts.
    TooEarly,
}

/// What to do about a sowing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Verdict {
    /// No verdict, and why.
    None(NoVerdict),
    /// Wait, and be silent until then.
    Wait {
        /// In how many days the next is expected with probability 1/2; `None`
        /// where it does not move.
        next_in_days: Option<f64>,
    },
    /// Move it: in the recommended range the number wanted is in reach.
    Move {
        /// Warmer or cooler.
        remedy: Remedy,
        /// The probability of reaching it there.
        p_reach: f64,
    },
    /// Nothing more is likely: dig up two seeds to be sure, then sow again if
    /// the season allows.
    NothingMore,
    /// Sow more beside it and keep the old tray.
    SowBeside(Beside),
}

/// The verdict on a watched sowing, and the posterior that it rests on.
///
/// The first that holds: wait, where the number wanted is reached with
/// probability 1/2; move it, where that would be so in the recommended range
/// from now on; nothing more is likely, where the probability that any more
/// come is under 0.05; sow more beside it. "Reached" is by the last useful day
/// where there is one, and never later than what a place at standstill will
/// bring: nothing. The horizon of `watched` is not asked; it follows from
/// `standing`.
///
/// There is no posterior where the record is wrong.
///
/// # Errors
///
/// As [`Posterior::new`], or a rate, progress or number of days that is
/// negative or not finite; progress today before the last count.
///
/// ```
/// # use plumule_agronomy::*;
/// let watched = Watched {
///     seeds: 20, counts: &[(1.0, 3)], living: None, wanted: 12,
///     outlook: Outlook::new(9.0, 3.0)?, time_factor: TimeFactor::new(0.0, 0.25)?,
///     sigma: SIGMA, dead: DEAD, firm: 0, soft: 0, horizon: None,
/// };
/// let standing = Standing {
///     progress: 1.0, per_day: 0.1, per_day_recommended: 0.12, remedy: None,
///     days_left: None, in_cold_weeks: false, by_the_pinch: false,
/// };
/// let (verdict, _) = verdict(&watched, &standing)?;
/// assert!(matches!(verdict, Verdict::Wait { next_in_days: Some(_) }));
/// # Ok::<(), Error>(())
/// ```
pub fn verdict(
    watched: &Watched<'_>,
    standing: &Standing,
) -> Result<(Verdict, Option<Posterior>), Error> {
    standing.check()?;
    let watched = Watched {
        horizon: standing.horizon(standing.per_day),
        ..*watched
    };
    let posterior = match Posterior::new(&watched) {
        Err(Error::UpWithoutProgress(_)) => {
            return Ok((Verdict::None(NoVerdict::RecordWrong), None));
        }
        found => found?,
    };
    if standing.progress < posterior.progress() {
        return Err(Error::CountOrder(posterior.progress(), standing.progress));
    }
    Ok((standing.judge(&watched, &posterior), Some(posterior)))
}

impl Standing {
    fn check(&self) -> Result<(), Error> {
        for progress in [self.progress, self.per_day, self.per_day_recommended] {
            if !(progress.is_finite() && progress >= 0.0) {
                return Err(Error::Progress(progress));
            }
        }
        match self.days_left {
            Some(days) if !(days.is_finite() && days >= 0.0) => {
                Err(Error::Duration("days left", days))
            }
            _ => Ok(()),
        }
    }

    /// The progress that will be made in time at a rate.
    fn horizon(&self, per_day: f64) -> Option<f64> {
        match self.days_left {
            Some(days) => Some((self.progress + days * per_day).min(f64::MAX)),
            None if per_day == 0.0 => Some(self.progress),
            None => None,
        }
    }

    fn judge(&self, watched: &Watched<'_>, posterior: &Posterior) -> Verdict {
        if posterior.living() >= watched.wanted {
            return Verdict::None(NoVerdict::Reached);
        }
        for (holds, why) in [
            (self.in_cold_weeks, NoVerdict::ColdWeeks),
            (self.by_the_pinch, NoVerdict::Pinch),
            (posterior.progress() < VERDICT_FROM, NoVerdict::TooEarly),
        ] {
            if holds {
                return Verdict::None(why);
            }
        }
        if posterior.p_reach() >= WORTH_WAITING {
            let next = posterior.next_progress().filter(|_| self.per_day > 0.0);
            return Verdict::Wait {
                next_in_days: next.map(|next| (next - self.progress).max(0.0) / self.per_day),
            };
        }
        if let Some(remedy) = self.remedy {
            let p_reach = posterior.p_reach_by(self.horizon(self.per_day_recommended));
            if p_reach >= WORTH_WAITING {
                return Verdict::Move { remedy, p_reach };
            }
        }
        if posterior.p_any_more() < UNLIKELY {
            return Verdict::NothingMore;
        }
        Verdict::SowBeside(posterior.seeds_beside())
    }
}

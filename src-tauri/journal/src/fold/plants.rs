//! The arithmetic of plants that a sowing and a batch share.
//!
//! Every step moves plants from one number to another, so that
//! `up = gone_on + thinned + lost + missing + planted_out + sold + given_away + there`
//! holds whatever the entries say.

use super::held::Held;
use crate::content::{Content, Leaving, Up};
use crate::state::{
    CountAt, Ended, LeftAt, Mark, Numbers, PlantsState, Problem, SightAt, WentOnAt,
};

/// More than anyone raises; keeps sums far from overflow.
const MAX_UP: u32 = 1_000_000_000;

/// Plants as they go along.
pub(super) struct Tally {
    pub state: PlantsState,
    /// The most that can come up: the seeds of a sowing; none for a pinch.
    seeds: Option<u32>,
    /// What few, half and nearly all are shares of, in a sowing.
    share_of: Option<u32>,
    sowing: bool,
    /// Seeds of a sowing that will never come up: found soft, or lost.
    dead: u32,
    last: Option<Mark>,
}

impl Tally {
    /// For a sowing: nothing is up.
    pub fn sowing(seeds: Option<u32>, share_of: u32) -> Self {
        Self {
            state: PlantsState::default(),
            seeds,
            share_of: Some(share_of),
            sowing: true,
            dead: 0,
            last: None,
        }
    }

    /// For a batch: all are there.
    pub fn batch(number: u32) -> Self {
        let number = number.min(MAX_UP);
        let mut state = PlantsState::default();
        state.numbers.up = number;
        state.numbers.there = number;
        Self {
            state,
            seeds: None,
            share_of: None,
            sowing: false,
            dead: 0,
            last: None,
        }
    }

    /// Adds an event about these plants; a count comes back as a number.
    pub fn add(&mut self, held: &Held, content: &Content) -> Option<CountAt> {
        let mark = held.mark();
        match content {
            Content::Counted(what) => return Some(self.count(mark, what.up)),
            Content::WentOn(what) => {
                self.after_the_end();
                for part in &what.parts {
                    let gone = self.leave(part.number);
                    self.state.numbers.gone_on += gone;
                }
                self.state.went_on.push(WentOnAt {
                    at: mark.clone(),
                    step: what.step,
                    parts: what.parts.clone(),
                });
                self.last = Some(mark);
            }
            Content::Left(what) => {
                self.after_the_end();
                let gone = self.leave(what.number);
                *left_by(&mut self.state.numbers, what.how) += gone;
                self.state.left.push(LeftAt {
                    at: mark.clone(),
                    number: what.number,
                    how: what.how,
                });
                self.last = Some(mark);
            }
            Content::Ready(_) => {
                self.after_the_end();
                self.state.ready.get_or_insert(mark);
            }
            Content::Noticed(what) => self.state.sights.push(SightAt {
                at: mark,
                sight: what.sight,
            }),
            Content::DugUp(what) => self.dead = self.dead.saturating_add(what.soft),
            Content::SeedsLost(what) => {
                self.after_the_end();
                self.dead = self.dead.saturating_add(what.number);
                self.last = Some(mark);
            }
            Content::NothingCameUp(_) => self.end(mark, true),
            Content::Finished(_) => self.end(mark, false),
            _ => {}
        }
        None
    }

    /// The state, once all events are in. A batch of which none are left has
    /// ended; so has a sowing of which none are left and whose seeds, by
    /// number, have all come up, were found soft or were lost. Seeds that may
    /// yet come keep a sowing alive until it is finished or given up.
    pub fn done(mut self) -> PlantsState {
        let numbers = self.state.numbers;
        let accounted = !self.sowing
            || self
                .seeds
                .is_some_and(|seeds| numbers.up.saturating_add(self.dead) >= seeds);
        if numbers.there == 0
            && accounted
            && self.state.ended.is_none()
            && let Some(at) = self.last
        {
            self.state.ended = Some(Ended {
                at,
                nothing_came_up: numbers.up == 0,
            });
        }
        self.state
    }

    fn count(&mut self, at: Mark, up: Up) -> CountAt {
        let base = self.share_of.unwrap_or(self.state.numbers.up);
        let (there, exact) = match up {
            Up::Number(number) => (number.min(MAX_UP), true),
            Up::Few => (percent(base, 20).max(1), false),
            Up::Half => (percent(base, 50).max(1), false),
            Up::NearlyAll => (percent(base, 90).max(1), false),
        };
        let before = self.state.numbers.there;
        if there > before {
            self.found(there - before);
        } else {
            self.state.numbers.missing += before - there;
            self.state.numbers.there = there;
        }
        // Something lives: whoever called it done was early.
        if self.state.numbers.there > 0 {
            self.state.ended = None;
        }
        self.last = Some(at.clone());
        CountAt {
            at,
            there: self.state.numbers.there,
            ever_up: self.state.numbers.up,
            exact,
        }
    }

    /// So many more are there than was known. They came up, unless that would
    /// make more than can: then they were never missing.
    fn found(&mut self, more: u32) {
        let numbers = &mut self.state.numbers;
        let most = if self.sowing {
            self.seeds.unwrap_or(MAX_UP)
        } else {
            numbers.up
        };
        let room = most.saturating_sub(numbers.up);
        let back = more.saturating_sub(room).min(numbers.missing);
        let new = (more - back).min(MAX_UP.saturating_sub(numbers.up));
        numbers.missing -= back;
        numbers.up += new;
        numbers.there += back + new;
    }

    /// So many leave; more than are there means more had come up.
    fn leave(&mut self, number: u32) -> u32 {
        let there = self.state.numbers.there;
        if number > there {
            if !self.sowing {
                self.state.problems.insert(Problem::MoreLeftThanThere);
            }
            self.found(number - there);
        }
        let gone = number.min(self.state.numbers.there);
        self.state.numbers.there -= gone;
        gone
    }

    fn end(&mut self, at: Mark, nothing_came_up: bool) {
        self.state.ended.get_or_insert(Ended {
            at,
            nothing_came_up,
        });
    }

    fn after_the_end(&mut self) {
        if self.state.ended.is_some() {
            self.state.problems.insert(Problem::AfterTheEnd);
        }
    }
}

fn percent(of: u32, percent: u32) -> u32 {
    let share = (u64::from(of.min(MAX_UP)) * u64::from(percent) + 50) / 100;
    u32::try_from(share).unwrap_or(MAX_UP)
}

fn left_by(numbers: &mut Numbers, how: Leaving) -> &mut u32 {
    match how {
        Leaving::Thinned => &mut numbers.thinned,
        Leaving::Lost(_) => &mut numbers.lost,
        Leaving::PlantedOut => &mut numbers.planted_out,
        Leaving::Sold => &mut numbers.sold,
        Leaving::GivenAway => &mut numbers.given_away,
    }
}

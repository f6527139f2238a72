//! Making states: what a subject's entries add up to.

use crate::error::Error;
use crate::fold::{self, Held, State};
use crate::store::read;
use crate::store::rows::{Row, Stored, at_ms, keep_state};
use crate::subject::Subject;
use crate::touches::touches;
use rusqlite::Connection;

/// A root, as it holds, that touches a subject.
pub(super) struct Touch {
    pub weighs: bool,
    pub at_ms: i64,
    pub nr: i64,
    pub held: Held,
}

impl Touch {
    pub fn row(&self) -> Row {
        (self.weighs, self.at_ms, self.nr)
    }
}

/// What became of a state.
pub(crate) struct Change {
    pub before: Option<State>,
    /// When the last that made it before happened (ms).
    pub last_ms: Option<i64>,
    pub after: Option<State>,
}

/// The state that those entries make, and when the last that did happened.
fn state(subject: Subject, held: &[Held]) -> Option<(State, i64)> {
    let makes = |held: &&Held| {
        held.content()
            .is_some_and(|content| touches(content).get(&subject) == Some(&true))
    };
    let state = fold::fold(subject, held)?;
    let last_ms = held.iter().filter(makes).map(at_ms).max().unwrap_or(0);
    Some((state, last_ms))
}

/// What makes a state: what is there, and the newly touching.
fn held(db: &Connection, subject: Subject, new: &[Touch]) -> Result<Vec<Held>, Error> {
    let weighing = new.iter().filter(|touch| touch.weighs);
    let weighing: Vec<Held> = weighing.map(|touch| touch.held.clone()).collect();
    if weighing.is_empty() {
        return Ok(weighing);
    }
    let mut held = read::held(db, subject)?;
    held.extend(weighing);
    Ok(held)
}

/// Touches of a subject on their way, in the order of their table, which takes
/// them sooner so, and what its state is made from.
pub(super) struct ToFold {
    subject: Subject,
    rows: Vec<Row>,
    held: Vec<Held>,
}

impl ToFold {
    pub fn of(db: &Connection, subject: Subject, mut new: Vec<Touch>) -> Result<Self, Error> {
        new.sort_by_key(Touch::row);
        let held = held(db, subject, &new)?;
        let rows = new.iter().map(Touch::row).collect();
        Ok(Self {
            subject,
            rows,
            held,
        })
    }

    /// The state only if something that weighs is new.
    pub fn fold(self) -> Result<Folded, Error> {
        let weighs = !self.held.is_empty();
        let stored = || {
            let state = state(self.subject, &self.held);
            state
                .map(|(state, last_ms)| Stored::of(&state, last_ms))
                .transpose()
        };
        let state = weighs.then(stored).transpose()?;
        Ok((self.subject, self.rows, state))
    }
}

/// A subject, its new touches and its state, if that was made.
pub(super) type Folded = (Subject, Vec<Row>, Option<Option<Stored>>);

/// Makes a state anew; none if none of those weighs. What happened after all
/// that is there, as nearly all that is written did, need not read that again.
pub(super) fn change(
    db: &Connection,
    subject: Subject,
    new: &[Touch],
) -> Result<Option<Change>, Error> {
    if !new.iter().any(|touch| touch.weighs) {
        return Ok(None);
    }
    let (before, last_ms) = read::state_until(db, subject)?.unzip();
    let later = match (&before, new) {
        (Some(before), [touch])
            if touch.held.amendment.is_none() && Some(touch.at_ms) > last_ms =>
        {
            fold::then(before, &touch.held).map(|state| (state, touch.at_ms))
        }
        _ => None,
    };
    let after = match later {
        Some(after) => Some(after),
        None => state(subject, &held(db, subject, new)?),
    };
    let stored = after
        .as_ref()
        .map(|(state, last_ms)| Stored::of(state, *last_ms));
    keep_state(db, subject, stored.transpose()?)?;
    Ok(Some(Change {
        before,
        last_ms,
        after: after.map(|(state, _)| state),
    }))
}

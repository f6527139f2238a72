//! A root entry with the amendment that holds.

use crate::content::{Amended, Content};
use crate::entry::{Entry, Line};
use crate::id::DeviceId;
use crate::stamp::Happened;
use crate::state::Mark;
use chrono::{DateTime, Utc};
use std::sync::Arc;

/// A root entry and the greatest of its amendments.
#[derive(Clone, Debug)]
pub(crate) struct Held {
    pub entry: Arc<Entry>,
    pub amendment: Option<Arc<Entry>>,
}

type Word<'a> = (i64, DeviceId, i64, &'a str);

impl Held {
    fn amended(&self) -> Option<&Amended> {
        match self.amendment.as_ref()?.content.as_ref()? {
            Content::Amended(amended) => Some(amended),
            _ => None,
        }
    }

    /// What holds.
    pub fn content(&self) -> Option<&Content> {
        match self.amended() {
            Some(amended) => amended.content.as_deref(),
            None => self.entry.content.as_ref(),
        }
    }

    /// Withdrawn: nothing holds.
    pub fn withdrawn(&self) -> bool {
        self.amended()
            .is_some_and(|amended| amended.content.is_none())
    }

    /// When it happened, as it holds.
    pub fn happened(&self) -> &Happened {
        self.amended()
            .and_then(|amended| amended.happened.as_ref())
            .unwrap_or(&self.entry.happened)
    }

    pub fn mark(&self) -> Mark {
        Mark {
            entry: self.entry.id,
            at: self.happened().clone(),
        }
    }

    /// Orders attributes. The line breaks the tie of a cloned identity.
    pub fn word(&self) -> Word<'_> {
        let entry = &self.entry;
        (entry.lamport, entry.device, entry.seq, &entry.line)
    }

    /// Orders events.
    pub fn when(&self) -> (DateTime<Utc>, Word<'_>) {
        (self.happened().instant(), self.word())
    }

    /// As the timeline shows it.
    pub fn into_line(self) -> Line {
        let holds = self.content().cloned();
        let withdrawn = self.withdrawn();
        let happened = self.happened().clone();
        let differs = holds != self.entry.content || happened != self.entry.happened;
        Line {
            act: self.entry.act,
            amended: self.amendment.map(|amendment| amendment.happened.clone()),
            withdrawn,
            corrected: !withdrawn && differs,
            happened,
            unknown: self.entry.content.is_none(),
            holds,
            entry: Arc::unwrap_or_clone(self.entry),
        }
    }
}

/// What holds, in the order it happened.
pub(crate) fn events(held: &[Held]) -> Vec<(&Held, &Content)> {
    let mut events: Vec<_> = held
        .iter()
        .filter_map(|one| one.content().map(|content| (one, content)))
        .collect();
    events.sort_by(|a, b| a.0.when().cmp(&b.0.when()));
    events
}

/// The last word on an attribute.
pub(crate) fn last_word<'a, T>(
    held: &'a [Held],
    pick: impl Fn(&'a Content) -> Option<T>,
) -> Option<T> {
    held.iter()
        .filter_map(|one| Some((one.word(), pick(one.content()?)?)))
        .max_by(|a, b| a.0.cmp(&b.0))
        .map(|(_, found)| found)
}

/// The last word among what was withdrawn: what a subject falls back on when
/// others still speak of it.
pub(crate) fn withdrawn_word<'a, T>(
    held: &'a [Held],
    pick: impl Fn(&'a Content) -> Option<T>,
) -> Option<(&'a Held, T)> {
    held.iter()
        .filter(|one| one.withdrawn())
        .filter_map(|one| Some((one, pick(one.entry.content.as_ref()?)?)))
        .max_by(|a, b| a.0.word().cmp(&b.0.word()))
}

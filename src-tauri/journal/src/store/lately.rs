//! Roots read in this piece of work, so that the fold right after does not
//! read their lines again.

use crate::fold::Held;
use std::collections::BTreeMap;

/// Bytes of lines kept at most; what they say takes as much again (judgement:
/// a phone has room for it).
const MOST_BYTES: usize = 16 << 20;

/// Roots, as they hold by now, by their numbers.
#[derive(Debug, Default)]
pub(crate) struct Lately {
    roots: BTreeMap<i64, Held>,
    bytes: usize,
}

impl Lately {
    pub fn keep(&mut self, nr: i64, held: Held) {
        let amendment = held.amendment.as_ref();
        self.bytes += held.entry.line.len() + amendment.map_or(0, |it| it.line.len());
        self.roots.insert(nr, held);
    }

    pub fn read(&self, nr: i64) -> Option<&Held> {
        self.roots.get(&nr)
    }

    /// It is time to fold, and to begin anew.
    pub fn is_full(&self) -> bool {
        self.bytes > MOST_BYTES
    }
}

//! Entries read in this piece of work, so that the fold right after does not
//! read their lines again.

use crate::entry::Entry;
use std::collections::BTreeMap;
use std::rc::Rc;

/// Bytes of lines kept at most; what they say takes as much again (judgement:
/// a phone has room for it).
const MOST_BYTES: usize = 16 << 20;

/// Entries by their numbers.
#[derive(Debug, Default)]
pub(crate) struct Lately {
    entries: BTreeMap<i64, Rc<Entry>>,
    bytes: usize,
}

impl Lately {
    pub fn keep(&mut self, nr: i64, entry: &Rc<Entry>) {
        self.bytes += entry.line.len();
        self.entries.insert(nr, Rc::clone(entry));
    }

    pub fn read(&self, nr: i64) -> Option<Rc<Entry>> {
        self.entries.get(&nr).cloned()
    }

    /// It is time to fold, and to begin anew.
    pub fn is_full(&self) -> bool {
        self.bytes > MOST_BYTES
    }
}

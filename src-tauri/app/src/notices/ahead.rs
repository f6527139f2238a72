//! Notices that the system of a phone keeps and shows by itself: what is to be
//! changed of those it has, so that it has those that are wanted.

use super::Notice;

/// What to change of what the system keeps.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Ahead {
    /// To be taken back, by id.
    pub cancel: Vec<i32>,
    /// To be handed over; one with an id that the system has replaces it.
    pub set: Vec<Notice>,
    /// All that the system keeps once both are done.
    pub kept: Vec<Notice>,
}

impl Ahead {
    /// From what the system was handed before to what is wanted. `afresh`
    /// hands over all of it, for a system that may have lost some.
    pub(crate) fn between(before: &[Notice], wanted: Vec<Notice>, afresh: bool) -> Self {
        let still = |notice: &&Notice| wanted.iter().all(|wanted| wanted.id != notice.id);
        let cancel = before
            .iter()
            // Those that were shown as well: the round is on the screen now.
            .filter(still)
            .map(|notice| notice.id)
            .collect();
        let new = |notice: &&Notice| afresh || !before.contains(notice);
        let set = wanted.iter().filter(new).cloned().collect();
        Self {
            cancel,
            set,
            kept: wanted,
        }
    }
}

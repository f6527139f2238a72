//! A tray in which something lives.

use crate::picture::Picture;
use plumule_journal::id::TrayId;
use plumule_journal::state::{BatchState, Mark, PlaceState, PlantsState, SowingState, TrayState};
use plumule_journal::subject::Plants;
use plumule_journal::words::{Container, PlaceKind};
use std::collections::BTreeSet;

/// A tray with its living.
pub(crate) struct LivingTray<'a> {
    pub(crate) id: TrayId,
    pub(crate) state: &'a TrayState,
    pub(crate) place: Option<&'a PlaceState>,
    pub(crate) sowings: Vec<&'a SowingState>,
    pub(crate) batches: Vec<&'a BatchState>,
}

/// The trays that are in use and have something living in them, by id.
pub(super) fn living(picture: &Picture) -> Vec<LivingTray<'_>> {
    let trays = picture.trays.iter();
    trays
        .filter_map(|(id, tray)| LivingTray::of(picture, *id, tray))
        .collect()
}

impl<'a> LivingTray<'a> {
    fn of(picture: &'a Picture, id: TrayId, state: &'a TrayState) -> Option<Self> {
        if state.emptied.is_some() {
            return None;
        }
        let lives = |plants: &PlantsState| plants.ended.is_none();
        let occupants: BTreeSet<Plants> = state.occupants.iter().map(|held| held.plants).collect();
        let sowings: Vec<&SowingState> = occupants
            .iter()
            .filter_map(|plants| match plants {
                Plants::Sowing(id) => picture.sowings.get(id),
                Plants::Batch(_) => None,
            })
            .filter(|sowing| lives(&sowing.plants))
            .collect();
        let batches: Vec<&BatchState> = occupants
            .iter()
            .filter_map(|plants| match plants {
                Plants::Batch(id) => picture.batches.get(id),
                Plants::Sowing(_) => None,
            })
            .filter(|batch| lives(&batch.plants))
            .collect();
        (!sowings.is_empty() || !batches.is_empty()).then(|| Self {
            id,
            state,
            place: picture.place_of(state),
            sowings,
            batches,
        })
    }

    /// All that lives in it: sowings, then batches.
    pub(crate) fn plants(&self) -> impl Iterator<Item = Plants> {
        let sowings = self.sowings.iter();
        let batches = self.batches.iter();
        sowings
            .map(|sowing| Plants::Sowing(sowing.sown.sowing))
            .chain(batches.map(|batch| Plants::Batch(batch.batch)))
    }

    /// A cover of its own is on.
    pub(crate) fn covered(&self) -> bool {
        self.state.covers.last().is_some_and(|cover| cover.on)
    }

    /// Damp paper or a bag: its seed is sown on once it has sprouted.
    pub(crate) fn sprouting(&self) -> bool {
        crate::growth::sprouts(self.state)
    }

    /// Covered, by itself or by its place.
    pub(crate) fn under_cover(&self) -> bool {
        self.covered() || self.place.is_some_and(|place| place.described.covered)
    }

    pub(crate) fn stands_in(&self, kind: PlaceKind) -> bool {
        self.place.is_some_and(|place| place.described.kind == kind)
    }

    /// Its sowings that have living seedlings.
    pub(super) fn sowings_up(&self) -> impl Iterator<Item = &'a SowingState> {
        let sowings = self.sowings.iter().copied();
        sowings.filter(|sowing| sowing.plants.numbers.there > 0)
    }

    /// Its sowings of which nothing came up yet.
    pub(super) fn sowings_waiting(&self) -> impl Iterator<Item = &'a SowingState> {
        let sowings = self.sowings.iter().copied();
        sowings.filter(|sowing| sowing.plants.numbers.up == 0)
    }

    /// Each plant has its own cell or pot.
    pub(super) fn in_cells(&self) -> bool {
        matches!(
            self.state.described.container,
            Container::Cells | Container::Pot | Container::Pots
        )
    }

    /// Days on which it was put out to harden off, after a moment that its
    /// plants began.
    pub(super) fn hardened_since(&self, began: &Mark) -> Vec<&'a Mark> {
        let mut marks: Vec<&Mark> = Vec::new();
        for mark in &self.state.hardened {
            let same_day = marks
                .last()
                .is_some_and(|last| last.at.local.date() == mark.at.local.date());
            if mark.at.instant() >= began.at.instant() && !same_day {
                marks.push(mark);
            }
        }
        marks
    }
}

/// When the first of a sowing was seen.
pub(super) fn first_up(sowing: &SowingState) -> Option<&Mark> {
    let counted = sowing.counts.iter().filter(|count| count.ever_up > 0);
    let went_on = sowing.plants.went_on.iter();
    let left = sowing.plants.left.iter();
    counted
        .map(|count| &count.at)
        .chain(went_on.map(|step| &step.at))
        .chain(left.map(|leaving| &leaving.at))
        .min_by_key(|mark| mark.at.instant())
}

/// When half of those that came up had been seen.
pub(super) fn half_up(sowing: &SowingState) -> Option<&Mark> {
    let half = sowing.plants.numbers.up.div_ceil(2).max(1);
    let counted = sowing.counts.iter().find(|count| count.ever_up >= half);
    counted.map(|count| &count.at).or_else(|| first_up(sowing))
}

/// The later of two.
pub(super) fn later<'m>(one: &'m Mark, other: &'m Mark) -> &'m Mark {
    if other.at.instant() > one.at.instant() {
        other
    } else {
        one
    }
}

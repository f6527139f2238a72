//! Where a tray stands, and what stands in it.

use crate::id::{PlaceId, TrayId};
use crate::state::{Occupant, TrayState};
use crate::subject::Plants;
use chrono::{DateTime, Utc};
use std::collections::BTreeSet;

impl TrayState {
    /// Its id.
    #[must_use]
    pub fn tray(&self) -> TrayId {
        self.described.tray
    }

    /// How many cells it has.
    #[must_use]
    pub fn cell_count(&self) -> u32 {
        u32::from(self.described.rows) * u32::from(self.described.columns)
    }

    /// Where it stands now.
    #[must_use]
    pub fn place(&self) -> Option<PlaceId> {
        self.stays.last().map(|stay| stay.place)
    }

    /// Where it stood at an instant; before its first stay, where that was.
    #[must_use]
    pub fn place_at(&self, instant: DateTime<Utc>) -> Option<PlaceId> {
        self.stays
            .iter()
            .rev()
            .find(|stay| stay.since.at.instant() <= instant)
            .or_else(|| self.stays.first())
            .map(|stay| stay.place)
    }

    /// Whether it is covered now.
    #[must_use]
    pub fn is_covered(&self) -> bool {
        self.covers.last().is_some_and(|cover| cover.on)
    }

    /// The cells of these plants in it.
    #[must_use]
    pub fn cells_of(&self, plants: Plants) -> BTreeSet<u16> {
        self.occupants
            .iter()
            .filter(|occupant| occupant.plants == plants)
            .flat_map(|occupant| occupant.cells.iter().copied())
            .collect()
    }

    /// The cells that none of the living plants stand in.
    #[must_use]
    pub fn free_cells(&self, living: &BTreeSet<Plants>) -> BTreeSet<u16> {
        let taken: BTreeSet<u16> = self
            .living(living)
            .flat_map(|occupant| occupant.cells.iter().copied())
            .collect();
        (0..self.described.rows.saturating_mul(self.described.columns))
            .filter(|cell| !taken.contains(cell))
            .collect()
    }

    /// The cells that two of the living plants stand in: merged nonsense, or a
    /// batch in the cells it came from.
    #[must_use]
    pub fn cells_twice(&self, living: &BTreeSet<Plants>) -> BTreeSet<u16> {
        let mut seen = BTreeSet::new();
        self.living(living)
            .flat_map(|occupant| occupant.cells.iter().copied())
            .filter(|cell| !seen.insert(*cell))
            .collect()
    }

    fn living(&self, living: &BTreeSet<Plants>) -> impl Iterator<Item = &Occupant> {
        self.occupants
            .iter()
            .filter(|occupant| living.contains(&occupant.plants))
    }
}

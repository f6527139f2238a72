//! Trays and their cells.

use super::texts::name;
use super::{Check, living_tray, number, refuse, refuse_with};
use crate::content::TrayDescribed;
use crate::error::{Error, Value};
use crate::id::TrayId;
use crate::state::TrayState;
use crate::store::read;
use crate::subject::{Plants, Subject};
use std::collections::BTreeSet;

/// More cells than any tray has. Judgement.
const MAX_CELLS: u32 = 2_000;
/// Longest code, characters: it is written with a pencil on a label.
const MAX_CODE: u32 = 12;

pub(super) fn described(check: &Check, what: &TrayDescribed) -> Result<(), Error> {
    name(&what.code, MAX_CODE)?;
    let cells = u32::from(what.rows) * u32::from(what.columns);
    if cells == 0 {
        return refuse("tray_without_cells");
    }
    if cells > MAX_CELLS {
        return refuse_with("tray_too_large", [("most", number(MAX_CELLS))]);
    }
    if read::alive(check.db, Subject::Tray(what.tray))?.is_some() {
        living_tray(check, what.tray)?;
    }
    Ok(())
}

/// The cells are in a tray in use, and none but `own` lives in them.
pub(super) fn cells(
    check: &Check,
    id: TrayId,
    cells: &BTreeSet<u16>,
    own: &[Plants],
) -> Result<(), Error> {
    let tray = living_tray(check, id)?;
    let code = || Value::Text(tray.described.code.clone());
    if cells.is_empty() {
        return refuse("cells_none");
    }
    let count = tray.cell_count();
    if cells.iter().any(|cell| u32::from(*cell) >= count) {
        return refuse_with(
            "cells_outside",
            [("code", code()), ("cells", number(count))],
        );
    }
    let mut living = living_in(check.db, &tray)?;
    living.retain(|plants| !own.contains(plants));
    let free = tray.free_cells(&living);
    let taken = cells.difference(&free).count();
    if taken > 0 {
        let taken = f64::from(u32::try_from(taken).unwrap_or(u32::MAX));
        return refuse_with(
            "cells_taken",
            [("code", code()), ("cells", Value::Number(taken))],
        );
    }
    Ok(())
}

/// What lives in a tray.
pub(crate) fn living_in(
    db: &rusqlite::Connection,
    tray: &TrayState,
) -> Result<BTreeSet<Plants>, Error> {
    let mut living = BTreeSet::new();
    for occupant in &tray.occupants {
        if read::alive(db, occupant.plants.into())? == Some(true) {
            living.insert(occupant.plants);
        }
    }
    Ok(living)
}

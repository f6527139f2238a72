//! Trays to put things into, and their free cells.

use super::parse::known;
use super::{Made, Maker};
use crate::error::AppError;
use crate::view::TrayChoice;
use plumule_journal::Journal;
use plumule_journal::content::{Content, CoverChanged, TrayDescribed, TrayMoved};
use plumule_journal::id::TrayId;
use plumule_journal::state::TrayState;
use plumule_journal::subject::Plants;
use std::collections::BTreeSet;

/// Cells of a tray that living plants stand in.
fn taken(journal: &Journal, tray: &TrayState) -> Result<BTreeSet<u16>, AppError> {
    let mut cells = BTreeSet::new();
    for occupant in &tray.occupants {
        if living(journal, occupant.plants)? {
            cells.extend(occupant.cells.iter().copied());
        }
    }
    Ok(cells)
}

pub(super) fn living(journal: &Journal, plants: Plants) -> Result<bool, AppError> {
    Ok(match plants {
        Plants::Sowing(id) => journal
            .sowing(id)?
            .is_some_and(|sowing| sowing.plants.ended.is_none()),
        Plants::Batch(id) => journal
            .batch(id)?
            .is_some_and(|batch| batch.plants.ended.is_none()),
    })
}

fn all_cells(rows: u16, columns: u16) -> BTreeSet<u16> {
    (0..rows.saturating_mul(columns)).collect()
}

impl Maker<'_> {
    /// The tray of a choice; a new one is described, moved and covered first.
    pub(super) fn tray(
        &mut self,
        choice: &TrayChoice,
        made: &mut Made,
    ) -> Result<TrayId, AppError> {
        let tray = match choice {
            TrayChoice::Existing { id } => {
                let tray: TrayId = known(id)?;
                if !self.rooms.contains_key(&tray) {
                    let state = self
                        .journal
                        .tray(tray)?
                        .ok_or_else(|| AppError::bad_request(id))?;
                    let mut free = all_cells(state.described.rows, state.described.columns);
                    for cell in taken(self.journal, &state)? {
                        free.remove(&cell);
                    }
                    self.rooms.insert(tray, free);
                }
                tray
            }
            TrayChoice::New {
                code,
                container,
                rows,
                columns,
                compost,
                place,
                covered,
            } => {
                let tray = TrayId(self.ids.next());
                let code = match code
                    .as_deref()
                    .map(str::trim)
                    .filter(|code| !code.is_empty())
                {
                    Some(code) => code.to_owned(),
                    None => self.next_code()?,
                };
                self.codes.insert(code.clone());
                self.rooms.insert(tray, all_cells(*rows, *columns));
                made.contents.push(Content::TrayDescribed(TrayDescribed {
                    tray,
                    code,
                    container: known(container)?,
                    rows: *rows,
                    columns: *columns,
                    compost: known(compost)?,
                }));
                made.contents.push(Content::TrayMoved(TrayMoved {
                    tray,
                    place: known(place)?,
                }));
                if *covered {
                    made.contents
                        .push(Content::CoverChanged(CoverChanged { tray, on: true }));
                }
                tray
            }
        };
        made.tray.get_or_insert(tray);
        Ok(tray)
    }

    /// The cells asked for; if none are, as many free ones as there are plants,
    /// or all.
    pub(super) fn cells(
        &mut self,
        tray: TrayId,
        asked: &[u16],
        plants: Option<u32>,
    ) -> BTreeSet<u16> {
        let free = self.rooms.entry(tray).or_default();
        let cells: BTreeSet<u16> = if asked.is_empty() {
            let most = plants.map_or(usize::MAX, |plants| plants as usize);
            free.iter().copied().take(most).collect()
        } else {
            asked.iter().copied().collect()
        };
        for cell in &cells {
            free.remove(cell);
        }
        cells
    }
}

impl Maker<'_> {
    /// The journal's next code; for more trays of one act the ones after it.
    fn next_code(&self) -> Result<String, AppError> {
        let mut code = self.journal.next_code()?;
        while self.codes.contains(&code) {
            code = code_after(&code);
        }
        Ok(code)
    }
}

/// A code with its number one higher: `K9`, `K10`.
pub(crate) fn code_after(code: &str) -> String {
    let mark = code.trim_end_matches(|last: char| last.is_ascii_digit());
    let number: u64 = code
        .strip_prefix(mark)
        .and_then(|number| number.parse().ok())
        .unwrap_or(1);
    format!("{mark}{}", number.saturating_add(1))
}

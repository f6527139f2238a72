//! All sowings, with what they came to.

use crate::error::AppError;
use plumule_journal::Journal;
use plumule_journal::state::{PacketState, SowingState};

/// A sowing with its packet and the label of its tray.
pub(super) struct Past {
    pub(super) packet: PacketState,
    pub(super) sowing: SowingState,
    pub(super) tray: String,
    /// Where it first stood.
    pub(super) place: String,
}

/// Every sowing of the journal, by when it was sown.
pub(super) fn sowings(journal: &Journal) -> Result<Vec<Past>, AppError> {
    let mut all = Vec::new();
    for packet in journal.packets()? {
        for id in &packet.sowings {
            let Some(sowing) = journal.sowing(*id)? else {
                continue;
            };
            let tray = journal.tray(sowing.sown.tray)?;
            let first = tray.as_ref().and_then(|tray| tray.stays.first());
            let place = match first {
                Some(stay) => journal.place(stay.place)?,
                None => None,
            };
            all.push(Past {
                packet: packet.clone(),
                tray: tray.map_or_else(String::new, |tray| tray.described.code),
                place: place.map_or_else(String::new, |place| place.described.name),
                sowing,
            });
        }
    }
    all.sort_by_key(|past| {
        let at = past.sowing.opened_by.at.local;
        (at, past.sowing.sown.sowing)
    });
    Ok(all)
}

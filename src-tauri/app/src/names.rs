//! The names of things, looked up for the words about them.

use crate::error::AppError;
use crate::say::Arg;
use crate::words;
use plumule_journal::Journal;
use plumule_journal::id::{PacketId, PlaceId, TestId, TrayId};
use plumule_journal::state::Parent;
use plumule_journal::subject::Plants;

/// Shown for what is not in the journal (any more).
const NAMELESS: &str = "?";

/// Looks names up in a journal.
pub(crate) struct Names<'a>(pub(crate) &'a Journal);

/// Plants, by name.
pub(crate) struct PlantsName {
    /// Key of the crop book, or the grower's word.
    pub(crate) crop: String,
    pub(crate) variety: String,
    pub(crate) tray: Option<TrayId>,
}

impl Names<'_> {
    pub(crate) fn tray(&self, id: TrayId) -> Result<Arg, AppError> {
        let tray = self.0.tray(id)?;
        Ok(Arg::Text(tray.map_or_else(
            || NAMELESS.to_owned(),
            |tray| tray.described.code,
        )))
    }

    pub(crate) fn place(&self, id: PlaceId) -> Result<Arg, AppError> {
        let place = self.0.place(id)?;
        Ok(Arg::Text(place.map_or_else(
            || NAMELESS.to_owned(),
            |place| place.described.name,
        )))
    }

    /// Crop and variety of a packet.
    pub(crate) fn packet(&self, id: PacketId) -> Result<(Arg, Arg), AppError> {
        let (crop, variety) = self.packet_keys(id)?;
        Ok((words::crop(&crop), words::variety(&variety)))
    }

    /// The packet of a germination test, and its seeds.
    pub(crate) fn test(&self, id: TestId) -> Result<(Option<PacketId>, u32), AppError> {
        let test = self.0.test(id)?;
        Ok(test.map_or((None, 0), |test| (Some(test.packet), test.seeds)))
    }

    fn packet_keys(&self, id: PacketId) -> Result<(String, String), AppError> {
        Ok(self.0.packet(id)?.map_or_else(
            || (NAMELESS.to_owned(), String::new()),
            |packet| (packet.described.crop, packet.described.variety),
        ))
    }

    /// Crop, variety and tray of plants. A batch has those of what it came
    /// from.
    pub(crate) fn plants(&self, plants: Plants) -> Result<PlantsName, AppError> {
        let mut of = plants;
        let mut tray = None;
        let mut seen = std::collections::BTreeSet::new();
        while seen.insert(of) {
            match of {
                Plants::Sowing(id) => {
                    let Some(sowing) = self.0.sowing(id)? else {
                        break;
                    };
                    tray.get_or_insert(sowing.sown.tray);
                    let (crop, variety) = self.packet_keys(sowing.sown.packet)?;
                    return Ok(PlantsName {
                        crop,
                        variety,
                        tray,
                    });
                }
                Plants::Batch(id) => {
                    let Some(batch) = self.0.batch(id)? else {
                        break;
                    };
                    tray.get_or_insert(batch.tray);
                    match batch.parent {
                        Parent::Plants { of: parent, .. } => of = parent,
                        Parent::Started { crop, variety, .. } => {
                            return Ok(PlantsName {
                                crop,
                                variety,
                                tray,
                            });
                        }
                    }
                }
            }
        }
        Ok(PlantsName {
            crop: NAMELESS.to_owned(),
            variety: String::new(),
            tray,
        })
    }
}

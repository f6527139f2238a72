//! Sowing, counting, going on, leaving.

use super::parse::{known, maybe, plants};
use super::room::living;
use super::{Made, Maker};
use crate::acts::{PartAnswer, SeedsAnswer, TreatmentForm, UpAnswer};
use crate::error::AppError;
use crate::view::{PlantsRef, TrayChoice};
use plumule_journal::content::{
    BatchStarted, Content, Counted, DugUp, Leaving, Left, OfPlants, OfSowing, OfTray, Part, Seeds,
    Sown, Treatment, Up, WentOn,
};
use plumule_journal::id::{BatchId, SowingId, TrayId};
use plumule_journal::words::LossCause;

/// A sowing as it was said.
pub(super) struct Sow<'a> {
    pub(super) packet: &'a str,
    pub(super) into: &'a TrayChoice,
    pub(super) cells: &'a [u16],
    pub(super) seeds: SeedsAnswer,
    pub(super) depth_mm: Option<f64>,
    pub(super) wanted: Option<u32>,
    pub(super) again_of: Option<&'a str>,
    pub(super) treatment: TreatmentForm,
    pub(super) plan: Option<&'a str>,
}

/// A start without seed as it was said.
pub(super) struct Start<'a> {
    pub(super) origin: &'a str,
    pub(super) crop: &'a str,
    pub(super) variety: &'a str,
    pub(super) into: &'a TrayChoice,
    pub(super) cells: &'a [u16],
    pub(super) number: u32,
}

impl Maker<'_> {
    pub(super) fn sow(&mut self, said: Sow<'_>) -> Result<Made, AppError> {
        let mut made = Made::default();
        let tray = self.tray(said.into, &mut made)?;
        let cells = self.cells(tray, said.cells, None);
        let sowing = SowingId(self.ids.next());
        made.sowing = Some(sowing);
        made.contents.push(Content::Sown(Sown {
            sowing,
            packet: known(said.packet)?,
            tray,
            cells,
            seeds: seeds(said.seeds),
            depth_mm: said.depth_mm,
            wanted: said.wanted,
            again_of: maybe(said.again_of)?,
            treatment: treatment(said.treatment),
            plan: maybe(said.plan)?,
        }));
        Ok(made)
    }

    pub(super) fn start_batch(&mut self, said: Start<'_>) -> Result<Made, AppError> {
        let mut made = Made::default();
        let tray = self.tray(said.into, &mut made)?;
        let cells = self.cells(tray, said.cells, None);
        made.contents.push(Content::BatchStarted(BatchStarted {
            batch: BatchId(self.ids.next()),
            origin: known(said.origin)?,
            crop: said.crop.trim().to_owned(),
            variety: said.variety.trim().to_owned(),
            tray,
            cells,
            number: said.number,
        }));
        Ok(made)
    }

    pub(super) fn go_on(
        &mut self,
        of: &PlantsRef,
        step: &str,
        answers: &[PartAnswer],
        rest_finished: bool,
    ) -> Result<Made, AppError> {
        let of = plants(of)?;
        let mut made = Made::default();
        let mut parts = Vec::new();
        for answer in answers {
            let tray = self.tray(&answer.into, &mut made)?;
            parts.push(Part {
                batch: BatchId(self.ids.next()),
                tray,
                cells: self.cells(tray, &answer.cells, Some(answer.number)),
                number: answer.number,
            });
        }
        made.contents.push(Content::WentOn(WentOn {
            of,
            step: known(step)?,
            parts,
        }));
        if rest_finished {
            made.contents.push(Content::Finished(OfPlants { of }));
        }
        Ok(made)
    }

    /// Empties a tray; what lives in it is done with.
    pub(super) fn empty(&mut self, tray: &str) -> Result<Made, AppError> {
        let id: TrayId = known(tray)?;
        let state = self
            .journal
            .tray(id)?
            .ok_or_else(|| AppError::bad_request(tray))?;
        let mut contents = Vec::new();
        for occupant in &state.occupants {
            if living(self.journal, occupant.plants)? {
                contents.push(Content::Finished(OfPlants {
                    of: occupant.plants,
                }));
            }
        }
        contents.push(Content::TrayEmptied(OfTray { tray: id }));
        Ok(Made {
            contents,
            tray: Some(id),
            ..Made::default()
        })
    }
}

fn treatment(form: TreatmentForm) -> Treatment {
    Treatment {
        soaked_hours: form.soaked_hours,
        chipped: form.chipped,
        cold_weeks: form.cold_weeks,
    }
}

pub(super) fn count(of: &PlantsRef, said: UpAnswer) -> Result<Made, AppError> {
    Ok(Made::one(Content::Counted(Counted {
        of: plants(of)?,
        up: up(said),
    })))
}

pub(crate) fn up(said: UpAnswer) -> Up {
    match said {
        UpAnswer::Number(number) => Up::Number(number),
        UpAnswer::Few => Up::Few,
        UpAnswer::Half => Up::Half,
        UpAnswer::NearlyAll => Up::NearlyAll,
    }
}

pub(crate) fn seeds(said: SeedsAnswer) -> Seeds {
    match said {
        SeedsAnswer::Exact(number) => Seeds::Exact(number),
        SeedsAnswer::About(number) => Seeds::About(number),
        SeedsAnswer::Pinch => Seeds::Pinch,
    }
}

pub(super) fn leave(
    of: &PlantsRef,
    number: u32,
    how: &str,
    cause: Option<&str>,
) -> Result<Made, AppError> {
    Ok(Made::one(Content::Left(Left {
        of: plants(of)?,
        number,
        how: way_of_leaving(how, cause)?,
        reservation: None,
    })))
}

pub(crate) fn way_of_leaving(how: &str, cause: Option<&str>) -> Result<Leaving, AppError> {
    Ok(match how {
        "thinned" => Leaving::Thinned,
        "lost" => Leaving::Lost(maybe(cause)?.unwrap_or(LossCause::Unknown)),
        "planted_out" => Leaving::PlantedOut,
        "sold" => Leaving::Sold,
        "given_away" => Leaving::GivenAway,
        _ => return Err(AppError::bad_request(how)),
    })
}

pub(super) fn ready(of: &PlantsRef) -> Result<Made, AppError> {
    Ok(Made::one(Content::Ready(OfPlants { of: plants(of)? })))
}

pub(super) fn finish(of: &PlantsRef) -> Result<Made, AppError> {
    Ok(Made::one(Content::Finished(OfPlants { of: plants(of)? })))
}

pub(super) fn dig_up(sowing: &str, firm: u32, soft: u32) -> Result<Made, AppError> {
    Ok(Made::one(Content::DugUp(DugUp {
        sowing: known(sowing)?,
        firm,
        soft,
    })))
}

pub(super) fn nothing_came_up(sowing: &str) -> Result<Made, AppError> {
    Ok(Made::one(Content::NothingCameUp(OfSowing {
        sowing: known(sowing)?,
    })))
}

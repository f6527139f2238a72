//! Plans, and plants kept for somebody.

use super::parse::{known, maybe, plants};
use super::{Made, Maker};
use crate::error::AppError;
use crate::plans;
use crate::say::Arg;
use crate::view::{PlanForm, RhythmForm, WaresForm};
use plumule_journal::content::{Content, Leaving, Left, PlanDescribed, Reserved, Rhythm, Wares};
use plumule_journal::id::{PlanId, ReservationId};
use plumule_journal::state::ReservationState;

impl Maker<'_> {
    /// A plan, or one described anew.
    pub(super) fn plan(&mut self, id: Option<&str>, form: &PlanForm) -> Result<Made, AppError> {
        let plan = match maybe(id)? {
            Some(plan) => plan,
            None => PlanId(self.ids.next()),
        };
        Ok(Made::one(Content::PlanDescribed(PlanDescribed {
            plan,
            crop: form.crop.trim().to_owned(),
            variety: form.variety.trim().to_owned(),
            packet: maybe(form.packet.as_deref())?,
            wanted: form.wanted,
            rhythm: rhythm(form.rhythm),
            raise_weeks: form.raise_weeks,
            ended: false,
        })))
    }

    pub(super) fn end_plan(&self, id: &str) -> Result<Made, AppError> {
        let plan = self.journal.plan(known(id)?)?;
        let described = plan.ok_or_else(|| AppError::bad_request(id))?.described;
        Ok(Made::one(Content::PlanDescribed(PlanDescribed {
            ended: true,
            ..described
        })))
    }

    pub(super) fn reserve(
        &mut self,
        of: &WaresForm,
        number: u32,
        note: &str,
    ) -> Result<Made, AppError> {
        Ok(Made::one(Content::Reserved(Reserved {
            reservation: ReservationId(self.ids.next()),
            of: match of {
                WaresForm::Plants { plants: of } => Wares::Plants { of: plants(of)? },
                WaresForm::Crop { crop, variety } => Wares::Crop {
                    crop: crop.trim().to_owned(),
                    variety: variety.trim().to_owned(),
                },
            },
            number,
            note: note.trim().to_owned(),
            released: false,
        })))
    }

    fn reservation(&self, id: &str) -> Result<ReservationState, AppError> {
        let found = self.journal.reservation(known(id)?)?;
        found.ok_or_else(|| AppError::bad_request(id))
    }

    pub(super) fn release(&self, id: &str) -> Result<Made, AppError> {
        let described = self.reservation(id)?.described;
        Ok(Made::one(Content::Reserved(Reserved {
            released: true,
            ..described
        })))
    }

    /// Plants leave those that are ready, the first that were ready first.
    pub(super) fn hand_over(
        &self,
        crop: &str,
        number: u32,
        how: &str,
        reservation: Option<&str>,
    ) -> Result<Made, AppError> {
        let how = match how {
            "sold" => Leaving::Sold,
            "given_away" => Leaving::GivenAway,
            "planted_out" => Leaving::PlantedOut,
            _ => return Err(AppError::bad_request(how)),
        };
        if number == 0 {
            return Err(AppError::refused("number_zero"));
        }
        let kept = match reservation {
            Some(id) => Some(self.reservation(id)?),
            None => None,
        };
        let of = kept.as_ref().map_or_else(
            || Wares::Crop {
                crop: crop.to_owned(),
                variety: String::new(),
            },
            |kept| kept.described.of.clone(),
        );
        let ready = plans::ready(self.journal, &of)?;
        let all = ready
            .iter()
            .fold(0_u32, |all, (_, there)| all.saturating_add(*there));
        if number > all {
            let mut error = AppError::plain("too_few_ready");
            error.say = error.say.with("ready", Arg::Number(f64::from(all)));
            return Err(error);
        }
        let reservation = kept.map(|kept| kept.described.reservation);
        let mut left = number;
        let mut made = Made::default();
        for (of, there) in ready {
            let number = left.min(there);
            if number == 0 {
                break;
            }
            left -= number;
            made.contents.push(Content::Left(Left {
                of,
                number,
                how,
                reservation,
            }));
        }
        Ok(made)
    }
}

fn rhythm(form: RhythmForm) -> Rhythm {
    match form {
        RhythmForm::By { day } => Rhythm::By { day },
        RhythmForm::Sale { day, over_percent } => Rhythm::Sale { day, over_percent },
        RhythmForm::Every { weeks, from, to } => Rhythm::Every { weeks, from, to },
        RhythmForm::TrueLeaves { from, to } => Rhythm::TrueLeaves { from, to },
    }
}

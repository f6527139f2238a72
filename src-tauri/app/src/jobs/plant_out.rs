//! Plant out: hardened off, and the day has come that hardiness and the last
//! frost allow.

use super::harden::{DAYS, with_outing};
use super::season::{after, began, grown, outing};
use super::{Job, LivingTray, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use plumule_agronomy::Hardiness;
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::PlaceKind;

pub(super) fn job(plan: &Plan<'_>, tray: &LivingTray<'_>, plants: Plants) -> Option<Job> {
    let state = plan.picture.plants(plants)?;
    if !grown(plan, tray).any(|grown| grown == plants) {
        return None;
    }
    let outing = outing(plan, plants)?;
    let began = began(plan, plants)?;
    let hardened = tray.hardened_since(began);
    let (least, most) = DAYS;
    let week_done = hardened.get(least - 1).copied();
    let hard = week_done
        .or(state.ready.as_ref())
        .or_else(|| tray.stands_in(PlaceKind::Outdoors).then_some(began));
    let (day, opened_by, key) = match (hard, outing.frost) {
        (Some(hard), Some(_)) => {
            let next = hard.at.local.date().succ_opt()?;
            (outing.from.max(next), hard, "why-plant-out")
        }
        (Some(hard), None) => {
            let next = hard.at.local.date().succ_opt()?;
            (outing.from.max(next), hard, "why-plant-out-no-frost-date")
        }
        // The day has long come and nobody noted any hardening off.
        (None, Some(_)) => {
            let late = after(outing.from, u64::try_from(most).ok()?);
            (late, began, "why-plant-out-not-hardened")
        }
        (None, None) => return None,
    };
    let hardiness = match outing.crop.hardiness {
        Hardiness::Hardy => "hardiness-hardy",
        Hardiness::HalfHardy => "hardiness-half-hardy",
        Hardiness::Tender => "hardiness-tender",
    };
    let out = day.max(plan.now.date());
    let why = with_outing(plan, Say::new(key), plants, (&outing, out))
        .with("hardiness", Arg::Word(hardiness.to_owned()))
        .with("there", Arg::Number(f64::from(state.numbers.there)))
        .with("hardened", Arg::Number(hardened.len() as f64));
    let mut job = Job::new(
        JobKind::PlantOut,
        Subject::from(plants),
        opened_by.entry,
        rounds::morning(plan.picture, day),
    )
    .because(why);
    job.suggested = Some(state.numbers.there);
    Some(job)
}

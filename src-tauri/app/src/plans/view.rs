//! Plans, windows and what is kept for somebody, as the Year screen shows them.

use super::chart::windows;
use super::need::{Need, need, needs};
use super::stock::ready;
use crate::error::AppError;
use crate::jobs::Plan;
use crate::names::Names;
use crate::picture::Picture;
use crate::say::{Arg, Say};
use crate::seed::{crop_keys, crop_name};
use crate::view::{
    Named, PlanForm, PlanPacket, PlanSow, PlanView, ReservationView, RhythmForm, YearView,
};
use crate::words;
use chrono::NaiveDate;
use plumule_agronomy::crops;
use plumule_journal::Journal;
use plumule_journal::content::{PlanDescribed, Rhythm, Wares};
use plumule_journal::id::PlanId;
use plumule_journal::stamp::Stamp;
use plumule_journal::state::{PacketState, ReservationState};
use std::collections::BTreeSet;

pub(crate) fn view(journal: &Journal, stamp: &Stamp) -> Result<YearView, AppError> {
    let picture = Picture::of_the_living(journal, stamp)?;
    let now = picture.now(stamp);
    let today = now.date();
    let packets = journal.packets_in_use()?;
    let plan = Plan::of(&picture, now);
    let mut needs = needs(&plan);
    needs.sort_by_key(|need| {
        let next = need.next.as_ref().map(|next| next.from);
        let last = need.plan.described.rhythm.last_day();
        (next.unwrap_or(last), need.plan.described.plan)
    });
    let reservations = journal.reservations()?;
    Ok(YearView {
        today,
        windows: windows(&picture, &grown(&picture, &packets), today),
        plans: needs.iter().map(|need| plan_view(&plan, need)).collect(),
        packets: packets.iter().map(plan_packet).collect(),
        crops: crop_keys(),
        reservations: reservations
            .iter()
            .map(|kept| reservation(journal, kept))
            .collect::<Result<_, _>>()?,
    })
}

/// Crops with seed in the box, a living sowing, or a plan.
fn grown(picture: &Picture, packets: &[PacketState]) -> BTreeSet<String> {
    let in_box = packets
        .iter()
        .filter(|packet| packet.seeds_left() != Some(0))
        .map(|packet| &packet.described.crop);
    let sown = picture
        .sowings
        .values()
        .filter(|sowing| sowing.plants.ended.is_none())
        .filter_map(|sowing| Some(&picture.packets.get(&sowing.packet())?.described.crop));
    let planned = picture.plans.values().map(|plan| &plan.described.crop);
    in_box.chain(sown).chain(planned).cloned().collect()
}

fn plan_packet(packet: &PacketState) -> PlanPacket {
    let described = &packet.described;
    let year = described.packed_year.or(described.harvested_year);
    PlanPacket {
        crop: described.crop.clone(),
        of: Named {
            key: described.packet.to_string(),
            name: Say::new("plan-packet")
                .with("crop", words::crop(&described.crop))
                .with("variety", words::variety(&described.variety))
                .with(
                    "year",
                    Arg::Text(year.map_or_else(String::new, |year| year.to_string())),
                ),
        },
    }
}

/// A plan for the round.
pub(crate) fn plan_head(plan: &Plan<'_>, id: PlanId) -> Option<PlanSow> {
    sow(&need(plan, plan.picture.plans.get(&id)?))
}

fn sow(need: &Need<'_>) -> Option<PlanSow> {
    let next = need.next.as_ref()?;
    Some(PlanSow {
        plan: need.plan.described.plan.to_string(),
        packet: need
            .packet
            .map(|packet| packet.described.packet.to_string()),
        wanted: next.plants,
        from: next.from,
    })
}

fn plan_view(plan: &Plan<'_>, need: &Need<'_>) -> PlanView {
    let described = &need.plan.described;
    let today = plan.now.date();
    let seeds = need.seeds(plan);
    let trouble = trouble(need, seeds, today);
    let over = need.next.as_ref().is_some_and(|next| next.last < today);
    PlanView {
        plan: described.plan.to_string(),
        crop: crop_name(&described.crop),
        form: form(described),
        say: planned(described),
        stands: (!need.plan.sowings.is_empty()).then(|| stands(need)),
        next: next_say(need, seeds, today).filter(|_| trouble.is_none()),
        sow: sow(need).filter(|_| !over),
        trouble,
    }
}

pub(super) fn form(plan: &PlanDescribed) -> PlanForm {
    PlanForm {
        crop: plan.crop.clone(),
        variety: plan.variety.clone(),
        packet: plan.packet.map(|packet| packet.to_string()),
        wanted: plan.wanted,
        rhythm: match plan.rhythm {
            Rhythm::By { day } => RhythmForm::By { day },
            Rhythm::Sale { day, over_percent } => RhythmForm::Sale { day, over_percent },
            Rhythm::Every { weeks, from, to } => RhythmForm::Every { weeks, from, to },
            Rhythm::TrueLeaves { from, to } => RhythmForm::TrueLeaves { from, to },
        },
        raise_weeks: plan.raise_weeks,
    }
}

fn number(number: u32) -> Arg {
    Arg::Number(f64::from(number))
}

/// What a plan says: how many, and when.
pub(crate) fn planned(described: &PlanDescribed) -> Say {
    let (key, weeks) = match described.rhythm {
        Rhythm::By { .. } => ("plan-by", 0),
        Rhythm::Sale { .. } => ("plan-sale", 0),
        Rhythm::Every { weeks, .. } => ("plan-every", weeks),
        Rhythm::TrueLeaves { .. } => ("plan-leaves", 0),
    };
    let last = described.rhythm.last_day();
    Say::new(key)
        .with("wanted", number(described.wanted))
        .with("raise", number(described.to_raise()))
        .with("weeks", number(weeks))
        .with(
            "from",
            Arg::Day(described.rhythm.first_day().unwrap_or(last)),
        )
        .with("day", Arg::Day(last))
}

fn stands(need: &Need<'_>) -> Say {
    let count = &need.count;
    let sowings = u32::try_from(need.plan.sowings.len()).unwrap_or(u32::MAX);
    // Of sowings one after another each is for itself.
    let key = if need.raising.is_some() {
        "plan-stands"
    } else {
        "plan-stands-each"
    };
    Say::new(key)
        .with("there", number(count.there))
        .with("gone", number(count.gone))
        .with("coming", Arg::Number(count.to_come.round()))
        .with("wanted", number(need.raise))
        .with("sowings", number(sowings))
}

fn next_say(need: &Need<'_>, seeds: Option<u32>, today: NaiveDate) -> Option<Say> {
    let next = need.next.as_ref()?;
    let raising = need.raising.as_ref();
    let key = match (raising, next.from <= today) {
        (Some(_), false) => "plan-next-by",
        (Some(_), true) => "plan-next-by-now",
        (None, false) => "plan-next",
        (None, true) => "plan-next-now",
    };
    let days = |days: Option<i64>| Arg::Number(days.unwrap_or(0) as f64);
    let place = raising.and_then(|raising| raising.place);
    Some(
        Say::new(key)
            .with("from", Arg::Day(next.from))
            .with("last", Arg::Day(next.last))
            .with("plants", number(next.plants))
            .with("seeds", number(seeds.unwrap_or(0)))
            .with("longest", days(raising.map(|raising| raising.longest)))
            .with("up", days(raising.map(|raising| raising.up)))
            .with(
                "place",
                Arg::Text(place.map_or_else(String::new, |place| place.described.name.clone())),
            ),
    )
}

/// What stands in the way of a plan.
fn trouble(need: &Need<'_>, seeds: Option<u32>, today: NaiveDate) -> Option<Say> {
    let described = &need.plan.described;
    let day = described.rhythm.last_day();
    let to_a_day = matches!(described.rhythm, Rhythm::By { .. } | Rhythm::Sale { .. });
    if day < today {
        return Some(Say::new("plan-over").with("day", Arg::Day(day)));
    }
    if to_a_day && need.raising.is_none() {
        let known = crops().get(&described.crop).is_some();
        return Some(Say::new(if known {
            "plan-sown-in-place"
        } else {
            "plan-crop-unknown"
        }));
    }
    let next = need.next.as_ref()?;
    if next.last < today {
        return Some(
            Say::new("plan-too-late")
                .with("last", Arg::Day(next.last))
                .with("plants", number(next.plants)),
        );
    }
    if need.packet.is_none() {
        return Some(Say::new("plan-no-packet").with("from", Arg::Day(next.from)));
    }
    let left = need.packet.and_then(PacketState::seeds_left);
    match (seeds, left) {
        (Some(seeds), Some(left)) if seeds > left => Some(
            Say::new("plan-too-few-seeds")
                .with("seeds", number(seeds))
                .with("left", number(left))
                .with("from", Arg::Day(next.from)),
        ),
        _ => None,
    }
}

fn reservation(journal: &Journal, kept: &ReservationState) -> Result<ReservationView, AppError> {
    let described = &kept.described;
    let names = Names(journal);
    let (crop, variety, tray) = match &described.of {
        Wares::Plants { of } => {
            let name = names.plants(*of)?;
            let tray = match name.tray {
                Some(tray) => journal.tray(tray)?.map(|tray| tray.described.code),
                None => None,
            };
            (name.crop, name.variety, tray)
        }
        Wares::Crop { crop, variety } => (crop.clone(), variety.clone(), None),
    };
    let all = ready(journal, &described.of)?;
    let there = all
        .iter()
        .fold(0_u32, |all, (_, there)| all.saturating_add(*there));
    Ok(ReservationView {
        reservation: described.reservation.to_string(),
        crop: crop_name(&crop),
        variety,
        tray,
        remaining: kept.remaining(),
        ready: there.min(kept.remaining()),
        note: described.note.clone(),
    })
}

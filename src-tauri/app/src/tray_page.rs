//! One tray's page.

use crate::error::AppError;
use crate::growth::{Learnt, growth_at};
use crate::jobs;
use crate::judgement::{Case, reasons, verdict_view};
use crate::packet_words::{self, caution_of_crop};
use crate::picture::Picture;
use crate::round::{job_view, place_head};
use crate::say::{Arg, Say};
use crate::search;
use crate::season::season_view;
use crate::stage::{plants_line, reference};
use crate::temperature::Temperatures;
use crate::timeline;
use crate::view::{Coded, Explanation, PlantsPage, Relative, SeasonView, TrayView};
use crate::words::{self, word};
use chrono::{NaiveDate, NaiveDateTime};
use plumule_journal::Journal;
use plumule_journal::content::Seeds;
use plumule_journal::id::TrayId;
use plumule_journal::stamp::Stamp;
use plumule_journal::state::{FeltAt, Mark, Parent, PlantsState, Problem, SowingState, TrayState};
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::Step;
use std::collections::BTreeSet;

pub(crate) fn view(journal: &Journal, stamp: &Stamp, id: &str) -> Result<TrayView, AppError> {
    let tray: TrayId = id.parse().map_err(|_| AppError::bad_request(id))?;
    let picture = Picture::of_tray(journal, stamp, tray)?;
    let state = picture
        .trays
        .get(&tray)
        .ok_or_else(|| AppError::bad_request(id))?;
    let now = picture.now(stamp);
    let subjects: Vec<Subject> = std::iter::once(Subject::Tray(tray))
        .chain(state.occupants.iter().map(|it| it.plants.into()))
        .collect();
    let stay = state.stays.last();
    Ok(TrayView {
        tray: tray.to_string(),
        code: state.described.code.clone(),
        container: state.described.container.as_str().to_owned(),
        rows: state.described.rows,
        columns: state.described.columns,
        compost: state.described.compost.as_str().to_owned(),
        covered: state.covers.last().is_some_and(|cover| cover.on),
        place: picture.place_of(state).map(place_head),
        since: stay.map(|stay| stay.since.at.local),
        emptied: state.emptied.is_some(),
        last_felt: state.felt.last().map(felt_say),
        plants: pages(&picture, state, now),
        jobs: jobs::due(&picture, now)
            .iter()
            .filter(|job| job.tray == Some(tray))
            .map(job_view)
            .collect(),
        problems: problems(&picture, state),
        timeline: timeline::of(journal, &subjects)?,
        earlier: search::earlier(journal, &picture, state)?,
    })
}

fn felt_say(felt: &FeltAt) -> Say {
    let feel = felt.feel.map(|feel| word("feel", feel.as_str()));
    let water = felt.water.map(|water| word("watering", water.as_str()));
    let say = match (feel, water) {
        (Some(feel), Some(water)) => Say::new("felt-and-watered")
            .with("feel", feel)
            .with("water", water),
        (Some(feel), None) => Say::new("felt-only").with("feel", feel),
        (None, water) => Say::new("felt-watered")
            .with("water", water.unwrap_or_else(|| Arg::Text(String::new()))),
    };
    say.with("at", Arg::Moment(felt.at.at.local))
}

/// What is and was in the tray: the living first, then by cells.
fn pages(picture: &Picture, tray: &TrayState, now: NaiveDateTime) -> Vec<PlantsPage> {
    let temperatures = Temperatures::of(picture);
    let mut pages: Vec<PlantsPage> = tray
        .occupants
        .iter()
        .filter_map(|occupant| page(picture, &temperatures, occupant.plants, now))
        .collect();
    pages.sort_by_key(|page| (!page.living, page.line.cells.clone(), page.began));
    pages
}

fn page(
    picture: &Picture,
    temperatures: &Temperatures<'_>,
    plants: Plants,
    now: NaiveDateTime,
) -> Option<PlantsPage> {
    let state = picture.plants(plants)?;
    let sowing = match plants {
        Plants::Sowing(id) => picture.sowings.get(&id),
        Plants::Batch(_) => None,
    };
    let growth = sowing.and_then(|sowing| growth_at(picture, temperatures, sowing, now));
    let case = sowing.zip(growth.as_ref()).map(|(sowing, growth)| Case {
        picture,
        temperatures,
        sowing,
        growth,
        now,
    });
    Some(PlantsPage {
        line: plants_line(picture, plants, now)?,
        began: began(picture, plants)?.at.local,
        living: state.ended.is_none(),
        relatives: from(picture, plants)
            .into_iter()
            .chain(to(picture, state))
            .chain(sowing.into_iter().flat_map(|sowing| again(picture, sowing)))
            .collect(),
        depth_mm: sowing.and_then(|sowing| sowing.sown.depth_mm),
        treatment: sowing.map(treated).unwrap_or_default(),
        season: season_of(picture, plants, now.date()),
        wanted: sowing.and_then(|sowing| sowing.sown.wanted),
        forecast: case
            .as_ref()
            .map(|case| case.growth.forecast_view(picture, case.sowing, now.date())),
        verdict: case.as_ref().and_then(verdict_view),
        reasons: case.as_ref().map(reasons).unwrap_or_default(),
        explained: sowing
            .and_then(|sowing| sowing.explained.as_ref())
            .map(|said| Explanation {
                causes: said
                    .causes
                    .iter()
                    .map(|it| it.as_str().to_owned())
                    .collect(),
                text: said.text.clone(),
                at: said.at.at.local,
            }),
        learnt: sowing.map(|it| taught(picture, it)).unwrap_or_default(),
        seeds_left: sowing
            .filter(|sowing| sowing.sown.seeds != Seeds::Pinch)
            .map(SowingState::seeds_left),
        caution: picture.book_crop(plants).and_then(caution_of_crop),
    })
}

/// The season of plants that are alive.
fn season_of(picture: &Picture, plants: Plants, today: NaiveDate) -> Option<SeasonView> {
    let lives = picture.plants(plants)?.ended.is_none();
    let crop = picture.book_crop(plants).filter(|_| lives)?;
    season_view(picture, crop, today)
}

/// What was done to the seed of a sowing before.
fn treated(sowing: &SowingState) -> Vec<Say> {
    let treatment = sowing.sown.treatment;
    let soaked = treatment
        .soaked_hours
        .map(|hours| Say::new("treated-soaked").with("hours", Arg::Number(hours)));
    let chipped = treatment.chipped.then(|| Say::new("treated-chipped"));
    let cold = treatment
        .cold_weeks
        .map(|weeks| Say::new("treated-cold-weeks").with("weeks", Arg::Number(f64::from(weeks))));
    [soaked, chipped, cold].into_iter().flatten().collect()
}

fn began(picture: &Picture, plants: Plants) -> Option<&Mark> {
    Some(match plants {
        Plants::Sowing(id) => &picture.sowings.get(&id)?.opened_by,
        Plants::Batch(id) => &picture.batches.get(&id)?.opened_by,
    })
}

fn tray_of(picture: &Picture, plants: Plants) -> Option<TrayId> {
    Some(match plants {
        Plants::Sowing(id) => picture.sowings.get(&id)?.sown.tray,
        Plants::Batch(id) => picture.batches.get(&id)?.tray,
    })
}

/// What a batch came from.
fn from(picture: &Picture, plants: Plants) -> Option<Relative> {
    let Plants::Batch(id) = plants else {
        return None;
    };
    let batch = picture.batches.get(&id)?;
    let Parent::Plants { of, step } = &batch.parent else {
        return None;
    };
    relative(
        picture,
        "from",
        *of,
        batch.plants.numbers.up,
        *step,
        &batch.opened_by,
    )
}

/// What some plants went on to.
fn to(picture: &Picture, state: &PlantsState) -> Vec<Relative> {
    let parts = state
        .went_on
        .iter()
        .flat_map(|went| went.parts.iter().map(move |part| (went, part)));
    parts
        .filter_map(|(went, part)| {
            let batch = Plants::Batch(part.batch);
            relative(picture, "to", batch, part.number, went.step, &went.at)
        })
        .collect()
}

/// The sowing that one repeats or stands beside, and those that repeat it.
fn again(picture: &Picture, sowing: &SowingState) -> Vec<Relative> {
    let id = sowing.sown.sowing;
    let before = sowing.sown.again_of.and_then(|of| picture.sowings.get(&of));
    let before = before.map(|other| ("again_of", other));
    let after = picture.sowings.values();
    let after = after.filter(|other| other.sown.again_of == Some(id));
    let all = before.into_iter().chain(after.map(|it| ("sown_again", it)));
    all.filter_map(|(direction, other)| {
        let tray = picture.trays.get(&other.sown.tray)?;
        Some(Relative {
            direction: direction.to_owned(),
            plants: reference(Plants::Sowing(other.sown.sowing)),
            tray: other.sown.tray.to_string(),
            code: tray.described.code.clone(),
            number: (other.sown.seeds != Seeds::Pinch).then(|| other.seeds()),
            step: String::new(),
            at: other.opened_by.at.local,
        })
    })
    .collect()
}

/// What finished sowings of its packet, else of its crop, taught.
fn taught(picture: &Picture, sowing: &SowingState) -> Vec<Say> {
    let learnt = Learnt::for_sowing(picture, sowing);
    let Some(packet) = picture.packets.get(&sowing.packet()) else {
        return Vec::new();
    };
    let described = &packet.described;
    let crop = picture.book_crop(Plants::Sowing(sowing.sown.sowing));
    let pace = crop.and_then(|crop| packet_words::pace(&learnt, crop, described));
    let own = packet_words::own(&learnt);
    let says = [packet_words::stated(described), own, pace];
    says.into_iter().flatten().collect()
}

fn relative(
    picture: &Picture,
    direction: &str,
    plants: Plants,
    number: u32,
    step: Step,
    at: &Mark,
) -> Option<Relative> {
    let tray = tray_of(picture, plants)?;
    Some(Relative {
        direction: direction.to_owned(),
        plants: reference(plants),
        tray: tray.to_string(),
        code: picture
            .trays
            .get(&tray)
            .map(|tray| tray.described.code.clone())
            .unwrap_or_default(),
        number: Some(number),
        step: step.as_str().to_owned(),
        at: at.at.local,
    })
}

/// What is odd about the tray and what is in it, each once.
fn problems(picture: &Picture, tray: &TrayState) -> Vec<Coded> {
    let of_plants = tray
        .occupants
        .iter()
        .filter_map(|occupant| picture.plants(occupant.plants))
        .flat_map(|state| state.problems.iter());
    let all: BTreeSet<Problem> = tray.problems.iter().chain(of_plants).copied().collect();
    all.into_iter().map(problem).collect()
}

fn problem(problem: Problem) -> Coded {
    let code = match problem {
        Problem::MoreLeftThanThere => "more_left_than_there",
        Problem::CellsTwice => "cells_twice",
        Problem::NeverDescribed => "never_described",
        Problem::AfterTheEnd => "after_the_end",
    };
    Coded {
        code: code.to_owned(),
        say: Say::new(words::key("problem", code)),
    }
}

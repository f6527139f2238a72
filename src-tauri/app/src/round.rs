//! The round as it is shown.

use crate::job_key;
use crate::jobs::{Job, LivingTray, Plan, kind_word, low_in};
use crate::nagging;
use crate::picture::Picture;
use crate::plans::plan_head;
use crate::rounds;
use crate::say::{Arg, Say};
use crate::stage::{plants_line_with, reference};
use crate::trays::code_order;
use crate::view::{
    JobKind, JobView, LastReading, NextDue, PlaceHead, PlaceRound, RangeView, RoundView, SeedJob,
    TestHead, TrayCard,
};
use crate::words;
use chrono::NaiveDateTime;
use plumule_journal::content::Shown;
use plumule_journal::id::{PlaceId, TrayId};
use plumule_journal::state::PlaceState;
use plumule_journal::subject::{Plants, Subject};
use plumule_journal::words::Container;
use std::collections::{BTreeMap, BTreeSet};

/// So many trays to feel in one place are one job (judgement: more than a hand
/// feels in passing).
const MANY: usize = 4;

/// What is due now, place by place, and of living trays that stand nowhere (a
/// move is missing from a merge).
pub(crate) fn round_view(picture: &Picture, now: NaiveDateTime) -> RoundView {
    let plan = Plan::of(picture, now);
    let all = plan.all();
    let (shown, rest): (Vec<Job>, Vec<Job>) = all
        .into_iter()
        .partition(|job| nagging::shown(picture, job, now));
    let mut of_trays: BTreeMap<TrayId, Vec<&Job>> = BTreeMap::new();
    for job in &shown {
        if let Some(tray) = job.tray {
            of_trays.entry(tray).or_default().push(job);
        }
    }
    let places = picture
        .walk()
        .into_iter()
        .filter_map(|place| place_round(&plan, place, &shown, &of_trays))
        .collect();
    let next = if shown.is_empty() {
        next(picture, &rest, now)
    } else {
        None
    };
    let lost: Vec<&LivingTray<'_>> = plan
        .trays
        .iter()
        .filter(|tray| tray.place.is_none())
        .collect();
    RoundView {
        at: now,
        evening: rounds::evening(picture, now.date()).is_some_and(|evening| now >= evening),
        places,
        nowhere: cards(&plan, &lost, &of_trays),
        seed: shown
            .iter()
            .filter(|job| job.of_seed())
            .map(|job| seed_job(&plan, job))
            .collect(),
        next,
        any_living: !plan.trays.is_empty(),
        away_until: picture.away_until(now.date()),
    }
}

fn reachable(job: &Job) -> bool {
    job.place.is_some() || job.of_seed()
}

fn seed_job(plan: &Plan<'_>, job: &Job) -> SeedJob {
    let test = match job.key.subject {
        Subject::Test(id) => plan.picture.tests.iter().find(|test| test.test == id),
        _ => None,
    };
    SeedJob {
        job: job_view(job),
        test: test.map(|test| TestHead {
            test: test.test.to_string(),
            packet: test.packet.to_string(),
            seeds: test.seeds,
        }),
        plan: match job.key.subject {
            Subject::Plan(id) => plan_head(plan, id),
            _ => None,
        },
    }
}

fn place_round(
    plan: &Plan<'_>,
    place: &PlaceState,
    shown: &[Job],
    of_trays: &BTreeMap<TrayId, Vec<&Job>>,
) -> Option<PlaceRound> {
    let id = place.described.place;
    let here = |tray: &&LivingTray<'_>| tray.place.is_some_and(|place| place.described.place == id);
    let trays: Vec<&LivingTray<'_>> = plan.trays.iter().filter(here).collect();
    let of_place = shown.iter().filter(|job| job.place == Some(id));
    let jobs: Vec<JobView> = of_place
        .clone()
        .filter(|job| job.tray.is_none())
        .map(job_view)
        .collect();
    let cards = cards(plan, &trays, of_trays);
    let to_feel: Vec<TrayId> = of_place
        .filter(|job| job.kind == JobKind::FeelTheCompost)
        .filter_map(|job| job.tray)
        .collect();
    (!trays.is_empty() || !jobs.is_empty()).then(|| PlaceRound {
        place: place_head(place),
        reading: last_reading(plan, id),
        heat_off: plan.temperatures.heat_off(id, plan.now).is_some(),
        heat_off_since: heat_off_since(place, plan.now),
        low_c: low_in(plan.picture, place, plan.now.date()).map(|(low_c, _)| low_c),
        together: together(&trays, &to_feel),
        jobs,
        quiet: u32::try_from(trays.len() - cards.len()).unwrap_or(u32::MAX),
        cards,
        to_feel: to_feel.iter().map(TrayId::to_string).collect(),
    })
}

/// Since when the heat is off, where nobody said until when.
fn heat_off_since(place: &PlaceState, now: NaiveDateTime) -> Option<NaiveDateTime> {
    let mut stretches = place.heat_off.iter().rev();
    let open = stretches.find(|off| off.to.is_none() && off.from <= now)?;
    Some(open.from)
}

/// Many trays in a place make one job: the smallest, the warmest and one at the
/// edge tell for all of them.
fn together(trays: &[&LivingTray<'_>], to_feel: &[TrayId]) -> Option<Say> {
    if to_feel.len() < MANY {
        return None;
    }
    let to_feel: BTreeSet<&TrayId> = to_feel.iter().collect();
    let mut asked: Vec<&&LivingTray<'_>> = trays
        .iter()
        .filter(|tray| to_feel.contains(&tray.id))
        .collect();
    asked.sort_by_cached_key(|tray| code_order(&tray.state.described.code));
    // A small vessel holds little; under no cover the sun and the air reach it.
    let smallest = asked.iter().min_by_key(|tray| size(tray))?.id;
    let open = asked
        .iter()
        .find(|tray| tray.id != smallest && !tray.under_cover());
    let warmest = open.or(asked.get(1))?.id;
    let mut others = asked.iter().rev();
    let edge = others
        .find(|tray| tray.id != smallest && tray.id != warmest)?
        .id;
    let code = |id: TrayId| {
        let tray = asked.iter().find(|tray| tray.id == id);
        Arg::Text(tray.map_or(String::new(), |tray| tray.state.described.code.clone()))
    };
    Some(
        Say::new("why-feel-together")
            .with("trays", Arg::Number(to_feel.len() as f64))
            .with("smallest", code(smallest))
            .with("warmest", code(warmest))
            .with("edge", code(edge)),
    )
}

/// From the smallest vessel to the largest.
fn size(tray: &LivingTray<'_>) -> (u8, u32) {
    let described = &tray.state.described;
    let vessel = match described.container {
        Container::DampPaper | Container::Bag => 0,
        Container::Pot => 1,
        Container::Cells => 2,
        Container::Pots => 3,
        Container::OpenTray => 4,
    };
    let cells = u32::from(described.rows) * u32::from(described.columns);
    // More cells in a tray are smaller cells.
    (vessel, u32::MAX - cells)
}

/// Trays with something due, in the order of their most pressing jobs.
fn cards(
    plan: &Plan<'_>,
    trays: &[&LivingTray<'_>],
    of_trays: &BTreeMap<TrayId, Vec<&Job>>,
) -> Vec<TrayCard> {
    let with_first = trays.iter().filter_map(|tray| {
        let jobs = of_trays.get(&tray.id)?.iter().copied();
        let views: Vec<JobView> = jobs.clone().map(job_view).collect();
        let first = jobs.map(|job| (!job.today, job.kind)).min()?;
        Some((first, card(plan, tray, views)))
    });
    let mut cards: Vec<_> = with_first.collect();
    cards.sort_by(|(first, card), (other, beside)| {
        (first, &card.code, &card.tray).cmp(&(other, &beside.code, &beside.tray))
    });
    cards.into_iter().map(|(_, card)| card).collect()
}

fn card(plan: &Plan<'_>, tray: &LivingTray<'_>, jobs: Vec<JobView>) -> TrayCard {
    let line = |plants: Plants| {
        let growth = match plants {
            Plants::Sowing(id) => plan.growth(id),
            Plants::Batch(_) => None,
        };
        plants_line_with(plan.picture, plants, growth, plan.now.date())
    };
    TrayCard {
        tray: tray.id.to_string(),
        code: tray.state.described.code.clone(),
        container: tray.state.described.container.as_str().to_owned(),
        covered: tray.covered(),
        plants: tray.plants().filter_map(line).collect(),
        jobs,
    }
}

/// A job as the screens show it.
pub(crate) fn job_view(job: &Job) -> JobView {
    JobView {
        key: job_key::text(&job.key),
        kind: job.kind,
        plants: job.plants.map(reference),
        today: job.today,
        due: job.due.date(),
        why: job.why.clone(),
        suggested: job.suggested,
        verdict: job.verdict.clone(),
    }
}

/// A place in short.
pub(crate) fn place_head(place: &PlaceState) -> PlaceHead {
    PlaceHead {
        id: place.described.place.to_string(),
        name: place.described.name.clone(),
        kind: place.described.kind.as_str().to_owned(),
        light: place.described.light.as_str().to_owned(),
    }
}

fn last_reading(plan: &Plan<'_>, place: PlaceId) -> Option<LastReading> {
    let reading = plan.picture.readings.get(&place)?.last()?;
    let at = reading.mark.at.local;
    let (min_c, max_c) = match reading.shown {
        Shown::LowHigh { min_c, max_c } => (min_c, max_c),
        Shown::Now { temperature_c } => (temperature_c, temperature_c),
    };
    let days = (plan.now.date() - at.date()).num_days();
    Some(LastReading {
        at,
        days_ago: i32::try_from(days).unwrap_or(i32::MAX),
        range: RangeView { min_c, max_c },
        of: reading.of.as_str().to_owned(),
    })
}

/// The first of what is to come.
fn next(picture: &Picture, jobs: &[Job], now: NaiveDateTime) -> Option<NextDue> {
    let times = jobs.iter().filter(|job| reachable(job));
    let (at, job) = times
        .filter_map(|job| Some((nagging::next_shown(picture, job, now)?, job)))
        .min_by_key(|(at, job)| (*at, !job.today, job.kind))?;
    let what = words::word("job", kind_word(job.kind));
    let place = job.place.and_then(|place| picture.places.get(&place));
    let say = match place {
        Some(place) => Say::new("next-due").with("place", Arg::Text(place.described.name.clone())),
        None => Say::new("next-due-seed"),
    };
    Some(NextDue {
        at,
        say: say.with("job", what),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::world::{World, at};
    use plumule_journal::words::PlaceKind;

    fn world() -> World {
        let mut world = World::new();
        for kind in [PlaceKind::Windowsill, PlaceKind::Shed] {
            let place = world.place(kind, 18.0, 18.0);
            let tray = world.tray(Container::Cells, place, "2026-03-02 08:00");
            world.sow("tomato", 12, tray, 12, "2026-03-02 08:00");
        }
        world
    }

    #[test]
    fn nothing_due_says_what_comes_next_and_when() {
        let view = round_view(&world().picture, at("2026-03-02 09:00"));
        assert!(view.any_living && !view.evening);
        let quiet: Vec<u32> = view.places.iter().map(|place| place.quiet).collect();
        assert_eq!(quiet, [1, 1]);
        let next = view.next.unwrap();
        assert_eq!(next.at, at("2026-03-04 08:00"));
        assert_eq!(next.say.args["place"], Arg::Text("windowsill".to_owned()));
    }

    #[test]
    fn what_is_due_is_on_a_card_and_in_the_list_to_feel() {
        let view = round_view(&world().picture, at("2026-03-04 18:30"));
        assert!(view.evening && view.next.is_none());
        for place in &view.places {
            assert_eq!(place.cards.len(), 1);
            assert_eq!(place.quiet, 0);
            assert_eq!(place.to_feel, [place.cards[0].tray.clone()]);
            let key = &place.cards[0].jobs[0].key;
            assert_eq!(job_key::text(&job_key::parse(key).unwrap()), *key);
        }
    }

    #[test]
    fn an_empty_garden_has_an_empty_round() {
        let view = round_view(&World::new().picture, at("2026-03-04 08:00"));
        assert!(!view.any_living && view.places.is_empty() && view.next.is_none());
    }
}

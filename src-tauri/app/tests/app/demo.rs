//! The demo journal.

use crate::{request, said, stamp};
use chrono::{DateTime, TimeDelta, Utc};
use plumule_app::acts::{Act, SeedsAnswer, TreatmentForm};
use plumule_app::view::{
    Answer, ChoiceKind, JobKind, NumbersView, PacketRow, PlantsLine, PlantsRef, ReasonView, Stage,
    TrayChoice, TrayView,
};
use plumule_app::words::Language;
use plumule_app::{App, demo};
use std::collections::BTreeSet;
use std::path::Path;
use tempfile::TempDir;

/// The half past eight of the round, at the two ends of the year: where it is
/// autumn here the garden lies in the south.
const NOWS: [&str; 2] = ["2026-05-06T07:30:00Z", "2026-11-25T08:30:00Z"];

fn planted(home: &Path, now: DateTime<Utc>) -> App {
    demo::plant(home, &stamp(now, 1), Language::EnGb).unwrap();
    App::open(home, &stamp(now, 2)).unwrap()
}

fn living(app: &App, now: DateTime<Utc>) -> Vec<TrayView> {
    let trays = app.trays(&stamp(now, 3)).unwrap();
    said::all(&trays);
    let lines = trays.places.iter().flat_map(|place| &place.trays);
    lines
        .map(|line| app.tray(&stamp(now, 3), &line.tray).unwrap())
        .collect()
}

fn balance(numbers: &NumbersView) {
    let sum = numbers.gone_on
        + numbers.thinned
        + numbers.lost
        + numbers.planted_out
        + numbers.sold
        + numbers.given_away
        + numbers.there;
    assert_eq!(numbers.up, sum, "{numbers:?}");
}

#[test]
fn in_spring_here() {
    let now = NOWS[0].parse().unwrap();
    let (one, two) = (TempDir::new().unwrap(), TempDir::new().unwrap());
    let app = planted(one.path(), now);
    is_a_garden_in_every_stage(&app, now);
    has_something_of_every_sort_to_do(&app, now);
    plans_and_keeps(&app, now);
    tells_its_stories(&app, now);
    // And it is the same every time.
    let again = planted(two.path(), now);
    let at = stamp(now, 3);
    assert_eq!(app.trays(&at).unwrap(), again.trays(&at).unwrap());
}

#[test]
fn in_spring_on_the_other_half_of_the_earth() {
    let now = NOWS[1].parse().unwrap();
    let home = TempDir::new().unwrap();
    let app = planted(home.path(), now);
    is_a_garden_in_every_stage(&app, now);
    has_something_of_every_sort_to_do(&app, now);
    plans_and_keeps(&app, now);
}

fn is_a_garden_in_every_stage(app: &App, now: DateTime<Utc>) {
    let settings = app.settings(&stamp(now, 3), true).unwrap();
    assert!(settings.entries > 1500, "{} entries", settings.entries);
    let seed = app.seed(&stamp(now, 3)).unwrap();
    said::all(&seed);
    let packets = seed.packets.iter();
    let pages = packets.map(|packet| app.packet(&stamp(now, 3), &packet.line.packet).unwrap());
    let sowings: usize = pages.map(|page| page.sowings.len()).sum();
    assert!((55..=70).contains(&sowings), "{sowings} sowings");

    let pages = living(app, now);
    assert!((11..=18).contains(&pages.len()), "{} trays", pages.len());
    let mut stages = BTreeSet::new();
    for page in &pages {
        said::all(page);
        assert!(
            page.problems.is_empty(),
            "{}: {:?}",
            page.code,
            page.problems
        );
        for plants in page.plants.iter().filter(|plants| plants.living) {
            balance(&plants.line.numbers);
            stages.insert(plants.line.stage);
        }
    }
    for stage in [
        Stage::Sown,
        Stage::ComingUp,
        Stage::Up,
        Stage::PrickedOut,
        Stage::Set,
        Stage::PottedOn,
        Stage::HardeningOff,
        Stage::Ready,
    ] {
        assert!(
            stages.contains(&stage),
            "{stage:?} is missing of {stages:?}"
        );
    }
    let past = app.trays(&stamp(now, 3)).unwrap().past;
    assert!(past.len() > 40, "{} past trays", past.len());
    let past: Vec<&PlantsLine> = past.iter().flat_map(|tray| &tray.plants).collect();
    past.iter().for_each(|plants| balance(&plants.numbers));
}

/// Two plans, of which one was sown for, and plants kept for somebody.
fn plans_and_keeps(app: &App, now: DateTime<Utc>) {
    let year = app.year(&stamp(now, 3)).unwrap();
    said::all(&year);
    assert_eq!(year.plans.len(), 2);
    assert!(year.plans.iter().any(|plan| plan.stands.is_some()));
    let troubles: Vec<_> = year.plans.iter().map(|plan| &plan.trouble).collect();
    assert_eq!(troubles, [&None, &None]);
    assert_eq!(year.reservations.len(), 1);
    let windows = year.windows.unwrap();
    assert!(windows.rows.len() > 10, "{} rows", windows.rows.len());
    assert!(windows.from <= year.today && year.today <= windows.to);
}

fn has_something_of_every_sort_to_do(app: &App, now: DateTime<Utc>) {
    let round = app.round(&stamp(now, 3)).unwrap();
    said::all(&round);
    let jobs: BTreeSet<JobKind> = round
        .places
        .iter()
        .flat_map(|place| {
            place
                .jobs
                .iter()
                .chain(place.cards.iter().flat_map(|card| &card.jobs))
        })
        .map(|job| job.kind)
        .collect();
    for kind in [
        JobKind::LookForSeedlings,
        JobKind::IntoTheLight,
        JobKind::FeelTheCompost,
        JobKind::ItIsLate,
        JobKind::PrickOut,
        JobKind::HardenOff,
    ] {
        assert!(
            jobs.contains(&kind),
            "{now}: {kind:?} is missing of {jobs:?}"
        );
    }
    for day in 1..30 {
        let later = now + TimeDelta::days(day);
        said::all(&app.round(&stamp(later, 3)).unwrap());
    }
    for packet in app.seed(&stamp(now, 3)).unwrap().packets {
        let bench = app
            .bench(&stamp(now, 3), Some(&packet.line.packet))
            .unwrap();
        said::all(&bench);
    }
}

/// The scenario's own turns of fate are there to be seen.
fn tells_its_stories(app: &App, now: DateTime<Utc>) {
    let pages = living(app, now);
    let mixed = pages.iter().find(|page| page.plants.len() == 3).unwrap();
    let up: Vec<bool> = mixed
        .plants
        .iter()
        .map(|plants| plants.line.numbers.up > 0)
        .collect();
    assert_eq!(up, [true, true, false]);
    let halves = pages.iter().flat_map(|page| &page.plants).filter(|plants| {
        plants.line.crop.key == "cabbage"
            && plants.relatives.iter().any(|it| it.direction == "from")
    });
    assert_eq!(halves.count(), 2, "one pricked out into two trays");
    let plants = || pages.iter().flat_map(|page| &page.plants);
    let advises = |kind| {
        let choices = plants().filter_map(|it| it.verdict.as_ref());
        let mut choices = choices.flat_map(|verdict| &verdict.choices);
        choices.any(|choice| choice.kind == kind)
    };
    assert!(advises(ChoiceKind::Sow) && advises(ChoiceKind::DigUp));
    let old_seed = |it: &ReasonView| it.likely && said::one(&it.say).contains("old seed");
    assert!(plants().flat_map(|it| &it.reasons).any(old_seed));
    let packets = app.seed(&stamp(now, 3)).unwrap().packets;
    let page = |packet: &PacketRow| app.packet(&stamp(now, 3), &packet.line.packet).unwrap();
    assert!(packets.iter().any(|packet| page(packet).own.is_some()));
    let lines = || pages.iter().flat_map(|page| &page.timeline);
    assert!(lines().any(|line| line.withdrawn), "a withdrawal");
    assert!(lines().any(|line| line.corrected), "a correction");
    assert!(lines().any(|line| !line.hand.is_empty()), "a helper's hand");
}

/// Sown beside with as many as the verdict says, and linked from either page.
#[test]
fn a_late_tray_says_how_many_to_sow_beside_it_and_that_links_them() {
    let now: DateTime<Utc> = NOWS[0].parse().unwrap();
    let home = TempDir::new().unwrap();
    let mut app = planted(home.path(), now);
    let pages = living(&app, now);
    let late = pages.iter().flat_map(|page| {
        let plants = page.plants.iter();
        plants.map(move |plants| (page, plants))
    });
    let advised = late.filter_map(|(page, plants)| {
        let choices = &plants.verdict.as_ref()?.choices;
        let sow = choices
            .iter()
            .find(|it| it.kind == ChoiceKind::Sow && it.seeds.is_some())?;
        Some((page, plants, sow))
    });
    let (page, plants, sow) = advised.into_iter().next().unwrap();
    let PlantsRef::Sowing(old) = plants.line.plants.clone() else {
        panic!("a sowing is late");
    };
    let seeds = sow.seeds.unwrap();
    let act = Act::Sow {
        packet: plants.line.packet.clone().unwrap(),
        into: TrayChoice::New {
            code: None,
            container: "open_tray".to_owned(),
            rows: 1,
            columns: 1,
            compost: "seed".to_owned(),
            place: page.place.as_ref().unwrap().id.clone(),
            covered: false,
        },
        cells: vec![],
        seeds: SeedsAnswer::Exact(seeds),
        depth_mm: None,
        wanted: sow.wanted,
        again_of: Some(old),
        treatment: TreatmentForm::default(),
        plan: None,
    };
    let answer = app.act(&stamp(now, 4), request(act)).unwrap();
    let Answer::Written {
        tray: Some(tray), ..
    } = answer
    else {
        panic!("{answer:?}");
    };
    let linked = |page: &TrayView, direction: &str| {
        let relatives = page.plants.iter().flat_map(|plants| &plants.relatives);
        relatives
            .filter(|it| it.direction == direction)
            .map(|it| (it.tray.clone(), it.number))
            .collect::<Vec<_>>()
    };
    let new = app.tray(&stamp(now, 5), &tray).unwrap();
    assert_eq!(new.plants[0].line.seeds, Some(seeds));
    assert!(
        linked(&new, "again_of")
            .iter()
            .any(|(of, _)| *of == page.tray)
    );
    let old = app.tray(&stamp(now, 5), &page.tray).unwrap();
    assert_eq!(linked(&old, "sown_again"), [(tray, Some(seeds))]);
}

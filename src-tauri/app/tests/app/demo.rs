//! The demo journal.

use crate::{said, stamp};
use chrono::{DateTime, TimeDelta, Utc};
use plumule_app::view::{
    ChoiceKind, JobKind, NumbersView, PlantsLine, ReasonView, Stage, TrayView,
};
use plumule_app::{App, demo};
use std::collections::BTreeSet;
use std::path::Path;
use tempfile::TempDir;

/// The half past eight of the round, at the two ends of the year: where it is
/// autumn here the garden lies in the south.
const NOWS: [&str; 2] = ["2026-05-06T07:30:00Z", "2026-11-25T08:30:00Z"];

fn planted(home: &Path, now: DateTime<Utc>) -> App {
    demo::plant(home, &stamp(now, 1)).unwrap();
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
}

fn is_a_garden_in_every_stage(app: &App, now: DateTime<Utc>) {
    let settings = app.settings(&stamp(now, 3), true).unwrap();
    assert!(settings.entries > 1500, "{} entries", settings.entries);
    let seed = app.seed(&stamp(now, 3)).unwrap();
    said::all(&seed);
    let sowings: u32 = seed.packets.iter().map(|packet| packet.sowings).sum();
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
    assert!(packets.iter().any(|packet| packet.own.is_some()));
    let lines = || pages.iter().flat_map(|page| &page.timeline);
    assert!(lines().any(|line| line.withdrawn), "a withdrawal");
    assert!(lines().any(|line| line.corrected), "a correction");
    assert!(lines().any(|line| !line.hand.is_empty()), "a helper's hand");
}

//! After coming up: light, warmth, feed, and an end.

use super::*;
use plumule_journal::state::SightAt;
use plumule_journal::words::{Light, Sight};

impl Scene {
    fn sees(&mut self, sight: Sight, when: &str) {
        let at = self.world.mark(when);
        let sowing = self.world.picture.sowings.get_mut(&self.sowing).unwrap();
        sowing.plants.sights.push(SightAt { at, sight });
    }
}

#[test]
fn a_slow_kind_has_its_true_leaves_later() {
    // Celery takes 10 to 12 weeks to raise, tomato 6 to 8.
    let due = |crop| {
        let mut scene = scene_of(crop, Container::OpenTray, 1);
        scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
        scene
            .world
            .job(JobKind::PrickOut, "2026-03-12 09:00")
            .unwrap()
            .due
    };
    assert!(due("celery") > due("tomato"));
}

#[test]
fn and_in_the_cold_later_still() {
    let due = |degrees: f64| {
        let mut scene = scene_of("tomato", Container::OpenTray, 1);
        scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
        let described = scene.world.describe(scene.place);
        described.usual = RangeC {
            min_c: degrees,
            max_c: degrees,
        };
        scene
            .world
            .job(JobKind::PrickOut, "2026-03-12 09:00")
            .unwrap()
            .due
    };
    assert!(due(12.0) > due(18.0));
    assert_eq!(due(30.0), due(45.0));
}

#[test]
fn legginess_is_looked_for_where_it_is_dim_and_leggy_wants_light() {
    const LOOK: JobKind = JobKind::LookForLegginess;
    let mut scene = scene();
    scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
    scene.world.hides(LOOK, "2026-03-16 08:00");
    scene.world.describe(scene.place).light = Light::Dim;
    scene.world.hides(LOOK, "2026-03-14 08:00");
    scene.world.shows(LOOK, "2026-03-15 08:00", "why-leggy");
    scene.sees(Sight::Sturdy, "2026-03-15 08:10");
    scene.world.hides(LOOK, "2026-03-17 08:00");
    scene.world.shows(LOOK, "2026-03-18 08:00", "why-leggy");
    scene.world.hides(JobKind::IntoTheLight, "2026-03-18 08:00");
    scene.sees(Sight::Leggy, "2026-03-18 08:10");
    scene.world.hides(LOOK, "2026-03-21 08:00");
    scene
        .world
        .shows(JobKind::IntoTheLight, "2026-03-18 08:20", "why-light-leggy");
    let sill = scene.world.place(PlaceKind::Windowsill, 18.0, 18.0);
    scene.world.move_to(scene.tray, sill, "2026-03-18 09:00");
    scene.world.hides(JobKind::IntoTheLight, "2026-03-18 10:00");
}

#[test]
fn fed_four_weeks_after_pricking_out_or_when_leaves_are_pale() {
    const KIND: JobKind = JobKind::Feed;
    let mut scene = scene_of("tomato", Container::OpenTray, 1);
    scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
    scene.sees(Sight::PaleLeaves, "2026-03-14 08:00");
    // Never before true leaves.
    scene.world.hides(KIND, "2026-03-24 08:00");
    scene.world.shows(KIND, "2026-03-25 08:00", "why-feed-pale");
    let tray = scene
        .world
        .tray(Container::Cells, scene.place, "2026-03-25 09:00");
    scene
        .world
        .go_on(scene.sowing, Step::PrickedOut, tray, "2026-03-25 09:00");
    scene.world.hides(KIND, "2026-04-21 08:00");
    scene.world.shows(KIND, "2026-04-22 08:00", "why-feed");
    let fed = scene.world.mark("2026-04-22 08:10");
    scene.world.tray_state(tray).fed.push(fed);
    scene.world.hides(KIND, "2026-05-05 08:00");
    scene
        .world
        .shows(KIND, "2026-05-06 08:00", "why-feed-again");
}

#[test]
fn cooler_once_it_is_up_where_it_is_warm() {
    const KIND: JobKind = JobKind::CoolerNow;
    let mut scene = scene_of("lettuce", Container::Cells, 12);
    let described = scene.world.describe(scene.place);
    described.usual = RangeC {
        min_c: 20.0,
        max_c: 24.0,
    };
    scene.world.hides(KIND, "2026-03-06 08:00");
    scene.world.count(scene.sowing, "2026-03-06 08:00", 10);
    // Lettuce wants 15.6 to 18.3 °C by day (Utah State University Extension).
    scene.world.shows(KIND, "2026-03-06 08:10", "why-cooler");
    let cool = scene.world.place(PlaceKind::ColdFrame, 8.0, 18.0);
    scene.world.move_to(scene.tray, cool, "2026-03-06 09:00");
    scene.world.hides(KIND, "2026-03-06 10:00");
}

#[test]
fn a_tray_that_all_has_gone_from_is_to_be_emptied_and_asks_for_nothing_else() {
    const KIND: JobKind = JobKind::EmptyTheTray;
    let mut scene = scene_of("tomato", Container::OpenTray, 1);
    scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
    scene.world.hides(KIND, "2026-03-25 08:00");
    let tray = scene
        .world
        .tray(Container::Cells, scene.place, "2026-03-25 09:00");
    scene
        .world
        .go_on(scene.sowing, Step::PrickedOut, tray, "2026-03-25 09:00");
    scene.world.shows(KIND, "2026-03-25 18:00", "why-empty");
    let all = scene.world.all("2026-03-28 08:00");
    let of_old = all.iter().filter(|job| job.tray == Some(scene.tray));
    assert_eq!(of_old.count(), 1);
}

#[test]
fn a_tray_that_stands_nowhere_is_asked_for() {
    let mut scene = scene();
    scene.world.hides(JobKind::SayWhere, "2026-03-03 08:00");
    scene.world.tray_state(scene.tray).stays.clear();
    scene
        .world
        .shows(JobKind::SayWhere, "2026-03-03 08:00", "why-say-where");
    let view = crate::round::round_view(&scene.world.picture, at("2026-03-03 08:00"));
    assert_eq!(view.nowhere.len(), 1);
}

#[test]
fn a_plant_outside_the_book_is_looked_for_as_is_usual() {
    const KIND: JobKind = JobKind::LookForSeedlings;
    let mut scene = scene_of("moonflower", Container::Cells, 12);
    scene.world.hides(KIND, "2026-03-08 08:00");
    scene
        .world
        .shows(KIND, "2026-03-09 08:00", "why-look-unknown");
    scene.world.count(scene.sowing, "2026-03-09 08:10", 0);
    scene.world.hides(KIND, "2026-03-10 08:00");
    scene
        .world
        .shows(KIND, "2026-03-11 08:00", "why-look-unknown");
    scene.world.hides(JobKind::ItIsLate, "2026-03-29 08:00");
    scene
        .world
        .shows(JobKind::ItIsLate, "2026-03-30 08:00", "why-late-unknown");
}

#[test]
fn what_is_for_today_is_not_silenced_within_a_day() {
    let mut scene = scene();
    scene.world.describe(scene.place).light = Light::Dark;
    scene.world.count(scene.sowing, "2026-03-12 07:50", 10);
    for when in ["03-12 08:00", "03-12 18:00", "03-13 08:00", "03-13 18:00"] {
        scene.world.shows(
            JobKind::IntoTheLight,
            &format!("2026-{when}"),
            "why-light-dark",
        );
    }
}

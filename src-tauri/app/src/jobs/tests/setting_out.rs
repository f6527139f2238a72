//! Hardening off and planting out.

use super::*;

/// Tomatoes that were potted on by 20 April: raised by 13 April (6 weeks); the
/// last frost is 10 May, and they go out a week after.
fn potted() -> Scene {
    let mut scene = scene();
    scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
    let tray = scene
        .world
        .tray(Container::Pots, scene.place, "2026-04-05 08:00");
    scene
        .world
        .go_on(scene.sowing, Step::PottedOn, tray, "2026-04-05 08:00");
    scene.tray = tray;
    scene
}

impl Scene {
    fn harden_daily(&mut self, from: u32, to: u32) {
        for day in from..=to {
            self.world
                .harden(self.tray, &format!("2026-05-{day:02} 09:00"));
        }
    }
}

mod harden {
    use super::*;
    const KIND: JobKind = JobKind::HardenOff;

    #[test]
    fn from_ten_days_before_they_may_go_out_daily() {
        let mut scene = potted();
        scene.world.hides(KIND, "2026-05-06 08:00");
        scene
            .world
            .shows(KIND, "2026-05-07 08:00", "why-harden-off-first");
        scene.harden_daily(7, 7);
        scene.world.hides(KIND, "2026-05-07 18:00");
        scene
            .world
            .shows(KIND, "2026-05-08 08:00", "why-harden-off");
    }

    #[test]
    fn odds_of_frost_are_told_where_there_is_a_record() {
        let said = |scene: &Scene| scene.world.said(KIND, "2026-05-07 08:00");
        let mut scene = potted();
        assert!(!said(&scene).contains("odds"));
        scene.world.frost_record();
        assert!(said(&scene).contains("; odds of frost after Sunday 17 May: about 2 in 10)"));
    }

    #[test]
    fn after_a_week_and_the_day_it_is_over() {
        let mut scene = potted();
        scene.harden_daily(7, 15);
        scene
            .world
            .shows(KIND, "2026-05-16 08:00", "why-harden-off");
        scene.harden_daily(16, 16);
        scene.world.hides(KIND, "2026-05-17 08:00");
    }

    #[test]
    fn without_a_frost_date_it_says_so() {
        let mut scene = potted();
        scene.world.garden().last_frost = None;
        // Six weeks from 2 March less ten days.
        scene.world.hides(KIND, "2026-04-02 08:00");
        let job = scene.world.job(KIND, "2026-04-05 09:00").unwrap();
        assert_eq!(job.due.date(), day("2026-04-03"));
        assert_eq!(job.why.key, "why-harden-off-no-frost-date");
    }

    #[test]
    fn outdoors_it_is_hardened_already() {
        let mut scene = potted();
        scene.world.describe(scene.place).kind = PlaceKind::Outdoors;
        scene.world.hides(KIND, "2026-05-07 08:00");
    }

    #[test]
    fn the_south_has_its_spring_in_september() {
        let mut world = World::in_zone("Pacific/Auckland", -37.0);
        let month_day = |month, day| Some(plumule_journal::content::MonthDay { month, day });
        world.garden().last_frost = month_day(9, 20);
        world.garden().first_frost = month_day(5, 20);
        let place = world.place(PlaceKind::Windowsill, 20.0, 20.0);
        let tray = world.tray(Container::Pots, place, "2026-08-03 08:00");
        let sowing = world.sow("tomato", 6, tray, 6, "2026-08-03 08:00");
        world.count(sowing, "2026-08-12 08:00", 6);
        // A week after 20 September, less ten days.
        let job = world.job(KIND, "2026-08-12 09:00").unwrap();
        assert_eq!(job.due.date(), day("2026-09-17"));
    }
}

mod plant_out {
    use super::*;
    const KIND: JobKind = JobKind::PlantOut;

    #[test]
    fn after_a_week_of_hardening_and_the_last_frost() {
        let mut scene = potted();
        scene.harden_daily(10, 15);
        scene.world.hides(KIND, "2026-05-17 08:00");
        scene.harden_daily(16, 16);
        scene.world.hides(KIND, "2026-05-16 18:00");
        scene.world.shows(KIND, "2026-05-17 08:00", "why-plant-out");
    }

    #[test]
    fn odds_of_frost_are_those_after_the_day_on_which_it_is_said() {
        let said = |scene: &Scene, now| scene.world.said(KIND, now);
        let mut scene = potted();
        scene.harden_daily(10, 16);
        assert!(!said(&scene, "2026-05-17 08:00").contains("odds"));
        scene.world.frost_record();
        assert!(
            said(&scene, "2026-05-17 08:00")
                .ends_with("odds of frost after Sunday 17 May: about 2 in 10.")
        );
        assert!(
            said(&scene, "2026-05-26 08:00")
                .ends_with("odds of frost after Tuesday 26 May: less than 1 in 20.")
        );
    }

    #[test]
    fn without_a_frost_date_the_reason_says_so() {
        let mut scene = potted();
        scene.world.garden().last_frost = None;
        scene.world.hides(KIND, "2026-05-17 08:00");
        scene.harden_daily(10, 16);
        scene
            .world
            .shows(KIND, "2026-05-17 08:00", "why-plant-out-no-frost-date");
    }

    #[test]
    fn a_fortnight_after_the_day_even_if_not_hardened() {
        let scene = potted();
        scene.world.hides(KIND, "2026-05-30 08:00");
        scene
            .world
            .shows(KIND, "2026-05-31 08:00", "why-plant-out-not-hardened");
    }
}

//! Jobs of the season and of care, due in one scene and not in one that differs
//! from it in one fact.

use crate::view::JobKind;
use crate::world::{World, at, day};
use plumule_journal::id::{PlaceId, SowingId, TrayId};
use plumule_journal::words::{Container, PlaceKind};

struct Scene {
    world: World,
    place: PlaceId,
    tray: TrayId,
    sowing: SowingId,
}

fn scene(crop: &str, container: Container, kind: PlaceKind, c: f64, sown: &str) -> Scene {
    let mut world = World::new();
    let place = world.place(kind, c, c);
    let tray = world.tray(container, place, sown);
    let sowing = world.sow(crop, 12, tray, 12, sown);
    Scene {
        world,
        place,
        tray,
        sowing,
    }
}

impl Scene {
    fn cold_weeks(&mut self, weeks: u32) {
        let sowing = self.world.picture.sowings.get_mut(&self.sowing).unwrap();
        sowing.sown.treatment.cold_weeks = Some(weeks);
    }

    fn progress(&self, now: &str) -> f64 {
        let plan = super::Plan::of(&self.world.picture, at(now));
        plan.growth(self.sowing).unwrap().course.progress
    }

    fn falls_due(&self, kind: JobKind, now: &str) -> bool {
        let mut due = super::due(&self.world.picture, at(now)).into_iter();
        due.any(|job| job.kind == kind)
    }
}

mod cold_weeks {
    use super::*;
    const KIND: JobKind = JobKind::EndOfTheColdWeeks;

    /// Columbine (aquilegia) wants 3 to 4 weeks in the cold, by the crop book.
    fn in_the_fridge() -> Scene {
        let fridge = PlaceKind::Fridge;
        scene("aquilegia", Container::Bag, fridge, 4.0, "2026-02-02 08:00")
    }

    #[test]
    fn they_end_when_the_crop_book_says() {
        let scene = in_the_fridge();
        scene.world.hides(KIND, "2026-02-22 12:00");
        scene
            .world
            .shows(KIND, "2026-02-23 12:00", "why-cold-over-fridge");
    }

    #[test]
    fn they_end_when_the_grower_said() {
        let mut scene = in_the_fridge();
        scene.cold_weeks(5);
        scene.world.hides(KIND, "2026-03-08 12:00");
        scene
            .world
            .shows(KIND, "2026-03-09 12:00", "why-cold-over-fridge");
    }

    #[test]
    fn out_of_the_fridge_that_is_answered_and_it_begins() {
        let mut scene = in_the_fridge();
        let sill = scene.world.place(PlaceKind::Windowsill, 18.0, 18.0);
        assert_eq!(scene.progress("2026-03-01 08:00"), 0.0);
        scene.world.move_to(scene.tray, sill, "2026-02-26 08:00");
        scene.world.hides(KIND, "2026-02-28 12:00");
        assert!(scene.progress("2026-03-01 08:00") > 0.0);
    }

    #[test]
    fn without_a_fridge_they_are_counted_from_sowing() {
        let shed = PlaceKind::Shed;
        let mut scene = scene("aquilegia", Container::Cells, shed, 6.0, "2026-02-02 08:00");
        scene.world.hides(KIND, "2026-03-01 12:00");
        assert!(scene.progress("2026-02-23 07:00") > 0.0);
        scene.cold_weeks(3);
        assert_eq!(scene.progress("2026-02-23 07:00"), 0.0);
        assert!(scene.progress("2026-02-25 08:00") > 0.0);
        scene.world.hides(KIND, "2026-02-22 12:00");
        scene.world.shows(KIND, "2026-02-23 12:00", "why-cold-over");
        // Warm enough where it is, nothing is to be done.
        scene.world.describe(scene.place).usual.min_c = 18.0;
        scene.world.describe(scene.place).usual.max_c = 22.0;
        scene.world.hides(KIND, "2026-02-23 12:00");
    }

    #[test]
    fn nothing_is_late_meanwhile() {
        let mut scene = scene(
            "aquilegia",
            Container::Cells,
            PlaceKind::Windowsill,
            20.0,
            "2026-01-05 08:00",
        );
        let due = |scene: &Scene| scene.falls_due(JobKind::ItIsLate, "2026-04-09 12:00");
        assert!(due(&scene));
        scene.cold_weeks(14);
        assert!(!due(&scene));
    }
}

mod winter {
    use super::*;
    const LOOK: JobKind = JobKind::LookForSeedlings;

    fn sown_on(sown: &str) -> Scene {
        scene(
            "aquilegia",
            Container::Pots,
            PlaceKind::Outdoors,
            12.0,
            sown,
        )
    }

    #[test]
    fn hardy_perennials_sown_in_autumn_are_silent_until_spring() {
        let scene = sown_on("2025-10-01 08:00");
        for now in ["2025-11-20 12:00", "2026-01-15 12:00", "2026-02-28 12:00"] {
            assert!(scene.world.all(now).iter().all(|job| job.due > at(now)));
        }
        assert_eq!(scene.progress("2026-03-01 00:00"), 0.0);
        let due = |now: &str| {
            let plan = super::super::Plan::of(&scene.world.picture, at(now));
            plan.growth(scene.sowing).unwrap().due.first.unwrap()
        };
        assert!(due("2025-11-20 12:00") > day("2026-03-01"));
        assert!(scene.falls_due(LOOK, "2026-04-08 12:00"));
        scene.world.shows(
            JobKind::FeelTheCompost,
            "2026-03-01 12:00",
            "why-feel-first",
        );
    }

    #[test]
    fn sown_in_summer_they_are_looked_for() {
        let scene = sown_on("2025-08-01 08:00");
        assert!(scene.progress("2025-09-10 08:00") > 0.5);
    }

    #[test]
    fn indoors_it_is_no_winter() {
        let sill = PlaceKind::Windowsill;
        let scene = scene("aquilegia", Container::Pots, sill, 12.0, "2025-10-01 08:00");
        assert!(scene.progress("2025-11-20 08:00") > 0.5);
    }

    #[test]
    fn brought_in_it_begins() {
        let mut scene = sown_on("2025-10-01 08:00");
        let sill = scene.world.place(PlaceKind::Windowsill, 18.0, 18.0);
        scene.world.move_to(scene.tray, sill, "2026-01-10 08:00");
        assert_eq!(scene.progress("2026-01-10 08:00"), 0.0);
        assert!(scene.progress("2026-01-20 08:00") > 0.3);
    }

    #[test]
    fn what_is_tender_or_of_one_season_does_not_wait() {
        let outdoors = PlaceKind::Outdoors;
        let scene = scene(
            "cornflower",
            Container::Pots,
            outdoors,
            12.0,
            "2025-10-01 08:00",
        );
        assert!(scene.progress("2025-11-20 08:00") > 0.5);
    }

    #[test]
    fn in_the_south_spring_is_in_september() {
        let mut scene = sown_on("2026-04-15 08:00");
        assert!(scene.progress("2026-06-15 08:00") > 0.5);
        scene.world.garden().latitude = Some(-40.0);
        assert_eq!(scene.progress("2026-06-15 08:00"), 0.0);
        assert_eq!(scene.progress("2026-09-01 00:00"), 0.0);
        assert!(scene.progress("2026-09-10 00:00") > 0.0);
    }
}

mod sprouting {
    use super::*;

    fn on(container: Container) -> Scene {
        let sill = PlaceKind::Windowsill;
        scene("tomato", container, sill, 20.0, "2026-03-02 08:00")
    }

    #[test]
    fn roots_are_looked_for_before_seedlings_would_be() {
        let look = |container| {
            let scene = on(container);
            let job = scene
                .world
                .job(JobKind::LookForSeedlings, "2026-03-02 09:00");
            let job = job.unwrap();
            (job.due.date(), job.why.key)
        };
        let (sprouts, why) = look(Container::DampPaper);
        let (seedlings, _) = look(Container::Cells);
        assert_eq!(why, "why-look-sprouts");
        assert!(sprouts < seedlings, "{sprouts} is not before {seedlings}");
    }

    #[test]
    fn what_sprouted_is_sown_on_at_once() {
        let mut scene = on(Container::DampPaper);
        scene.world.hides(JobKind::SowOn, "2026-03-07 12:00");
        scene.world.count(scene.sowing, "2026-03-07 09:00", 5);
        scene
            .world
            .shows(JobKind::SowOn, "2026-03-07 12:00", "why-sow-on");
        // More are looked for, and nothing is said of light or of thinning.
        scene.world.shows(
            JobKind::LookForSeedlings,
            "2026-03-08 12:00",
            "why-look-sprouts-more",
        );
    }

    #[test]
    fn in_compost_they_are_not() {
        let mut scene = on(Container::Cells);
        scene.world.count(scene.sowing, "2026-03-07 09:00", 5);
        scene.world.hides(JobKind::SowOn, "2026-03-07 12:00");
    }
}

//! Frost, lids, evenings, last chances and days away: due in one scene and not
//! in one that differs from it in one fact.

use crate::say::Arg;
use crate::view::JobKind;
use crate::world::{World, at, day};
use plumule_journal::content::{JobKey, Shown};
use plumule_journal::id::{PlaceId, SowingId, TrayId};
use plumule_journal::subject::Subject;
use plumule_journal::words::{Container, Feel, PlaceKind, Shelter};

struct Scene {
    world: World,
    place: PlaceId,
    sill: PlaceId,
    tray: TrayId,
    sowing: SowingId,
}

/// Twelve of a crop, all up since 1 April, in a place of a kind; and a sill.
fn scene(crop: &str, kind: PlaceKind) -> Scene {
    let mut world = World::new();
    let place = world.place(kind, 8.0, 18.0);
    let sill = world.place(PlaceKind::Windowsill, 15.0, 20.0);
    let tray = world.tray(Container::Cells, place, "2026-03-02 08:00");
    let sowing = world.sow(crop, 12, tray, 12, "2026-03-02 08:00");
    world.count(sowing, "2026-04-01 08:00", 12);
    Scene {
        world,
        place,
        sill,
        tray,
        sowing,
    }
}

impl Scene {
    fn due(&self, kind: JobKind, now: &str) -> Option<String> {
        let mut jobs = super::due(&self.world.picture, at(now)).into_iter();
        jobs.find(|job| job.kind == kind).map(|job| job.why.key)
    }

    #[track_caller]
    fn is_due(&self, kind: JobKind, now: &str, why: &str) {
        assert_eq!(
            self.due(kind, now).as_deref(),
            Some(why),
            "{kind:?} at {now}"
        );
    }

    #[track_caller]
    fn is_not_due(&self, kind: JobKind, now: &str) {
        assert_eq!(self.due(kind, now), None, "{kind:?} at {now}");
    }
}

mod frost {
    use super::*;
    const KIND: JobKind = JobKind::FrostTonight;
    const NOON: &str = "2026-04-20 12:00";
    const EVENING: &str = "2026-04-20 18:00";

    fn outdoors(crop: &str, low_c: f64) -> Scene {
        let mut scene = scene(crop, PlaceKind::Outdoors);
        scene.world.night(NOON, None, low_c);
        scene
    }

    #[test]
    fn what_is_tender_is_brought_in_and_what_is_hardy_is_not() {
        outdoors("tomato", 1.0).is_due(KIND, EVENING, "why-frost-bring-in");
        outdoors("cabbage", 1.0).is_not_due(KIND, EVENING);
        outdoors("tomato", 6.0).is_not_due(KIND, EVENING);
    }

    #[test]
    fn near_the_edge_fleece_will_do() {
        outdoors("cabbage", -3.0).is_due(KIND, EVENING, "why-frost-fleece");
        outdoors("cabbage", -6.0).is_due(KIND, EVENING, "why-frost-bring-in");
    }

    #[test]
    fn it_says_where_to() {
        let scene = outdoors("tomato", 1.0);
        let job = scene.world.job(KIND, EVENING).unwrap();
        assert_eq!(job.why.args["to"], Arg::Text("windowsill".to_owned()));
        assert_eq!(job.place, Some(scene.place));
        let mut none = outdoors("tomato", 1.0);
        none.world.describe(none.sill).retired = true;
        none.is_due(KIND, EVENING, "why-frost-fleece-only");
    }

    #[test]
    fn under_glass_it_stays_a_little_warmer_and_indoors_it_does_not_freeze() {
        let risk = |kind, low_c| {
            let mut scene = scene("tomato", kind);
            scene.world.night(NOON, None, low_c);
            scene.due(KIND, EVENING).is_some()
        };
        assert!(risk(PlaceKind::Outdoors, 2.5));
        assert!(!risk(PlaceKind::Greenhouse, 2.5));
        assert!(risk(PlaceKind::Greenhouse, 0.5));
        assert!(!risk(PlaceKind::Windowsill, -8.0));
    }

    #[test]
    fn what_was_said_of_the_place_itself_wins() {
        let mut scene = scene("tomato", PlaceKind::Greenhouse);
        scene.world.night(NOON, None, -2.0);
        scene.is_due(KIND, EVENING, "why-frost-bring-in");
        scene
            .world
            .night("2026-04-20 13:00", Some(scene.place), 5.0);
        scene.is_not_due(KIND, EVENING);
        let mut sill = super::scene("tomato", PlaceKind::Windowsill);
        sill.world.night(NOON, Some(sill.place), 1.0);
        assert!(sill.due(KIND, EVENING).is_some());
    }

    #[test]
    fn sheltered_or_moved_it_is_answered() {
        let mut sheltered = outdoors("tomato", 1.0);
        let tray = sheltered.tray;
        sheltered
            .world
            .shelter(tray, "2026-04-20 17:00", Shelter::Fleece);
        sheltered.is_not_due(KIND, EVENING);
        let mut moved = outdoors("tomato", 1.0);
        moved
            .world
            .move_to(moved.tray, moved.sill, "2026-04-20 17:00");
        moved.is_not_due(KIND, EVENING);
        let mut before = outdoors("tomato", 1.0);
        before
            .world
            .shelter(tray, "2026-04-19 17:00", Shelter::BroughtIn);
        assert!(before.due(KIND, EVENING).is_some());
    }

    #[test]
    fn seed_that_is_not_up_is_in_no_danger() {
        let mut scene = scene("tomato", PlaceKind::Outdoors);
        scene.world.count(scene.sowing, "2026-04-02 08:00", 0);
        scene.world.night(NOON, None, -3.0);
        scene.is_not_due(KIND, EVENING);
    }

    #[test]
    fn in_the_morning_it_is_over() {
        let scene = outdoors("tomato", 1.0);
        assert!(scene.due(KIND, "2026-04-21 07:00").is_some());
        scene.is_not_due(KIND, "2026-04-21 12:00");
    }

    #[test]
    fn what_stood_out_for_a_week_stands_more() {
        let mut scene = outdoors("cabbage", -3.0);
        for day in 10..17 {
            let when = format!("2026-04-{day} 09:00");
            scene.world.harden(scene.tray, &when);
        }
        scene.is_not_due(KIND, EVENING);
    }

    #[test]
    fn a_cold_night_has_an_evening_round_in_any_season() {
        let mut scene = scene("tomato", PlaceKind::Outdoors);
        let of_october = day("2026-10-20");
        let evening = |scene: &Scene| crate::rounds::evening(&scene.world.picture, of_october);
        assert_eq!(evening(&scene), None);
        scene.world.night("2026-10-20 12:00", None, 1.0);
        assert_eq!(evening(&scene), Some(at("2026-10-20 18:00")));
    }
}

mod evening {
    use super::*;

    #[test]
    fn what_was_put_out_comes_in_before_dusk() {
        let mut scene = scene("tomato", PlaceKind::Greenhouse);
        scene.is_not_due(JobKind::BringIn, "2026-05-01 18:00");
        scene.world.harden(scene.tray, "2026-05-01 09:00");
        scene.is_not_due(JobKind::BringIn, "2026-05-01 17:00");
        scene.is_due(JobKind::BringIn, "2026-05-01 18:00", "why-bring-in");
        scene.is_not_due(JobKind::BringIn, "2026-05-02 09:00");
        let tray = scene.tray;
        scene
            .world
            .shelter(tray, "2026-05-01 18:05", Shelter::BroughtIn);
        scene.is_not_due(JobKind::BringIn, "2026-05-01 18:10");
    }

    #[test]
    fn a_lid_that_was_opened_is_closed() {
        let mut scene = scene("tomato", PlaceKind::ColdFrame);
        scene.is_not_due(JobKind::CloseTheLid, "2026-05-01 18:00");
        let mark = scene.world.mark("2026-05-01 09:00");
        scene
            .world
            .picture
            .places
            .get_mut(&scene.place)
            .unwrap()
            .aired = Some(mark);
        scene.is_due(
            JobKind::CloseTheLid,
            "2026-05-01 18:00",
            "why-close-the-lid",
        );
        scene.is_not_due(JobKind::CloseTheLid, "2026-05-02 09:00");
    }
}

mod lid {
    use super::*;
    const KIND: JobKind = JobKind::OpenTheLid;

    fn read(scene: &mut Scene, when: &str, max_c: f64) {
        let shown = Shown::LowHigh { min_c: 6.0, max_c };
        scene.world.read(scene.place, when, shown);
    }

    #[test]
    fn a_frame_that_was_hot_is_opened_and_a_cool_one_is_not() {
        let mut hot = scene("tomato", PlaceKind::ColdFrame);
        read(&mut hot, "2026-05-01 17:00", 31.0);
        hot.is_due(KIND, "2026-05-02 09:00", "why-open-the-lid");
        let mut cool = scene("tomato", PlaceKind::ColdFrame);
        read(&mut cool, "2026-05-01 17:00", 16.0);
        cool.is_not_due(KIND, "2026-05-02 09:00");
    }

    #[test]
    fn without_a_thermometer_it_is_said_in_the_bright_half_of_the_year() {
        let mut scene = scene("tomato", PlaceKind::ColdFrame);
        scene.is_due(KIND, "2026-05-02 09:00", "why-open-the-lid-unread");
        scene.is_not_due(KIND, "2026-11-02 09:00");
        scene.world.garden().latitude = Some(-40.0);
        scene.is_due(KIND, "2026-11-02 09:00", "why-open-the-lid-unread");
    }

    #[test]
    fn opened_it_comes_again_the_next_morning() {
        let mut scene = scene("tomato", PlaceKind::ColdFrame);
        read(&mut scene, "2026-05-01 17:00", 31.0);
        let mark = scene.world.mark("2026-05-02 09:00");
        scene
            .world
            .picture
            .places
            .get_mut(&scene.place)
            .unwrap()
            .aired = Some(mark);
        scene.is_not_due(KIND, "2026-05-02 12:00");
        scene.is_due(KIND, "2026-05-03 09:00", "why-open-the-lid");
    }

    #[test]
    fn outdoors_or_with_nothing_up_there_is_no_lid() {
        scene("tomato", PlaceKind::Outdoors).is_not_due(KIND, "2026-05-02 09:00");
        let mut waiting = scene("tomato", PlaceKind::ColdFrame);
        waiting.world.count(waiting.sowing, "2026-04-02 08:00", 0);
        waiting.is_not_due(KIND, "2026-05-02 09:00");
    }
}

mod last_chance {
    use super::*;
    const KIND: JobKind = JobKind::LastChance;

    /// Lettuce sown late in summer, of which nothing came up.
    fn lettuce() -> (Scene, chrono::NaiveDate) {
        let mut world = World::new();
        let place = world.place(PlaceKind::Outdoors, 14.0, 20.0);
        let tray = world.tray(Container::Cells, place, "2026-07-01 08:00");
        let sowing = world.sow("lettuce", 12, tray, 12, "2026-07-01 08:00");
        let lettuce = plumule_agronomy::crops().get("lettuce").unwrap();
        let last = crate::season::last_sowing(&world.picture, lettuce, day("2026-07-01"));
        let scene = Scene {
            world,
            place,
            sill: place,
            tray,
            sowing,
        };
        (scene, last.unwrap())
    }

    #[test]
    fn in_the_week_before_the_last_useful_day() {
        let (scene, last) = lettuce();
        let now = |days: i64| {
            (last - chrono::TimeDelta::days(days))
                .format("%F 12:00")
                .to_string()
        };
        scene.is_not_due(KIND, &now(8));
        scene.is_due(KIND, &now(7), "why-last-chance");
        scene.is_due(KIND, &now(0), "why-last-chance");
        scene.is_not_due(KIND, &now(-1));
    }

    #[test]
    fn enough_up_or_sown_again_it_is_not_said() {
        let (mut enough, last) = lettuce();
        let now = last.format("%F 12:00").to_string();
        enough.world.count(enough.sowing, "2026-07-20 08:00", 12);
        enough.is_not_due(KIND, &now);
        let (mut again, _) = lettuce();
        let tray = again
            .world
            .tray(Container::Cells, again.place, "2026-08-01 08:00");
        let other = again.world.sow("lettuce", 12, tray, 12, "2026-08-01 08:00");
        let other = again.world.picture.sowings.get_mut(&other).unwrap();
        other.sown.again_of = Some(again.sowing);
        let of_first = |scene: &Scene| {
            let due = super::super::due(&scene.world.picture, at(&now));
            let subject = Subject::Sowing(scene.sowing);
            due.iter()
                .any(|job| job.kind == KIND && job.key.subject == subject)
        };
        assert!(!of_first(&again));
        assert!(of_first(&lettuce().0));
    }

    #[test]
    fn in_a_garden_without_dates_no_last_day_is_known() {
        let (mut scene, last) = lettuce();
        let now = last.format("%F 12:00").to_string();
        scene.world.garden().first_frost = None;
        scene.world.garden().latitude = None;
        scene.is_not_due(KIND, &now);
    }
}

mod away {
    use super::*;

    fn leaving() -> Scene {
        let mut scene = scene("tomato", PlaceKind::Greenhouse);
        let (moist, tray) = (Feel::Moist, scene.tray);
        scene.world.feel(tray, "2026-04-09 08:00", moist, None);
        scene.world.away("2026-04-10", "2026-04-16");
        scene
    }

    #[test]
    fn the_day_before_each_place_says_what_to_do() {
        let kind = JobKind::BeforeYouGo;
        leaving().is_not_due(kind, "2026-04-08 12:00");
        assert!(leaving().due(kind, "2026-04-09 12:00").is_some());
        scene("tomato", PlaceKind::Greenhouse).is_not_due(kind, "2026-04-09 12:00");
    }

    #[test]
    fn afterwards_one_look_over_a_place_stands_for_all_that_fell_due() {
        let mut scene = leaving();
        let shown = |scene: &Scene, kind| scene.world.shown(kind, "2026-04-17 12:00").is_some();
        assert!(shown(&scene, JobKind::LookOver));
        assert!(!shown(&scene, JobKind::FeelTheCompost));
        let job = scene
            .world
            .job(JobKind::LookOver, "2026-04-17 12:00")
            .unwrap();
        let key: JobKey = job.key;
        scene.world.picture.garden.dismissed.insert(key);
        assert!(!shown(&scene, JobKind::LookOver));
        assert!(shown(&scene, JobKind::FeelTheCompost));
    }

    #[test]
    fn neither_outlasts_its_time() {
        let until = |kind, now| leaving().world.job(kind, now).unwrap().until;
        let before = until(JobKind::BeforeYouGo, "2026-04-09 12:00");
        assert_eq!(before, Some(at("2026-04-10 00:00")));
        // Three days to look over what stood alone.
        let after = until(JobKind::LookOver, "2026-04-17 12:00");
        assert_eq!(after, Some(at("2026-04-20 00:00")));
    }

    #[test]
    fn what_cannot_wait_is_shown_at_once() {
        let mut scene = leaving();
        let warm = scene.world.place(PlaceKind::HeatedPropagator, 22.0, 22.0);
        scene.world.move_to(scene.tray, warm, "2026-04-16 18:00");
        let light = scene.world.shown(JobKind::IntoTheLight, "2026-04-17 12:00");
        assert!(light.is_some());
    }

    #[test]
    fn who_never_went_has_nothing_to_look_over() {
        let mut scene = leaving();
        scene.world.picture.garden.away[0].to = day("2026-04-09");
        scene.is_not_due(JobKind::LookOver, "2026-04-10 12:00");
    }

    #[test]
    fn the_sheet_says_what_to_feel_and_what_to_do_when_something_comes_up() {
        let mut world = World::new();
        let warm = world.place(PlaceKind::HeatedPropagator, 22.0, 22.0);
        world.place(PlaceKind::Windowsill, 15.0, 20.0);
        let tray = world.tray(Container::Cells, warm, "2026-04-08 08:00");
        world.cover(tray, true, "2026-04-08 08:00");
        world.sow("tomato", 12, tray, 12, "2026-04-08 08:00");
        world.away("2026-04-10", "2026-04-16");
        let sheet = crate::paper::sitter_sheet(&world.picture, at("2026-04-09 09:00"));
        assert_eq!(
            (sheet.from, sheet.to),
            (Some(day("2026-04-10")), Some(day("2026-04-16")))
        );
        let [place] = sheet.places.as_slice() else {
            panic!("{sheet:?}");
        };
        assert_eq!(place.lines[0].key, "sitter-feel");
        let up = &place.trays[0].lines[0];
        assert_eq!(up.key, "sitter-up-move-uncover");
        assert_eq!(up.args["to"], Arg::Text("windowsill".to_owned()));
        world.cover(tray, false, "2026-04-08 09:00");
        let sheet = crate::paper::sitter_sheet(&world.picture, at("2026-04-09 09:00"));
        assert_eq!(sheet.places[0].trays[0].lines[0].key, "sitter-up-move");
    }
}

#[test]
fn many_trays_in_a_place_are_felt_by_three() {
    let mut world = World::new();
    let place = world.place(PlaceKind::Windowsill, 18.0, 18.0);
    let sow = |world: &mut World, container| {
        let tray = world.tray(container, place, "2026-03-02 08:00");
        world.sow("tomato", 12, tray, 1, "2026-03-02 08:00");
    };
    for _ in 0..3 {
        sow(&mut world, Container::Cells);
    }
    let together = |world: &World| {
        let view = crate::round::round_view(&world.picture, at("2026-03-04 12:00"));
        view.places[0].together.clone()
    };
    assert_eq!(together(&world), None);
    sow(&mut world, Container::Pot);
    let say = together(&world).unwrap();
    let code = |name: &str| say.args[name].clone();
    assert_eq!(code("smallest"), Arg::Text("K4".to_owned()));
    assert_eq!(code("warmest"), Arg::Text("K1".to_owned()));
    assert_eq!(code("edge"), Arg::Text("K3".to_owned()));
}

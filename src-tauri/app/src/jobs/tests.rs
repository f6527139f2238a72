//! Every job in a scene in which it is due and in one that differs in one fact
//! and in which it is not.

mod growing_on;
mod setting_out;

use crate::say::Arg;
use crate::view::{ChoiceKind, JobKind};
use crate::world::{World, at, day};
use plumule_journal::content::{RangeC, Seeds, Shown};
use plumule_journal::id::{PlaceId, SowingId, TrayId};
use plumule_journal::state::PINCH_SEEDS;
use plumule_journal::subject::Plants;
use plumule_journal::words::{Container, Feel, Light, Origin, PlaceKind, Step, Watering};

struct Scene {
    world: World,
    place: PlaceId,
    tray: TrayId,
    sowing: SowingId,
}

/// 12 tomatoes in 12 cells on a sill at 18 °C, sown on Monday 2 March.
fn scene() -> Scene {
    scene_of("tomato", Container::Cells, 12)
}

fn scene_of(crop: &str, container: Container, cells: u16) -> Scene {
    let mut world = World::new();
    let place = world.place(PlaceKind::Windowsill, 18.0, 18.0);
    let tray = world.tray(container, place, "2026-03-02 08:00");
    let sowing = world.sow(crop, 12, tray, cells, "2026-03-02 08:00");
    Scene {
        world,
        place,
        tray,
        sowing,
    }
}

mod feel {
    use super::*;
    const KIND: JobKind = JobKind::FeelTheCompost;

    #[test]
    fn every_two_days_at_18_degrees() {
        // Common practice, no source: every couple of days.
        let scene = scene();
        scene.world.hides(KIND, "2026-03-04 07:59");
        scene
            .world
            .shows(KIND, "2026-03-04 08:00", "why-feel-first");
    }

    #[test]
    fn an_answer_makes_it_wait() {
        let mut scene = scene();
        scene
            .world
            .feel(scene.tray, "2026-03-04 08:40", Feel::Moist, None);
        scene.world.hides(KIND, "2026-03-05 08:00");
        // Counted from the round at 8, not from 8:40.
        scene.world.shows(KIND, "2026-03-06 08:00", "why-feel");
    }

    #[test]
    fn a_cover_doubles_the_wait() {
        let mut scene = scene();
        scene.world.cover(scene.tray, true, "2026-03-02 08:00");
        scene.world.hides(KIND, "2026-03-05 08:00");
        scene
            .world
            .shows(KIND, "2026-03-06 08:00", "why-feel-first");
    }

    #[test]
    fn dry_and_not_watered_comes_with_the_next_round() {
        let mut scene = scene();
        let water = Some(Watering::Below);
        scene
            .world
            .feel(scene.tray, "2026-03-04 08:10", Feel::Dry, None);
        scene.world.shows(KIND, "2026-03-04 18:00", "why-feel-dry");
        scene
            .world
            .feel(scene.tray, "2026-03-04 08:20", Feel::Dry, water);
        scene.world.hides(KIND, "2026-03-04 18:00");
    }

    #[test]
    fn answers_teach_the_tray() {
        let mut scene = scene();
        let water = Some(Watering::Rose);
        // 0.7 · 0.7 is held to a half: 2 days · 0.5.
        scene
            .world
            .feel(scene.tray, "2026-03-04 08:00", Feel::Dry, water);
        scene
            .world
            .feel(scene.tray, "2026-03-05 08:00", Feel::Dry, water);
        scene.world.shows(KIND, "2026-03-06 08:00", "why-feel");
        // Wet, wet: 1.69 · 2 days.
        let mut wet = super::scene();
        wet.world
            .feel(wet.tray, "2026-03-04 08:00", Feel::Wet, None);
        wet.world
            .feel(wet.tray, "2026-03-05 08:00", Feel::Wet, None);
        wet.world.hides(KIND, "2026-03-08 08:00");
        wet.world.shows(KIND, "2026-03-08 18:00", "why-feel");
    }

    #[test]
    fn daily_under_glass_from_march_once_something_is_up() {
        let mut scene = scene();
        scene.world.describe(scene.place).kind = PlaceKind::Greenhouse;
        scene
            .world
            .feel(scene.tray, "2026-03-12 08:00", Feel::Moist, None);
        scene.world.hides(KIND, "2026-03-13 08:00");
        scene.world.count(scene.sowing, "2026-03-12 08:00", 3);
        scene
            .world
            .shows(KIND, "2026-03-13 08:00", "why-feel-daily");
        // In the south March is autumn's September: still the bright half; June is not.
        scene.world.garden().latitude = Some(-40.0);
        scene
            .world
            .feel(scene.tray, "2026-06-12 08:00", Feel::Moist, None);
        scene.world.hides(KIND, "2026-06-13 08:00");
    }

    #[test]
    fn seed_on_the_surface_is_not_poked() {
        let mut scene = scene();
        let lift = |scene: &Scene| {
            let job = scene.world.shown(KIND, "2026-03-04 08:00").unwrap();
            job.why.args["lift"].clone()
        };
        assert_eq!(lift(&scene), Arg::Number(0.0));
        let sowing = scene.world.picture.sowings.get_mut(&scene.sowing).unwrap();
        sowing.sown.depth_mm = Some(0.0);
        assert_eq!(lift(&scene), Arg::Number(1.0));
    }

    #[test]
    fn nothing_lives_nothing_is_felt() {
        let mut scene = scene();
        let end = scene.world.mark("2026-03-03 08:00");
        scene.world.tray_state(scene.tray).emptied = Some(end);
        assert!(scene.world.all("2026-03-04 08:00").is_empty());
    }
}

mod read {
    use super::*;
    const KIND: JobKind = JobKind::ReadTheThermometer;

    #[test]
    fn three_days_after_the_last_reading_and_only_where_there_was_one() {
        let mut scene = scene();
        scene.world.hides(KIND, "2026-03-09 08:00");
        let now = Shown::Now {
            temperature_c: 18.0,
        };
        scene.world.read(scene.place, "2026-03-02 08:00", now);
        scene.world.hides(KIND, "2026-03-04 08:00");
        scene.world.shows(KIND, "2026-03-05 08:00", "why-read");
        let end = scene.world.mark("2026-03-05 07:00");
        scene.world.tray_state(scene.tray).emptied = Some(end);
        scene.world.hides(KIND, "2026-03-05 08:00");
    }
}

mod look {
    use super::*;
    const KIND: JobKind = JobKind::LookForSeedlings;

    #[test]
    fn from_the_first_day_daily_until_the_ninety_percent_day() {
        let scene = scene();
        let job = scene.world.job(KIND, "2026-03-03 08:00").unwrap();
        let first = job.due;
        let until = job.until.unwrap();
        assert!(at("2026-03-05 08:00") < first && first < at("2026-03-12 08:00"));
        let before = first - chrono::TimeDelta::minutes(1);
        scene
            .world
            .hides(KIND, &before.format("%Y-%m-%d %H:%M").to_string());
        scene.world.shows(
            KIND,
            &first.format("%Y-%m-%d %H:%M").to_string(),
            "why-look",
        );
        assert!(until > first);
    }

    #[test]
    fn a_count_today_answers_it_until_tomorrow() {
        let mut scene = scene();
        scene.world.count(scene.sowing, "2026-03-10 09:00", 0);
        scene.world.hides(KIND, "2026-03-10 10:00");
        scene.world.shows(KIND, "2026-03-11 08:00", "why-look");
        scene.world.count(scene.sowing, "2026-03-11 09:00", 4);
        scene.world.shows(KIND, "2026-03-12 08:00", "why-look-more");
        // All that were sown are up.
        scene.world.count(scene.sowing, "2026-03-12 09:00", 12);
        scene.world.hides(KIND, "2026-03-13 08:00");
    }
}

mod light {
    use super::*;
    const KIND: JobKind = JobKind::IntoTheLight;

    #[test]
    fn something_up_over_heat_at_once() {
        let mut scene = scene();
        scene.world.describe(scene.place).kind = PlaceKind::HeatedPropagator;
        scene.world.hides(KIND, "2026-03-10 09:00");
        scene.world.count(scene.sowing, "2026-03-10 09:00", 1);
        scene
            .world
            .shows(KIND, "2026-03-10 09:00", "why-light-heated");
        let sill = scene.world.place(PlaceKind::Windowsill, 18.0, 18.0);
        scene.world.move_to(scene.tray, sill, "2026-03-10 09:30");
        scene.world.hides(KIND, "2026-03-10 10:00");
    }

    #[test]
    fn something_up_in_the_dark() {
        let mut scene = scene();
        scene.world.count(scene.sowing, "2026-03-10 09:00", 1);
        scene.world.hides(KIND, "2026-03-10 10:00");
        scene.world.describe(scene.place).light = Light::Dark;
        scene
            .world
            .shows(KIND, "2026-03-10 10:00", "why-light-dark");
    }

    #[test]
    fn a_mixed_tray_is_told_apart() {
        let mut scene = scene();
        scene.world.describe(scene.place).kind = PlaceKind::HeatedPropagator;
        scene
            .world
            .sow("pepper", 6, scene.tray, 6, "2026-03-02 08:00");
        scene.world.count(scene.sowing, "2026-03-10 09:00", 3);
        scene
            .world
            .shows(KIND, "2026-03-10 10:00", "why-light-mixed");
        let job = scene.world.shown(KIND, "2026-03-10 10:00").unwrap();
        let pepper = Arg::Word("crop-pepper".to_owned());
        assert_eq!(job.why.args["waiting"], Arg::List(vec![pepper]));
    }

    #[test]
    fn cuttings_may_stay_warm() {
        let mut world = World::new();
        let place = world.place(PlaceKind::HeatedPropagator, 20.0, 24.0);
        let tray = world.tray(Container::Cells, place, "2026-03-02 08:00");
        world.start(Origin::Cuttings, 6, tray, "2026-03-02 08:00");
        assert!(world.job(KIND, "2026-03-10 08:00").is_none());
    }
}

mod cover {
    use super::*;
    const KIND: JobKind = JobKind::CoverOff;

    #[test]
    fn something_up_under_a_cover() {
        let mut scene = scene();
        scene.world.cover(scene.tray, true, "2026-03-02 08:00");
        scene.world.hides(KIND, "2026-03-10 10:00");
        scene.world.count(scene.sowing, "2026-03-10 09:00", 1);
        scene.world.shows(KIND, "2026-03-10 10:00", "why-cover-off");
        scene.world.cover(scene.tray, false, "2026-03-10 11:00");
        scene.world.hides(KIND, "2026-03-10 12:00");
    }
}

mod late {
    use super::*;
    const KIND: JobKind = JobKind::ItIsLate;

    #[test]
    fn past_the_ninety_percent_day_with_fewer_than_expected() {
        let mut scene = scene();
        let look = scene
            .world
            .job(JobKind::LookForSeedlings, "2026-03-03 08:00");
        let late = look.unwrap().until.unwrap().date();
        let eve = late.pred_opt().unwrap().format("%F 20:00").to_string();
        let morning = late.format("%F 08:00").to_string();
        scene.world.hides(KIND, &eve);
        scene.world.shows(KIND, &morning, "why-late");
        scene.world.count(scene.sowing, &eve, 10);
        let after_days = (late + chrono::Days::new(5)).format("%F 08:00").to_string();
        scene.world.hides(KIND, &after_days);
    }

    #[test]
    fn a_count_brings_its_verdict_at_once_and_a_look_at_a_pinch_three_days_of_silence() {
        let mut scene = scene();
        scene.world.count(scene.sowing, "2026-03-23 09:00", 0);
        scene.world.shows(KIND, "2026-03-23 09:01", "why-late");
        let sowing = scene.world.picture.sowings.get_mut(&scene.sowing).unwrap();
        sowing.sown.seeds = Seeds::Pinch;
        scene.world.hides(KIND, "2026-03-25 08:00");
        scene.world.shows(KIND, "2026-03-26 08:00", "why-late");
    }

    #[test]
    fn sown_again_it_is_answered() {
        let mut scene = scene();
        scene.world.count(scene.sowing, "2026-03-23 09:00", 0);
        let beside = scene
            .world
            .sow("tomato", 12, scene.tray, 12, "2026-03-23 10:00");
        scene.world.shows(KIND, "2026-03-23 11:00", "why-late");
        let beside = scene.world.picture.sowings.get_mut(&beside).unwrap();
        beside.sown.again_of = Some(scene.sowing);
        scene.world.hides(KIND, "2026-03-23 11:00");
    }

    #[test]
    fn where_none_comes_up_it_is_said_early() {
        let mut scene = scene();
        scene.world.hides(KIND, "2026-03-05 08:00");
        scene.world.describe(scene.place).usual = RangeC {
            min_c: 4.0,
            max_c: 6.0,
        };
        scene
            .world
            .shows(KIND, "2026-03-05 08:00", "why-late-too-cold");
        let moves = |scene: &Scene| {
            let job = scene.world.shown(KIND, "2026-03-05 08:00").unwrap();
            let choices = job.verdict.unwrap().choices;
            choices.iter().any(|it| it.kind == ChoiceKind::Move)
        };
        assert!(!moves(&scene));
        scene.world.place(PlaceKind::HeatedPropagator, 20.0, 24.0);
        assert!(moves(&scene));
        scene.world.describe(scene.place).usual = RangeC {
            min_c: 45.0,
            max_c: 50.0,
        };
        scene
            .world
            .shows(KIND, "2026-03-05 08:00", "why-late-too-hot");
        scene.world.describe(scene.place).kind = PlaceKind::Fridge;
        scene.world.hides(KIND, "2026-03-05 08:00");
    }
}

mod thin {
    use super::*;
    const KIND: JobKind = JobKind::Thin;

    #[test]
    fn several_in_a_cell_once_they_have_true_leaves() {
        let mut scene = scene_of("tomato", Container::Cells, 6);
        scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
        // By hand: a quarter of 7 weeks at a mean of 18.4 °C (Utah State
        // University Extension), counted above 7 °C, is 139 °C·days; at 18 °C
        // that takes 13 days.
        scene.world.hides(KIND, "2026-03-24 08:00");
        scene.world.shows(KIND, "2026-03-25 08:00", "why-thin");
        let job = scene.world.shown(KIND, "2026-03-25 08:00").unwrap();
        assert_eq!(job.suggested, Some(4));
        scene.world.thin(scene.sowing, "2026-03-25 09:00", 4);
        scene.world.hides(KIND, "2026-03-26 08:00");
    }

    #[test]
    fn one_in_a_cell_is_left() {
        let mut scene = scene();
        scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
        scene.world.hides(KIND, "2026-03-22 08:00");
    }
}

mod prick {
    use super::*;
    const KIND: JobKind = JobKind::PrickOut;

    #[test]
    fn an_open_tray_at_the_first_true_leaves() {
        let mut scene = scene_of("tomato", Container::OpenTray, 1);
        scene.world.hides(KIND, "2026-03-22 08:00");
        scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
        scene.world.hides(KIND, "2026-03-24 08:00");
        scene.world.shows(KIND, "2026-03-25 08:00", "why-prick-out");
        let tray = scene
            .world
            .tray(Container::Cells, scene.place, "2026-03-25 09:00");
        scene
            .world
            .go_on(scene.sowing, Step::PrickedOut, tray, "2026-03-25 09:00");
        scene.world.hides(KIND, "2026-03-26 08:00");
    }

    #[test]
    fn what_is_sown_where_it_grows_is_not() {
        let mut scene = scene_of("carrot", Container::OpenTray, 1);
        scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
        scene.world.hides(KIND, "2026-03-30 08:00");
    }

    #[test]
    fn cells_are_not() {
        let mut scene = scene();
        scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
        scene.world.hides(KIND, "2026-03-22 08:00");
    }
}

mod pot {
    use super::*;
    const KIND: JobKind = JobKind::PotOn;

    #[test]
    fn half_way_of_six_weeks_but_not_before_the_cells_are_full() {
        // Tomatoes take 6 to 8 weeks to raise (Utah State University Extension).
        let mut scene = scene();
        scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
        // True leaves on 25 March and a fortnight.
        scene.world.hides(KIND, "2026-04-07 08:00");
        scene.world.shows(KIND, "2026-04-08 08:00", "why-pot-on");
        scene.world.tray_state(scene.tray).described.container = Container::Pots;
        scene.world.hides(KIND, "2026-04-08 08:00");
    }

    #[test]
    fn pricked_out_plants_once_and_not_twice() {
        let mut scene = scene_of("tomato", Container::OpenTray, 1);
        scene.world.count(scene.sowing, "2026-03-12 08:00", 10);
        let tray = scene
            .world
            .tray(Container::Cells, scene.place, "2026-03-22 08:00");
        let batch = scene
            .world
            .go_on(scene.sowing, Step::PrickedOut, tray, "2026-03-22 08:00");
        scene.world.hides(KIND, "2026-04-11 08:00");
        scene.world.shows(KIND, "2026-04-12 08:00", "why-pot-on");
        let state = scene.world.picture.batches.get_mut(&batch).unwrap();
        state.parent = plumule_journal::state::Parent::Plants {
            of: Plants::Sowing(scene.sowing),
            step: Step::PottedOn,
        };
        scene.world.hides(KIND, "2026-04-12 08:00");
    }

    #[test]
    fn short_raisers_go_out_from_their_cells() {
        let mut scene = scene_of("lettuce", Container::Cells, 12);
        scene.world.count(scene.sowing, "2026-03-10 08:00", 10);
        assert!(scene.world.job(KIND, "2026-04-20 08:00").is_none());
    }

    #[test]
    fn cuttings_when_they_have_roots_and_plugs_at_once() {
        let kind = PlaceKind::Windowsill;
        let began = |origin| {
            let mut world = World::new();
            let place = world.place(kind, 18.0, 18.0);
            let tray = world.tray(Container::Cells, place, "2026-03-02 08:00");
            world.start(origin, 6, tray, "2026-03-02 08:00");
            world
                .job(KIND, "2026-03-02 09:00")
                .map(|job| job.due.date())
        };
        assert_eq!(began(Origin::Cuttings), Some(day("2026-03-30")));
        assert_eq!(began(Origin::Plugs), Some(day("2026-03-03")));
        assert_eq!(began(Origin::Bulbs), None);
    }
}

#[test]
fn jobs_are_in_walking_order_then_pressing_then_by_code() {
    let mut world = World::new();
    let (first, second) = (
        world.place(PlaceKind::Windowsill, 18.0, 18.0),
        world.place(PlaceKind::Shed, 18.0, 18.0),
    );
    let mut sow_in = |place| {
        let tray = world.tray(Container::Cells, place, "2026-03-02 08:00");
        world.sow("tomato", 6, tray, 6, "2026-03-02 08:00");
        tray
    };
    let trays = [sow_in(second), sow_in(first), sow_in(first)];
    world.feel(trays[2], "2026-03-03 07:00", Feel::Dry, None);
    let jobs = crate::jobs::jobs(&world.picture, at("2026-03-04 08:00"));
    let order: Vec<_> = jobs.iter().map(|job| job.tray.unwrap()).collect();
    assert_eq!(order, [trays[2], trays[1], trays[0]]);
}

#[test]
fn a_pinch_counts_as_thirty() {
    let mut scene = scene();
    let sowing = scene.world.picture.sowings.get_mut(&scene.sowing).unwrap();
    sowing.sown.seeds = Seeds::Pinch;
    let job = scene
        .world
        .job(JobKind::LookForSeedlings, "2026-03-03 08:00");
    let seeds = Arg::Number(f64::from(PINCH_SEEDS));
    assert_eq!(job.unwrap().why.args["seeds"], seeds);
}

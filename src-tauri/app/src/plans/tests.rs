//! Plans over a small garden: each test holds two that differ in one fact.
//! Tomatoes are raised 6 to 8 weeks by the crop book.

use super::need::{Need, needs};
use crate::jobs::Plan;
use crate::view::JobKind;
use crate::world::{World, at, day};
use plumule_agronomy::crops;
use plumule_journal::content::{PlanDescribed, Rhythm};
use plumule_journal::id::{PlanId, SowingId};
use plumule_journal::state::{PlanSown, PlanState, SightAt};
use plumule_journal::words::{Container, PlaceKind, Sight};
use uuid::Uuid;

const SALE: &str = "2026-05-16";

/// A packet of tomato that was sown long ago and is through, and a plan made on
/// 1 January.
fn world(rhythm: Rhythm) -> (World, PlanId) {
    let mut world = World::new();
    let place = world.place(PlaceKind::Windowsill, 20.0, 20.0);
    let tray = world.tray(Container::Cells, place, "2025-02-01 08:00");
    let old = world.sow("tomato", 12, tray, 12, "2025-02-01 08:00");
    let packet = world.picture.sowings[&old].packet();
    world.picture.sowings.clear();
    world.picture.trays.clear();
    let plan = PlanId(Uuid::from_u128(0xF00));
    let mark = world.mark("2026-01-01 09:00");
    let described = PlanDescribed {
        plan,
        crop: "tomato".to_owned(),
        variety: String::new(),
        packet: Some(packet),
        wanted: 20,
        rhythm,
        raise_weeks: None,
        ended: false,
    };
    world.picture.plans.insert(
        plan,
        PlanState {
            described,
            opened_by: mark.clone(),
            last: mark,
            sowings: Vec::new(),
        },
    );
    (world, plan)
}

fn by() -> Rhythm {
    Rhythm::By { day: day(SALE) }
}

fn every() -> Rhythm {
    Rhythm::Every {
        weeks: 3,
        from: day("2026-04-01"),
        to: day("2026-06-30"),
    }
}

fn described(world: &mut World, plan: PlanId) -> &mut PlanDescribed {
    &mut world.picture.plans.get_mut(&plan).unwrap().described
}

fn sow(world: &mut World, plan: PlanId, seeds: u32, when: &str) -> SowingId {
    let place = *world.picture.places.keys().next().unwrap();
    let tray = world.tray(Container::Cells, place, when);
    let sowing = world.sow("tomato", seeds, tray, 24, when);
    let at = world.mark(when);
    let state = world.picture.plans.get_mut(&plan).unwrap();
    state.sowings.push(PlanSown { sowing, at });
    sowing
}

fn with<T>(world: &World, now: &str, of: impl FnOnce(&Need<'_>) -> T) -> T {
    let plan = Plan::of(&world.picture, at(now));
    of(&needs(&plan)[0])
}

fn due(world: &World, now: &str) -> Option<String> {
    let job = world.job(JobKind::Sow, now)?;
    Some(job.due.date().to_string())
}

/// Recommended warmth is the book's; at 20 °C all day the days to come up are
/// those of its curve there.
#[test]
fn the_day_to_sow_is_the_day_less_the_weeks_of_the_book_and_the_place_s_own_days() {
    let (world, _) = world(by());
    let crop = crops().get("tomato").unwrap();
    let (least, most) = crop.weeks_to_raise.unwrap();
    let (low, high) = crop.recommended_c;
    let more = 1.0 / crop.curve.rate_per_day(20.0) - 1.0 / crop.curve.day_progress(low, high);
    let before =
        |weeks: f64| day(SALE) - chrono::TimeDelta::days((weeks * 7.0 + more).ceil() as i64);
    with(&world, "2026-01-02 09:00", |need| {
        let next = need.next.as_ref().unwrap();
        assert_eq!((next.from, next.last), (before(most), before(least)));
        assert_eq!(next.plants, 20);
    });
    let first = before(most).to_string();
    assert_eq!(due(&world, "2026-01-02 09:00"), Some(first.clone()));
    world.hides(JobKind::Sow, "2026-02-01 12:00");
    let now = format!("{first} 12:00");
    world.shows(JobKind::Sow, &now, "why-sow-by");
    let plan = Plan::of(&world.picture, at(&now));
    let seeds = needs(&plan)[0].seeds(&plan).unwrap();
    assert!((21..40).contains(&seeds), "{seeds}");
    assert!(
        world
            .said(JobKind::Sow, &now)
            .contains(&format!("Sow {seeds} seeds."))
    );
}

#[test]
fn by_a_warmer_place_it_is_sown_later() {
    let (mut world, _) = world(by());
    let from = |world: &World| {
        with(world, "2026-01-02 09:00", |need| {
            need.next.as_ref().unwrap().from
        })
    };
    let cool = from(&world);
    world.place(PlaceKind::HeatedPropagator, 26.0, 26.0);
    assert!(from(&world) > cool);
}

#[test]
fn the_growers_own_weeks_hold_over_the_books() {
    let (mut world, plan) = world(by());
    described(&mut world, plan).raise_weeks = Some(10);
    let next = with(&world, "2026-01-02 09:00", |need| {
        need.next.clone().unwrap()
    });
    assert_eq!(next.from, day(SALE) - chrono::TimeDelta::weeks(10));
    described(&mut world, plan).crop = "moonflower".to_owned();
    let next = with(&world, "2026-01-02 09:00", |need| {
        need.next.clone().unwrap()
    });
    assert_eq!(next.from, day(SALE) - chrono::TimeDelta::weeks(10));
    // The crop book does not know it, and nobody else says.
    described(&mut world, plan).raise_weeks = None;
    assert_eq!(due(&world, "2026-01-02 09:00"), None);
}

#[test]
fn a_sale_raises_so_many_over() {
    let sale = |over_percent| Rhythm::Sale {
        day: day(SALE),
        over_percent,
    };
    let plants = |rhythm| {
        let (world, _) = world(rhythm);
        with(&world, "2026-01-02 09:00", |need| {
            need.next.as_ref().unwrap().plants
        })
    };
    assert_eq!([plants(sale(15)), plants(sale(0))], [23, 20]);
}

#[test]
fn sown_for_enough_it_is_answered_for_too_few_it_asks_for_the_rest() {
    let (mut enough, plan) = world(by());
    sow(&mut enough, plan, 40, "2026-03-24 09:00");
    assert_eq!(due(&enough, "2026-03-25 09:00"), None);
    let (mut few, plan) = world(by());
    sow(&mut few, plan, 10, "2026-03-24 09:00");
    few.shows(JobKind::Sow, "2026-03-25 09:00", "why-sow-again");
    let missing = with(&few, "2026-03-25 09:00", |need| {
        need.next.as_ref().unwrap().plants
    });
    assert!((10..20).contains(&missing), "{missing}");
}

#[test]
fn what_falls_short_is_sown_again_while_there_is_time() {
    let (mut world, plan) = world(by());
    let sowing = sow(&mut world, plan, 30, "2026-03-01 09:00");
    world.count(sowing, "2026-03-20 09:00", 26);
    world.hides(JobKind::Sow, "2026-03-21 09:00");
    world.count(sowing, "2026-03-22 09:00", 5);
    world.shows(JobKind::Sow, "2026-03-23 09:00", "why-sow-again");
    // Too late: silent, and the plan says so.
    world.hides(JobKind::Sow, "2026-04-20 09:00");
    with(&world, "2026-04-20 09:00", |need| {
        assert!(need.next.as_ref().unwrap().last < day("2026-04-20"));
    });
}

#[test]
fn every_three_weeks_counts_from_the_last_sowing_until_its_last_day() {
    let (mut world, plan) = world(every());
    assert_eq!(due(&world, "2026-03-01 09:00").unwrap(), "2026-04-01");
    sow(&mut world, plan, 30, "2026-04-03 09:00");
    world.hides(JobKind::Sow, "2026-04-20 09:00");
    assert_eq!(due(&world, "2026-04-04 09:00").unwrap(), "2026-04-24");
    world.shows(JobKind::Sow, "2026-04-24 09:00", "why-sow-every");
    sow(&mut world, plan, 30, "2026-06-15 09:00");
    assert_eq!(due(&world, "2026-06-16 09:00"), None);
}

#[test]
fn with_true_leaves_the_next_is_sown() {
    let (mut world, plan) = world(Rhythm::TrueLeaves {
        from: day("2026-04-01"),
        to: day("2026-06-30"),
    });
    let sowing = sow(&mut world, plan, 30, "2026-04-03 09:00");
    assert_eq!(due(&world, "2026-04-14 09:00"), None);
    world.count(sowing, "2026-04-12 09:00", 20);
    let reckoned = due(&world, "2026-04-14 09:00").unwrap();
    assert!(reckoned.as_str() > "2026-04-14", "{reckoned}");
    let mark = world.mark("2026-04-20 09:00");
    let state = world.picture.sowings.get_mut(&sowing).unwrap();
    state.plants.sights.push(SightAt {
        at: mark,
        sight: Sight::TrueLeaves,
    });
    assert_eq!(due(&world, "2026-04-20 12:00").unwrap(), "2026-04-20");
}

#[test]
fn a_dismissed_sowing_does_not_come_again_until_the_plan_is_changed() {
    let (mut world, plan) = world(by());
    let now = format!("{} 12:00", due(&world, "2026-01-02 09:00").unwrap());
    let job = world.shown(JobKind::Sow, &now).unwrap();
    world.picture.garden.dismissed.insert(job.key);
    world.hides(JobKind::Sow, &now);
    let mark = world.mark(&now);
    world.picture.plans.get_mut(&plan).unwrap().last = mark;
    world.shows(JobKind::Sow, &now, "why-sow-by");
}

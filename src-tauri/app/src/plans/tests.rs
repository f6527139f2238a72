//! Plans over a small garden: each test holds two that differ in one fact.
//! Tomatoes are raised 6 to 8 weeks by the crop book.

use super::chart::windows;
use super::need::{Need, needs};
use crate::jobs::Plan;
use crate::view::JobKind;
use crate::world::{World, at, day};
use plumule_agronomy::crops;
use plumule_journal::content::{MonthDay, PlanDescribed, Rhythm};
use plumule_journal::id::{PlanId, SowingId};
use plumule_journal::state::{PlanSown, PlanState, SightAt};
use plumule_journal::words::{Container, PlaceKind, Sight};
use std::collections::BTreeSet;
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

/// A garden of the south, last frost 5 October, first frost 20 May.
fn south(mut world: World) -> World {
    let garden = world.garden();
    garden.latitude = Some(-37.0);
    garden.last_frost = Some(MonthDay { month: 10, day: 5 });
    garden.first_frost = Some(MonthDay { month: 5, day: 20 });
    world
}

/// On which days of the chart frost is drawn: the first day of each stretch.
fn frosts(world: &World, today: &str) -> Vec<(String, f64)> {
    let view = windows(&world.picture, &BTreeSet::new(), day(today)).unwrap();
    let mut turns: Vec<(String, f64)> = Vec::new();
    for point in view.frost {
        if turns
            .last()
            .is_none_or(|(_, before)| *before != point.chance)
        {
            turns.push((point.day.format("%Y-%m").to_string(), point.chance));
        }
    }
    turns
}

#[test]
fn the_line_of_frost_goes_over_the_new_year() {
    let turns = |all: &[(&str, f64)]| -> Vec<(String, f64)> {
        all.iter()
            .map(|(at, frost)| ((*at).to_owned(), *frost))
            .collect()
    };
    // Midwinter in the north, midsummer in the south.
    assert_eq!(
        frosts(&south(World::new()), "2026-12-10"),
        turns(&[("2026-11", 0.0), ("2027-05", 1.0), ("2027-10", 0.0)])
    );
    let north = World::new();
    assert_eq!(
        frosts(&north, "2026-12-10"),
        turns(&[("2026-11", 1.0), ("2027-05", 0.0), ("2027-10", 1.0)])
    );
    // By a record too; of 15 January it tells the odds of autumn.
    let mut by_record = north;
    by_record.frost_record();
    let view = windows(&by_record.picture, &BTreeSet::new(), day("2027-01-31")).unwrap();
    let winter = view.frost.iter().filter(|it| it.day < day("2027-04-01"));
    assert!(winter.clone().count() > 20);
    let rare = winter.filter(|it| it.chance < 0.79).map(|it| it.day);
    assert_eq!(rare.collect::<Vec<_>>(), []);
}

#[test]
fn where_frost_comes_after_midwinter_only_or_before_it_the_other_half_has_none() {
    let mut mild = World::new();
    let garden = mild.garden();
    garden.last_frost = Some(MonthDay { month: 2, day: 10 });
    garden.first_frost = Some(MonthDay { month: 1, day: 20 });
    let turns = frosts(&mild, "2026-12-10");
    let at: Vec<&str> = turns.iter().map(|(at, _)| at.as_str()).collect();
    assert_eq!(at, ["2026-11", "2027-01", "2027-02"]);
}

#[test]
fn a_season_of_the_south_is_whole_across_the_new_year() {
    let world = south(World::new());
    let grown = BTreeSet::from(["tomato".to_owned()]);
    let view = windows(&world.picture, &grown, day("2026-12-10")).unwrap();
    assert_eq!((view.from, view.to), (day("2026-11-01"), day("2027-10-31")));
    let [running, next] = &view.rows[0].seasons[..] else {
        panic!("{:?}", view.rows[0].seasons)
    };
    assert!(running.sow[0] < day("2026-09-01") && running.sow[1] < day("2026-12-10"));
    // 20 May less the days to maturity and raising.
    let last = running.last_useful.unwrap();
    assert!(
        day("2026-12-31") < last && last < day("2027-03-01"),
        "{last}"
    );
    assert!(next.sow[0] > day("2027-07-15") && next.sow[0] < day("2027-10-31"));
    let says = &view.rows[0].says[0];
    assert_eq!(says.key, "season-sow-late");
}

#[test]
fn a_plan_of_the_south_is_sown_weeks_before_a_day_in_december() {
    let december = Rhythm::By {
        day: day("2026-12-05"),
    };
    let (world, _) = world(december);
    let here = with(&world, "2026-09-01 09:00", |need| {
        let next = need.next.as_ref().unwrap();
        (next.from, next.last)
    });
    let world = south(world);
    with(&world, "2026-09-01 09:00", |need| {
        let next = need.next.as_ref().unwrap();
        assert_eq!((next.from, next.last), here);
        assert!(next.from > day("2026-09-20") && next.last < day("2026-10-31"));
    });
    assert_eq!(due(&world, "2026-09-01 09:00"), Some(here.0.to_string()));
}

#[test]
fn sowing_again_and_again_goes_on_over_the_new_year() {
    let summer = Rhythm::Every {
        weeks: 3,
        from: day("2026-11-14"),
        to: day("2027-02-20"),
    };
    let (world, plan) = world(summer);
    let mut world = south(world);
    sow(&mut world, plan, 12, "2026-12-19 09:00");
    with(&world, "2026-12-28 09:00", |need| {
        assert_eq!(need.next.as_ref().unwrap().from, day("2027-01-09"));
    });
    assert_eq!(
        due(&world, "2027-01-09 09:00"),
        Some("2027-01-09".to_owned())
    );
}

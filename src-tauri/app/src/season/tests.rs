//! Seasons by hand from the rules and the crop book's weeks: tomatoes are raised
//! 6 to 8 weeks and go out 1 to 3 weeks after the last frost, here on 10 May.

use super::odds::{chance_after, odds};
use super::season_view;
use crate::view::SeasonStanding;
use crate::world::{World, day};
use plumule_agronomy::{Half, crops};
use plumule_journal::content::MonthDay;

fn season(world: &World, crop: &str, today: &str) -> crate::view::SeasonView {
    season_view(&world.picture, crops().get(crop).unwrap(), day(today)).unwrap()
}

#[test]
fn sowing_and_setting_out_hang_on_the_last_frost() {
    let crop = crops().get("tomato").unwrap();
    let (first, last) = crop.set_out_weeks.unwrap();
    let (least, most) = crop.weeks_to_raise.unwrap();
    let view = season(&World::new(), "tomato", "2026-01-20");
    let weeks = |weeks: f64| chrono::TimeDelta::days((weeks * 7.0).round() as i64);
    let frost = day("2026-05-10");
    assert_eq!(view.set_out, [frost + weeks(first), frost + weeks(last)]);
    assert_eq!(
        view.sow,
        [
            view.set_out[0] - weeks(most),
            view.set_out[1] - weeks(least)
        ]
    );
    assert_eq!(view.standing, SeasonStanding::Early);
    assert!(view.last_useful.unwrap() > view.sow[0]);
}

#[test]
fn a_season_is_early_now_late_and_then_the_next() {
    let world = World::new();
    let standing = |today: &str| season(&world, "lettuce", today).standing;
    let view = season(&world, "lettuce", "2026-01-20");
    let last = view.last_useful.unwrap();
    assert!(last > view.sow[1]);
    assert_eq!(standing(&view.sow[0].to_string()), SeasonStanding::Now);
    let late = view.sow[1].succ_opt().unwrap();
    assert_eq!(standing(&late.to_string()), SeasonStanding::Late);
    let next = season(&world, "lettuce", &last.succ_opt().unwrap().to_string());
    assert_eq!(next.standing, SeasonStanding::Early);
    assert!(next.sow[0] > last);
}

#[test]
fn in_the_south_the_season_is_half_a_year_away() {
    let mut world = World::in_zone("Australia/Hobart", -42.9);
    world.garden().last_frost = Some(MonthDay { month: 11, day: 1 });
    world.garden().first_frost = Some(MonthDay { month: 4, day: 20 });
    let view = season(&world, "tomato", "2026-06-20");
    assert!(view.sow[0] > day("2026-08-15") && view.set_out[0] > day("2026-11-01"));
    assert!(view.last_useful.unwrap() < day("2027-04-20"));
}

#[test]
fn without_a_last_frost_nothing_is_said() {
    let mut world = World::new();
    world.garden().last_frost = None;
    let tomato = crops().get("tomato").unwrap();
    assert!(season_view(&world.picture, tomato, day("2026-01-20")).is_none());
}

fn with_record() -> World {
    let mut world = World::new();
    world.frost_record();
    world
}

#[test]
fn frost_is_spoken_of_as_odds() {
    let world = with_record();
    // 15 July less 66 days is 10 May; one deviation on is left by 15.9 % of a
    // normal distribution (table), in 8 of 10 years.
    let chance = |date: &str| chance_after(&world.picture, day(date)).unwrap();
    assert!((chance("2026-05-20") - 0.8 * 0.158_655).abs() < 1e-4);
    assert!((chance("2026-05-10") - 0.8 * 0.5).abs() < 1e-9);
    let said = season(&world, "tomato", "2026-01-20").says;
    assert!(said.iter().any(|say| say.key == "season-set-out-odds"));
}

#[test]
fn the_growers_own_date_goes_before_the_record() {
    let mut world = with_record();
    world.garden().last_frost = Some(MonthDay { month: 5, day: 20 });
    assert!(odds(&world.picture, Half::Spring).is_none());
    let said = season(&world, "tomato", "2026-01-20").says;
    assert!(said.iter().any(|say| say.key == "season-set-out"));
}

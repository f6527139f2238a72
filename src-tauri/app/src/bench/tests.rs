//! Each warning due, and not due where one fact differs.

use super::warnings::{of_composts, of_place, of_season, of_tray};
use crate::view::{Coded, DueView};
use crate::words::{Units, known, render};
use crate::world::{World, at, day};
use plumule_agronomy::{Crop, LightNeed, crops};
use plumule_journal::id::TrayId;
use plumule_journal::words::{Container, Light, PlaceKind};

const SOWN: &str = "2026-04-01 09:00";

fn book(key: &str) -> &'static Crop {
    crops().get(key).unwrap()
}

fn codes(found: &[Coded]) -> Vec<&str> {
    for warning in found {
        assert!(known(&warning.say.key), "{}", warning.say.key);
        let said = render(&warning.say, Units::default(), day("2026-04-01"));
        assert!(!said.contains('{'), "{said}");
    }
    found.iter().map(|warning| warning.code.as_str()).collect()
}

fn due(d10: &str, d50: &str, d90: &str) -> DueView {
    DueView {
        first: Some(day(d10)),
        d10: Some(day(d10)),
        d50: Some(day(d50)),
        d90: Some(day(d90)),
    }
}

fn in_place(world: &mut World, crop: &Crop, light: Light, range: (f64, f64)) -> Vec<Coded> {
    let place = world.place(PlaceKind::Windowsill, range.0, range.1);
    world.describe(place).light = light;
    let described = world.picture.places[&place].described.clone();
    let due = due("2026-04-08", "2026-04-10", "2026-04-14");
    of_place(&world.picture, &described, crop, due, range)
}

#[test]
fn light_against_the_place() {
    let mut world = World::new();
    let mut seen = |crop: &str, light| {
        let found = in_place(&mut world, book(crop), light, (15.0, 25.0));
        codes(&found).join(" ")
    };
    assert_eq!(book("lettuce").light, LightNeed::Needed);
    assert_eq!(seen("lettuce", Light::Dark), "wants_light");
    assert_eq!(seen("lettuce", Light::Bright), "");
    let dark = crops()
        .iter()
        .find(|crop| crop.light == LightNeed::Dark && crop.alternating_c.is_none());
    let dark = dark.unwrap().key.clone();
    assert_eq!(seen(&dark, Light::Bright), "wants_dark");
    assert_eq!(seen(&dark, Light::Dark), "");
    assert_eq!(seen("leek", Light::Dark), "");
}

#[test]
fn alternating_temperatures_where_the_book_says_so() {
    let mut world = World::new();
    // 20-30 °C alone in the rules of seed testing; leek: 20 or 15 (from memory).
    assert_eq!(book("eggplant").alternating_c, Some((20.0, 30.0)));
    let mut seen = |crop: &str, range| {
        let found = in_place(&mut world, book(crop), Light::Bright, range);
        codes(&found).join(" ")
    };
    assert_eq!(seen("eggplant", (23.0, 25.0)), "alternating");
    assert_eq!(seen("eggplant", (19.0, 28.0)), "");
    assert_eq!(seen("leek", (18.0, 18.5)), "");
}

#[test]
fn due_while_the_grower_is_away() {
    let mut world = World::new();
    let mut away = |from: &str, to: &str| {
        world.picture.garden.away.clear();
        world.away(from, to);
        codes(&in_place(
            &mut world,
            book("leek"),
            Light::Bright,
            (14.0, 20.0),
        ))
        .join(" ")
    };
    // Between a tenth on the 8th and half on the 10th.
    assert_eq!(away("2026-04-09", "2026-04-20"), "due_while_away");
    assert_eq!(away("2026-04-01", "2026-04-08"), "due_while_away");
    assert_eq!(away("2026-04-11", "2026-04-20"), "");
    assert_eq!(away("2026-04-01", "2026-04-07"), "");
}

/// A tray with a crop in six cells, on a sill of 18 to 22 °C.
fn tray_of(crop: &str) -> (World, TrayId) {
    let mut world = World::new();
    let sill = world.place(PlaceKind::Windowsill, 18.0, 22.0);
    let tray = world.tray(Container::Cells, sill, "2026-04-01 08:00");
    world.sow(crop, 6, tray, 6, SOWN);
    (world, tray)
}

fn beside(world: &World, tray: TrayId, crop: &str, half: Option<&str>) -> String {
    let tray = &world.picture.trays[&tray];
    let half = half.map(day);
    let found = of_tray(
        &world.picture,
        tray,
        book(crop),
        half,
        at("2026-04-02 09:00"),
    );
    codes(&found).join(" ")
}

#[test]
fn crops_that_want_different_warmth_in_one_tray() {
    // To come up: sweet pea 12 to 20 °C, aubergine from 23.9.
    let (world, tray) = tray_of("sweet_pea");
    let told = beside(&world, tray, "eggplant", None);
    assert_eq!(told, "mixed_warmth mixed_warmth_after");
    // Once they are up: pepper 23.9 to 26.7 °C by day, cabbage 18.3 to 21.1.
    let (world, tray) = tray_of("pepper");
    assert_eq!(beside(&world, tray, "cabbage", None), "mixed_warmth_after");
    // Tomato 18.3 to 23.9.
    assert_eq!(beside(&world, tray, "tomato", None), "");
}

#[test]
fn sowings_that_come_up_more_than_a_week_apart_in_one_tray() {
    let (world, tray) = tray_of("tomato");
    let sowing = world.picture.sowings.values().next().unwrap();
    let growth = crate::growth::growth(&world.picture, sowing, at("2026-04-02 09:00"));
    let half = growth.unwrap().due.d50.unwrap();
    let days_on = |days: i64| (half + chrono::TimeDelta::days(days)).to_string();
    assert_eq!(beside(&world, tray, "tomato", Some(&days_on(7))), "");
    assert_eq!(
        beside(&world, tray, "tomato", Some(&days_on(8))),
        "mixed_days"
    );
    assert_eq!(
        beside(&world, tray, "tomato", Some(&days_on(-8))),
        "mixed_days"
    );
    assert_eq!(beside(&world, tray, "tomato", None), "");
}

#[test]
fn a_tray_in_which_something_is_up() {
    let (mut world, tray) = tray_of("tomato");
    assert_eq!(beside(&world, tray, "tomato", None), "");
    let sowing = *world.picture.sowings.keys().next().unwrap();
    world.count(sowing, "2026-04-02 08:00", 3);
    assert_eq!(beside(&world, tray, "tomato", None), "mixed_up");
}

#[test]
fn light_and_dark_in_one_tray() {
    let dark = crops().iter().find(|crop| crop.light == LightNeed::Dark);
    let dark = dark.unwrap().key.clone();
    let (world, tray) = tray_of("lettuce");
    let told = beside(&world, tray, &dark, None);
    assert!(told.split(' ').any(|code| code == "mixed_light"), "{told}");
    assert_eq!(beside(&world, tray, "lettuce", None), "");
}

#[test]
fn too_early_and_too_late_in_the_season() {
    // Last frost 10 May, first 15 October.
    let mut world = World::new();
    let told = |world: &World, crop: &str, on: &str| {
        let found = of_season(&world.picture, book(crop), day(on));
        codes(found.as_slice()).join(" ")
    };
    assert_eq!(told(&world, "tomato", "2026-01-05"), "too_early");
    assert_eq!(told(&world, "tomato", "2026-04-01"), "");
    // Past the usual weeks, and still of use before the first frost.
    assert_eq!(told(&world, "lettuce", "2026-06-20"), "");
    assert_eq!(told(&world, "tomato", "2026-08-20"), "too_late");
    world.garden().last_frost = None;
    assert_eq!(told(&world, "tomato", "2026-01-05"), "");
    assert_eq!(told(&world, "tomato", "2026-08-20"), "");
}

#[test]
fn composts_that_a_crop_does_badly_in() {
    let told = |crop: &str| {
        let found = of_composts(book(crop));
        for warning in &found {
            assert!(known(&warning.say.key), "{}", warning.say.key);
        }
        let composts = found.into_iter().map(|warning| warning.compost);
        composts.collect::<Vec<_>>()
    };
    assert!(told("lettuce").contains(&"garden_soil".to_owned()));
    assert!(told("lettuce").contains(&"potting".to_owned()));
    assert!(!told("lettuce").contains(&"seed".to_owned()));
    // Big seed pushes through anything that is not garden soil or lumps.
    assert!(!told("squash").contains(&"potting".to_owned()));
}

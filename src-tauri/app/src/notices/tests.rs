//! Against wall clocks of the IANA time zone database.

use super::*;
use crate::world::{World, at};
use chrono::NaiveTime;
use plumule_journal::id::SowingId;
use plumule_journal::words::{Container, Feel, PlaceKind};
use std::collections::BTreeSet;

fn device() -> DeviceForm {
    DeviceForm {
        quiet_from: "22:00".to_owned(),
        quiet_to: "07:00".to_owned(),
        ..DeviceForm::default()
    }
}

fn utc(text: &str) -> DateTime<Utc> {
    at(text).and_utc()
}

fn plan(world: &World, device: &DeviceForm, now: &str) -> NoticePlan {
    notice_plan(
        &world.picture,
        device,
        (utc(now), world.picture.zone),
        AHEAD_DAYS,
    )
}

/// A heated tray in a zone: something is up, so it is felt daily, dries
/// unwatered and is for today, at each round.
fn busy(zone: &str, latitude: f64, sown: &str, felt: &str) -> (World, SowingId) {
    let mut world = World::in_zone(zone, latitude);
    let place = world.place(PlaceKind::HeatedPropagator, 20.0, 24.0);
    world.describe(place).name = "Propagator".to_owned();
    let tray = world.tray(Container::Cells, place, sown);
    let sowing = world.sow("tomato", 12, tray, 12, sown);
    for packet in world.picture.packets.values_mut() {
        packet.described.crop = "moonflower".to_owned();
    }
    world.feel(tray, felt, Feel::Dry, None);
    (world, sowing)
}

#[track_caller]
fn check(world: &World, device: &DeviceForm, now: &str, expected: &[&str]) {
    let found = plan(world, device, now).wanted;
    let times: Vec<DateTime<Utc>> = found.iter().map(|notice| notice.at).collect();
    let expected: Vec<DateTime<Utc>> = expected.iter().map(|time| utc(time)).collect();
    assert_eq!(times[..expected.len()], expected[..], "{found:#?}");
}

#[test]
fn in_berlin_eight_stays_eight_in_spring() {
    // The clocks go forward on 29 March 2026 at 1:00 UTC; an evening round
    // too, at 18:00.
    let (world, _) = busy(
        "Europe/Berlin",
        52.5,
        "2026-03-26 08:00",
        "2026-03-28 07:30",
    );
    let expected = [
        "2026-03-28 07:00",
        "2026-03-28 17:00",
        "2026-03-29 06:00",
        "2026-03-29 16:00",
    ];
    check(&world, &device(), "2026-03-28 06:40", &expected);
}

#[test]
fn in_berlin_eight_stays_eight_in_autumn() {
    // Back on 25 October 2026 at 1:00 UTC; no evening round.
    let (world, _) = busy(
        "Europe/Berlin",
        52.5,
        "2026-10-22 08:00",
        "2026-10-24 07:30",
    );
    let expected = ["2026-10-24 06:00", "2026-10-25 07:00"];
    check(&world, &device(), "2026-10-24 05:40", &expected);
}

#[test]
fn on_lord_howe_the_clocks_move_by_half_an_hour() {
    // To UTC+11 on 4 October 2026 at 2:00 local of UTC+10:30; the south has
    // its evening rounds from September to November.
    let (world, _) = busy(
        "Australia/Lord_Howe",
        -31.5,
        "2026-10-01 08:00",
        "2026-10-03 07:30",
    );
    let expected = [
        "2026-10-02 21:30",
        "2026-10-03 07:30",
        "2026-10-03 21:00",
        "2026-10-04 07:00",
    ];
    check(&world, &device(), "2026-10-02 21:10", &expected);
}

#[test]
fn in_apia_a_day_that_never_was_rings_once() {
    // 30 December 2011 was left out: from UTC-10 to UTC+14 (with summer time).
    let (world, _) = busy(
        "Pacific/Apia",
        -13.8,
        "2011-12-27 08:00",
        "2011-12-29 07:30",
    );
    let found = plan(&world, &device(), "2011-12-29 17:40").wanted;
    let times: Vec<DateTime<Utc>> = found.iter().map(|notice| notice.at).collect();
    let expected = [utc("2011-12-29 18:00"), utc("2011-12-30 18:00")];
    assert_eq!(times[..2], expected);
    assert!(times.windows(2).all(|pair| pair[0] < pair[1]));
}

#[test]
fn a_round_in_quiet_hours_rings_when_they_end() {
    let (mut world, _) = busy(
        "Europe/Berlin",
        52.5,
        "2026-01-10 08:00",
        "2026-01-11 06:30",
    );
    let time = |text| NaiveTime::parse_from_str(text, "%H:%M").unwrap();
    world.garden().morning = time("06:45");
    check(&world, &device(), "2026-01-11 05:40", &["2026-01-11 06:00"]);
    // The end is exclusive, and equal hours are none.
    world.garden().morning = time("07:00");
    check(&world, &device(), "2026-01-11 05:40", &["2026-01-11 06:00"]);
    world.garden().morning = time("06:45");
    let none = DeviceForm {
        quiet_from: "07:00".to_owned(),
        ..device()
    };
    check(&world, &none, "2026-01-11 05:40", &["2026-01-11 05:45"]);
}

#[test]
fn quiet_hours_go_over_midnight_start_inclusive_end_exclusive() {
    let quiet = Quiet::of(&device());
    for (of, expected) in [
        ("2026-03-05 21:59", "2026-03-05 21:59"),
        ("2026-03-05 22:00", "2026-03-06 07:00"),
        ("2026-03-06 00:00", "2026-03-06 07:00"),
        ("2026-03-06 06:59", "2026-03-06 07:00"),
        ("2026-03-06 07:00", "2026-03-06 07:00"),
    ] {
        assert_eq!(quiet.after(at(of)), at(expected));
    }
    let noon = Quiet {
        from: at("2026-03-05 12:00").time(),
        to: at("2026-03-05 14:00").time(),
    };
    assert_eq!(noon.after(at("2026-03-05 12:00")), at("2026-03-05 14:00"));
    assert_eq!(noon.after(at("2026-03-05 14:00")), at("2026-03-05 14:00"));
}

#[test]
fn into_the_light_comes_alone_between_rounds_and_not_at_night() {
    let (mut world, sowing) = busy(
        "Europe/Berlin",
        52.5,
        "2026-01-10 08:00",
        "2026-01-12 07:30",
    );
    world.count(sowing, "2026-01-12 10:00", 3);
    let alone = |world: &World, now| {
        let found = plan(world, &device(), now).wanted.into_iter();
        found
            .filter(|notice| notice.key.starts_with("alone/"))
            .collect::<Vec<_>>()
    };
    let found = alone(&world, "2026-01-12 09:00");
    assert_eq!(found.len(), 1);
    // An hour after 10:00 in Berlin.
    assert_eq!(found[0].at, utc("2026-01-12 10:00"));
    // Counted at 21:30, an hour later is night; at 7:00 it comes before the round.
    world.count(sowing, "2026-01-12 21:30", 3);
    let state = world.picture.sowings.get_mut(&sowing).unwrap();
    state.counts.remove(0);
    let found = alone(&world, "2026-01-12 20:40");
    assert_eq!(found[0].at, utc("2026-01-13 06:00"));
    // The next morning's round has told.
    assert!(alone(&world, "2026-01-13 09:00").is_empty());
}

/// Tomatoes outdoors in autumn, when evenings have no round but before frosts,
/// and a night's low that is typed in.
fn frosty(said: &str, low_c: f64) -> World {
    let mut world = World::new();
    let place = world.place(PlaceKind::Outdoors, 8.0, 18.0);
    let tray = world.tray(Container::Cells, place, "2026-08-20 08:00");
    let sowing = world.sow("tomato", 12, tray, 12, "2026-08-20 08:00");
    world.count(sowing, "2026-09-10 08:00", 12);
    world.night(said, None, low_c);
    world
}

#[test]
fn frost_tonight_comes_alone_between_rounds_and_a_mild_night_does_not() {
    let alone = |low_c, now| {
        let found = plan(&frosty("2026-10-03 14:00", low_c), &device(), now);
        let mut found = found.wanted.into_iter();
        found.find(|notice| notice.key.starts_with("alone/frost_tonight/"))
    };
    // An hour after 14:00 in Berlin, two hours east of Greenwich.
    let frost = alone(1.0, "2026-10-03 12:10").unwrap();
    assert_eq!(
        (frost.at, frost.title.as_str()),
        (utc("2026-10-03 13:00"), "Frost tonight")
    );
    assert_eq!((frost.rank, frost.feel), (Rank::Alone, false));
    assert!(frost.body.contains("frost tonight"), "{}", frost.body);
    assert_eq!(alone(6.0, "2026-10-03 12:10"), None);
    // The evening's round, which comes before frosts, tells of it.
    assert_eq!(alone(1.0, "2026-10-03 16:00"), None);
}

#[test]
fn before_a_frost_there_is_an_evening_round_in_autumn_too() {
    let evening = |low_c| {
        let world = frosty("2026-10-03 07:00", low_c);
        let found = plan(&world, &device(), "2026-10-03 07:00").wanted;
        let keys = found.iter().map(|notice| notice.key.as_str());
        keys.filter(|key| key.ends_with("2026-10-03/evening"))
            .count()
    };
    assert_eq!((evening(1.0), evening(6.0)), (1, 0));
}

#[test]
fn frost_that_is_said_late_at_night_waits_for_nothing() {
    // Said at 20:30 it is told at 21:30; said at 21:30 quiet hours begin at
    // 22:00, and at their end the night is over.
    let alone = |said, now| {
        let found = plan(&frosty(said, 1.0), &device(), now).wanted.into_iter();
        let at = found.filter(|notice| notice.key.starts_with("alone/"));
        at.map(|notice| notice.at).collect::<Vec<_>>()
    };
    let early = alone("2026-10-03 20:30", "2026-10-03 18:40");
    assert_eq!(early, [utc("2026-10-03 19:30")]);
    assert!(alone("2026-10-03 21:30", "2026-10-03 19:40").is_empty());
}

#[test]
fn what_was_missed_comes_now_under_the_key_it_had() {
    let (world, _) = busy(
        "Europe/Berlin",
        52.5,
        "2026-03-26 08:00",
        "2026-03-28 07:30",
    );
    let first = plan(&world, &device(), "2026-03-28 06:40").wanted.remove(0);
    let missed = plan(&world, &device(), "2026-03-28 09:00").wanted.remove(0);
    assert_eq!((&missed.key, missed.id), (&first.key, first.id));
    assert_eq!(missed.at, utc("2026-03-28 09:00"));
}

#[test]
fn the_plan_says_when_to_ask_again() {
    let (world, _) = busy(
        "Europe/Berlin",
        52.5,
        "2026-01-10 08:00",
        "2026-01-12 07:30",
    );
    let again = |now| plan(&world, &device(), now).plan_again;
    assert_eq!(again("2026-01-12 06:40"), utc("2026-01-12 07:00"));
    assert_eq!(again("2026-01-12 07:00"), utc("2026-01-13 07:00"));
}

#[test]
fn no_notices_where_none_are_wanted_or_the_grower_is_away() {
    let (mut world, _) = busy(
        "Europe/Berlin",
        52.5,
        "2026-03-26 08:00",
        "2026-03-28 07:30",
    );
    let none = DeviceForm {
        notices: false,
        ..device()
    };
    assert!(plan(&world, &none, "2026-03-28 06:40").wanted.is_empty());
    world.away("2026-03-28", "2026-04-30");
    assert!(
        plan(&world, &device(), "2026-03-28 06:40")
            .wanted
            .is_empty()
    );
}

#[test]
fn one_line_a_place_and_of_too_many_the_soonest_and_most_pressing() {
    let (mut world, _) = busy(
        "Europe/Berlin",
        52.5,
        "2026-03-26 08:00",
        "2026-03-28 07:30",
    );
    let places: Vec<_> = world.picture.places.keys().copied().collect();
    for index in 0..80 {
        let tray = world.tray(Container::Cells, places[0], "2026-03-26 08:00");
        let sowing = world.sow("tomato", 2, tray, 2, "2026-03-26 08:00");
        world.count(sowing, &format!("2026-03-28 08:{:02}", index % 50), 1);
    }
    let now = utc("2026-03-28 08:00");
    let all = plan(&world, &device(), "2026-03-28 08:00");
    let mut few = all.clone();
    few.keep(30, now);
    assert!(all.wanted.len() > 80);
    assert_eq!(few.wanted.len(), 30);
    for notice in &few.wanted {
        assert_eq!(notice.body.lines().count(), 1, "{notice:?}");
        assert_eq!(notice.rank, Rank::Alone);
        assert!(notice.tray.is_some() && !notice.feel);
    }
    let ids: BTreeSet<i32> = all.wanted.iter().map(|notice| notice.id).collect();
    assert_eq!(ids.len(), all.wanted.len());
    // With fewer of today's all of today's are kept.
    few = all.clone();
    few.wanted.retain(|notice| notice.rank != Rank::Alone);
    let first: Vec<_> = few.wanted.iter().take(4).cloned().collect();
    few.keep(4, now);
    assert_eq!(few.wanted, first);
}

#[test]
fn a_single_tray_to_feel_is_answered_from_the_notice_and_no_other() {
    let mut world = World::new();
    world.garden().latitude = Some(-40.0);
    let place = world.place(PlaceKind::Windowsill, 18.0, 18.0);
    let tray = world.tray(Container::Cells, place, "2026-03-02 08:00");
    world.sow("tomato", 12, tray, 12, "2026-03-02 08:00");
    let first = |world: &World| plan(world, &device(), "2026-03-02 09:00").wanted.remove(0);
    let one = first(&world);
    assert_eq!(
        (one.tray.as_deref(), one.feel),
        (Some(tray.to_string().as_str()), true)
    );
    let other = world.tray(Container::Cells, place, "2026-03-02 08:00");
    world.sow("tomato", 12, other, 12, "2026-03-02 08:00");
    let two = first(&world);
    assert_eq!((two.at, two.tray, two.feel), (one.at, None, false));
}

#[test]
fn what_is_planned_ahead_is_what_the_round_will_say_then() {
    // Nothing answered for two weeks: each digest is the one that would be
    // planned at its own time.
    let (world, _) = busy(
        "Europe/Berlin",
        52.5,
        "2026-03-16 08:00",
        "2026-03-20 07:30",
    );
    let ahead = plan(&world, &device(), "2026-03-20 06:40").wanted;
    assert!(ahead.len() >= 4);
    for notice in &ahead {
        let now = notice.at.format("%Y-%m-%d %H:%M").to_string();
        let then = plan(&world, &device(), &now).wanted;
        assert_eq!(then.first(), Some(notice));
    }
}

#[test]
fn in_the_evening_a_missed_morning_is_not_told_and_overnight_no_evening() {
    let (world, _) = busy(
        "Europe/Berlin",
        52.5,
        "2026-03-16 08:00",
        "2026-03-18 07:30",
    );
    let first = |now| plan(&world, &device(), now).wanted.remove(0);
    assert_eq!(first("2026-03-18 17:30").key, "digest/2026-03-18/evening");
    let next = first("2026-03-18 22:00");
    assert_eq!(
        (next.key.as_str(), next.at),
        ("digest/2026-03-19/morning", utc("2026-03-19 07:00"))
    );
}

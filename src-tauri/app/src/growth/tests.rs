//! Progress by hand: tomato takes 8 days at 20 °C and 14 at 15 °C (Harrington
//! and Minges 1954), so a constant day gives an eighth or a fourteenth.

use super::*;
use crate::say::Arg;
use crate::world::{World, at, day};
use plumule_journal::content::{Leaving, RangeC, Seeds, Shown, StatedDays};
use plumule_journal::id::{SowingId, TrayId};
use plumule_journal::state::{Ended, LeftAt};
use plumule_journal::words::{Container, Feel, LossCause, Watering};

struct Scene {
    world: World,
    warm: PlaceId,
    cool: PlaceId,
    tray: TrayId,
    sowing: SowingId,
}

fn scene(sown: &str) -> Scene {
    let mut world = World::new();
    let warm = world.place(PlaceKind::Windowsill, 20.0, 20.0);
    let cool = world.place(PlaceKind::Shed, 15.0, 15.0);
    let tray = world.tray(Container::Cells, warm, sown);
    let sowing = world.sow("tomato", 20, tray, 20, sown);
    Scene {
        world,
        warm,
        cool,
        tray,
        sowing,
    }
}

impl Scene {
    fn growth(&self, now: &str) -> Growth {
        let sowing = &self.world.picture.sowings[&self.sowing];
        growth(&self.world.picture, sowing, at(now)).unwrap()
    }

    #[track_caller]
    fn check(&self, now: &str, progress: f64) {
        let found = self.growth(now).course.progress;
        assert!((found - progress).abs() < 1e-9, "{found}, not {progress}");
    }
}

#[test]
fn half_are_up_on_the_day_of_the_table() {
    let scene = scene("2026-03-02 00:00");
    // The eighth day: 2 March is the first.
    assert_eq!(
        scene.growth("2026-03-03 12:00").due.d50,
        Some(day("2026-03-09"))
    );
}

#[test]
fn progress_counts_from_the_hour_of_sowing() {
    let scene = scene("2026-03-02 18:00");
    // The six middles of hours from 18:30 to 23:30, then two days, then 12 hours.
    scene.check("2026-03-03 00:00", 6.0 / 24.0 / 8.0);
    scene.check("2026-03-05 12:00", (6.0 + 48.0 + 12.0) / 24.0 / 8.0);
}

#[test]
fn progress_follows_the_tray() {
    let mut scene = scene("2026-03-02 00:00");
    scene
        .world
        .move_to(scene.tray, scene.cool, "2026-03-03 06:00");
    // A day and 6 hours at 20 °C, 18 hours and a day at 15 °C.
    scene.check("2026-03-05 00:00", 1.25 / 8.0 + 1.75 / 14.0);
}

#[test]
fn a_dry_tray_stands_still_for_a_day_at_most() {
    let mut scene = scene("2026-03-02 00:00");
    scene
        .world
        .feel(scene.tray, "2026-03-03 12:00", Feel::Dry, None);
    scene.check("2026-03-06 00:00", 3.0 / 8.0);
    scene.world.feel(
        scene.tray,
        "2026-03-03 18:00",
        Feel::Dry,
        Some(Watering::Below),
    );
    scene.check("2026-03-06 00:00", 3.75 / 8.0);
}

#[test]
fn a_stretch_without_heat_runs_at_what_was_given() {
    let mut scene = scene("2026-03-02 00:00");
    scene.world.heat_off(
        scene.warm,
        "2026-03-03 00:00",
        Some("2026-03-03 12:00"),
        (15.0, 15.0),
    );
    scene.check("2026-03-04 00:00", 1.5 / 8.0 + 0.5 / 14.0);
}

#[test]
fn the_fridge_is_cold_weeks() {
    let mut scene = scene("2026-03-02 00:00");
    let fridge = scene.world.place(PlaceKind::Fridge, 20.0, 20.0);
    scene.world.move_to(scene.tray, fridge, "2026-03-03 00:00");
    scene.check("2026-03-20 00:00", 1.0 / 8.0);
    let growth = scene.growth("2026-03-20 00:00");
    assert!(growth.cold_weeks && growth.due.d50.is_none());
}

#[test]
fn a_crop_that_is_not_in_the_book_has_no_forecast() {
    let mut scene = scene("2026-03-02 00:00");
    for packet in scene.world.picture.packets.values_mut() {
        packet.described.crop = "moonflower".to_owned();
    }
    let sowing = &scene.world.picture.sowings[&scene.sowing];
    assert!(growth(&scene.world.picture, sowing, at("2026-03-03 08:00")).is_none());
}

#[test]
fn the_band_holds_its_middle_and_never_falls() {
    let scene = scene("2026-03-02 09:00");
    let sowing = &scene.world.picture.sowings[&scene.sowing];
    let view = scene.growth("2026-03-05 09:00").forecast_view(
        &scene.world.picture,
        sowing,
        day("2026-03-05"),
    );
    assert_eq!(view.band[0].day, day("2026-03-02"));
    assert!(view.band.last().unwrap().day > view.due.d90.unwrap());
    for pair in view.band.windows(2) {
        assert!(pair[0].mid <= pair[1].mid);
    }
    for point in &view.band {
        assert!(point.low <= point.mid && point.mid <= point.high);
    }
    assert!(view.expected[0] <= view.expected[1] && view.expected[1] <= 20.0);
}

#[test]
fn old_seed_is_expected_later_and_fewer() {
    let fresh = scene("2026-03-02 00:00").growth("2026-03-03 12:00");
    let mut old = scene("2026-03-02 00:00");
    for packet in old.world.picture.packets.values_mut() {
        packet.described.packed_year = Some(2014);
    }
    let old = old.growth("2026-03-03 12:00");
    assert!(old.due.d50 > fresh.due.d50);
    assert!(old.expected()[1] < fresh.expected()[1]);
}

#[test]
fn the_bench_says_where_none_comes_up_and_why() {
    let mut world = World::new();
    let kind = PlaceKind::Windowsill;
    let (warm, cold, hot) = (
        world.place(kind, 20.0, 20.0),
        world.place(kind, 4.0, 6.0),
        world.place(kind, 48.0, 52.0),
    );
    let tray = world.tray(Container::Cells, warm, "2026-03-01 08:00");
    world.sow("tomato", 1, tray, 1, "2026-03-01 08:00");
    let packet = world.picture.packets.values().next().unwrap();
    let worth = outlook_of(packet, &Learnt::default(), day("2026-03-02")).unwrap();
    let said = |place| {
        let now = at("2026-03-02 00:00");
        growth_in(
            &world.picture,
            &packet.described,
            10,
            (&worth, &Learnt::default()),
            place,
            now,
        )
        .unwrap()
    };
    assert_eq!(said(warm).say.key, "bench-due");
    // The eighth day is seven days on.
    assert_eq!(said(warm).say.args["half"], Arg::Number(7.0));
    assert_eq!(said(cold).say.key, "bench-none-below");
    assert!(said(cold).none_comes_up);
    assert_eq!(said(hot).say.key, "bench-none-above");
}

#[test]
fn a_packet_at_its_sow_by_date_meets_the_legal_minimum() {
    // Tomato: 75 % (7 CFR 201.31).
    let mut scene = scene("2026-03-02 00:00");
    let packet = scene.world.picture.packets.values_mut().next().unwrap();
    packet.described.packed_year = None;
    packet.described.sow_by = Some(day("2026-12-31"));
    let worth = |on| {
        outlook_of(packet, &Learnt::default(), day(on))
            .unwrap()
            .germination
    };
    assert!((worth("2026-12-31") - 0.75).abs() < 1e-9);
    assert!(worth("2025-12-31") > 0.75 && worth("2027-12-31") < 0.75);
}

#[test]
fn a_harvest_ages_from_the_autumn_of_its_year() {
    let mut scene = scene("2026-03-02 00:00");
    let packet = scene.world.picture.packets.values_mut().next().unwrap();
    let packed = outlook_of(packet, &Learnt::default(), day("2026-12-31"))
        .unwrap()
        .germination;
    packet.described.packed_year = None;
    packet.described.harvested_year = Some(2026);
    let harvested = outlook_of(packet, &Learnt::default(), day("2026-12-31"))
        .unwrap()
        .germination;
    packet.described.crop = "moonflower".to_owned();
    assert!(
        harvested > packed && outlook_of(packet, &Learnt::default(), day("2026-12-31")).is_none()
    );
}

/// 20 sown, 9 up after 6 and 12 days at 20 °C, ended after 14: its fair chance.
fn past(more: impl Fn(&mut Past)) -> Learnt {
    let mut scene = scene("2026-03-02 00:00");
    scene.world.count(scene.sowing, "2026-03-08 00:00", 0);
    scene.world.count(scene.sowing, "2026-03-14 00:00", 9);
    let picture = &mut scene.world.picture;
    let (sowing, tray) = (&picture.sowings[&scene.sowing], &picture.trays[&scene.tray]);
    let mut past = Past {
        sowing: sowing.clone(),
        tray: tray.clone(),
    };
    let end = scene.world.mark("2026-03-16 00:00");
    past.sowing.plants.ended = Some(Ended {
        at: end,
        nothing_came_up: false,
    });
    more(&mut past);
    let picture = &mut scene.world.picture;
    let packet = past.sowing.packet();
    picture.past.insert(packet, vec![past]);
    picture.learnt = learn(picture, at("2026-04-01 00:00"));
    Learnt::of(picture, &picture.packets[&packet])
}

#[test]
fn a_finished_sowing_tells_its_worth_if_it_had_its_fair_chance() {
    assert_eq!(past(|_| {}).own(), Some((1, 9, 20)));
    let end = |text| {
        move |past: &mut Past| {
            let ended = past.sowing.plants.ended.as_mut().unwrap();
            ended.at.at.local = at(text);
        }
    };
    // An eighth a day: 1.5 and 1.625 of the way.
    assert_eq!(past(end("2026-03-14 00:00")).own(), None);
    assert_eq!(past(end("2026-03-15 00:00")).own(), Some((1, 9, 20)));
    let guessed = past(|past| past.sowing.counts[1].exact = false);
    let pinch = past(|past| past.sowing.sown.seeds = Seeds::Pinch);
    let spilt = past(|past| {
        let at = past.sowing.opened_by.clone();
        let how = Leaving::Lost(LossCause::Spilt);
        past.sowing.plants.left.push(LeftAt { at, number: 1, how });
    });
    assert_eq!([guessed.own(), pinch.own(), spilt.own()], [None; 3]);
}

#[test]
fn a_slow_packet_is_learnt_from_the_looks_around_its_half() {
    let tomato = crops().get("tomato").unwrap();
    let packets = scene("2026-03-02 00:00").world.picture.packets;
    let packet = packets.values().next().unwrap();
    let worth = outlook_of(packet, &Learnt::default(), day("2026-03-02")).unwrap();
    let fresh = Learnt::default().time_factor(tomato, &packet.described, &worth, 1.0);
    // Half of them between 0.75 and 1.5 of the way, so at 1.125.
    let learnt = past(|_| {}).time_factor(tomato, &packet.described, &worth, 1.0);
    assert!(0.0 < learnt.mean_ln && learnt.mean_ln < 1.125_f64.ln() && learnt.tau < fresh.tau);
    // Nobody looked before they were up: that tells no speed.
    let unseen = past(|past| drop(past.sowing.counts.remove(0)));
    assert_eq!(
        unseen.time_factor(tomato, &packet.described, &worth, 1.0),
        fresh
    );
}

/// The tomato's packet states so many days, at a temperature if it says so.
fn stating(days: (u32, u32), at_c: Option<f64>) -> Scene {
    let mut scene = scene("2026-03-02 00:00");
    for packet in scene.world.picture.packets.values_mut() {
        packet.described.stated_days = Some(StatedDays {
            from: days.0,
            to: days.1,
            at: at_c.map(|c| RangeC { min_c: c, max_c: c }),
        });
    }
    scene
}

#[test]
fn a_packet_that_states_its_days_is_expected_by_them() {
    let half = |scene: &Scene| scene.growth("2026-03-02 12:00").due.d50.unwrap();
    // 8 to 32 days at 20 °C, in the middle 16, where the table has 8.
    let slow = stating((8, 32), Some(20.0));
    let factor = slow.growth("2026-03-02 12:00").time_factor;
    assert!((factor.mean_ln - 2.0_f64.ln()).abs() < 1e-9);
    assert_eq!(half(&slow), day("2026-03-17"));
    // The same days in the cool are no slower than the table's 14 at 15 °C.
    assert_eq!(half(&stating((14, 14), Some(15.0))), day("2026-03-09"));
    // None come up at 2 °C: such days are not reckoned with.
    assert_eq!(half(&stating((8, 32), Some(2.0))), day("2026-03-09"));
}

#[test]
fn stated_days_without_a_temperature_are_for_the_middle_of_the_recommended() {
    let tomato = crops().get("tomato").unwrap();
    let (low, high) = tomato.recommended_c;
    let at = |at_c| stating((6, 12), at_c).growth("2026-03-02 12:00");
    assert_eq!(
        at(None).time_factor,
        at(Some(low.midpoint(high))).time_factor
    );
}

#[test]
fn what_came_up_corrects_what_a_packet_states_and_other_packets_do_not() {
    let scene = stating((16, 16), Some(20.0));
    let tomato = crops().get("tomato").unwrap();
    let packet = scene.world.picture.packets.values().next().unwrap();
    let worth = outlook_of(packet, &Learnt::default(), day("2026-03-02")).unwrap();
    let factor = |learnt: Learnt| learnt.time_factor(tomato, &packet.described, &worth, 1.0);
    let stated = factor(Learnt::default());
    // Its own were up at 1.125 of the usual time.
    assert!(factor(past(|_| {})).mean_ln < stated.mean_ln);
    assert_eq!(factor(past(|_| {}).told_of_others()), stated);
}

#[test]
fn with_readings_it_is_known_better() {
    let mut scene = scene("2026-03-02 00:00");
    let tau = |scene: &Scene| scene.growth("2026-03-10 12:00").time_factor.tau;
    let unread = tau(&scene);
    let shown = Shown::LowHigh {
        min_c: 20.0,
        max_c: 20.0,
    };
    scene.world.read(scene.warm, "2026-03-05 18:00", shown);
    assert!(tau(&scene) < unread);
}

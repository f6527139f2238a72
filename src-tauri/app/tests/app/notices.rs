//! Notices over a real journal: what other reminders got wrong.

use crate::acts::{new_tray, packet, place, sow};
use crate::request;
use chrono::{DateTime, TimeDelta, Utc};
use chrono_tz::Tz;
use plumule_app::acts::{Act, Until};
use plumule_app::view::{Answer, DeviceForm, GardenForm, TrayChoice};
use plumule_app::{Ahead, App, Notice};
use plumule_journal::stamp::Stamp;
use tempfile::TempDir;

/// Twelve cells without a cover: to be felt after a little over two days at this warmth.
pub(crate) fn open_tray(place: &str) -> TrayChoice {
    match new_tray(place, 3, 4) {
        TrayChoice::New {
            code,
            container,
            rows,
            columns,
            compost,
            place,
            ..
        } => TrayChoice::New {
            code,
            container,
            rows,
            columns,
            compost,
            place,
            covered: false,
        },
        held => held,
    }
}

struct Desk {
    app: App,
    home: TempDir,
    zone: Tz,
    turn: u8,
}

fn utc(text: &str) -> DateTime<Utc> {
    text.parse().unwrap()
}

impl Desk {
    /// A journal with one tray of tomatoes on a sill, in a zone.
    fn new(zone: Tz, now: &str) -> (Self, String) {
        let home = TempDir::new().unwrap();
        let stamp = Stamp {
            now: utc(now),
            zone,
            entropy: [0; 16],
        };
        let mut app = App::open(home.path(), &stamp).unwrap();
        app.begin(&stamp).unwrap();
        let mut desk = Self {
            app,
            home,
            zone,
            turn: 0,
        };
        let packet = desk.made(now, Act::AddPacket { packet: packet() });
        let sill = desk.made(now, place("Sill", "windowsill", (15.0, 20.0), "bright"));
        let tray = desk.made(now, sow(&packet, open_tray(&sill), vec![], 12));
        (desk, tray)
    }

    fn stamp(&mut self, now: &str) -> Stamp {
        self.turn += 1;
        Stamp {
            now: utc(now),
            zone: self.zone,
            entropy: [self.turn; 16],
        }
    }

    fn made(&mut self, now: &str, act: Act) -> String {
        let stamp = self.stamp(now);
        match self.app.act(&stamp, request(act)).unwrap() {
            Answer::Written {
                packet,
                place,
                tray,
                ..
            } => packet.or(place).or(tray).unwrap_or_default(),
            Answer::AsksFirst { questions } => panic!("asks first: {questions:?}"),
        }
    }

    fn feel(&mut self, now: &str, tray: &str, feel: &str) {
        let (trays, feel) = (vec![tray.to_owned()], Some(feel.to_owned()));
        self.made(
            now,
            Act::Feel {
                trays,
                feel,
                water: None,
            },
        );
    }

    fn wanted(&mut self, now: &str) -> Vec<Notice> {
        let stamp = self.stamp(now);
        self.app.notices(&stamp).unwrap().wanted
    }

    fn ahead(&mut self, stamp: &Stamp, most: usize, afresh: bool) -> Ahead {
        let plan = self.app.notices(stamp).unwrap();
        self.app.notices_ahead(stamp, plan, (most, afresh)).unwrap()
    }

    /// As a timer does that looks every few seconds: what is shown, and when.
    fn watch(&mut self, from: &str, to: &str, every: i64) -> Vec<(DateTime<Utc>, String)> {
        let (mut now, mut shown) = (utc(from), Vec::new());
        let mut stamp = self.stamp(from);
        let mut again = now;
        while now <= utc(to) {
            stamp.now = now;
            if now >= again {
                let plan = self.app.notices(&stamp).unwrap();
                for notice in plan.wanted.iter().filter(|notice| notice.at <= now) {
                    self.app.delivered(&stamp, &notice.key).unwrap();
                    shown.push((now, notice.key.clone()));
                }
                let later = plan
                    .wanted
                    .iter()
                    .map(|notice| notice.at)
                    .filter(|at| *at > now);
                again = later.fold(plan.plan_again, DateTime::min);
            }
            now += TimeDelta::seconds(every);
        }
        shown
    }
}

/// Round and quiet hours of a garden and a device.
fn hours(desk: &mut Desk, now: &str, round: (&str, &str), quiet: (&str, &str)) {
    let stamp = desk.stamp(now);
    let garden = desk.app.settings(&stamp, false).unwrap().garden;
    let (morning, evening) = (round.0.to_owned(), round.1.to_owned());
    let garden = GardenForm {
        morning,
        evening,
        ..garden
    };
    desk.made(now, Act::DescribeGarden { garden });
    let (quiet_from, quiet_to) = (quiet.0.to_owned(), quiet.1.to_owned());
    let device = DeviceForm {
        quiet_from,
        quiet_to,
        ..desk.app.device().unwrap()
    };
    desk.app.set_device(&device).unwrap();
}

#[test]
fn on_the_day_the_clocks_change_nothing_rings_every_few_seconds() {
    for (sown, from, to) in [
        (
            "2026-03-26T07:00:00Z",
            "2026-03-28T23:00:00Z",
            "2026-03-29T22:00:00Z",
        ),
        (
            "2026-10-22T07:00:00Z",
            "2026-10-24T22:00:00Z",
            "2026-10-25T23:00:00Z",
        ),
    ] {
        let (mut desk, tray) = Desk::new(chrono_tz::Europe::Berlin, sown);
        // Dry and not watered: for today, at each round.
        desk.feel(from, &tray, "dry");
        hours(&mut desk, from, ("02:30", "23:00"), ("00:00", "00:00"));
        let shown = desk.watch(from, to, 5);
        let mornings = shown
            .iter()
            .filter(|(_, key)| key.ends_with("morning"))
            .count();
        assert_eq!(mornings, 1, "{shown:?}");
        assert!(shown.len() <= 2, "{shown:?}");
    }
}

#[test]
fn eleven_at_night_comes_once_where_it_is_shown_twice() {
    // Chile puts its clocks back at midnight: on 4 April 2026 23:00 came twice.
    let (mut desk, tray) = Desk::new(chrono_tz::America::Santiago, "2026-04-01T10:00:00Z");
    desk.feel("2026-04-04T12:00:00Z", &tray, "dry");
    let quiet = ("02:00", "02:00");
    hours(&mut desk, "2026-04-04T12:00:00Z", ("23:00", "22:00"), quiet);
    let shown = desk.watch("2026-04-05T00:00:00Z", "2026-04-05T07:00:00Z", 60);
    // First at UTC-3.
    assert_eq!(
        shown,
        [(
            utc("2026-04-05T02:00:00Z"),
            "digest/2026-04-04/morning".to_owned()
        )]
    );
}

#[test]
fn thirteen_hours_east_of_greenwich_the_day_is_right() {
    // Tonga is at UTC+13: its Thursday morning is Wednesday in Greenwich.
    let (mut desk, _) = Desk::new(chrono_tz::Pacific::Tongatapu, "2026-03-01T20:00:00Z");
    let first = desk.wanted("2026-03-01T21:00:00Z").remove(0);
    assert_eq!(first.key, "digest/2026-03-05/morning");
    assert_eq!(first.at, utc("2026-03-04T19:00:00Z"));
}

#[test]
fn the_weekday_is_that_of_the_garden() {
    // Dry on Wednesday 4 March, so for that evening, which in Greenwich is
    // Thursday already.
    let (mut desk, tray) = Desk::new(chrono_tz::America::Los_Angeles, "2026-03-02T16:00:00Z");
    desk.feel("2026-03-04T16:10:00Z", &tray, "dry");
    let stamp = desk.stamp("2026-03-05T01:30:00Z");
    let plan = desk.app.notices(&stamp).unwrap();
    let next = desk.app.notice_desk(&stamp).unwrap().next(plan).unwrap();
    assert_eq!(next.at.format("%A %H:%M").to_string(), "Wednesday 18:00");
}

#[test]
fn what_piles_up_in_quiet_hours_ends_as_one() {
    let (mut desk, tray) = Desk::new(chrono_tz::Europe::Berlin, "2026-03-02T07:00:00Z");
    desk.feel("2026-03-05T12:00:00Z", &tray, "dry");
    // Both rounds lie in the quiet hours.
    let now = "2026-03-05T12:00:00Z";
    hours(&mut desk, now, ("06:00", "23:00"), ("22:00", "07:00"));
    let shown = desk.watch("2026-03-05T20:00:00Z", "2026-03-06T11:00:00Z", 60);
    assert_eq!(
        shown,
        [(
            utc("2026-03-06T06:00:00Z"),
            "digest/2026-03-06/morning".to_owned()
        )]
    );
}

#[test]
fn what_was_put_off_stays_so_over_a_restart() {
    let (mut desk, _) = Desk::new(chrono_tz::Europe::Berlin, "2026-03-02T07:00:00Z");
    let now = "2026-03-05T07:30:00Z";
    let stamp = desk.stamp(now);
    let round = desk.app.round(&stamp).unwrap();
    let job = round.places[0].cards[0].jobs[0].key.clone();
    desk.made(
        now,
        Act::PutOff {
            job,
            until: Until::Day("2026-03-07".parse().unwrap()),
        },
    );
    let first = desk.wanted(now).remove(0);
    assert_eq!(first.key, "digest/2026-03-07/morning");
    let stamp = desk.stamp(now);
    desk.app = App::open(desk.home.path(), &stamp).unwrap();
    assert_eq!(desk.wanted(now).remove(0), first);
}

#[test]
fn put_off_to_the_next_round_is_this_evening_in_spring_and_tomorrow_in_autumn() {
    for (month, expected) in [
        ("03", "digest/2026-03-05/evening"),
        ("11", "digest/2026-11-06/morning"),
    ] {
        let on = |time: &str| format!("2026-{month}-{time}:00Z");
        let (mut desk, tray) = Desk::new(chrono_tz::Europe::Berlin, &on("02T07:00"));
        desk.feel(&on("04T12:00"), &tray, "dry");
        let now = on("05T07:30");
        let stamp = desk.stamp(&now);
        let round = desk.app.round(&stamp).unwrap();
        let job = round.places[0].cards[0].jobs[0].key.clone();
        let until = Until::NextRound;
        desk.made(&now, Act::PutOff { job, until });
        assert_eq!(desk.wanted(&now)[0].key, expected);
    }
}

#[test]
fn what_is_done_after_midnight_counts_for_the_day_it_is() {
    // Felt at 0:30 on Thursday: due again on Saturday, not on Friday.
    let (mut desk, tray) = Desk::new(chrono_tz::Europe::Berlin, "2026-03-02T07:00:00Z");
    desk.feel("2026-03-04T23:30:00Z", &tray, "moist");
    let first = desk.wanted("2026-03-04T23:40:00Z").remove(0);
    assert_eq!(first.key, "digest/2026-03-07/morning");
}

#[test]
fn moving_the_round_by_an_hour_does_not_bring_the_same_again() {
    let (mut desk, _) = Desk::new(chrono_tz::Europe::Berlin, "2026-03-02T07:00:00Z");
    let shown = desk.watch("2026-03-05T06:50:00Z", "2026-03-05T07:10:00Z", 10);
    assert_eq!(shown.len(), 1);
    let now = "2026-03-05T07:20:00Z";
    hours(&mut desk, now, ("09:00", "18:00"), ("22:00", "07:00"));
    let shown = desk.watch("2026-03-05T07:20:00Z", "2026-03-05T10:00:00Z", 10);
    assert_eq!(shown, []);
}

#[test]
fn what_is_handed_over_is_changed_by_the_difference_alone() {
    let (mut desk, tray) = Desk::new(chrono_tz::Europe::Berlin, "2026-03-02T07:00:00Z");
    let stamp = desk.stamp("2026-03-02T07:30:00Z");
    let first = desk.ahead(&stamp, 30, false);
    assert!(!first.set.is_empty() && first.cancel.is_empty());
    assert_eq!(first.set, first.kept);
    // Cut short before it was remembered: all of it again.
    assert_eq!(desk.ahead(&stamp, 30, false), first);
    desk.app.handed_over(&first.kept).unwrap();
    let none = desk.ahead(&stamp, 30, false);
    assert!(none.set.is_empty() && none.cancel.is_empty());
    // A system that may have lost them gets all.
    assert_eq!(desk.ahead(&stamp, 30, true).set, first.kept);

    // Felt: the first is not wanted any more, and is taken back.
    desk.feel("2026-03-03T09:00:00Z", &tray, "moist");
    let stamp = desk.stamp("2026-03-03T09:10:00Z");
    let changed = desk.ahead(&stamp, 30, false);
    assert!(changed.cancel.contains(&first.kept[0].id));
    desk.app.handed_over(&changed.kept).unwrap();

    // What the system showed meanwhile is not wanted again, and goes: its round is on the screen.
    let shown = changed.kept[0].clone();
    let stamp = Stamp {
        now: shown.at + TimeDelta::minutes(5),
        ..desk.stamp("2026-03-03T09:10:00Z")
    };
    let after = desk.ahead(&stamp, 30, true);
    assert!(after.kept.iter().all(|notice| notice.key != shown.key));
    assert!(after.cancel.contains(&shown.id));

    // Refused, all that is to come is taken back.
    let refused = desk.ahead(&stamp, 0, false);
    assert!(refused.kept.is_empty() && refused.set.is_empty());
}

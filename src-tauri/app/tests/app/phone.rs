//! A phone that keeps notices and shows them by itself: 64 at most, over
//! restarts, in whatever zone it is. Against the round as the grower would see
//! it at each round time.

use crate::acts::place;
use crate::notices::open_tray;
use crate::request;
use chrono::{DateTime, Days, NaiveDate, NaiveTime, TimeDelta, Utc};
use chrono_tz::Tz;
use plumule_app::acts::Act;
use plumule_app::view::{Answer, RoundView};
use plumule_app::{App, Notice};
use plumule_journal::stamp::{Stamp, instant_of};
use std::collections::{BTreeMap, BTreeSet};
use tempfile::TempDir;

/// What iOS keeps (Apple, Local and Remote Notification Programming Guide).
const KEEPS: usize = 64;

/// What the app hands over at most there.
const MOST: usize = 60;

const GARDEN: Tz = chrono_tz::Europe::Berlin;
const TRAVELS: [Tz; 4] = [
    chrono_tz::Europe::Berlin,
    chrono_tz::America::New_York,
    chrono_tz::Pacific::Auckland,
    chrono_tz::Asia::Tokyo,
];

/// Chance from a seed (Marsaglia, Xorshift RNGs, 2003).
struct Dice(u64);

impl Dice {
    fn one_in(&mut self, sides: u64) -> bool {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0.is_multiple_of(sides)
    }
}

/// The operating system.
struct System {
    kept: BTreeMap<i32, Notice>,
    shown: Vec<(DateTime<Utc>, Notice)>,
    allowed: bool,
    on: bool,
    zone: Tz,
}

impl System {
    fn put(&mut self, notice: Notice) {
        if self.kept.len() < KEEPS || self.kept.contains_key(&notice.id) {
            self.kept.insert(notice.id, notice);
        }
    }

    /// The minute that is now: what is due is shown, unless it is quiet here.
    fn minute(&mut self, now: DateTime<Utc>) {
        let quiet = |notice: &Notice| notice.quiet.has(now.with_timezone(&self.zone).time());
        let due = self
            .kept
            .values()
            .filter(|notice| notice.at <= now && !quiet(notice));
        let due: Vec<i32> = due.map(|notice| notice.id).collect();
        for notice in due.iter().filter_map(|id| self.kept.remove(id)) {
            if self.allowed {
                self.shown.push((now, notice));
            }
        }
    }

    /// Of what was missed while it was off, the last.
    fn start(&mut self, now: DateTime<Utc>) {
        self.on = true;
        let missed = self.kept.values().filter(|notice| notice.at <= now);
        let last = missed
            .max_by_key(|notice| notice.at)
            .map(|notice| notice.id);
        self.kept
            .retain(|id, notice| notice.at > now || Some(*id) == last);
    }
}

struct Life {
    app: App,
    _home: TempDir,
    system: System,
    now: DateTime<Utc>,
    turn: u8,
    dice: Dice,
    /// Since the app was last open nothing stood in the way of notices.
    clear: bool,
    opened: DateTime<Utc>,
    trays: Vec<(String, String)>,
    /// Places whose trays are gone, and since when.
    dead: Vec<(String, DateTime<Utc>)>,
    /// Rounds at which something was due while notices were planned ahead.
    due: Vec<(NaiveDate, bool)>,
    /// Digests that waited for the end of quiet hours when the app was opened
    /// and showed the round itself.
    seen: BTreeSet<String>,
}

impl Life {
    fn new(seed: u64) -> Self {
        let home = TempDir::new().unwrap();
        let now: DateTime<Utc> = "2026-03-02T07:30:00Z".parse().unwrap();
        let stamp = Stamp {
            now,
            zone: GARDEN,
            entropy: [0; 16],
        };
        let mut app = App::open(home.path(), &stamp).unwrap();
        app.begin(&stamp).unwrap();
        let system = System {
            kept: BTreeMap::new(),
            shown: Vec::new(),
            allowed: true,
            on: true,
            zone: GARDEN,
        };
        let mut life = Self {
            app,
            _home: home,
            system,
            now,
            turn: 0,
            dice: Dice(seed),
            clear: true,
            opened: now,
            trays: Vec::new(),
            dead: Vec::new(),
            due: Vec::new(),
            seen: BTreeSet::new(),
        };
        for name in ["Bench A", "Bench B", "Bench C", "Bench D"] {
            let place = life.made(place(name, "windowsill", (15.0, 20.0), "bright"));
            let tray = life.made(Act::StartBatch {
                origin: "plugs".to_owned(),
                crop: "Moonflower".to_owned(),
                variety: String::new(),
                into: open_tray(&place),
                cells: vec![],
                number: 12,
            });
            life.trays.push((name.to_owned(), tray));
        }
        life.open(true);
        life
    }

    fn stamp(&mut self) -> Stamp {
        self.turn = self.turn.wrapping_add(1);
        Stamp {
            now: self.now,
            zone: self.system.zone,
            entropy: [self.turn; 16],
        }
    }

    fn made(&mut self, act: Act) -> String {
        let stamp = self.stamp();
        let request = plumule_app::acts::ActRequest {
            confirmed: true,
            ..request(act)
        };
        match self.app.act(&stamp, request).unwrap() {
            Answer::Written {
                packet,
                place,
                tray,
                ..
            } => packet.or(place).or(tray).unwrap_or_default(),
            Answer::AsksFirst { questions } => panic!("asks first: {questions:?}"),
        }
    }

    /// As the shell does: on start, on resume and after every change.
    fn open(&mut self, afresh: bool) {
        let stamp = self.stamp();
        let most = if self.system.allowed { MOST } else { 0 };
        let kept = self.system.kept.values().map(|notice| notice.key.clone());
        self.seen
            .extend(kept.filter(|key| begun(key).is_some_and(|at| at <= self.now)));
        let plan = self.app.notices(&stamp).unwrap();
        let ahead = self
            .app
            .notices_ahead(&stamp, plan.clone(), (most, afresh))
            .unwrap();
        for id in &ahead.cancel {
            self.system.kept.remove(id);
        }
        for notice in ahead.set {
            self.system.put(notice);
        }
        self.app.handed_over(&ahead.kept).unwrap();
        let again = self.app.notices_ahead(&stamp, plan, (most, false)).unwrap();
        assert!(
            again.set.is_empty() && again.cancel.is_empty(),
            "done twice it changes nothing"
        );
        assert_eq!(
            self.system.kept.len(),
            ahead.kept.len(),
            "nothing is dropped in silence"
        );
        self.opened = self.now;
        self.clear = self.system.allowed;
    }

    /// A day of a grower's life, hour by hour.
    fn day(&mut self, day: NaiveDate, away: bool) {
        for hour in 0..24 {
            let time = NaiveTime::from_hms_opt(hour, 0, 0).unwrap();
            let at = instant_of(day.and_time(time), GARDEN);
            while self.now < at {
                self.now += TimeDelta::minutes(10);
                if self.system.on {
                    self.system.minute(self.now);
                }
            }
            self.round(day, hour);
            if self.dice.one_in(200) {
                self.system.on = false;
                self.clear = false;
            } else if !self.system.on && self.dice.one_in(4) {
                let now = self.now;
                self.system.start(now);
            }
            if !away {
                self.hour();
            }
        }
    }

    fn hour(&mut self) {
        if self.dice.one_in(70) {
            self.system.zone = TRAVELS[(self.turn % 4) as usize];
        }
        if self.dice.one_in(400) {
            self.system.allowed = !self.system.allowed;
            self.clear = false;
        }
        if self.system.on && self.dice.one_in(16) {
            self.open(true);
            if self.dice.one_in(2) {
                let trays = self.trays.iter().map(|(_, tray)| tray.clone()).collect();
                let feel = Some("moist".to_owned());
                self.made(Act::Feel {
                    trays,
                    feel,
                    water: None,
                });
                self.open(false);
            }
            if self.trays.len() > 2 && self.dice.one_in(6) {
                let (place, tray) = self.trays.remove(0);
                self.made(Act::Empty { tray });
                self.dead.push((place, self.now));
                self.open(false);
            }
        }
    }

    /// At a round time: is anything due, as the grower would see it?
    fn round(&mut self, day: NaiveDate, hour: u32) {
        let evening = hour == 18;
        // The round times unless others are set.
        if !(evening || hour == 8) || !self.clear || self.now - self.opened > TimeDelta::days(14) {
            return;
        }
        // Just opened: then the round is on the screen.
        if self.opened >= self.now {
            return;
        }
        let stamp = self.stamp();
        let view = self.app.round(&stamp).unwrap();
        if evening == view.evening && has_jobs(&view, evening) {
            self.due.push((day, evening));
        }
    }
}

/// When the round of a digest begins, by its key and the usual round times.
fn begun(key: &str) -> Option<DateTime<Utc>> {
    let (day, half) = key.strip_prefix("digest/")?.split_once('/')?;
    let time = NaiveTime::from_hms_opt(if half == "evening" { 18 } else { 8 }, 0, 0)?;
    Some(instant_of(
        day.parse::<NaiveDate>().ok()?.and_time(time),
        GARDEN,
    ))
}

fn has_jobs(view: &RoundView, only_today: bool) -> bool {
    let cards = view.places.iter().flat_map(|place| &place.cards);
    let jobs = cards.flat_map(|card| &card.jobs);
    let of_places = view.places.iter().flat_map(|place| &place.jobs);
    jobs.chain(of_places).any(|job| job.today || !only_today)
}

#[test]
fn no_due_round_without_its_digest_none_twice_none_for_a_dead_tray() {
    let (mut due, mut dead) = (0, 0);
    for seed in 1..=2 {
        let mut life = Life::new(seed * 0x9e37_79b9);
        let first = life.now.date_naive();
        for days in 1..=45 {
            // The app is not opened for two weeks.
            let away = (18..32).contains(&days);
            life.day(first + Days::new(days), away);
        }
        let keys: BTreeSet<&str> = life
            .system
            .shown
            .iter()
            .map(|(_, it)| it.key.as_str())
            .collect();
        assert_eq!(
            keys.len(),
            life.system.shown.len(),
            "seed {seed}: one came twice"
        );
        for (day, evening) in &life.due {
            let key = format!(
                "digest/{day}/{}",
                if *evening { "evening" } else { "morning" }
            );
            let told = keys.contains(key.as_str()) || life.seen.contains(&key);
            assert!(told, "seed {seed}: {key} was due and did not come");
        }
        for (place, since) in &life.dead {
            let after = life.system.shown.iter().filter(|(at, _)| at > since);
            for (at, notice) in after {
                assert!(
                    !notice.body.contains(place),
                    "seed {seed}, {at}: {notice:?}"
                );
            }
        }
        due += life.due.len();
        dead += life.dead.len();
    }
    assert!(
        due > 10 && dead > 1,
        "{due} rounds due, {dead} places given up: too few to show it"
    );
}

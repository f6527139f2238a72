//! The app over a real journal in a folder of its own.
#![cfg(test)]

mod acts;
mod bench;
mod clock;
mod correcting;
mod demo;
#[path = "../clock/every_zone.rs"]
mod every_zone;
mod judgement;
mod keeping;
mod labels;
mod notices;
mod phone;
mod photos;
mod plans;
mod results;
mod said;
mod scenes;
mod search;
mod seed;
mod words;

use chrono::{DateTime, TimeDelta, Utc};
use plumule_app::App;
use plumule_app::acts::{Act, ActRequest};
use plumule_app::view::Answer;
use plumule_journal::stamp::Stamp;
use tempfile::TempDir;

/// A grower at the bench, with a clock that goes on by a minute an act.
pub(crate) struct Bench {
    home: TempDir,
    app: App,
    now: DateTime<Utc>,
    turn: u8,
}

pub(crate) fn stamp(now: DateTime<Utc>, turn: u8) -> Stamp {
    Stamp {
        now,
        zone: chrono_tz::Europe::London,
        entropy: [turn; 16],
    }
}

impl Bench {
    fn new() -> Self {
        let now = "2026-04-20T07:30:00Z".parse().unwrap();
        let home = TempDir::new().unwrap();
        let mut app = App::open(home.path(), &stamp(now, 0)).unwrap();
        app.begin(&stamp(now, 1)).unwrap();
        Self {
            home,
            app,
            now,
            turn: 1,
        }
    }

    fn stamp(&mut self) -> Stamp {
        self.turn += 1;
        self.now += TimeDelta::minutes(1);
        stamp(self.now, self.turn)
    }

    fn wait_days(&mut self, days: i64) {
        self.now += TimeDelta::days(days);
    }

    fn act(&mut self, act: Act) -> Result<Answer, plumule_app::AppError> {
        let stamp = self.stamp();
        self.app.act(&stamp, request(act))
    }

    /// An act that is written: its id, and the tray, packet or place it made.
    fn done(&mut self, act: Act) -> (String, String) {
        match self.act(act).unwrap() {
            Answer::Written {
                act,
                tray,
                packet,
                place,
                ..
            } => (act, packet.or(place).or(tray).unwrap_or_default()),
            Answer::AsksFirst { questions } => panic!("asks first: {questions:?}"),
        }
    }

    /// As after a restart.
    fn reopen(mut self) -> Self {
        let stamp = self.stamp();
        self.app = App::open(self.home.path(), &stamp).unwrap();
        self
    }
}

pub(crate) fn request(act: Act) -> ActRequest {
    ActRequest {
        act,
        happened: None,
        hand: String::new(),
        confirmed: false,
    }
}

//! What is due, as a calendar (RFC 5545): an event a job, at the round it is
//! for. The same need has the same UID in every export, so that a calendar
//! program replaces it. Times are UTC, so that no zone need be carried.

use crate::job_key;
use crate::jobs::{Job, Plan};
use crate::nagging;
use crate::picture::Picture;
use crate::rounds;
use crate::say::Say;
use crate::words::{Units, key, render};
use chrono::{DateTime, NaiveDateTime, TimeDelta, Utc};
use icalendar::{Calendar, Component, Event, EventLike};
use plumule_journal::stamp::{Happened, Stamp};

/// How far ahead, days (judgement: what is further off will change).
const AHEAD_DAYS: i64 = 28;
/// How long an event lasts, minutes (judgement).
const LASTS_MIN: i64 = 15;

pub(super) fn due(picture: &Picture, stamp: &Stamp, units: Units) -> Vec<u8> {
    let now = picture.now(stamp);
    let mut calendar = Calendar::empty();
    calendar
        .append_property(("VERSION", "2.0"))
        .append_property(("PRODID", "-//Plumule//Sowing journal//EN"))
        .name("Plumule");
    for job in Plan::of(picture, now).all() {
        let at = rounds::next_round(picture, job.due.max(now));
        if at > now + TimeDelta::days(AHEAD_DAYS) || !nagging::shown(picture, &job, at) {
            continue;
        }
        calendar.push(event(picture, &job, at, stamp, units));
    }
    calendar.to_string().into_bytes()
}

fn event(picture: &Picture, job: &Job, at: NaiveDateTime, stamp: &Stamp, units: Units) -> Event {
    let kind = render(&Say::new(key("job", &job.key.kind)), units, at.date());
    let tray = job.tray.and_then(|tray| picture.trays.get(&tray));
    let place = job.place.and_then(|place| picture.places.get(&place));
    let code = tray.map_or("", |tray| tray.described.code.as_str());
    let starts: DateTime<Utc> = Happened::at_local(at, picture.zone).instant();
    let mut event = Event::new();
    event
        .uid(&uid(&job_key::text(&job.key)))
        .timestamp(stamp.now)
        .summary(format!("{code} {}", capital(&kind)).trim())
        .description(&render(&job.why, units, at.date()))
        .starts(starts)
        .ends(starts + TimeDelta::minutes(LASTS_MIN));
    if let Some(place) = place {
        event.location(&place.described.name);
    }
    event.done()
}

/// A name for a need that holds over all exports: its key, as an address of
/// nobody's.
fn uid(key: &str) -> String {
    let plain = |it: char| {
        if it.is_ascii_alphanumeric() || it == '-' {
            it
        } else {
            '.'
        }
    };
    format!(
        "{}@plumule.invalid",
        key.chars().map(plain).collect::<String>()
    )
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(|first| first.to_uppercase().to_string());
    first.unwrap_or_default() + letters.as_str()
}

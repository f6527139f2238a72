//! What is to be written when, and its writing through the door.

use super::scenario::Where;
use crate::act::code_after;
use crate::error::AppError;
use crate::jobs::jobs;
use crate::picture::Picture;
use crate::words::{Language, plain_text};
use chrono::{DateTime, NaiveDate, NaiveDateTime, NaiveTime, TimeDelta, Utc};
use chrono_tz::Tz;
use plumule_journal::content::{Content, Felt, JobPutOff};
use plumule_journal::id::PlaceId;
use plumule_journal::stamp::{Happened, Stamp, instant_of};
use plumule_journal::words::{Feel, Watering};
use plumule_journal::{Ids, Journal, Wish};
use std::collections::BTreeMap;
use uuid::Uuid;

/// Hands of the invented helpers.
const HELPERS: [&str; 2] = ["JW", "BO"];

/// Acts by the time they are written.
pub(super) struct Diary {
    zone: Tz,
    language: Language,
    today: NaiveDate,
    acts: BTreeMap<(NaiveDateTime, &'static str), Vec<Content>>,
    ids: BTreeMap<String, Uuid>,
}

impl Diary {
    pub(super) fn new(stamp: &Stamp, language: Language) -> Self {
        Self {
            zone: stamp.zone,
            language,
            today: Happened::at(stamp.now, stamp.zone).local.date(),
            acts: BTreeMap::new(),
            ids: BTreeMap::new(),
        }
    }

    /// What stands under a key of the demo's own words.
    pub(super) fn word(&self, key: &str) -> String {
        plain_text(&format!("demo-{key}"), self.language)
    }

    pub(super) fn zone(&self) -> Tz {
        self.zone
    }

    pub(super) fn today(&self) -> NaiveDate {
        self.today
    }

    /// The id that goes by a name in the scenario.
    pub(super) fn id(&mut self, name: &str) -> Uuid {
        let stamp = stamp(
            instant_of(self.today.and_time(NaiveTime::MIN), self.zone),
            self.zone,
        );
        *self
            .ids
            .entry(name.to_owned())
            .or_insert_with(|| Ids::new(&stamp, name).next())
    }

    pub(super) fn place(&mut self, place: Where) -> PlaceId {
        PlaceId(self.id(&format!("place {place:?}")))
    }

    /// To be written on a day counted from today, with what else was done then.
    pub(super) fn say(&mut self, day: i64, (hour, minute): (u32, u32), content: Content) {
        let at = (self.today + TimeDelta::days(day))
            .and_time(NaiveTime::from_hms_opt(hour, minute, 0).unwrap_or_default());
        // Every ninth day a helper does the round.
        let hand = match day.rem_euclid(18) {
            4 => HELPERS[0],
            13 => HELPERS[1],
            _ => "",
        };
        self.acts.entry((at, hand)).or_default().push(content);
    }

    /// When the first act is written.
    pub(super) fn first(&self) -> NaiveDateTime {
        let first = self.acts.keys().next();
        first.map_or(self.today.and_time(NaiveTime::MIN), |(at, _)| *at)
    }

    pub(super) fn stamp(&self, at: NaiveDateTime) -> Stamp {
        stamp(instant_of(at, self.zone), self.zone)
    }

    /// Writes all of it at once, the earliest act first.
    pub(super) fn write(&mut self, journal: &mut Journal) -> Result<(), AppError> {
        let mut code = journal.next_code()?;
        let mut acts = Vec::new();
        for ((at, hand), mut contents) in std::mem::take(&mut self.acts) {
            for content in &mut contents {
                if let Content::TrayDescribed(tray) = content {
                    tray.code.clone_from(&code);
                    code = code_after(&code);
                }
            }
            acts.push((self.stamp(at), wish(hand, contents)));
        }
        journal.write_all(acts)?;
        Ok(())
    }

    /// Last evening's second thoughts: a tray that was dry after all, one that
    /// was never felt, and a job put off.
    pub(super) fn second_thoughts(&self, journal: &mut Journal) -> Result<(), AppError> {
        let evening = (self.today - TimeDelta::days(1))
            .and_time(NaiveTime::from_hms_opt(20, 0, 0).unwrap_or_default());
        let picture = Picture::of_the_living(journal, &self.stamp(evening))?;
        let mut moist = picture.trays.values().filter_map(|tray| {
            let last = tray.felt.last()?;
            let often = tray.felt.len() > 3 && last.feel == Some(Feel::Moist);
            often.then_some((tray.described.tray, last.at.entry))
        });
        if let Some((tray, root)) = moist.next() {
            let dry = Content::Felt(Felt {
                tray,
                feel: Some(Feel::Dry),
                water: Some(Watering::Rose),
            });
            journal.correct(&self.stamp(evening), root, dry, None, "", true)?;
        }
        let later = evening + TimeDelta::minutes(2);
        if let Some((_, root)) = moist.next() {
            journal.withdraw(&self.stamp(later), root, "", true)?;
        }
        let jobs = jobs(&picture, later);
        if let Some(job) = jobs.iter().find(|job| job.key.kind == "thin") {
            let put_off = JobPutOff {
                job: job.key.clone(),
                until: later + TimeDelta::days(3),
            };
            let at = later + TimeDelta::minutes(2);
            journal.write(&self.stamp(at), wish("", vec![Content::JobPutOff(put_off)]))?;
        }
        Ok(())
    }
}

/// The scenario means what it says: it is asked nothing.
fn wish(hand: &str, contents: Vec<Content>) -> Wish {
    Wish {
        contents,
        happened: None,
        hand: hand.to_owned(),
        confirmed: true,
    }
}

/// A stamp with chance that depends on the instant alone.
fn stamp(now: DateTime<Utc>, zone: Tz) -> Stamp {
    let mut entropy = *b"plumule demo 000";
    for (to, from) in entropy.iter_mut().zip(now.timestamp().to_le_bytes()) {
        *to ^= from;
    }
    Stamp { now, zone, entropy }
}

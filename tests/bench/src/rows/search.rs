//! Searching fifty years: against a scan with LIKE over the lines that hold the
//! same words.

use super::{Outcome, Row, paired, seconds};
use crate::world::{World, copy, now, stamp};
use chrono::{Days, TimeDelta};
use plumule_app::App;
use plumule_journal::content::{Content, Noted, PlanDescribed, Rhythm, ToBuy};
use plumule_journal::id::{ItemId, PlanId};
use plumule_journal::stamp::{Happened, Stamp};
use plumule_journal::subject::Subject;
use plumule_journal::words::Standing;
use plumule_journal::{Ids, Journal, Wish};
use rusqlite::{Connection, OpenFlags};
use std::cell::RefCell;
use std::path::Path;
use tempfile::TempDir;

const YEARS: u64 = 50;
/// Notes of a year.
const NOTES: u64 = 250;
/// Plans of a year, and things to buy.
const WANTED: u64 = 30;
/// What is looked for, and a word of it that LIKE looks for.
const SOUGHT: [(&str, &str); 10] = [
    ("tomato", "tomato"),
    ("t", "t"),
    ("trial 12", "trial 12"),
    ("B4321", "b4321"),
    ("leek south sill", "leek"),
    ("14 May", "-05-14T"),
    ("May 2019 lettuce", "lettuce"),
    ("cabbage leaning", "leaning"),
    ("leek sale 2019", "leek"),
    ("mill", "mill"),
];

/// A journal of many years with notes and plans, open to be searched.
pub(super) struct Searching {
    home: TempDir,
    entries: u64,
    app: App,
}

impl Searching {
    pub(super) fn of(worlds: &Path) -> Outcome<Self> {
        let home = tempfile::tempdir()?;
        copy(&World::of(YEARS, 200).kept_in(worlds)?, home.path())?;
        let entries = note(home.path())?;
        let app = App::open(home.path(), &stamp(1))?;
        Ok(Self { home, entries, app })
    }

    /// The seconds of each search.
    pub(super) fn all(&self) -> Outcome<Vec<f64>> {
        let each = |(typed, _): &(&str, _)| seconds(|| Ok(self.app.search(&stamp(2), typed)?));
        SOUGHT.iter().map(each).collect()
    }
}

pub fn rows(runs: usize, worlds: &Path) -> Outcome<Vec<Row>> {
    let searching = Searching::of(worlds)?;
    let db = Connection::open_with_flags(
        searching.home.path().join("journal/journal.db"),
        OpenFlags::SQLITE_OPEN_READ_ONLY,
    )?;
    // As much in mind as the app has.
    db.pragma_update(None, "cache_size", -65_536)?;
    let slowest = RefCell::new(Vec::new());
    let ratios = paired(
        runs,
        || {
            let all = searching.all()?;
            let most = all.iter().fold(0.0, |most: f64, it| most.max(*it));
            slowest.borrow_mut().push(most * 1_000.0);
            Ok(all.iter().sum())
        },
        || {
            let mut query = db.prepare(
                "SELECT nr FROM entries WHERE kind IN ('packet_described', 'place_described',
                   'tray_described', 'sown', 'batch_started', 'noted', 'explained', 'plan_described', 'to_buy')
                 AND line LIKE '%' || ?1 || '%' ORDER BY nr DESC LIMIT 50",
            )?;
            let mut sum = 0.0;
            for (_, word) in SOUGHT {
                sum += seconds(|| {
                    let rows = query.query_map([word], |row| row.get::<_, i64>(0))?;
                    Ok(rows.collect::<Result<Vec<_>, _>>()?)
                })?;
            }
            Ok(sum)
        },
    )?;
    let note = format!(
        "{} searches of {} entries, {NOTES} notes and {WANTED} plans a year",
        SOUGHT.len(),
        searching.entries
    );
    // The first run only warmed up.
    let slowest = slowest.into_inner().split_off(1);
    Ok(vec![
        Row {
            name: "searches of 50 years against LIKE over the same lines",
            ratios,
            note: note.clone(),
        },
        Row {
            name: "the slowest search of 50 years, ms",
            ratios: slowest,
            note,
        },
    ])
}

/// Writes the notes of all the years; how many entries there are then.
fn note(home: &Path) -> Outcome<u64> {
    let mut journal = Journal::open(home, &stamp(1))?;
    let trays = journal.past_trays(usize::MAX)?;
    let zone = stamp(1).zone;
    let acts = (0..YEARS * NOTES).map(|number| {
        let tray = &trays[number as usize % trays.len()].described;
        let text = format!(
            "Note {number}: the seedlings in {} are leaning to the glass, so it was turned; the compost smells of {}.",
            tray.code,
            ["rain", "moss", "nothing", "the shed"][number as usize % 4]
        );
        let at = now() - Days::new(number * 365 / NOTES) - TimeDelta::minutes(number as i64 % 60);
        let wish = Wish {
            contents: vec![Content::Noted(Noted {
                about: Subject::Tray(tray.tray),
                text,
            })],
            happened: Some(Happened::at(at, zone)),
            hand: String::new(),
            confirmed: true,
        };
        let stamp = Stamp {
            now: now(),
            ..stamp(1_000_000 + number)
        };
        (stamp, wish)
    });
    journal.write_all(acts)?;
    want(&mut journal)?;
    Ok(journal.count()?)
}

/// Writes plans and things to buy of all the years; the last year's stand.
fn want(journal: &mut Journal) -> Outcome<()> {
    let zone = stamp(1).zone;
    let acts = (0..YEARS * WANTED).map(|number| {
        let stamp = Stamp {
            now: now(),
            ..stamp(2_000_000 + number)
        };
        let at = now() - Days::new(number * 365 / WANTED);
        let happened = Happened::at(at, zone);
        let mut ids = Ids::new(&stamp, "bench");
        let crop = ["leek", "tomato", "lettuce"][number as usize % 3].to_owned();
        let variety = format!("Trial {number}");
        let past = number >= WANTED;
        let plan = PlanDescribed {
            plan: PlanId(ids.next()),
            crop: crop.clone(),
            variety: variety.clone(),
            packet: None,
            wanted: 40,
            rhythm: Rhythm::Sale {
                day: happened.local.date() + Days::new(60),
                over_percent: 15,
            },
            raise_weeks: Some(8),
            ended: past,
        };
        let item = ToBuy {
            item: ItemId(ids.next()),
            crop,
            variety,
            note: "two packets, from the mill shop".to_owned(),
            standing: if past {
                Standing::Bought
            } else {
                Standing::Wanted
            },
        };
        let wish = Wish {
            contents: vec![Content::PlanDescribed(plan), Content::ToBuy(item)],
            happened: Some(happened),
            hand: String::new(),
            confirmed: true,
        };
        (stamp, wish)
    });
    journal.write_all(acts)?;
    Ok(())
}

//! A packet's own page.

use super::{crop_keys, row};
use crate::error::AppError;
use crate::growth::Learnt;
use crate::jobs;
use crate::names::Names;
use crate::packet_words;
use crate::picture::Picture;
use crate::round::job_view;
use crate::say::{Arg, Say};
use crate::season::season_view;
use crate::stage::reference;
use crate::timeline;
use crate::view::{PacketSowing, PacketView, SproutedView, TestView};
use crate::words;
use plumule_agronomy::{crops, interval};
use plumule_journal::Journal;
use plumule_journal::content::Seeds;
use plumule_journal::id::PacketId;
use plumule_journal::stamp::Stamp;
use plumule_journal::state::{PacketState, TestState};
use plumule_journal::subject::{Plants, Subject};

/// The confidence of the interval that is shown.
const LEVEL: f64 = 0.95;

/// The most sowings that are listed.
const SOWINGS: usize = 200;

pub(crate) fn view(journal: &Journal, stamp: &Stamp, id: &str) -> Result<PacketView, AppError> {
    let wrong = || AppError::bad_request(id);
    let packet: PacketId = id.parse().map_err(|_| wrong())?;
    let packet = journal.packet(packet)?.ok_or_else(wrong)?;
    let mut picture = Picture::of_packets(journal, stamp, std::slice::from_ref(&packet))?;
    let now = picture.now(stamp);
    let mut tests = Vec::new();
    for test in &packet.tests {
        tests.extend(journal.test(test.test)?);
    }
    picture.tests = tests
        .iter()
        .filter(|test| test.closed.is_none())
        .cloned()
        .collect();
    let mut subjects = vec![Subject::Packet(packet.described.packet)];
    subjects.extend(tests.iter().map(|test| Subject::Test(test.test)));
    let learnt = Learnt::of(&picture, &packet);
    let today = now.date();
    let jobs = jobs::due(&picture, now);
    Ok(PacketView {
        row: row(&picture, &packet, today),
        outlook: packet_words::outlook(&packet, &learnt, today),
        own: packet_words::own(&learnt),
        stated: packet_words::stated(&packet.described),
        season: crops()
            .get(&packet.described.crop)
            .and_then(|crop| season_view(&picture, crop, today)),
        tested: tested(&tests),
        cautions: packet_words::cautions_of(&packet.described),
        saving: saving(journal, &packet)?,
        described: packet_words::form(&packet.described),
        sowings: sowings(journal, &packet)?,
        tests: tests
            .iter()
            .rev()
            .map(|test| test_view(&packet, test))
            .collect(),
        jobs: jobs
            .iter()
            .filter(|job| matches!(job.key.subject, Subject::Test(_)))
            .map(job_view)
            .collect(),
        timeline: timeline::of(journal, &subjects)?,
        crops: crop_keys(),
    })
}

fn sowings(journal: &Journal, packet: &PacketState) -> Result<Vec<PacketSowing>, AppError> {
    let mut found = Vec::new();
    for id in packet.sowings.iter().rev().take(SOWINGS) {
        let Some(sowing) = journal.sowing(*id)? else {
            continue;
        };
        let tray = journal.tray(sowing.sown.tray)?;
        found.push(PacketSowing {
            plants: reference(Plants::Sowing(*id)),
            tray: sowing.sown.tray.to_string(),
            code: tray.map_or_else(|| "?".to_owned(), |tray| tray.described.code),
            sown: sowing.opened_by.at.local.date(),
            seeds: match sowing.sown.seeds {
                Seeds::Exact(number) | Seeds::About(number) => Some(number),
                Seeds::Pinch => None,
            },
            up: sowing.plants.numbers.up,
            living: sowing.plants.ended.is_none(),
        });
    }
    Ok(found)
}

fn test_view(packet: &PacketState, test: &TestState) -> TestView {
    let started = test.opened_by.at.local.date();
    TestView {
        test: test.test.to_string(),
        started,
        seeds: test.seeds,
        sprouted: test
            .closed
            .as_ref()
            .or(test.counts.last())
            .map_or(0, |count| count.sprouted),
        counts: test
            .counts
            .iter()
            .chain(&test.closed)
            .map(|count| SproutedView {
                on: count.at.at.local.date(),
                sprouted: count.sprouted,
            })
            .collect(),
        looks: jobs::test_looks(&packet.described.crop, started),
        closed: test.closed.is_some(),
        says: says(test),
    }
}

/// How many sprouted; once it is closed also between which shares the truth
/// lies, by Clopper and Pearson.
fn says(test: &TestState) -> Say {
    let number = |number: u32| Arg::Number(f64::from(number));
    let with = |say: Say, sprouted| {
        say.with("sprouted", number(sprouted))
            .with("seeds", number(test.seeds))
    };
    let Some(closed) = &test.closed else {
        return match test.counts.last() {
            Some(count) => with(Say::new("test-so-far"), count.sprouted)
                .with("day", Arg::Day(count.at.at.local.date())),
            None => with(Say::new("test-not-counted"), 0),
        };
    };
    match interval(closed.sprouted, test.seeds, LEVEL) {
        Ok((low, high)) => with(Say::new("test-closed-at"), closed.sprouted)
            .with("low", Arg::Share(low))
            .with("high", Arg::Share(high)),
        Err(_) => with(Say::new("test-not-counted"), closed.sprouted),
    }
}

/// What the last closed one said.
fn tested(tests: &[TestState]) -> Option<Say> {
    let last = tests.iter().filter_map(|test| {
        let closed = test.closed.as_ref()?;
        Some((closed, test.seeds))
    });
    let (closed, seeds) = last.max_by_key(|(closed, _)| closed.at.at.instant())?;
    Some(
        Say::new("outlook-tested")
            .with("sprouted", Arg::Number(f64::from(closed.sprouted)))
            .with("seeds", Arg::Number(f64::from(seeds)))
            .with("day", Arg::Day(closed.at.at.local.date())),
    )
}

/// Of which plants it was saved; and that a first cross does not come true.
fn saving(journal: &Journal, packet: &PacketState) -> Result<Vec<Say>, AppError> {
    let mut says = Vec::new();
    if let Some(plants) = packet.described.saved_from {
        let names = Names(journal);
        let name = names.plants(plants)?;
        let tray = match name.tray {
            Some(tray) => names.tray(tray)?,
            None => Arg::Text("?".to_owned()),
        };
        says.push(
            Say::new("saved-from")
                .with("crop", words::crop(&name.crop))
                .with("variety", words::variety(&name.variety))
                .with("tray", tray),
        );
    }
    if packet.described.f1 {
        says.push(Say::new("saving-not-f1"));
    }
    Ok(says)
}

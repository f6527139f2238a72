//! What the journal says of backups and archives, as the screens show it.

use crate::view::{BackupView, BringsView, InsideView, KindNumber, RecoveryView};
use chrono::{DateTime, NaiveDateTime, Utc};
use chrono_tz::Tz;
use plumule_journal::Recovery;
use plumule_journal::archive::{Conflict, Inside, Preview, TakenIn};
use plumule_journal::backup::{Backup, Contents};
use plumule_journal::finding::Step;

/// Kinds told by name; the others are in the sum (judgement: more is noise).
const KINDS: usize = 6;

pub(super) fn number(number: impl TryInto<u32>) -> u32 {
    number.try_into().unwrap_or(u32::MAX)
}

fn local(at: DateTime<Utc>, zone: Tz) -> NaiveDateTime {
    at.with_timezone(&zone).naive_local()
}

pub(super) fn step(step: Step) -> &'static str {
    match step {
        Step::File => "file",
        Step::Entries => "entries",
        Step::Projections => "projections",
        Step::Photos => "photos",
        Step::Copy => "copy",
        Step::Salvage => "salvage",
        Step::Verify => "verify",
    }
}

pub(super) fn backup_view(backup: &Backup, zone: Tz) -> BackupView {
    BackupView {
        name: backup.name.clone(),
        at: local(backup.at, zone),
    }
}

pub(super) fn inside(contents: &Contents) -> InsideView {
    InsideView {
        entries: number(contents.entries),
        first: contents.days.map(|(first, _)| first),
        last: contents.days.map(|(_, last)| last),
        photos: number(contents.photos.len()),
        photos_found: number(contents.photos_found),
        written: None,
        sealed: false,
    }
}

pub(super) fn of_archive(found: &Inside, zone: Tz) -> InsideView {
    InsideView {
        written: Some(local(found.written, zone)),
        sealed: found.sealed,
        ..inside(&found.contents)
    }
}

pub(super) fn brings(found: &Preview, zone: Tz) -> BringsView {
    let mut kinds: Vec<KindNumber> = found
        .new
        .iter()
        .map(|(kind, of)| KindNumber {
            kind: kind.clone(),
            number: number(*of),
        })
        .collect();
    kinds.sort_by(|a, b| (b.number, &a.kind).cmp(&(a.number, &b.kind)));
    kinds.truncate(KINDS);
    BringsView {
        inside: of_archive(&found.inside, zone),
        new: number(found.new.values().sum::<u64>()),
        kinds,
        known: number(found.known),
        photos_new: number(found.photos_new),
        photos_missing: 0,
        unknown_kinds: 0,
        ..both_sides(&found.inside, &found.conflicts, zone)
    }
}

pub(super) fn taken_in(done: &TakenIn, zone: Tz) -> BringsView {
    BringsView {
        new: number(done.report.new),
        known: number(done.report.known),
        photos_new: number(done.photos_new),
        photos_missing: number(done.photos_missing),
        unknown_kinds: number(done.report.unknown_kinds),
        ..both_sides(&done.inside, &done.conflicts, zone)
    }
}

fn both_sides(found: &Inside, conflicts: &[Conflict], zone: Tz) -> BringsView {
    let theirs = conflicts.iter().filter(|it| it.theirs_holds).count();
    BringsView {
        inside: of_archive(found, zone),
        new: 0,
        kinds: Vec::new(),
        known: 0,
        photos_new: 0,
        photos_missing: 0,
        conflicts: number(conflicts.len()),
        theirs_hold: number(theirs),
        unknown_kinds: 0,
    }
}

pub(super) fn recovery(done: &Recovery, zone: Tz) -> RecoveryView {
    let lost = done.missing.iter().map(|gap| gap.last - gap.first + 1);
    RecoveryView {
        backup: done.backup.as_ref().map(|name| BackupView {
            name: name.clone(),
            at: Backup::made_at(name).map_or(NaiveDateTime::default(), |at| local(at, zone)),
        }),
        in_backup: number(done.in_backup),
        salvaged: number(done.salvaged),
        altered: number(done.altered),
        missing: number(lost.sum::<i64>()),
        entries: number(done.entries),
        device_made_anew: done.device_made_anew,
    }
}

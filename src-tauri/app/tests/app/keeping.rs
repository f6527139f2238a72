//! Backups, archives, recovery and exports, as the shell asks for them.

use crate::acts::sown;
use crate::{said, stamp};
use chrono::{DateTime, TimeDelta, Utc};
use plumule_app::acts::Act;
use plumule_app::keep::{Needs, backup_if_due, backups, work};
use plumule_app::view::{Outcome, Task};
use plumule_app::{App, AppError};
use plumule_journal::stamp::Stamp;
use std::fs;
use std::path::Path;

fn later(now: DateTime<Utc>, minutes: i64) -> Stamp {
    let turn = u8::try_from(minutes % 100 + 100).unwrap();
    stamp(now + TimeDelta::minutes(minutes), turn)
}

fn done(home: &Path, stamp: &Stamp, task: Task, file: Option<&Path>) -> Result<Outcome, AppError> {
    work(home, stamp, &task, file, &mut |_| true)
}

#[test]
fn backups_come_after_changes_and_at_most_one_an_hour() {
    let mut this = sown();
    let home = this.bench.home.path().to_owned();
    let now = this.bench.now;
    assert!(backup_if_due(&home, &later(now, 1)).unwrap());
    assert!(
        !backup_if_due(&home, &later(now, 90)).unwrap(),
        "nothing new"
    );
    let note = Act::Note {
        about: format!("tray:{}", this.page().tray),
        text: "drips".to_owned(),
    };
    this.bench.done(note);
    assert!(
        !backup_if_due(&home, &later(now, 30)).unwrap(),
        "within the hour"
    );
    let keep = this.bench.app.keep(&later(now, 31), false, None).unwrap();
    assert!(!keep.current);
    assert!(backup_if_due(&home, &later(now, 95)).unwrap());
    let keep = this.bench.app.keep(&later(now, 96), false, None).unwrap();
    assert!(keep.current && keep.backups.len() == 2);
}

#[test]
fn a_journal_goes_to_another_home_by_a_file_and_back_by_a_merge() {
    let mut this = sown();
    let home = this.bench.home.path().to_owned();
    let now = this.bench.now;
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("all.age");
    let passphrase = Some("three wet leaves".to_owned());
    let save = Task::SaveArchive {
        passphrase: passphrase.clone(),
    };
    let Outcome::Saved { inside, left_out } =
        done(&home, &later(now, 1), save, Some(&file)).unwrap()
    else {
        panic!("not saved");
    };
    assert!(inside.sealed && left_out == 0);

    // Another device, with nothing on it.
    let other = tempfile::tempdir().unwrap();
    let look = |passphrase| Task::LookInsideArchive { passphrase };
    let stamp = later(now, 2);
    let error = done(other.path(), &stamp, look(None), Some(&file)).unwrap_err();
    assert_eq!(error.code, "passphrase_wanted");
    let wrong = look(Some("three dry leaves".to_owned()));
    let error = done(other.path(), &stamp, wrong, Some(&file)).unwrap_err();
    assert_eq!(error.code, "passphrase_wrong");
    said::one(&error.say);
    let restore = Task::RestoreArchive {
        passphrase: passphrase.clone(),
    };
    assert_eq!(restore.needs(), Needs::Closed);
    let came = done(other.path(), &stamp, restore, Some(&file)).unwrap();
    assert!(
        matches!(
            came,
            Outcome::Restored {
                set_aside: false,
                ..
            }
        ),
        "{came:?}"
    );
    let mut there = App::open(other.path(), &later(now, 3)).unwrap();
    let tray = this.page().tray;
    let page = there.tray(&later(now, 3), &tray).unwrap();
    assert_eq!(page.plants, this.page().plants);

    // Written there, and brought back.
    let note = Act::Note {
        about: format!("tray:{tray}"),
        text: "written on the other".to_owned(),
    };
    there.act(&later(now, 4), crate::request(note)).unwrap();
    drop(there);
    let back = folder.path().join("back.zip");
    let save = Task::SaveArchive { passphrase: None };
    done(other.path(), &later(now, 5), save, Some(&back)).unwrap();
    let preview = Task::PreviewArchive { passphrase: None };
    let Outcome::Preview(brings) = done(&home, &later(now, 6), preview, Some(&back)).unwrap()
    else {
        panic!("no preview");
    };
    assert_eq!((brings.new, brings.kinds[0].kind.as_str()), (1, "noted"));
    let take_in = |this: &mut crate::acts::Sown, minutes| {
        let took = this
            .bench
            .app
            .take_in(&later(now, minutes), &back, None, &mut |_| true);
        match took.unwrap() {
            Outcome::TakenIn(brings) => brings.new,
            other => panic!("{other:?}"),
        }
    };
    assert_eq!(take_in(&mut this, 7), 1);
    assert_eq!(
        take_in(&mut this, 8),
        0,
        "the same file twice changes nothing"
    );
    let lines = said::all(&this.page().timeline);
    assert!(lines.iter().any(|it| it.contains("written on the other")));
    assert!(
        !backups(&home, &later(now, 9)).unwrap().is_empty(),
        "a backup before"
    );
}

#[test]
fn a_damaged_journal_is_looked_over_and_brought_back() {
    let this = sown();
    let home = this.bench.home.path().to_owned();
    let now = this.bench.now;
    done(&home, &later(now, 1), Task::Backup, None).unwrap();
    let folder = this.bench.home;
    drop(this.bench.app);
    let database = home.join("journal/journal.db");
    fs::write(&database, b"no database at all").unwrap();
    let error = App::open(&home, &later(now, 2)).unwrap_err();
    assert_eq!(error.code, "journal_damaged");
    said::one(&error.say);
    let Outcome::LookedOver(found) = done(&home, &later(now, 3), Task::LookOver, None).unwrap()
    else {
        panic!("not looked over");
    };
    assert!(found.backup.is_some() && found.entries > 0 && found.salvaged == 0);
    assert_eq!(fs::read(&database).unwrap(), b"no database at all");
    let Outcome::Recovered(back) = done(&home, &later(now, 4), Task::Recover, None).unwrap() else {
        panic!("not recovered");
    };
    assert_eq!(back, found);
    let app = App::open(&home, &later(now, 5)).unwrap();
    let Outcome::Checked { findings, .. } = done(&home, &later(now, 5), Task::Check, None).unwrap()
    else {
        panic!("not checked");
    };
    assert_eq!(findings, []);
    drop((app, folder));
}

#[test]
fn work_that_is_called_off_changes_nothing() {
    let this = sown();
    let home = this.bench.home.path();
    let now = this.bench.now;
    for task in [Task::Backup, Task::Check, Task::LookOver] {
        let error = work(home, &later(now, 1), &task, None, &mut |_| false).unwrap_err();
        assert_eq!(error.code, "cancelled", "{task:?}");
    }
    assert_eq!(backups(home, &later(now, 2)).unwrap(), []);
    let error = done(
        home,
        &later(now, 3),
        Task::LookInsideArchive { passphrase: None },
        None,
    );
    assert_eq!(error.unwrap_err().code, "no_file_chosen");
}

#[test]
fn two_devices_share_a_folder() {
    let mut this = sown();
    let now = this.bench.now;
    let folder = tempfile::tempdir().unwrap();
    let other = tempfile::tempdir().unwrap();
    let mut there = App::open(other.path(), &later(now, 1)).unwrap();
    let error = there.share(&later(now, 1), &mut |_| true).unwrap_err();
    assert_eq!(error.code, "no_folder");
    said::one(&error.say);
    this.bench.app.share_in(Some(folder.path())).unwrap();
    there.share_in(Some(folder.path())).unwrap();
    let wrote = this.bench.app.share(&later(now, 2), &mut |_| true).unwrap();
    let Outcome::Shared {
        devices: 0,
        new: 0,
        written,
        ..
    } = wrote
    else {
        panic!("{wrote:?}");
    };
    let read = there.share(&later(now, 3), &mut |_| true).unwrap();
    let Outcome::Shared {
        devices: 1, new, ..
    } = read
    else {
        panic!("{read:?}");
    };
    assert_eq!(new, written);
    let tray = this.page().tray;
    let page = there.tray(&later(now, 4), &tray).unwrap();
    assert_eq!(page.plants, this.page().plants);
    there.share_in(None).unwrap();
    assert_eq!(there.shared_folder().unwrap(), None);
    let file = other.path().join("device.db");
    assert_eq!(there.share_in(Some(&file)).unwrap_err().code, "no_folder");
}

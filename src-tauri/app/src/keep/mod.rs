//! Backups, archives, checks and recoveries, as the shell runs them on a
//! thread of its own.
//!
//! What only reads opens the home a second time, so that an answer at the
//! bench never waits for it.

mod sharing;
mod told;

use crate::App;
use crate::error::{AppError, coded};
use crate::view::{BackupView, Coded, KeepView, Outcome, Task, WorkView};
use plumule_journal::archive;
use plumule_journal::finding::Watch;
use plumule_journal::stamp::Stamp;
use plumule_journal::{Finding, Journal, Progress, backup, look_over, recover};
use std::path::Path;
use told::{backup_view, brings, inside, number, recovery, step, taken_in};

/// Which journal a task needs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Needs {
    /// A look at it, open or not.
    Look,
    /// The open one.
    Open,
    /// None may be open: another takes its place.
    Closed,
}

impl Task {
    /// Which journal it needs.
    #[must_use]
    pub fn needs(&self) -> Needs {
        match self {
            Task::TakeInArchive { .. } | Task::Share => Needs::Open,
            Task::Restore { .. } | Task::RestoreArchive { .. } | Task::Recover => Needs::Closed,
            _ => Needs::Look,
        }
    }

    /// It is about the file that was chosen.
    #[must_use]
    pub fn of_a_file(&self) -> bool {
        matches!(
            self,
            Task::LookInsideArchive { .. }
                | Task::RestoreArchive { .. }
                | Task::PreviewArchive { .. }
                | Task::TakeInArchive { .. }
        )
    }
}

impl WorkView {
    /// As it goes on.
    pub fn at(&mut self, progress: Progress) {
        step(progress.step).clone_into(&mut self.step);
        let share = progress.done as f64 / progress.of as f64;
        self.share = (progress.of > 0).then(|| share.clamp(0.0, 1.0));
    }
}

/// Does work that looks at a home or puts another journal in its place. `file`
/// is the archive it reads or writes.
///
/// # Errors
/// As the journal says; what was there is as it was then.
pub fn work(
    home: &Path,
    stamp: &Stamp,
    task: &Task,
    file: Option<&Path>,
    watch: &mut Watch,
) -> Result<Outcome, AppError> {
    let file = || file.ok_or_else(|| AppError::plain("no_file_chosen"));
    let zone = stamp.zone;
    Ok(match task {
        Task::Backup => {
            let journal = Journal::open(home, stamp)?;
            let made = backup::make(&journal, stamp, watch)?;
            Outcome::Backup(backup_view(&made, zone))
        }
        Task::Check => {
            let found = Journal::open(home, stamp)?.check(watch);
            if found.cancelled {
                return Err(plumule_journal::Error::Cancelled.into());
            }
            Outcome::Checked {
                entries: number(found.entries),
                photos: number(found.photos),
                findings: found.found.iter().map(finding).collect(),
            }
        }
        Task::LookInside { backup: name } => {
            let chosen = backup::list(home)?.into_iter().find(|it| it.name == *name);
            let chosen = chosen.ok_or(plumule_journal::Error::NoBackup)?;
            Outcome::Inside(inside(&backup::look_inside(home, &chosen, watch)?))
        }
        Task::Restore { backup: name } => {
            let done = backup::restore(home, stamp, name, watch)?;
            Outcome::Restored {
                inside: inside(&done.contents),
                set_aside: done.set_aside.is_some(),
            }
        }
        Task::SaveArchive { passphrase } => {
            let journal = Journal::open(home, stamp)?;
            let saved = archive::write(&journal, stamp, file()?, passphrase.as_deref(), watch)?;
            Outcome::Saved {
                inside: told::of_archive(&saved.inside, zone),
                left_out: number(saved.left_out),
            }
        }
        Task::LookInsideArchive { passphrase } => {
            let found = archive::look_inside(file()?, passphrase.as_deref(), watch)?;
            Outcome::Inside(told::of_archive(&found, zone))
        }
        Task::RestoreArchive { passphrase } => {
            let done = archive::restore(home, stamp, file()?, passphrase.as_deref(), watch)?;
            Outcome::Restored {
                inside: inside(&done.contents),
                set_aside: done.set_aside.is_some(),
            }
        }
        Task::PreviewArchive { passphrase } => {
            let journal = Journal::open(home, stamp)?;
            let found = archive::preview(&journal, file()?, passphrase.as_deref(), watch)?;
            Outcome::Preview(brings(&found, zone))
        }
        Task::LookOver => Outcome::LookedOver(recovery(&look_over(home, watch)?, zone)),
        Task::Recover => Outcome::Recovered(recovery(&recover(home, stamp, watch)?, zone)),
        Task::TakeInArchive { .. } | Task::Share => return Err(AppError::plain("unexpected")),
    })
}

/// Makes a backup if one is due: something changed, and the last is an hour
/// old.
///
/// # Errors
/// If the journal cannot be read or the backup not be made.
pub fn backup_if_due(home: &Path, stamp: &Stamp) -> Result<bool, AppError> {
    let journal = Journal::open(home, stamp)?;
    let due = backup::due(&journal, stamp.now)?;
    if due {
        backup::make(&journal, stamp, &mut |_| true)?;
    }
    Ok(due)
}

/// The backups of a home, the newest first, in the time of the device; also
/// of a damaged one.
///
/// # Errors
/// If the folder cannot be read.
pub fn backups(home: &Path, stamp: &Stamp) -> Result<Vec<BackupView>, AppError> {
    let all = backup::list(home)?;
    Ok(all.iter().map(|it| backup_view(it, stamp.zone)).collect())
}

impl App {
    /// The screen of backups. `trouble`: why the last one failed.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn keep(
        &self,
        stamp: &Stamp,
        demo: bool,
        trouble: Option<&AppError>,
    ) -> Result<KeepView, AppError> {
        Ok(KeepView {
            demo,
            backups: backups(self.journal.home(), stamp)?,
            current: backup::is_current(&self.journal)?,
            folder: self.shared_folder()?,
            trouble: trouble.map(|error| Coded {
                code: error.code.clone(),
                say: error.say.clone(),
            }),
        })
    }

    /// Takes in another device's archive, after a backup.
    ///
    /// # Errors
    /// If it is no archive, is damaged or newer, or the passphrase is not its
    /// own; no entry was taken in then.
    pub fn take_in(
        &mut self,
        stamp: &Stamp,
        file: &Path,
        passphrase: Option<&str>,
        watch: &mut Watch,
    ) -> Result<Outcome, AppError> {
        let done = archive::take_in(&mut self.journal, stamp, file, passphrase, watch)?;
        Ok(Outcome::TakenIn(taken_in(&done, stamp.zone)))
    }
}

fn finding(finding: &Finding) -> Coded {
    Coded {
        code: finding.code.to_owned(),
        say: coded("finding", finding.code, &finding.args),
    }
}

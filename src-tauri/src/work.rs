//! Long work: one at a time, on a thread of its own, told how far it is and
//! called off by the window.

use crate::notify::{DUE_CHANGED, Timer};
use crate::shell::{Shell, error, stamp};
use crate::{clock, files};
use plumule_app::AppError;
use plumule_app::keep::{self, Needs};
use plumule_app::view::{Outcome, Task, WorkView};
use plumule_journal::Progress;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::thread;
use tauri::{AppHandle, Emitter, Manager, Runtime};

/// The work that is under way, and what came of the last.
#[derive(Default)]
pub struct Work {
    slot: Mutex<Slot>,
    /// The file that the grower chose.
    file: Mutex<Option<PathBuf>>,
    /// Held while files of a journal are read or put in place.
    files: Mutex<()>,
}

#[derive(Default)]
struct Slot {
    view: WorkView,
    called_off: bool,
}

impl Work {
    /// How far it is.
    pub fn view(&self) -> WorkView {
        held(&self.slot).view.clone()
    }

    /// Calls it off; it ends at the next step.
    pub fn call_off(&self) {
        held(&self.slot).called_off = true;
    }

    /// The file that what follows is about.
    pub fn choose(&self, file: Option<PathBuf>) {
        *held(&self.file) = file;
    }

    /// Keeps other work from a journal's files.
    pub fn files(&self) -> MutexGuard<'_, ()> {
        held(&self.files)
    }

    fn begin(&self) -> Result<(), AppError> {
        let mut slot = held(&self.slot);
        if slot.view.running {
            return Err(error("work_busy"));
        }
        slot.called_off = false;
        slot.view = WorkView {
            number: slot.view.number + 1,
            running: true,
            ..WorkView::default()
        };
        Ok(())
    }

    /// False once it is called off.
    fn told(&self, progress: Progress) -> bool {
        let mut slot = held(&self.slot);
        slot.view.at(progress);
        !slot.called_off
    }

    fn ended(&self, came: Result<Outcome, AppError>) {
        let view = &mut held(&self.slot).view;
        view.running = false;
        match came {
            Ok(outcome) => view.outcome = Some(outcome),
            Err(error) => view.error = Some(error),
        }
    }
}

/// A panic left nothing half-said: what is in it is replaced whole.
fn held<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Begins work; the window asks how far it is.
///
/// # Errors
/// `work_busy` while other work is under way.
pub fn begin<R: Runtime>(app: AppHandle<R>, task: Task) -> Result<(), AppError> {
    app.state::<Work>().begin()?;
    thread::spawn(move || {
        let done = std::panic::catch_unwind(std::panic::AssertUnwindSafe(|| run(&app, &task)));
        let came = done.unwrap_or_else(|_| Err(error("unexpected")));
        app.state::<Work>().ended(came);
        if task.needs() != Needs::Look {
            app.state::<Timer>().poke();
            // Without a window there is nobody to tell.
            let _ = app.emit(DUE_CHANGED, ());
        }
    });
    Ok(())
}

fn run<R: Runtime>(app: &AppHandle<R>, task: &Task) -> Result<Outcome, AppError> {
    let (shell, work) = (app.state::<Shell>(), app.state::<Work>());
    let mut watch = |progress| work.told(progress);
    if let Task::SaveArchive { passphrase } = task {
        let (now, zone) = clock::read();
        let day = now.with_timezone(&zone).date_naive();
        let ending = if passphrase.is_some() { "age" } else { "zip" };
        let name = format!("plumule-{day}.{ending}");
        let saved = files::save(app, &name, |path| {
            let _files = work.files();
            let home = shell.home_or_own();
            keep::work(&home, &stamp()?, task, Some(path), &mut watch)
        })?;
        return Ok(saved.unwrap_or(Outcome::NotSaved));
    }
    let file = held(&work.file).clone().filter(|_| task.of_a_file());
    let file = file.as_deref();
    let _files = work.files();
    match task {
        Task::TakeInArchive { passphrase } => shell.ask(|opened, stamp| {
            let file: &Path = file.ok_or_else(|| error("no_file_chosen"))?;
            opened
                .app
                .take_in(stamp, file, passphrase.as_deref(), &mut watch)
        }),
        Task::Share => shell.ask(|opened, stamp| opened.app.share(stamp, &mut watch)),
        _ if task.needs() == Needs::Closed => {
            shell.closed(|home, stamp| keep::work(home, stamp, task, file, &mut watch))
        }
        _ => keep::work(&shell.home_or_own(), &stamp()?, task, file, &mut watch),
    }
}

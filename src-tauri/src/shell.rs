//! Which journal is open: the own one, the demo, or none yet.

use crate::clock;
use chrono::{DateTime, TimeDelta, Utc};
use plumule_app::say::Say;
use plumule_app::view::{Coded, DeviceForm, RoundView, StartView};
use plumule_app::{App, AppError, demo};
use plumule_journal::stamp::Stamp;
use std::fs::{self, File};
use std::io;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

/// The folder of the journals, and the one of them that is open.
pub struct Shell {
    folder: PathBuf,
    /// The demo was asked for when the program was started.
    demo_first: bool,
    opened: Mutex<Option<Opened>>,
    /// Why the last backup that was to be made by itself was not.
    trouble: Mutex<Option<AppError>>,
}

/// What keeps a journal from being opened, and is recovered from.
const DAMAGE: [&str; 2] = ["journal_damaged", "not_a_journal"];

/// An open journal.
pub struct Opened {
    pub app: App,
    pub demo: bool,
    /// The first round, made before the window asks for it.
    ready: Option<Ready>,
    /// Held as long as it is open, so that no second program writes to it.
    _lock: File,
}

/// A round that was made ready.
struct Ready {
    made: DateTime<Utc>,
    /// Of the journal when it was made.
    changes: u64,
    round: RoundView,
}

/// For so many seconds a round is as if it were made now (judgement).
const AS_NOW: TimeDelta = TimeDelta::seconds(10);

impl Opened {
    /// Makes the round that will be asked for first.
    pub fn make_ready(&mut self, stamp: &Stamp) -> Result<(), AppError> {
        self.ready = Some(Ready {
            made: stamp.now,
            changes: self.app.changes(),
            round: self.app.round(stamp)?,
        });
        Ok(())
    }

    /// The round: the one that was made ready, once, if that was just now and
    /// nothing has changed since.
    pub fn round(&mut self, stamp: &Stamp) -> Result<RoundView, AppError> {
        let now = |made| (TimeDelta::zero()..AS_NOW).contains(&(stamp.now - made));
        match self.ready.take() {
            Some(it) if now(it.made) && it.changes == self.app.changes() => Ok(it.round),
            _ => self.app.round(stamp),
        }
    }
}

impl Shell {
    /// Journals in this folder, none of them open.
    pub fn new(folder: PathBuf, demo_first: bool) -> Self {
        Self {
            folder,
            demo_first,
            opened: Mutex::new(None),
            trouble: Mutex::new(None),
        }
    }

    /// Asks the open journal.
    pub fn ask<T>(
        &self,
        question: impl FnOnce(&mut Opened, &Stamp) -> Result<T, AppError>,
    ) -> Result<T, AppError> {
        let mut opened = self.opened();
        let opened = opened.as_mut().ok_or_else(|| error("not_open"))?;
        question(opened, &stamp()?)
    }

    /// The folder of the open journal and what is beside it.
    pub fn home(&self) -> Option<PathBuf> {
        let opened = self.opened();
        opened.as_ref().map(|opened| opened.app.home().to_owned())
    }

    /// Opens the journal that is there: the demo if it was asked for at the
    /// start, else the own one, else a demo that was not left; or none yet.
    pub fn start(&self) -> Result<StartView, AppError> {
        let mut opened = self.opened();
        if opened.is_none() {
            let found = if self.demo_first {
                self.open_demo().map(Some)
            } else {
                self.open_what_is_there()
            };
            match found {
                Ok(found) => *opened = found,
                Err(error) if DAMAGE.contains(&error.code.as_str()) => {
                    return Ok(StartView {
                        journal: "damaged".to_owned(),
                        trouble: Some(Coded {
                            code: error.code,
                            say: error.say,
                        }),
                        ..view(None)?
                    });
                }
                Err(error) => return Err(error),
            }
        }
        view(opened.as_ref())
    }

    /// The home of the journal that is open, else of the own one.
    pub fn home_or_own(&self) -> PathBuf {
        let demo = self.opened().as_ref().is_some_and(|opened| opened.demo);
        self.folder.join(if demo { "demo" } else { "own" })
    }

    /// The home of the own journal, while it is open.
    pub fn kept(&self) -> Option<PathBuf> {
        let own = self.opened().as_ref().is_some_and(|opened| !opened.demo);
        own.then(|| self.folder.join("own"))
    }

    /// Why the last backup failed, or that it did not.
    pub fn backup_failed(&self, trouble: Option<AppError>) {
        *self.trouble.lock().unwrap_or_else(PoisonError::into_inner) = trouble;
    }

    /// Why the last backup that was to be made by itself was not.
    pub fn trouble(&self) -> Option<AppError> {
        let trouble = self.trouble.lock();
        trouble.unwrap_or_else(PoisonError::into_inner).clone()
    }

    /// Does something to the own journal's files while it is closed, and opens
    /// what is there then.
    pub fn closed<T>(
        &self,
        work: impl FnOnce(&Path, &Stamp) -> Result<T, AppError>,
    ) -> Result<T, AppError> {
        let mut opened = self.opened();
        if opened.as_ref().is_some_and(|opened| opened.demo) {
            return Err(error("leave_demo_first"));
        }
        let had = opened.take().is_some();
        let home = self.folder.join("own");
        let lock = lock(&home)?;
        let done = work(&home, &stamp()?);
        drop(lock);
        if had || done.is_ok() {
            *opened = Some(self.open("own", false)?);
        }
        done
    }

    /// Opens the own journal or the demo, and begins it if it is new.
    pub fn choose(&self, demo: bool) -> Result<StartView, AppError> {
        let mut opened = self.opened();
        *opened = None;
        *opened = Some(if demo {
            self.open_demo()?
        } else {
            let mut own = self.open("own", false)?;
            own.app.begin(&stamp()?)?;
            own
        });
        view(opened.as_ref())
    }

    /// Closes the demo and deletes its folder whole; then as at the start.
    pub fn leave_demo(&self) -> Result<StartView, AppError> {
        let mut opened = self.opened();
        if opened.as_ref().is_some_and(|opened| opened.demo) {
            *opened = None;
            remove(&self.folder.join("demo"))?;
            *opened = self.open_what_is_there()?;
        }
        view(opened.as_ref())
    }

    /// A panic while it was held left nothing half-written: the journal rolls
    /// back what was not committed.
    fn opened(&self) -> MutexGuard<'_, Option<Opened>> {
        self.opened.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn open_what_is_there(&self) -> Result<Option<Opened>, AppError> {
        for (name, demo) in [("own", false), ("demo", true)] {
            if self.has(name) {
                return self.open(name, demo).map(Some);
            }
        }
        Ok(None)
    }

    fn has(&self, name: &str) -> bool {
        self.folder.join(name).join("journal").is_dir()
    }

    /// Plants the demo beside its place first, so that it is there whole or
    /// not at all.
    fn open_demo(&self) -> Result<Opened, AppError> {
        if !self.has("demo") {
            let part = self.folder.join("demo.part");
            let home = self.folder.join("demo");
            remove(&part)?;
            remove(&home)?;
            demo::plant(&part, &stamp()?, clock::language())?;
            fs::rename(&part, &home).map_err(|_| error("file_failed"))?;
        }
        self.open("demo", true)
    }

    fn open(&self, name: &str, demo: bool) -> Result<Opened, AppError> {
        let home = self.folder.join(name);
        let lock = lock(&home)?;
        let app = App::open(&home, &stamp()?)?.on_a_system_of(clock::language());
        Ok(Opened {
            app,
            demo,
            ready: None,
            _lock: lock,
        })
    }
}

fn view(opened: Option<&Opened>) -> Result<StartView, AppError> {
    let (_, zone) = clock::read();
    Ok(StartView {
        journal: match opened {
            None => "choose",
            Some(opened) if opened.demo => "demo",
            Some(_) => "own",
        }
        .to_owned(),
        device: match opened {
            None => DeviceForm::new_in(clock::language()),
            Some(opened) => opened.app.device()?,
        },
        language: clock::language().tag().to_owned(),
        zone: zone.name().to_owned(),
        trouble: None,
        read_only: opened.is_some_and(|opened| opened.app.read_only()),
    })
}

fn lock(home: &Path) -> Result<File, AppError> {
    let made = fs::create_dir_all(home).and_then(|()| File::create(home.join("lock")));
    let file = made.map_err(|_| error("file_failed"))?;
    file.try_lock().map_err(|_| error("journal_busy"))?;
    Ok(file)
}

fn remove(folder: &Path) -> Result<(), AppError> {
    match fs::remove_dir_all(folder) {
        Err(e) if e.kind() != io::ErrorKind::NotFound => Err(error("file_failed")),
        _ => Ok(()),
    }
}

/// Now, the zone of the device and fresh chance.
pub fn stamp() -> Result<Stamp, AppError> {
    clock::stamp().map_err(|_| error("unexpected"))
}

/// An error of the shell's own.
pub fn error(code: &str) -> AppError {
    AppError {
        code: code.to_owned(),
        say: Say::new(format!("error-{}", code.replace('_', "-"))),
    }
}

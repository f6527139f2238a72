//! A machine whose disk is watched: what SQLite does to the files of one home
//! is recorded, and can be made to fail.

use crate::vfs;
use std::ffi::c_int;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// What was done to a file.
#[derive(Clone, Debug)]
pub enum Deed {
    /// It was opened with these bytes in it; none if it was not there.
    Opened(Option<Vec<u8>>),
    /// Bytes were written at a place.
    Written(u64, Vec<u8>),
    /// It was cut to a length.
    Cut(u64),
    /// All before was brought to the disk.
    Synced,
    /// It was removed.
    Removed,
}

/// How a machine fails.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Fault {
    /// It does not.
    #[default]
    None,
    /// The deed of that number from now on, counted from 1, fails with a code
    /// of SQLite's.
    Once(u64, c_int),
    /// Every deed fails with a code of SQLite's.
    Always(c_int),
    /// Files can be opened for reading only.
    ReadOnly,
}

#[derive(Debug, Default)]
pub(crate) struct State {
    log: Vec<(PathBuf, Deed)>,
    recording: bool,
    fault: Fault,
    since: u64,
    failed: u64,
}

/// The watched disk of one home.
#[derive(Debug)]
pub struct Machine {
    home: PathBuf,
    state: Arc<Mutex<State>>,
}

static ALL: Mutex<Vec<(PathBuf, Arc<Mutex<State>>)>> = Mutex::new(Vec::new());

fn locked<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

pub(crate) fn of(path: &Path) -> Option<Arc<Mutex<State>>> {
    let all = locked(&ALL);
    let found = all.iter().find(|(home, _)| path.starts_with(home));
    found.map(|(_, state)| Arc::clone(state))
}

/// A deed that is about to be done: recorded, or the code it fails with.
pub(crate) fn about_to(
    state: &Mutex<State>,
    path: &Path,
    deed: impl FnOnce() -> Deed,
) -> Result<(), c_int> {
    let mut state = locked(state);
    state.since += 1;
    let code = match state.fault {
        Fault::Once(n, code) if state.since == n => Some(code),
        Fault::Always(code) => Some(code),
        _ => None,
    };
    if let Some(code) = code {
        state.failed += 1;
        return Err(code);
    }
    if state.recording {
        state.log.push((path.to_owned(), deed()));
    }
    Ok(())
}

/// A file is opened; no deed that can fail.
pub(crate) fn opened(state: &Mutex<State>, path: &Path) {
    let mut state = locked(state);
    if state.recording && !state.log.iter().any(|(known, _)| known == path) {
        let bytes = std::fs::read(path).ok();
        state.log.push((path.to_owned(), Deed::Opened(bytes)));
    }
}

pub(crate) fn read_only(state: &Mutex<State>) -> bool {
    locked(state).fault == Fault::ReadOnly
}

impl Machine {
    /// Watches a home (its path without links) from now on.
    pub fn watch(home: &Path) -> Self {
        vfs::register();
        let state = Arc::new(Mutex::new(State::default()));
        locked(&ALL).push((home.to_owned(), Arc::clone(&state)));
        Self {
            home: home.to_owned(),
            state,
        }
    }

    /// Records from now on.
    pub fn record(&self) {
        locked(&self.state).recording = true;
    }

    /// How many deeds were recorded.
    pub fn recorded(&self) -> usize {
        locked(&self.state).log.len()
    }

    /// What was recorded, by paths inside the home.
    pub fn log(&self) -> Vec<(PathBuf, Deed)> {
        let state = locked(&self.state);
        let inside = |path: &Path| path.strip_prefix(&self.home).unwrap_or(path).to_owned();
        let log = state.log.iter();
        log.map(|(path, deed)| (inside(path), deed.clone()))
            .collect()
    }

    /// Fails so from now on; deeds are counted anew.
    pub fn fail(&self, fault: Fault) {
        let mut state = locked(&self.state);
        state.fault = fault;
        state.since = 0;
        state.failed = 0;
    }

    /// How many deeds failed since.
    pub fn failed(&self) -> u64 {
        locked(&self.state).failed
    }
}

impl Drop for Machine {
    fn drop(&mut self) {
        locked(&ALL).retain(|(home, _)| *home != self.home);
    }
}

/// Runs a statement on the database of that name that was opened last on this
/// thread, behind the back of who opened it, which must still be open.
pub fn behind_the_back(database: &str, sql: &str) {
    vfs::execute_on_last(database, sql);
}

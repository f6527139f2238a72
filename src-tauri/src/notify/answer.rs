//! What comes back from a notice: an answer is written, else the window opens
//! at what the notice was about.

use super::timer::DUE_CHANGED;
use super::{Delivery, Tap};
use crate::shell::Shell;
use plumule_app::AppError;
use plumule_app::acts::{Act, ActRequest};
use plumule_app::notices::ANSWERS;
use plumule_app::view::Answer;
use std::sync::{Mutex, PoisonError};
use tauri::{AppHandle, Emitter, Manager, Runtime};

/// Tells the window that there is an [`Opening`] to be asked for.
const OPENING: &str = "opening";

/// Tells the window what was written from a notice, with the [`Answer`].
const NOTED: &str = "noted";

/// Where the window is to open: a tray by its id, or the round (empty). Kept
/// until it is asked for, since the window may not be there yet.
#[derive(Default)]
pub struct Opening(Mutex<Option<String>>);

impl Opening {
    /// Once.
    pub fn take(&self) -> Option<String> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).take()
    }

    fn keep(&self, tray: String) {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner) = Some(tray);
    }
}

/// Takes what was done with a notice.
pub fn take<R: Runtime>(handle: &AppHandle<R>, delivery: &dyn Delivery, tap: &Tap) {
    delivery.take_back(&[tap.id]);
    // What comes from outside may come late: to a journal that is another by
    // now, or of a tray that is gone. Then the grower looks for himself.
    if let Ok(Some(written)) = write(handle, tap) {
        let _ = handle.emit(NOTED, written);
        let _ = handle.emit(DUE_CHANGED, ());
        return;
    }
    handle
        .state::<Opening>()
        .keep(tap.tray.clone().unwrap_or_default());
    #[cfg(desktop)]
    crate::come_up(handle);
    let _ = handle.emit(OPENING, ());
}

/// Writes the feel of the tray; none if it was not answered or asks first.
fn write<R: Runtime>(handle: &AppHandle<R>, tap: &Tap) -> Result<Option<Answer>, AppError> {
    let Some(tray) = tap.tray.clone() else {
        return Ok(None);
    };
    if !ANSWERS.contains(&tap.answer.as_str()) {
        return Ok(None);
    }
    let shell = handle.state::<Shell>();
    // The answer may be what started the app.
    shell.start()?;
    let act = Act::Feel {
        trays: vec![tray],
        feel: Some(tap.answer.clone()),
        water: None,
    };
    let request = ActRequest {
        act,
        happened: None,
        hand: String::new(),
        confirmed: false,
    };
    let answer = shell.ask(|opened, stamp| opened.app.act(stamp, request))?;
    Ok(Some(answer).filter(|answer| matches!(answer, Answer::Written { .. })))
}

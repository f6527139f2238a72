//! A desktop's ways to be there when a notice is due: kept running when the
//! window is closed, with a sign in the tray of the desktop by which it comes
//! back, and started at login without its window.

mod login;
mod sign;

pub use login::{start_at_login, starts_at_login};

use crate::shell::Shell;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Mutex, PoisonError};
use tauri::{AppHandle, Manager, RunEvent, Runtime, WindowEvent};

/// Whether it keeps running without its window, and the sign by which that is
/// seen.
#[derive(Default)]
pub struct Stay {
    wanted: AtomicBool,
    sign: Mutex<Option<sign::TakeDown>>,
}

/// Does as the device's habits say, as they stand now.
pub fn look<R: Runtime>(app: &AppHandle<R>) {
    let habit = app
        .state::<Shell>()
        .ask(|opened, _| Ok(opened.app.device()?.stay));
    // While no journal is open there is nothing to stay for.
    let wanted = habit.unwrap_or(false);
    let stay = app.state::<Stay>();
    if stay.wanted.swap(wanted, Ordering::SeqCst) != wanted {
        let app = app.clone();
        // The desktop may take its time to answer.
        tauri::async_runtime::spawn_blocking(move || settle(&app));
    }
}

/// One at a time: puts the sign up, or takes it down.
fn settle<R: Runtime>(app: &AppHandle<R>) {
    let stay = app.state::<Stay>();
    let mut sign = stay.sign.lock().unwrap_or_else(PoisonError::into_inner);
    if !stay.wanted.load(Ordering::SeqCst) {
        if let Some(take_down) = sign.take() {
            take_down();
        }
    } else if sign.is_none() {
        *sign = sign::put_up(app);
    }
}

/// A window that is closed is only hidden where the app is to keep running.
pub fn closing<R: Runtime>(app: &AppHandle<R>, event: &RunEvent) {
    if let RunEvent::WindowEvent {
        label,
        event: WindowEvent::CloseRequested { api, .. },
        ..
    } = event
        && app
            .try_state::<Stay>()
            .is_some_and(|stay| stay.wanted.load(Ordering::SeqCst))
        && let Some(window) = app.get_webview_window(label)
        && window.hide().is_ok()
    {
        api.prevent_close();
    }
}

//! Backups made by themselves, after changes, on a thread of their own, so
//! that no answer waits for one; and the folder that is shared.

use crate::notify::DUE_CHANGED;
use crate::shell::{Shell, stamp};
use crate::work::Work;
use plumule_app::keep;
use plumule_app::photos;
use plumule_app::view::Outcome;
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::thread;
use std::time::Duration;
use tauri::{AppHandle, Emitter, Manager, Runtime};

/// So long nothing is written before a backup begins (judgement: between two
/// answers of a round).
const QUIET: Duration = Duration::from_secs(2);
/// Looked at anew without a change: the last of a round may have come within
/// the hour of the backup before, and other devices write to the shared folder
/// when they like.
const AGAIN: Duration = Duration::from_secs(5 * 60);

/// The thread that makes backups.
pub struct Keeper(Sender<()>);

impl Keeper {
    /// Something may have changed.
    pub fn poke(&self) {
        // It ends with the program only; then nothing is left to keep.
        let _ = self.0.send(());
    }
}

/// Starts it.
///
/// # Errors
/// If there can be no more threads.
pub fn start<R: Runtime>(handle: AppHandle<R>) -> std::io::Result<Keeper> {
    let (poke, poked) = channel();
    thread::Builder::new()
        .name("backups".to_owned())
        .spawn(move || run(&handle, &poked))?;
    Ok(Keeper(poke))
}

fn run<R: Runtime>(handle: &AppHandle<R>, poked: &Receiver<()>) {
    loop {
        if let Err(RecvTimeoutError::Disconnected) = poked.recv_timeout(AGAIN) {
            return;
        }
        while poked.recv_timeout(QUIET).is_ok() {}
        let (shell, work) = (handle.state::<Shell>(), handle.state::<Work>());
        let _files = work.files();
        if let Some(home) = shell.kept() {
            let made = stamp().and_then(|stamp| {
                let made = keep::backup_if_due(&home, &stamp)?;
                // Seldom, and when what is kept was just verified.
                if made {
                    photos::sweep(&home, &stamp)?;
                }
                Ok(made)
            });
            let shared = shell.ask(|opened, stamp| match opened.app.shared_folder()? {
                Some(_) => opened.app.share(stamp, &mut |_| true).map(Some),
                None => Ok(None),
            });
            if let Ok(Some(Outcome::Shared { new: 1.., .. })) = shared {
                // Without a window there is nobody to tell.
                let _ = handle.emit(DUE_CHANGED, ());
            }
            shell.backup_failed(made.err().or(shared.err()));
        }
    }
}

//! Notices: the app says which are wanted and when; a timer of our own has
//! them shown.
//!
//! The journal alone knows what was delivered. It is marked before it is
//! shown, so that the same occurrence never comes twice.

mod desktop;
mod watch;

pub use desktop::Desktop;

use crate::clock;
use crate::shell::{Opened, Shell};
use chrono::{DateTime, Utc};
use plumule_app::{AppError, Notice};
use plumule_journal::stamp::Stamp;
use std::collections::BTreeSet;
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::thread;
use tauri::{AppHandle, Emitter, Manager, Runtime};
use watch::Watch;

/// Tells the window that time has moved on: it asks for its views again.
const DUE_CHANGED: &str = "due-changed";

/// A way to put a notice before the grower.
pub trait Notices: Send + 'static {
    /// Shows it now; where that cannot be, nothing is shown.
    fn show(&self, notice: &Notice);
}

/// The timer, which plans anew when poked.
pub struct Timer(Sender<()>);

impl Timer {
    /// What is wanted may have changed.
    pub fn poke(&self) {
        // It ends with the program only; then nothing is left to plan.
        let _ = self.0.send(());
    }
}

/// Starts the timer on a thread of its own.
///
/// # Errors
/// If there can be no more threads.
pub fn start<R: Runtime>(handle: AppHandle<R>, notices: impl Notices) -> std::io::Result<Timer> {
    let (poke, poked) = channel();
    thread::Builder::new()
        .name("notices".to_owned())
        .spawn(move || run(&handle, &notices, &poked))?;
    Ok(Timer(poke))
}

fn run<R: Runtime>(handle: &AppHandle<R>, notices: &impl Notices, poked: &Receiver<()>) {
    let mut watch = Watch::default();
    let mut plan = true;
    loop {
        let (now, zone) = clock::read();
        if watch.moved_on(now, zone) {
            plan = true;
            // Without a window there is nobody to tell.
            let _ = handle.emit(DUE_CHANGED, ());
        }
        if plan {
            let shell = handle.state::<Shell>();
            let planned = shell.ask(|opened, stamp| deliver(opened, stamp, notices));
            watch.wake_at(planned.ok());
        }
        plan = match poked.recv_timeout(watch.pause(now, clock::longest_sleep())) {
            Ok(()) => {
                while poked.try_recv().is_ok() {}
                true
            }
            Err(RecvTimeoutError::Timeout) => false,
            Err(RecvTimeoutError::Disconnected) => return,
        };
    }
}

/// Shows what is due, what was missed as one; says when to look again.
fn deliver(
    opened: &mut Opened,
    stamp: &Stamp,
    notices: &impl Notices,
) -> Result<DateTime<Utc>, AppError> {
    let plan = opened.app.notices(stamp)?;
    let (due, later): (Vec<_>, Vec<_>) = plan
        .wanted
        .into_iter()
        .partition(|notice| notice.at <= stamp.now);
    for notice in &due {
        opened.app.delivered(stamp, &notice.key)?;
    }
    if let Some(notice) = digest(due) {
        notices.show(&notice);
    }
    let next = later.iter().map(|notice| notice.at).min();
    Ok(next.map_or(plan.plan_again, |next| next.min(plan.plan_again)))
}

/// Several as one: the latest, with the lines of the others that it does not
/// have itself.
fn digest(mut due: Vec<Notice>) -> Option<Notice> {
    due.sort_by(|a, b| b.at.cmp(&a.at).then_with(|| a.key.cmp(&b.key)));
    let mut seen = BTreeSet::new();
    let lines: Vec<String> = due
        .iter()
        .flat_map(|notice| notice.body.lines())
        .filter(|line| seen.insert(*line))
        .map(str::to_owned)
        .collect();
    let mut notice = due.into_iter().next()?;
    notice.body = lines.join("\n");
    Some(notice)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn notice(key: &str, hour: u32, body: &str) -> Notice {
        Notice {
            id: 1,
            key: key.to_owned(),
            at: format!("2026-04-18T{hour:02}:00:00Z").parse().unwrap(),
            title: key.to_owned(),
            body: body.to_owned(),
        }
    }

    #[test]
    fn what_was_missed_comes_as_one_without_repeating_itself() {
        let missed = vec![
            notice("morning", 8, "Shed: feel the compost\nSill: 2 up"),
            notice("evening", 18, "Shed: feel the compost"),
        ];
        let one = digest(missed).unwrap();
        assert_eq!(one.key, "evening");
        assert_eq!(one.body, "Shed: feel the compost\nSill: 2 up");
        assert!(digest(Vec::new()).is_none());
    }
}

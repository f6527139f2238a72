//! The timer: what is due is shown, what is to come is handed over.

use super::answer::{self, Opening};
use super::watch::Watch;
use super::{Delivery, Permission, Shared, Tap};
use crate::clock;
use crate::shell::Shell;
use chrono::{DateTime, TimeDelta, Utc};
use plumule_app::{AppError, Notice, NoticePlan};
use std::collections::BTreeSet;
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::thread;
use std::time::Duration;
use tauri::{AppHandle, Emitter, Manager, Runtime};

/// Tells the window that time has moved on, or that something was written
/// outside it: it asks for its views again.
pub const DUE_CHANGED: &str = "due-changed";

/// So long nothing more is said before it is planned anew: the first picture
/// and the answers of a round come first (judgement).
const QUIET: Duration = Duration::from_secs(1);

/// What wakes the timer.
enum Word {
    /// What is wanted may have changed.
    Changed,
    /// The app came back to the front: the system may have lost what it kept.
    Resumed,
    /// Something was done with a notice.
    Tapped(Tap),
}

/// The timer, which plans anew when poked.
pub struct Timer(Sender<Word>);

impl Timer {
    /// What is wanted may have changed.
    pub fn poke(&self) {
        self.tell(Word::Changed);
    }

    /// The app is in front again.
    pub fn resumed(&self) {
        self.tell(Word::Resumed);
    }

    fn tell(&self, word: Word) {
        // It ends with the program only; then nothing is left to plan.
        let _ = self.0.send(word);
    }
}

/// Starts the timer on a thread of its own.
///
/// # Errors
/// If there can be no more threads.
pub fn start<R: Runtime>(handle: AppHandle<R>, delivery: Shared) -> std::io::Result<Timer> {
    let (tell, told) = channel();
    let taps = tell.clone();
    handle.manage(Opening::default());
    thread::Builder::new()
        .name("notices".to_owned())
        .spawn(move || {
            delivery.on_tap(Box::new(move |tap| {
                let _ = taps.send(Word::Tapped(tap));
            }));
            run(&handle, &*delivery, &told);
        })?;
    Ok(Timer(tell))
}

fn run<R: Runtime>(handle: &AppHandle<R>, delivery: &dyn Delivery, told: &Receiver<Word>) {
    let mut watch = Watch::default();
    let (mut plan, mut afresh) = (true, true);
    loop {
        let (now, zone) = clock::read();
        if watch.moved_on(now, zone) {
            plan = true;
            // Without a window there is nobody to tell.
            let _ = handle.emit(DUE_CHANGED, ());
        }
        if plan {
            let planned = deliver(&handle.state::<Shell>(), delivery, afresh);
            // Before a journal is open there is nothing to hand over.
            afresh &= planned.is_err();
            watch.wake_at(planned.ok());
        }
        plan = false;
        let mut heard = told.recv_timeout(watch.pause(now, clock::longest_sleep()));
        // A phone may stop the app at any moment, a desktop does not.
        let quiet = delivery.keeps().map_or(QUIET, |_| Duration::ZERO);
        while let Ok(word) = heard {
            plan = true;
            match word {
                Word::Changed => {}
                Word::Resumed => afresh = true,
                Word::Tapped(tap) => answer::take(handle, delivery, &tap),
            }
            heard = told.recv_timeout(quiet);
        }
        if matches!(heard, Err(RecvTimeoutError::Disconnected)) {
            return;
        }
    }
}

/// Has the system's notices be those that are wanted; says when to look again.
/// The journal is held only while it is read and written, not while reckoning.
fn deliver(
    shell: &Shell,
    delivery: &dyn Delivery,
    afresh: bool,
) -> Result<DateTime<Utc>, AppError> {
    let desk = shell.ask(|opened, stamp| opened.app.notice_desk(stamp))?;
    match delivery.keeps() {
        Some(most) => hand_over(shell, delivery, desk.plan(), (most, afresh)),
        None => show(shell, delivery, desk.plan_soon()),
    }
}

/// Changes what the system keeps by what differs. Remembered last, so that
/// what is cut short is done again.
fn hand_over(
    shell: &Shell,
    delivery: &dyn Delivery,
    plan: NoticePlan,
    (most, afresh): (usize, bool),
) -> Result<DateTime<Utc>, AppError> {
    let plan_again = plan.plan_again;
    let allowed = delivery.standing().permission == Permission::Granted;
    let most = if allowed { most } else { 0 };
    let ahead = shell.ask(|opened, stamp| opened.app.notices_ahead(stamp, plan, (most, afresh)))?;
    delivery.take_back(&ahead.cancel);
    let mut kept = ahead.kept;
    for refused in ahead.set.iter().filter(|notice| !delivery.put(notice)) {
        kept.retain(|notice| notice.id != refused.id);
    }
    shell.ask(|opened, _| opened.app.handed_over(&kept))?;
    Ok(plan_again)
}

/// After so long it is tried again where nobody showed what is due (judgement:
/// a desktop that is still being drawn has its notices within minutes).
const AGAIN: TimeDelta = TimeDelta::minutes(5);

/// Shows what is due, what was missed as one. Delivered is what was shown:
/// where nobody shows it, it stays due.
fn show(
    shell: &Shell,
    delivery: &dyn Delivery,
    plan: NoticePlan,
) -> Result<DateTime<Utc>, AppError> {
    let plan_again = plan.plan_again;
    let (due, next, again) = shell.ask(|opened, stamp| {
        let plan = opened.app.undelivered(plan)?;
        let (due, later): (Vec<_>, Vec<_>) = plan
            .wanted
            .into_iter()
            .partition(|notice| notice.at <= stamp.now);
        let next = later.iter().map(|notice| notice.at).min();
        Ok((due, next, stamp.now + AGAIN))
    })?;
    let keys: Vec<String> = due.iter().map(|notice| notice.key.clone()).collect();
    let mut look = next.map_or(plan_again, |next| next.min(plan_again));
    if let Some(notice) = digest(due) {
        if delivery.put(&notice) {
            shell.ask(|opened, stamp| {
                let mut keys = keys.iter();
                keys.try_for_each(|key| opened.app.delivered(stamp, key))
            })?;
        } else {
            // The round in the window says the same, and the settings say what
            // is wrong.
            look = look.min(again);
        }
    }
    Ok(look)
}

/// Several as one: the latest, with the lines of the others that it does not
/// have itself; about one tray only if all are about that one.
fn digest(mut due: Vec<Notice>) -> Option<Notice> {
    due.sort_by(|a, b| b.at.cmp(&a.at).then_with(|| a.key.cmp(&b.key)));
    let mut seen = BTreeSet::new();
    let lines: Vec<String> = due
        .iter()
        .flat_map(|notice| notice.body.lines())
        .filter(|line| seen.insert(*line))
        .map(str::to_owned)
        .collect();
    let trays: BTreeSet<Option<String>> = due.iter().map(|notice| notice.tray.clone()).collect();
    let single = due.len() == 1;
    let mut notice = due.into_iter().next()?;
    notice.body = lines.join("\n");
    notice.feel &= single;
    if trays.len() > 1 {
        notice.tray = None;
    }
    Some(notice)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::notify::Standing;
    use plumule_app::notices::Rank;
    use std::sync::Mutex;
    use std::sync::atomic::{AtomicBool, Ordering::Relaxed};

    /// A desktop on which somebody shows notices, or nobody.
    #[derive(Default)]
    struct Desktop {
        somebody: AtomicBool,
        shown: Mutex<Vec<String>>,
    }

    impl Delivery for Desktop {
        fn standing(&self) -> Standing {
            let permission = self.ask();
            Standing {
                permission,
                held_back: false,
            }
        }
        fn ask(&self) -> Permission {
            Permission::Granted
        }
        fn keeps(&self) -> Option<usize> {
            None
        }
        fn put(&self, notice: &Notice) -> bool {
            let shows = self.somebody.load(Relaxed);
            if shows {
                self.shown.lock().unwrap().push(notice.key.clone());
            }
            shows
        }
        fn take_back(&self, _: &[i32]) {}
        fn on_tap(&self, _: Box<dyn Fn(Tap) + Send + Sync>) {}
    }

    #[test]
    fn what_nobody_showed_stays_due_and_what_was_shown_does_not_come_again() {
        let folder = tempfile::tempdir().unwrap();
        let shell = Shell::new(folder.path().to_owned(), false);
        shell.choose(false).unwrap();
        let desktop = Desktop::default();
        let later = clock::read().0 + TimeDelta::hours(9);
        let shows = || {
            let wanted = vec![notice("morning", 8, "Shed"), notice("alone", 9, "Sill")];
            let plan = NoticePlan {
                wanted,
                plan_again: later,
            };
            let look = show(&shell, &desktop, plan).unwrap();
            (look < later, desktop.shown.lock().unwrap().clone())
        };
        assert_eq!(shows(), (true, vec![]));
        desktop.somebody.store(true, Relaxed);
        // The later of them, with the lines of both.
        assert_eq!(shows(), (false, vec!["alone".to_owned()]));
        assert_eq!(shows().1.len(), 1);
    }

    fn notice(key: &str, hour: u32, body: &str) -> Notice {
        Notice {
            id: 1,
            key: key.to_owned(),
            at: format!("2026-04-18T{hour:02}:00:00Z").parse().unwrap(),
            rank: Rank::Today,
            title: key.to_owned(),
            body: body.to_owned(),
            tray: Some("one".to_owned()),
            feel: true,
            language: plumule_app::words::Language::default(),
            quiet: plumule_app::notices::Quiet::default(),
        }
    }

    #[test]
    fn what_was_missed_comes_as_one_without_repeating_itself() {
        let missed = vec![
            notice("morning", 8, "Shed: feel the compost\nSill: 2 up"),
            notice("evening", 18, "Shed: feel the compost"),
        ];
        let one = digest(missed.clone()).unwrap();
        assert_eq!(one.key, "evening");
        assert_eq!(one.body, "Shed: feel the compost\nSill: 2 up");
        assert_eq!((one.tray.as_deref(), one.feel), (Some("one"), false));
        assert!(digest(missed[..1].to_vec()).unwrap().feel);
        assert!(digest(Vec::new()).is_none());
    }
}

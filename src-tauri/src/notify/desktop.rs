//! Notices of a desktop: shown at once, by the session's notification daemon.
//! The plugin keeps none for later, whatever it is asked; the timer does.

use super::{Delivery, Permission, Standing, Tap};
use plumule_app::Notice;
use plumule_app::notices::{ANSWERS, answer_words};
use plumule_app::words::Language;
use tauri::plugin::TauriPlugin;
use tauri::{AppHandle, Runtime};
use tauri_plugin_notification::{Action, ActionType, NotificationExt};

/// The kind of notice that is answered where it is. Any other is only pressed
/// itself, which the plugin offers by itself and tells of as `tap`.
const FEEL: &str = "feel";

/// The plugin that does the work here.
pub fn plugin<R: Runtime>() -> TauriPlugin<R> {
    tauri_plugin_notification::init()
}

/// Shows notices through the plugin, from here and never from the web view.
pub struct Desktop<R: Runtime>(AppHandle<R>);

impl<R: Runtime> Desktop<R> {
    pub fn new(app: &AppHandle<R>) -> Self {
        Self(app.clone())
    }

    /// The answers that a notice offers, in its language.
    fn offer_answers(&self, language: Language) {
        let feel = ANSWERS.map(|answer| {
            let title = answer_words(answer, language);
            Action::builder(answer, title).build()
        });
        let feel = ActionType::builder(FEEL).actions(feel.into()).build();
        // It only fills a table and cannot fail on a desktop.
        let _ = self.0.notification().register_action_types(vec![feel]);
    }
}

impl<R: Runtime> Delivery for Desktop<R> {
    fn standing(&self) -> Standing {
        Standing {
            permission: if somebody_shows_them() {
                Permission::Granted
            } else {
                Permission::Nobody
            },
            held_back: false,
        }
    }

    fn ask(&self) -> Permission {
        self.standing().permission
    }

    fn keeps(&self) -> Option<usize> {
        None
    }

    fn put(&self, notice: &Notice) -> bool {
        let built = self.0.notification().builder().id(notice.id);
        let built = match &notice.tray {
            Some(tray) => built.extra("tray", tray),
            None => built,
        };
        let built = if notice.feel {
            self.offer_answers(notice.language);
            built.action_type_id(FEEL)
        } else {
            built
        };
        let built = built.title(&notice.title).body(&notice.body);
        built.show().is_ok()
    }

    fn take_back(&self, ids: &[i32]) {
        // Where it cannot be closed it stays until it is.
        let _ = self.0.notification().remove_active(ids.to_vec());
    }

    fn on_tap(&self, heard: Box<dyn Fn(Tap) + Send + Sync>) {
        // It only adds to a list and cannot fail on a desktop.
        let _ = self.0.notification().on_action(move |done| {
            let Some(notice) = done.notification() else {
                return;
            };
            let tray = notice.extra().get("tray");
            heard(Tap {
                id: notice.id(),
                answer: done.action_id().to_owned(),
                tray: tray.and_then(|tray| tray.as_str().map(str::to_owned)),
            });
        });
    }
}

/// Whether a notification daemon runs on the session's message bus, or would
/// be started by a notice. Elsewhere the system itself shows them.
#[cfg(not(target_os = "linux"))]
fn somebody_shows_them() -> bool {
    true
}

#[cfg(target_os = "linux")]
fn somebody_shows_them() -> bool {
    const DAEMON: &str = "org.freedesktop.Notifications";
    let ask = || {
        let bus = zbus::blocking::Connection::session()?;
        let bus = zbus::blocking::fdo::DBusProxy::new(&bus)?;
        let startable = bus.list_activatable_names()?;
        let startable = startable.iter().any(|name| name.as_str() == DAEMON);
        Ok::<_, zbus::Error>(startable || bus.name_has_owner(DAEMON.try_into()?)?)
    };
    ask().unwrap_or(false)
}

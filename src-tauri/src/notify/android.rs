//! Notices of an Android phone: kept and shown by a part of our own in
//! `gen/android`, which also tells what is done with them.

use super::{Delivery, Permission, Standing, Tap};
use chrono::Timelike;
use plumule_app::Notice;
use plumule_app::notices::{ANSWERS, answer_words};
use serde::{Deserialize, Serialize};
use tauri::ipc::{Channel, InvokeResponseBody};
use tauri::plugin::{Builder, PluginHandle, TauriPlugin};
use tauri::{AppHandle, Manager, Runtime};

/// Some makers allow 500 alarms an app and some show 25 notices; a digest
/// twice a day for two weeks stays under this.
const MOST: usize = 30;

/// Where the classes of `gen/android` are.
pub const PACKAGE: &str = "garden.plumule.journal";

/// The plugin that does the work here.
pub fn plugin<R: Runtime>() -> TauriPlugin<R> {
    Builder::new("notices")
        .setup(|app, api| {
            let handle = api.register_android_plugin(PACKAGE, "NoticesPlugin")?;
            app.manage(Part(handle));
            Ok(())
        })
        .build()
}

struct Part<R: Runtime>(PluginHandle<R>);

/// The phone.
pub struct Phone<R: Runtime>(AppHandle<R>);

/// A notice as the Kotlin part reads it; times in ms since 1970 UTC, quiet
/// hours in minutes of the day.
#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
struct Handed<'a> {
    id: i32,
    at: i64,
    title: &'a str,
    body: &'a str,
    tray: &'a str,
    answers: Vec<Choice>,
    quiet_from: u32,
    quiet_to: u32,
}

#[derive(Serialize)]
struct Choice {
    id: &'static str,
    title: String,
}

#[derive(Serialize)]
struct Ids<'a> {
    ids: &'a [i32],
}

#[derive(Serialize)]
struct Listener {
    event: &'static str,
    handler: Channel,
}

#[derive(Deserialize)]
#[serde(rename_all = "camelCase")]
struct Told {
    permission: String,
    held_back: bool,
}

/// Empty where nothing was pressed.
#[derive(Default, Deserialize)]
struct Pressed {
    id: Option<i32>,
    answer: Option<String>,
    tray: Option<String>,
}

impl Pressed {
    fn tap(self) -> Option<Tap> {
        Some(Tap {
            id: self.id?,
            answer: self.answer.unwrap_or_default(),
            tray: self.tray.filter(|tray| !tray.is_empty()),
        })
    }
}

impl<R: Runtime> Phone<R> {
    /// The phone this runs on.
    pub fn new(app: &AppHandle<R>) -> Self {
        Self(app.clone())
    }

    fn call<T: serde::de::DeserializeOwned>(
        &self,
        command: &str,
        with: impl Serialize,
    ) -> Option<T> {
        let part = self.0.state::<Part<R>>();
        part.0.run_mobile_plugin(command, with).ok()
    }

    fn told(told: Option<Told>) -> Standing {
        Standing {
            permission: match told.as_ref().map(|told| told.permission.as_str()) {
                Some("granted") => Permission::Granted,
                Some("ask") => Permission::NotAsked,
                Some(_) => Permission::Refused,
                None => Permission::Nobody,
            },
            held_back: told.is_some_and(|told| told.held_back),
        }
    }
}

impl<R: Runtime> Delivery for Phone<R> {
    fn standing(&self) -> Standing {
        Self::told(self.call("standing", ()))
    }

    fn ask(&self) -> Permission {
        Self::told(self.call("ask", ())).permission
    }

    fn keeps(&self) -> Option<usize> {
        Some(MOST)
    }

    fn put(&self, notice: &Notice) -> bool {
        let answers: &[&'static str] = if notice.feel { &ANSWERS } else { &[] };
        let choice = |id: &&'static str| Choice {
            id,
            title: answer_words(id, notice.language),
        };
        let handed = Handed {
            id: notice.id,
            at: notice.at.timestamp_millis(),
            title: &notice.title,
            body: &notice.body,
            tray: notice.tray.as_deref().unwrap_or_default(),
            answers: answers.iter().map(choice).collect(),
            quiet_from: notice.quiet.from.num_seconds_from_midnight() / 60,
            quiet_to: notice.quiet.to.num_seconds_from_midnight() / 60,
        };
        self.call::<()>("set", handed).is_some()
    }

    fn take_back(&self, ids: &[i32]) {
        if !ids.is_empty() {
            // Where it cannot be, the next look at all of them sets it right.
            let _ = self.call::<()>("cancel", Ids { ids });
        }
    }

    fn on_tap(&self, heard: Box<dyn Fn(Tap) + Send + Sync>) {
        let heard = std::sync::Arc::new(heard);
        let later = std::sync::Arc::clone(&heard);
        let handler = Channel::new(move |body| {
            if let InvokeResponseBody::Json(text) = body
                && let Ok(pressed) = serde_json::from_str::<Pressed>(&text)
                && let Some(tap) = pressed.tap()
            {
                later(tap);
            }
            Ok(())
        });
        let event = "pressed";
        let _ = self.call::<()>("registerListener", Listener { event, handler });
        let waiting: Pressed = self.call("listening", ()).unwrap_or_default();
        if let Some(tap) = waiting.tap() {
            heard(tap);
        }
    }
}

//! Notices of an iPhone: kept and shown by iOS. A press opens the app where it
//! was; the plugin tells only the web view of presses.

use super::{Delivery, Permission, Standing, Tap};
use plumule_app::Notice;
use tauri::async_runtime::block_on;
use tauri::plugin::{PermissionState, TauriPlugin};
use tauri::{AppHandle, Runtime};
use tauri_plugin_notifications::{NotificationsExt, Schedule};
use time::OffsetDateTime;

/// iOS keeps 64 and drops the rest without a word (Apple, Local and Remote
/// Notification Programming Guide); a few are left to spare.
const MOST: usize = 60;

/// The plugin that does the work here.
pub fn plugin<R: Runtime>() -> TauriPlugin<R> {
    tauri_plugin_notifications::init()
}

/// The phone.
pub struct Phone<R: Runtime>(AppHandle<R>);

impl<R: Runtime> Phone<R> {
    /// The phone this runs on.
    pub fn new(app: &AppHandle<R>) -> Self {
        Self(app.clone())
    }
}

fn word(state: tauri_plugin_notifications::Result<PermissionState>) -> Permission {
    match state {
        Ok(PermissionState::Granted) => Permission::Granted,
        Ok(PermissionState::Denied) => Permission::Refused,
        Ok(_) => Permission::NotAsked,
        Err(_) => Permission::Nobody,
    }
}

impl<R: Runtime> Delivery for Phone<R> {
    fn standing(&self) -> Standing {
        Standing {
            permission: word(block_on(self.0.notifications().permission_state())),
            held_back: false,
        }
    }

    fn ask(&self) -> Permission {
        word(block_on(self.0.notifications().request_permission()))
    }

    fn keeps(&self) -> Option<usize> {
        Some(MOST)
    }

    fn put(&self, notice: &Notice) -> bool {
        let built = self.0.notifications().builder().id(notice.id);
        let built = built.title(&notice.title).body(&notice.body);
        let later = notice.at > crate::clock::read().0;
        let date = OffsetDateTime::from_unix_timestamp(notice.at.timestamp());
        let built = match date {
            Ok(date) if later => built.schedule(Schedule::At {
                date,
                repeating: false,
                allow_while_idle: true,
            }),
            Ok(_) => built,
            Err(_) => return false,
        };
        block_on(built.show()).is_ok()
    }

    fn take_back(&self, ids: &[i32]) {
        if !ids.is_empty() {
            // Where it cannot be, the next look at all of them sets it right.
            let _ = self.0.notifications().cancel(ids.to_vec());
            let _ = self.0.notifications().remove_active(ids.to_vec());
        }
    }

    fn on_tap(&self, _heard: Box<dyn Fn(Tap) + Send + Sync>) {}
}

//! Notices of a desktop: shown at once, by the session's notification daemon.

use super::Notices;
use plumule_app::Notice;
use tauri::{AppHandle, Runtime};
use tauri_plugin_notification::NotificationExt;

/// Shows notices through the plugin, from here and never from the web view.
pub struct Desktop<R: Runtime>(pub AppHandle<R>);

impl<R: Runtime> Notices for Desktop<R> {
    fn show(&self, notice: &Notice) {
        let built = self.0.notification().builder().id(notice.id);
        // Where no daemon answers there is nobody to tell; the round in the
        // window says the same.
        let _ = built.title(&notice.title).body(&notice.body).show();
    }
}

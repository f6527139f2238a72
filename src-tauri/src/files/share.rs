//! Files that leave an Android phone, by the sheet with which it hands them to
//! other apps. A file written to where its save dialog points can come out
//! empty, or never reach a cloud's folder, without an error.

use crate::notify::ANDROID_PACKAGE;
use crate::shell::error;
use plumule_app::AppError;
use serde::{Deserialize, Serialize};
use std::path::Path;
use tauri::plugin::{Builder, PluginHandle, TauriPlugin};
use tauri::{AppHandle, Manager, Runtime};

struct Part<R: Runtime>(PluginHandle<R>);

#[derive(Serialize)]
struct Lent<'a> {
    path: &'a Path,
}

#[derive(Deserialize)]
struct Told {
    taken: bool,
}

/// Its half in `gen/android`.
pub fn plugin<R: Runtime>() -> TauriPlugin<R> {
    Builder::new("share")
        .setup(|app, api| {
            let handle = api.register_android_plugin(ANDROID_PACKAGE, "SharePlugin")?;
            app.manage(Part(handle));
            Ok(())
        })
        .build()
}

/// Opens the sheet and waits for the grower; whether an app was chosen. The
/// file must lie in a folder that `file_paths.xml` names.
pub fn share<R: Runtime>(app: &AppHandle<R>, path: &Path) -> Result<bool, AppError> {
    let part = app.state::<Part<R>>();
    let told: Result<Told, _> = part.0.run_mobile_plugin("share", Lent { path });
    told.map(|told| told.taken)
        .map_err(|_| error("save_failed"))
}

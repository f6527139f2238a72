//! The shell: a window, the commands it may call, the clock and the notices.
//!
//! Thin on purpose. What a grower can ask and say is in `plumule-app`; here it
//! is only unpacked, stamped with the time and handed on.

pub mod clock;
mod commands;
mod files;
mod keeper;
mod labels;
mod notify;
mod photos;
mod shell;
#[cfg(target_os = "linux")]
mod stay;
mod work;

use shell::Shell;
use std::error::Error;
use std::path::PathBuf;
use std::sync::Arc;
use tauri::{AppHandle, Builder, Manager, RunEvent, Runtime, WindowEvent};
use work::Work;

/// The word that it is started with at login: without its window.
const UNSEEN: &str = "--unseen";

/// Opens the window and runs until it is closed. With `--demo` among the
/// arguments it shows the demo journal; with `--unseen`, on Linux, no window
/// until it is asked for. A second start brings the window of the first to the
/// front, and ends.
///
/// # Errors
/// If the window cannot be opened.
pub fn run() -> tauri::Result<()> {
    let demo = std::env::args().any(|word| word == "--demo");
    let builder = Builder::default();
    #[cfg(desktop)]
    let builder = builder.plugin(one_at_a_time());
    let mut context = tauri::generate_context!();
    let unseen = is_unseen(std::env::args());
    if unseen {
        for window in &mut context.config_mut().app.windows {
            window.visible = false;
        }
    }
    assemble(builder)
        .setup(move |app| {
            attend(app.handle(), folder(app.handle())?, demo)?;
            tauri::async_runtime::spawn(commands::wake(app.handle().clone()));
            Ok(())
        })
        .build(context)?
        .run(|handle, event| {
            resumed(handle, &event);
            #[cfg(target_os = "linux")]
            stay::closing(handle, &event);
        });
    Ok(())
}

/// Where the system of a phone enters.
#[cfg(mobile)]
mod phone {
    #![allow(missing_docs, reason = "what the macro makes has none")]

    #[tauri::mobile_entry_point]
    fn enter() {
        if super::run().is_err() {
            // Without a window there is nobody to tell; the system says that it ended.
            std::process::exit(1);
        }
    }
}

/// Started at login.
fn is_unseen(mut words: impl Iterator<Item = String>) -> bool {
    cfg!(target_os = "linux") && words.any(|word| word == UNSEEN)
}

/// A phone sees to it by itself.
#[cfg(desktop)]
fn one_at_a_time<R: Runtime>() -> tauri::plugin::TauriPlugin<R> {
    tauri_plugin_single_instance::init(|app, words, _| {
        if !is_unseen(words.into_iter()) {
            come_up(app);
        }
    })
}

/// Brings the window to the front, be it hidden or not.
#[cfg(desktop)]
fn come_up<R: Runtime>(app: &AppHandle<R>) {
    if let Some(window) = app.get_webview_window("main") {
        // A window manager may refuse; the window is there all the same.
        let _ = window.show();
        let _ = window.unminimize();
        let _ = window.set_focus();
    }
}

/// Where the journals are. A phone's own folder holds the web view's files too;
/// what goes to the next phone is named by `gen/android`'s rules for backups.
fn folder<R: Runtime>(handle: &AppHandle<R>) -> tauri::Result<PathBuf> {
    let own = handle.path().app_data_dir()?;
    Ok(if cfg!(target_os = "android") {
        own.join("files").join("journals")
    } else {
        own
    })
}

/// The plugins and the commands.
fn assemble<R: Runtime>(builder: Builder<R>) -> Builder<R> {
    #[cfg(target_os = "android")]
    let builder = builder.plugin(files::share::plugin());
    builder
        .plugin(tauri_plugin_dialog::init())
        .plugin(tauri_plugin_fs::init())
        .plugin(notify::plugin())
        .plugin(stay_here())
        .register_asynchronous_uri_scheme_protocol(photos::SCHEME, photos::serve)
        .invoke_handler(tauri::generate_handler![
            commands::start,
            commands::choose,
            commands::leave_demo,
            commands::round,
            commands::sitter_sheet,
            commands::trays,
            commands::tray,
            commands::search,
            commands::seed,
            commands::packet,
            commands::read_packets,
            commands::import_packets,
            commands::bench,
            commands::results,
            commands::year,
            commands::enough,
            commands::settings,
            commands::set_device,
            commands::frost_preview,
            commands::act,
            commands::undo,
            commands::withdraw,
            commands::keep::draft,
            commands::keep::keep_draft,
            commands::keep::correct,
            commands::keep::history,
            photos::add_photo,
            photos::photos,
            photos::remove_photo,
            commands::keep::keep,
            commands::keep::work_begin,
            commands::keep::work,
            commands::keep::work_cancel,
            commands::keep::choose_file,
            commands::keep::export,
            commands::keep::quit,
            commands::keep::choose_folder,
            commands::keep::leave_folder,
            commands::notices,
            commands::ask_notices,
            commands::next_notice,
            commands::test_notice,
            commands::set_at_login,
            commands::opening,
            labels::labels,
            labels::save_labels,
            labels::find_label,
            labels::read_label,
            labels::lost_label,
        ])
}

/// Keeps the journals in this folder, and starts the timer of the notices.
fn attend<R: Runtime>(
    handle: &AppHandle<R>,
    folder: PathBuf,
    demo: bool,
) -> Result<(), Box<dyn Error>> {
    handle.manage(Shell::new(folder, demo));
    handle.manage(Work::default());
    #[cfg(target_os = "linux")]
    handle.manage(stay::Stay::default());
    handle.manage(keeper::start(handle.clone())?);
    let delivery: notify::Shared = Arc::new(notify::System::new(handle));
    let timer = notify::start(handle.clone(), Arc::clone(&delivery))?;
    handle.manage(timer);
    handle.manage(delivery);
    Ok(())
}

/// The app came to the front again: what the system keeps is looked through.
fn resumed<R: Runtime>(handle: &AppHandle<R>, event: &RunEvent) {
    let front = matches!(
        event,
        RunEvent::Resumed
            | RunEvent::WindowEvent {
                event: WindowEvent::Focused(true),
                ..
            }
    );
    if let (true, Some(timer)) = (front, handle.try_state::<notify::Timer>()) {
        timer.resumed();
    }
}

/// The window shows the UI in the binary and never goes anywhere else, also
/// not by a link.
fn stay_here<R: Runtime>() -> tauri::plugin::TauriPlugin<R> {
    tauri::plugin::Builder::new("stay-here")
        .on_navigation(|_, url| match url.scheme() {
            "tauri" | "about" => true,
            _ => {
                url.host_str() == Some("tauri.localhost")
                    || tauri::is_dev() && url.host_str() == Some("localhost")
            }
        })
        .build()
}

#[cfg(test)]
mod tests;

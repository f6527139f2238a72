//! The shell: a window, the commands it may call, the clock and the notices.
//!
//! Thin on purpose. What a grower can ask and say is in `plumule-app`; here it
//! is only unpacked, stamped with the time and handed on.

pub mod clock;
mod commands;
mod notify;
mod shell;

use shell::Shell;
use std::error::Error;
use std::path::PathBuf;
use tauri::{AppHandle, Builder, Manager, Runtime};

/// Opens the window and runs until it is closed. With `--demo` among the
/// arguments it shows the demo journal.
///
/// # Errors
/// If the window cannot be opened.
pub fn run() -> tauri::Result<()> {
    let demo = std::env::args().any(|word| word == "--demo");
    assemble(Builder::default())
        .setup(move |app| attend(app.handle(), app.path().app_data_dir()?, demo))
        .run(tauri::generate_context!())
}

/// The plugins and the commands.
fn assemble<R: Runtime>(builder: Builder<R>) -> Builder<R> {
    builder
        .plugin(tauri_plugin_notification::init())
        .plugin(stay_here())
        .invoke_handler(tauri::generate_handler![
            commands::start,
            commands::choose,
            commands::leave_demo,
            commands::round,
            commands::trays,
            commands::tray,
            commands::seed,
            commands::bench,
            commands::settings,
            commands::set_device,
            commands::act,
            commands::undo,
            commands::withdraw,
        ])
}

/// Keeps the journals in this folder, and starts the timer of the notices.
fn attend<R: Runtime>(
    handle: &AppHandle<R>,
    folder: PathBuf,
    demo: bool,
) -> Result<(), Box<dyn Error>> {
    handle.manage(Shell::new(folder, demo));
    let timer = notify::start(handle.clone(), notify::Desktop(handle.clone()))?;
    handle.manage(timer);
    Ok(())
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

//! What the window may call. Each unpacks its arguments and hands them on,
//! away from the window's own thread so that the picture never freezes.

use crate::notify::Timer;
use crate::shell::{Opened, Shell, error};
use plumule_app::AppError;
use plumule_app::acts::ActRequest;
use plumule_app::view::{
    Answer, BenchView, DeviceForm, RoundView, SeedView, SettingsView, StartView, TrayView,
    TraysView,
};
use plumule_journal::stamp::Stamp;
use tauri::{AppHandle, Manager, Runtime, command};

type Reply<T> = Result<T, AppError>;

#[command]
pub async fn start<R: Runtime>(app: AppHandle<R>) -> Reply<StartView> {
    change(app, Shell::start).await
}

#[command]
pub async fn choose<R: Runtime>(app: AppHandle<R>, journal: String) -> Reply<StartView> {
    change(app, move |shell| shell.choose(journal == "demo")).await
}

#[command]
pub async fn leave_demo<R: Runtime>(app: AppHandle<R>) -> Reply<StartView> {
    change(app, Shell::leave_demo).await
}

#[command]
pub async fn round<R: Runtime>(app: AppHandle<R>) -> Reply<RoundView> {
    ask(app, |opened, stamp| opened.app.round(stamp)).await
}

#[command]
pub async fn trays<R: Runtime>(app: AppHandle<R>) -> Reply<TraysView> {
    ask(app, |opened, stamp| opened.app.trays(stamp)).await
}

#[command]
pub async fn tray<R: Runtime>(app: AppHandle<R>, id: String) -> Reply<TrayView> {
    ask(app, move |opened, stamp| opened.app.tray(stamp, &id)).await
}

#[command]
pub async fn seed<R: Runtime>(app: AppHandle<R>) -> Reply<SeedView> {
    ask(app, |opened, stamp| opened.app.seed(stamp)).await
}

#[command]
pub async fn bench<R: Runtime>(app: AppHandle<R>, packet: Option<String>) -> Reply<BenchView> {
    ask(app, move |opened, stamp| {
        opened.app.bench(stamp, packet.as_deref())
    })
    .await
}

#[command]
pub async fn settings<R: Runtime>(app: AppHandle<R>) -> Reply<SettingsView> {
    ask(app, |opened, stamp| opened.app.settings(stamp, opened.demo)).await
}

#[command]
pub async fn set_device<R: Runtime>(app: AppHandle<R>, device: DeviceForm) -> Reply<SettingsView> {
    write(app, move |opened, stamp| {
        opened.app.set_device(&device)?;
        opened.app.settings(stamp, opened.demo)
    })
    .await
}

#[command]
pub async fn act<R: Runtime>(app: AppHandle<R>, request: ActRequest) -> Reply<Answer> {
    write(app, move |opened, stamp| opened.app.act(stamp, request)).await
}

#[command]
pub async fn undo<R: Runtime>(app: AppHandle<R>, act: String, confirmed: bool) -> Reply<Answer> {
    write(app, move |opened, stamp| {
        opened.app.undo(stamp, &act, confirmed)
    })
    .await
}

#[command]
pub async fn withdraw<R: Runtime>(
    app: AppHandle<R>,
    entry: String,
    confirmed: bool,
) -> Reply<Answer> {
    write(app, move |opened, stamp| {
        opened.app.withdraw(stamp, &entry, confirmed)
    })
    .await
}

/// Asks the open journal.
async fn ask<R: Runtime, T: Send + 'static>(
    app: AppHandle<R>,
    question: impl FnOnce(&mut Opened, &Stamp) -> Reply<T> + Send + 'static,
) -> Reply<T> {
    apart(move || app.state::<Shell>().ask(question)).await
}

/// Asks something of the open journal after which the notices may differ.
async fn write<R: Runtime, T: Send + 'static>(
    app: AppHandle<R>,
    act: impl FnOnce(&mut Opened, &Stamp) -> Reply<T> + Send + 'static,
) -> Reply<T> {
    change(app, |shell| shell.ask(act)).await
}

/// Does something after which the notices may differ.
async fn change<R: Runtime, T: Send + 'static>(
    app: AppHandle<R>,
    act: impl FnOnce(&Shell) -> Reply<T> + Send + 'static,
) -> Reply<T> {
    apart(move || {
        let done = act(&app.state::<Shell>());
        app.state::<Timer>().poke();
        done
    })
    .await
}

/// Runs on a thread where waiting hurts nobody. A panic there ends the command
/// and not the app.
async fn apart<T: Send + 'static>(work: impl FnOnce() -> Reply<T> + Send + 'static) -> Reply<T> {
    tauri::async_runtime::spawn_blocking(work)
        .await
        .unwrap_or_else(|_| Err(error("unexpected")))
}

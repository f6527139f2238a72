//! What the window may call. Each unpacks its arguments and hands them on,
//! away from the window's own thread so that the picture never freezes.

pub mod keep;

use crate::keeper::Keeper;
use crate::notify::{Opening, Shared, Timer};
use crate::shell::{Opened, Shell, error};
use plumule_app::AppError;
use plumule_app::acts::ActRequest;
use plumule_app::view::{
    Answer, BenchView, DeviceForm, EnoughAsk, EnoughView, FrostCsvOptions, FrostPreview,
    ImportForm, ImportView, NextNoticeView, NoticesView, PacketView, ResultsAsked, ResultsView,
    RoundView, SearchView, SeedView, SettingsView, SitterSheet, StartView, TrayView, TraysView,
    YearView,
};
use plumule_journal::stamp::Stamp;
use tauri::ipc::Request;
use tauri::{AppHandle, Manager, Runtime, command};

pub type Reply<T> = Result<T, AppError>;

#[command]
pub async fn start<R: Runtime>(app: AppHandle<R>) -> Reply<StartView> {
    change(app, Shell::start).await
}

/// Opens what is there while the web view still wakes, and makes the round that
/// it will ask for.
pub async fn wake<R: Runtime>(app: AppHandle<R>) {
    if start(app.clone()).await.is_ok() {
        // Where none is open, or it cannot be read, the window is told when it asks.
        let _ = ask(app, Opened::make_ready).await;
    }
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
    ask(app, Opened::round).await
}

#[command]
pub async fn sitter_sheet<R: Runtime>(app: AppHandle<R>) -> Reply<SitterSheet> {
    ask(app, |opened, stamp| opened.app.sitter_sheet(stamp)).await
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
pub async fn search<R: Runtime>(app: AppHandle<R>, typed: String) -> Reply<SearchView> {
    ask(app, move |opened, stamp| opened.app.search(stamp, &typed)).await
}

#[command]
pub async fn seed<R: Runtime>(app: AppHandle<R>) -> Reply<SeedView> {
    ask(app, |opened, stamp| opened.app.seed(stamp)).await
}

#[command]
pub async fn packet<R: Runtime>(app: AppHandle<R>, id: String) -> Reply<PacketView> {
    ask(app, move |opened, stamp| opened.app.packet(stamp, &id)).await
}

/// What a table of packets would bring. The body is the file; how it is read
/// stands as JSON in the header `form`.
#[command]
pub async fn read_packets<R: Runtime>(
    app: AppHandle<R>,
    request: Request<'_>,
) -> Reply<ImportView> {
    let (bytes, form) = table(&request)?;
    ask(app, move |opened, stamp| {
        opened.app.read_packets(stamp, &bytes, &form)
    })
    .await
}

/// Adds the packets of a table, sent as to [`read_packets`].
#[command]
pub async fn import_packets<R: Runtime>(app: AppHandle<R>, request: Request<'_>) -> Reply<Answer> {
    let (bytes, form) = table(&request)?;
    write(app, move |opened, stamp| {
        opened.app.import_packets(stamp, &bytes, &form)
    })
    .await
}

fn table(request: &Request<'_>) -> Reply<(Vec<u8>, ImportForm)> {
    let form = request.headers().get("form");
    let form = form.and_then(|it| serde_json::from_slice(it.as_bytes()).ok());
    let bytes = crate::photos::bytes(request.body())?;
    Ok((bytes, form.ok_or_else(|| error("unexpected"))?))
}

#[command]
pub async fn bench<R: Runtime>(app: AppHandle<R>, packet: Option<String>) -> Reply<BenchView> {
    ask(app, move |opened, stamp| {
        opened.app.bench(stamp, packet.as_deref())
    })
    .await
}

#[command]
pub async fn results<R: Runtime>(app: AppHandle<R>, asked: ResultsAsked) -> Reply<ResultsView> {
    ask(app, move |opened, stamp| opened.app.results(stamp, &asked)).await
}

#[command]
pub async fn year<R: Runtime>(app: AppHandle<R>) -> Reply<YearView> {
    ask(app, |opened, stamp| opened.app.year(stamp)).await
}

#[command]
pub async fn enough<R: Runtime>(app: AppHandle<R>, ask: EnoughAsk) -> Reply<EnoughView> {
    self::ask(app, move |opened, stamp| opened.app.enough(stamp, ask)).await
}

#[command]
pub async fn settings<R: Runtime>(app: AppHandle<R>) -> Reply<SettingsView> {
    ask(app, |opened, stamp| opened.app.settings(stamp, opened.demo)).await
}

#[command]
pub async fn frost_preview<R: Runtime>(
    app: AppHandle<R>,
    file: Vec<u8>,
    options: FrostCsvOptions,
) -> Reply<FrostPreview> {
    ask(app, move |opened, _| {
        opened.app.frost_preview(&file, &options)
    })
    .await
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

#[command]
pub async fn notices<R: Runtime>(app: AppHandle<R>) -> Reply<NoticesView> {
    apart(move || notices_view(&app)).await
}

#[command]
pub async fn ask_notices<R: Runtime>(app: AppHandle<R>) -> Reply<NoticesView> {
    apart(move || {
        app.state::<Shared>().ask();
        app.state::<Timer>().resumed();
        notices_view(&app)
    })
    .await
}

#[command]
pub async fn test_notice<R: Runtime>(app: AppHandle<R>) -> Reply<()> {
    apart(move || {
        let notice = app
            .state::<Shell>()
            .ask(|opened, stamp| opened.app.test_notice(stamp))?;
        let shown = app.state::<Shared>().put(&notice);
        shown.then_some(()).ok_or_else(|| error("notice_not_shown"))
    })
    .await
}

/// Has the app start at login or not, where that is offered.
#[command]
pub async fn set_at_login<R: Runtime>(app: AppHandle<R>, wanted: bool) -> Reply<NoticesView> {
    apart(move || {
        #[cfg(target_os = "linux")]
        crate::stay::start_at_login(&app, wanted)?;
        #[cfg(not(target_os = "linux"))]
        let _ = wanted;
        notices_view(&app)
    })
    .await
}

/// Where a notice asks the window to open, once: a tray by its id, the round
/// (empty).
#[command]
pub async fn opening<R: Runtime>(app: AppHandle<R>) -> Reply<Option<String>> {
    Ok(app.state::<Opening>().take())
}

fn notices_view<R: Runtime>(app: &AppHandle<R>) -> Reply<NoticesView> {
    let standing = app.state::<Shared>().standing();
    let wanted = |opened: &mut Opened| Ok(opened.app.device()?.notices);
    Ok(NoticesView {
        wanted: app.state::<Shell>().ask(|opened, _| wanted(opened))?,
        permission: standing.permission.word().to_owned(),
        held_back: standing.held_back,
        system: std::env::consts::OS.to_owned(),
        #[cfg(target_os = "linux")]
        at_login: Some(crate::stay::starts_at_login(app)),
        #[cfg(not(target_os = "linux"))]
        at_login: None,
    })
}

#[command]
pub async fn next_notice<R: Runtime>(app: AppHandle<R>) -> Reply<Option<NextNoticeView>> {
    apart(move || {
        let shell = app.state::<Shell>();
        let desk = shell.ask(|opened, stamp| opened.app.notice_desk(stamp))?;
        let plan = desk.plan();
        let plan = shell.ask(|opened, _| opened.app.undelivered(plan))?;
        Ok(desk.next(plan))
    })
    .await
}

/// Asks the open journal.
pub async fn ask<R: Runtime, T: Send + 'static>(
    app: AppHandle<R>,
    question: impl FnOnce(&mut Opened, &Stamp) -> Reply<T> + Send + 'static,
) -> Reply<T> {
    apart(move || app.state::<Shell>().ask(question)).await
}

/// Asks something of the open journal after which the notices may differ.
pub async fn write<R: Runtime, T: Send + 'static>(
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
        app.state::<Keeper>().poke();
        #[cfg(target_os = "linux")]
        crate::stay::look(&app);
        done
    })
    .await
}

/// Runs on a thread where waiting hurts nobody. A panic there ends the command
/// and not the app.
pub async fn apart<T: Send + 'static>(
    work: impl FnOnce() -> Reply<T> + Send + 'static,
) -> Reply<T> {
    tauri::async_runtime::spawn_blocking(work)
        .await
        .unwrap_or_else(|_| Err(error("unexpected")))
}

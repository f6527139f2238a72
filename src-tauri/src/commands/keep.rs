//! What is kept: drafts, lines put right, backups, and what goes to other
//! devices and programs.

use super::{Reply, apart, ask, write};
use crate::files;
use crate::shell::Shell;
use crate::work::{self, Work};
use plumule_app::view::{Answer, CorrectRequest, KeepView, Task, TimelineLine, WorkView};
use tauri::{AppHandle, Manager, Runtime, command};

#[command]
pub async fn draft<R: Runtime>(app: AppHandle<R>, name: String) -> Reply<Option<String>> {
    ask(app, move |opened, _| opened.app.draft(&name)).await
}

#[command]
pub async fn keep_draft<R: Runtime>(
    app: AppHandle<R>,
    name: String,
    text: Option<String>,
) -> Reply<()> {
    ask(app, move |opened, _| {
        opened.app.keep_draft(&name, text.as_deref())
    })
    .await
}

#[command]
pub async fn correct<R: Runtime>(app: AppHandle<R>, request: CorrectRequest) -> Reply<Answer> {
    write(app, move |opened, stamp| {
        opened.app.correct(stamp, &request)
    })
    .await
}

#[command]
pub async fn history<R: Runtime>(app: AppHandle<R>, about: String) -> Reply<Vec<TimelineLine>> {
    ask(app, move |opened, _| opened.app.history(&about)).await
}

#[command]
pub async fn keep<R: Runtime>(app: AppHandle<R>) -> Reply<KeepView> {
    apart(move || {
        let shell = app.state::<Shell>();
        let trouble = shell.trouble();
        shell.ask(|opened, stamp| opened.app.keep(stamp, opened.demo, trouble.as_ref()))
    })
    .await
}

#[command]
pub fn work_begin<R: Runtime>(app: AppHandle<R>, task: Task) -> Reply<()> {
    work::begin(app, task)
}

#[command]
pub fn work<R: Runtime>(app: AppHandle<R>) -> WorkView {
    app.state::<Work>().view()
}

#[command]
pub fn work_cancel<R: Runtime>(app: AppHandle<R>) {
    app.state::<Work>().call_off();
}

/// The file that the grower chooses, for work to come; its name.
#[command]
pub async fn choose_file<R: Runtime>(app: AppHandle<R>) -> Reply<Option<String>> {
    apart(move || {
        let Some((name, path)) = files::choose_file(&app)? else {
            return Ok(None);
        };
        app.state::<Work>().choose(Some(path));
        Ok(Some(name))
    })
    .await
}

/// Shares by the folder that the grower chooses from now on; its path, none
/// if that was called off.
#[command]
pub async fn choose_folder<R: Runtime>(app: AppHandle<R>) -> Reply<Option<String>> {
    apart(move || {
        let Some(folder) = files::choose_folder(&app)? else {
            return Ok(None);
        };
        let shell = app.state::<Shell>();
        shell.ask(|opened, _| {
            opened.app.share_in(Some(&folder))?;
            opened.app.shared_folder()
        })
    })
    .await
}

/// Shares by no folder any more.
#[command]
pub async fn leave_folder<R: Runtime>(app: AppHandle<R>) -> Reply<()> {
    ask(app, |opened, _| opened.app.share_in(None)).await
}

/// Saves a part of the journal for other programs; false if that was called
/// off.
#[command]
pub async fn export<R: Runtime>(app: AppHandle<R>, part: String) -> Reply<bool> {
    apart(move || {
        let shell = app.state::<Shell>();
        let made = shell.ask(|opened, stamp| opened.app.export(stamp, &part))?;
        files::save_file(&app, &made.name, &made.bytes)
    })
    .await
}

/// Ends the program: another one has the journal.
#[command]
pub fn quit<R: Runtime>(app: AppHandle<R>) {
    app.exit(0);
}

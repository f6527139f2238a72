//! What is kept: drafts, and lines put right.

use super::{Reply, ask, write};
use plumule_app::view::{Answer, CorrectRequest, TimelineLine};
use tauri::{AppHandle, Runtime, command};

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

//! Labels between the window and the app: saved as PDF, read off a photo.

use crate::commands::{Reply, apart, ask};
use crate::files::save_file;
use crate::photos::bytes;
use plumule_app::labels::read_photo;
use plumule_app::view::{Candidate, FoundLabel, LabelSheet, LabelsView, LostLabel};
use tauri::ipc::Request;
use tauri::{AppHandle, Runtime, command};

/// What the file is called unless the grower calls it otherwise.
const NAME: &str = "labels.pdf";

#[command]
pub async fn labels<R: Runtime>(app: AppHandle<R>) -> Reply<LabelsView> {
    ask(app, |opened, stamp| opened.app.labels(stamp)).await
}

/// Saves labels where the grower says; false if that was called off.
#[command]
pub async fn save_labels<R: Runtime>(app: AppHandle<R>, sheet: LabelSheet) -> Reply<bool> {
    let pdf = ask(app.clone(), move |opened, stamp| {
        opened.app.labels_pdf(stamp, &sheet)
    })
    .await?;
    apart(move || save_file(&app, NAME, &pdf)).await
}

#[command]
pub async fn find_label<R: Runtime>(app: AppHandle<R>, text: String) -> Reply<FoundLabel> {
    ask(app, move |opened, stamp| {
        opened.app.find_label(stamp, &text)
    })
    .await
}

/// The body is the photo.
#[command]
pub async fn read_label<R: Runtime>(app: AppHandle<R>, request: Request<'_>) -> Reply<FoundLabel> {
    let bytes = bytes(request.body())?;
    let read = apart(move || read_photo(&bytes)).await?;
    ask(app, move |opened, stamp| {
        opened.app.find_photo(stamp, &read)
    })
    .await
}

#[command]
pub async fn lost_label<R: Runtime>(app: AppHandle<R>, lost: LostLabel) -> Reply<Vec<Candidate>> {
    ask(app, move |opened, stamp| {
        opened.app.lost_label(stamp, &lost)
    })
    .await
}

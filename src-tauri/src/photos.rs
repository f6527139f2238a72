//! Photos between the window and the journal: bytes in, pictures out.

use crate::commands::{Reply, apart, ask, write};
use crate::shell::{Shell, error};
use base64::Engine;
use base64::prelude::BASE64_STANDARD;
use chrono::NaiveDateTime;
use plumule_app::photos::{self, OfPhoto, Photo};
use plumule_app::view::{Answer, PhotoView};
use tauri::http::{HeaderMap, Response, StatusCode, Uri, header};
use tauri::ipc::{InvokeBody, Request};
use tauri::{AppHandle, Manager, Runtime, UriSchemeContext, UriSchemeResponder, command};

/// The scheme under which the window asks for pictures: `photo://localhost/`,
/// the photo's name, and `?thumb` for the small one.
pub const SCHEME: &str = "photo";

/// Takes a photo in. The body is the file; what it is of and when it happened
/// stand in the headers `about` and `happened`, `confirmed` if it was asked.
#[command]
pub async fn add_photo<R: Runtime>(app: AppHandle<R>, request: Request<'_>) -> Reply<Answer> {
    let of = of_photo(request.headers())?;
    let bytes = bytes(request.body())?;
    // Decoding takes a while, and nothing else need wait for it.
    let photo = apart(move || Photo::new(&bytes)).await?;
    write(app, move |opened, stamp| {
        opened.app.add_photo(stamp, &photo, &of)
    })
    .await
}

/// The photos about something, or those still to be named.
#[command]
pub async fn photos<R: Runtime>(app: AppHandle<R>, about: Option<String>) -> Reply<Vec<PhotoView>> {
    ask(app, move |opened, _| opened.app.photos(about.as_deref())).await
}

#[command]
pub async fn remove_photo<R: Runtime>(app: AppHandle<R>, entry: String) -> Reply<Answer> {
    write(app, move |opened, stamp| {
        opened.app.remove_photo(stamp, &entry)
    })
    .await
}

fn of_photo(headers: &HeaderMap) -> Reply<OfPhoto> {
    let text = |name: &str| -> Reply<Option<String>> {
        headers
            .get(name)
            .map(|value| value.to_str().map(str::to_owned))
            .transpose()
            .map_err(|_| error("unexpected"))
    };
    let happened = text("happened")?
        .map(|at| at.parse::<NaiveDateTime>())
        .transpose();
    Ok(OfPhoto {
        about: text("about")?,
        happened: happened.map_err(|_| error("unexpected"))?,
        hand: String::new(),
        confirmed: headers.contains_key("confirmed"),
    })
}

/// The bytes of a file. Where the web view cannot hand them over as they are
/// they come as Base64 (`bytes`), or as a list of numbers.
pub fn bytes(body: &InvokeBody) -> Reply<Vec<u8>> {
    let bad = || error("unexpected");
    match body {
        InvokeBody::Raw(bytes) => Ok(bytes.clone()),
        InvokeBody::Json(json) => match json.get("bytes").and_then(|it| it.as_str()) {
            Some(text) => BASE64_STANDARD.decode(text).map_err(|_| bad()),
            None => json
                .as_array()
                .ok_or_else(bad)?
                .iter()
                .map(|it| it.as_u64().and_then(|it| u8::try_from(it).ok()))
                .collect::<Option<_>>()
                .ok_or_else(bad),
        },
    }
}

/// Answers the window's request for a picture, away from its own thread.
pub fn serve<R: Runtime>(
    context: UriSchemeContext<'_, R>,
    request: tauri::http::Request<Vec<u8>>,
    responder: UriSchemeResponder,
) {
    let app = context.app_handle().clone();
    tauri::async_runtime::spawn_blocking(move || {
        let picture = picture(&app.state::<Shell>(), request.uri());
        responder.respond(response(picture));
    });
}

fn picture(shell: &Shell, uri: &Uri) -> Option<Vec<u8>> {
    let home = shell.home()?;
    let name = uri.path().strip_prefix('/')?;
    photos::read(&home, name, uri.query() == Some("thumb"))
}

fn response(picture: Option<Vec<u8>>) -> Response<Vec<u8>> {
    let found = picture.is_some();
    let mut response = Response::new(picture.unwrap_or_default());
    if found {
        let headers = response.headers_mut();
        headers.insert(
            header::CONTENT_TYPE,
            header::HeaderValue::from_static("image/jpeg"),
        );
        // Its name is the hash of what is in it.
        let ever = header::HeaderValue::from_static("private, max-age=31536000, immutable");
        headers.insert(header::CACHE_CONTROL, ever);
    } else {
        *response.status_mut() = StatusCode::NOT_FOUND;
    }
    response
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn bytes_come_in_as_they_are_as_text_or_as_numbers() {
        let raw = InvokeBody::Raw(vec![0, 255]);
        assert_eq!(bytes(&raw).unwrap(), [0, 255]);
        let text = InvokeBody::Json(json!({ "bytes": "AP8=" }));
        assert_eq!(bytes(&text).unwrap(), [0, 255]);
        assert_eq!(bytes(&InvokeBody::Json(json!([0, 255]))).unwrap(), [0, 255]);
        for bad in [json!([256]), json!({ "bytes": "?" }), json!({}), json!("x")] {
            assert!(bytes(&InvokeBody::Json(bad)).is_err());
        }
    }

    #[test]
    fn only_the_name_of_a_photo_finds_one() {
        let folder = tempfile::tempdir().unwrap();
        let shell = Shell::new(folder.path().to_owned(), false);
        let photo = "ab".repeat(32);
        let at = |path: &str| format!("photo://localhost/{path}").parse::<Uri>().unwrap();
        assert_eq!(picture(&shell, &at(&photo)), None);
        shell.choose(false).unwrap();
        let home = shell.home().unwrap();
        std::fs::write(home.join(format!("journal/photos/{photo}")), b"jpeg").unwrap();
        assert_eq!(picture(&shell, &at(&photo)), Some(b"jpeg".to_vec()));
        for other in [
            "",
            "../journal.db",
            "..%2F..%2Fdevice.db",
            &format!("{photo}.jpg"),
            &photo.to_uppercase(),
            &format!("x/{photo}"),
        ] {
            assert_eq!(picture(&shell, &at(other)), None, "{other}");
        }
        assert_eq!(response(None).status(), StatusCode::NOT_FOUND);
    }
}

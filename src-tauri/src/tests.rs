//! What the window may and may not call, with Tauri's own check of the real
//! capability file and no web view.

use crate::{assemble, attend, clock};
use serde_json::{Value, json};
use tauri::test::{INVOKE_KEY, MockRuntime, get_ipc_response, mock_builder};
use tauri::{WebviewWindow, WebviewWindowBuilder};

fn call(window: &WebviewWindow<MockRuntime>, cmd: &str, body: Value) -> Result<Value, Value> {
    let request = tauri::webview::InvokeRequest {
        cmd: cmd.to_owned(),
        callback: tauri::ipc::CallbackFn(0),
        error: tauri::ipc::CallbackFn(1),
        url: "tauri://localhost".parse().unwrap(),
        body: tauri::ipc::InvokeBody::Json(body),
        headers: tauri::http::HeaderMap::default(),
        invoke_key: INVOKE_KEY.to_owned(),
    };
    get_ipc_response(window, request).map(|body| body.deserialize().unwrap())
}

#[test]
fn the_window_may_call_our_commands_and_nothing_else() {
    let folder = tempfile::tempdir().unwrap();
    let app = assemble(mock_builder())
        .build(tauri::generate_context!())
        .unwrap();
    attend(app.handle(), folder.path().join("data"), false).unwrap();
    let window = match tauri::Manager::get_webview_window(&app, "main") {
        Some(window) => window,
        None => WebviewWindowBuilder::new(&app, "main", tauri::WebviewUrl::default())
            .build()
            .unwrap(),
    };

    let started = call(&window, "start", json!({})).unwrap();
    assert_eq!(started["journal"], "choose");
    assert_eq!(
        call(&window, "round", json!({})).unwrap_err()["code"],
        "not_open"
    );
    assert_eq!(
        call(&window, "choose", json!({ "journal": "own" })).unwrap()["journal"],
        "own"
    );
    assert!(call(&window, "round", json!({})).is_ok());

    for refused in [
        "plugin:notification|notify",
        "plugin:notification|is_permission_granted",
        "plugin:window|set_title",
        "plugin:webview|create_webview_window",
        "plugin:event|emit",
        "plugin:path|resolve_directory",
        "plugin:app|version",
        "plugin:resources|close",
    ] {
        let error = call(&window, refused, json!({})).unwrap_err();
        let error = error.as_str().unwrap_or_default();
        assert!(error.contains("not allowed"), "{refused}: {error}");
    }
}

#[test]
fn a_second_program_does_not_get_the_journal() {
    let folder = tempfile::tempdir().unwrap();
    let first = crate::shell::Shell::new(folder.path().to_owned(), false);
    let second = crate::shell::Shell::new(folder.path().to_owned(), false);
    assert_eq!(first.choose(false).unwrap().journal, "own");
    assert_eq!(second.start().unwrap_err().code, "journal_busy");
    drop(first);
    assert_eq!(second.start().unwrap().journal, "own");
}

#[test]
fn every_stamp_has_fresh_chance() {
    let (a, b) = (clock::stamp().unwrap(), clock::stamp().unwrap());
    assert_ne!(a.entropy, b.entropy);
}

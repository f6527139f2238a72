//! What the window may and may not call, with Tauri's own check of the real
//! capability file and no web view.

use crate::{assemble, attend, clock};
use chrono::TimeDelta;
use plumule_app::view::Answer;
use plumule_journal::stamp::Stamp;
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
fn a_round_made_ready_is_told_once_and_soon_and_not_after_a_change() {
    let folder = tempfile::tempdir().unwrap();
    let shell = crate::shell::Shell::new(folder.path().to_owned(), false);
    shell.choose(false).unwrap();
    let told = |later: i64, changed: bool| {
        let at = shell.ask(|opened, stamp| {
            opened.make_ready(stamp)?;
            if changed {
                let night = stamp.now.date_naive();
                let act = json!({ "do": "night_low", "night": night, "place": null, "low_c": 2.0 });
                let request = serde_json::from_value(json!({ "act": act })).unwrap();
                let answer = opened.app.act(stamp, request)?;
                assert!(matches!(answer, Answer::Written { .. }), "{answer:?}");
            }
            let later = Stamp {
                now: stamp.now + TimeDelta::seconds(later),
                ..stamp.clone()
            };
            let (first, second) = (opened.round(&later)?, opened.round(&later)?);
            let now = opened.app.round(stamp)?.at;
            Ok([first, second].map(|round| (round.at - now).num_seconds()))
        });
        at.unwrap()
    };
    assert_eq!(told(9, false), [0, 9]);
    assert_eq!(told(10, false), [10, 10]);
    assert_eq!(told(-1, false), [-1, -1]);
    assert_eq!(told(9, true), [9, 9]);
}

#[test]
fn every_stamp_has_fresh_chance() {
    let (a, b) = (clock::stamp().unwrap(), clock::stamp().unwrap());
    assert_ne!(a.entropy, b.entropy);
}

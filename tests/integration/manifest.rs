//! What the Android app may do, by its manifest.

use roxmltree::{Document, Node};
use std::collections::BTreeSet;
use std::path::Path;

const ANDROID: &str = "http://schemas.android.com/apk/res/android";

fn read(inside: &str) -> String {
    let path = Path::new("../src-tauri/gen/android/app/src").join(inside);
    std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

fn named<'a>(node: Node<'a, '_>) -> &'a str {
    node.attribute((ANDROID, "name")).unwrap_or_default()
}

/// Every element of the kind, by name.
fn all<'a>(document: &'a Document<'_>, kind: &str) -> BTreeSet<&'a str> {
    let elements = document.descendants();
    elements
        .filter(|it| it.has_tag_name(kind))
        .map(named)
        .collect()
}

#[test]
fn the_release_asks_for_notices_and_the_start_of_the_phone_and_nothing_else() {
    let text = read("main/AndroidManifest.xml");
    let main = Document::parse(&text).unwrap();
    let expected = [
        "android.permission.POST_NOTIFICATIONS",
        "android.permission.RECEIVE_BOOT_COMPLETED",
    ];
    assert_eq!(all(&main, "uses-permission"), expected.into());
    let others = main.descendants().filter(|it| {
        let name = it.tag_name().name();
        name.starts_with("uses-permission-") || name == "permission" || name == "uses-feature"
    });
    assert_eq!(others.count(), 0);
}

#[test]
fn only_while_it_is_worked_on_may_it_use_the_network() {
    let text = read("debug/AndroidManifest.xml");
    let debug = Document::parse(&text).unwrap();
    let expected = ["android.permission.INTERNET"];
    assert_eq!(all(&debug, "uses-permission"), expected.into());
    assert!(!Path::new("../src-tauri/gen/android/app/src/release").exists());
}

#[test]
fn it_may_ask_the_cameras_app_and_lets_nobody_else_in() {
    let text = read("main/AndroidManifest.xml");
    let main = Document::parse(&text).unwrap();
    let queries = main
        .descendants()
        .find(|it| it.has_tag_name("queries"))
        .unwrap();
    let asked: Vec<&str> = queries
        .descendants()
        .filter(|it| it.has_tag_name("action"))
        .map(named)
        .collect();
    assert_eq!(asked, ["android.media.action.IMAGE_CAPTURE"]);
    let parts = ["activity", "receiver", "provider", "service"];
    let open: Vec<&str> = main
        .descendants()
        .filter(|it| parts.contains(&it.tag_name().name()))
        .filter(|it| it.attribute((ANDROID, "exported")) != Some("false"))
        .map(named)
        .collect();
    assert_eq!(open, [".MainActivity"]);
}

#[test]
fn no_cloud_gets_the_journal_and_no_other_phone_this_copys_identity() {
    let text = read("main/AndroidManifest.xml");
    let main = Document::parse(&text).unwrap();
    let app = main
        .descendants()
        .find(|it| it.has_tag_name("application"))
        .unwrap();
    assert_eq!(
        app.attribute((ANDROID, "dataExtractionRules")),
        Some("@xml/data_extraction_rules")
    );
    assert_eq!(
        app.attribute((ANDROID, "fullBackupContent")),
        Some("@xml/backup_rules")
    );
    let text = read("main/res/xml/data_extraction_rules.xml");
    let rules = Document::parse(&text).unwrap();
    let part = |name: &str| {
        rules
            .descendants()
            .find(|it| it.has_tag_name(name))
            .unwrap()
    };
    let paths = |of: Node<'_, '_>, kind: &str| -> Vec<String> {
        let elements = of.children().filter(|it| it.has_tag_name(kind));
        elements
            .filter_map(|it| {
                Some(format!(
                    "{} {}",
                    it.attribute("domain")?,
                    it.attribute("path")?
                ))
            })
            .collect()
    };
    let cloud = part("cloud-backup");
    assert!(paths(cloud, "include").is_empty());
    assert!(paths(cloud, "exclude").contains(&"root .".to_owned()));
    let transfer = part("device-transfer");
    assert_eq!(paths(transfer, "include"), ["file journals/own/"]);
    assert!(paths(transfer, "exclude").contains(&"file journals/own/device.db".to_owned()));
}

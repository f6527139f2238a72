//! Makes the permissions of our own commands, and of no others.

/// Every command of the shell; the window may call these and nothing else.
const COMMANDS: &[&str] = &[
    "start",
    "choose",
    "leave_demo",
    "round",
    "sitter_sheet",
    "trays",
    "tray",
    "search",
    "seed",
    "packet",
    "read_packets",
    "import_packets",
    "bench",
    "results",
    "year",
    "enough",
    "settings",
    "set_device",
    "frost_preview",
    "act",
    "undo",
    "withdraw",
    "draft",
    "keep_draft",
    "correct",
    "history",
    "add_photo",
    "photos",
    "remove_photo",
    "keep",
    "work_begin",
    "work",
    "work_cancel",
    "choose_file",
    "export",
    "quit",
    "choose_folder",
    "leave_folder",
    "notices",
    "ask_notices",
    "next_notice",
    "test_notice",
    "set_at_login",
    "opening",
    "labels",
    "save_labels",
    "find_label",
    "read_label",
    "lost_label",
];

fn main() -> Result<(), Box<dyn std::error::Error>> {
    // The UI is built into the binary by a macro, which cargo does not see read it.
    println!("cargo:rerun-if-changed=../ui/dist");
    let manifest = tauri_build::AppManifest::new().commands(COMMANDS);
    let attributes = tauri_build::Attributes::new().app_manifest(manifest);
    Ok(tauri_build::try_build(attributes)?)
}

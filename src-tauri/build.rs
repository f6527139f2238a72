//! Makes the permissions of our own commands, and of no others.

/// Every command of the shell; the window may call these and nothing else.
const COMMANDS: &[&str] = &[
    "start",
    "choose",
    "leave_demo",
    "round",
    "trays",
    "tray",
    "seed",
    "bench",
    "settings",
    "set_device",
    "act",
    "undo",
    "withdraw",
];

fn main() -> Result<(), Box<dyn std::error::Error>> {
    // The UI is built into the binary by a macro, which cargo does not see read it.
    println!("cargo:rerun-if-changed=../ui/dist");
    let manifest = tauri_build::AppManifest::new().commands(COMMANDS);
    let attributes = tauri_build::Attributes::new().app_manifest(manifest);
    Ok(tauri_build::try_build(attributes)?)
}

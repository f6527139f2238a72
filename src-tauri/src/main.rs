//! The program on the desktop; phones enter through the library.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

fn main() -> tauri::Result<()> {
    plumule_lib::run()
}

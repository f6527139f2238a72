//! A window with a line of text in it.

fn main() -> tauri::Result<()> {
    tauri::Builder::default().run(tauri::generate_context!())
}

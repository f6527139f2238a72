//! What every Tauri app needs.

fn main() {
    tauri_build::build();
}

//! Writes CROPS.md from the crop book: `cargo run -p plumule-agronomy --example crops_page`.

mod page;

fn main() -> std::io::Result<()> {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/CROPS.md");
    std::fs::write(path, page::page(plumule_agronomy::crops()))
}

//! CROPS.md is the crop book's.

use plumule_agronomy::crops;

#[path = "../examples/crops_page/page.rs"]
mod page;

#[test]
fn the_page_is_the_books() {
    let written = include_str!("../CROPS.md").replace("\r\n", "\n");
    assert!(
        written == page::page(crops()),
        "CROPS.md is stale: cargo run -p plumule-agronomy --example crops_page"
    );
}

//! Journals that were written by released versions and are kept, so that every
//! later one opens them.

use std::path::{Path, PathBuf};

/// An entry of each kind, as they were when the first of them was written.
pub const ENTRIES: &[u8] = include_bytes!("../corpus/entries/of-each-kind.jsonl");
/// The passphrase of the sealed ones.
pub const PASSPHRASE: &str = "kept for later versions";

/// The folders of all that are kept.
pub fn all() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures");
    let files = std::fs::read_dir(folder).unwrap();
    let mut found: Vec<_> = files.map(|file| file.unwrap().path()).collect();
    found.retain(|path| path.is_dir());
    found.sort();
    found
}

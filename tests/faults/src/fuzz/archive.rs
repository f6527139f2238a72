//! Archives put together by hand: any members under any names, with or without
//! a manifest that fits them.

use sha2::{Digest, Sha256};
use std::io::{Cursor, Write};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipWriter};

/// The photo of the corpus.
pub const PHOTO: &[u8] = b"a seedling, as bytes";

/// SHA-256 in hexadecimal digits.
pub fn sha256(bytes: &[u8]) -> String {
    let digest = Sha256::digest(bytes);
    digest.iter().map(|byte| format!("{byte:02x}")).collect()
}

/// A manifest that fits entries and photos.
pub fn manifest(entries: &[u8], photos: &[&[u8]]) -> String {
    let photos: Vec<_> = photos
        .iter()
        .map(|photo| {
            format!(
                "{{\"sha256\":\"{}\",\"bytes\":{}}}",
                sha256(photo),
                photo.len()
            )
        })
        .collect();
    format!(
        "{{\"format\":\"plumule-journal\",\"version\":1,\"app\":\"0.1.0\",\
         \"written\":\"2026-05-20T07:00:00Z\",\
         \"entries\":{{\"count\":{},\"bytes\":{},\"sha256\":\"{}\"}},\
         \"days\":null,\"photos\":[{}],\"photos_missing\":[]}}",
        entries.iter().filter(|byte| **byte == b'\n').count(),
        entries.len(),
        sha256(entries),
        photos.join(",")
    )
}

/// A zip of members, each by name: photos stored, the rest deflated.
pub fn zip(members: &[(&str, &[u8])]) -> Vec<u8> {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, bytes) in members {
        let method = if name.starts_with("photos/") {
            CompressionMethod::Stored
        } else {
            CompressionMethod::Deflated
        };
        let options = SimpleFileOptions::default().compression_method(method);
        zip.start_file(*name, options).unwrap();
        zip.write_all(bytes).unwrap();
    }
    zip.finish().unwrap().into_inner()
}

/// A whole archive of entries and photos.
pub fn whole(entries: &[u8], photos: &[&[u8]]) -> Vec<u8> {
    let manifest = manifest(entries, photos);
    let names: Vec<_> = photos
        .iter()
        .map(|it| format!("photos/{}", sha256(it)))
        .collect();
    let mut members = vec![("entries.jsonl", entries)];
    members.extend(names.iter().map(String::as_str).zip(photos.iter().copied()));
    members.push(("manifest.json", manifest.as_bytes()));
    zip(&members)
}

//! The photos that entries name against the files, and each file against its
//! name.

use crate::audit::told;
use crate::error::Error;
use crate::files;
use crate::finding::{Finding, Findings, Step, Watch};
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// Photos on disk by their SHA-256, which is the name before any ending.
pub(crate) fn on_disk(photos: &Path) -> Result<BTreeMap<String, PathBuf>, Error> {
    let names = files::names(photos)?;
    Ok(names
        .into_iter()
        .filter(|name| Path::new(name).extension().is_none_or(|end| end != "part"))
        .filter_map(|name| {
            let stem = name.split('.').next()?;
            (stem.len() == 64).then(|| (stem.to_owned(), photos.join(&name)))
        })
        .collect())
}

pub(super) fn check(
    photos: &Path,
    named: &BTreeSet<String>,
    findings: &mut Findings,
    watch: &mut Watch,
) {
    let there = match on_disk(photos) {
        Ok(there) => there,
        Err(error) => {
            let fault = Finding::new("file_damaged").text("fault", error.to_string());
            return findings.found.push(fault);
        }
    };
    let of = u64::try_from(there.len()).unwrap_or(u64::MAX);
    for photo in named.iter().filter(|photo| !there.contains_key(*photo)) {
        let missing = Finding::new("photo_missing").text("photo", photo);
        findings.found.push(missing);
    }
    for (photo, path) in &there {
        if !told(findings, watch, Step::Photos, findings.photos, of) {
            return;
        }
        findings.photos += 1;
        if files::sha256(path).is_ok_and(|sum| sum == *photo) {
            continue;
        }
        findings
            .found
            .push(Finding::new("photo_altered").text("photo", photo));
    }
}

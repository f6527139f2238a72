//! Homes of journals, made and copied.

use crate::writes;
use plumule_journal::Journal;
use std::fs;
use std::path::Path;
use tempfile::TempDir;

/// A home of its own, its path without links.
pub fn empty() -> TempDir {
    let folder = std::env::temp_dir().canonicalize().unwrap();
    TempDir::new_in(folder).unwrap()
}

/// A home with so many acts in its journal, closed.
pub fn with_acts(number: u64) -> TempDir {
    let home = empty();
    let mut journal = Journal::open(home.path(), &writes::stamp(0)).unwrap();
    for n in 0..number {
        writes::act(&mut journal, n).unwrap();
    }
    home
}

/// A copy of a home.
pub fn copied(home: &Path) -> TempDir {
    let copy = empty();
    copy_into(home, copy.path());
    copy
}

fn copy_into(from: &Path, to: &Path) {
    for file in fs::read_dir(from).unwrap() {
        let file = file.unwrap();
        let to = to.join(file.file_name());
        if file.file_type().unwrap().is_dir() {
            fs::create_dir_all(&to).unwrap();
            copy_into(&file.path(), &to);
        } else {
            fs::copy(file.path(), to).unwrap();
        }
    }
}

/// Opens a home.
pub fn opened(home: &Path) -> Journal {
    Journal::open(home, &writes::stamp(0)).unwrap()
}

/// Opens a home and looks at all of it: the journal, or what is wrong.
///
/// # Errors
/// A sentence with the error or the findings.
pub fn whole(home: &Path) -> Result<Journal, String> {
    let journal = Journal::open(home, &writes::stamp(0)).map_err(|e| format!("opening: {e}"))?;
    let findings = journal.check(&mut |_| true);
    if findings.all_well() {
        Ok(journal)
    } else {
        Err(format!("{findings:?}"))
    }
}

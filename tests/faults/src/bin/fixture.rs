//! `fixture FOLDER` writes a journal of this version, to be kept: a home, and
//! archives of it without and with a passphrase. A later version must open all
//! of them; what is there is never written anew.

use plumule_faults::fuzz::archive::{PHOTO, whole};
use plumule_faults::kept::{ENTRIES, PASSPHRASE};
use plumule_faults::writes::{act, stamp};
use plumule_journal::{Journal, archive};
use std::error::Error;
use std::fs;
use std::path::PathBuf;

fn main() -> Result<(), Box<dyn Error>> {
    let folder = PathBuf::from(std::env::args().nth(1).ok_or("fixture FOLDER")?);
    fs::create_dir(&folder)?;
    let home = folder.join("home");
    let mut journal = Journal::open(&home, &stamp(0))?;
    let from = folder.join("from.zip");
    fs::write(&from, whole(ENTRIES, &[PHOTO]))?;
    archive::take_in(&mut journal, &stamp(1), &from, None, &mut |_| true)?;
    fs::remove_file(from)?;
    for n in 2..8 {
        act(&mut journal, n)?;
    }
    let mut on = |_| true;
    let plain = folder.join("journal.zip");
    archive::write(&journal, &stamp(20), &plain, None, &mut on)?;
    let sealed = folder.join("journal.age");
    archive::write(&journal, &stamp(20), &sealed, Some(PASSPHRASE), &mut on)?;
    Ok(())
}

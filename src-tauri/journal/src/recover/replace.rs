//! Another database takes the journal's place.

use crate::device::Device;
use crate::error::Error;
use crate::files;
use crate::stamp::Stamp;
use crate::store::open;
use std::fs;
use std::path::{Path, PathBuf};

/// What was done.
pub(crate) struct Replaced {
    /// Where the old one is.
    pub set_aside: Option<PathBuf>,
    /// The device database had to be made anew.
    pub device_made_anew: bool,
}

/// Sets the journal aside and puts a finished database in its place, under a
/// new identity: the old one may have written what is not in it.
pub(crate) fn with(home: &Path, stamp: &Stamp, part: &Path) -> Result<Replaced, Error> {
    let journal = home.join("journal");
    open::into_one_file(part)?;
    files::sync(part)?;
    let (device, device_made_anew) = device(home, stamp)?;
    // First: an identity too many does no harm, one shared by two copies does.
    device.renew(stamp)?;
    device.made()?;
    let set_aside = files::set_aside(&journal, stamp)?;
    files::put(part, &journal.join("journal.db"))?;
    Ok(Replaced {
        set_aside,
        device_made_anew,
    })
}

/// The device database; a damaged one is set aside too.
fn device(home: &Path, stamp: &Stamp) -> Result<(Device, bool), Error> {
    match Device::open(home, stamp) {
        Err(error) if matches!(error.code(), "journal_damaged" | "not_a_journal") => {
            let to = files::free(&home.join("journal/set-aside"), stamp, "-device")?;
            fs::create_dir_all(&to).map_err(files::at(&to))?;
            for name in ["device.db", "device.db-wal", "device.db-shm"] {
                let from = home.join(name);
                if from.exists() {
                    fs::rename(&from, to.join(name)).map_err(files::at(&from))?;
                }
            }
            Ok((Device::open(home, stamp)?, true))
        }
        opened => Ok((opened?, false)),
    }
}

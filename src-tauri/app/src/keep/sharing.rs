//! A folder that any file-syncing program carries between devices. Which one
//! is a matter of this device.

use super::told::number;
use crate::App;
use crate::error::AppError;
use crate::view::Outcome;
use plumule_journal::finding::Watch;
use plumule_journal::shared;
use plumule_journal::stamp::Stamp;
use std::path::Path;

/// Where it is kept among the habits.
const FOLDER: &str = "shared-folder";

impl App {
    /// The folder that is shared; none if none is.
    ///
    /// # Errors
    /// If the device's file cannot be read.
    pub fn shared_folder(&self) -> Result<Option<String>, AppError> {
        Ok(self.device.get(FOLDER)?)
    }

    /// Shares by a folder from now on, or with none no longer. What is in a
    /// folder that was left stays there.
    ///
    /// # Errors
    /// If it is no folder or that cannot be kept.
    pub fn share_in(&self, folder: Option<&Path>) -> Result<(), AppError> {
        match folder {
            Some(folder) => {
                let path = folder.to_str().filter(|_| folder.is_dir());
                let path = path.ok_or_else(|| AppError::plain("no_folder"))?;
                self.device.set(FOLDER, path)?;
            }
            None => self.device.forget(FOLDER)?,
        }
        Ok(())
    }

    /// Takes in what the other devices wrote to the folder, and writes there
    /// what is new here. Does nothing while no folder is shared.
    ///
    /// # Errors
    /// If the folder cannot be read or written, or it was called off.
    pub fn share(&mut self, stamp: &Stamp, watch: &mut Watch) -> Result<Outcome, AppError> {
        let Some(folder) = self.shared_folder()? else {
            return Err(AppError::plain("no_folder"));
        };
        let folder = Path::new(&folder);
        if !folder.is_dir() {
            return Err(AppError::plain("no_folder"));
        }
        let read = shared::read_others(&mut self.journal, stamp, folder, watch)?;
        let wrote = shared::write_own(&self.journal, folder, watch)?;
        Ok(Outcome::Shared {
            devices: number(read.devices),
            new: number(read.union.new),
            photos_new: number(read.photos_new),
            waiting: number(read.waiting),
            written: number(wrote.entries),
            photos_written: number(wrote.photos),
        })
    }
}

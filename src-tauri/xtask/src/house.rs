//! Where things are in the work tree.

use std::env;
use std::path::{Path, PathBuf};

use crate::command::Command;

/// The work tree and the folder that builds go to.
pub struct House {
    /// The folder with the workspace's Cargo.toml.
    pub root: PathBuf,
    /// Cargo's target folder.
    pub target: PathBuf,
}

impl House {
    /// Finds the work tree from what cargo tells the programs it runs.
    ///
    /// # Errors
    /// When not started by cargo.
    pub fn find() -> Result<Self, String> {
        let crate_folder = env::var_os("CARGO_MANIFEST_DIR")
            .map(PathBuf::from)
            .ok_or("start this as `cargo xtask`, so that cargo says where the work tree is")?;
        let root = crate_folder
            .ancestors()
            .nth(2)
            .ok_or("the work tree is not where cargo says it is")?
            .to_path_buf();
        let target = match env::var_os("CARGO_TARGET_DIR") {
            Some(folder) => root.join(folder),
            None => root.join("target"),
        };
        Ok(Self { root, target })
    }

    /// A path inside the work tree.
    pub fn path(&self, inside: impl AsRef<Path>) -> PathBuf {
        self.root.join(inside)
    }

    /// The cargo that started this, in the work tree.
    pub fn cargo<'a>(&self, words: impl IntoIterator<Item = &'a str>) -> Command {
        let cargo = env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
        Command::new(cargo).args(words).folder(&self.root)
    }

    /// npm, in the UI's folder.
    pub fn npm<'a>(&self, words: impl IntoIterator<Item = &'a str>) -> Command {
        let npm = if cfg!(windows) { "npm.cmd" } else { "npm" };
        Command::new(npm).args(words).folder(self.path("ui"))
    }

    /// A folder of that name under the target folder, empty.
    ///
    /// # Errors
    /// When the folder cannot be emptied or made.
    pub fn empty_folder(&self, name: &str) -> Result<PathBuf, String> {
        let folder = self.target.join("xtask").join(name);
        if folder.exists() {
            std::fs::remove_dir_all(&folder)
                .map_err(|e| format!("cannot empty {}: {e}", folder.display()))?;
        }
        std::fs::create_dir_all(&folder)
            .map_err(|e| format!("cannot make {}: {e}", folder.display()))?;
        Ok(folder)
    }

    /// Every file that git keeps or would take in, relative to the root.
    ///
    /// # Errors
    /// When git is not there or this is no work tree of git's.
    pub fn files(&self) -> Result<Vec<String>, String> {
        let listed = Command::new("git")
            .args([
                "ls-files",
                "-z",
                "--cached",
                "--others",
                "--exclude-standard",
            ])
            .folder(&self.root)
            .text()?;
        let mut files: Vec<String> = listed
            .split('\0')
            .filter(|f| !f.is_empty() && self.path(f).is_file())
            .map(String::from)
            .collect();
        files.sort();
        files.dedup();
        Ok(files)
    }
}

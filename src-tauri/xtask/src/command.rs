//! Starting other programs and saying plainly how they failed.

use std::ffi::OsStr;
use std::io::{Read, pipe};
use std::path::Path;
use std::process::{self, Child, Stdio};

/// What becomes of the words that a program prints.
#[derive(Clone, Copy)]
pub enum Words {
    /// They go to the terminal, as for someone who waits for a long build.
    Shown,
    /// They are told if it fails.
    KeptBack,
}

/// A program to start, with its arguments.
pub struct Command {
    inner: process::Command,
}

impl Command {
    /// The program of that name.
    pub fn new(program: impl AsRef<OsStr>) -> Self {
        let mut inner = process::Command::new(program);
        inner.stdin(Stdio::null());
        Self { inner }
    }

    /// Adds arguments.
    pub fn args<S: AsRef<OsStr>>(mut self, words: impl IntoIterator<Item = S>) -> Self {
        self.inner.args(words);
        self
    }

    /// Sets an environment variable.
    pub fn env(mut self, name: &str, value: impl AsRef<OsStr>) -> Self {
        self.inner.env(name, value);
        self
    }

    /// Takes an environment variable away.
    pub fn without(mut self, name: &str) -> Self {
        self.inner.env_remove(name);
        self
    }

    /// Sets the folder to start in.
    pub fn folder(mut self, folder: impl AsRef<Path>) -> Self {
        self.inner.current_dir(folder);
        self
    }

    /// Lets it ask the person at the terminal.
    pub fn asking(mut self) -> Self {
        self.inner.stdin(Stdio::inherit());
        self
    }

    /// Runs it with its words on this terminal.
    ///
    /// # Errors
    /// When it cannot be started or says that it failed.
    pub fn shown(mut self) -> Result<(), String> {
        let line = self.line();
        let status = self.inner.status().map_err(|e| not_started(&line, &e))?;
        if status.success() {
            Ok(())
        } else {
            Err(format!("`{line}` failed ({status})"))
        }
    }

    /// Runs it, its words shown or kept back unless it fails.
    ///
    /// # Errors
    /// When it cannot be started or says that it failed.
    pub fn run(self, words: Words) -> Result<(), String> {
        match words {
            Words::Shown => self.shown(),
            Words::KeptBack => self.kept().map(|_| ()),
        }
    }

    /// Runs it and keeps what it prints, both streams in the order written.
    ///
    /// # Errors
    /// When it cannot be started or says that it failed: then all it printed.
    pub fn kept(mut self) -> Result<String, String> {
        let line = self.line();
        let told = |e| format!("`{line}`: {e}");
        let (mut from, to) = pipe().map_err(told)?;
        self.inner.env("CARGO_TERM_COLOR", "never");
        self.inner.stdout(to.try_clone().map_err(told)?).stderr(to);
        let mut child = self.inner.spawn().map_err(|e| not_started(&line, &e))?;
        // The command keeps the pipe's writing end open until it is dropped.
        drop(self);
        let mut bytes = Vec::new();
        from.read_to_end(&mut bytes).map_err(told)?;
        let status = child.wait().map_err(told)?;
        let text = String::from_utf8_lossy(&bytes).into_owned();
        if status.success() {
            Ok(text)
        } else {
            Err(format!("{text}\n`{line}` failed ({status})"))
        }
    }

    /// Runs it and gives its standard output alone.
    ///
    /// # Errors
    /// When it cannot be started or says that it failed: then what it complained.
    pub fn text(mut self) -> Result<String, String> {
        let line = self.line();
        let output = self.inner.output().map_err(|e| not_started(&line, &e))?;
        if output.status.success() {
            Ok(String::from_utf8_lossy(&output.stdout).into_owned())
        } else {
            let complaint = String::from_utf8_lossy(&output.stderr);
            Err(format!("{complaint}`{line}` failed ({})", output.status))
        }
    }

    /// Starts it and leaves it running, its standard output to be read.
    ///
    /// # Errors
    /// When it cannot be started.
    pub fn started(mut self) -> Result<Child, String> {
        let line = self.line();
        self.inner
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .map_err(|e| not_started(&line, &e))
    }

    fn line(&self) -> String {
        let program = Path::new(self.inner.get_program());
        let name = program.file_name().unwrap_or(program.as_os_str());
        std::iter::once(name)
            .chain(self.inner.get_args())
            .map(OsStr::to_string_lossy)
            .collect::<Vec<_>>()
            .join(" ")
    }
}

fn not_started(line: &str, error: &std::io::Error) -> String {
    format!("`{line}` could not be started: {error}")
}

#[cfg(test)]
#[cfg(unix)]
mod tests {
    use super::*;

    fn sh(script: &str) -> Command {
        Command::new("sh").args(["-c", script])
    }

    #[test]
    fn both_streams_are_kept_in_order() {
        let kept = sh("echo one; echo two >&2; echo three").kept();
        assert_eq!(kept.as_deref(), Ok("one\ntwo\nthree\n"));
    }

    #[test]
    fn a_failure_shows_what_was_printed_and_the_line() {
        let told = sh("echo because >&2; exit 3").kept().unwrap_err();
        assert!(
            told.contains("because") && told.contains("exit 3"),
            "{told}"
        );
        let told = sh("echo because >&2; exit 3").text().unwrap_err();
        assert!(told.contains("because"), "{told}");
        assert!(Command::new("no-such-program-here").text().is_err());
    }
}

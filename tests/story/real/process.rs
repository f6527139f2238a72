//! Programs that end with the test, whatever becomes of it.

use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Child, Command, Stdio};

/// A program that is ended when this is dropped.
pub struct Running(Child);

impl Running {
    pub fn start(command: &mut Command) -> Self {
        let name = command.get_program().to_owned();
        match command.spawn() {
            Ok(child) => Self(child),
            Err(e) => panic!("{} does not start: {e}", name.display()),
        }
    }

    /// The same, and the first line it prints.
    pub fn start_and_hear(command: &mut Command) -> (Self, String) {
        let mut running = Self::start(command.stdout(Stdio::piped()));
        let mut line = String::new();
        let out = running.0.stdout.take().unwrap();
        BufReader::new(out).read_line(&mut line).unwrap();
        (running, line.trim().to_owned())
    }

    pub fn has_ended(&mut self) -> bool {
        self.0.try_wait().unwrap().is_some()
    }
}

impl Drop for Running {
    fn drop(&mut self) {
        // It may have ended by itself; either way it is gone.
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

/// The processes that have this in their environment: all that was started
/// for one test, and by what was started for it.
pub fn with_in_environment(sign: &str) -> Vec<u32> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir("/proc").unwrap().flatten() {
        let Some(id) = entry
            .file_name()
            .to_str()
            .and_then(|name| name.parse().ok())
        else {
            continue;
        };
        let environment = std::fs::read(entry.path().join("environ")).unwrap_or_default();
        let sign = sign.as_bytes();
        if environment.windows(sign.len()).any(|window| window == sign) {
            found.push(id);
        }
    }
    found
}

/// Whether the process runs this program.
pub fn runs(id: u32, program: &Path) -> bool {
    std::fs::read_link(format!("/proc/{id}/exe")).is_ok_and(|exe| exe == program)
}

/// Ends it at once, with no chance to tidy up (SIGKILL).
pub fn kill_9(id: u32) {
    // It may be ending by itself just now.
    let _ = Command::new("kill").args(["-9", &id.to_string()]).output();
}

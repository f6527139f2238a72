//! Started at login, by a file in the folder that the desktop looks through
//! then (freedesktop.org, Desktop Application Autostart Specification 0.5).

use crate::UNSEEN;
use crate::files::whole;
use crate::shell::error;
use plumule_app::AppError;
use std::fs;
use std::io::ErrorKind;
use std::path::PathBuf;
use tauri::{AppHandle, Manager, Runtime};

/// Whether it is.
pub fn starts_at_login<R: Runtime>(app: &AppHandle<R>) -> bool {
    file(app).is_ok_and(|file| file.is_file())
}

/// Has it be so, or not.
///
/// # Errors
/// `at_login_failed` if the file cannot be written or taken away.
pub fn start_at_login<R: Runtime>(app: &AppHandle<R>, wanted: bool) -> Result<(), AppError> {
    let failed = || error("at_login_failed");
    let file = file(app)?;
    if !wanted {
        return match fs::remove_file(file) {
            Err(e) if e.kind() != ErrorKind::NotFound => Err(failed()),
            _ => Ok(()),
        };
    }
    // What an AppImage unpacks is gone at the next login; the image is not.
    let program = match &app.env().appimage {
        Some(image) => PathBuf::from(image),
        None => std::env::current_exe().map_err(|_| failed())?,
    };
    let program = program.to_str().ok_or_else(failed)?;
    file.parent()
        .map_or(Ok(()), fs::create_dir_all)
        .and_then(|()| whole(&file, entry(program).as_bytes()))
        .map_err(|_| failed())
}

fn file<R: Runtime>(app: &AppHandle<R>) -> Result<PathBuf, AppError> {
    let folder = app.path().config_dir();
    let folder = folder.map_err(|_| error("at_login_failed"))?;
    let name = format!("{}.desktop", app.config().identifier);
    Ok(folder.join("autostart").join(name))
}

fn entry(program: &str) -> String {
    let program = quoted(program);
    format!("[Desktop Entry]\nType=Application\nName=Plumule\nExec={program} {UNSEEN}\n")
}

/// As a value of `Exec` (Desktop Entry Specification 1.5, "The Exec key"):
/// within quotes these are escaped, what the escapes make is escaped as any
/// string is, and a per cent sign is doubled.
fn quoted(program: &str) -> String {
    let mut quoted = String::from("\"");
    for letter in program.chars() {
        match letter {
            '"' | '`' | '$' => quoted.push_str("\\\\"),
            '\\' => quoted.push_str("\\\\\\"),
            '%' => quoted.push('%'),
            _ => {}
        }
        quoted.push(letter);
    }
    quoted.push('"');
    quoted
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_program_is_named_as_the_specification_has_it() {
        for (program, expected) in [
            ("/usr/bin/plumule", r#""/usr/bin/plumule""#),
            ("/opt/a b/plumule", r#""/opt/a b/plumule""#),
            // "A literal dollar sign is written as \\$", "a literal backslash as \\\\".
            ("/opt/$x", r#""/opt/\\$x""#),
            (r"/opt/a\b", r#""/opt/a\\\\b""#),
            ("/opt/100%", r#""/opt/100%%""#),
        ] {
            assert_eq!(quoted(program), expected);
        }
        let entry = entry("/usr/bin/plumule");
        assert!(
            entry.ends_with("\nExec=\"/usr/bin/plumule\" --unseen\n"),
            "{entry}"
        );
    }
}

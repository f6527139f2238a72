//! Cold starts: from the start of a program until its picture is there.
//!
//! The display keeps its picture in a file, so neither program knows that it is
//! watched, and both are released builds. A bar for scrolling, which the system
//! draws and lets fade, is a trifle and not waited for.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Child;
use std::thread::sleep;
use std::time::{Duration, Instant};

use super::row::Row;
use crate::command::Command;
use crate::display::{Display, with_bus};

/// The app's own name for its folder, in `tauri.conf.json`.
const IDENTIFIER: &str = "garden.plumule.journal";
/// The picture is looked at so often.
const LOOK: Duration = Duration::from_millis(4);
/// It stands still when nothing changed but trifles for so long.
const STILL: Duration = Duration::from_millis(1_500);
/// Of the pieces of the picture, sixteen pixels wide, fewer than one in so many
/// is a trifle: less than a bar for scrolling has.
const TRIFLE: usize = 150;
const PIECE: usize = 16 * 4;
/// A program that shows nothing for so long has failed.
const PATIENCE: Duration = Duration::from_secs(60);

/// How one start went.
struct Start {
    seconds: f64,
    /// Peak memory of the program and what it started, kB.
    peak_kb: f64,
}

/// Where the app looks for its journal, in a folder that stands for a user's. It
/// has no clock to set, so the journal has to end today.
pub fn home(folder: &Path) -> PathBuf {
    folder.join("data").join(IDENTIFIER).join("own")
}

/// Starts of the app, with 50 years and 200 living sowings in its [`home`],
/// against starts of the empty one.
///
/// # Errors
/// When one of them shows nothing.
pub fn rows(folder: &Path, full: &Path, empty: &Path, runs: usize) -> Result<Vec<Row>, String> {
    let (mut starts, mut memory) = (Vec::new(), Vec::new());
    for run in 0..=runs {
        let ours = start(folder, full)?;
        let theirs = start(folder, empty)?;
        // The first pair only warms up.
        if run > 0 {
            starts.push(ours.seconds / theirs.seconds);
            memory.push(ours.peak_kb / theirs.peak_kb);
        }
    }
    let note = "50 years, 200 living sowings; until the picture is there".to_owned();
    Ok(vec![
        Row::new(
            "cold start to the picture against an empty window's",
            starts,
            note.clone(),
        )?,
        Row::new("peak memory against an empty app's", memory, note)?,
    ])
}

/// Starts a program on a display of its own and waits until its picture is
/// there.
fn start(folder: &Path, program: &Path) -> Result<Start, String> {
    let seen = folder.join("seen");
    fs::create_dir_all(&seen).map_err(|e| format!("{}: {e}", seen.display()))?;
    let display = Display::kept_in(&seen)?;
    let screen = seen.join("Xvfb_screen0");
    let blank = picture(&screen)?;
    let of = |name: &str| folder.join(name);
    let command = with_bus(program)
        .env("XDG_DATA_HOME", of("data"))
        .env("XDG_CONFIG_HOME", of("config"))
        .env("XDG_CACHE_HOME", of("cache"))
        .env("XDG_STATE_HOME", of("state"))
        .env("LIBGL_ALWAYS_SOFTWARE", "1")
        .env("WEBKIT_DISABLE_DMABUF_RENDERER", "1");
    let begun = Instant::now();
    let mut child = display.on(command).started()?;
    let watched = watch(&screen, &blank, begun);
    let peak_kb = peak(child.id());
    end(&mut child);
    Ok(Start {
        seconds: watched.map_err(|why| format!("{}: {why}", program.display()))?,
        peak_kb,
    })
}

/// Seconds until the last change of the picture that was more than a trifle.
fn watch(screen: &Path, blank: &[u8], begun: Instant) -> Result<f64, String> {
    let mut before = blank.to_vec();
    let mut changed = None;
    loop {
        let now = begun.elapsed();
        let seen = picture(screen)?;
        if seen != before && !alike(&seen, &before) {
            changed = Some(now);
            before = seen;
        }
        match changed {
            Some(at) if now - at > STILL => return Ok(at.as_secs_f64()),
            None if now > PATIENCE => return Err("nothing came on the screen".to_owned()),
            _ => sleep(LOOK),
        }
    }
}

/// Whether two pictures are the same but for a trifle.
fn alike(one: &[u8], other: &[u8]) -> bool {
    let pieces = one.chunks(PIECE).zip(other.chunks(PIECE));
    let number = pieces.len();
    pieces.filter(|(a, b)| a != b).count() * TRIFLE < number
}

fn picture(screen: &Path) -> Result<Vec<u8>, String> {
    fs::read(screen).map_err(|e| format!("{}: {e}", screen.display()))
}

/// Peak memory of a process and all that came from it, kB.
fn peak(root: u32) -> f64 {
    let status = |pid: u32| fs::read_to_string(format!("/proc/{pid}/status")).unwrap_or_default();
    let number = |text: &str, name: &str| {
        let line = text.lines().find(|line| line.starts_with(name))?;
        line.split_whitespace().nth(1)?.parse::<f64>().ok()
    };
    family(root)
        .into_iter()
        .filter_map(|pid| number(&status(pid), "VmHWM:"))
        .sum()
}

/// The process and all that came from it.
fn family(root: u32) -> Vec<u32> {
    let parents: Vec<(u32, u32)> = fs::read_dir("/proc")
        .into_iter()
        .flatten()
        .filter_map(|entry| {
            let pid = entry.ok()?.file_name().to_str()?.parse().ok()?;
            let stat = fs::read_to_string(format!("/proc/{pid}/stat")).ok()?;
            // The name stands in brackets and may have blanks in it.
            let after = stat.rsplit_once(')')?.1;
            Some((pid, after.split_whitespace().nth(1)?.parse().ok()?))
        })
        .collect();
    let mut family = vec![root];
    let mut next = 0;
    while let Some(parent) = family.get(next).copied() {
        let children = parents.iter().filter(|(_, of)| *of == parent);
        family.extend(children.map(|(pid, _)| *pid));
        next += 1;
    }
    family
}

/// Ends the program and what it started.
fn end(child: &mut Child) {
    for pid in family(child.id()).into_iter().rev() {
        let _ = Command::new("kill").args([pid.to_string()]).text();
    }
    let _ = child.wait();
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_process_is_of_its_own_family_and_has_memory() {
        let me = std::process::id();
        let mut child = std::process::Command::new("sleep")
            .arg("30")
            .spawn()
            .unwrap();
        let found = family(me);
        assert!(found.contains(&me) && found.contains(&child.id()));
        assert!(peak(me) > 100.0);
        child.kill().unwrap();
        child.wait().unwrap();
    }

    #[test]
    fn a_bar_that_fades_is_a_trifle_and_a_round_is_none() {
        let round = vec![1; 400 * PIECE];
        let mut bar = round.clone();
        bar[0] = 2;
        assert!(alike(&bar, &round));
        assert!(!alike(&round, &vec![0; 400 * PIECE]));
    }

    #[test]
    fn what_is_not_there_is_told() {
        assert!(picture(Path::new("no such display")).is_err());
    }
}

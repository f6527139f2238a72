//! A writer that is killed (SIGKILL) at random moments. It says through a pipe
//! what is confirmed, and all of that must be there afterwards.

use crate::chance::Chance;
use crate::{home, writes};
use plumule_journal::{Journal, backup};
use std::io::{BufRead, BufReader, Read, Write, stdin, stdout};
use std::path::Path;
use std::process::{Command, Stdio};
use std::thread::sleep;
use std::time::Duration;
use tempfile::TempDir;

/// After so many kills a new home is begun, so that the checks stay short.
const KILLS_A_HOME: u32 = 25;
/// The writer makes a backup after so many acts.
const BACKUP_EVERY: u64 = 15;
/// A writer is killed after at most so many acts …
const MOST_ACTS: u64 = 40;
/// … and at most so much later, microseconds: several acts.
const LATEST_US: u64 = 4_000;

/// When the writer says that an act is confirmed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Says {
    /// After the journal said so.
    Afterwards,
    /// Before the journal was asked: planted, to show that the loss is seen.
    /// It goes on when it is told to.
    TooEarly,
}

/// What a run of kills came to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Figures {
    /// Kills.
    pub kills: u32,
    /// Acts that were confirmed; every one was there after every later kill.
    pub confirmed: u64,
    /// Acts that were there without having been confirmed yet.
    pub unconfirmed: u32,
    /// Backups that were looked into, all of them whole.
    pub backups: usize,
}

/// What the killed program does: acts from a number on, each said to
/// standard output when it is confirmed. Never returns by itself.
///
/// # Errors
/// If the journal or the pipe fails.
pub fn write(home: &Path, from: u64, says: Says) -> Result<(), Box<dyn std::error::Error>> {
    let mut journal = Journal::open(home, &writes::stamp(from))?;
    let mut out = stdout();
    for n in from.. {
        if says == Says::TooEarly {
            writeln!(out, "{n}")?;
            out.flush()?;
            stdin().read_exact(&mut [0])?;
        }
        writes::act(&mut journal, n)?;
        if says == Says::Afterwards {
            writeln!(out, "{n}")?;
            out.flush()?;
        }
        if n % BACKUP_EVERY == 0 {
            backup::make(&journal, &writes::stamp(n), &mut |_| true)?;
        }
    }
    Ok(())
}

/// Kills a writer so many times. `program` is this package's `crash`.
///
/// # Errors
/// What was lost or damaged, after the first kill that did.
pub fn kill(program: &Path, kills: u32, seed: u64, says: Says) -> Result<Figures, String> {
    let mut chance = Chance(seed);
    let mut figures = Figures::default();
    let mut home = home::empty();
    let mut next = 0;
    for kill in 0..kills {
        if kill % KILLS_A_HOME == 0 {
            (home, next) = (home::empty(), 0);
        }
        let confirmed = one_life(program, &home, next, says, &mut chance);
        figures.kills += 1;
        figures.confirmed += confirmed;
        next += confirmed;
        let lost = |what| format!("kill {}: {what}", kill + 1);
        if look_at(home.path(), next, &mut figures).map_err(lost)? {
            next += 1;
        }
    }
    Ok(figures)
}

/// Starts the writer, kills it, and counts what it confirmed.
fn one_life(program: &Path, home: &TempDir, from: u64, says: Says, chance: &mut Chance) -> u64 {
    let mode = if says == Says::TooEarly {
        "early"
    } else {
        "write"
    };
    let mut writer = Command::new(program)
        .arg(mode)
        .arg(home.path())
        .arg(from.to_string())
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut tell = writer.stdin.take().unwrap();
    let mut lines = BufReader::new(writer.stdout.take().unwrap()).lines();
    let until = match says {
        Says::Afterwards => chance.below(MOST_ACTS),
        Says::TooEarly => 1 + chance.below(MOST_ACTS),
    };
    let mut confirmed = 0;
    while confirmed < until {
        if confirmed > 0 && says == Says::TooEarly {
            tell.write_all(&[0]).unwrap();
        }
        let line = lines.next().expect("the writer goes on").unwrap();
        assert_eq!(line, (from + confirmed).to_string());
        confirmed += 1;
    }
    sleep(Duration::from_micros(chance.below(LATEST_US)));
    // SIGKILL, on every Unix (std::process::Child::kill).
    writer.kill().unwrap();
    // What it had said before it died counts too; `tell` is still open, so
    // that it cannot have gone on.
    let confirmed = confirmed + lines.map_while(Result::ok).count() as u64;
    writer.wait().unwrap();
    drop(tell);
    confirmed
}

/// Looks at all of it; true if one act more than was confirmed is there.
fn look_at(home: &Path, confirmed: u64, figures: &mut Figures) -> Result<bool, String> {
    let journal = home::whole(home)?;
    let there = |n| writes::is_there(&journal, n).map_err(|error| error.to_string());
    for n in 0..confirmed {
        if !there(n)? {
            return Err(format!("act {n} was confirmed and is lost"));
        }
    }
    for backup in backup::list(home).map_err(|error| error.to_string())? {
        backup::look_inside(home, &backup, &mut |_| true)
            .map_err(|error| format!("{}: {error}", backup.name))?;
        figures.backups += 1;
    }
    let more = there(confirmed)?;
    figures.unconfirmed += u32::from(more);
    Ok(more)
}

//! `crash soak N` kills a writer N times and prints what came of it; `crash
//! write HOME FROM` is that writer, and `crash early HOME FROM` one that says
//! too early that an act is confirmed. `crash recover HOME` recovers a
//! journal, and `archive`, `take-in`, `restore` and `photo` do what they say,
//! for a caller that makes their disk fail.

use plumule_faults::crash::{Says, kill, write};
use plumule_faults::writes::{photo, stamp};
use plumule_journal::{Journal, archive, recover};
use std::error::Error;
use std::path::Path;

fn main() -> Result<(), Box<dyn Error>> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    match words[..] {
        ["write", home, from] => write(Path::new(home), from.parse()?, Says::Afterwards),
        ["early", home, from] => write(Path::new(home), from.parse()?, Says::TooEarly),
        ["recover", home] => {
            recover(Path::new(home), &stamp(500), &mut |_| true)?;
            Ok(())
        }
        ["archive", home, to] => {
            let journal = Journal::open(Path::new(home), &stamp(500))?;
            archive::write(&journal, &stamp(501), Path::new(to), None, &mut |_| true)?;
            Ok(())
        }
        ["take-in", home, from] => {
            let mut journal = Journal::open(Path::new(home), &stamp(500))?;
            let from = Path::new(from);
            archive::take_in(&mut journal, &stamp(501), from, None, &mut |_| true)?;
            Ok(())
        }
        ["restore", home, from] => {
            let (home, from) = (Path::new(home), Path::new(from));
            archive::restore(home, &stamp(501), from, None, &mut |_| true)?;
            Ok(())
        }
        ["photo", home] => {
            let mut journal = Journal::open(Path::new(home), &stamp(500))?;
            photo(&mut journal, 7)?;
            Ok(())
        }
        ["soak", kills] => {
            let program = std::env::current_exe()?;
            let seed = u64::from(std::process::id());
            let figures = kill(&program, kills.parse()?, seed, Says::Afterwards)
                .map_err(|lost| format!("seed {seed}, {lost}"))?;
            println!(
                "{} kills: {} confirmed acts, none lost; {} more were there before they were \
                 confirmed; {} looks into backups, all whole",
                figures.kills, figures.confirmed, figures.unconfirmed, figures.backups
            );
            Ok(())
        }
        _ => Err("crash soak KILLS".into()),
    }
}

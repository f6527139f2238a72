//! `fuzz MINUTES [SEED]` gives wild inputs to every decoder in turn for that
//! long and prints what came of it; `fuzz seeds` writes the seeds that are
//! made. An input that fails is kept in the corpus.

use plumule_faults::fuzz::{self, Figures, TARGETS, Target};
use std::error::Error;
use std::fs;
use std::time::{Duration, Instant};

/// How long a target has its turn, seconds.
const TURN_SECS: u64 = 20;

fn main() -> Result<(), Box<dyn Error>> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    match words[..] {
        ["seeds"] => {
            for (target, name, bytes) in fuzz::made() {
                let target = TARGETS.iter().find(|it| it.name == target);
                let folder = fuzz::corpus(target.ok_or("no such target")?);
                fs::write(folder.join(name), bytes)?;
            }
            Ok(())
        }
        [minutes] => soak(minutes.parse()?, u64::from(std::process::id())),
        [minutes, seed] => soak(minutes.parse()?, seed.parse()?),
        _ => Err("fuzz MINUTES [SEED]".into()),
    }
}

fn soak(minutes: u64, seed: u64) -> Result<(), Box<dyn Error>> {
    let end = Instant::now() + Duration::from_secs(minutes * 60);
    let mut figures = vec![Figures::default(); TARGETS.len()];
    let mut turn = 0;
    while Instant::now() < end {
        for (target, figures) in TARGETS.iter().zip(&mut figures) {
            turn += 1;
            let until = end.min(Instant::now() + Duration::from_secs(TURN_SECS));
            let mut go_on = |_| Instant::now() < until;
            fuzz::run(target, seed.wrapping_add(turn), figures, &mut go_on)
                .map_err(|(input, what)| kept(target, &input, &what))?;
        }
    }
    println!("{minutes} minutes, seed {seed}: no promise broken");
    for (target, figures) in TARGETS.iter().zip(&figures) {
        println!(
            "{:<10} {:>8} inputs, {:>4} kinds of answer, the slowest {:.1} s",
            target.name,
            figures.inputs,
            figures.answers.len(),
            figures.slowest.as_secs_f64()
        );
    }
    Ok(())
}

/// Keeps an input that failed.
fn kept(target: &Target, input: &[u8], what: &str) -> String {
    let name = format!("found-{}", &fuzz::archive::sha256(input)[..16]);
    let path = fuzz::corpus(target).join(name);
    let kept = fs::write(&path, input);
    format!(
        "{}: {what}; the input is {} ({kept:?})",
        target.name,
        path.display()
    )
}

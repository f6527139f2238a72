//! Ten thousand sowings judged: the questions to a file, and the seconds that
//! the answers take.

use super::{Outcome, seconds};
use plumule_agronomy::{Outlook, Posterior, TimeFactor, Watched};
use serde::{Deserialize, Serialize};
use std::io::{BufRead, BufReader, Write};
use std::path::Path;

const QUESTIONS: u64 = 10_000;

#[derive(Serialize, Deserialize)]
struct Question {
    seeds: u32,
    counts: Vec<(f64, u32)>,
    beta: (f64, f64),
    tau: f64,
    sigma: f64,
    dead: f64,
    wanted: u32,
}

/// Writes questions as they come on a round: late and half up, dead, slow.
pub fn questions(file: &Path) -> Outcome<()> {
    let mut to = std::io::BufWriter::new(std::fs::File::create(file)?);
    let mut state = 0x2545_f491_4f6c_dd1d_u64;
    let mut chance = move |of: u64| {
        // SplitMix64 (Steele, Lea and Flood, 2014).
        state = state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = state;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (z ^ (z >> 31)) % of
    };
    for _ in 0..QUESTIONS {
        let seeds = 6 + chance(79) as u32;
        let mut counts = Vec::new();
        let (mut at, mut up) = (0.6 + chance(30) as f64 / 100.0, 0);
        for _ in 0..chance(5) {
            up = (up + chance(u64::from(seeds / 3 + 1)) as u32).min(seeds);
            counts.push((at, up));
            at += 0.05 + chance(40) as f64 / 100.0;
        }
        let question = Question {
            seeds,
            counts,
            beta: (
                3.0 + chance(90) as f64 / 10.0,
                1.0 + chance(50) as f64 / 10.0,
            ),
            tau: 0.2 + chance(25) as f64 / 100.0,
            sigma: 0.28,
            dead: 0.05,
            wanted: seeds * 2 / 3,
        };
        writeln!(to, "{}", serde_json::to_string(&question)?)?;
    }
    Ok(to.flush()?)
}

/// Answers them and prints the seconds and the sum of a number of each, so that
/// the two sides can be held against each other.
pub fn answer(file: &Path) -> Outcome<()> {
    let read = BufReader::new(std::fs::File::open(file)?);
    let questions: Vec<Question> = read
        .lines()
        .map(|line| Ok(serde_json::from_str(&line?)?))
        .collect::<Outcome<_>>()?;
    let (mut any_more, mut reach) = (0.0, 0.0);
    let took = seconds(|| {
        for it in &questions {
            let watched = Watched {
                seeds: it.seeds,
                counts: &it.counts,
                living: None,
                outlook: Outlook::new(it.beta.0, it.beta.1)?,
                time_factor: TimeFactor {
                    mean_ln: 0.0,
                    tau: it.tau,
                },
                sigma: it.sigma,
                dead: it.dead,
                wanted: it.wanted,
                firm: 0,
                soft: 0,
                horizon: None,
            };
            let posterior = Posterior::new(&watched)?;
            any_more += posterior.p_any_more();
            reach += posterior.p_reach();
        }
        Ok(())
    })?;
    println!(
        "{}",
        serde_json::json!({ "seconds": took, "any_more": any_more, "reach": reach })
    );
    Ok(())
}

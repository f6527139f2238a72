//! One named step of the test run, and the lines that tell of it.

use std::io::{IsTerminal, Write};
use std::time::{Duration, Instant};

use crate::house::House;

/// What a step says: a short note when it passed (or nothing), or everything
/// there is to know when it failed.
pub type Outcome = Result<String, String>;

/// A check with a name.
pub struct Step {
    /// The word for `--only`.
    pub name: &'static str,
    /// What it looks at, in a few words.
    pub about: &'static str,
    /// Does it.
    pub check: fn(&House) -> Outcome,
}

/// Runs the steps in order up to the first that fails; true if none did.
pub fn run_all(house: &House, steps: &[&Step]) -> bool {
    let mut passed = 0;
    let mut left = steps.iter();
    for step in left.by_ref() {
        announce(step);
        let start = Instant::now();
        let outcome = (step.check)(house);
        let took = start.elapsed();
        match outcome {
            Ok(note) => {
                println!("{}", line("ok", took, step.about, &note));
                passed += 1;
            }
            Err(output) => {
                println!("{}", output.trim_end());
                println!("{}", line("FAILED", took, step.about, ""));
                let name = step.name;
                println!("The step {name} failed. Alone: cargo xtask test --only {name}");
                let rest: Vec<_> = left.map(|s| s.name).collect();
                if !rest.is_empty() {
                    println!("Not run: {}", rest.join(", "));
                }
                println!("{passed} passed, 1 failed");
                return false;
            }
        }
    }
    println!("{passed} passed, 0 failed");
    true
}

fn line(word: &str, took: Duration, about: &str, note: &str) -> String {
    let note = match note.trim() {
        "" => String::new(),
        note => format!(" ({note})"),
    };
    format!("{word:<6} {:>6.1} s  {about}{note}", took.as_secs_f64())
}

/// On a terminal, says what is being waited for; the step's line covers it.
fn announce(step: &Step) {
    let mut out = std::io::stdout();
    if out.is_terminal() {
        print!("{:<16} {}\r", "…", step.about);
        // Nothing is lost if the terminal does not take it.
        let _ = out.flush();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const GOOD: Step = Step {
        name: "good",
        about: "good",
        check: |_| Ok(String::new()),
    };
    const BAD: Step = Step {
        name: "bad",
        about: "bad",
        check: |_| Err("why".into()),
    };

    #[test]
    fn one_failure_fails_the_run_and_ends_it() {
        let house = House {
            root: ".".into(),
            target: ".".into(),
        };
        const NEVER: Step = Step {
            name: "never",
            about: "never",
            check: |_| panic!("ran after a failure"),
        };
        assert!(run_all(&house, &[&GOOD, &GOOD]));
        assert!(!run_all(&house, &[&GOOD, &BAD, &NEVER]));
    }

    #[test]
    fn a_line_has_word_time_and_note() {
        let took = Duration::from_millis(12_340);
        assert_eq!(
            line("ok", took, "formatting", ""),
            "ok       12.3 s  formatting"
        );
        assert_eq!(
            line("ok", took, "x", "a note\n"),
            "ok       12.3 s  x (a note)"
        );
    }
}

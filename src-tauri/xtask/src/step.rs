//! One named step of the test run, and the lines that tell of it.

use std::io::{IsTerminal, Write};
use std::thread::{self, ScopedJoinHandle};
use std::time::{Duration, Instant};

use crate::house::House;

/// What a step says: a short note when it passed (or nothing), or everything
/// there is to know when it failed.
pub type Outcome = Result<String, String>;

/// When a step runs.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Turn {
    /// When those before it are done.
    Next,
    /// From its turn on, beside those that follow: it shares nothing with them.
    Beside,
    /// When those before it are done, also those beside: it needs the machine's
    /// patience.
    Alone,
}

/// A check with a name.
pub struct Step {
    /// The word for `--only`.
    pub name: &'static str,
    /// What it looks at, in a few words.
    pub about: &'static str,
    /// When it runs.
    pub turn: Turn,
    /// Does it.
    pub check: fn(&House) -> Outcome,
}

impl Step {
    /// The same, beside those that follow.
    pub const fn beside(self) -> Self {
        Self {
            turn: Turn::Beside,
            ..self
        }
    }

    /// The same, when nothing else runs.
    pub const fn alone(self) -> Self {
        Self {
            turn: Turn::Alone,
            ..self
        }
    }
}

/// Runs the steps in order up to the first that fails; true if none did.
pub fn run_all(house: &House, steps: &[&Step]) -> bool {
    thread::scope(|scope| {
        let mut beside: Vec<ScopedJoinHandle<bool>> = Vec::new();
        let (mut passed, mut failed) = (0, 0);
        let mut left = steps;
        while let [step, rest @ ..] = left {
            if step.turn == Turn::Alone {
                count(&mut beside, &mut passed, &mut failed);
            }
            if failed > 0 {
                break;
            }
            left = rest;
            if step.turn == Turn::Beside {
                beside.push(scope.spawn(|| told(house, step)));
            } else {
                announce(step);
                let held = told(house, step);
                passed += u32::from(held);
                failed += u32::from(!held);
            }
        }
        let rest: Vec<_> = left.iter().map(|step| step.name).collect();
        if !rest.is_empty() {
            println!("Not run: {}", rest.join(", "));
        }
        count(&mut beside, &mut passed, &mut failed);
        println!("{passed} passed, {failed} failed");
        failed == 0
    })
}

/// Waits for what runs beside.
fn count(beside: &mut Vec<ScopedJoinHandle<bool>>, passed: &mut u32, failed: &mut u32) {
    for step in beside.drain(..) {
        let held = step.join().unwrap_or(false);
        *passed += u32::from(held);
        *failed += u32::from(!held);
    }
}

/// Runs a step and tells of it; whether it passed.
fn told(house: &House, step: &Step) -> bool {
    let start = Instant::now();
    let outcome = (step.check)(house);
    let took = start.elapsed();
    match &outcome {
        Ok(note) => println!("{}", line("ok", took, step.about, note)),
        Err(output) => println!(
            "{}\n{}\nThe step {name} failed. Alone: cargo xtask test --only {name}",
            output.trim_end(),
            line("FAILED", took, step.about, ""),
            name = step.name,
        ),
    }
    outcome.is_ok()
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
    use std::sync::atomic::{AtomicBool, Ordering};

    use super::*;

    const GOOD: Step = Step {
        name: "good",
        about: "good",
        turn: Turn::Next,
        check: |_| Ok(String::new()),
    };
    const BAD: Step = Step {
        name: "bad",
        about: "bad",
        turn: Turn::Next,
        check: |_| Err("why".into()),
    };

    fn house() -> House {
        House {
            root: ".".into(),
            target: ".".into(),
        }
    }

    #[test]
    fn what_runs_beside_is_waited_for_by_what_runs_alone_and_at_the_end() {
        static DONE: AtomicBool = AtomicBool::new(false);
        const SLOW: Step = Step {
            name: "slow",
            about: "slow",
            turn: Turn::Beside,
            check: |_| {
                thread::sleep(Duration::from_millis(50));
                DONE.store(true, Ordering::SeqCst);
                Ok(String::new())
            },
        };
        const AFTER: Step = Step {
            turn: Turn::Alone,
            check: |_| match DONE.load(Ordering::SeqCst) {
                true => Ok(String::new()),
                false => Err("too early".into()),
            },
            ..GOOD
        };
        const BROKEN: Step = Step {
            turn: Turn::Beside,
            ..BAD
        };
        const NEVER: Step = Step {
            turn: Turn::Alone,
            check: |_| panic!("ran after a failure"),
            ..GOOD
        };
        assert!(run_all(&house(), &[&SLOW, &GOOD, &AFTER]));
        assert!(!run_all(&house(), &[&BROKEN, &GOOD]));
        assert!(!run_all(&house(), &[&BROKEN, &NEVER]));
    }

    #[test]
    fn one_failure_fails_the_run_and_ends_it() {
        const NEVER: Step = Step {
            check: |_| panic!("ran after a failure"),
            ..GOOD
        };
        assert!(run_all(&house(), &[&GOOD, &GOOD]));
        assert!(!run_all(&house(), &[&GOOD, &BAD, &NEVER]));
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

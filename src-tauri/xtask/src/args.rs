//! What was asked for on the command line.

use std::path::PathBuf;

use clap::{Parser, Subcommand};

use crate::test;

/// The house commands of Plumule.
#[derive(Debug, Parser)]
#[command(name = "cargo xtask", bin_name = "cargo xtask", after_help = after_help(), disable_version_flag = true)]
pub struct Args {
    /// Install nothing on the system: for machines without apt, once they have
    /// what was named.
    #[arg(long, global = true)]
    pub as_is: bool,
    /// What to do.
    #[command(subcommand)]
    pub task: Task,
}

/// One command with its arguments.
#[derive(Debug, PartialEq, Eq, Subcommand)]
pub enum Task {
    /// Install what is missing, build the UI and the app in release, open it.
    Run {
        /// Open the demo journal in a place of its own.
        #[arg(long)]
        demo: bool,
        /// Arguments for the app.
        #[arg(last = true)]
        passed_on: Vec<String>,
    },
    /// Install what is missing and run every check, the cheap ones first, and
    /// stop at the first that fails.
    Test {
        /// Run one step only.
        #[arg(long, value_name = "STEP")]
        only: Option<String>,
    },
    /// Drive the real app with the demo journal and write pictures of each
    /// screen, in every theme, at 200 % text and in every language.
    Shots {
        /// Where the pictures go.
        folder: PathBuf,
        /// In one look only: light, dark, bright, large, en-US, de or de-large.
        #[arg(long, value_name = "LOOK")]
        only: Option<String>,
    },
    /// Do at length what the tests do in short, and print the figures.
    Soak {
        /// What to soak.
        #[command(subcommand)]
        what: Soak,
    },
    /// Measure every budget against its like in one run, print the table and
    /// write tests/bench/FIGURES.md.
    Bench {
        /// Print the rows as JSON and nothing else.
        #[arg(long)]
        json: bool,
        /// Measure instead what other settings of the release profile would
        /// cost and bring, and write tests/bench/PROFILES.md; takes most of an
        /// hour.
        #[arg(long, conflicts_with = "json")]
        profiles: bool,
    },
    /// Build a Debian package, install it in a clean root and open the app
    /// there.
    Package {
        /// Of the app as it is built for tests: to try the package, not to give away.
        #[arg(long)]
        debug: bool,
    },
    /// Write the types that the UI shares with Rust anew.
    Bindings,
    /// Ask the mathematics 11,000 random questions and compare with SciPy.
    Cross,
}

/// What can be soaked.
#[derive(Debug, PartialEq, Eq, Subcommand)]
pub enum Soak {
    /// Kill a writer at random moments and look each time that all it
    /// confirmed is there.
    Crash {
        /// How often.
        #[arg(default_value_t = 1_000, value_parser = clap::value_parser!(u32).range(1..))]
        kills: u32,
    },
    /// Judge a simulated year of sowings whose truth is known.
    Judgement,
    /// Give wild inputs to every decoder that reads what others wrote; one
    /// that breaks a promise is kept in tests/faults/corpus.
    Fuzz {
        /// How long.
        #[arg(default_value_t = 30, value_parser = clap::value_parser!(u32).range(1..))]
        minutes: u32,
    },
    /// Ring every round around every clock change of every time zone for
    /// twenty years.
    Clock,
}

fn after_help() -> String {
    format!("Steps of the test:\n{}", test::names())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(line: &str) -> Result<Task, clap::Error> {
        let words = ["cargo xtask"].into_iter().chain(line.split_whitespace());
        Args::try_parse_from(words).map(|args| args.task)
    }

    #[test]
    fn what_follows_two_dashes_goes_to_the_app() {
        let task = read("run --demo -- --demo --as-is").unwrap();
        let passed_on = vec!["--demo".into(), "--as-is".into()];
        let demo = true;
        assert_eq!(task, Task::Run { demo, passed_on });
    }

    #[test]
    fn a_slip_is_named_and_not_passed_over() {
        for line in [
            "runn",
            "run --dmo",
            "test --only",
            "test lints",
            "shots",
            "shots a b",
            "cross 2",
            "soak",
            "soak crash never",
            "soak crash 0",
            "soak crash 5 6",
            "soak fuzz 0",
            "bench --json --profiles",
        ] {
            assert!(read(line).is_err(), "{line}");
        }
        assert!(read("run --dmo").unwrap_err().to_string().contains("--dmo"));
    }

    #[test]
    fn a_soak_has_its_usual_length_unless_told() {
        let crash = |kills| Task::Soak {
            what: Soak::Crash { kills },
        };
        assert_eq!(read("soak crash").unwrap(), crash(1_000));
        assert_eq!(read("soak crash 5").unwrap(), crash(5));
        let fuzz = |minutes| Task::Soak {
            what: Soak::Fuzz { minutes },
        };
        assert_eq!(read("soak fuzz").unwrap(), fuzz(30));
        assert_eq!(read("soak fuzz 2").unwrap(), fuzz(2));
    }
}

//! What was asked for on the command line.

use std::path::PathBuf;

/// Kills in `cargo xtask soak crash`.
const KILLS: u32 = 1_000;

/// What `cargo xtask help` prints.
pub const HELP: &str = "\
cargo xtask run [--demo] [--as-is] [-- ARGUMENTS]
    Installs what is missing, builds the UI and the app in release, opens it.
    --demo opens the demo journal in a place of its own. ARGUMENTS go to the app.
cargo xtask test [--only STEP] [--as-is]
    Installs what is missing and runs every check, the cheap ones first, and
    stops at the first that fails. --only runs one step of those below.
cargo xtask shots FOLDER [--as-is]
    Drives the real app with the demo journal and writes a picture of each screen.
cargo xtask soak crash [KILLS]
    Kills a writer at random moments, 1000 times unless KILLS says otherwise, and
    looks each time that all it confirmed is there. Prints the figures.
cargo xtask bindings
    Writes the types that the UI shares with Rust anew.
cargo xtask cross
    Asks the mathematics 11,000 random questions and compares with SciPy.
cargo xtask help

--as-is installs nothing on the system: for machines without apt, once they have
what was named.

Steps of the test:";

/// One command with its arguments.
#[derive(Debug, PartialEq, Eq)]
pub enum Task {
    /// Print the help.
    Help,
    /// Build in release and open.
    Run {
        /// Open the demo journal.
        demo: bool,
        /// Install nothing.
        as_is: bool,
        /// What comes after `--`.
        passed_on: Vec<String>,
    },
    /// Run the checks.
    Test {
        /// The one step wanted.
        only: Option<String>,
        /// Install nothing.
        as_is: bool,
    },
    /// Write pictures of the screens.
    Shots {
        /// Where the pictures go.
        folder: PathBuf,
        /// Install nothing.
        as_is: bool,
    },
    /// Kill a writer many times.
    SoakCrash {
        /// How often.
        kills: u32,
    },
    /// Write the UI's types anew.
    Bindings,
    /// Compare the mathematics with SciPy at length.
    Cross,
}

impl Task {
    /// Reads the words after `cargo xtask`.
    ///
    /// # Errors
    /// A sentence that names the word that was not understood.
    pub fn read(words: &[String]) -> Result<Self, String> {
        let mut words = words.iter().map(String::as_str);
        let Some(name) = words.next() else {
            return Ok(Self::Help);
        };
        match name {
            "help" | "--help" | "-h" => Ok(Self::Help),
            "run" => {
                let (mut demo, mut as_is, mut passed_on) = (false, false, Vec::new());
                while let Some(word) = words.next() {
                    match word {
                        "--demo" => demo = true,
                        "--as-is" => as_is = true,
                        "--" => passed_on = words.by_ref().map(String::from).collect(),
                        other => return Err(unknown(other)),
                    }
                }
                Ok(Self::Run {
                    demo,
                    as_is,
                    passed_on,
                })
            }
            "test" => {
                let (mut only, mut as_is) = (None, false);
                while let Some(word) = words.next() {
                    match word {
                        "--only" => {
                            let step = words.next().ok_or("--only wants the name of a step")?;
                            only = Some(step.to_owned());
                        }
                        "--as-is" => as_is = true,
                        other => return Err(unknown(other)),
                    }
                }
                Ok(Self::Test { only, as_is })
            }
            "shots" => {
                let (mut folder, mut as_is) = (None, false);
                for word in words {
                    match word {
                        "--as-is" => as_is = true,
                        path if folder.is_none() && !path.starts_with('-') => {
                            folder = Some(PathBuf::from(path));
                        }
                        other => return Err(unknown(other)),
                    }
                }
                let folder = folder.ok_or("shots wants the folder that the pictures go to")?;
                Ok(Self::Shots { folder, as_is })
            }
            "soak" => match (words.next(), words.next(), words.next()) {
                (Some("crash"), None, None) => Ok(Self::SoakCrash { kills: KILLS }),
                (Some("crash"), Some(kills), None) => match kills.parse() {
                    Ok(kills) if kills > 0 => Ok(Self::SoakCrash { kills }),
                    _ => Err(unknown(kills)),
                },
                (None, ..) => Err("soak wants what to soak: crash".to_owned()),
                (Some("crash"), _, Some(other)) | (Some(other), ..) => Err(unknown(other)),
            },
            "bindings" | "cross" => match words.next() {
                None if name == "cross" => Ok(Self::Cross),
                None => Ok(Self::Bindings),
                Some(other) => Err(unknown(other)),
            },
            other => Err(unknown(other)),
        }
    }
}

fn unknown(word: &str) -> String {
    format!("`{word}` is not understood here; `cargo xtask help` lists the commands")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(line: &str) -> Result<Task, String> {
        let words: Vec<String> = line.split_whitespace().map(String::from).collect();
        Task::read(&words)
    }

    #[test]
    fn what_follows_two_dashes_goes_to_the_app() {
        assert_eq!(
            read("run --demo -- --demo --as-is"),
            Ok(Task::Run {
                demo: true,
                as_is: false,
                passed_on: vec!["--demo".into(), "--as-is".into()],
            })
        );
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
        ] {
            assert!(read(line).is_err(), "{line}");
        }
        assert!(read("run --dmo").unwrap_err().contains("--dmo"));
    }

    #[test]
    fn a_soak_has_a_thousand_kills_unless_told() {
        let kills = |kills| Ok(Task::SoakCrash { kills });
        assert_eq!(read("soak crash"), kills(1_000));
        assert_eq!(read("soak crash 5"), kills(5));
    }

    #[test]
    fn nothing_asked_gets_the_help() {
        assert_eq!(read(""), Ok(Task::Help));
        assert_eq!(read("--help"), Ok(Task::Help));
    }
}

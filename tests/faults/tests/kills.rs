//! Kills at random moments: everything confirmed is there, the file is whole.

use plumule_faults::crash::{Says, kill};
use std::path::Path;

const PROGRAM: &str = env!("CARGO_BIN_EXE_crash");

#[test]
fn fifty_kills_lose_nothing_that_was_confirmed() {
    let figures = kill(Path::new(PROGRAM), 50, 50, Says::Afterwards).unwrap();
    println!("{figures:?}");
    assert_eq!(figures.kills, 50);
    assert!(
        figures.confirmed > 500 && figures.backups > 50,
        "{figures:?}"
    );
}

#[test]
fn an_act_that_is_confirmed_too_early_is_seen_to_be_lost() {
    for seed in 0..5 {
        let lost = kill(Path::new(PROGRAM), 1, seed, Says::TooEarly).unwrap_err();
        assert!(lost.contains("was confirmed and is lost"), "{lost}");
    }
}

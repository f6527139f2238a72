//! Kills at random moments: everything confirmed is there, the file is whole.

use plumule_faults::crash::{Says, kill};
use plumule_faults::{home, writes};
use plumule_journal::recover;
use std::fs;
use std::path::Path;
use std::process::Command;
use std::thread::sleep;
use std::time::Instant;

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

#[test]
fn a_recovery_that_is_killed_is_done_again_and_loses_nothing() {
    let base = home::with_acts(60);
    let mut want = home::whole(base.path()).unwrap().lines().unwrap();
    want.sort();
    let path = base.path().join("journal/journal.db");
    let mut bytes = fs::read(&path).unwrap();
    bytes[..100].fill(0);
    fs::write(&path, &bytes).unwrap();
    let start = |home: &Path| Command::new(PROGRAM).arg("recover").arg(home).spawn();
    let undisturbed = home::copied(base.path());
    let began = Instant::now();
    assert!(start(undisturbed.path()).unwrap().wait().unwrap().success());
    let whole = began.elapsed();
    let mut cut_short = 0;
    for part in 0..30 {
        let home = home::copied(base.path());
        let mut child = start(home.path()).unwrap();
        sleep(whole * part / 30);
        child.kill().unwrap();
        child.wait().unwrap();
        if home::whole(home.path()).is_err() {
            cut_short += 1;
            recover(home.path(), &writes::stamp(600), &mut |_| true).unwrap();
        }
        let mut found = home::whole(home.path()).unwrap().lines().unwrap();
        found.sort();
        assert_eq!(found, want);
        let aside = home.path().join("journal/set-aside");
        let aside: Vec<_> = fs::read_dir(aside).unwrap().collect();
        let kept = aside.iter().any(|folder| {
            let file = folder.as_ref().unwrap().path().join("journal.db");
            fs::read(file).is_ok_and(|kept| kept == bytes)
        });
        assert!(kept, "the damaged file is kept as it was");
    }
    println!("30 recoveries killed, {cut_short} of them before their end");
    assert!(cut_short > 0, "the first was killed as it began");
}

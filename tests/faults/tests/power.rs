//! Power loss at every write: <https://sqlite.org/pragma.html#pragma_synchronous>
//! says that FULL keeps what was committed and NORMAL in WAL mode may not.

use plumule_faults::power::cut_everywhere;

/// Small, so that the WAL goes into the database several times in a run.
const CHECKPOINT: &str = "PRAGMA wal_autocheckpoint = 20";

#[test]
fn what_was_confirmed_survives_power_loss_at_every_write() {
    let figures = cut_everywhere(24, CHECKPOINT).unwrap();
    println!("{figures:?}");
    assert!(figures.cuts > 500, "{figures:?}");
}

#[test]
fn the_same_with_synchronous_normal_loses() {
    let lost = cut_everywhere(24, "PRAGMA synchronous = NORMAL").unwrap_err();
    println!("{lost}");
    assert!(lost.contains("was confirmed and is lost"), "{lost}");
}

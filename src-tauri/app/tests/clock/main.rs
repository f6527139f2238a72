//! Every zone of the tz database: `cargo xtask soak clock`.
#![cfg(test)]

mod every_zone;

use chrono_tz::TZ_VARIANTS;
use every_zone::{Seen, YEARS, look};

#[test]
fn every_round_rings_once_a_day_in_every_zone() {
    let mut sum = Seen::default();
    for zone in TZ_VARIANTS {
        let seen = look(zone);
        sum.changes += seen.changes;
        sum.rings += seen.rings;
    }
    // Python's zoneinfo counts 8,843 in these years (tz 2025b); a later release may
    // know of a few less to come.
    assert!(sum.changes > 8_500, "{} changes", sum.changes);
    let (zones, (from, to)) = (TZ_VARIANTS.len(), YEARS);
    println!(
        "{zones} zones, {from} to {to}: {} changes, {} rounds",
        sum.changes, sum.rings
    );
}

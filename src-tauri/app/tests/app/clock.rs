//! A sample of what `cargo xtask soak clock` does with every zone.

use crate::every_zone::look;
use chrono_tz::{Africa, America, Antarctica, Australia, Europe, Pacific};

#[test]
fn every_round_rings_once_a_day_whatever_the_clocks_do() {
    let zones = [
        Europe::Berlin,
        Europe::Dublin,
        Pacific::Auckland,
        Australia::Lord_Howe,
        Antarctica::Troll,
        America::Santiago,
        America::Sao_Paulo,
        Africa::Casablanca,
        Pacific::Apia,
    ];
    for zone in zones {
        let seen = look(zone);
        assert!(
            seen.changes >= 10 && seen.rings > 0,
            "{zone}: {} changes",
            seen.changes
        );
    }
}

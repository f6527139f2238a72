//! Days to emergence: Harrington and Minges 1954, as reprinted (University of
//! California Santa Cruz); the source in full is in the golden file.

use plumule_agronomy::{Outlook, TimeFactor, crops, forecast};
use std::collections::BTreeSet;

const TABLE: &str = include_str!("../golden/emergence_days.csv");

enum Node {
    Days(u32),
    NoneComesUp,
}

/// Every crop, temperature and node that was tried.
fn nodes() -> Vec<(&'static str, f64, Node)> {
    let mut lines = TABLE.lines().filter(|line| !line.starts_with('#'));
    let temperatures: Vec<f64> = lines
        .next()
        .unwrap()
        .split(',')
        .skip(1)
        .map(|t| t.parse().unwrap())
        .collect();
    lines
        .flat_map(|line| {
            let (crop, days) = line.split_once(',').unwrap();
            assert_eq!(days.split(',').count(), temperatures.len(), "{line}");
            temperatures
                .clone()
                .into_iter()
                .zip(days.split(','))
                .filter_map(move |(t, days)| {
                    let node = match days {
                        "NT" => return None,
                        "NG" => Node::NoneComesUp,
                        days => Node::Days(days.parse().unwrap()),
                    };
                    Some((crop, t, node))
                })
        })
        .collect()
}

#[test]
fn the_rate_at_every_node_is_the_tables() {
    assert_eq!(nodes().len(), 176);
    for (crop, temperature, node) in nodes() {
        let rate = crops().get(crop).unwrap().curve.rate_per_day(temperature);
        let wanted = match node {
            Node::Days(days) => 1.0 / f64::from(days),
            Node::NoneComesUp => 0.0,
        };
        assert_eq!(rate, wanted, "{crop} at {temperature} °C");
    }
}

#[test]
fn the_half_way_day_at_every_node_is_the_tables() {
    let outlook = Outlook::new(9.0, 3.0).unwrap();
    let fresh = TimeFactor::new(0.0, 0.25).unwrap();
    for (key, temperature, node) in nodes() {
        let crop = crops().get(key).unwrap();
        let gained = crop.curve.day_progress(temperature, temperature);
        let found = forecast([gained], 20, outlook, fresh, crop.sigma).unwrap();
        match node {
            // The day of sowing, from 00:00, is the first of the table's days.
            Node::Days(days) => {
                assert_eq!(found.d50, Some(days - 1), "{key} at {temperature} °C");
            }
            Node::NoneComesUp => {
                let dates = [found.first, found.d10, found.d50, found.d90];
                assert_eq!(dates, [None; 4], "{key} at {temperature} °C");
            }
        }
    }
}

#[test]
fn the_book_has_the_tables_crops() {
    let of_table: BTreeSet<&str> = nodes().iter().map(|(crop, ..)| *crop).collect();
    assert_eq!(of_table.len(), 24);
    for key in of_table {
        assert!(crops().get(key).is_some(), "{key}");
    }
}

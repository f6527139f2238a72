//! What the years gave, over sowings counted in two places.

use crate::Bench;
use plumule_app::acts::Act;
use plumule_app::say::Arg;
use plumule_app::view::{Answer, Group, GroupBy, ResultsAsked, ResultsView};
use serde_json::{Value, json};

fn asked(by: GroupBy) -> ResultsAsked {
    ResultsAsked {
        by,
        year: None,
        crop: None,
        pair: None,
    }
}

fn act(of: Value) -> Act {
    serde_json::from_value(of).unwrap()
}

impl Bench {
    fn results(&mut self, asked: &ResultsAsked) -> ResultsView {
        let stamp = self.stamp();
        self.app.results(&stamp, asked).unwrap()
    }

    fn a_place(&mut self, name: &str) -> String {
        let usual = json!({"min_c": 16.0, "max_c": 22.0});
        let place = json!({"id": null, "name": name, "kind": "windowsill", "usual": usual,
            "unheated": null, "light": "bright", "covered": false, "position": 0, "retired": false});
        self.done(act(json!({"do": "describe_place", "place": place})))
            .1
    }

    fn a_packet(&mut self, variety: &str) -> String {
        let packet = json!({"crop": "tomato", "variety": variety, "packed_year": 2025,
            "harvested_year": null, "stated_germination": null, "seeds": 200,
            "storage": "cool_cupboard", "treated": false, "source": "", "note": ""});
        self.done(act(json!({"do": "add_packet", "packet": packet})))
            .1
    }

    /// Sown, counted after some days, and done with.
    fn sown(&mut self, packet: &str, place: &str, seeds: Value, counts: &[(i64, u32)]) {
        let into = json!({"tray": "new", "code": null, "container": "cells", "rows": 5,
            "columns": 10, "compost": "seed", "place": place, "covered": false});
        let sow = json!({"do": "sow", "packet": packet, "into": into, "cells": [],
            "seeds": seeds, "depth_mm": 6.0, "wanted": null, "again_of": null});
        let Answer::Written { sowing, .. } = self.act(act(sow)).unwrap() else {
            panic!("asked about a sowing");
        };
        let plants = json!({"type": "sowing", "id": sowing.unwrap()});
        let mut day = 0;
        for (at, up) in counts {
            self.wait_days(at - day);
            day = *at;
            let up = json!({"as": "number", "number": up});
            self.done(act(json!({"do": "count", "plants": plants, "up": up})));
        }
        self.done(act(json!({"do": "finish", "plants": plants})));
    }
}

fn exact(seeds: u32) -> Value {
    json!({"as": "exact", "number": seeds})
}

fn named<'a>(view: &'a ResultsView, name: &str) -> &'a Group {
    let is = |group: &&Group| group.of.name.args["name"] == Arg::Text(name.to_owned());
    view.groups.iter().find(is).unwrap()
}

#[test]
fn places_are_held_against_each_other() {
    let mut bench = Bench::new();
    let (sill, shed) = (bench.a_place("South sill"), bench.a_place("Shed"));
    let packet = bench.a_packet("Lantern Lane");
    bench.sown(&packet, &sill, exact(50), &[(8, 20), (10, 42)]);
    bench.sown(&packet, &sill, exact(50), &[(9, 43)]);
    bench.sown(&packet, &shed, exact(50), &[(14, 7)]);
    // A pinch tells nothing of seeds.
    bench.sown(&packet, &shed, json!({"as": "pinch"}), &[(14, 3)]);
    let view = bench.results(&asked(GroupBy::Place));
    assert_eq!((view.groups.len(), view.left_out), (2, 1));

    let shed = named(&view, "Shed");
    assert_eq!((shed.sowings, shed.seeds, shed.up), (1, 50, 7));
    assert!(shed.small, "one sowing");
    // Clopper-Pearson 95 % of 7 in 50 as SciPy's binomtest gives it.
    assert!((shed.low - 0.058_191_700_3).abs() < 1e-9, "{}", shed.low);
    assert!((shed.high - 0.267_396_002_5).abs() < 1e-9, "{}", shed.high);

    let sill = named(&view, "South sill");
    assert_eq!((sill.sowings, sill.seeds, sill.up), (2, 100, 85));
    assert!(!sill.small);
    // 20 of 42 by day 8 and all by day 10: Coolbear's half, (42 + 1)/2, by the
    // straight line between them. Of the other sowing nobody saw them come.
    let half = sill.half_days.unwrap();
    assert!((half - (8.0 + 2.0 * 1.5 / 22.0)).abs() < 1e-9, "{half}");

    let pair = Some((shed.of.key.clone(), sill.of.key.clone()));
    let by_place = ResultsAsked {
        pair,
        ..asked(GroupBy::Place)
    };
    let said = bench.results(&by_place).compared.unwrap();
    assert_eq!(said.key, "results-almost-surely");
    assert_eq!(said.args["better"], Arg::Text("South sill".to_owned()));
    assert_eq!(said.args["share"], Arg::Share(0.85));
    assert_eq!(said.args["other"], Arg::Share(0.14));
    assert_eq!(said.args["small"], Arg::Number(1.0));
}

#[test]
fn little_apart_is_no_telling() {
    let mut bench = Bench::new();
    let sill = bench.a_place("South sill");
    let (one, other) = (
        bench.a_packet("Lantern Lane"),
        bench.a_packet("Copper Bell"),
    );
    bench.sown(&one, &sill, exact(20), &[(9, 15)]);
    bench.sown(&other, &sill, exact(20), &[(9, 14)]);
    let pair = Some((one, other));
    let by_packet = ResultsAsked {
        pair,
        ..asked(GroupBy::Packet)
    };
    let said = bench.results(&by_packet).compared.unwrap();
    assert_eq!(said.key, "results-no-telling");
    assert_eq!(
        said.args["better_variety"],
        Arg::Variety("Lantern Lane".to_owned())
    );
    assert_eq!(said.args["better_year"], Arg::Text(" 2025".to_owned()));
}

#[test]
fn a_sowing_that_is_still_coming_up_waits_and_another_year_is_apart() {
    let mut bench = Bench::new();
    let sill = bench.a_place("South sill");
    let packet = bench.a_packet("Lantern Lane");
    bench.sown(&packet, &sill, exact(50), &[(9, 40)]);
    let of_year = |year| ResultsAsked {
        year: Some(year),
        ..asked(GroupBy::Crop)
    };
    assert_eq!(bench.results(&of_year(2026)).groups.len(), 1);
    assert_eq!(bench.results(&of_year(2025)).groups.len(), 0);
    let view = bench.results(&asked(GroupBy::Year));
    let years = |view: &ResultsView| -> Vec<(String, Arg)> {
        let years = view.years.iter();
        years
            .map(|it| (it.key.clone(), it.name.args["name"].clone()))
            .collect()
    };
    let called = |key: &str, name: &str| (key.to_owned(), Arg::Text(name.to_owned()));
    assert_eq!(years(&view), [called("2026", "2026")]);
    assert_eq!(view.groups[0].of.key, "2026");
}

/// Sown on 29 December and on 28 January: one summer in the south.
#[test]
fn a_summer_of_the_south_is_one_year() {
    let mut bench = Bench::new();
    let sill = bench.a_place("South sill");
    let packet = bench.a_packet("Lantern Lane");
    bench.wait_days(253);
    bench.sown(&packet, &sill, exact(50), &[(9, 40)]);
    bench.wait_days(21);
    bench.sown(&packet, &sill, exact(50), &[(9, 41)]);
    let told = |bench: &mut Bench| {
        let view = bench.results(&asked(GroupBy::Year));
        let groups = view.groups.iter();
        let mut told: Vec<(Arg, u32)> = groups
            .map(|it| (it.of.name.args["name"].clone(), it.up))
            .collect();
        told.sort_by_key(|(_, up)| *up);
        let year = |year| ResultsAsked {
            year: Some(year),
            ..asked(GroupBy::Crop)
        };
        (told, bench.results(&year(2026)).groups[0].up)
    };
    let text = |text: &str| Arg::Text(text.to_owned());
    let north = vec![(text("2026"), 40), (text("2027"), 41)];
    assert_eq!(told(&mut bench), (north, 40));
    let stamp = bench.stamp();
    let mut garden = bench.app.settings(&stamp, false).unwrap().garden;
    garden.latitude = Some(-37.0);
    bench.done(Act::DescribeGarden { garden });
    assert_eq!(told(&mut bench), (vec![(text("2026/27"), 81)], 81));
}

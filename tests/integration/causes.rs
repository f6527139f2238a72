//! Why sowings did badly: pairs that differ in one fact (common practice, no
//! source).

use plumule_agronomy::{
    Cause, CauseKind, Compost, Crop, Fact, Kept, Outlook, Seen, Storage, TimeFactor, causes, crops,
    packet_outlook,
};

fn crop(key: &str) -> &'static Crop {
    crops().get(key).unwrap()
}

/// Twenty seeds in days all alike, of a packet so many years old.
fn kept<'a>(key: &str, up: u32, days: &'a [(f64, f64)], years: f64) -> Kept<'a> {
    let crop = crop(key);
    let progress = days
        .iter()
        .map(|(min, max)| crop.curve.day_progress(*min, *max))
        .sum();
    let packet = packet_outlook(crop, years, None, Storage::CoolCupboard, &[]).unwrap();
    let usual = TimeFactor::new(0.0, 0.25).unwrap();
    Kept::new(crop, 20, up, days, progress, packet, usual)
}

fn first(kept: &Kept<'_>) -> Option<CauseKind> {
    causes(kept).unwrap().first().map(|cause| cause.kind)
}

#[test]
fn what_is_right_has_no_cause() {
    assert_eq!(
        causes(&kept("tomato", 17, &[(20.0, 24.0); 20], 0.5)),
        Ok(vec![])
    );
    // And nor has a poor sowing without a fact.
    assert_eq!(
        causes(&kept("tomato", 3, &[(20.0, 24.0); 20], 0.0)),
        Ok(vec![])
    );
}

#[test]
fn cold_heat_and_age() {
    assert_eq!(
        first(&kept("pepper", 2, &[(13.0, 17.0); 20], 0.5)),
        Some(CauseKind::TooCold)
    );
    assert_eq!(
        first(&kept("lettuce", 1, &[(30.0, 40.0); 8], 0.5)),
        Some(CauseKind::TooHot)
    );
    assert_eq!(
        first(&kept("onion", 4, &[(18.0, 22.0); 20], 4.0)),
        Some(CauseKind::OldSeed)
    );
}

/// Days that were cold and a cause with its days and their mean.
#[test]
fn a_cause_has_its_fact() {
    let found = causes(&kept("pepper", 2, &[(13.0, 17.0); 20], 0.5)).unwrap();
    let cold = found
        .iter()
        .find(|cause| cause.kind == CauseKind::TooCold)
        .unwrap();
    assert_eq!(
        cold.fact,
        Fact::Days {
            days: 20,
            mean_c: 15.0
        }
    );
    assert!(cold.likely && cold.seedlings > 8.0);
}

#[test]
fn each_fact_is_the_cause_where_it_is_the_only_one() {
    let warm = [(20.0, 24.0); 20];
    let poor = |key| kept(key, 4, &warm, 0.0);
    let celery = kept("celery", 4, &[(18.0, 22.0); 25], 0.0);
    let cool = kept("cucumber", 2, &[(8.0, 12.0); 20], 0.0);
    for (kept, kind) in [
        (
            Kept {
                depth_mm: Some(60.0),
                ..poor("tomato")
            },
            CauseKind::TooDeep,
        ),
        (
            Kept {
                depth_mm: Some(0.0),
                ..poor("tomato")
            },
            CauseKind::TooShallow,
        ),
        (
            Kept {
                depth_mm: Some(15.0),
                ..celery
            },
            CauseKind::BuriedFromLight,
        ),
        (
            Kept {
                felt_dry: 3,
                ..poor("tomato")
            },
            CauseKind::DriedOut,
        ),
        (
            Kept {
                longest_gap_days: Some(9.0),
                ..poor("tomato")
            },
            CauseKind::DriedOut,
        ),
        (
            Kept {
                compost: Some(Compost::GardenSoil),
                ..poor("tomato")
            },
            CauseKind::WrongCompost,
        ),
        (
            Kept {
                by_can: 2,
                ..poor("tomato")
            },
            CauseKind::WashedOut,
        ),
        (
            Kept {
                seen: &[(Seen::Eaten, Some(9))],
                ..poor("tomato")
            },
            CauseKind::Eaten,
        ),
        (
            Kept {
                seen: &[(Seen::Baked, None)],
                ..poor("tomato")
            },
            CauseKind::Baked,
        ),
        (
            Kept {
                light: Some(2.0),
                ..poor("tomato")
            },
            CauseKind::WantOfLight,
        ),
        (
            Kept {
                heat_days: 9,
                ..poor("tomato")
            },
            CauseKind::LongInTheHeat,
        ),
    ] {
        assert_eq!(first(&kept), Some(kind));
    }
    // Wet compost is a cause in the cool alone.
    let kinds = |kept: &Kept<'_>| -> Vec<CauseKind> {
        causes(kept)
            .unwrap()
            .iter()
            .map(|Cause { kind, .. }| *kind)
            .collect()
    };
    let progress = 1.5;
    assert!(
        kinds(&Kept {
            felt_wet: 3,
            progress,
            ..cool
        })
        .contains(&CauseKind::WetAndCool)
    );
    assert_eq!(
        kinds(&Kept {
            felt_wet: 3,
            ..poor("tomato")
        }),
        []
    );
    // The right depth is none.
    assert_eq!(
        kinds(&Kept {
            depth_mm: Some(6.0),
            ..poor("tomato")
        }),
        []
    );
}

#[test]
fn more_of_a_fault_ranks_it_higher() {
    let warm = [(20.0, 24.0); 20];
    let both = |by_can, felt_dry| Kept {
        by_can,
        felt_dry,
        ..kept("tomato", 2, &warm, 0.0)
    };
    assert_eq!(first(&both(1, 4)), Some(CauseKind::DriedOut));
    assert_eq!(first(&both(6, 1)), Some(CauseKind::WashedOut));
    for cause in causes(&both(3, 3)).unwrap() {
        assert!((0.5..=18.0).contains(&cause.seedlings), "{cause:?}");
    }
}

#[test]
fn evidence_that_cannot_be() {
    let good = kept("tomato", 2, &[(20.0, 24.0)], 0.0);
    let outlook = Outlook {
        a: f64::NAN,
        b: 1.0,
    };
    let packet = plumule_agronomy::PacketOutlook {
        outlook,
        ..good.packet
    };
    for (kept, code) in [
        (Kept { seeds: 0, ..good }, "bad_seeds"),
        (
            Kept {
                days: &[(9.0, 8.0)],
                ..good
            },
            "minimum_above_maximum",
        ),
        (
            Kept {
                days: &[(f64::NAN, 8.0)],
                ..good
            },
            "bad_temperature",
        ),
        (
            Kept {
                progress: -1.0,
                ..good
            },
            "bad_progress",
        ),
        (
            Kept {
                depth_mm: Some(f64::NAN),
                ..good
            },
            "bad_measure",
        ),
        (
            Kept {
                light: Some(-1.0),
                ..good
            },
            "bad_measure",
        ),
        (Kept { packet, ..good }, "bad_outlook"),
    ] {
        assert_eq!(causes(&kept).unwrap_err().code(), code);
    }
}

//! How many to sow and whether to wait: binomial tables, limits worked out by
//! hand, and sowings in pairs that differ in one fact.

use crate::golden::assert_near;
use plumule_agronomy::{
    Beside, DEAD, NoVerdict, Outlook, Posterior, Remedy, SIGMA, Standing, TimeFactor, Verdict,
    Watched, cells_to_sow, seeds_to_sow, verdict,
};

fn outlook(a: f64, b: f64) -> Outlook {
    Outlook::new(a, b).unwrap()
}

/// A share that is as good as known makes the Beta-binomial a binomial: its table
/// (computed with SciPy).
#[test]
fn with_a_known_share_the_binomial_table_holds() {
    for (wanted, share, confidence, seeds) in [
        (1, 0.8, 0.95, 2),
        (1, 0.5, 0.95, 5),
        (1, 0.8, 0.99, 3),
        (6, 0.8, 0.95, 10),
        (12, 0.8, 0.9, 18),
        (12, 0.55, 0.95, 29),
        (10, 0.9, 0.95, 13),
        (20, 0.75, 0.95, 32),
    ] {
        let sure = outlook(share * 1e8, (1.0 - share) * 1e8);
        assert_eq!(
            seeds_to_sow(wanted, confidence, sure),
            Ok(Some(seeds)),
            "{wanted} {share}"
        );
        // Two seeds a cell of share p are one of share 1 - (1 - p)².
        let pair = 1.0 - (1.0_f64 - share).sqrt();
        let sure = outlook(pair * 1e8, (1.0 - pair) * 1e8);
        assert_eq!(
            cells_to_sow(wanted, confidence, sure, 2),
            Ok(Some(seeds)),
            "{wanted} {share}"
        );
    }
}

/// With nothing known every number of n is as likely, so P(X >= w) = (n + 1 - w)/(n
/// + 1): 9 in 10 exactly at n = 9, 19, 29.
#[test]
fn a_probability_met_exactly_is_met() {
    for (wanted, seeds) in [(0, 0), (1, 9), (2, 19), (3, 29)] {
        assert_eq!(
            seeds_to_sow(wanted, 0.9, outlook(1.0, 1.0)),
            Ok(Some(seeds))
        );
    }
}

#[test]
fn beyond_10_000_seeds_better_seed_is_the_answer() {
    let dead = outlook(0.12, 1200.0);
    assert_eq!(seeds_to_sow(1, 0.9, dead), Ok(None));
    assert_eq!(cells_to_sow(1, 0.9, dead, 5), Ok(None));
    assert_eq!(seeds_to_sow(20_000, 0.9, outlook(9.0, 1.0)), Ok(None));
    // 0.9999 of seeds come up, so that 9990 can be had of 10,000 and 9999.9 cannot.
    assert!(
        seeds_to_sow(9_990, 0.9, outlook(1e8, 1e4))
            .unwrap()
            .is_some()
    );
    assert_eq!(seeds_to_sow(10_000, 0.9, outlook(1e8, 1e4)), Ok(None));
}

#[test]
fn sowing_numbers_that_cannot_be_asked() {
    let good = outlook(9.0, 3.0);
    for confidence in [0.0, 1.0, -0.1, f64::NAN] {
        assert_eq!(
            seeds_to_sow(1, confidence, good).unwrap_err().code(),
            "bad_probability"
        );
    }
    for seeds in [0, 101] {
        assert_eq!(
            cells_to_sow(1, 0.9, good, seeds).unwrap_err().code(),
            "bad_seeds_per_cell"
        );
    }
}

/// Twenty seeds of a good packet, twelve wanted.
fn watched(counts: &[(f64, u32)]) -> Watched<'_> {
    Watched {
        seeds: 20,
        counts,
        living: None,
        outlook: outlook(9.0, 3.0),
        time_factor: TimeFactor::new(0.0, 0.25).unwrap(),
        sigma: SIGMA,
        dead: DEAD,
        wanted: 12,
        firm: 0,
        soft: 0,
        horizon: None,
    }
}

fn standing(progress: f64) -> Standing {
    Standing {
        progress,
        per_day: 0.1,
        per_day_recommended: 0.125,
        remedy: None,
        days_left: None,
        in_cold_weeks: false,
        by_the_pinch: false,
    }
}

fn judge(watched: Watched<'_>, standing: Standing) -> Verdict {
    verdict(&watched, &standing).unwrap().0
}

/// By hand: nothing looked at yet, so all is as it was before.
#[test]
fn without_counts_the_posterior_is_the_prior() {
    let found = Posterior::new(&watched(&[])).unwrap();
    assert_near(found.p_dead(), 0.05, 1e-12, "dead");
    assert_near(found.expected_final(), 0.95 * 20.0 * 0.75, 1e-9, "expected");
}

/// By hand, where s is known and π too: each seed not up at the median is alive
/// with p/2 of 1 - p/2; dug up soft it is dead, and firm it is alive.
#[test]
fn a_known_seed_is_judged_by_bayes_rule() {
    let sure = Watched {
        seeds: 3,
        outlook: outlook(0.8e8, 0.2e8),
        time_factor: TimeFactor::new(0.0, 0.0).unwrap(),
        dead: 0.0,
        wanted: 3,
        ..watched(&[(1.0, 1)])
    };
    let found = Posterior::new(&sure).unwrap();
    let alive = 0.4 / 0.6;
    assert_near(
        found.expected_final(),
        1.0 + 2.0 * alive,
        1e-6,
        "two of 4/6",
    );
    assert_near(found.p_reach(), alive * alive, 1e-6, "both");
    assert_near(
        found.p_any_more(),
        1.0 - (1.0 - alive) * (1.0 - alive),
        1e-6,
        "any",
    );
    assert_eq!(found.p_nothing(), 0.0);
    let soft = Posterior::new(&Watched { soft: 1, ..sure }).unwrap();
    assert_near(soft.expected_final(), 1.0 + alive, 1e-6, "one left");
    let firm = Posterior::new(&Watched { firm: 1, ..sure }).unwrap();
    assert_near(firm.expected_final(), 2.0 + alive, 1e-6, "one sure");
    assert_near(firm.p_any_more(), 1.0, 1e-9, "one sure");
    // By the progress at which 3 in 4 of the living are up, half of the rest.
    let horizon = Some((0.674_489_75 * SIGMA).exp());
    let soon = Posterior::new(&Watched { horizon, ..sure }).unwrap();
    assert_near(soon.p_reach(), (alive / 2.0).powi(2), 1e-6, "both by then");
}

/// By hand: 1 in 20 beforehand, and 0.1 or 0.9 of dead seed feels firm or soft; of
/// one seed of share 0.8 at the median.
#[test]
fn digging_up_speaks_for_and_against_death() {
    let one = |firm, soft| {
        let one = Watched {
            seeds: 1,
            outlook: outlook(0.8e8, 0.2e8),
            time_factor: TimeFactor::new(0.0, 0.0).unwrap(),
            firm,
            soft,
            ..watched(&[(1.0, 0)])
        };
        Posterior::new(&one).unwrap().p_dead()
    };
    for (firm, soft, dead, alive) in [(0, 0, 1.0, 0.6), (1, 0, 0.1, 0.4), (0, 1, 0.9, 0.2)] {
        let wanted = 0.05 * dead / (0.05 * dead + 0.95 * alive);
        assert_near(one(firm, soft), wanted, 1e-6, firm);
    }
}

#[test]
fn a_fall_in_a_count_is_a_loss() {
    let fell = Posterior::new(&watched(&[(1.0, 8), (1.2, 5)])).unwrap();
    let kept = Posterior::new(&watched(&[(1.0, 8), (1.2, 8)])).unwrap();
    assert_eq!((fell.living(), kept.living()), (5, 8));
    assert_near(
        fell.p_any_more(),
        kept.p_any_more(),
        1e-12,
        "what is to come",
    );
    assert_near(
        fell.expected_final() + 3.0,
        kept.expected_final(),
        1e-9,
        "three lost",
    );
    // Of counts at the same progress the last holds.
    let twice = Posterior::new(&watched(&[(1.0, 15), (1.0, 8)])).unwrap();
    let once = Posterior::new(&watched(&[(1.0, 8)])).unwrap();
    assert_eq!(twice.expected_final(), once.expected_final());
}

#[test]
fn more_up_than_sown_is_taken_as_sown() {
    let found = Posterior::new(&watched(&[(1.0, 25)])).unwrap();
    assert_near(found.expected_final(), 25.0, 1e-12, "none left");
    assert_eq!(found.seeds_beside(), Beside::NotNeeded);
}

/// Each pair differs in one fact.
#[test]
fn verdicts_in_pairs() {
    let some = [(0.9, 1), (1.1, 5)];
    assert!(matches!(
        judge(watched(&some), standing(1.1)),
        Verdict::Wait { next_in_days: Some(days) } if (0.0..3.0).contains(&days)
    ));
    // The same counts with two days left: more are needed beside it.
    let short = Standing {
        days_left: Some(2.0),
        ..standing(1.1)
    };
    assert!(matches!(
        judge(watched(&some), short),
        Verdict::SowBeside(Beside::Seeds(_))
    ));
    // The same with a heater that doubles its pace.
    let cold = Standing {
        per_day: 0.02,
        per_day_recommended: 0.2,
        days_left: Some(4.0),
        remedy: Some(Remedy::Warm),
        ..standing(1.1)
    };
    assert!(matches!(
        judge(watched(&some), cold),
        Verdict::Move { remedy: Remedy::Warm, p_reach } if p_reach >= 0.5
    ));
    let nowhere = Standing {
        remedy: None,
        ..cold
    };
    assert!(matches!(
        judge(watched(&some), nowhere),
        Verdict::SowBeside(_)
    ));
    // As many at one and a half times the time, and none at three times it.
    let late = [(1.1, 5), (3.0, 5)];
    assert_eq!(judge(watched(&late), standing(3.0)), Verdict::NothingMore);
    // Twenty soft seeds make sure of it sooner.
    let dug = Watched {
        soft: 15,
        ..watched(&some)
    };
    assert_eq!(judge(dug, standing(1.1)), Verdict::NothingMore);
}

#[test]
fn a_place_at_standstill_is_not_waited_for() {
    let still = Standing {
        per_day: 0.0,
        ..standing(1.1)
    };
    assert!(!matches!(
        judge(watched(&[(1.1, 5)]), still),
        Verdict::Wait { .. }
    ));
}

#[test]
fn where_there_is_no_verdict() {
    let ready = standing(1.0);
    let counts = [(1.0, 3)];
    for (counts, standing, why) in [
        (&[(0.5, 0)][..], standing(0.5), NoVerdict::TooEarly),
        (&[(0.5, 0)], standing(2.0), NoVerdict::TooEarly),
        (&[(0.0, 2)], ready, NoVerdict::RecordWrong),
        (
            &counts,
            Standing {
                in_cold_weeks: true,
                ..ready
            },
            NoVerdict::ColdWeeks,
        ),
        (
            &counts,
            Standing {
                by_the_pinch: true,
                ..ready
            },
            NoVerdict::Pinch,
        ),
        (&[(1.0, 12)], ready, NoVerdict::Reached),
    ] {
        assert_eq!(
            judge(watched(counts), standing),
            Verdict::None(why),
            "{counts:?}"
        );
    }
}

/// New seeds come from the same packet: what is up speaks for it.
#[test]
fn a_packet_that_did_well_needs_fewer_beside() {
    let beside = |counts, wanted| match Posterior::new(&Watched {
        wanted,
        ..watched(counts)
    })
    .unwrap()
    .seeds_beside()
    {
        Beside::Seeds(seeds) => seeds,
        other => panic!("{other:?}"),
    };
    // Four more than are up, of a packet that gave 16 of 20 and one that gave 4.
    assert!(beside(&[(3.0, 16)], 20) < beside(&[(3.0, 4)], 8));
}

#[test]
fn watched_sowings_that_cannot_be() {
    for (watched, code) in [
        (
            Watched {
                seeds: 0,
                ..watched(&[])
            },
            "bad_seeds",
        ),
        (
            Watched {
                seeds: 10_001,
                ..watched(&[])
            },
            "bad_seeds",
        ),
        (watched(&[(1.0, 20_000)]), "bad_seeds"),
        (watched(&[(1.0, 1), (0.9, 2)]), "count_order"),
        (watched(&[(-1.0, 0)]), "bad_progress"),
        (watched(&[(f64::NAN, 0)]), "bad_progress"),
        (watched(&[(0.0, 1)]), "up_without_progress"),
        (
            Watched {
                firm: 10,
                soft: 11,
                ..watched(&[])
            },
            "bad_dug",
        ),
        (
            Watched {
                soft: u32::MAX,
                firm: 1,
                ..watched(&[])
            },
            "bad_dug",
        ),
        (
            Watched {
                dead: 1.0,
                ..watched(&[])
            },
            "bad_probability",
        ),
        (
            Watched {
                dead: f64::NAN,
                ..watched(&[])
            },
            "bad_probability",
        ),
        (
            Watched {
                sigma: 0.0,
                ..watched(&[])
            },
            "bad_sigma",
        ),
        (
            Watched {
                horizon: Some(-1.0),
                ..watched(&[])
            },
            "bad_progress",
        ),
    ] {
        assert_eq!(Posterior::new(&watched).unwrap_err().code(), code);
    }
    let early = verdict(&watched(&[(1.0, 1)]), &standing(0.9)).unwrap_err();
    assert_eq!(early.code(), "count_order");
    let endless = Standing {
        days_left: Some(f64::NAN),
        ..standing(1.0)
    };
    assert_eq!(
        verdict(&watched(&[]), &endless).unwrap_err().code(),
        "bad_duration"
    );
}

/// What no sowing has is answered all the same, and in no more than a moment.
#[test]
fn extremes_are_answered() {
    for (seeds, up, tau, sigma) in [
        (10_000, 5_000, 0.4, 0.28),
        (1, 0, 10.0, 0.001),
        (10_000, 0, 0.25, 0.28),
    ] {
        let extreme = Watched {
            seeds,
            time_factor: TimeFactor::new(0.0, tau).unwrap(),
            sigma,
            ..watched(&[])
        };
        let counts = [(1.0, up)];
        let found = Posterior::new(&Watched {
            counts: &counts,
            ..extreme
        })
        .unwrap();
        assert!((0.0..=1.0).contains(&found.p_any_more()) && found.expected_final().is_finite());
    }
}

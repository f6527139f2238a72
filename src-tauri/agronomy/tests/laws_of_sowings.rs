//! Laws of sowings and of the year that hold for any input, wild ones included.

#![cfg(test)]

use plumule_agronomy::*;
use proptest::prelude::*;

fn outlook() -> impl Strategy<Value = Outlook> {
    (-3.0..3.0, -3.0..3.0).prop_map(|(a, b): (f64, f64)| Outlook {
        a: 10_f64.powf(a),
        b: 10_f64.powf(b),
    })
}

fn time_factor() -> impl Strategy<Value = TimeFactor> {
    (-0.3..0.3, prop_oneof![Just(0.0), 0.01..0.8])
        .prop_map(|(mean_ln, tau)| TimeFactor { mean_ln, tau })
}

/// Counts that rise with progress, in a sowing of 30.
fn counts() -> impl Strategy<Value = Vec<(f64, u32)>> {
    prop::collection::vec((0.05_f64..0.8, 0_u32..8), 0..5).prop_map(|steps| {
        let (mut progress, mut up) = (0.0, 0);
        steps
            .into_iter()
            .map(|(gained, more)| {
                progress += gained;
                up += more;
                (progress, up)
            })
            .collect()
    })
}

prop_compose! {
    fn watched()(
        outlook in outlook(), time_factor in time_factor(), sigma in 0.05..0.6, dead in 0.0..0.5,
        wanted in 0_u32..40, horizon in prop::option::of(0.0..4.0), seeds in 40_u32..60,
        firm in 0_u32..2, soft in 0_u32..2,
    ) -> Watched<'static> {
        Watched {
            seeds: seeds + firm + soft, counts: &[], living: None, outlook, time_factor, sigma,
            dead, wanted, firm, soft, horizon,
        }
    }
}

/// The sowing with those counts, and seeds for all of them.
fn of<'a>(watched: &Watched<'_>, counts: &'a [(f64, u32)]) -> (Watched<'a>, Posterior) {
    let watched = Watched {
        seeds: watched.seeds,
        counts,
        living: None,
        outlook: watched.outlook,
        time_factor: watched.time_factor,
        sigma: watched.sigma,
        dead: watched.dead,
        wanted: watched.wanted,
        firm: watched.firm,
        soft: watched.soft,
        horizon: watched.horizon,
    };
    let found = Posterior::new(&watched).unwrap();
    (watched, found)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn the_posterior_is_made_of_probabilities(watched in watched(), counts in counts()) {
        let (watched, found) = of(&watched, &counts);
        let up = counts.last().map_or(0, |count| count.1);
        for p in [found.p_dead(), found.p_any_more(), found.p_nothing(), found.p_reach()] {
            prop_assert!((0.0..=1.0).contains(&p), "{p}");
        }
        // Something comes, or nothing does; the dead bring nothing.
        if up == 0 {
            prop_assert!((found.p_nothing() + found.p_any_more() - 1.0).abs() < 1e-9);
            prop_assert!(found.p_dead() <= found.p_nothing() + 1e-9);
        } else {
            prop_assert_eq!((found.p_dead(), found.p_nothing()), (0.0, 0.0));
        }
        let expected = found.expected_final();
        prop_assert!(f64::from(up) <= expected && expected <= f64::from(watched.seeds) + 1e-9);
        // No more than the expected number (Markov's inequality).
        let need = f64::from(watched.wanted.saturating_sub(up));
        prop_assert!(need * found.p_reach() <= expected - f64::from(up) + 1e-9);
        if let Some(next) = found.next_progress() {
            prop_assert!(next >= found.progress());
            // By then one more is there in half of all cases in which any come.
            let one_more = Watched { wanted: up + 1, living: Some(up), horizon: Some(next), ..watched };
            let reached = Posterior::new(&one_more).unwrap().p_reach();
            prop_assert!((reached / found.p_any_more() - 0.5).abs() < 1e-6, "{reached}");
        }
    }

    #[test]
    fn a_seedling_counted_never_makes_death_likelier(
        watched in watched(), counts in counts(), at in 0.1..1.0, more in 1_u32..4,
    ) {
        let (progress, up) = counts.last().copied().unwrap_or((0.0, 0));
        let (_, before) = of(&watched, &counts);
        let next = [counts.as_slice(), &[(progress + at, up + more)]].concat();
        let (_, after) = of(&watched, &next);
        prop_assert!(after.p_dead() <= before.p_dead());
        let idle = [counts.as_slice(), &[(progress + at, up)]].concat();
        prop_assert!(after.p_dead() <= of(&watched, &idle).1.p_dead());
    }

    #[test]
    fn more_wanted_or_less_time_is_never_likelier(watched in watched(), counts in counts(), less in 0.0..1.0) {
        let (watched, found) = of(&watched, &counts);
        let more = Watched { wanted: watched.wanted + 1, ..watched };
        prop_assert!(Posterior::new(&more).unwrap().p_reach() <= found.p_reach() + 1e-12);
        let time = watched.horizon.unwrap_or(4.0);
        prop_assert!(found.p_reach_by(Some(time * less)) <= found.p_reach_by(Some(time)) + 1e-9);
        prop_assert!(found.p_reach_by(Some(time)) <= found.p_reach_by(None) + 1e-9);
        prop_assert!((found.p_reach_by(Some(1e12)) - found.p_reach_by(None)).abs() < 1e-6);
    }

    #[test]
    fn seeds_beside_are_just_enough(watched in watched(), counts in counts()) {
        let (watched, found) = of(&watched, &counts);
        match found.seeds_beside() {
            Beside::NotNeeded => prop_assert!(found.p_reach() >= 0.9),
            Beside::Seeds(seeds) => {
                prop_assert!(found.p_reach() < 0.9);
                prop_assert!((1..=MOST_SEEDS).contains(&seeds));
                // One plant fewer wanted never takes more.
                let fewer = Watched { wanted: watched.wanted - 1, ..watched };
                if let Beside::Seeds(less) = Posterior::new(&fewer).unwrap().seeds_beside() {
                    prop_assert!(less <= seeds);
                }
            }
            Beside::BetterSeed => prop_assert!(found.p_reach() < 0.9),
        }
    }

    #[test]
    fn more_seeds_never_lower_the_chance(outlook in outlook(), wanted in 1_u32..30, confidence in 0.05..0.95) {
        let number = |wanted, confidence, outlook| {
            seeds_to_sow(wanted, confidence, outlook).unwrap().unwrap_or(u32::MAX)
        };
        let seeds = number(wanted, confidence, outlook);
        prop_assert!(seeds >= wanted);
        prop_assert!(number(wanted + 1, confidence, outlook) >= seeds);
        prop_assert!(number(wanted, confidence + 0.04, outlook) >= seeds);
        let better = Outlook { a: outlook.a * 1.5, b: outlook.b };
        prop_assert!(number(wanted, confidence, better) <= seeds);
    }

    #[test]
    fn two_seeds_a_cell_take_fewer_cells_and_no_fewer_seeds(outlook in outlook(), wanted in 1_u32..20, per in 2_u32..5) {
        let ask = |per| cells_to_sow(wanted, 0.9, outlook, per).unwrap();
        if let (Some(single), Some(several)) = (ask(1), ask(per)) {
            prop_assert!(several <= single && several * per >= single, "{single} {several}");
        }
    }

    #[test]
    fn warmer_below_the_optimum_is_never_slower(
        crop in prop::sample::select(crops().iter().collect::<Vec<_>>()), t in -5.0..40.0, more in 0.0..5.0,
    ) {
        // The first of the highest rates.
        let optimum = (0..=450).map(|tenth| f64::from(tenth) / 10.0).fold(0.0, |best, t| {
            if crop.curve.rate_per_day(t) > crop.curve.rate_per_day(best) { t } else { best }
        });
        if t + more <= optimum {
            prop_assert!(
                crop.curve.rate_per_day(t) <= crop.curve.rate_per_day(t + more) + 1e-12,
                "{} at {t} and {}", crop.key, t + more
            );
        }
    }

    #[test]
    fn an_interval_holds_the_share_and_narrows(k in 0_u32..50, rest in 0_u32..50, level in 0.01..0.99) {
        let n = k + rest + 1;
        let (low, high) = interval(k, n, level).unwrap();
        let share = f64::from(k) / f64::from(n);
        prop_assert!(0.0 <= low && low <= share && share <= high && high <= 1.0);
        let (lower, higher) = interval(k, n, level + 0.009).unwrap();
        prop_assert!(lower <= low && high <= higher);
        let p = p_higher((k, n), (rest, n)).unwrap() + p_higher((rest, n), (k, n)).unwrap();
        prop_assert!((p - 1.0).abs() < 1e-9);
    }

    #[test]
    fn degree_days_grow_with_warmth(min in -20.0..40.0, range in 0.0..20.0, lower in 0.0..15.0, more in 0.0..5.0) {
        let ask = |min: f64, max: f64| degree_days(min, max, lower, lower + 20.0).unwrap();
        let found = ask(min, min + range);
        prop_assert!((0.0..=20.0 + 1e-9).contains(&found), "{found}");
        prop_assert!(ask(min + more, min + range + more) >= found - 1e-9);
    }

    #[test]
    fn nothing_wild_panics_or_gives_a_nan(
        x in prop::array::uniform8(prop_oneof![any::<f64>(), -2.0..3.0, Just(f64::NAN), Just(f64::INFINITY)]),
        n in prop::array::uniform4(prop_oneof![0_u32..30, any::<u32>()]), some: bool,
    ) {
        let [a, b, c, d, e, f, g, h] = x;
        let counts = [(a, n[0]), (b, n[1])];
        let wild = Watched {
            seeds: n[2], counts: &counts[usize::from(some)..], living: some.then_some(n[3]),
            outlook: Outlook { a: c, b: d }, time_factor: TimeFactor { mean_ln: e, tau: f }, sigma: g,
            dead: h, wanted: n[3] % 40, firm: n[0] % 3, soft: n[1] % 3, horizon: some.then_some(a),
        };
        if let Ok(found) = Posterior::new(&wild) {
            for p in [found.p_dead(), found.p_any_more(), found.p_nothing(), found.p_reach()] {
                prop_assert!((0.0..=1.0).contains(&p));
            }
            prop_assert!(found.expected_final().is_finite());
            prop_assert!(found.next_progress().is_none_or(f64::is_finite));
        }
        let outlook = Outlook { a, b };
        let _ = seeds_to_sow(n[0], c, outlook);
        let _ = cells_to_sow(n[0], c, outlook, n[1]);
        for value in [
            degree_days(a, b, c, d), daily_light_integral(a, b), lamp_light_integral(a, b),
            p_higher((n[0], n[1] % 100), (n[2], n[3] % 100)),
        ] {
            prop_assert!(value.is_ok_and(|value| value >= 0.0) || value.is_err_and(|error| !error.code().is_empty()));
        }
        if let Ok((low, high)) = interval(n[0], n[1], a) {
            prop_assert!(low <= high);
        }
        let finished = Finished { progress_at_half: a, up: n[0], share_of_days_with_reading: b };
        if let Ok(found) = learnt_time_factor(TimeFactor { mean_ln: c, tau: d }, e, &[finished]) {
            prop_assert!(TimeFactor::new(found.mean_ln, found.tau).is_ok());
        }
        if let Ok(found) = germination_indices(&[n[0], n[1]], n[2]) {
            prop_assert!(found.t50_coolbear.is_none_or(f64::is_finite));
        }
    }
}

/// By hand: what two finished sowings teach, with weights of 1/τ² and of
/// 1/(σ²/k + 0.15²).
#[test]
fn finished_sowings_move_and_narrow_the_time_factor() {
    let prior = TimeFactor::new(0.0, 0.2).unwrap();
    let finished = Finished {
        progress_at_half: 1.2,
        up: 16,
        share_of_days_with_reading: 1.0,
    };
    let found = learnt_time_factor(prior, 0.28, &[finished; 2]).unwrap();
    let seen = 2.0 / (0.07 * 0.07 + 0.15 * 0.15);
    assert!((found.mean_ln - 1.2_f64.ln() * seen / (seen + 25.0)).abs() < 1e-12);
    assert!((found.tau - (seen + 25.0).powf(-0.5)).abs() < 1e-12);
    let none = Finished { up: 0, ..finished };
    assert!(learnt_time_factor(prior, 0.28, &[none]).is_err());
}

/// A law at one point: what is slower than most likely weighs, and what is
/// faster. The values are ratios of integrals over π in 0..1 and ln s in ±3 of
/// (π ΔF₁)⁴ (π ΔF₂)⁴ (1 - π F)¹² π⁸ (1 - π)² φ(ln s/0.25), by nested
/// `integrate.quad` of SciPy 1.17.1 (NumPy 2.4.6) to 11 digits, with c = π (1 -
/// F)/(1 - π F): the mean of 8 + 12 c, and 1 less that of (1 - c)¹².
#[test]
fn both_sides_of_the_summit_weigh() {
    let watched = Watched {
        seeds: 20,
        counts: &[(0.8, 0), (1.0, 4), (1.1, 8)],
        living: None,
        outlook: Outlook { a: 9.0, b: 3.0 },
        time_factor: TimeFactor {
            mean_ln: 0.0,
            tau: 0.25,
        },
        sigma: 0.28,
        dead: DEAD,
        wanted: 16,
        firm: 0,
        soft: 0,
        horizon: None,
    };
    let found = Posterior::new(&watched).unwrap();
    let close = |found: f64, truth: f64| assert!((found - truth).abs() < 1e-9, "{found} {truth}");
    close(found.expected_final(), 16.075_634_686_7);
    close(found.p_any_more(), 0.999_258_201_5);
}

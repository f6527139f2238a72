//! Laws that hold for any input, wild ones included.

use plumule_agronomy::*;
use proptest::prelude::*;

/// Any number there is.
fn wild() -> impl Strategy<Value = f64> {
    prop_oneof![
        -50.0..100.0,
        any::<f64>(),
        Just(f64::NAN),
        Just(f64::INFINITY),
        Just(f64::MIN_POSITIVE),
        Just(f64::MAX),
        Just(-0.0),
    ]
}

fn crop() -> impl Strategy<Value = &'static Crop> {
    prop::sample::select(crops().iter().collect::<Vec<_>>())
}

fn outlook() -> impl Strategy<Value = Outlook> {
    (-8.9..4.0, -8.9..4.0).prop_map(|(a, b): (f64, f64)| Outlook {
        a: 10_f64.powf(a),
        b: 10_f64.powf(b),
    })
}

fn time_factor() -> impl Strategy<Value = TimeFactor> {
    (-1.0..1.0, prop_oneof![Just(0.0), 1e-9..1.0])
        .prop_map(|(mean_ln, tau)| TimeFactor { mean_ln, tau })
}

proptest! {
    #[test]
    fn the_rate_is_continuous_and_not_negative(crop in crop(), t in -20.0..60.0) {
        let rate = crop.curve.rate_per_day(t);
        prop_assert!(rate >= 0.0);
        // Turnip falls steepest: from 1/3 to 0 within 0.6 °C.
        let near = crop.curve.rate_per_day(t + 1e-6);
        prop_assert!((rate - near).abs() < 1e-6, "{} at {t}: {rate}, {near}", crop.key);
    }

    #[test]
    fn a_day_lies_between_the_rates_of_its_hours(crop in crop(), min in -10.0..40.0, range in 0.0..25.0) {
        let max = min + range;
        let rates: Vec<f64> = (0..24)
            .map(|hour| crop.curve.rate_per_day(day_temperature_at(min, max, f64::from(hour) + 0.5)))
            .collect();
        let day = crop.curve.day_progress(min, max);
        let (low, high) = rates.iter().fold((1.0, 0.0), |(l, h), r| (r.min(l), r.max(h)));
        prop_assert!(low - 1e-12 <= day && day <= high + 1e-12);
    }

    #[test]
    fn parts_of_a_day_add_up(crop in crop(), min in -10.0..40.0, range in 0.0..25.0, at in 0.0..24.0) {
        let part = |from, to| crop.curve.part_of_day_progress(min, min + range, from, to);
        let whole = crop.curve.day_progress(min, min + range);
        prop_assert!((part(0.0, at) + part(at, 24.0) - whole).abs() < 1e-12);
    }

    #[test]
    fn a_share_is_a_share_and_grows(p in 0.0..20.0, more in 0.0..20.0, s in 0.01..20.0, sigma in 0.001..10.0) {
        let share = emerged_share(p, s, sigma).unwrap();
        let later = emerged_share(p + more, s, sigma).unwrap();
        prop_assert!((0.0..=1.0).contains(&share) && share <= later && later <= 1.0);
    }

    #[test]
    fn the_chance_of_any_grows_with_progress_and_with_seeds(
        p in 0.0..3.0, more in 0.0..2.0, seeds in 1_u32..80,
        outlook in outlook(), time_factor in time_factor(), sigma in 0.05..1.0,
    ) {
        let any = |p, n| probability_any_up(p, n, outlook, time_factor, sigma).unwrap();
        let chance = any(p, seeds);
        prop_assert!((-1e-12..=1.0 + 1e-12).contains(&chance));
        prop_assert!(any(p + more, seeds) >= chance - 1e-9);
        prop_assert!(any(p, seeds + 1) >= chance - 1e-6);
        // No more than the expected number up (Markov's inequality).
        let share = average_emerged_share(p, time_factor.mean_ln, time_factor.tau, sigma);
        prop_assert!(chance <= f64::from(seeds) * outlook.mean() * share + 1e-6);
    }

    #[test]
    fn dates_are_in_order_and_warmth_brings_them_nearer(
        days in prop::collection::vec(0.0..0.5, 1..40), seeds in 1_u32..200,
        outlook in outlook(), time_factor in time_factor(), sigma in 0.05..0.6,
    ) {
        let late = |day: Option<u32>| day.unwrap_or(u32::MAX);
        let ask = |days: Vec<f64>, seeds| forecast(days, seeds, outlook, time_factor, sigma).unwrap();
        let found = ask(days.clone(), seeds);
        prop_assert!(late(found.d10) <= late(found.d50) && late(found.d50) <= late(found.d90));
        prop_assert!(late(ask(days.clone(), seeds + 50).first) <= late(found.first));
        let warmer = ask(days.iter().map(|gained| gained * 1.5).collect(), seeds);
        prop_assert!(late(warmer.d50) <= late(found.d50) && late(warmer.first) <= late(found.first));
    }

    /// Where ten seedlings or more are to be expected. (Not before a tenth of
    /// them: that share is an average over s, the first day a middle over it.)
    #[test]
    fn the_first_comes_before_the_half(
        gained in 0.01..0.5, seeds in 20_u32..200, a in 10.0..50.0, time_factor in time_factor(),
    ) {
        let outlook = Outlook::new(a, 5.0).unwrap();
        let found = forecast([gained], seeds, outlook, time_factor, SIGMA).unwrap();
        prop_assert!(found.first.unwrap() <= found.d50.unwrap());
    }

    #[test]
    fn older_or_worse_kept_seed_is_never_worth_more(
        crop in crop(), age in 0.0..30.0, more in 0.0..30.0, stated in prop::option::of(0.0..=1.0),
        up in 0_u32..20, old in 0.0..10.0,
    ) {
        use Storage::*;
        let tests = [Test { germinated: up, of: 20, age_years: old }];
        let ask = |age, storage| packet_outlook(crop, age, stated, storage, &tests).unwrap();
        let mut kept = [FridgeSealed, CoolCupboard, WarmRoom].map(|storage| ask(age, storage));
        for found in &kept {
            prop_assert!((0.0..=1.0).contains(&found.germination));
            prop_assert!(Outlook::new(found.outlook.a, found.outlook.b).is_ok());
        }
        prop_assert!(ask(age + more, WarmRoom).outlook.mean() <= kept[2].outlook.mean() + 1e-9);
        let means = kept.each_ref().map(|found| found.outlook.mean());
        kept.sort_by(|one, other| other.outlook.mean().total_cmp(&one.outlook.mean()));
        prop_assert_eq!(means, kept.map(|found| found.outlook.mean()));
    }

    #[test]
    fn a_span_holds_the_middle(outlook in outlook(), level in 0.01..0.99) {
        let (low, high) = outlook.span(level).unwrap();
        prop_assert!(0.0 <= low && low <= high && high <= 1.0);
    }

    #[test]
    fn compost_is_felt_every_1_to_4_days(mean in -10.0..60.0, covered: bool, factor in 0.01..10.0) {
        let days = drying_interval_days(mean, covered, factor).unwrap();
        prop_assert!((1.0..=4.0).contains(&days));
        prop_assert!(drying_interval_days(mean + 1.0, covered, factor).unwrap() <= days);
    }

    #[test]
    fn nothing_wild_panics_or_gives_a_nan(
        x in prop::array::uniform8(wild()), seeds: u32, counts: (u32, u32), covered: bool,
        crop in crop(), nodes in prop::collection::vec((wild(), prop::option::of(wild())), 0..5),
    ) {
        let [a, b, c, d, e, f, g, h] = x;
        let curve = Curve::new(&nodes, a);
        for curve in curve.iter().chain([&crop.curve]) {
            prop_assert!(curve.rate_per_day(b) >= 0.0);
            prop_assert!(curve.day_progress(b, c) >= 0.0);
            prop_assert!(curve.part_of_day_progress(b, c, d, e) >= 0.0);
        }
        prop_assert!((0.0..=1.0).contains(&average_emerged_share(a, b, c, d)));
        prop_assert!(emerged_share(a, b, c).is_ok_and(|share| (0.0..=1.0).contains(&share))
            || emerged_share(a, b, c).is_err_and(|error| !error.code().is_empty()));
        prop_assert!(tau(a, b) >= 0.15);
        let _ = old_seed_time_factor(a, b);
        let few = seeds % 50;
        for seeds in [few, seeds] {
            let outlook = Outlook { a: d, b: e };
            let time_factor = TimeFactor { mean_ln: f, tau: g };
            let _ = forecast([a, b, c], seeds, outlook, time_factor, h);
            if let Ok(chance) = probability_any_up(a, seeds, outlook, time_factor, h) {
                prop_assert!((-1e-9..=1.0 + 1e-9).contains(&chance));
            }
        }
        if let Ok((low, high)) = (Outlook { a, b }).span(c) {
            prop_assert!(low <= high);
        }
        let test = Test { germinated: counts.0, of: counts.1, age_years: c };
        if let Ok(found) = packet_outlook(crop, a, Some(b), Storage::DampShed, &[test]) {
            prop_assert!(Outlook::new(found.outlook.a, found.outlook.b).is_ok());
        }
        if let Ok(days) = drying_interval_days(a, covered, b) {
            prop_assert!((1.0..=4.0).contains(&days));
        }
    }
}

#[test]
fn without_progress_there_are_no_dates() {
    let outlook = Outlook::new(9.0, 3.0).unwrap();
    let time_factor = TimeFactor::new(0.0, 0.25).unwrap();
    let none = Forecast {
        first: None,
        d10: None,
        d50: None,
        d90: None,
    };
    assert_eq!(
        forecast([0.0], 100_000, outlook, time_factor, SIGMA),
        Ok(none)
    );
    assert_eq!(
        forecast(std::iter::repeat(0.0), 1, outlook, time_factor, SIGMA),
        Ok(none)
    );
}

/// Not even where the doubt is so wide that the least progress would do.
#[test]
fn no_doubt_makes_dates_of_no_progress() {
    let outlook = Outlook::new(9.0, 3.0).unwrap();
    let widest = TimeFactor::new(-10.0, 10.0).unwrap();
    let found = forecast([0.0], 100_000, outlook, widest, 10.0).unwrap();
    assert_eq!([found.first, found.d10, found.d50, found.d90], [None; 4]);
}

/// √(0.20² + 0.35²), √(0.20² + 0.25²) and √(0.20² + 0.15²).
#[test]
fn readings_narrow_the_doubt() {
    for (share, wanted) in [(0.0, 0.403_113), (0.5, 0.320_156), (1.0, 0.25), (7.0, 0.25)] {
        assert!((tau(TAU_KIND, share) - wanted).abs() < 1e-6, "{share}");
    }
    assert_eq!(tau(TAU_KIND, f64::NAN), tau(TAU_KIND, 0.0));
}

#[test]
fn old_seed_is_under_three_quarters_of_what_it_was() {
    assert_eq!(old_seed_time_factor(0.601, 0.8), None);
    let old = old_seed_time_factor(0.599, 0.8).unwrap();
    assert_eq!((old.mean_ln, old.tau), (0.2, 0.4));
}

#[test]
fn the_most_seeds_and_the_widest_doubt_are_answered() {
    let outlook = Outlook::new(1e-9, 1e9).unwrap();
    let widest = TimeFactor::new(0.0, 10.0).unwrap();
    assert!(forecast([1.0], 100_000, outlook, widest, 0.001).is_ok());
    let outlook = Outlook::new(0.5, 0.5).unwrap();
    let sure = TimeFactor::new(0.0, 0.0).unwrap();
    assert_eq!(
        forecast([1.0], 100_000, outlook, sure, 0.001).unwrap().d50,
        Some(0)
    );
}

#[test]
fn the_horizon_is_a_year() {
    let outlook = Outlook::new(9.0, 3.0).unwrap();
    let sure = TimeFactor::new(0.0, 0.0).unwrap();
    let half = |days: f64| forecast([1.0 / days], 9, outlook, sure, SIGMA).unwrap().d50;
    assert_eq!(half(365.0), Some(HORIZON_DAYS - 1));
    assert_eq!(half(366.0), None);
}

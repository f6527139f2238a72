//! Indices, intervals and comparisons against published worked examples.

use crate::golden::assert_near;
use plumule_agronomy::{germination_indices, interval, p_higher};

/// The tests and vignette of a published package (germinationmetrics, after
/// Coolbear, Labouriau, Ranal and Santana, and Primack), recomputed.
#[test]
fn the_worked_example_of_the_indices() {
    let counts = [0, 0, 0, 0, 4, 17, 10, 7, 1, 0, 1, 0, 0, 0];
    let found = germination_indices(&counts, 50).unwrap();
    for (name, found, wanted) in [
        ("percent", Some(found.percent), 80.0),
        ("T50", found.t50_coolbear, 5.970_588_235_294_12),
        ("mean time", found.mean_time, 6.7),
        ("variance", found.variance, 1.446_153_846_153_85),
        ("CVG", found.cvg, 14.925_373_134_328_4),
        ("synchrony", found.synchrony, 0.266_666_666_666_667),
        ("uncertainty", found.uncertainty, 2.062_987_252_274_05),
    ] {
        assert_near(found.unwrap(), wanted, 1e-9, name);
    }
}

/// Seen in the tests of the same package: a day of nothing before the first moves
/// T50 by that day and no more. Cumulative 0, 0, 39, 41, 41.
#[test]
fn an_empty_day_before_only_shifts_t50() {
    let t50 = |counts: &[u32]| {
        germination_indices(counts, 50)
            .unwrap()
            .t50_coolbear
            .unwrap()
    };
    let found = t50(&[0, 0, 39, 2, 0]);
    assert_near(found, 2.0 + 21.0 / 39.0, 1e-12, "39 on the third day");
    assert_near(t50(&[0, 0, 0, 39, 2, 0]), found + 1.0, 1e-12, "a day later");
}

/// By hand: what does not exist for so few.
#[test]
fn few_have_few_indices() {
    let none = germination_indices(&[0, 0], 10).unwrap();
    assert_eq!(none.percent, 0.0);
    assert_eq!(
        [none.t50_coolbear, none.mean_time, none.variance, none.cvg],
        [None; 4]
    );
    assert_eq!([none.synchrony, none.uncertainty], [None; 2]);
    let one = germination_indices(&[0, 1], 10).unwrap();
    assert_eq!(
        (one.t50_coolbear, one.mean_time, one.cvg),
        (Some(2.0), Some(2.0), Some(50.0))
    );
    assert_eq!(
        (one.variance, one.synchrony, one.uncertainty),
        (None, None, Some(0.0))
    );
    assert_eq!(
        germination_indices(&[6, 5], 10).unwrap_err().code(),
        "bad_test"
    );
    assert_eq!(germination_indices(&[], 0).unwrap_err().code(), "bad_seeds");
    assert!(germination_indices(&[u32::MAX, u32::MAX], 10).is_err());
}

/// SciPy's documentation of the binomial test for 7 of 50; Newcombe 1998, Table I,
/// exact values (recalled, reproduced); the home tests computed.
#[test]
fn clopper_pearson() {
    for (k, n, low, high, by) in [
        (
            7,
            50,
            0.058_191_700_339_973_42,
            0.267_396_002_497_008_46,
            1e-12,
        ),
        (81, 263, 0.2527, 0.3676, 5e-5),
        (15, 148, 0.0578, 0.1617, 5e-5),
        (0, 20, 0.0, 0.1684, 5e-5),
        (1, 29, 0.0009, 0.1776, 5e-5),
        (0, 10, 0.0, 0.308_497, 5e-7),
        (5, 10, 0.187_086, 0.812_914, 5e-7),
        (10, 10, 0.691_503, 1.0, 5e-7),
        (85, 100, 0.764_692, 0.913_546, 5e-7),
    ] {
        let found = interval(k, n, 0.95).unwrap();
        assert_near(found.0, low, by, k);
        assert_near(found.1, high, by, k);
    }
    for (k, n, level, code) in [
        (2, 1, 0.9, "bad_test"),
        (0, 0, 0.9, "bad_test"),
        (1, 2, 1.0, "bad_probability"),
        (1, 2, f64::NAN, "bad_probability"),
    ] {
        assert_eq!(interval(k, n, level).unwrap_err().code(), code);
    }
}

/// All of n against none of n: 1 - n!·n!·(n + 1)/(2n + 1)! · (n + 1), by the
/// integral of (n + 1)(1 - y)ⁿ · (1 - yⁿ⁺¹).
#[test]
fn all_of_some_is_higher_than_none_of_them() {
    let beta = |n: u32| {
        (1..=n + 1)
            .map(|i| f64::from(i) / f64::from(n + 1 + i))
            .product::<f64>()
    };
    for n in [1, 3, 10] {
        let found = p_higher((n, n), (0, n)).unwrap();
        assert_near(found, 1.0 - beta(n), 1e-12, n);
    }
    let both = p_higher((7, 12), (3, 9)).unwrap() + p_higher((3, 9), (7, 12)).unwrap();
    assert_near(both, 1.0, 1e-12, "one or the other");
    assert_eq!(p_higher((1, 1), (1, 0)).unwrap_err().code(), "bad_test");
    // Thousands stay in range.
    assert_near(
        p_higher((9_000, 10_000), (1, 10_000)).unwrap(),
        1.0,
        1e-9,
        "far apart",
    );
    assert!(p_higher((1, 10_000), (9_000, 10_000)).unwrap() < 1e-9);
}

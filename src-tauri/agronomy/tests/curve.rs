//! The rules of a curve, on nodes made for the purpose.

use plumule_agronomy::{Curve, CurveError, day_temperature_at, mean_from_reading_now};

#[test]
fn between_nodes_the_rate_is_linear() {
    let curve = Curve::new(&[(10.0, Some(20.0)), (20.0, Some(5.0))], 30.0).unwrap();
    assert!((curve.rate_per_day(15.0) - 0.125).abs() < 1e-12);
}

#[test]
fn below_the_lowest_node_the_line_runs_on_to_0() {
    let curve = Curve::new(&[(10.0, Some(20.0)), (20.0, Some(5.0))], 30.0).unwrap();
    assert!((curve.rate_per_day(8.0) - 0.02).abs() < 1e-12);
    assert_eq!(curve.rate_per_day(5.0), 0.0);
    let nothing_at_10 = Curve::new(&[(10.0, None), (20.0, Some(5.0))], 30.0).unwrap();
    assert_eq!(nothing_at_10.rate_per_day(9.0), 0.0);
}

#[test]
fn a_rate_that_falls_with_warmth_does_not_rise_into_the_cold() {
    let curve = Curve::new(&[(10.0, Some(5.0)), (20.0, Some(20.0))], 30.0).unwrap();
    assert_eq!(curve.rate_per_day(-40.0), 0.2);
}

#[test]
fn above_the_highest_node_the_line_falls_to_0_at_the_maximum() {
    let nodes = [(10.0, Some(20.0)), (20.0, Some(5.0))];
    let curve = Curve::new(&nodes, 30.0).unwrap();
    assert!((curve.rate_per_day(25.0) - 0.1).abs() < 1e-12);
    assert_eq!(curve.rate_per_day(30.0), 0.0);
    assert_eq!(curve.rate_per_day(60.0), 0.0);
}

#[test]
fn where_the_maximum_is_not_above_it_the_line_falls_over_5_degrees() {
    let nodes = [(10.0, Some(20.0)), (20.0, Some(5.0))];
    for maximum in [20.0, 15.0] {
        let curve = Curve::new(&nodes, maximum).unwrap();
        assert!((curve.rate_per_day(22.5) - 0.1).abs() < 1e-12);
        assert_eq!(curve.rate_per_day(25.0), 0.0);
    }
}

#[test]
fn nodes_that_make_no_curve() {
    let some = Some(5.0);
    for (nodes, code) in [
        (vec![], "curve_too_few_nodes"),
        (vec![(10.0, some)], "curve_too_few_nodes"),
        (vec![(10.0, None), (20.0, None)], "curve_none_comes_up"),
        (vec![(20.0, some), (10.0, some)], "curve_order"),
        (vec![(10.0, some), (10.0, some)], "curve_order"),
        (vec![(f64::NAN, some), (10.0, some)], "curve_temperature"),
        (vec![(5.0, some), (1e9, some)], "curve_temperature"),
        (vec![(5.0, some), (10.0, Some(0.0))], "curve_days"),
        (vec![(5.0, some), (10.0, Some(f64::NAN))], "curve_days"),
    ] {
        let code_of = |error: CurveError| error.code();
        assert_eq!(
            Curve::new(&nodes, 30.0).map_err(code_of),
            Err(code),
            "{nodes:?}"
        );
    }
    assert!(Curve::new(&[(5.0, some), (9.0, some)], f64::NAN).is_err());
}

#[test]
fn the_parts_of_a_day_add_up_and_a_point_belongs_to_the_later() {
    let curve = Curve::new(&[(10.0, Some(20.0)), (20.0, Some(5.0))], 30.0).unwrap();
    let part = |from, to| curve.part_of_day_progress(8.0, 24.0, from, to);
    let whole = curve.day_progress(8.0, 24.0);
    assert!((part(0.0, 9.5) + part(9.5, 24.0) - whole).abs() < 1e-12);
    assert_eq!(part(9.0, 9.5), 0.0);
    assert!(part(9.5, 9.6) > 0.0);
    assert_eq!(part(12.0, 12.0), 0.0);
    assert_eq!(part(18.0, 6.0), 0.0);
}

#[test]
fn a_reading_now_lies_on_the_sine_of_the_mean_it_gives() {
    for hour in [0.0, 6.5, 9.0, 15.0, 21.25] {
        let mean = mean_from_reading_now(17.0, hour, 5.0);
        let found = day_temperature_at(mean - 5.0, mean + 5.0, hour);
        assert!((found - 17.0).abs() < 1e-9, "{hour}");
    }
}

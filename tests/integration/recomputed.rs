//! Against the same sums done again by the plainest means:
//! `golden/make_recomputed.py`, from the published table.

use crate::golden::{assert_near, lines, number, whole};
use plumule_agronomy::{Outlook, TimeFactor, crops, forecast};

const GOLDEN: &str = include_str!("../golden/recomputed.jsonl");

#[test]
fn progress_over_days_and_parts_of_days() {
    for line in lines(GOLDEN, "progress") {
        let curve = &crops().get(line["crop"].as_str().unwrap()).unwrap().curve;
        let [t, min, max, start, end] =
            ["temperature_c", "min_c", "max_c", "start", "end"].map(|key| number(&line, key));
        assert_near(curve.rate_per_day(t), number(&line, "rate"), 1e-12, &line);
        assert_near(
            curve.day_progress(min, max),
            number(&line, "day"),
            1e-12,
            &line,
        );
        let part = curve.part_of_day_progress(min, max, start, end);
        assert_near(part, number(&line, "part"), 1e-12, &line);
    }
}

#[test]
fn forecasts() {
    for line in lines(GOLDEN, "forecast") {
        let curve = &crops().get(line["crop"].as_str().unwrap()).unwrap().curve;
        let increments: Vec<f64> = line["days"]
            .as_array()
            .unwrap()
            .iter()
            .map(|day| curve.day_progress(day[0].as_f64().unwrap(), day[1].as_f64().unwrap()))
            .collect();
        let [a, b, m, tau, sigma] =
            ["a", "b", "mean_ln", "tau", "sigma"].map(|key| number(&line, key));
        let outlook = Outlook::new(a, b).unwrap();
        let time_factor = TimeFactor::new(m, tau).unwrap();
        let found = forecast(
            increments,
            whole(&line, "seeds"),
            outlook,
            time_factor,
            sigma,
        );
        let found = found.unwrap();
        let dates = [found.first, found.d10, found.d50, found.d90];
        let wanted = ["first", "d10", "d50", "d90"].map(|key| line[key].as_u64());
        assert_eq!(dates.map(|date| date.map(u64::from)), wanted, "{line}");
    }
}

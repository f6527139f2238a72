//! Against SciPy: `golden/make_distributions.py` writes the values.

use crate::golden::{assert_near, lines, number, whole};
use plumule_agronomy::{
    Outlook, Storage, Test, TimeFactor, average_emerged_share, crops, emerged_share,
    packet_outlook, probability_any_up,
};

const GOLDEN: &str = include_str!("../golden/distributions.jsonl");

#[test]
fn emerged_share_is_a_lognormal() {
    for line in lines(GOLDEN, "share") {
        let [p, s, sigma] = ["progress", "time_factor", "sigma"].map(|key| number(&line, key));
        let found = emerged_share(p, s, sigma).unwrap();
        assert_near(found, number(&line, "share"), 1e-9, &line);
    }
}

#[test]
fn the_average_share_is_the_integral_over_the_time_factor() {
    for line in lines(GOLDEN, "average_share") {
        let [p, m, tau, sigma] =
            ["progress", "mean_ln", "tau", "sigma"].map(|key| number(&line, key));
        let found = average_emerged_share(p, m, tau, sigma);
        assert_near(found, number(&line, "share"), 1e-9, &line);
    }
}

#[test]
fn a_span_is_a_beta_interval() {
    for line in lines(GOLDEN, "span") {
        let outlook = Outlook::new(number(&line, "a"), number(&line, "b")).unwrap();
        assert_near(outlook.mean(), number(&line, "mean"), 1e-12, &line);
        let (low, high) = outlook.span(number(&line, "level")).unwrap();
        assert_near(low, number(&line, "low"), 1e-8, &line);
        assert_near(high, number(&line, "high"), 1e-8, &line);
    }
}

#[test]
fn the_chance_that_any_is_up_is_the_integral_over_share_and_time_factor() {
    for line in lines(GOLDEN, "any_up") {
        let [p, a, b, m, tau, sigma] =
            ["progress", "a", "b", "mean_ln", "tau", "sigma"].map(|key| number(&line, key));
        let outlook = Outlook::new(a, b).unwrap();
        let time_factor = TimeFactor::new(m, tau).unwrap();
        let found = probability_any_up(p, whole(&line, "seeds"), outlook, time_factor, sigma);
        assert_near(found.unwrap(), number(&line, "any_up"), 1e-6, &line);
    }
}

#[test]
fn a_packet_ages_on_the_probit_scale() {
    for line in lines(GOLDEN, "packet") {
        let storage: Storage = serde_json::from_value(line["storage"].clone()).unwrap();
        let tests: Vec<Test> = line["tests"]
            .as_array()
            .unwrap()
            .iter()
            .map(|test| Test {
                germinated: test[0].as_u64().unwrap() as u32,
                of: test[1].as_u64().unwrap() as u32,
                age_years: test[2].as_f64().unwrap(),
            })
            .collect();
        let crop = crops().get(line["crop"].as_str().unwrap()).unwrap();
        let stated = line["stated"].as_f64();
        let found = packet_outlook(crop, number(&line, "age"), stated, storage, &tests).unwrap();
        assert_near(
            found.germination,
            number(&line, "germination"),
            1e-10,
            &line,
        );
        // Seed long dead leaves less than the least parameter an outlook can have.
        assert_near(found.outlook.a, number(&line, "a"), 2e-9, &line);
        assert_near(found.outlook.b, number(&line, "b"), 2e-9, &line);
    }
}

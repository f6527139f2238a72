//! The crop book against what stands outside it, and against its own rules.

#![cfg(test)]

use plumule_agronomy::{
    Basis, Caution, Crop, CropGroup, Outlook, TAU_KIND, TimeFactor, Treatment, crops, forecast,
};
use std::collections::BTreeMap;

fn crop(key: &str) -> &'static Crop {
    crops().get(key).unwrap()
}

fn days(crop: &Crop, temperature: f64) -> f64 {
    1.0 / crop.curve.rate_per_day(temperature)
}

#[test]
fn there_are_at_least_60_crops_of_every_group() {
    assert!(crops().iter().count() >= 60);
    for (group, least) in [
        (CropGroup::Vegetable, 40),
        (CropGroup::Herb, 10),
        (CropGroup::AnnualFlower, 20),
        (CropGroup::PerennialFlower, 10),
    ] {
        let found = crops().iter().filter(|crop| crop.group == group).count();
        assert!(found >= least, "{group:?}: {found}");
    }
}

#[test]
fn every_figure_has_a_source_and_a_basis() {
    let sources: Vec<&str> = crops().sources().map(|(key, _)| key).collect();
    for crop in crops().iter() {
        let mut figures = vec![
            "species",
            "recommended_c",
            "maximum_c",
            "life_years",
            "seed_length_mm",
            "seed_thickness_mm",
            "depth_mm",
            "light",
            "compost",
            "growing_on_c",
            "hardiness",
        ];
        match crop.built {
            Some(_) => figures.extend(["base_c", "optimum_c", "days_at_optimum"]),
            None => figures.push("curve"),
        }
        for (there, figure) in [
            (crop.legal_minimum.is_some(), "legal_minimum"),
            (crop.test_days.is_some(), "test_days"),
            (crop.alternating_c.is_some(), "alternating_c"),
            (!crop.before_sowing.is_empty(), "before_sowing"),
            (crop.seedlings_per_seed > 1.0, "seedlings_per_seed"),
            (crop.sigma != plumule_agronomy::SIGMA, "sigma"),
            (crop.weeks_to_raise.is_some(), "weeks_to_raise"),
            (crop.set_out_weeks.is_some(), "set_out_weeks"),
            (crop.maturity.is_some(), "maturity"),
            (crop.ripens_after_equinox, "ripens_after_equinox"),
            (crop.caution.is_some(), "caution"),
        ] {
            if there {
                figures.push(figure);
            }
        }
        figures.sort_unstable();
        assert!(
            crop.provenance.keys().copied().eq(figures),
            "{}: {:?}",
            crop.key,
            crop.provenance.keys()
        );
        for (figure, from) in &crop.provenance {
            let known = sources.contains(&from.source.as_str());
            assert!(known, "{} {figure}", crop.key);
            // What the book itself judges was not read anywhere, and a
            // regulation is not recalled.
            let own = from.source == "house";
            let judged = matches!(from.basis, Basis::Judgement | Basis::CommonPractice);
            assert!(!own || judged, "{} {figure}", crop.key);
            assert!(
                from.source != "cfr_201_31" || from.basis == Basis::Read,
                "{} {figure}",
                crop.key
            );
        }
    }
}

#[test]
fn every_crop_can_be_forecast_in_the_middle_of_its_range() {
    let outlook = Outlook::new(9.0, 3.0).unwrap();
    let time_factor = TimeFactor::new(0.0, TAU_KIND).unwrap();
    for crop in crops().iter() {
        let middle = crop.recommended_c.0.midpoint(crop.recommended_c.1);
        let gained = crop.curve.day_progress(middle, middle);
        let found = forecast([gained], 20, outlook, time_factor, crop.sigma).unwrap();
        let [Some(first), Some(d10), Some(d50), Some(d90)] =
            [found.first, found.d10, found.d50, found.d90]
        else {
            panic!("{}: {found:?}", crop.key);
        };
        assert!(
            first <= d50 && d10 <= d50 && d50 <= d90 && d90 < 80,
            "{}",
            crop.key
        );
    }
}

#[test]
fn some_come_up_at_both_ends_of_the_recommended_range() {
    for crop in crops().iter() {
        let (low, high) = crop.recommended_c;
        assert!(low < high && high <= crop.maximum_c, "{}", crop.key);
        for end in [low, high] {
            assert!(crop.curve.rate_per_day(end) > 0.0, "{} {end}", crop.key);
        }
        // The warmth advised is not far from the fastest.
        let best = (0..=45).map(|c| crop.curve.rate_per_day(f64::from(c)));
        let best = best.fold(0.0, f64::max);
        let middle = crop.curve.rate_per_day(low.midpoint(high));
        assert!(middle >= best / 2.5, "{}: {middle} of {best}", crop.key);
    }
}

#[test]
fn depths_rise() {
    for crop in crops().iter() {
        assert!(crop.depth_mm.0 <= crop.depth_mm.1, "{}", crop.key);
    }
}

#[test]
fn a_built_curve_has_its_usual_days_at_the_optimum_and_runs_straight() {
    let mut found = 0;
    for crop in crops().iter() {
        let Some(built) = crop.built else { continue };
        found += 1;
        let near = |a: f64, b: f64| assert!((a - b).abs() < 1e-9, "{}: {a} {b}", crop.key);
        let rate = |temperature| crop.curve.rate_per_day(temperature);
        let (cool, warm) = built.optimum_c;
        for fastest in [cool, cool.midpoint(warm), warm] {
            near(days(crop, fastest), built.days_at_optimum);
        }
        near(rate(built.base_c), 0.0);
        near(rate(built.base_c - 5.0), 0.0);
        near(rate(crop.maximum_c), 0.0);
        let half = 0.5 / built.days_at_optimum;
        near(rate(built.base_c.midpoint(cool)), half);
        near(rate(warm.midpoint(crop.maximum_c)), half);
    }
    assert!(found >= 36);
}

/// Iowa State University Extension, Germination Requirements for Annuals and
/// Vegetables, 2023: °F and days to germination, typed apart from the book.
#[test]
fn flowers_come_up_in_iowas_days_at_iowas_temperatures() {
    for (key, low_f, high_f, least, most) in [
        ("ageratum", 70.0, 75.0, 7.0, 10.0),
        ("snapdragon", 70.0, 70.0, 7.0, 14.0),
        ("begonia", 70.0, 75.0, 14.0, 14.0),
        ("china_aster", 70.0, 70.0, 7.0, 10.0),
        ("vinca", 70.0, 75.0, 14.0, 14.0),
        ("celosia", 70.0, 75.0, 7.0, 10.0),
        ("cornflower", 65.0, 70.0, 7.0, 14.0),
        ("cosmos", 70.0, 70.0, 5.0, 7.0),
        ("lisianthus", 75.0, 75.0, 10.0, 14.0),
        ("gomphrena", 70.0, 70.0, 14.0, 14.0),
        ("sunflower", 70.0, 70.0, 5.0, 7.0),
        ("strawflower", 70.0, 75.0, 7.0, 10.0),
        ("impatiens", 70.0, 75.0, 10.0, 14.0),
        ("statice", 70.0, 70.0, 7.0, 10.0),
        ("nicotiana", 70.0, 75.0, 10.0, 14.0),
        ("pelargonium", 70.0, 75.0, 7.0, 21.0),
        ("petunia", 75.0, 75.0, 7.0, 10.0),
        ("portulaca", 75.0, 75.0, 7.0, 10.0),
        ("rudbeckia", 70.0, 70.0, 7.0, 14.0),
        ("salvia_scarlet", 70.0, 75.0, 10.0, 14.0),
        ("coleus", 70.0, 75.0, 10.0, 14.0),
        ("nasturtium", 65.0, 70.0, 10.0, 14.0),
        ("zinnia", 70.0, 70.0, 5.0, 7.0),
    ] {
        let middle_c = (f64::midpoint(low_f, high_f) - 32.0) / 1.8;
        let found = days(crop(key), middle_c);
        // A day is the least that a published span of one figure can mean.
        let span = least - 0.5..=most + 0.5;
        assert!(span.contains(&found), "{key}: {found}");
    }
}

/// Heat sums to 50 % emergence, °C·d above a base: Bierhuizen and Wagenvoort
/// 1974, from memory, for 5 to 17 °C; typed apart from the book.
#[test]
fn days_in_the_cool_are_the_heat_sums() {
    for (key, base, sum) in [
        ("broad_bean", 0.4, 148.0),
        ("brussels_sprouts", 1.1, 108.0),
        ("chicory", 5.3, 85.0),
        ("corn_salad", 0.0, 161.0),
        ("endive", 2.2, 93.0),
        ("kale", 1.2, 103.0),
        ("leek", 1.7, 222.0),
    ] {
        for temperature in [10.0, 13.0, 15.0] {
            let expected = sum / (temperature - base);
            let found = days(crop(key), temperature);
            assert!(
                (found / expected - 1.0).abs() < 0.02,
                "{key}: {found} {expected}"
            );
        }
    }
}

const LEGAL_MINIMA: &str = include_str!("../../../tests/golden/legal_minima.csv");

#[test]
fn legal_minima_are_the_regulations_and_none_is_missing() {
    let regulation: BTreeMap<&str, f64> = LEGAL_MINIMA
        .lines()
        .filter(|line| !line.starts_with('#'))
        .skip(1)
        .map(|line| {
            let (key, percent) = line.split_once(',').unwrap();
            (key, percent.parse().unwrap())
        })
        .collect();
    assert_eq!(regulation.len(), 68);
    let mut found = 0;
    for crop in crops().iter() {
        // To the regulation a chilli is a pepper.
        let key = if crop.key == "chilli" {
            "pepper"
        } else {
            &crop.key
        };
        let expected = regulation.get(key).map(|percent| percent / 100.0);
        assert_eq!(crop.legal_minimum, expected, "{}", crop.key);
        found += usize::from(expected.is_some());
    }
    assert!(found >= 50, "{found}");
}

/// Common practice, no source.
#[test]
fn plants_known_to_do_harm_have_a_caution() {
    for (key, caution) in [
        ("foxglove", Caution::PoisonousPlant),
        ("delphinium", Caution::PoisonousPlant),
        ("larkspur", Caution::PoisonousPlant),
        ("nicotiana", Caution::PoisonousPlant),
        ("vinca", Caution::PoisonousPlant),
        ("sweet_pea", Caution::PoisonousSeeds),
        ("lupin", Caution::PoisonousSeeds),
        ("morning_glory", Caution::PoisonousSeeds),
        ("bean_runner", Caution::PoisonousRawSeeds),
        ("rhubarb", Caution::PoisonousLeafBlades),
        ("tomato_husk", Caution::PoisonousLeaves),
        ("aquilegia", Caution::HarmfulIfEaten),
        ("lobelia", Caution::HarmfulIfEaten),
        ("celeriac", Caution::SapBurnsInSun),
        ("primrose", Caution::IrritatesSkin),
        ("chilli", Caution::BurnsEyes),
        ("broad_bean", Caution::Favism),
    ] {
        assert_eq!(crop(key).caution, Some(caution), "{key}");
    }
}

/// Common practice, no source.
#[test]
fn hard_coats_are_opened_and_sleepers_are_chilled() {
    for key in ["sweet_pea", "lupin", "morning_glory"] {
        let before = &crop(key).before_sowing;
        assert!(before.contains(&Treatment::Chip), "{key}");
        let soaked = |it: &Treatment| matches!(it, Treatment::SoakHours(_));
        assert!(before.iter().any(soaked), "{key}");
    }
    for key in ["lavender", "aquilegia", "primrose", "eryngium", "larkspur"] {
        let chilled = |it: &Treatment| matches!(it, Treatment::ColdWeeks(_));
        assert!(crop(key).before_sowing.iter().any(chilled), "{key}");
    }
}

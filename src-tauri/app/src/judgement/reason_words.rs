//! Why a sowing did badly, in words.

use super::kept::causes_of;
use super::verdict::Case;
use crate::say::{Arg, Say};
use crate::view::ReasonView;
use crate::words::{self, key, word};
use plumule_agronomy::{CAUSES_SHOWN, Cause, CauseKind, Compost, Fact};
use plumule_journal::subject::Plants;

/// The likeliest causes, at most two; none for a sowing that did well.
pub(crate) fn reasons(case: &Case<'_>) -> Vec<ReasonView> {
    let causes = causes_of(case);
    let shown = causes.iter().take(CAUSES_SHOWN);
    shown.map(|cause| reason(case, cause)).collect()
}

fn reason(case: &Case<'_>, cause: &Cause) -> ReasonView {
    let name = cause.kind.key();
    let seedlings = cause.seedlings.round().max(1.0);
    ReasonView {
        say: Say::new("reason")
            .with("likely", Arg::Number(f64::from(u8::from(cause.likely))))
            .with("cause", word("reason-cause", name))
            .with("seedlings", Arg::Number(seedlings)),
        facts: facts(case, cause),
        remedy: with_figures(case, Say::new(key("remedy", name))),
        seedlings,
        likely: cause.likely,
    }
}

/// The crop's figures, for facts and remedies.
fn with_figures(case: &Case<'_>, say: Say) -> Say {
    let crop = case.growth.crop;
    let (name, variety) = case
        .picture
        .crop_of(Plants::Sowing(case.sowing.sown.sowing))
        .unwrap_or(("?", ""));
    say.with("crop", words::crop(name))
        .with("variety", words::variety(variety))
        .with("from", Arg::Celsius(crop.recommended_c.0.round()))
        .with("to", Arg::Celsius(crop.recommended_c.1.round()))
        .with("least", Arg::Millimetres(crop.depth_mm.0))
        .with("most", Arg::Millimetres(crop.depth_mm.1))
}

fn facts(case: &Case<'_>, cause: &Cause) -> Vec<Say> {
    let number = |number: u32| Arg::Number(f64::from(number));
    let tenths = |share: f64| Arg::Number((share * 10.0).round());
    let say = |key: &str| with_figures(case, Say::new(key));
    match cause.fact {
        Fact::Days { days, mean_c } => vec![
            say("reason-fact-days")
                .with("days", number(days))
                .with("temperature", Arg::Celsius(mean_c.round())),
        ],
        Fact::Germination { packed, now } => {
            let packet = case.picture.packets.get(&case.sowing.packet());
            let year = packet.and_then(|packet| {
                let described = &packet.described;
                described.packed_year.or(described.harvested_year)
            });
            let fact = match year {
                Some(year) => {
                    say("reason-fact-germination-year").with("year", Arg::Text(year.to_string()))
                }
                None => say("reason-fact-germination"),
            };
            vec![fact.with("packed", tenths(packed)).with("now", tenths(now))]
        }
        Fact::Depth { sown_mm, right_mm } => {
            let fact = match cause.kind {
                CauseKind::TooShallow => "reason-fact-depth-least",
                _ => "reason-fact-depth-most",
            };
            vec![
                say(fact)
                    .with("depth", Arg::Millimetres(sown_mm))
                    .with("right", Arg::Millimetres(right_mm)),
            ]
        }
        Fact::Dry {
            felt,
            longest_gap_days,
        } => {
            let dry = (felt > 0).then(|| say("reason-fact-dry").with("felt", number(felt)));
            let gap = longest_gap_days
                .map(|days| say("reason-fact-gap").with("days", Arg::Number(days.round())));
            dry.into_iter().chain(gap).collect()
        }
        Fact::Wet { felt, mean_c } => vec![
            say("reason-fact-wet")
                .with("felt", number(felt))
                .with("temperature", Arg::Celsius(mean_c.round())),
        ],
        Fact::SownIn(compost) => {
            let compost = match compost {
                Compost::GardenSoil => "garden_soil",
                Compost::Coarse => "coarse",
            };
            vec![say("reason-fact-sown-in").with("compost", word("compost", compost))]
        }
        Fact::Can(times) => vec![say("reason-fact-can").with("times", number(times))],
        Fact::Saw(seen) => vec![match seen {
            Some(seen) => say("reason-fact-saw").with("number", number(seen)),
            None => say("reason-fact-saw-it"),
        }],
        Fact::Light(_) => vec![say("reason-fact-light")],
        Fact::HeatDays(days) => vec![say("reason-fact-heat").with("days", number(days))],
    }
}

//! What can be done about a sowing, and what each would give.

use super::verdict::{Case, Could, Judged, living, wanted};
use super::verdict_words::{odds, seeds_beside};
use crate::say::{Arg, Say};
use crate::view::{Choice, ChoiceKind, Find, VerdictKind};
use crate::words;
use chrono::NaiveDate;
use plumule_agronomy::{Beside, Posterior};
use plumule_journal::state::{PacketState, PlaceState};

/// What can be done, the advised first.
pub(super) fn of(
    case: &Case<'_>,
    judged: &Judged<'_>,
    could: &Could<'_>,
    kind: VerdictKind,
    until: NaiveDate,
) -> Vec<Choice> {
    let told = could.beside.and(judged.posterior.as_ref());
    let today = case.now.date();
    let moved = judged.remedy.and(could.place).map(|(place, p_reach)| {
        let gives = with_numbers(case, "gives-move", told).with("there", odds(p_reach));
        move_to(place).giving(told.map(|_| gives))
    });
    let wait = (until > today).then(|| {
        let gives = told.map(|_| with_numbers(case, "gives-wait", told));
        wait(until).giving(gives)
    });
    let dig =
        (judged.left > judged.dug && kind != VerdictKind::RecordWrong).then(|| dig(judged, could));
    let [sow, better] = sow(case, judged, could, told);
    let give_up = (case.growth.up == 0).then(|| give_up(case));
    let enough = (case.growth.up > 0).then(|| {
        let up = Arg::Number(f64::from(living(case.sowing)));
        Choice::new(ChoiceKind::Enough, Say::new("choice-enough").with("up", up))
            .giving(Some(Say::new("gives-enough")))
    });
    let order = match kind {
        VerdictKind::Warm | VerdictKind::Cool => [moved, wait, dig, sow, better, give_up, enough],
        VerdictKind::NothingMore => [dig, sow, better, give_up, enough, wait, moved],
        VerdictKind::SowBeside => [sow, better, dig, moved, wait, give_up, enough],
        VerdictKind::Wait | VerdictKind::Look | VerdictKind::Pinch | VerdictKind::RecordWrong => {
            [wait, moved, dig, sow, better, give_up, enough]
        }
    };
    order.into_iter().flatten().collect()
}

/// Where it is so cold or hot that none will come.
pub(super) fn too_early(case: &Case<'_>, until: NaiveDate) -> Vec<Choice> {
    let moved = case.suits().map(|(place, per_day)| {
        let half = (1.0 / per_day).ceil();
        let gives = Say::new("gives-move-to").with("days", Arg::Number(half));
        move_to(place).giving(Some(gives))
    });
    let sow = Choice::new(ChoiceKind::Sow, Say::new("choice-sow-again"));
    let give_up = (case.growth.up == 0).then(|| give_up(case));
    let all = [moved, Some(wait(until)), Some(sow), give_up];
    all.into_iter().flatten().collect()
}

fn move_to(place: &PlaceState) -> Choice {
    Choice {
        place: Some(place.described.place.to_string()),
        ..Choice::new(
            ChoiceKind::Move,
            Say::new("choice-move-to").with("place", Arg::Text(place.described.name.clone())),
        )
    }
}

fn wait(until: NaiveDate) -> Choice {
    Choice {
        until: Some(until),
        ..Choice::new(
            ChoiceKind::Wait,
            Say::new("choice-wait").with("until", Arg::Day(until)),
        )
    }
}

/// The seed is written off; its cells and the compost are free.
fn give_up(case: &Case<'_>) -> Choice {
    let cells = case.sowing.sown.cells.len();
    let gives = Say::new("gives-give-up").with("cells", Arg::Number(cells as f64));
    Choice::new(ChoiceKind::GiveUp, Say::new("choice-give-up")).giving(Some(gives))
}

fn dig(judged: &Judged<'_>, could: &Could<'_>) -> Choice {
    let number = |number: u32| Arg::Number(f64::from(number));
    let more = judged.left.saturating_sub(judged.dug).min(2);
    let finds = could.finds.iter().map(|(firm, soft, then)| Find {
        firm: *firm,
        soft: *soft,
        say: Say::new("find")
            .with("firm", number(*firm))
            .with("soft", number(*soft)),
        gives: Say::new("find-gives")
            .with("any", odds(then.p_any_more()))
            .with("reach", odds(then.p_reach())),
    });
    let gives = match (could.finds.first(), could.finds.last()) {
        (Some((_, _, firm)), Some((_, _, soft))) => Some(
            Say::new("gives-dig-up")
                .with("number", number(more))
                .with("firm", odds(firm.p_any_more()))
                .with("soft", odds(soft.p_any_more())),
        ),
        _ => None,
    };
    Choice {
        finds: finds.collect(),
        ..Choice::new(
            ChoiceKind::DigUp,
            Say::new("choice-dig-up").with("number", number(more)),
        )
    }
    .giving(gives)
}

/// More of this packet, and of a better one. None once the last useful day has
/// gone by.
fn sow(
    case: &Case<'_>,
    judged: &Judged<'_>,
    could: &Could<'_>,
    told: Option<&Posterior>,
) -> [Option<Choice>; 2] {
    let today = case.now.date();
    if judged.last_sowing.is_some_and(|last| last < today) {
        return [None, None];
    }
    let missing = wanted(case.sowing, case.growth).saturating_sub(living(case.sowing));
    let plants = could.beside.map(|_| missing.max(1));
    let gives = |key: &str| {
        let say = with_numbers(case, key, told);
        match judged.last_sowing {
            Some(last) => say
                .with("last", Arg::Day(last))
                .with("season", Arg::Number(1.0)),
            None => say
                .with("last", Arg::Day(today))
                .with("season", Arg::Number(0.0)),
        }
    };
    let own = match could.beside {
        Some(Beside::Seeds(seeds)) => Some(
            Choice::new(
                ChoiceKind::Sow,
                Say::new("choice-sow-beside").with("seeds", Arg::Number(f64::from(seeds))),
            )
            .giving(Some(gives("gives-sow"))),
        ),
        Some(Beside::BetterSeed) if could.better.is_some() => None,
        Some(Beside::BetterSeed) => Some(Choice::new(
            ChoiceKind::SowOther,
            Say::new("choice-sow-other"),
        )),
        Some(Beside::NotNeeded) | None => {
            Some(Choice::new(ChoiceKind::Sow, Say::new("choice-sow-again")))
        }
    };
    let own = own.map(|choice| Choice {
        seeds: seeds_beside(could),
        wanted: plants,
        ..choice
    });
    let better = could.better.map(|(packet, seeds)| {
        let choice = Choice::new(
            ChoiceKind::SowOther,
            named(Say::new("choice-sow-better"), packet)
                .with("seeds", Arg::Number(f64::from(seeds))),
        );
        Choice {
            seeds: Some(seeds),
            wanted: plants,
            packet: Some(packet.described.packet.to_string()),
            ..choice.giving(Some(gives("gives-sow-better")))
        }
    });
    [own, better]
}

fn named(say: Say, packet: &PacketState) -> Say {
    let described = &packet.described;
    let year = described.packed_year.or(described.harvested_year);
    say.with("crop", words::crop(&described.crop))
        .with("variety", words::variety(&described.variety))
        .with(
            "year",
            Arg::Text(year.map_or_else(String::new, |year| format!(" {year}"))),
        )
}

/// Of the plants wanted: how many, and the odds of them where it stands.
fn with_numbers(case: &Case<'_>, key: &str, told: Option<&Posterior>) -> Say {
    let (p_reach, expected) = told.map_or((0.0, 0.0), |it| (it.p_reach(), it.expected_final()));
    Say::new(key)
        .with(
            "wanted",
            Arg::Number(f64::from(wanted(case.sowing, case.growth))),
        )
        .with("reach", odds(p_reach))
        .with("expected", Arg::Number(expected.round()))
}

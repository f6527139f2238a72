//! It is late: past the day by which nine in ten should be up, and fewer are
//! than were wanted (else, than the odds of one in ten allow); or so cold or hot
//! that none will come. Where the verdict is to wait, it is silent until the day
//! on which the next is expected.

use super::{Job, Plan};
use crate::growth::Growth;
use crate::judgement::{Finding, living, too_early_view};
use crate::rounds;
use crate::say::{Arg, Say};

use crate::view::JobKind;
use chrono::{Days, NaiveDate};
use plumule_journal::state::SowingState;
use plumule_journal::subject::{Plants, Subject};

/// Days of silence after a count or a look in the compost (judgement).
const AGAIN_DAYS: u64 = 3;

/// Days after sowing at which to say that none will come up at these
/// temperatures (judgement: after the first readings).
const HOPELESS_AFTER_DAYS: u64 = 3;

pub(super) fn job(plan: &Plan<'_>, sowing: &SowingState) -> Option<Job> {
    let id = sowing.sown.sowing;
    let growth = plan.growth(id)?;
    if growth.cold_weeks || !sowing.plants.went_on.is_empty() {
        return None;
    }
    let (late, why) = if growth.due.d50.is_none() {
        (
            growth.sown + Days::new(HOPELESS_AFTER_DAYS),
            hopeless(growth)?,
        )
    } else {
        let late = growth.due.d90?.succ_opt()?;
        if enough(sowing, growth) {
            return None;
        }
        (late, behind(growth, late, plan.now.date()))
    };
    // Sown again since it was late, that is answered.
    if plan.sown_again(id).is_some_and(|day| day >= late) {
        return None;
    }
    let counted = sowing.counts.last().map(|count| &count.at);
    let dug = sowing.dug.last().map(|dug| &dug.at);
    let last = counted
        .into_iter()
        .chain(dug)
        .max_by_key(|mark| mark.at.instant());
    let case = plan.case(sowing, growth);
    let today = plan.now.date();
    let finding = (late <= today).then(|| Finding::of(&case)).flatten();
    let silence = |days| last.map_or(late, |mark| mark.at.local.date() + Days::new(days));
    let day = match &finding {
        Some(finding) if let Some(until) = finding.wait_until() => late.max(until),
        // Something is to be done: with the count that says so.
        Some(finding) if finding.odds().is_some() => late.max(silence(0)),
        _ => late.max(silence(AGAIN_DAYS)),
    };
    // Of what is not due yet nobody asks what can be done.
    let verdict = (day <= today).then(|| match finding {
        None if growth.due.d50.is_none() => Some(too_early_view(&case)),
        finding => finding.map(|finding| finding.view(&case)),
    });
    let low_high = growth.expected();
    let why = plan
        .named(why, Plants::Sowing(id))
        .with("up", Arg::Number(f64::from(growth.up)))
        .with("low", Arg::Number(low_high[0]))
        .with("spread", Arg::Number(low_high[1] - low_high[0]))
        .with("high", Arg::Number(low_high[1]));
    let mut job = Job::new(
        JobKind::ItIsLate,
        Subject::Sowing(id),
        last.unwrap_or(&sowing.opened_by).entry,
        rounds::morning(plan.picture, day),
    )
    .because(why);
    job.suggested = Some(sowing.plants.numbers.there);
    job.verdict = verdict.flatten();
    Some(job)
}

/// As many as are wanted are there; where nobody said, as the odds allow.
fn enough(sowing: &SowingState, growth: &Growth) -> bool {
    match sowing.sown.wanted {
        Some(wanted) => living(sowing) >= wanted,
        None => !growth.fewer_than_expected(),
    }
}

fn behind(growth: &Growth, late: NaiveDate, today: NaiveDate) -> Say {
    let most = late.pred_opt().unwrap_or(late);
    let mean_c = growth.course.mean_c;
    Say::new("why-late")
        .with("most", Arg::Day(most))
        .with("days", Arg::Number((today - most).num_days().max(0) as f64))
        .with("way", growth.way())
        .with(
            "temperature",
            Arg::Celsius(mean_c.unwrap_or(growth.course.mean_to_come_c).round()),
        )
}

/// At the temperatures to come it takes more than a year.
fn hopeless(growth: &Growth) -> Option<Say> {
    if growth.up > 0 {
        return None;
    }
    let (low, high) = growth.crop.recommended_c;
    let mean_c = growth.course.mean_to_come_c;
    let key = if mean_c < low.midpoint(high) {
        "why-late-too-cold"
    } else {
        "why-late-too-hot"
    };
    Some(
        Say::new(key)
            .with("temperature", Arg::Celsius(mean_c.round()))
            .with("from", Arg::Celsius(low.round()))
            .with("to", Arg::Celsius(high.round())),
    )
}

//! A verdict in words, with what can be done about it.

use super::choices;
use super::verdict::{Case, Could, Judged, living, wanted};
use crate::say::{Arg, Say};
use crate::view::{VerdictKind, VerdictView};
use crate::words;
use chrono::{Days, NaiveDate};
use plumule_agronomy::{Beside, NoVerdict, Posterior, Remedy, Verdict};
use plumule_journal::subject::Plants;

/// Days to wait where nothing tells for how long (judgement).
const WAIT_DAYS: u64 = 3;

/// A verdict as it stands, before it is put into words.
pub(crate) struct Finding<'a> {
    judged: Judged<'a>,
    kind: VerdictKind,
    until: NaiveDate,
}

impl<'a> Finding<'a> {
    /// The verdict on a sowing; none while there is nothing to say of it.
    pub(crate) fn of(case: &Case<'a>) -> Option<Self> {
        let judged = case.judge()?;
        let kind = match judged.verdict {
            Verdict::None(NoVerdict::Reached | NoVerdict::ColdWeeks) => return None,
            Verdict::None(NoVerdict::TooEarly) => VerdictKind::Look,
            Verdict::None(NoVerdict::Pinch) => VerdictKind::Pinch,
            Verdict::None(NoVerdict::RecordWrong) => VerdictKind::RecordWrong,
            Verdict::Wait { .. } => VerdictKind::Wait,
            Verdict::Move {
                remedy: Remedy::Warm,
                ..
            } => VerdictKind::Warm,
            Verdict::Move {
                remedy: Remedy::Cool,
                ..
            } => VerdictKind::Cool,
            Verdict::NothingMore => VerdictKind::NothingMore,
            Verdict::SowBeside(_) => VerdictKind::SowBeside,
        };
        // Waiting is until the next is expected; else, where the odds do not tell
        // or something else is advised, for a few days.
        let next = match kind {
            VerdictKind::Wait => case.next(&judged),
            _ => None,
        };
        Some(Self {
            kind,
            until: next.unwrap_or_else(|| some_days_on(case.now.date())),
            judged,
        })
    }

    /// Waiting is advised: silence until then.
    pub(crate) fn wait_until(&self) -> Option<NaiveDate> {
        (self.kind == VerdictKind::Wait).then_some(self.until)
    }

    /// The posterior, where its odds are told.
    pub(crate) fn odds(&self) -> Option<&Posterior> {
        let told = !matches!(
            self.kind,
            VerdictKind::Look | VerdictKind::Pinch | VerdictKind::RecordWrong
        );
        self.judged.posterior.as_ref().filter(|_| told)
    }

    /// In words, with what can be done about it.
    pub(crate) fn view(&self, case: &Case<'a>) -> VerdictView {
        let (could, posterior) = (case.could(&self.judged), self.odds());
        VerdictView {
            kind: self.kind,
            say: say(case, &self.judged, &could, self.kind, self.until),
            p_any_more: posterior.map(Posterior::p_any_more),
            expected: posterior.map(Posterior::expected_final),
            p_reach: posterior.map(Posterior::p_reach),
            until: self.wait_until(),
            choices: choices::of(case, &self.judged, &could, self.kind, self.until),
        }
    }
}

/// The verdict on a sowing, in words.
pub(crate) fn verdict_view(case: &Case<'_>) -> Option<VerdictView> {
    Some(Finding::of(case)?.view(case))
}

/// Where it is so cold or hot that none will come, there are no odds yet, but a
/// place that suits may be named.
pub(crate) fn too_early_view(case: &Case<'_>) -> VerdictView {
    let growth = case.growth;
    let (low, high) = growth.crop.recommended_c;
    let cold = growth.course.mean_to_come_c < low.midpoint(high);
    let today = case.now.date();
    let until = some_days_on(today);
    let choices = choices::too_early(case, until);
    VerdictView {
        kind: if cold {
            VerdictKind::Warm
        } else {
            VerdictKind::Cool
        },
        say: Say::new("verdict-too-early"),
        p_any_more: None,
        expected: None,
        p_reach: None,
        until: None,
        choices,
    }
}

fn some_days_on(today: NaiveDate) -> NaiveDate {
    today
        .checked_add_days(Days::new(WAIT_DAYS))
        .unwrap_or(today)
}

/// Odds in words, never certain.
pub(crate) fn odds(p: f64) -> Arg {
    let key = if p < 0.05 {
        "odds-under".to_owned()
    } else if p > 0.95 {
        "odds-over".to_owned()
    } else {
        format!("odds-{}", (p * 10.0).round().clamp(1.0, 9.0))
    };
    Arg::Word(key)
}

fn say(
    case: &Case<'_>,
    judged: &Judged<'_>,
    could: &Could<'_>,
    kind: VerdictKind,
    until: NaiveDate,
) -> Say {
    let growth = case.growth;
    let today = case.now.date();
    let number = |number: u32| Arg::Number(f64::from(number));
    let key = match kind {
        VerdictKind::Look => "verdict-look",
        VerdictKind::Pinch => "verdict-pinch",
        VerdictKind::RecordWrong => "verdict-record-wrong",
        VerdictKind::Wait if until <= today => "verdict-wait-look",
        VerdictKind::Wait => "verdict-wait",
        VerdictKind::Warm => "verdict-warm",
        VerdictKind::Cool => "verdict-cool",
        VerdictKind::NothingMore => "verdict-nothing-more",
        VerdictKind::SowBeside => "verdict-sow-beside",
    };
    let (low, high) = growth.crop.recommended_c;
    let (p_any_more, p_reach, expected) = judged.posterior.as_ref().map_or((0.0, 0.0, 0.0), |it| {
        (it.p_any_more(), it.p_reach(), it.expected_final())
    });
    let there = match judged.verdict {
        Verdict::Move { p_reach, .. } => p_reach,
        _ => 0.0,
    };
    // 0: not known, or still time; 1: too late.
    let over = judged.last_sowing.is_some_and(|last| last < today);
    let (crop, variety) = case
        .picture
        .crop_of(Plants::Sowing(case.sowing.sown.sowing))
        .unwrap_or(("?", ""));
    let usual = growth.due.d90.unwrap_or(today);
    Say::new(key)
        .with("crop", words::crop(crop))
        .with("variety", words::variety(variety))
        .with("up", number(living(case.sowing)))
        .with("wanted", number(wanted(case.sowing, growth)))
        .with("progress", Arg::Share(growth.reached))
        .with("any", odds(p_any_more))
        .with("reach", odds(p_reach))
        .with("there", odds(there))
        .with("expected", Arg::Number(expected.round()))
        .with("until", Arg::Day(until))
        .with(
            "temperature",
            Arg::Celsius(growth.course.mean_to_come_c.round()),
        )
        .with("from", Arg::Celsius(low.round()))
        .with("to", Arg::Celsius(high.round()))
        .with("usual", Arg::Day(usual))
        .with("dug", number(judged.dug))
        .with("seeds", number(seeds_beside(could).unwrap_or(0)))
        .with("over", number(u32::from(over)))
        .with("last", Arg::Day(judged.last_sowing.unwrap_or(today)))
        .with("place", number(u32::from(could.place.is_some())))
}

pub(super) fn seeds_beside(could: &Could<'_>) -> Option<u32> {
    match could.beside {
        Some(Beside::Seeds(seeds)) => Some(seeds),
        _ => None,
    }
}

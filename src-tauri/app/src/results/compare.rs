//! Two groups held against each other, in words.

use crate::error::AppError;
use crate::say::{Arg, Say};
use crate::view::Group;
use plumule_agronomy::p_higher;

/// From which probability that one is higher it is said how (judgement).
const SAID: [(f64, &str); 3] = [
    (0.99, "results-almost-surely"),
    (0.95, "results-very-likely"),
    (0.80, "results-perhaps"),
];

/// Which of two is likely to be better, and how surely.
pub(super) fn compare(a: &Group, b: &Group) -> Result<Say, AppError> {
    let p = p_higher((a.up, a.seeds), (b.up, b.seeds));
    let p = p.map_err(|_| AppError::plain("unexpected"))?;
    let (better, worse, p) = if p >= 0.5 { (a, b, p) } else { (b, a, 1.0 - p) };
    let said = SAID.iter().find(|(from, _)| p >= *from);
    let key = said.map_or("results-no-telling", |(_, key)| key);
    let part = |group: &Group, part: &str| {
        let found = group.of.name.args.get(part).cloned();
        found.unwrap_or_else(|| Arg::Text(String::new()))
    };
    Ok(Say::new(key)
        .with("better", part(better, "name"))
        .with("better_variety", part(better, "variety"))
        .with("better_year", part(better, "year"))
        .with("worse", part(worse, "name"))
        .with("worse_variety", part(worse, "variety"))
        .with("worse_year", part(worse, "year"))
        .with("share", Arg::Share(better.share))
        .with("other", Arg::Share(worse.share))
        .with(
            "small",
            Arg::Number(f64::from(u8::from(a.small || b.small))),
        ))
}

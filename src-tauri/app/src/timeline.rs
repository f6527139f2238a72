//! Journal lines in words.

use crate::error::AppError;
use crate::line;
use crate::names::Names;
use crate::say::{Arg, Say};
use crate::view::TimelineLine;
use plumule_journal::subject::Subject;
use plumule_journal::{Journal, Line};

/// The most lines that a page shows.
const LINES: usize = 500;

/// The lines about some things, latest first.
pub(crate) fn of(journal: &Journal, subjects: &[Subject]) -> Result<Vec<TimelineLine>, AppError> {
    let names = Names(journal);
    journal
        .timeline(subjects, LINES)?
        .iter()
        .map(|it| shown(&names, it))
        .collect()
}

fn shown(names: &Names<'_>, it: &Line) -> Result<TimelineLine, AppError> {
    let say = match it.holds.as_ref().or(it.entry.content.as_ref()) {
        Some(content) => line::line(names, content)?,
        None => Say::new("line-unknown").with("kind", Arg::Text(it.entry.kind.clone())),
    };
    Ok(TimelineLine {
        entry: it.entry.id.to_string(),
        act: it.act.to_string(),
        at: it.happened.local,
        say,
        hand: it.entry.hand.clone(),
        withdrawn: it.withdrawn,
        corrected: it.corrected,
        unknown: it.unknown,
    })
}

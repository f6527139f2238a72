//! Journal lines in words.

use crate::App;
use crate::act::known;
use crate::correct::fix;
use crate::error::AppError;
use crate::line;
use crate::names::Names;
use crate::photos;
use crate::say::{Arg, Say};
use crate::view::{TimelineLine, Was};
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

impl App {
    /// The lines about a tray, plants, a packet or a place, latest first.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn history(&self, about: &str) -> Result<Vec<TimelineLine>, AppError> {
        of(&self.journal, &[known(about)?])
    }
}

fn shown(names: &Names<'_>, it: &Line) -> Result<TimelineLine, AppError> {
    let said = it.holds.as_ref().or(it.entry.content.as_ref());
    let say = match said {
        Some(content) => line::line(names, content)?,
        None => Say::new("line-unknown").with("kind", Arg::Text(it.entry.kind.clone())),
    };
    let was = match &it.entry.content {
        Some(content) if it.corrected => Some(Was {
            at: it.entry.happened.local,
            say: line::line(names, content)?,
        }),
        _ => None,
    };
    let changed = it.corrected || it.withdrawn;
    Ok(TimelineLine {
        entry: it.entry.id.to_string(),
        act: it.act.to_string(),
        at: it.happened.local,
        say,
        hand: it.entry.hand.clone(),
        withdrawn: it.withdrawn,
        corrected: it.corrected,
        unknown: it.unknown,
        was,
        amended: it
            .amended
            .as_ref()
            .filter(|_| changed)
            .map(|amended| amended.local),
        fix: said.and_then(fix),
        photo: photos::of_line(names.0, it.entry.id, it.holds.as_ref())?,
    })
}

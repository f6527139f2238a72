//! Not to nag: what is due and still not shown.
//!
//! A job is shown from the time it falls due, or was put off to. The first
//! rounds of the days after count as times it was passed unanswered; days away
//! do not. At two of them it is still shown; then once a week, a few times;
//! then not until asked, which is on the tray's own page.

use crate::jobs::Job;
use crate::picture::Picture;
use crate::rounds;
use chrono::NaiveDateTime;

/// Rounds at which a job is shown and may be ignored.
const IGNORED: usize = 2;

/// After that it comes every so many days …
const EVERY_DAYS: usize = 7;

/// … so many times (judgement).
const WEEKLY_TIMES: usize = 4;

/// Past so many rounds nothing is shown any more.
const NO_MORE: usize = EVERY_DAYS * (WEEKLY_TIMES + 1) + 2;

/// How far ahead the next showing is looked for, days.
const AHEAD_DAYS: usize = 60;

/// Whether a job is due, put off or ignored as it may be: not dismissed, and
/// not another's turn.
pub(crate) fn open(picture: &Picture, job: &Job, at: NaiveDateTime) -> bool {
    job.due <= at
        && job.until.is_none_or(|until| at < until)
        && !picture.garden.dismissed.contains(&job.key)
}

/// Whether a job is to be shown.
pub(crate) fn shown(picture: &Picture, job: &Job, at: NaiveDateTime) -> bool {
    let since = wanted_since(picture, job);
    if !open(picture, job, at) || since > at || picture.away_until(at.date()).is_some() {
        return false;
    }
    let passed = rounds_since(picture, since, at);
    let weeks = passed / EVERY_DAYS;
    passed < IGNORED || (passed.is_multiple_of(EVERY_DAYS) && weeks <= WEEKLY_TIMES)
}

/// The next time after a moment at which a job is shown that is not now.
pub(crate) fn next_shown(
    picture: &Picture,
    job: &Job,
    after: NaiveDateTime,
) -> Option<NaiveDateTime> {
    let since = wanted_since(picture, job);
    let days = after.date().iter_days().take(AHEAD_DAYS);
    let rounds = days.map(|day| rounds::morning(picture, day));
    let mut times: Vec<NaiveDateTime> = rounds.chain([since]).filter(|at| *at > after).collect();
    times.sort_unstable();
    times.into_iter().find(|at| shown(picture, job, *at))
}

/// Since it fell due, or the time it was put off to.
fn wanted_since(picture: &Picture, job: &Job) -> NaiveDateTime {
    let put_off = picture.garden.put_off.iter();
    put_off
        .filter(|put_off| put_off.job == job.key)
        .map(|put_off| put_off.until)
        .fold(job.due, NaiveDateTime::max)
}

/// First rounds of a day, not away, after the one at which it was first there.
fn rounds_since(picture: &Picture, since: NaiveDateTime, at: NaiveDateTime) -> usize {
    let mut first = since.date();
    if since > rounds::morning(picture, first) {
        first = first.succ_opt().unwrap_or(first);
    }
    let rounds = first
        .iter_days()
        .take_while(|day| rounds::morning(picture, *day) <= at)
        .filter(|day| picture.away_until(*day).is_none());
    rounds.take(NO_MORE).count().saturating_sub(1)
}

//! Not to nag: what is due and still not shown.
//!
//! A job is shown from the time it falls due, or was put off to. The first
//! rounds of the days after count as times it was passed unanswered, so that a
//! day with two rounds is one; days away do not. At two of them it is still
//! shown; then once a week, a few times; then not until asked, which is on the
//! tray's own page.

use crate::jobs::{Job, rests_after_away, waits_for_a_look};
use crate::picture::Picture;
use crate::rounds;
use crate::view::JobKind;
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
    let away = picture.away_until(at.date()).is_some();
    if !open(picture, job, at) || since > at || away || waits_for_a_look(picture, job, at) {
        return false;
    }
    let passed = rounds_since(picture, job, since, at);
    let weeks = passed / EVERY_DAYS;
    let weekly = passed.is_multiple_of(EVERY_DAYS) && weeks <= WEEKLY_TIMES;
    passed < IGNORED || weekly || every_day(job)
}

/// What comes up in the dark or over heat is leggy two days later: it is looked
/// for every day, ignored or not, until the last of it is due. That is a week or
/// two, and the job ends by itself.
fn every_day(job: &Job) -> bool {
    job.kind == JobKind::LookForSeedlings && job.today && job.until.is_some()
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
fn rounds_since(picture: &Picture, job: &Job, since: NaiveDateTime, at: NaiveDateTime) -> usize {
    let mut first = since.date();
    if since > rounds::morning(picture, first) {
        first = first.succ_opt().unwrap_or(first);
    }
    let rounds = first
        .iter_days()
        .take_while(|day| rounds::morning(picture, *day) <= at)
        .filter(|day| picture.away_until(*day).is_none() && !rests_after_away(picture, job, *day));
    rounds.take(NO_MORE).count().saturating_sub(1)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::world::{World, at, day};
    use plumule_journal::content::JobKey;
    use plumule_journal::state::PutOff;
    use plumule_journal::words::{Container, PlaceKind};

    /// A tray to feel from 4 March, 8:00, in a season without evening rounds.
    fn world() -> (World, JobKey) {
        let mut world = World::new();
        world.garden().latitude = Some(-40.0);
        let place = world.place(PlaceKind::Windowsill, 18.0, 18.0);
        let tray = world.tray(Container::Cells, place, "2026-03-02 08:00");
        world.sow("tomato", 12, tray, 12, "2026-03-02 08:00");
        let job = world.job(JobKind::FeelTheCompost, "2026-03-02 09:00");
        (world, job.unwrap().key)
    }

    fn days_shown(world: &World) -> Vec<u32> {
        days_of(world, JobKind::FeelTheCompost, "12:00")
    }

    /// Days on which a job is shown at a time of day.
    fn days_of(world: &World, kind: JobKind, time: &str) -> Vec<u32> {
        use chrono::Datelike;
        let days = day("2026-03-02").iter_days().take(60);
        days.filter(|day| world.shown(kind, &format!("{day} {time}")).is_some())
            .map(|day| day.ordinal() - day_one())
            .collect()
    }

    /// Ordinal of the last of February, so that days are those of March on.
    fn day_one() -> u32 {
        59
    }

    #[test]
    fn ignored_twice_it_comes_weekly_then_not_until_asked() {
        let (world, _) = world();
        assert_eq!(days_shown(&world), [4, 5, 11, 18, 25, 32]);
        let asked = crate::jobs::due(&world.picture, at("2026-05-20 12:00"));
        assert!(asked.iter().any(|job| job.kind == JobKind::FeelTheCompost));
    }

    #[test]
    fn a_day_with_two_rounds_is_ignored_once_like_a_day_with_one() {
        let (one, _) = world();
        let (mut two, _) = world();
        two.garden().latitude = Some(52.5);
        let evenings = |world: &World| rounds::evening(&world.picture, day("2026-03-05"));
        assert!(evenings(&one).is_none() && evenings(&two).is_some());
        for time in ["12:00", "18:00"] {
            let shown = |world| days_of(world, JobKind::FeelTheCompost, time);
            assert_eq!(shown(&one)[..3], [4, 5, 11], "{time}");
            assert_eq!(shown(&two), shown(&one), "{time}");
        }
    }

    #[test]
    fn over_heat_seedlings_are_looked_for_daily_to_the_last_on_a_sill_twice() {
        let looked_for = |kind| {
            let mut world = World::new();
            let place = world.place(kind, 20.0, 20.0);
            let tray = world.tray(Container::Cells, place, "2026-03-02 08:00");
            world.sow("tomato", 12, tray, 12, "2026-03-02 08:00");
            days_of(&world, JobKind::LookForSeedlings, "12:00")
        };
        let heated = looked_for(PlaceKind::HeatedPropagator);
        let (first, last) = (heated[0], *heated.last().unwrap());
        assert!(last - first >= 3, "too short to show it: {heated:?}");
        assert_eq!(heated, (first..=last).collect::<Vec<_>>());
        let sill = looked_for(PlaceKind::Windowsill);
        assert_eq!(sill[..2], [first, first + 1]);
        assert!(sill[2..].iter().all(|day| *day >= first + 7), "{sill:?}");
    }

    #[test]
    fn put_off_it_is_silent_until_then_and_begins_anew() {
        let (mut world, job) = world();
        let until = at("2026-03-06 08:00");
        world.picture.garden.put_off.push(PutOff { job, until });
        assert_eq!(days_shown(&world), [6, 7, 13, 20, 27, 34]);
    }

    #[test]
    fn dismissed_it_does_not_come_again_for_this_need() {
        let (mut world, job) = world();
        world.picture.garden.dismissed.insert(job);
        assert!(days_shown(&world).is_empty());
        let tray = *world.picture.trays.keys().next().unwrap();
        world.feel(
            tray,
            "2026-03-10 08:00",
            plumule_journal::words::Feel::Moist,
            None,
        );
        assert_eq!(days_shown(&world)[0], 12);
    }

    #[test]
    fn away_nothing_is_due_and_nothing_counts_as_ignored() {
        let (mut world, _) = world();
        world.away("2026-03-05", "2026-03-09");
        assert_eq!(days_shown(&world)[..3], [4, 13, 19]);
        let now = at("2026-03-06 12:00");
        let view = crate::round::round_view(&world.picture, now);
        assert_eq!(view.away_until, Some(day("2026-03-09")));
        assert!(view.places.iter().all(|place| place.cards.is_empty()));
        assert_eq!(view.next.unwrap().at, at("2026-03-10 08:00"));
    }

    #[test]
    fn the_next_showing_is_told() {
        let (world, _) = world();
        let job = world
            .job(JobKind::FeelTheCompost, "2026-03-02 09:00")
            .unwrap();
        let next = |now| next_shown(&world.picture, &job, at(now));
        assert_eq!(next("2026-03-02 09:00"), Some(at("2026-03-04 08:00")));
        assert_eq!(next("2026-03-06 09:00"), Some(at("2026-03-11 08:00")));
    }
}

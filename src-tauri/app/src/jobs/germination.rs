//! Look at a germination test: at its first count, at its last, and then until
//! it is closed.

use super::season::after;
use super::{Job, Plan};
use crate::rounds;
use crate::say::{Arg, Say};
use crate::view::JobKind;
use crate::words;
use chrono::NaiveDate;
use plumule_agronomy::crops;
use plumule_journal::state::TestState;
use plumule_journal::subject::Subject;

/// Days of the two counts for a crop whose testing rules are not in the crop
/// book (judgement: a week, and three).
const DAYS: (u32, u32) = (7, 21);

/// After a late count the next look comes so many days on (judgement).
const AGAIN_DAYS: u64 = 3;

/// The days of the first and the last look at a test.
pub(crate) fn test_looks(crop: &str, started: NaiveDate) -> [NaiveDate; 2] {
    let days = crops().get(crop).and_then(|crop| crop.test_days);
    let (first, last) = days.unwrap_or(DAYS);
    [first, last].map(|days| after(started, u64::from(days)))
}

pub(super) fn jobs(plan: &Plan<'_>) -> Vec<Job> {
    let tests = plan.picture.tests.iter();
    tests.filter_map(|test| job(plan, test)).collect()
}

fn job(plan: &Plan<'_>, test: &TestState) -> Option<Job> {
    let described = &plan.picture.packets.get(&test.packet)?.described;
    let started = test.opened_by.at.local.date();
    let [first, last] = test_looks(&described.crop, started);
    let counted = test.counts.last();
    let (opened_by, day) = match counted {
        None => (test.opened_by.entry, first),
        Some(count) => {
            let seen = count.at.at.local.date();
            let next = if seen < first {
                first
            } else if seen < last {
                last
            } else {
                after(seen, AGAIN_DAYS)
            };
            (count.at.entry, next)
        }
    };
    let key = if plan.now.date() >= last {
        "why-count-the-test-last"
    } else {
        "why-count-the-test"
    };
    let days = (plan.now.date() - started).num_days();
    let why = Say::new(key)
        .with("crop", words::crop(&described.crop))
        .with("variety", words::variety(&described.variety))
        .with("seeds", Arg::Number(f64::from(test.seeds)))
        .with("days", Arg::Number(days as f64));
    let due = rounds::morning(plan.picture, day);
    let mut job = Job::new(
        JobKind::CountTheTest,
        Subject::Test(test.test),
        opened_by,
        due,
    )
    .because(why);
    job.suggested = Some(counted.map_or(0, |count| count.sprouted));
    Some(job)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::world::{World, at, day};
    use plumule_journal::id::TestId;
    use plumule_journal::state::TestCount;
    use plumule_journal::words::{Container, PlaceKind};
    use uuid::Uuid;

    /// A test of 20 seeds from 2 March.
    fn world(crop: &str) -> World {
        let mut world = World::new();
        let place = world.place(PlaceKind::Windowsill, 18.0, 18.0);
        let tray = world.tray(Container::Cells, place, "2026-02-01 08:00");
        let sowing = world.sow(crop, 12, tray, 12, "2026-02-01 08:00");
        let packet = world.picture.sowings[&sowing].packet();
        let opened_by = world.mark("2026-03-02 09:00");
        world.picture.tests.push(TestState {
            test: TestId(Uuid::from_u128(900)),
            packet,
            seeds: 20,
            opened_by,
            counts: Vec::new(),
            closed: None,
        });
        world
    }

    fn due(world: &World) -> NaiveDate {
        let job = world.job(JobKind::CountTheTest, "2026-03-03 09:00");
        job.unwrap().due.date()
    }

    fn count(world: &mut World, when: &str, sprouted: u32) {
        let at = world.mark(when);
        world.picture.tests[0]
            .counts
            .push(TestCount { at, sprouted });
    }

    /// Tomato: first count on day 5, last on day 14 (rules of testing, from
    /// memory; the crop book).
    #[test]
    fn a_test_is_looked_at_on_the_days_of_its_crop() {
        let mut world = world("tomato");
        assert_eq!(due(&world), day("2026-03-07"));
        assert!(
            world
                .shown(JobKind::CountTheTest, "2026-03-06 12:00")
                .is_none()
        );
        let first = world
            .shown(JobKind::CountTheTest, "2026-03-07 12:00")
            .unwrap();
        assert_eq!(first.why.key, "why-count-the-test");
        count(&mut world, "2026-03-04 09:00", 0);
        assert_eq!(due(&world), day("2026-03-07"));
        count(&mut world, "2026-03-07 09:00", 8);
        assert_eq!(due(&world), day("2026-03-16"));
        count(&mut world, "2026-03-16 09:00", 15);
        let again = world
            .job(JobKind::CountTheTest, "2026-03-19 09:00")
            .unwrap();
        assert_eq!(again.due, at("2026-03-19 08:00"));
        assert_eq!(
            (again.why.key.as_str(), again.suggested),
            ("why-count-the-test-last", Some(15))
        );
    }

    #[test]
    fn a_crop_without_rules_is_looked_at_after_a_week_and_three() {
        let mut world = world("moonflower");
        assert_eq!(due(&world), day("2026-03-09"));
        count(&mut world, "2026-03-09 09:00", 2);
        assert_eq!(due(&world), day("2026-03-23"));
    }
}

//! The lines of a notice: one a place, one part a kind of job.

use crate::jobs::{Job, LivingTray, Plan, kind_word};
use crate::say::{Arg, Say};
use crate::view::JobKind;
use crate::words::{self, Units};
use plumule_journal::subject::Plants;
use std::collections::BTreeMap;

/// In walking order; none for a place with nothing to do.
pub(super) fn lines(plan: &Plan<'_>, units: Units, jobs: &[&Job]) -> Vec<String> {
    let page = Page { plan, units };
    let of_place = plan.picture.walk().into_iter().filter_map(|place| {
        let id = Some(place.described.place);
        let here = jobs.iter().copied().filter(|job| job.place == id);
        let parts = page.parts(here);
        (!parts.is_empty()).then(|| page.line(&place.described.name, &parts))
    });
    let of_seed = page.parts(jobs.iter().copied().filter(|job| job.of_seed()));
    let of_seed = (!of_seed.is_empty()).then(|| {
        let say = Say::new("notice-seed").with("what", Arg::Text(of_seed.join("; ")));
        page.render(&say)
    });
    of_place.chain(of_seed).collect()
}

struct Page<'a> {
    plan: &'a Plan<'a>,
    units: Units,
}

impl Page<'_> {
    /// One a kind, the most pressing first.
    fn parts<'j>(&self, jobs: impl Iterator<Item = &'j Job>) -> Vec<String> {
        let mut kinds: BTreeMap<(bool, JobKind), Vec<&Job>> = BTreeMap::new();
        for job in jobs {
            kinds.entry((!job.today, job.kind)).or_default().push(job);
        }
        // Trays to feel are one number, pressing or not.
        let hurried = kinds.remove(&(false, JobKind::FeelTheCompost));
        if let Some(hurried) = hurried {
            let feel = kinds.entry((true, JobKind::FeelTheCompost)).or_default();
            feel.extend(hurried);
        }
        kinds
            .into_iter()
            .map(|((_, kind), jobs)| {
                let key = words::key("notice", kind_word(kind));
                let crops = if kind == JobKind::Sow {
                    let named = jobs.iter().filter_map(|job| job.why.args.get("crop"));
                    Arg::List(named.cloned().collect())
                } else {
                    let plants = jobs.iter().flat_map(|job| self.plants(job));
                    self.plan.crops(plants)
                };
                self.counted(&key, jobs.len(), crops)
            })
            .collect()
    }

    /// Which plants a job is about: its own, else all of its tray that is up,
    /// else all of it.
    fn plants(&self, job: &Job) -> Vec<Plants> {
        if let Some(plants) = job.plants {
            return vec![plants];
        }
        let mut trays = self.plan.trays.iter();
        let tray = trays.find(|tray| Some(tray.id) == job.tray);
        tray.map(|tray| self.standing(tray)).unwrap_or_default()
    }

    fn standing(&self, tray: &LivingTray<'_>) -> Vec<Plants> {
        let up = |plants: &Plants| {
            let state = self.plan.picture.plants(*plants);
            state.is_some_and(|state| state.numbers.there > 0)
        };
        let standing: Vec<Plants> = tray.plants().filter(up).collect();
        if standing.is_empty() {
            tray.plants().collect()
        } else {
            standing
        }
    }

    fn counted(&self, key: &str, count: usize, crops: Arg) -> String {
        let say = Say::new(key)
            .with("count", Arg::Number(count as f64))
            .with("crops", crops);
        self.render(&say)
    }

    fn line(&self, place: &str, parts: &[String]) -> String {
        let say = Say::new("notice-place")
            .with("place", Arg::Text(place.to_owned()))
            .with("what", Arg::Text(parts.join("; ")));
        self.render(&say)
    }

    fn render(&self, say: &Say) -> String {
        words::render(say, self.units, self.plan.now.date())
    }
}

//! Plans and plants kept for somebody, from the form to what is there.

use crate::acts::{Sown, new_tray, place, sow, sown};
use crate::{request, said};
use plumule_app::acts::Act;
use plumule_app::view::{
    Answer, GroupBy, JobKind, PlanForm, PlanView, PlantsRef, ResultsAsked, RhythmForm, WaresForm,
    YearView,
};

impl Sown {
    fn year(&mut self) -> YearView {
        let stamp = self.bench.stamp();
        let year = self.bench.app.year(&stamp).unwrap();
        said::all(&year);
        year
    }

    fn plan(&mut self) -> PlanView {
        self.year().plans.remove(0)
    }

    /// Whether the round asks for a sowing.
    fn asks_to_sow(&mut self) -> bool {
        let stamp = self.bench.stamp();
        let round = self.bench.app.round(&stamp).unwrap();
        said::all(&round);
        let jobs = round.seed.iter();
        let sow: Vec<_> = jobs.filter(|it| it.job.kind == JobKind::Sow).collect();
        assert!(sow.iter().all(|it| it.plan.is_some()));
        !sow.is_empty()
    }

    fn numbers(&mut self) -> (u32, u32, i32) {
        let stamp = self.bench.stamp();
        let asked = ResultsAsked {
            by: GroupBy::Crop,
            year: None,
            crop: None,
            pair: None,
        };
        let numbers = self.bench.app.results(&stamp, &asked).unwrap().numbers;
        (numbers[0].ready, numbers[0].reserved, numbers[0].free)
    }
}

fn sale(day: &str) -> PlanForm {
    PlanForm {
        crop: "tomato".to_owned(),
        variety: String::new(),
        packet: None,
        wanted: 20,
        rhythm: RhythmForm::Sale {
            day: day.parse().unwrap(),
            over_percent: 15,
        },
        raise_weeks: Some(8),
    }
}

fn days_off(this: &mut Sown, days: i64) -> String {
    let today = this.bench.stamp().now.date_naive();
    (today + chrono::TimeDelta::days(days)).to_string()
}

#[test]
fn a_plan_asks_on_its_day_and_counts_what_is_sown_for_it() {
    let mut this = sown();
    let day = days_off(&mut this, 60);
    let (undo, _) = this.bench.done(Act::Plan {
        id: None,
        plan: sale(&day),
    });
    let plan = this.plan();
    assert_eq!(plan.stands, None);
    assert_eq!(plan.sow.as_ref().unwrap().wanted, 23);
    // Eight weeks before the sale are four days off.
    assert!(!this.asks_to_sow());
    this.bench.wait_days(5);
    assert!(this.asks_to_sow());
    let (_, sill) = this
        .bench
        .done(place("Ledge", "windowsill", (18.0, 22.0), "bright"));
    let mut act = sow(&this.packet.clone(), new_tray(&sill, 6, 10), vec![], 60);
    let Act::Sow { plan: answers, .. } = &mut act else {
        unreachable!("it is a sowing")
    };
    *answers = Some(plan.plan.clone());
    this.bench.done(act);
    assert!(!this.asks_to_sow());
    let plan = this.plan();
    assert!(plan.stands.is_some() && plan.sow.is_none() && plan.trouble.is_none());
    // Another day: the same plan.
    let later = days_off(&mut this, 90);
    this.bench.done(Act::Plan {
        id: Some(plan.plan.clone()),
        plan: sale(&later),
    });
    assert_eq!(this.plan().form, sale(&later));
    let (end, _) = this.bench.done(Act::EndPlan { plan: plan.plan });
    assert!(this.year().plans.is_empty());
    let stamp = this.bench.stamp();
    this.bench.app.undo(&stamp, &end, true).unwrap();
    assert_eq!(this.year().plans.len(), 1);
    let stamp = this.bench.stamp();
    this.bench.app.undo(&stamp, &undo, true).unwrap();
}

#[test]
fn a_day_that_cannot_be_met_is_said_at_once() {
    let mut this = sown();
    let soon = days_off(&mut this, 20);
    this.bench.done(Act::Plan {
        id: None,
        plan: sale(&soon),
    });
    let plan = this.plan();
    assert_eq!(plan.trouble.unwrap().key, "plan-too-late");
    assert!(plan.sow.is_none() && !this.asks_to_sow());
}

#[test]
fn what_is_kept_is_not_free_and_what_is_handed_over_is_no_longer_kept() {
    let mut this = sown();
    this.bench.wait_days(20);
    let count = this.count(10);
    this.bench.done(count);
    let plants = this.plants.clone();
    this.bench.done(Act::Ready { plants });
    assert_eq!(this.numbers(), (10, 0, 10));
    let of = WaresForm::Crop {
        crop: "tomato".to_owned(),
        variety: String::new(),
    };
    this.bench.done(Act::Reserve {
        of,
        number: 4,
        note: "MK".to_owned(),
    });
    assert_eq!(this.numbers(), (10, 4, 6));
    let kept = this.year().reservations.remove(0);
    assert_eq!((kept.remaining, kept.ready), (4, 4));
    let hand_over = |number: u32, reservation: Option<String>| Act::HandOver {
        crop: "tomato".to_owned(),
        number,
        how: "sold".to_owned(),
        reservation,
    };
    this.bench
        .done(hand_over(3, Some(kept.reservation.clone())));
    assert_eq!(this.numbers(), (7, 1, 6));
    let error = this.bench.act(hand_over(8, None)).unwrap_err();
    assert_eq!(error.code, "too_few_ready");
    said::one(&error.say);
    this.bench.done(Act::Release {
        reservation: kept.reservation,
    });
    assert_eq!(this.numbers(), (7, 0, 7));
}

#[test]
fn of_some_plants_more_than_are_there_are_kept_only_after_asking() {
    let mut this = sown();
    let PlantsRef::Sowing(id) = this.plants.clone() else {
        unreachable!("it was sown")
    };
    // Twelve seeds may yet come up.
    let keep = |number| {
        request(Act::Reserve {
            of: WaresForm::Plants {
                plants: PlantsRef::Sowing(id.clone()),
            },
            number,
            note: String::new(),
        })
    };
    let stamp = this.bench.stamp();
    let Answer::AsksFirst { questions } = this.bench.app.act(&stamp, keep(13)).unwrap() else {
        panic!("thirteen of twelve are kept without asking")
    };
    assert_eq!(questions[0].code, "more_reserved_than_raised");
    said::one(&questions[0].say);
    let stamp = this.bench.stamp();
    let answer = this.bench.app.act(&stamp, keep(12)).unwrap();
    assert!(matches!(answer, Answer::Written { .. }));
    assert!(this.year().reservations[0].tray.is_some());
}

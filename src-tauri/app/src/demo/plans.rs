//! Plans of the invented garden, and plants kept for somebody.

use super::diary::Diary;
use super::scenario::Raise;
use chrono::TimeDelta;
use plumule_journal::content::{Content, PlanDescribed, Reserved, Rhythm, Wares};
use plumule_journal::id::{PlanId, ReservationId};

/// The packet that is sown again and again, from this day on.
const AGAIN: (&str, i64) = ("broadsheet", -40);

/// A sale of lettuce, and spinach every three weeks.
pub(super) fn plans(diary: &mut Diary) {
    let today = diary.today();
    let in_days = |days| today + TimeDelta::days(days);
    let sale = Rhythm::Sale {
        day: in_days(50),
        over_percent: 15,
    };
    let every = Rhythm::Every {
        weeks: 3,
        from: in_days(AGAIN.1),
        to: in_days(80),
    };
    for (name, crop, wanted, rhythm, said) in [
        ("sale", "lettuce", 24, sale, -6),
        (AGAIN.0, "spinach", 12, every, AGAIN.1 - 1),
    ] {
        let plan = plan(diary, name);
        let planned = Content::PlanDescribed(PlanDescribed {
            plan,
            crop: crop.to_owned(),
            variety: String::new(),
            packet: None,
            wanted,
            rhythm,
            raise_weeks: None,
            ended: false,
        });
        diary.say(said, (20, 10), planned);
    }
    let reservation = ReservationId(diary.id("kept tomatoes"));
    let kept = Content::Reserved(Reserved {
        reservation,
        of: Wares::Crop {
            crop: "tomato".to_owned(),
            variety: String::new(),
        },
        number: 3,
        note: "MK".to_owned(),
        released: false,
    });
    diary.say(-2, (20, 20), kept);
}

fn plan(diary: &mut Diary, name: &str) -> PlanId {
    PlanId(diary.id(&format!("plan {name}")))
}

/// The plan that a sowing answers.
pub(super) fn answered(diary: &mut Diary, raise: &Raise) -> Option<PlanId> {
    let (packet, from) = AGAIN;
    (raise.packet == packet && raise.day >= from).then(|| plan(diary, packet))
}

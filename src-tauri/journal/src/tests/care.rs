//! Heat that comes back, days away that end early, nights and shelter.

use crate::content::*;
use crate::id::*;
use crate::testing::*;
use crate::words::Shelter;
use chrono::{Duration, NaiveDate};

fn date(n: u8) -> NaiveDate {
    day(n).local.date()
}

#[test]
fn heat_that_was_off_comes_back() {
    let mut world = World::new();
    let place = PlaceId(id(PLACE));
    let off = HeatOff {
        place,
        from: day(2).local,
        to: None,
        meanwhile: None,
    };
    world.at(3, vec![Content::HeatOff(off)]);
    let at = day(2).local + Duration::hours(7);
    let meanwhile = Some(RangeC {
        min_c: 6.0,
        max_c: 9.0,
    });
    let back = HeatBack {
        place,
        at,
        meanwhile,
    };
    world.at(4, vec![Content::HeatBack(back)]);
    let stretches = world.journal.place(place).unwrap().unwrap().heat_off;
    assert_eq!(stretches.len(), 1);
    assert_eq!(
        (stretches[0].to, stretches[0].meanwhile),
        (Some(at), meanwhile)
    );
}

#[test]
fn coming_back_ends_days_away_and_spares_those_that_were_over() {
    let mut world = World::new();
    let away = |from, to, open| {
        Content::Away(Away {
            from: date(from),
            to: date(to),
            open,
        })
    };
    world.at(1, vec![away(1, 3, false)]);
    world.at(10, vec![away(10, 200, true)]);
    world.at(14, vec![Content::CameBack(CameBack { on: date(14) })]);
    let spans: Vec<_> = world.journal.garden().unwrap().away;
    let spans: Vec<_> = spans.iter().map(|it| (it.from, it.to, it.open)).collect();
    assert_eq!(
        spans,
        [(date(1), date(3), false), (date(10), date(13), false)]
    );
}

#[test]
fn the_last_nights_are_kept_and_a_tray_is_sheltered() {
    let mut world = World::new();
    for n in 1..30 {
        let night = NightForecast {
            night: date(n),
            place: None,
            low_c: f64::from(n),
        };
        world.at(n, vec![Content::NightForecast(night)]);
    }
    let nights = world.journal.garden().unwrap().nights;
    assert_eq!((nights.len(), nights[19].low_c), (20, 29.0));

    let sheltered = Sheltered {
        tray: TrayId(id(10)),
        how: Shelter::Fleece,
    };
    world.at(31, vec![Content::Sheltered(sheltered)]);
    let tray = world.journal.tray(TrayId(id(10))).unwrap().unwrap();
    assert_eq!(tray.sheltered[0].how, Shelter::Fleece);
}

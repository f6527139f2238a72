//! A year of sowings whose truth is known, judged day by day from what a grower
//! would have written down. The truth is not made by our own formulas: seeds
//! come up by a log-logistic spread, hour by hour at the temperature of the
//! compost, which is not quite what was read; seed ages by a logistic curve; and
//! counts miss some.

use super::{Case, verdict_view};
use crate::growth::growth_at;
use crate::temperature::Temperatures;
use crate::view::VerdictKind;
use crate::world::{World, day};
use chrono::{Days, NaiveDate, NaiveDateTime, TimeDelta};
use plumule_agronomy::crops;
use plumule_journal::content::Shown;
use plumule_journal::words::{Container, PlaceKind};
use std::f64::consts::PI;

/// A small generator (SplitMix64, from memory), so that a year can be told again.
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }

    /// About normal: the sum of twelve.
    fn around(&mut self, spread: f64) -> f64 {
        ((0..12).map(|_| self.next()).sum::<f64>() - 6.0) * spread
    }

    fn one_in(&mut self, share: f64) -> bool {
        self.next() < share
    }
}

/// The most days that a sowing is watched.
const DAYS: u64 = 90;

const CROPS: [&str; 8] = [
    "tomato", "pepper", "onion", "cabbage", "lettuce", "celery", "cucumber", "leek",
];

/// What came of one sowing.
#[derive(Default)]
struct Outcome {
    /// Whether half came up while the band said so; none where few came up.
    held: Option<bool>,
    /// Nothing was going to come up.
    dead: bool,
    /// Seed past its life.
    old: bool,
    /// Progress at which it was said that nothing more is likely, while nothing
    /// was up.
    given_up: Option<f64>,
}

struct Weather {
    /// °C of the compost for each hour.
    hours: Vec<f64>,
}

impl Weather {
    /// A place of a mean and a swing; the air follows a day late, the warmest
    /// hour is at 15, the coldest at 6, and days hang together.
    fn of(chance: &mut Chance, mean_c: f64, swing_c: f64, unsteady_c: f64) -> Self {
        let mut drift = 0.0;
        let mut hours = Vec::new();
        for _ in 0..=DAYS {
            drift = drift * 0.7 + chance.around(unsteady_c);
            for hour in 0..24 {
                let hour = f64::from(hour);
                let of_day = if (6.0..15.0).contains(&hour) {
                    -(PI * (hour - 6.0) / 9.0).cos()
                } else {
                    let since = (hour - 15.0).rem_euclid(24.0);
                    (PI * since / 15.0).cos()
                };
                hours.push(mean_c + drift + swing_c / 2.0 * of_day + chance.around(0.2));
            }
        }
        Self { hours }
    }

    fn of_day(&self, day: usize) -> &[f64] {
        self.hours.get(day * 24..day * 24 + 24).unwrap_or(&[])
    }
}

/// One sowing from beginning to end.
fn live(chance: &mut Chance, readings: bool) -> Outcome {
    let crop = crops().get(CROPS[(chance.next() * 8.0) as usize]).unwrap();
    let (low, high) = crop.recommended_c;
    // Mostly where it suits, now and then too cold.
    let mean_c = match chance.next() {
        p if p < 0.25 => chance.between(low - 4.0, low),
        _ => chance.between(low, low.midpoint(high)),
    };
    let swing = chance.between(1.0, 8.0);
    let air = Weather::of(chance, mean_c, swing, 0.8);
    // What the compost has and the air has not, and what was thought usual.
    let compost = chance.around(0.8);
    let thought = chance.around(1.5);

    let mut world = World::new();
    let place = world.place(
        PlaceKind::Windowsill,
        mean_c + thought - swing / 2.0,
        mean_c + thought + swing / 2.0,
    );
    let began = "2026-03-02 09:00";
    let tray = world.tray(Container::OpenTray, place, began);
    let seeds = 8 + (chance.next() * 33.0) as u32;
    let sowing = world.sow(&crop.key, seeds, tray, 1, began);

    let age = (chance.next() * 5.0).floor();
    for packet in world.picture.packets.values_mut() {
        packet.described.packed_year = Some(2026 - age as i32);
    }
    let life = crop.life_years * chance.between(1.0, 1.6);
    let fresh = chance.between(0.75, 0.98);
    let viable = if chance.one_in(0.06) {
        0.0
    } else {
        fresh / (1.0 + ((age - life) / (0.25 * life)).exp())
    };
    let alive: Vec<bool> = (0..seeds).map(|_| chance.one_in(viable)).collect();
    // ln s by a triangle of standard deviation 0.2; within the sowing log-logistic.
    let ln_s = (chance.next() - chance.next()) * 0.2 * 6.0_f64.sqrt();
    let shape = PI / (3.0_f64.sqrt() * crop.sigma);
    let mut due: Vec<f64> = alive
        .iter()
        .filter(|alive| **alive)
        .map(|_| {
            let u = chance.between(1e-6, 1.0 - 1e-6);
            ln_s.exp() * (u / (1.0 - u)).powf(1.0 / shape)
        })
        .collect();
    due.sort_by(f64::total_cmp);

    let first: NaiveDate = day("2026-03-02");
    let mut outcome = Outcome {
        dead: due.is_empty(),
        ..Outcome::default()
    };
    let mut truth = 0.0;
    let half = due.get(due.len() / 2).copied().filter(|_| due.len() >= 6);
    let mut last_count = 0;
    for n in 0..DAYS {
        let today = first.checked_add_days(Days::new(n)).unwrap();
        let hours = air.of_day(n as usize);
        let (min_c, max_c) = hours.iter().fold((f64::MAX, f64::MIN), |(low, high), c| {
            (low.min(*c), high.max(*c))
        });
        let before = truth;
        let mut at_half = None;
        for (hour, c) in (0..).zip(hours) {
            if n > 0 || hour >= 9 {
                truth += crop.curve.rate_per_day(c + compost) / 24.0;
            }
            if at_half.is_none() && half.is_some_and(|half| before < half && truth >= half) {
                at_half = Some(today.and_hms_opt(hour, 30, 0).unwrap());
            }
        }
        if readings || n % 10 == 3 {
            let when = today.format("%F 18:00").to_string();
            let (min_c, max_c) = (min_c + chance.around(0.3), max_c + chance.around(0.3));
            world.read(
                place,
                &when,
                Shown::LowHigh {
                    min_c: min_c.min(max_c),
                    max_c: max_c.max(min_c),
                },
            );
        }
        if let Some(at) = at_half {
            outcome.held = held(&world, sowing, at);
        }
        let evening = today.and_hms_opt(19, 0, 0).unwrap();
        // Looked at every other day, and daily once it is due, as the round asks.
        if n % 2 == 0 || truth > 0.6 {
            let up = due.iter().filter(|due| **due <= truth);
            let seen = up.filter(|_| !chance.one_in(0.04)).count() as u32;
            // Who counted four does not write down three of what cannot go.
            last_count = seen.max(last_count);
            world.count(sowing, &evening.format("%F %H:%M").to_string(), last_count);
        }
        if outcome.given_up.is_none()
            && last_count == 0
            && let Some(reached) = gives_up(&world, sowing, evening + TimeDelta::minutes(30))
        {
            outcome.given_up = Some(reached);
            outcome.old = age >= crop.life_years;
            break;
        }
        if due.last().is_some_and(|last| truth > *last) && outcome.held.is_some() {
            break;
        }
    }
    outcome
}

/// Whether the band of a tenth to nine tenths held the moment at which half came
/// up.
fn held(world: &World, sowing: plumule_journal::id::SowingId, at: NaiveDateTime) -> Option<bool> {
    let temperatures = Temperatures::of(&world.picture);
    // As it was forecast before any was counted.
    let mut state = world.picture.sowings.get(&sowing)?.clone();
    state.counts.clear();
    let growth = growth_at(&world.picture, &temperatures, &state, at)?;
    let factor = growth.time_factor;
    let off = (growth.course.progress.ln() - factor.mean_ln) / factor.tau;
    Some(off.abs() <= 1.281_551_565_544_600_4)
}

/// The progress at which nothing more is said to be likely.
fn gives_up(
    world: &World,
    sowing: plumule_journal::id::SowingId,
    now: NaiveDateTime,
) -> Option<f64> {
    let temperatures = Temperatures::of(&world.picture);
    let sowing = world.picture.sowings.get(&sowing)?;
    let growth = growth_at(&world.picture, &temperatures, sowing, now)?;
    let case = Case {
        picture: &world.picture,
        temperatures: &temperatures,
        sowing,
        growth: &growth,
        now,
    };
    let verdict = verdict_view(&case)?;
    (verdict.kind == VerdictKind::NothingMore).then_some(growth.reached)
}

struct Figures {
    /// Share of bands that held the truth.
    held: f64,
    /// Share of living sowings given up.
    lost: f64,
    /// Mean progress at which dead ones were given up: all, those of sound seed,
    /// and those of seed past its life, which is waited for longer.
    given_up_at: f64,
    sound_at: f64,
    old_at: f64,
    bands: usize,
    living: usize,
    dead: usize,
}

fn year(sowings: usize, readings: bool) -> Figures {
    let mut chance = Chance(if readings { 17 } else { 18 });
    let all: Vec<Outcome> = (0..sowings).map(|_| live(&mut chance, readings)).collect();
    let bands: Vec<bool> = all.iter().filter_map(|it| it.held).collect();
    let (dead, living): (Vec<&Outcome>, Vec<&Outcome>) = all.iter().partition(|it| it.dead);
    let share = |part: usize, of: usize| part as f64 / of.max(1) as f64;
    let ended: Vec<f64> = dead.iter().filter_map(|it| it.given_up).collect();
    let mean = |old: bool| {
        let some = dead.iter().filter(|it| it.old == old);
        let at: Vec<f64> = some.filter_map(|it| it.given_up).collect();
        at.iter().sum::<f64>() / at.len().max(1) as f64
    };
    let (sound_at, old_at) = (mean(false), mean(true));
    let lost = living.iter().filter(|it| it.given_up.is_some()).count();
    Figures {
        held: share(bands.iter().filter(|held| **held).count(), bands.len()),
        lost: share(lost, living.len()),
        given_up_at: ended.iter().sum::<f64>() / ended.len().max(1) as f64,
        sound_at,
        old_at,
        bands: bands.len(),
        living: living.len(),
        dead: ended.len(),
    }
}

#[expect(clippy::print_stdout, reason = "the figures are what it is for")]
fn print(name: &str, figures: &Figures) {
    println!(
        "{name}: the band of 10 to 90 % held {:.0} % of {} truths; {:.2} % of {} living sowings given up; {} dead ones given up at progress {:.2} on average (sound seed {:.2}, past its life {:.2})",
        figures.held * 100.0,
        figures.bands,
        figures.lost * 100.0,
        figures.living,
        figures.dead,
        figures.given_up_at,
        figures.sound_at,
        figures.old_at,
    );
}

/// The short form: wide of the targets is wrong.
#[test]
fn a_short_year_is_judged_well() {
    let with = year(80, true);
    print("readings every day", &with);
    assert!((0.6..=0.95).contains(&with.held), "{}", with.held);
    assert!(with.lost <= 0.03, "{}", with.lost);
    assert!(with.sound_at <= 1.7, "{}", with.sound_at);
}

/// The long form: `cargo xtask soak judgement`.
#[cfg(feature = "soak")]
#[test]
fn a_long_year() {
    print("readings every day", &year(400, true));
    print("hardly any readings", &year(400, false));
}

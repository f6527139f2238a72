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
use plumule_journal::id::SowingId;
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

/// By how much days differ, °C (judgement).
const UNSTEADY_C: f64 = 0.8;

/// By how much a day of spring is warmer than the one before, °C: some 4 °C a
/// month in a temperate climate (from memory).
const SPRING_C: f64 = 4.0 / 30.0;

/// The share of sowings in which nothing lives, beside those of spent seed
/// (judgement).
#[cfg(feature = "soak")]
const DEAD: f64 = 0.06;

const CROPS: [&str; 8] = [
    "tomato", "pepper", "onion", "cabbage", "lettuce", "celery", "cucumber", "leek",
];

/// What came of one sowing.
#[derive(Default)]
struct Outcome {
    /// Where half came up, against what was reckoned; none where few came up.
    half: Option<Half>,
    /// Nothing was going to come up.
    dead: bool,
    /// Seed past its life.
    old: bool,
    /// Progress at which it was said that nothing more is likely, while nothing
    /// was up.
    given_up: Option<f64>,
}

/// The moment at which half were up.
#[derive(Clone, Copy)]
struct Half {
    /// The band of a tenth to nine tenths held it.
    held: bool,
    /// ln of the progress that was reckoned over the true one.
    off: f64,
}

struct Weather {
    /// °C of the compost for each hour.
    hours: Vec<f64>,
}

impl Weather {
    /// A place of a mean at first and a swing; the air follows a day late, the
    /// warmest hour is at 15, the coldest at 6, and days hang together.
    fn of(chance: &mut Chance, mean_c: f64, swing_c: f64, rise_c: f64) -> Self {
        let mut drift = 0.0;
        let mut hours = Vec::new();
        for day in 0..=DAYS {
            drift = drift * 0.7 + chance.around(UNSTEADY_C);
            let mean_c = mean_c + rise_c * day as f64;
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

/// One sowing from beginning to end, in a place that is read every so many days;
/// such a share is dead.
fn live(chance: &mut Chance, read_every: u64, dead: f64) -> Outcome {
    let crop = crops().get(CROPS[(chance.next() * 8.0) as usize]).unwrap();
    let (low, high) = crop.recommended_c;
    // Mostly where it suits, now and then too cold.
    let mean_c = match chance.next() {
        p if p < 0.25 => chance.between(low - 4.0, low),
        _ => chance.between(low, low.midpoint(high)),
    };
    let swing = chance.between(1.0, 8.0);
    // Half the places are not heated, and there spring comes.
    let rise_c = if chance.one_in(0.5) { SPRING_C } else { 0.0 };
    let air = Weather::of(chance, mean_c, swing, rise_c);
    // What the compost has and the air has not, and by how much a place is not
    // what it was thought to be: without a thermometer people are commonly 2 or
    // 3 °C out (judgement).
    let compost = chance.around(0.8);
    let thought = chance.around(2.5);

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

    // Whole years. Most seed that is sown is within the life that the handbooks
    // give it, as most of it was bought for the season or the one before; one
    // packet in ten is past it, by as much again at most (judgement).
    let old = chance.one_in(0.1);
    let age = if old {
        (crop.life_years * chance.between(1.0, 2.0)).ceil()
    } else {
        (crop.life_years * chance.next()).floor()
    };
    for packet in world.picture.packets.values_mut() {
        packet.described.packed_year = Some(2026 - age as i32);
    }
    let life = crop.life_years * chance.between(1.0, 1.6);
    let fresh = chance.between(0.75, 0.98);
    let viable = if chance.one_in(dead) {
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
        old,
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
        if n % read_every == read_every / 3 {
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
        if let Some((at, half)) = at_half.zip(half) {
            outcome.half = half_of(&world, sowing, at, half);
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
            break;
        }
        if due.last().is_some_and(|last| truth > *last) && outcome.half.is_some() {
            break;
        }
    }
    outcome
}

/// What was reckoned at the moment at which half came up, before any was
/// counted.
fn half_of(world: &World, sowing: SowingId, at: NaiveDateTime, truth: f64) -> Option<Half> {
    let temperatures = Temperatures::of(&world.picture);
    let mut state = world.picture.sowings.get(&sowing)?.clone();
    state.counts.clear();
    let growth = growth_at(&world.picture, &temperatures, &state, at)?;
    let (factor, progress) = (growth.time_factor, growth.course.progress);
    let deviations = (progress.ln() - factor.mean_ln) / factor.tau;
    Some(Half {
        held: deviations.abs() <= 1.281_551_565_544_600_4,
        off: (progress / truth).ln(),
    })
}

/// The progress at which nothing more is said to be likely.
fn gives_up(world: &World, sowing: SowingId, now: NaiveDateTime) -> Option<f64> {
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
    /// Of how many sowings half was seen to come up.
    halves: usize,
    /// Share of their bands that held the truth.
    held: f64,
    /// By how much reckoned progress was off then, as a share.
    off: f64,
    living: usize,
    /// Share of the living that were given up.
    lost: f64,
    dead: usize,
    /// Dead ones of seed past its life.
    dead_old: usize,
    /// Dead ones that were given up by the end.
    given_up: usize,
    /// Mean progress at which they were: all, those of sound seed, and those of
    /// seed past its life, which is waited for longer.
    given_up_at: f64,
    sound_at: f64,
    old_at: f64,
}

fn mean(of: impl Iterator<Item = f64>) -> f64 {
    let all: Vec<f64> = of.collect();
    all.iter().sum::<f64>() / all.len().max(1) as f64
}

fn year(sowings: usize, read_every: u64, dead: f64) -> Figures {
    let mut chance = Chance(16 + read_every);
    let all: Vec<Outcome> = (0..sowings)
        .map(|_| live(&mut chance, read_every, dead))
        .collect();
    let halves: Vec<Half> = all.iter().filter_map(|it| it.half).collect();
    let (dead, living): (Vec<&Outcome>, Vec<&Outcome>) = all.iter().partition(|it| it.dead);
    let given_up = |old: &[bool]| {
        let some = dead.iter().filter(|it| old.contains(&it.old));
        some.filter_map(|it| it.given_up).collect::<Vec<f64>>()
    };
    let share = |is: bool| f64::from(u8::from(is));
    let at = |old: &[bool]| mean(given_up(old).into_iter());
    Figures {
        halves: halves.len(),
        held: mean(halves.iter().map(|half| share(half.held))),
        off: mean(halves.iter().map(|half| half.off.powi(2))).sqrt(),
        living: living.len(),
        lost: mean(living.iter().map(|it| share(it.given_up.is_some()))),
        dead: dead.len(),
        dead_old: dead.iter().filter(|it| it.old).count(),
        given_up: given_up(&[true, false]).len(),
        given_up_at: at(&[true, false]),
        sound_at: at(&[false]),
        old_at: at(&[true]),
    }
}

#[expect(clippy::print_stdout, reason = "the figures are what it is for")]
fn print(read_every: u64, it: &Figures) {
    println!("readings every {read_every} days:");
    println!(
        "  the band of 10 to 90 % held {:.0} % of {} truths; reckoned progress was off by {:.0} %",
        it.held * 100.0,
        it.halves,
        it.off * 100.0,
    );
    println!(
        "  {:.2} % of {} living sowings given up",
        it.lost * 100.0,
        it.living
    );
    println!(
        "  {} of {} dead ones ({} past their life) given up, at progress {:.2} on average (sound seed {:.2}, past its life {:.2})",
        it.given_up, it.dead, it.dead_old, it.given_up_at, it.sound_at, it.old_at,
    );
}

/// Days between readings, and the progress at which dead sowings are to be given
/// up at most, on average.
const TARGETS: [(u64, f64); 3] = [(1, 1.7), (4, 2.4), (10, 2.4)];

/// The short form: wide of the targets is wrong.
#[test]
fn a_short_year_is_judged_well() {
    for (read_every, latest) in TARGETS {
        // More of it dead than people have, so that there is enough to give up.
        let short = year(80, read_every, 0.2);
        print(read_every, &short);
        assert!((0.65..=0.95).contains(&short.held), "{}", short.held);
        assert!(short.lost <= 0.03, "{}", short.lost);
        assert!(short.given_up >= 8, "{} of {}", short.given_up, short.dead);
        assert!(short.sound_at <= latest, "{}", short.sound_at);
    }
}

/// The long form, against its targets: `cargo xtask soak judgement`. Of so many
/// sowings some 140 are dead, enough for a mean to within 0.06.
#[cfg(feature = "soak")]
#[test]
fn a_long_year() {
    let told = TARGETS.map(|(read_every, latest)| {
        let figures = year(2000, read_every, DEAD);
        print(read_every, &figures);
        (figures, latest)
    });
    for (figures, latest) in told {
        assert!((0.75..=0.85).contains(&figures.held), "{}", figures.held);
        assert!(figures.lost < 0.01, "{}", figures.lost);
        assert!(figures.given_up_at <= latest, "{}", figures.given_up_at);
    }
}

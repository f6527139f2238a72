//! What the Sow screen is told, and what it writes.

use crate::acts::{Sown, sown};
use crate::said;
use chrono::NaiveDate;
use plumule_agronomy::{Outlook, Storage, cells_to_sow, crops, packet_outlook, seeds_to_sow};
use plumule_app::AppError;
use plumule_app::view::{BenchView, EnoughAsk, EnoughView};

fn enough(this: &mut Sown, ask: (u32, u8, u32)) -> Result<EnoughView, AppError> {
    let (wanted, odds, seeds_per_cell) = ask;
    let ask = EnoughAsk {
        packet: this.packet.clone(),
        wanted,
        odds,
        seeds_per_cell,
    };
    let stamp = this.bench.stamp();
    this.bench.app.enough(&stamp, ask)
}

fn bench(this: &mut Sown, packet: bool) -> BenchView {
    let stamp = this.bench.stamp();
    let packet = packet.then_some(this.packet.as_str());
    let view = this.bench.app.bench(&stamp, packet).unwrap();
    said::all(&view);
    view
}

/// The packet of the bench, as the design has it: tomatoes packed in 2025 and
/// kept in a cool cupboard, on 20 April 2026.
fn worth() -> Outlook {
    let day = |year, month, day| NaiveDate::from_ymd_opt(year, month, day).unwrap();
    let age = (day(2026, 4, 20) - day(2025, 1, 1)).num_days() as f64 / 365.25;
    let tomato = crops().get("tomato").unwrap();
    let worth = packet_outlook(tomato, age, None, Storage::CoolCupboard, &[]);
    worth.unwrap().outlook
}

#[test]
fn what_is_enough_is_what_agronomy_says() {
    let mut this = sown();
    for wanted in [1, 6, 40, 100] {
        for odds in [80, 90, 95] {
            let confidence = f64::from(odds) / 100.0;
            let seeds = seeds_to_sow(wanted, confidence, worth()).unwrap();
            for each in [1, 2, 3] {
                let cells = cells_to_sow(wanted, confidence, worth(), each).unwrap();
                let told = enough(&mut this, (wanted, odds, each)).unwrap();
                said::all(&told);
                assert_eq!((told.seeds, told.cells), (seeds, cells));
                assert!(told.seeds.unwrap() >= wanted);
            }
        }
    }
    let told = enough(&mut this, (6, 90, 2)).unwrap();
    let (seeds, cells) = (told.seeds.unwrap(), told.cells.unwrap());
    let text = said::one(&told.say_seeds);
    assert_eq!(
        text,
        format!("{seeds} seeds give 6 plants or more, 9 times in 10.")
    );
    let text = said::one(&told.say_cells);
    assert_eq!(
        text,
        format!("{cells} cells with 2 seeds in each give 6 plants or more, 9 times in 10.")
    );
}

#[test]
fn what_cannot_be_told_is_said() {
    let mut this = sown();
    assert_eq!(
        enough(&mut this, (6, 91, 1)).unwrap_err().code,
        "bad_request"
    );
    // More than the 10,000 seeds that are advised at most.
    let told = enough(&mut this, (100_000, 90, 1)).unwrap();
    assert_eq!((told.seeds, told.cells), (None, None));
    assert_eq!(told.say_seeds.key, "enough-better-seed");
    assert_eq!(told.say_cells, told.say_seeds);
    said::all(&told);
}

#[test]
fn one_place_is_best_and_the_walking_order_stays() {
    let mut this = sown();
    let view = bench(&mut this, true);
    let places: Vec<(&str, bool)> = view
        .places
        .iter()
        .map(|it| (it.place.name.as_str(), it.best))
        .collect();
    // Tomatoes come up sooner at 20 to 24 °C than at 15 to 20.
    assert_eq!(places, [("Propagator", true), ("Sill", false)]);
    let view = bench(&mut this, false);
    assert!(
        view.places
            .iter()
            .all(|it| !it.best && it.warnings.is_empty())
    );
}

#[test]
fn the_same_again_is_one_act() {
    let mut this = sown();
    let last = bench(&mut this, false).last.unwrap();
    let text = said::one(&last.say);
    assert_eq!(text, "12 seeds in 12 cells, Propagator");
    let before = this.page();
    let (_, tray) = this.bench.done(last.act);
    let stamp = this.bench.stamp();
    let after = this.bench.app.tray(&stamp, &tray).unwrap();
    assert_ne!(after.code, before.code);
    assert_eq!(
        (after.rows, after.columns, &after.compost, after.covered),
        (before.rows, before.columns, &before.compost, before.covered)
    );
    assert_eq!(after.place, before.place);
    let (again, first) = (&after.plants[0], &before.plants[0]);
    assert_eq!(again.line.seeds, first.line.seeds);
    assert_eq!(again.line.cells, first.line.cells);
    assert_eq!(again.depth_mm, first.depth_mm);
    assert_eq!(again.wanted, first.wanted);
}

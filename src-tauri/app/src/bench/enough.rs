//! How many seeds, or cells, for the plants wanted.

use super::packet;
use crate::error::AppError;
use crate::growth::{Learnt, outlook_of};
use crate::picture::Picture;
use crate::say::{Arg, Say};
use crate::view::{EnoughAsk, EnoughView};
use plumule_agronomy::{Outlook, cells_to_sow, seeds_to_sow};
use plumule_journal::Journal;
use plumule_journal::stamp::Stamp;

/// The odds that may be asked for, in a hundred (judgement).
const ODDS: [u8; 3] = [80, 90, 95];

pub(crate) fn view(
    journal: &Journal,
    stamp: &Stamp,
    ask: EnoughAsk,
) -> Result<EnoughView, AppError> {
    if !ODDS.contains(&ask.odds) {
        return Err(AppError::bad_request(&ask.odds.to_string()));
    }
    let packet = packet(journal, &ask.packet)?;
    let picture = Picture::of_packets(journal, stamp, std::slice::from_ref(&packet))?;
    let learnt = Learnt::of(&picture, &packet);
    let worth = outlook_of(&packet, &learnt, picture.now(stamp).date());
    Ok(enough(ask, worth.map(|worth| worth.outlook)))
}

/// Seeds that are enough for so many plants with odds in a hundred; none where
/// no number is.
pub(crate) fn seeds(wanted: u32, odds: u8, worth: Outlook) -> Option<u32> {
    seeds_to_sow(wanted, share(odds), worth).ok().flatten()
}

fn share(odds: u8) -> f64 {
    f64::from(odds) / 100.0
}

fn enough(ask: EnoughAsk, worth: Option<Outlook>) -> EnoughView {
    let per_cell = ask.seeds_per_cell.max(1);
    let (enough, cells) = match worth {
        Some(worth) => (
            seeds(ask.wanted, ask.odds, worth),
            cells_to_sow(ask.wanted, share(ask.odds), worth, per_cell)
                .ok()
                .flatten(),
        ),
        None => (None, None),
    };
    let number = |number: u32| Arg::Number(f64::from(number));
    let say = |key: &str| {
        Say::new(key)
            .with("wanted", number(ask.wanted))
            .with("times", Arg::Word(format!("times-{}", ask.odds)))
    };
    let say_seeds = match (worth, enough) {
        (None, _) => Say::new("enough-unknown"),
        (Some(_), None) => Say::new("enough-better-seed"),
        (Some(_), Some(seeds)) => say("enough-seeds").with("seeds", number(seeds)),
    };
    let say_cells = cells.map(|cells| {
        say("enough-cells")
            .with("cells", number(cells))
            .with("each", number(per_cell))
    });
    EnoughView {
        say_cells: say_cells.unwrap_or_else(|| say_seeds.clone()),
        say_seeds,
        seeds: enough,
        cells,
        of: ask,
    }
}

//! The garden. Jobs put off and dismissed are rows beside it.

use super::held::{Held, events, last_word};
use crate::content::Content;
use crate::state::{AwayAt, GardenState, NightAt};

/// So many of the last nights said are kept. Judgement: a fortnight, and a
/// place or two more.
const NIGHTS: usize = 20;

pub(super) fn fold(held: &[Held]) -> Option<GardenState> {
    let described = last_word(held, |content| match content {
        Content::GardenDescribed(what) => Some(what.clone()),
        _ => None,
    });
    let frost = last_word(held, |content| match content {
        Content::FrostReckoned(what) => Some(what.clone()),
        _ => None,
    });
    let mut away: Vec<AwayAt> = Vec::new();
    let mut nights: Vec<NightAt> = Vec::new();
    for (held, content) in events(held) {
        match content {
            Content::Away(what) => away.push(AwayAt {
                entry: held.entry.id,
                from: what.from,
                to: what.to,
                open: what.open,
            }),
            Content::CameBack(back) => {
                for stretch in away.iter_mut().filter(|stretch| stretch.to >= back.on) {
                    stretch.to = back.on.pred_opt().unwrap_or(back.on);
                    stretch.open = false;
                }
            }
            Content::NightForecast(what) => nights.push(NightAt {
                mark: held.mark(),
                night: what.night,
                place: what.place,
                low_c: what.low_c,
            }),
            _ => {}
        }
    }
    let old = nights.len().saturating_sub(NIGHTS);
    nights.drain(..old);
    let said = described.is_some() || frost.is_some() || !away.is_empty() || !nights.is_empty();
    said.then(|| GardenState {
        described,
        away,
        frost,
        nights,
        ..GardenState::default()
    })
}

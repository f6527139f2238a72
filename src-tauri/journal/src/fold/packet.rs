//! A packet.

use super::held::{Held, events, last_word, withdrawn_word};
use super::seed::closed;
use crate::content::{Content, PacketDescribed};
use crate::id::{PacketId, SowingId};
use crate::state::{PacketState, PacketTest, SeedsAt, StockAt};

pub(super) fn fold(id: PacketId, held: &[Held]) -> Option<PacketState> {
    let pick = |content| described(id, content);
    let events = events(held);
    let opened = events.iter().find(|(_, content)| pick(content).is_some());
    let of_it = Tally::of(id, &events);
    let (opened_by, described) = match opened {
        Some((held_by, _)) => (held_by.mark(), last_word(held, pick)?),
        // Withdrawn, yet seeds were sown from it on another device: what it
        // was is better than a sowing of nothing.
        None if !of_it.sowings.is_empty() => {
            let (held_by, described) = withdrawn_word(held, pick)?;
            (held_by.mark(), described)
        }
        None => return None,
    };
    Some(PacketState {
        described: described.clone(),
        opened_by,
        seeds_sown: of_it.sown,
        sowings: of_it.sowings,
        seeds_counted: of_it.counted,
        seeds_used: of_it.used,
        tests: of_it.tests,
        stock: of_it.stock,
    })
}

/// What happened to the seeds of a packet.
#[derive(Default)]
struct Tally {
    sown: u32,
    sowings: Vec<SowingId>,
    counted: Option<SeedsAt>,
    used: u32,
    tests: Vec<PacketTest>,
    stock: Option<StockAt>,
}

impl Tally {
    fn of(id: PacketId, events: &[(&Held, &Content)]) -> Self {
        let mut tally = Self::default();
        for (held, content) in events {
            tally.add(id, held, content);
        }
        // A test may be closed in an entry dated before its start.
        for (held, content) in events {
            if let Content::TestClosed(what) = content
                && let Some(test) = tally.tests.iter_mut().find(|test| test.test == what.test)
            {
                test.closed = Some(closed(held, what, test.seeds));
            }
        }
        tally
    }

    fn add(&mut self, id: PacketId, held: &Held, content: &Content) {
        match content {
            Content::Sown(what) if what.packet == id => {
                let seeds = what.seeds.number();
                self.sown = self.sown.saturating_add(seeds);
                self.used = self.used.saturating_add(seeds);
                self.sowings.push(what.sowing);
            }
            Content::TestStarted(what) if what.packet == id => {
                self.used = self.used.saturating_add(what.seeds);
                self.tests.push(PacketTest {
                    test: what.test,
                    started: held.mark(),
                    seeds: what.seeds,
                    closed: None,
                });
            }
            Content::SeedsCounted(what) if what.packet == id => {
                self.used = 0;
                self.counted = Some(SeedsAt {
                    at: held.mark(),
                    left: what.left,
                });
            }
            Content::StockTaken(what) if what.packet == id => {
                self.stock = Some(StockAt {
                    at: held.mark(),
                    found: what.found,
                });
            }
            _ => {}
        }
    }
}

fn described(id: PacketId, content: &Content) -> Option<&PacketDescribed> {
    match content {
        Content::PacketDescribed(what) if what.packet == id => Some(what),
        _ => None,
    }
}

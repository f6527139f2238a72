//! The yearly stocktake: each packet in the hand once, before seed is ordered.

use super::row;
use crate::growth::{Learnt, outlook_of};
use crate::packet_words;
use crate::picture::Picture;
use crate::rounds::month_in_the_north;
use crate::say::Say;
use crate::view::{StockRow, StocktakeView};
use chrono::{Datelike, NaiveDate, TimeDelta};
use plumule_journal::id::EntryId;
use plumule_journal::state::PacketState;

/// The month of the stocktake in the north, half a year on in the south
/// (judgement: the year's sowing is over, and seed is ordered after it).
const MONTH: u32 = 12;

/// A test is worth its seeds where fewer than this share of them is likely to
/// come up (judgement).
const DOUBTFUL: f64 = 0.6;

/// Germination tests take seeds; of fewer than so many none is made
/// (judgement: it would say next to nothing).
const ENOUGH_TO_TEST: u32 = 20;

/// A stocktake that is due or soon to be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Stocktake {
    /// Its first day.
    pub(crate) from: NaiveDate,
    /// The newest entry before it about a packet in use.
    pub(crate) opened_by: EntryId,
    /// Packets to go through still.
    pub(crate) left: u32,
}

impl Stocktake {
    /// Over packets in use; none if all of them were gone through.
    pub(crate) fn of(packets: &[PacketState], from: NaiveDate) -> Option<Self> {
        let before = |day: NaiveDate| day < from;
        let marks = packets.iter().flat_map(|packet| {
            let stock = packet.stock.as_ref().map(|stock| &stock.at);
            stock.into_iter().chain([&packet.opened_by])
        });
        let opened_by = marks
            .filter(|mark| before(mark.at.local.date()))
            .map(|mark| mark.entry)
            .max()?;
        let left = packets.iter().filter(|packet| before(seen(packet))).count();
        (left > 0).then(|| Self {
            from,
            opened_by,
            left: u32::try_from(left).unwrap_or(u32::MAX),
        })
    }
}

/// The first day of the last stocktake that began by a day.
pub(crate) fn last_began(picture: &Picture, day: NaiveDate) -> NaiveDate {
    let mut first = day.with_day(1).unwrap_or(day);
    while month_in_the_north(picture, first) != MONTH {
        let before = first - TimeDelta::days(1);
        first = before.with_day(1).unwrap_or(before);
    }
    first
}

/// Days before and after its first in which a stocktake is thought of
/// (judgement: notices are planned two weeks ahead; by March sowing is on).
const SEASON: (i64, i64) = (15, 90);

/// The first day of the stocktake whose season a day is in.
pub(crate) fn in_season(picture: &Picture, day: NaiveDate) -> Option<NaiveDate> {
    let (before, after) = SEASON;
    let first = last_began(picture, day + TimeDelta::days(before));
    (day - first < TimeDelta::days(after)).then_some(first)
}

/// The last day of the season of a stocktake.
pub(crate) fn last_day(first: NaiveDate) -> NaiveDate {
    first + TimeDelta::days(SEASON.1)
}

/// When a packet was last in the hand: at a stocktake, or when it was added.
fn seen(packet: &PacketState) -> NaiveDate {
    let added = packet.opened_by.at.local.date();
    packet
        .stock
        .as_ref()
        .map_or(added, |stock| added.max(stock.at.at.local.date()))
}

pub(super) fn view(picture: &Picture, packets: &[PacketState], today: NaiveDate) -> StocktakeView {
    let since = last_began(picture, today);
    let (left, done): (Vec<&PacketState>, Vec<&PacketState>) =
        packets.iter().partition(|packet| seen(packet) < since);
    let mut left: Vec<StockRow> = left
        .into_iter()
        .map(|packet| stock_row(picture, packet, today))
        .collect();
    left.sort_by(|one, other| {
        let key = |it: &StockRow| {
            let line = &it.row.line;
            (
                it.row.storage.clone(),
                line.crop.key.clone(),
                line.variety.clone(),
                line.packet.clone(),
            )
        };
        key(one).cmp(&key(other))
    });
    StocktakeView {
        since,
        left,
        done: u32::try_from(done.len()).unwrap_or(u32::MAX),
    }
}

fn stock_row(picture: &Picture, packet: &PacketState, today: NaiveDate) -> StockRow {
    let learnt = Learnt::of(picture, packet);
    StockRow {
        row: row(picture, packet, today),
        outlook: packet_words::outlook(packet, &learnt, today),
        advice: advice(packet, &learnt, today),
    }
}

/// Age is never a reason to throw seed away: what is doubtful is tested.
fn advice(packet: &PacketState, learnt: &Learnt, today: NaiveDate) -> Say {
    let worth = outlook_of(packet, learnt, today).map(|worth| worth.outlook.mean());
    let key = match (packet.seeds_left(), worth) {
        (Some(0), _) => "stock-empty",
        (_, None) => "stock-unknown",
        (_, Some(worth)) if worth >= DOUBTFUL => "stock-good",
        (Some(left), _) if left < ENOUGH_TO_TEST => "stock-few",
        _ => "stock-test",
    };
    Say::new(key)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::world::{World, day};
    use plumule_journal::state::StockAt;
    use plumule_journal::words::{Container, PlaceKind, Stock};

    fn packet(world: &mut World) -> PacketState {
        let place = world.place(PlaceKind::Windowsill, 18.0, 18.0);
        let tray = world.tray(Container::Cells, place, "2026-03-02 08:00");
        let sowing = world.sow("tomato", 12, tray, 12, "2026-03-02 08:00");
        let id = world.picture.sowings[&sowing].packet();
        world.picture.packets[&id].clone()
    }

    #[test]
    fn it_is_in_december_and_in_the_south_in_june() {
        let mut world = World::new();
        for (today, first) in [
            ("2026-11-30", "2025-12-01"),
            ("2026-12-01", "2026-12-01"),
            ("2027-02-14", "2026-12-01"),
        ] {
            assert_eq!(last_began(&world.picture, day(today)), day(first));
        }
        world.garden().latitude = Some(-37.0);
        assert_eq!(
            last_began(&world.picture, day("2026-11-30")),
            day("2026-06-01")
        );
    }

    #[test]
    fn a_packet_is_gone_through_once_a_year() {
        let mut world = World::new();
        let mut packet = packet(&mut world);
        let from = day("2026-12-01");
        let due = Stocktake::of(std::slice::from_ref(&packet), from).unwrap();
        assert_eq!((due.left, due.opened_by), (1, packet.opened_by.entry));
        packet.stock = Some(StockAt {
            at: world.mark("2026-12-03 10:00"),
            found: Stock::Keep,
        });
        assert_eq!(Stocktake::of(std::slice::from_ref(&packet), from), None);
        let next = Stocktake::of(std::slice::from_ref(&packet), day("2027-12-01")).unwrap();
        assert_ne!(next.opened_by, due.opened_by);
        // What was added since is not due.
        packet.stock = None;
        packet.opened_by = world.mark("2026-12-02 10:00");
        assert_eq!(Stocktake::of(&[packet], from), None);
    }

    #[test]
    fn old_seed_is_tested_not_thrown_away() {
        let mut world = World::new();
        let mut packet = packet(&mut world);
        packet.described.seeds = Some(200);
        let says = |packet: &PacketState| advice(packet, &Learnt::default(), day("2026-12-05")).key;
        assert_eq!(says(&packet), "stock-good");
        packet.described.packed_year = Some(2014);
        assert_eq!(says(&packet), "stock-test");
        packet.described.seeds = Some(31);
        assert_eq!(says(&packet), "stock-few");
        packet.described.seeds = Some(12);
        assert_eq!(says(&packet), "stock-empty");
    }
}

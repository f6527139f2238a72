//! The seed box.

mod buy;
mod now;
mod page;
mod stock;

pub(crate) use buy::{crop_name, on_the_list};
pub(crate) use page::view as page;
pub(crate) use stock::{
    Stocktake, in_season as stocktake_in_season, last_day as stocktake_last_day,
};

use crate::error::AppError;
use crate::growth::{Learnt, outlook_of};
use crate::packet_words;
use crate::picture::Picture;
use crate::view::{PacketRow, SeedView};
use chrono::NaiveDate;
use plumule_agronomy::crops;
use plumule_journal::Journal;
use plumule_journal::stamp::Stamp;
use plumule_journal::state::PacketState;
use plumule_journal::words::Stock;

pub(crate) fn view(journal: &Journal, stamp: &Stamp) -> Result<SeedView, AppError> {
    let (in_use, retired) = boxes(journal)?;
    let picture = Picture::of_packets(journal, stamp, &in_use)?;
    let today = picture.now(stamp).date();
    let rows = in_use.iter().chain(&retired);
    Ok(SeedView {
        packets: rows.map(|packet| row(&picture, packet, today)).collect(),
        crops: crop_keys(),
        sow_now: now::sow_now(&picture, &in_use, today),
        season_known: now::last_frost(&picture).is_some(),
        stocktake: stock::view(&picture, &in_use, today),
        to_buy: buy::view(journal, &picture, (&in_use, &retired), today)?,
    })
}

/// Those in use and those no longer used, the last sown or added first: ids
/// rise with time.
fn boxes(journal: &Journal) -> Result<(Vec<PacketState>, Vec<PacketState>), AppError> {
    let mut packets = journal.packets()?;
    packets.sort_by_key(|packet| std::cmp::Reverse(last_used(packet)));
    Ok(packets
        .into_iter()
        .partition(|packet| !packet.described.retired))
}

fn last_used(packet: &PacketState) -> uuid::Uuid {
    let added = packet.opened_by.entry.0;
    packet
        .sowings
        .last()
        .map_or(added, |sowing| added.max(sowing.0))
}

pub(crate) fn crop_keys() -> Vec<String> {
    crops().iter().map(|crop| crop.key.clone()).collect()
}

/// What a packet no longer used is worth is not reckoned.
fn row(picture: &Picture, packet: &PacketState, today: NaiveDate) -> PacketRow {
    let described = &packet.described;
    let learnt = Learnt::of(picture, packet);
    let mut line = packet_words::line(packet, &learnt, today);
    if described.retired {
        line.germination = None;
    }
    PacketRow {
        line,
        saved: described.packed_year.is_none() && described.harvested_year.is_some(),
        worth: outlook_of(packet, &learnt, today)
            .filter(|_| !described.retired)
            .map(|worth| worth.outlook.mean()),
        storage: described.storage.as_str().to_owned(),
        treated: described.treated,
        f1: described.f1,
        testing: packet.tests.iter().any(|test| test.closed.is_none()),
        to_test: to_test(packet),
        retired: described.retired,
        source: described.source.clone(),
    }
}

/// The stocktake said to test it, and no test was begun since.
fn to_test(packet: &PacketState) -> bool {
    packet.stock.as_ref().is_some_and(|stock| {
        let said = stock.at.at.instant();
        let mut tests = packet.tests.iter();
        stock.found == Stock::Test && !tests.any(|test| test.started.at.instant() >= said)
    })
}

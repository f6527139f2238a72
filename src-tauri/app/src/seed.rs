//! The packets.

use crate::error::AppError;
use crate::packet_words;
use crate::view::{PacketPage, SeedView};
use chrono::NaiveDate;
use plumule_agronomy::crops;
use plumule_journal::Journal;
use plumule_journal::state::PacketState;

pub(crate) fn view(journal: &Journal, today: NaiveDate) -> Result<SeedView, AppError> {
    let mut packets: Vec<PacketState> = journal
        .packets()?
        .into_iter()
        .filter(|packet| !packet.described.retired)
        .collect();
    packets.sort_by_cached_key(|packet| {
        let described = &packet.described;
        (
            described.crop.to_lowercase(),
            described.variety.to_lowercase(),
            described.packet,
        )
    });
    Ok(SeedView {
        packets: packets.iter().map(|packet| page(packet, today)).collect(),
        crops: crops().iter().map(|crop| crop.key.clone()).collect(),
    })
}

fn page(packet: &PacketState, today: NaiveDate) -> PacketPage {
    PacketPage {
        line: packet_words::line(packet, today),
        outlook: packet_words::outlook(packet, today),
        sowings: u32::try_from(packet.sowings.len()).unwrap_or(u32::MAX),
        described: packet_words::form(&packet.described),
    }
}

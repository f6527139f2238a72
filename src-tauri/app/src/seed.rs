//! The packets.

use crate::error::AppError;
use crate::growth::Learnt;
use crate::packet_words;
use crate::picture::Picture;
use crate::view::{PacketPage, SeedView};
use chrono::NaiveDate;
use plumule_agronomy::crops;
use plumule_journal::Journal;
use plumule_journal::stamp::Stamp;
use plumule_journal::state::PacketState;

pub(crate) fn view(journal: &Journal, stamp: &Stamp) -> Result<SeedView, AppError> {
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
    let picture = Picture::of_packets(journal, stamp, &packets)?;
    let today = picture.now(stamp).date();
    let pages = packets.iter();
    Ok(SeedView {
        packets: pages.map(|packet| page(&picture, packet, today)).collect(),
        crops: crops().iter().map(|crop| crop.key.clone()).collect(),
    })
}

fn page(picture: &Picture, packet: &PacketState, today: NaiveDate) -> PacketPage {
    let learnt = Learnt::of(picture, packet);
    PacketPage {
        line: packet_words::line(packet, &learnt, today),
        outlook: packet_words::outlook(packet, &learnt, today),
        own: packet_words::own(&learnt),
        sowings: u32::try_from(packet.sowings.len()).unwrap_or(u32::MAX),
        described: packet_words::form(&packet.described),
    }
}

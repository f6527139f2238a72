//! The Sow screen: what could be sown, where, and what would come of it.

use crate::error::AppError;
use crate::growth::{Learnt, growth_in, outlook_of};
use crate::packet_words::{self, cautions};
use crate::picture::Picture;
use crate::round::place_head;
use crate::settings::range;
use crate::trays::{code_order, taken_cells};
use crate::view::{BenchPlace, BenchView, Chosen, FreeTray, RangeView};
use chrono::{NaiveDate, NaiveDateTime};
use plumule_agronomy::{CONFIDENCE, crops, seeds_to_sow};
use plumule_journal::Journal;
use plumule_journal::id::PacketId;
use plumule_journal::stamp::Stamp;
use plumule_journal::state::{PacketState, PlaceState, TrayState};
use plumule_journal::words::PlaceKind;

/// Plants wanted, at most, that seeds are reckoned for.
const MOST_WANTED: u32 = 100;

/// Seeds in a sowing that is only thought of (judgement: a tray of cells).
const SEEDS: u32 = 24;

pub(crate) fn view(
    journal: &Journal,
    stamp: &Stamp,
    chosen: Option<&str>,
) -> Result<BenchView, AppError> {
    let mut picture = Picture::of_the_living(journal, stamp)?;
    let packets = packets(journal)?;
    picture.learn_of(journal, stamp, &packets)?;
    let now = picture.now(stamp);
    let chosen = match chosen {
        Some(id) => Some(packet(journal, id)?),
        None => None,
    };
    Ok(BenchView {
        packets: packets
            .iter()
            .map(|packet| packet_words::line(packet, &Learnt::of(&picture, packet), now.date()))
            .collect(),
        places: picture
            .walk()
            .into_iter()
            .filter(|place| !place.described.retired)
            .map(|place| bench_place(&picture, place, chosen.as_ref(), now))
            .collect(),
        trays: free_trays(&picture),
        next_code: journal.next_code()?,
        chosen: chosen.map(|packet| about(&picture, &packet, now.date())),
    })
}

fn packet(journal: &Journal, id: &str) -> Result<PacketState, AppError> {
    let wrong = || AppError::bad_request(id);
    let packet: PacketId = id.parse().map_err(|_| wrong())?;
    journal.packet(packet)?.ok_or_else(wrong)
}

/// Those in use, the last sown or added first: ids rise with time.
fn packets(journal: &Journal) -> Result<Vec<PacketState>, AppError> {
    let mut packets: Vec<PacketState> = journal
        .packets()?
        .into_iter()
        .filter(|packet| !packet.described.retired)
        .collect();
    packets.sort_by_key(|packet| {
        let added = packet.opened_by.entry.0;
        let sown = packet.sowings.last().map_or(added, |sowing| sowing.0);
        std::cmp::Reverse(added.max(sown))
    });
    Ok(packets)
}

fn bench_place(
    picture: &Picture,
    place: &PlaceState,
    chosen: Option<&PacketState>,
    now: NaiveDateTime,
) -> BenchPlace {
    let growth = chosen.and_then(|packet| {
        let learnt = Learnt::of(picture, packet);
        let worth = outlook_of(packet, &learnt, now.date())?;
        let seeds = packet
            .seeds_left()
            .map_or(SEEDS, |left| left.clamp(1, SEEDS));
        let (crop, id) = (&packet.described.crop, place.described.place);
        growth_in(picture, crop, seeds, (&worth, &learnt), id, now)
    });
    BenchPlace {
        place: place_head(place),
        usual: growth
            .as_ref()
            .map_or(range(place.described.usual), |growth| growth.range),
        none_comes_up: growth.as_ref().is_some_and(|growth| growth.none_comes_up),
        due: growth.as_ref().map(|growth| growth.due),
        say: growth.map(|growth| growth.say),
    }
}

fn free_trays(picture: &Picture) -> Vec<FreeTray> {
    let mut free: Vec<FreeTray> = picture
        .trays
        .values()
        .filter_map(|tray| free_tray(picture, tray))
        .collect();
    free.sort_by_cached_key(|tray| (code_order(&tray.code), tray.tray.clone()));
    free
}

fn free_tray(picture: &Picture, tray: &TrayState) -> Option<FreeTray> {
    let taken: Vec<u16> = taken_cells(picture, tray).into_iter().collect();
    let cells = usize::from(tray.described.rows) * usize::from(tray.described.columns);
    (taken.len() < cells).then(|| FreeTray {
        tray: tray.described.tray.to_string(),
        code: tray.described.code.clone(),
        container: tray.described.container.as_str().to_owned(),
        place: picture.place_of(tray).map(place_head),
        rows: tray.described.rows,
        columns: tray.described.columns,
        taken,
    })
}

fn about(picture: &Picture, packet: &PacketState, today: NaiveDate) -> Chosen {
    let crop = crops().get(&packet.described.crop);
    let heated = picture.places.values().any(|place| {
        place.described.kind == PlaceKind::HeatedPropagator && !place.described.retired
    });
    let learnt = Learnt::of(picture, packet);
    Chosen {
        packet: packet_words::line(packet, &learnt, today),
        outlook: packet_words::outlook(packet, &learnt, today),
        own: packet_words::own(&learnt),
        seeds_for: match outlook_of(packet, &learnt, today) {
            Some(worth) => (1..=MOST_WANTED)
                .map(|wanted| {
                    seeds_to_sow(wanted, CONFIDENCE, worth.outlook)
                        .ok()
                        .flatten()
                })
                .collect(),
            None => vec![None; MOST_WANTED as usize],
        },
        depth_mm: crop.map(|crop| [crop.depth_mm.0, crop.depth_mm.1]),
        seed_mm: crop.map(|crop| [crop.seed_length_mm, crop.seed_thickness_mm]),
        light: crop.and_then(packet_words::light),
        recommended: crop.map(|crop| RangeView {
            min_c: crop.recommended_c.0,
            max_c: crop.recommended_c.1,
        }),
        cautions: cautions(&packet.described, heated),
    }
}

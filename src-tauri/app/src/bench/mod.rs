//! The Sow screen: what could be sown, where, and what would come of it.

mod enough;
mod last;
#[cfg(test)]
mod tests;
mod warnings;

pub(crate) use enough::{seeds as seeds_enough, view as enough};

use crate::error::AppError;
use crate::growth::{Learnt, growth_in, outlook_of};
use crate::packet_words::{self, cautions};
use crate::picture::Picture;
use crate::round::place_head;
use crate::say::Say;
use crate::season::season_view;
use crate::settings::range;
use crate::trays::{code_order, taken_cells};
use crate::view::{BenchPlace, BenchView, Chosen, CompostAdvice, FreeTray, RangeView};
use crate::words;
use chrono::{NaiveDate, NaiveDateTime};
use plumule_agronomy::{Crop, LightNeed, SowingCompost, crops};
use plumule_journal::Journal;
use plumule_journal::id::PacketId;
use plumule_journal::stamp::Stamp;
use plumule_journal::state::{PacketState, PlaceState, TrayState};
use plumule_journal::words::{Compost, PlaceKind};
use std::cmp::Reverse;

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
    let mut places: Vec<BenchPlace> = picture
        .walk()
        .into_iter()
        .filter(|place| !place.described.retired)
        .map(|place| bench_place(&picture, place, chosen.as_ref(), now))
        .collect();
    mark_best(&mut places, chosen.as_ref());
    Ok(BenchView {
        trays: free_trays(&picture, &places, chosen.as_ref(), now),
        last: last::last(journal, &picture, &packets)?,
        packets: packets
            .iter()
            .map(|packet| packet_words::line(packet, &Learnt::of(&picture, packet), now.date()))
            .collect(),
        places,
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
        Reverse(added.max(sown))
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
        let (described, id) = (&packet.described, place.described.place);
        growth_in(picture, described, seeds, (&worth, &learnt), id, now)
    });
    let crop = chosen.and_then(book_crop);
    let warnings = match (crop, &growth) {
        (Some(crop), Some(growth)) => {
            let range = (growth.range.min_c, growth.range.max_c);
            warnings::of_place(picture, &place.described, crop, growth.due, range)
        }
        _ => Vec::new(),
    };
    BenchPlace {
        place: place_head(place),
        best: false,
        warnings,
        usual: growth
            .as_ref()
            .map_or(range(place.described.usual), |growth| growth.range),
        none_comes_up: growth.as_ref().is_some_and(|growth| growth.none_comes_up),
        due: growth.as_ref().map(|growth| growth.due),
        say: growth.map(|growth| growth.say),
    }
}

fn book_crop(packet: &PacketState) -> Option<&'static Crop> {
    crops().get(&packet.described.crop)
}

/// The one where light is no trouble, whose mean lies in the warmth recommended
/// for the crop, and where half are up soonest; walking order is kept.
fn mark_best(places: &mut [BenchPlace], chosen: Option<&PacketState>) {
    let Some(crop) = chosen.and_then(book_crop) else {
        return;
    };
    let (low, high) = crop.recommended_c;
    let suits = |place: &BenchPlace| {
        let half = place.due.filter(|_| !place.none_comes_up)?.d50?;
        let mean = place.usual.min_c.midpoint(place.usual.max_c);
        let dark = place.warnings.iter().any(|it| it.code == "wants_light");
        Some((dark, !(low..=high).contains(&mean), half))
    };
    let best = places
        .iter_mut()
        .filter_map(|place| Some((suits(place)?, place)))
        .min_by_key(|(suits, _)| *suits);
    if let Some((_, place)) = best {
        place.best = true;
    }
}

fn free_trays(
    picture: &Picture,
    places: &[BenchPlace],
    chosen: Option<&PacketState>,
    now: NaiveDateTime,
) -> Vec<FreeTray> {
    let mut free: Vec<FreeTray> = picture
        .trays
        .values()
        .filter_map(|tray| {
            let mut free = free_tray(picture, tray)?;
            if let Some(crop) = chosen.and_then(book_crop) {
                let there = free.place.as_ref().map(|place| &place.id);
                let place = places.iter().find(|it| Some(&it.place.id) == there);
                let half = place.and_then(|place| place.due?.d50);
                free.warnings = warnings::of_tray(picture, tray, crop, half, now);
            }
            Some(free)
        })
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
        warnings: Vec::new(),
    })
}

fn about(picture: &Picture, packet: &PacketState, today: NaiveDate) -> Chosen {
    let crop = book_crop(packet);
    let buried = crop.is_some_and(|crop| crop.light == LightNeed::Needed);
    let heated = picture.places.values().any(|place| {
        place.described.kind == PlaceKind::HeatedPropagator && !place.described.retired
    });
    let learnt = Learnt::of(picture, packet);
    Chosen {
        packet: packet_words::line(packet, &learnt, today),
        outlook: packet_words::outlook(packet, &learnt, today),
        own: packet_words::own(&learnt),
        depth_mm: crop.map(|crop| [crop.depth_mm.0, crop.depth_mm.1]),
        before_sowing: crop.map(packet_words::before_sowing).unwrap_or_default(),
        wants: crop.map(packet_words::wants).unwrap_or_default(),
        too_shallow: Say::new("warn-too-shallow"),
        too_deep: Say::new(if buried {
            "warn-buried"
        } else {
            "warn-too-deep"
        }),
        compost: crop.map(compost),
        season: crop.and_then(|crop| season_view(picture, crop, today)),
        growing_on: crop.map(packet_words::growing_on),
        seed_mm: crop.map(|crop| [crop.seed_length_mm, crop.seed_thickness_mm]),
        light: crop.and_then(packet_words::light),
        recommended: crop.map(|crop| RangeView {
            min_c: crop.recommended_c.0,
            max_c: crop.recommended_c.1,
        }),
        cautions: cautions(&packet.described, heated),
        warnings: crop
            .and_then(|crop| warnings::of_season(picture, crop, today))
            .into_iter()
            .collect(),
    }
}

fn compost(crop: &Crop) -> CompostAdvice {
    let compost = match crop.compost {
        SowingCompost::FineSeed | SowingCompost::Gritty => Compost::Seed,
        SowingCompost::MultiPurpose => Compost::MultiPurpose,
    };
    CompostAdvice {
        compost: compost.as_str().to_owned(),
        say: Say::new(words::key("compost-wanted", crop.compost.key())),
        unsuited: warnings::of_composts(crop),
    }
}

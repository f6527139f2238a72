//! Packets in words: what they are worth, what they want, what to beware of.

use crate::growth::{Learnt, outlook_of};
use crate::say::{Arg, Say};
use crate::view::{CropName, PacketForm, PacketLine};
use crate::words::{key, word};
use chrono::NaiveDate;
use plumule_agronomy::{Crop, LightNeed, crops};
use plumule_journal::content::PacketDescribed;
use plumule_journal::state::PacketState;

/// The share of the odds inside the span that is shown.
const SPAN: f64 = 0.8;

pub(crate) fn line(packet: &PacketState, learnt: &Learnt, today: NaiveDate) -> PacketLine {
    let described = &packet.described;
    PacketLine {
        packet: described.packet.to_string(),
        crop: CropName {
            key: described.crop.clone(),
            known: crops().get(&described.crop).is_some(),
        },
        variety: described.variety.clone(),
        year: described.packed_year.or(described.harvested_year),
        germination: span(packet, learnt, today).map(|(low, high)| [low, high]),
        seeds_left: packet.seeds_left(),
    }
}

fn span(packet: &PacketState, learnt: &Learnt, today: NaiveDate) -> Option<(f64, f64)> {
    outlook_of(packet, learnt, today)?.outlook.span(SPAN).ok()
}

/// What is likely to come up of it, and why.
pub(crate) fn outlook(packet: &PacketState, learnt: &Learnt, today: NaiveDate) -> Option<Say> {
    let described = &packet.described;
    let crop = crops().get(&described.crop)?;
    let (low, high) = span(packet, learnt, today)?;
    let tenths = |share: f64| (share * 10.0).round();
    let kind = if tenths(high) < 1.0 {
        "few"
    } else if tenths(low) < tenths(high) {
        "span"
    } else {
        "about"
    };
    let (since, year) = match (described.packed_year, described.harvested_year) {
        (Some(year), _) => ("-packed", Some(year)),
        (None, Some(year)) => ("-harvested", Some(year)),
        (None, None) => ("", None),
    };
    let say = Say::new(format!("outlook-{kind}{since}"))
        .with("low", Arg::Number(tenths(low)))
        .with("high", Arg::Number(tenths(high)));
    Some(match year {
        // As text: a year has no separator of thousands.
        Some(year) => say
            .with("year", Arg::Text(year.to_string()))
            .with("storage", word("storage", described.storage.as_str()))
            .with("life", Arg::Number(crop.life_years)),
        None => say,
    })
}

/// What came up of it so far, where that was told.
pub(crate) fn own(learnt: &Learnt) -> Option<Say> {
    let (sowings, up, of) = learnt.own()?;
    let number = |number: u32| Arg::Number(f64::from(number));
    Some(
        Say::new("outlook-own")
            .with("sowings", Arg::Number(sowings as f64))
            .with("up", number(up))
            .with("of", number(of)),
    )
}

/// Its need of light, where it has one.
pub(crate) fn light(crop: &Crop) -> Option<Say> {
    match crop.light {
        LightNeed::Needed => Some(Say::new("light-need-needed")),
        LightNeed::Dark => Some(Say::new("light-need-dark")),
        LightNeed::Indifferent => None,
    }
}

pub(crate) fn caution_of_crop(crop: &Crop) -> Option<Say> {
    crop.caution
        .map(|caution| Say::new(key("caution", caution.key())))
}

/// What to beware of at the bench: the dust always.
pub(crate) fn cautions(described: &PacketDescribed, heated: bool) -> Vec<Say> {
    let crop = crops().get(&described.crop);
    [
        described.treated.then(|| Say::new("caution-treated-seed")),
        crop.and_then(caution_of_crop),
        heated.then(|| Say::new("caution-electricity")),
        Some(Say::new("caution-compost-dust")),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// All that it was described with, for editing.
pub(crate) fn form(described: &PacketDescribed) -> PacketForm {
    PacketForm {
        crop: described.crop.clone(),
        variety: described.variety.clone(),
        packed_year: described.packed_year,
        harvested_year: described.harvested_year,
        stated_germination: described.stated_germination,
        seeds: described.seeds,
        storage: described.storage.as_str().to_owned(),
        treated: described.treated,
        source: described.source.clone(),
        note: described.note.clone(),
    }
}

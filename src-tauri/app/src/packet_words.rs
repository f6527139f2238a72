//! Packets in words: what they are worth, what they want, what to beware of.

use crate::growth::{Learnt, outlook_of, stated_pace};
use crate::say::{Arg, Say};
use crate::settings::range;
use crate::stage::reference;
use crate::view::{CropName, PacketForm, PacketLine, StatedDaysForm, TreatmentWanted};
use crate::words::{key, word};
use chrono::NaiveDate;
use plumule_agronomy::{Crop, LightNeed, MaturityFrom, Treatment, crops};
use plumule_journal::content::PacketDescribed;
use plumule_journal::state::PacketState;

/// A pace that is off by less is as usual (judgement).
const PACE_WORTH_A_WORD: f64 = 0.05;

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
        source: described.source.clone(),
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

/// How fast it came up so far against what is usual, where that tells.
pub(crate) fn pace(learnt: &Learnt, crop: &Crop, described: &PacketDescribed) -> Option<Say> {
    let pace = learnt.pace(crop, described)?;
    Some(
        against_usual("learnt-pace", pace.factor)
            .with("others", Arg::Number(f64::from(u8::from(pace.of_crop))))
            .with("crop", crate::words::crop(&crop.key)),
    )
}

/// What the days stated on it are reckoned as, where there are any.
pub(crate) fn stated(described: &PacketDescribed) -> Option<Say> {
    described.stated_days?;
    let crop = crops().get(&described.crop)?;
    let say = match stated_pace(crop, described) {
        Some(mean_ln) => against_usual("stated-pace", mean_ln.exp()),
        None => Say::new("stated-pace-none"),
    };
    Some(say.with("crop", crate::words::crop(&crop.key)))
}

/// A pace in words; the usual is 1.
fn against_usual(set: &str, factor: f64) -> Say {
    let off = factor - 1.0;
    let which = if off.abs() < PACE_WORTH_A_WORD {
        "usual"
    } else if off > 0.0 {
        "slower"
    } else {
        "quicker"
    };
    Say::new(format!("{set}-{which}")).with("share", Arg::Share(off.abs()))
}

/// Its need of light, where it has one.
pub(crate) fn light(crop: &Crop) -> Option<Say> {
    match crop.light {
        LightNeed::Needed => Some(Say::new("light-need-needed")),
        LightNeed::Dark => Some(Say::new("light-need-dark")),
        LightNeed::Indifferent => None,
    }
}

/// What it wants before it is sown.
pub(crate) fn wants(crop: &Crop) -> TreatmentWanted {
    let mut wanted = TreatmentWanted::default();
    for treatment in &crop.before_sowing {
        match *treatment {
            Treatment::SoakHours((least, most)) => wanted.soak_hours = Some([least, most]),
            Treatment::Chip => wanted.chip = true,
            Treatment::ColdWeeks((least, most)) => wanted.cold_weeks = Some([least, most]),
        }
    }
    wanted
}

/// The same in words, a sentence each.
pub(crate) fn before_sowing(crop: &Crop) -> Vec<Say> {
    let wanted = wants(crop);
    let span = |key: &str, span: [f64; 2]| {
        let [low, high] = span.map(Arg::Number);
        Say::new(key).with("low", low).with("high", high)
    };
    [
        wanted.chip.then(|| Say::new("treatment-chip")),
        wanted.soak_hours.map(|hours| {
            let key = if wanted.chip {
                "treatment-or-soak-hours"
            } else {
                "treatment-soak-hours"
            };
            span(key, hours)
        }),
        wanted
            .cold_weeks
            .map(|weeks| span("treatment-cold-weeks", weeks)),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// At what temperatures it grows on once it is up, and how long to its first
/// harvest or flower.
pub(crate) fn growing_on(crop: &Crop) -> Say {
    let on = crop.growing_on_c;
    let say = Say::new(match crop.maturity.map(|maturity| maturity.from) {
        Some(MaturityFrom::Sowing) => "bench-growing-on-sown",
        Some(MaturityFrom::PlantingOut) => "bench-growing-on-planted",
        None => "bench-growing-on",
    })
    .with("day", Arg::Celsius(on.day.0.midpoint(on.day.1).round()))
    .with(
        "night",
        Arg::Celsius(on.night.0.midpoint(on.night.1).round()),
    );
    match crop.maturity {
        Some(maturity) => say
            .with("from", Arg::Number(maturity.days.0))
            .with("to", Arg::Number(maturity.days.1)),
        None => say,
    }
}

pub(crate) fn caution_of_crop(crop: &Crop) -> Option<Say> {
    crop.caution
        .map(|caution| Say::new(key("caution", caution.key())))
}

/// What to beware of at the bench: the dust always.
pub(crate) fn cautions(described: &PacketDescribed, heated: bool) -> Vec<Say> {
    let of_it = cautions_of(described).into_iter().map(Some);
    let bench = [
        heated.then(|| Say::new("caution-electricity")),
        Some(Say::new("caution-compost-dust")),
    ];
    of_it.chain(bench).flatten().collect()
}

/// What to beware of at the packet.
pub(crate) fn cautions_of(described: &PacketDescribed) -> Vec<Say> {
    let crop = crops().get(&described.crop);
    let treated = described.treated.then(|| Say::new("caution-treated-seed"));
    treated
        .into_iter()
        .chain(crop.and_then(caution_of_crop))
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
        stated_days: described.stated_days.map(|stated| StatedDaysForm {
            from: stated.from,
            to: stated.to,
            at: stated.at.map(range),
        }),
        seeds: described.seeds,
        storage: described.storage.as_str().to_owned(),
        treated: described.treated,
        source: described.source.clone(),
        note: described.note.clone(),
        sow_by: described.sow_by,
        f1: described.f1,
        saved_from: described.saved_from.map(reference),
        price: described.price.clone(),
    }
}

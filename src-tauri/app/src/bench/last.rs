//! The last sowing, to do the same again.

use crate::acts::{Act, SeedsAnswer, TreatmentForm};
use crate::error::AppError;
use crate::picture::Picture;
use crate::say::{Arg, Say};
use crate::view::{CropName, LastSown, TrayChoice};
use plumule_agronomy::crops;
use plumule_journal::Journal;
use plumule_journal::content::Seeds;
use plumule_journal::state::PacketState;

/// None where nothing was sown from a packet in use, or its place is no more in
/// use.
pub(super) fn last(
    journal: &Journal,
    picture: &Picture,
    packets: &[PacketState],
) -> Result<Option<LastSown>, AppError> {
    let sown = packets
        .iter()
        .filter_map(|packet| Some((*packet.sowings.last()?, packet)));
    let Some((id, packet)) = sown.max_by_key(|(id, _)| *id) else {
        return Ok(None);
    };
    let Some(sowing) = journal.sowing(id)? else {
        return Ok(None);
    };
    let Some(tray) = journal.tray(sowing.sown.tray)? else {
        return Ok(None);
    };
    let first = tray.stays.first().map(|stay| stay.place);
    let place = first
        .and_then(|id| picture.places.get(&id))
        .filter(|place| !place.described.retired);
    let Some(place) = place else {
        return Ok(None);
    };
    let began = sowing.opened_by.at.local;
    let covered = tray.covers.iter().rfind(|cover| cover.at.at.local <= began);
    let sown = &sowing.sown;
    let seeds = match sown.seeds {
        Seeds::Exact(number) => SeedsAnswer::Exact(number),
        Seeds::About(number) => SeedsAnswer::About(number),
        Seeds::Pinch => SeedsAnswer::Pinch,
    };
    let say = match seeds {
        SeedsAnswer::Exact(number) | SeedsAnswer::About(number) => {
            Say::new("last-sown").with("seeds", Arg::Number(f64::from(number)))
        }
        SeedsAnswer::Pinch => Say::new("last-sown-pinch"),
    };
    Ok(Some(LastSown {
        crop: CropName {
            key: packet.described.crop.clone(),
            known: crops().get(&packet.described.crop).is_some(),
        },
        variety: packet.described.variety.clone(),
        say: say
            .with("cells", Arg::Number(sown.cells.len() as f64))
            .with("place", Arg::Text(place.described.name.clone())),
        act: Act::Sow {
            packet: packet.described.packet.to_string(),
            into: TrayChoice::New {
                code: None,
                container: tray.described.container.as_str().to_owned(),
                rows: tray.described.rows,
                columns: tray.described.columns,
                compost: tray.described.compost.as_str().to_owned(),
                place: place.described.place.to_string(),
                covered: covered.is_some_and(|cover| cover.on),
            },
            cells: sown.cells.iter().copied().collect(),
            seeds,
            depth_mm: sown.depth_mm,
            wanted: sown.wanted,
            again_of: Some(sown.sowing.to_string()),
            treatment: TreatmentForm {
                soaked_hours: sown.treatment.soaked_hours,
                chipped: sown.treatment.chipped,
                cold_weeks: sown.treatment.cold_weeks,
            },
            plan: None,
        },
    }))
}

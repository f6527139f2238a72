//! Packets, places, the garden, notes.

use super::parse::{known, maybe, month_day, range, time};
use super::{Made, Maker};
use crate::error::AppError;
use crate::view::{GardenForm, PacketForm, PlaceForm};
use chrono::NaiveDate;
use chrono_tz::Tz;
use plumule_journal::content::{
    Away, Content, GardenDescribed, Noted, PacketDescribed, PlaceDescribed,
};
use plumule_journal::id::{PacketId, PlaceId};

impl Maker<'_> {
    pub(super) fn add_packet(&mut self, form: &PacketForm) -> Result<Made, AppError> {
        let packet = PacketId(self.ids.next());
        packet_described(packet, form, None, false)
    }

    pub(super) fn describe_packet(
        &self,
        id: &str,
        form: &PacketForm,
        retired: bool,
    ) -> Result<Made, AppError> {
        let packet = known(id)?;
        let before = self
            .journal
            .packet(packet)?
            .ok_or_else(|| AppError::bad_request(id))?;
        packet_described(packet, form, before.described.sow_by, retired)
    }

    pub(super) fn describe_place(&mut self, form: &PlaceForm) -> Result<Made, AppError> {
        let place = match maybe(form.id.as_deref())? {
            Some(place) => place,
            None => PlaceId(self.ids.next()),
        };
        Ok(Made {
            place: Some(place),
            ..Made::one(Content::PlaceDescribed(PlaceDescribed {
                place,
                name: form.name.trim().to_owned(),
                kind: known(&form.kind)?,
                usual: range(form.usual),
                unheated: form.unheated.map(range),
                light: known(&form.light)?,
                covered: form.covered,
                position: form.position,
                retired: form.retired,
            }))
        })
    }

    /// Describes each place anew whose turn in the walk changes.
    pub(super) fn order_places(&self, order: &[String]) -> Result<Made, AppError> {
        let mut contents = Vec::new();
        for (id, position) in order.iter().zip(1..) {
            let place = self.journal.place(known(id)?)?;
            let described = place.ok_or_else(|| AppError::bad_request(id))?.described;
            if described.position != position {
                contents.push(Content::PlaceDescribed(PlaceDescribed {
                    position,
                    ..described
                }));
            }
        }
        Ok(Made {
            contents,
            ..Made::default()
        })
    }
}

fn packet_described(
    packet: PacketId,
    form: &PacketForm,
    sow_by: Option<NaiveDate>,
    retired: bool,
) -> Result<Made, AppError> {
    Ok(Made {
        packet: Some(packet),
        ..Made::one(Content::PacketDescribed(PacketDescribed {
            packet,
            crop: form.crop.trim().to_owned(),
            variety: form.variety.trim().to_owned(),
            packed_year: form.packed_year,
            harvested_year: form.harvested_year,
            sow_by,
            stated_germination: form.stated_germination,
            seeds: form.seeds,
            storage: known(&form.storage)?,
            treated: form.treated,
            source: form.source.trim().to_owned(),
            note: form.note.trim().to_owned(),
            retired,
        }))
    })
}

pub(super) fn garden(form: &GardenForm) -> Result<Made, AppError> {
    let zone: Tz = form
        .zone
        .trim()
        .parse()
        .map_err(|_| AppError::of_text("bad_zone", &form.zone))?;
    Ok(Made::one(Content::GardenDescribed(GardenDescribed {
        zone: zone.name().to_owned(),
        latitude: form.latitude,
        last_frost: month_day(form.last_frost.as_deref())?,
        first_frost: month_day(form.first_frost.as_deref())?,
        morning: time(&form.morning)?,
        evening: time(&form.evening)?,
    })))
}

pub(super) fn away(from: NaiveDate, to: NaiveDate) -> Made {
    Made::one(Content::Away(Away { from, to }))
}

pub(super) fn note(about: &str, text: &str) -> Result<Made, AppError> {
    Ok(Made::one(Content::Noted(Noted {
        about: known(about)?,
        text: text.to_owned(),
    })))
}

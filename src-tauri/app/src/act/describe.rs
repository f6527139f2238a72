//! Places, the garden, notes.

use super::parse::{known, maybe, month_day, range, time};
use super::{Made, Maker};
use crate::error::AppError;
use crate::view::{GardenForm, PlaceForm};
use chrono_tz::Tz;
use plumule_journal::content::{Content, GardenDescribed, Noted, PhotoNamed, PlaceDescribed};
use plumule_journal::id::PlaceId;

impl Maker<'_> {
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

pub(super) fn note(about: &str, text: &str) -> Result<Made, AppError> {
    Ok(Made::one(Content::Noted(Noted {
        about: known(about)?,
        text: text.to_owned(),
    })))
}

pub(super) fn name_photo(photo: &str, about: &str) -> Result<Made, AppError> {
    Ok(Made::one(Content::PhotoNamed(PhotoNamed {
        taken: known(photo)?,
        about: known(about)?,
    })))
}

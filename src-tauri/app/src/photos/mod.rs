//! Photos on their way in: looked at before anything is decoded, turned
//! upright, scaled, and written anew without a trace of where and by what they
//! were taken. The time they were taken is kept as a value.

mod check;
mod files;
mod picture;

pub use files::{read, sweep};

use crate::act::{Made, known, maybe};
use crate::app::{App, answer, entry};
use crate::error::AppError;
use crate::line;
use crate::names::Names;
use crate::view::{Answer, PhotoView};
use chrono::NaiveDateTime;
use image::GrayImage;
use plumule_journal::content::{Content, PhotoTaken};
use plumule_journal::photos::{self, Photo as Kept};
use plumule_journal::stamp::{Happened, Stamp};
use plumule_journal::subject::Subject;
use plumule_journal::{Journal, Wish};
use std::path::Path;

/// The largest file that is looked at, bytes.
pub const MOST_BYTES: usize = 25_000_000;
/// The largest picture that is decoded, pixels.
pub const MOST_PIXELS: u64 = 40_000_000;
/// The longer side of a kept photo, at most, pixels: a leaf's edge can be made
/// out and a season's photos stay small. Judgement.
pub const LONGEST: u32 = 1600;
/// The longer side of a thumbnail, pixels: a third of a phone's width at three
/// pixels a point. Judgement.
pub const THUMBNAIL: u32 = 400;

/// Why a photo is not taken in: `error-<code>`.
pub const CODES: &[&str] = &[
    "photo_empty",
    // megabytes: at most
    "photo_too_large",
    "photo_not_a_picture",
    "photo_other_format",
    "photo_truncated",
    "photo_animated",
    // megapixels: at most
    "photo_too_many_pixels",
    "photo_damaged",
];

/// A photo that was looked at and made ready to be kept.
#[derive(Clone, Debug)]
pub struct Photo {
    /// JPEG without metadata, upright, its longer side at most 1600 pixels.
    jpeg: Vec<u8>,
    /// The same, small.
    thumbnail: Vec<u8>,
    /// When the camera says it was taken.
    taken: Option<NaiveDateTime>,
}

impl Photo {
    /// Looks at the bytes of a JPEG, PNG or WebP file and makes them ready.
    /// Takes a while: it is for a thread where waiting hurts nobody.
    ///
    /// # Errors
    /// One of [`CODES`]; nothing was decoded if it is too large by its header.
    pub fn new(bytes: &[u8]) -> Result<Self, AppError> {
        let decoded = picture::decode(bytes, LONGEST)?;
        Ok(Self {
            jpeg: picture::jpeg(&decoded.upright)?,
            thumbnail: picture::jpeg(&picture::within(decoded.upright, THUMBNAIL))?,
            taken: decoded.taken,
        })
    }

    /// The JPEG that is kept.
    #[must_use]
    pub fn jpeg(&self) -> &[u8] {
        &self.jpeg
    }

    /// When the camera says it was taken, by its own clock.
    #[must_use]
    pub fn taken(&self) -> Option<NaiveDateTime> {
        self.taken
    }
}

/// A photo in shades of grey, upright, for what is read from it.
pub(crate) fn grey(bytes: &[u8]) -> Result<GrayImage, AppError> {
    Ok(picture::decode(bytes, LONGEST)?.upright.into_luma8())
}

/// What a photo is of, when, and by whom.
#[derive(Clone, Debug, Default)]
pub struct OfPhoto {
    /// Subject, as `tray:…`; none: to be named later.
    pub about: Option<String>,
    /// When it happened, local time of the garden; none: now.
    pub happened: Option<NaiveDateTime>,
    /// Whose hand; empty: the device's own.
    pub hand: String,
    /// The questions it raises were answered with yes.
    pub confirmed: bool,
}

impl App {
    /// Takes a photo in: its file is on disk before its entry is.
    ///
    /// # Errors
    /// If the file cannot be written or the journal refuses.
    pub fn add_photo(
        &mut self,
        stamp: &Stamp,
        photo: &Photo,
        of: &OfPhoto,
    ) -> Result<Answer, AppError> {
        let about: Option<Subject> = maybe(of.about.as_deref())?;
        let zone = self.zone(stamp)?;
        let name = photos::keep(self.home(), &photo.jpeg)?;
        files::put_thumbnail(self.home(), &name, &photo.thumbnail);
        let content = Content::PhotoTaken(PhotoTaken {
            photo: name,
            taken: photo.taken,
            about,
        });
        let wish = Wish {
            contents: vec![content.clone()],
            happened: Some(match of.happened {
                Some(local) => Happened::at_local(local, zone),
                None => Happened::at(stamp.now, zone),
            }),
            hand: self.hand(&of.hand)?,
            confirmed: of.confirmed,
        };
        let say = line::line(&Names(self.journal()), &content)?;
        Ok(answer(self.write(stamp, wish)?, say, &Made::default()))
    }

    /// Photos about a subject (as `tray:…`), or those still to be named.
    ///
    /// # Errors
    /// If that is no subject or the journal cannot be read.
    pub fn photos(&self, about: Option<&str>) -> Result<Vec<PhotoView>, AppError> {
        let found = match about {
            Some(about) => self.journal().photos(known(about)?)?,
            None => self.journal().unnamed_photos()?,
        };
        Ok(found.iter().map(|it| shown(self.home(), it)).collect())
    }

    /// Takes a photo out: its entry is withdrawn with what named it, and its
    /// file stays 30 days, so that this can be undone.
    ///
    /// # Errors
    /// If there is no such photo or the journal refuses.
    pub fn remove_photo(&mut self, stamp: &Stamp, id: &str) -> Result<Answer, AppError> {
        let root = entry(id)?;
        if self.journal().photo(root)?.is_none() {
            return Err(AppError::bad_request(id));
        }
        self.withdraw(stamp, id, true)
    }
}

/// A photo that a line of the journal took in or named; none if it is no such
/// line or the photo was withdrawn.
pub(crate) fn of_line(
    journal: &Journal,
    entry: plumule_journal::id::EntryId,
    holds: Option<&Content>,
) -> Result<Option<PhotoView>, AppError> {
    let taken = match holds {
        Some(Content::PhotoTaken(_)) => entry,
        Some(Content::PhotoNamed(what)) => what.taken,
        _ => return Ok(None),
    };
    let kept = journal.photo(taken)?;
    Ok(kept.map(|it| shown(journal.home(), &it)))
}

fn shown(home: &Path, it: &Kept) -> PhotoView {
    PhotoView {
        entry: it.entry.to_string(),
        photo: it.photo.clone(),
        at: it.at.local,
        taken: it.taken,
        hand: it.hand.clone(),
        missing: photos::path(home, &it.photo).is_none_or(|path| !path.exists()),
    }
}

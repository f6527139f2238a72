//! Labels: what stands on them, sheets of them to print, and the tray that a
//! label names.

mod code;
mod find;
mod fit;
mod letters;
mod pdf;
mod qr;
mod stock;

pub use find::read_photo;
pub use stock::STOCKS;

use crate::app::App;
use crate::error::AppError;
use crate::picture::Picture;
use crate::say::Say;
use crate::trays;
use crate::view::{Candidate, FoundLabel, LabelSheet, LabelText, LabelsView, LostLabel, StockView};
use crate::words::{self, Language, Units, short_day};
use chrono::NaiveDate;
use plumule_journal::Journal;
use plumule_journal::id::TrayId;
use plumule_journal::stamp::Stamp;
use plumule_journal::state::TrayState;
use plumule_journal::subject::Plants;

/// The most labels that are printed at once. Judgement.
const MOST: usize = 500;

/// What of the labels may go wrong: `error-<code>`.
pub const CODES: &[&str] = &[
    "nothing_chosen",
    "too_many_labels",
    "label_off_the_paper",
    "label_too_small",
    "label_not_read",
];

impl App {
    /// What the labels screen needs.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn labels(&self, stamp: &Stamp) -> Result<LabelsView, AppError> {
        view(self.journal(), stamp, self.units()?.language)
    }

    /// Labels of trays as PDF.
    ///
    /// # Errors
    /// One of [`CODES`], an unknown tray, or if the journal cannot be read.
    pub fn labels_pdf(&self, stamp: &Stamp, sheet: &LabelSheet) -> Result<Vec<u8>, AppError> {
        pdf(self.journal(), stamp, sheet, self.units()?.language)
    }

    /// The trays of a code as a person types it.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn find_label(&self, stamp: &Stamp, text: &str) -> Result<FoundLabel, AppError> {
        find::by_text(self.journal(), stamp, text)
    }

    /// The tray of a label in a photo, by what [`read_photo`] read there.
    ///
    /// # Errors
    /// `label_not_read` if none of it is ours, or if the journal cannot be read.
    pub fn find_photo(&self, stamp: &Stamp, read: &[String]) -> Result<FoundLabel, AppError> {
        find::by_photo(self.journal(), stamp, read)
    }

    /// Trays that may have lost their label.
    ///
    /// # Errors
    /// If the place is none or the journal cannot be read.
    pub fn lost_label(&self, stamp: &Stamp, lost: &LostLabel) -> Result<Vec<Candidate>, AppError> {
        find::candidates(self.journal(), stamp, lost)
    }
}

fn view(journal: &Journal, stamp: &Stamp, language: Language) -> Result<LabelsView, AppError> {
    let picture = Picture::of_the_living(journal, stamp)?;
    let mut trays: Vec<&TrayState> = picture.trays.values().collect();
    let place = |tray: &TrayState| {
        let place = picture.place_of(tray)?;
        Some((place.described.position, place.described.place))
    };
    trays.sort_by_key(|tray| {
        let place = place(tray);
        (
            place.is_none(),
            place,
            trays::code_order(&tray.described.code),
        )
    });
    let stocks = STOCKS.iter().map(|stock| {
        let (columns, rows) = stock::fits(stock.clone().into()).unwrap_or_default();
        StockView {
            stock: stock.clone().into(),
            columns,
            rows,
        }
    });
    Ok(LabelsView {
        stocks: stocks.collect(),
        trays: trays
            .into_iter()
            .map(|tray| text(&picture, tray, language))
            .collect(),
    })
}

/// A sheet of labels as PDF.
fn pdf(
    journal: &Journal,
    stamp: &Stamp,
    sheet: &LabelSheet,
    language: Language,
) -> Result<Vec<u8>, AppError> {
    if sheet.trays.is_empty() {
        return Err(AppError::plain("nothing_chosen"));
    }
    if sheet.trays.len() > MOST {
        return Err(AppError::plain("too_many_labels"));
    }
    let mut labels = Vec::new();
    for id in &sheet.trays {
        let tray: TrayId = id.parse().map_err(|_| AppError::bad_request(id))?;
        let picture = Picture::of_tray(journal, stamp, tray)?;
        let state = picture
            .trays
            .get(&tray)
            .ok_or_else(|| AppError::bad_request(id))?;
        labels.push((qr::text(tray), text(&picture, state, language)));
    }
    pdf::draw(&labels, sheet)
}

/// What stands on a tray's label: what lives in it, else what did.
fn text(picture: &Picture, tray: &TrayState, language: Language) -> LabelText {
    let (living, past): (Vec<Plants>, Vec<Plants>) = tray
        .occupants
        .iter()
        .map(|occupant| occupant.plants)
        .partition(|plants| trays::lives(picture, *plants));
    let shown = if living.is_empty() { past } else { living };
    let mut names: Vec<String> = Vec::new();
    for plants in &shown {
        let name = name(picture, *plants, language);
        if !names.contains(&name) {
            names.push(name);
        }
    }
    let days: Vec<NaiveDate> = shown.iter().filter_map(|it| began(picture, *it)).collect();
    LabelText {
        tray: tray.described.tray.to_string(),
        code: tray.described.code.clone(),
        names,
        // A label outlives the year.
        date: match (days.iter().min(), days.iter().max()) {
            (Some(first), Some(last)) if first == last => short_day(*first, language),
            (Some(first), Some(last)) => format!(
                "{} – {}",
                short_day(*first, language),
                short_day(*last, language)
            ),
            _ => String::new(),
        },
        place: picture
            .place_of(tray)
            .map(|place| place.described.name.clone())
            .unwrap_or_default(),
    }
}

fn name(picture: &Picture, plants: Plants, language: Language) -> String {
    let (crop, variety) = picture.crop_of(plants).unwrap_or(("?", ""));
    let say = Say::new("label-name")
        .with("crop", words::crop(crop))
        .with("variety", words::variety(variety));
    let units = Units {
        language,
        ..Units::default()
    };
    // It names no day.
    let said = words::render(&say, units, NaiveDate::MIN);
    let mut letters = said.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => said,
    }
}

fn began(picture: &Picture, plants: Plants) -> Option<NaiveDate> {
    let mark = match plants {
        Plants::Sowing(id) => &picture.sowings.get(&id)?.opened_by,
        Plants::Batch(id) => &picture.batches.get(&id)?.opened_by,
    };
    Some(mark.at.local.date())
}

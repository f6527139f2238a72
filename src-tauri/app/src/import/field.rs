//! What a column can be, and how its cells are read.

use super::coded;
use crate::text::fold;
use crate::view::{Coded, PacketForm, RangeView, StatedDaysForm};
use crate::words;
use chrono::{Datelike, NaiveDate};
use plumule_agronomy::crops;
use plumule_journal::words::Storage;
use std::collections::BTreeMap;

/// What a column can be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Field {
    Crop,
    Variety,
    Packed,
    Harvested,
    SowBy,
    Germination,
    Days,
    DaysAt,
    Seeds,
    Storage,
    Treated,
    F1,
    Source,
    Price,
    Note,
    InUse,
}

impl Field {
    pub(super) const ALL: &'static [Self] = &[
        Self::Crop,
        Self::Variety,
        Self::Packed,
        Self::Harvested,
        Self::SowBy,
        Self::Germination,
        Self::Days,
        Self::DaysAt,
        Self::Seeds,
        Self::Storage,
        Self::Treated,
        Self::F1,
        Self::Source,
        Self::Price,
        Self::Note,
        Self::InUse,
    ];

    pub(super) fn key(self) -> &'static str {
        match self {
            Self::Crop => "crop",
            Self::Variety => "variety",
            Self::Packed => "packed",
            Self::Harvested => "harvested",
            Self::SowBy => "sow_by",
            Self::Germination => "stated_germination",
            Self::Days => "stated_days",
            Self::DaysAt => "stated_at_c",
            Self::Seeds => "seeds",
            Self::Storage => "storage",
            Self::Treated => "treated",
            Self::F1 => "f1",
            Self::Source => "source",
            Self::Price => "price",
            Self::Note => "note",
            Self::InUse => "in_use",
        }
    }

    pub(super) fn of_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|field| field.key() == key)
    }

    /// By what the field is called here in any language, else by the usual names
    /// of columns.
    pub(super) fn of_name(name: &str) -> Option<Self> {
        let name = fold(&name.replace(['_', '-'], " "));
        let mut all = Self::ALL.iter().copied();
        all.find(|field| {
            let key = field.key();
            let words = words::in_all_languages(&words::key("import-field", key));
            key.replace('_', " ") == name
                || words.iter().any(|it| fold(it) == name)
                || field.usual_names().contains(&name.as_str())
        })
    }

    /// As tables have them (common practice), folded.
    fn usual_names(self) -> &'static [&'static str] {
        match self {
            Self::Crop => &[
                "plant",
                "kind",
                "species",
                "vegetable",
                "kultur",
                "gemuse",
                "art",
            ],
            Self::Variety => &["cultivar", "sort"],
            Self::Packed => &[
                "year",
                "packed year",
                "bought",
                "jahr",
                "abgefullt",
                "jahrgang",
                "gekauft",
            ],
            Self::Harvested => &[
                "year harvested",
                "saved",
                "harvest year",
                "geerntet",
                "erntejahr",
            ],
            Self::SowBy => &[
                "best before",
                "use by",
                "expiry",
                "haltbar bis",
                "aussaat bis",
                "mhd",
            ],
            Self::Germination => &[
                "germination",
                "germination %",
                "keimfahigkeit",
                "keimfahigkeit %",
                "keimfahigkeit in %",
                "keimrate",
                "keimquote",
            ],
            Self::Days => &[
                "days",
                "days to come up",
                "days to germination",
                "keimdauer",
                "keimdauer in tagen",
                "keimtage",
                "tage",
            ],
            Self::DaysAt => &[
                "germination temperature",
                "soil temperature",
                "keimtemperatur",
                "bodentemperatur",
            ],
            Self::Seeds => &[
                "number",
                "quantity",
                "count",
                "seeds left",
                "samen",
                "anzahl",
                "menge",
                "stuck",
                "korner",
            ],
            Self::Storage => &["stored", "kept", "lager", "gelagert", "aufbewahrung"],
            Self::Treated => &["dressed", "behandelt"],
            Self::F1 => &["hybrid", "hybride"],
            Self::Source => &[
                "supplier",
                "shop",
                "quelle",
                "bezugsquelle",
                "herkunft",
                "lieferant",
                "handler",
            ],
            Self::Price => &["cost", "kosten"],
            Self::Note => &[
                "notes",
                "comment",
                "comments",
                "remarks",
                "notizen",
                "bemerkung",
                "bemerkungen",
                "kommentar",
                "anmerkung",
            ],
            Self::InUse => &["vorhanden"],
        }
    }
}

/// Reads cells; knows the words of crops and of storage.
pub(super) struct Reader {
    crops: BTreeMap<String, String>,
    storages: BTreeMap<String, Storage>,
}

impl Reader {
    pub(super) fn new() -> Self {
        // A table need not be in the language of the device.
        let all_words = |set: &str, key: &str| -> Vec<String> {
            let own = [key.to_owned()].into_iter();
            let all = own.chain(words::in_all_languages(&words::key(set, key)));
            all.map(|word| fold(&word)).collect()
        };
        let crops = crops().iter();
        Self {
            crops: crops
                .flat_map(|crop| {
                    let words = all_words("crop", &crop.key).into_iter();
                    words.map(|name| (name, crop.key.clone()))
                })
                .collect(),
            storages: Storage::ALL
                .iter()
                .flat_map(|it| {
                    let words = all_words("storage", it.as_str()).into_iter();
                    words.map(|name| (name, *it))
                })
                .collect(),
        }
    }

    /// Fills in what a cell says; an empty one says nothing.
    pub(super) fn fill(
        &self,
        form: &mut PacketForm,
        retired: &mut bool,
        field: Field,
        cell: &str,
    ) -> Result<(), Coded> {
        if cell.is_empty() {
            return Ok(());
        }
        match field {
            Field::Crop => {
                let known = self.crops.get(&fold(cell));
                form.crop = known.cloned().unwrap_or_else(|| cell.to_owned());
            }
            Field::Variety => cell.clone_into(&mut form.variety),
            Field::Packed => form.packed_year = Some(year(cell)?),
            Field::Harvested => form.harvested_year = Some(year(cell)?),
            Field::SowBy => {
                form.sow_by = Some(day(cell).ok_or_else(|| coded("no_day", cell))?);
            }
            Field::Germination => form.stated_germination = Some(share(cell)?),
            Field::Days => {
                let whole = |days: f64| (days.fract() == 0.0).then_some(days as u32);
                let read =
                    span(without_unit(cell)).and_then(|(from, to)| whole(from).zip(whole(to)));
                let (from, to) = read.ok_or_else(|| coded("no_days", cell))?;
                let stated = form.stated_days.get_or_insert(NO_DAYS);
                (stated.from, stated.to) = (from, to);
            }
            Field::DaysAt => {
                let read = span(cell.trim_end_matches(['C', '°', ' ']));
                let (min_c, max_c) = read.ok_or_else(|| coded("no_range", cell))?;
                form.stated_days.get_or_insert(NO_DAYS).at = Some(RangeView { min_c, max_c });
            }
            Field::Seeds => form.seeds = Some(whole(cell)?),
            Field::Storage => {
                let storage = self.storages.get(&fold(cell));
                let storage = storage.ok_or_else(|| coded("no_storage", cell))?;
                storage.as_str().clone_into(&mut form.storage);
            }
            Field::Treated => form.treated = yes(cell)?,
            Field::F1 => form.f1 = yes(cell)?,
            Field::Source => cell.clone_into(&mut form.source),
            Field::Price => cell.clone_into(&mut form.price),
            Field::Note => cell.clone_into(&mut form.note),
            Field::InUse => *retired = !yes(cell)?,
        }
        Ok(())
    }
}

/// Of a line that tells the temperature alone; the journal's door refuses it.
const NO_DAYS: StatedDaysForm = StatedDaysForm {
    from: 0,
    to: 0,
    at: None,
};

/// A number of days without the word that says so.
fn without_unit(cell: &str) -> &str {
    let units = ["days", "day", "tagen", "tage", "tag"];
    let mut bare = units.iter().filter_map(|unit| {
        let at = cell.len().checked_sub(unit.len())?;
        let end = cell.get(at..)?;
        cell.get(..at).filter(|_| end.eq_ignore_ascii_case(unit))
    });
    bare.next().unwrap_or(cell).trim_end()
}

/// A lowest and a highest, or one for both: `7`, `7-14`, `7 to 14`, `7 bis 14`.
/// None below 0.
fn span(cell: &str) -> Option<(f64, f64)> {
    let numbers = cell
        .replace("to", "-")
        .replace("bis", "-")
        .replace(',', ".");
    let mut numbers = numbers.split(['-', '–']).map(|it| it.trim().parse().ok());
    let low = numbers.next()??;
    let high = numbers.next().unwrap_or(Some(low))?;
    numbers.next().is_none().then_some((low, high))
}

/// A day as ISO 8601 writes it, or with dots, where the day comes first; with
/// strokes it may be either, and is asked about.
fn day(cell: &str) -> Option<NaiveDate> {
    let dotted = || {
        let day = NaiveDate::parse_from_str(cell, "%d. %m. %Y").ok()?;
        if (0..100).contains(&day.year()) {
            return day.with_year(2000 + day.year());
        }
        Some(day)
    };
    cell.parse().ok().or_else(dotted)
}

/// A year by itself or that of a day.
fn year(cell: &str) -> Result<i32, Coded> {
    let year = cell.parse().ok();
    year.or_else(|| day(cell).map(|day| day.year()))
        .ok_or_else(|| coded("no_year", cell))
}

/// A whole number; a sign that parts threes, blank, point or comma, is none.
fn whole(cell: &str) -> Result<u32, Coded> {
    let digits: String = cell.split_whitespace().collect();
    let mut groups = digits.split(['.', ',']);
    let first = groups.next().unwrap_or_default();
    let threes = groups.clone().all(|group| group.len() == 3);
    let number = if threes && (1..=3).contains(&first.len()) {
        groups.fold(first.to_owned(), |all, group| all + group)
    } else {
        digits
    };
    number.parse().map_err(|_| coded("no_number", cell))
}

/// In per cent, or from 0 to 1 as it is.
fn share(cell: &str) -> Result<f64, Coded> {
    let percent = cell.ends_with('%');
    let number = cell.trim_end_matches('%').trim().replace(',', ".");
    let number: f64 = number.parse().map_err(|_| coded("no_number", cell))?;
    if !number.is_finite() {
        return Err(coded("no_number", cell));
    }
    Ok(if percent || number > 1.0 {
        number / 100.0
    } else {
        number
    })
}

fn yes(cell: &str) -> Result<bool, Coded> {
    match fold(cell).as_str() {
        "yes" | "y" | "true" | "1" | "x" | "f1" | "treated" | "ja" | "j" | "wahr" | "gebeizt" => {
            Ok(true)
        }
        "no" | "n" | "false" | "0" | "-" | "nein" | "falsch" => Ok(false),
        _ => Err(coded("no_yes", cell)),
    }
}

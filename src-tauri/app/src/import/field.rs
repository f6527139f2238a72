//! What a column can be, and how its cells are read.

use super::coded;
use crate::text::fold;
use crate::view::{Coded, PacketForm, RangeView, StatedDaysForm};
use crate::words::{self, Language};
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

    /// By the usual names of columns (common practice).
    pub(super) fn of_name(name: &str) -> Option<Self> {
        let name = fold(&name.replace(['_', '-'], " "));
        Some(match name.as_str() {
            "crop" | "plant" | "kind" | "species" | "vegetable" => Self::Crop,
            "variety" | "cultivar" | "sort" => Self::Variety,
            "packed" | "year" | "year packed" | "packed year" | "bought" => Self::Packed,
            "harvested" | "year harvested" | "saved" | "harvest year" => Self::Harvested,
            "sow by" | "best before" | "use by" | "expiry" => Self::SowBy,
            "stated germination" | "germination" | "germination %" => Self::Germination,
            "stated days" | "days" | "days to come up" | "days to germination" => Self::Days,
            "stated at c" | "germination temperature" | "soil temperature" => Self::DaysAt,
            "seeds" | "number" | "quantity" | "count" | "seeds left" => Self::Seeds,
            "storage" | "stored" | "kept" => Self::Storage,
            "treated" | "dressed" => Self::Treated,
            "f1" | "hybrid" => Self::F1,
            "source" | "from" | "supplier" | "shop" => Self::Source,
            "price" | "cost" => Self::Price,
            "note" | "notes" | "comment" | "comments" | "remarks" => Self::Note,
            "in use" => Self::InUse,
            _ => return None,
        })
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
            let message = words::key(set, key);
            let spoken = Language::ALL.iter();
            let spoken = spoken.map(|language| words::plain_text(&message, *language));
            let own = [key.to_owned()].into_iter();
            own.chain(spoken).map(|word| fold(&word)).collect()
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
                let day = cell.parse().map_err(|_| coded("no_day", cell))?;
                form.sow_by = Some(day);
            }
            Field::Germination => form.stated_germination = Some(share(cell)?),
            Field::Days => {
                let whole = |days: f64| (days.fract() == 0.0).then_some(days as u32);
                let read = span(cell).and_then(|(from, to)| whole(from).zip(whole(to)));
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

/// A lowest and a highest, or one for both: `7`, `7-14`, `7 to 14`. None below 0.
fn span(cell: &str) -> Option<(f64, f64)> {
    let numbers = cell.replace("to", "-").replace(',', ".");
    let mut numbers = numbers.split(['-', '–']).map(|it| it.trim().parse().ok());
    let low = numbers.next()??;
    let high = numbers.next().unwrap_or(Some(low))?;
    numbers.next().is_none().then_some((low, high))
}

/// A year by itself or that of a day.
fn year(cell: &str) -> Result<i32, Coded> {
    let day = cell.parse::<NaiveDate>().map(|day| day.year());
    cell.parse().or(day).map_err(|_| coded("no_year", cell))
}

fn whole(cell: &str) -> Result<u32, Coded> {
    let digits: String = cell.split_whitespace().collect();
    digits.parse().map_err(|_| coded("no_number", cell))
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
        "yes" | "y" | "true" | "1" | "x" | "f1" | "treated" => Ok(true),
        "no" | "n" | "false" | "0" | "-" => Ok(false),
        _ => Err(coded("no_yes", cell)),
    }
}

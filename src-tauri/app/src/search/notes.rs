//! Notes, by their words, their day, and what they are about.

use super::known::{Known, name};
use super::{MOST, add};
use crate::error::AppError;
use crate::view::{FoundNote, NoteAbout, PlantName};
use chrono::NaiveDate;
use plumule_journal::Line;
use plumule_journal::content::Content;
use plumule_journal::id::TrayId;
use plumule_journal::subject::{Plants, Subject};

/// So many notes that are meant only with what they are about are looked at.
/// Judgement.
const LOOKED: usize = 500;

/// Adds the notes that meet the query, the last dated first; whether there are
/// more.
pub(super) fn find(known: &mut Known<'_>, found: &mut Vec<FoundNote>) -> Result<bool, AppError> {
    let (query, journal) = (known.query, known.journal);
    let all = query.all();
    let possible = known.possible();
    let dated = query.days() != 0;
    let met = |text: &str, day: Option<NaiveDate>| {
        if text.trim().is_empty() {
            return 0;
        }
        query.met(text) | day.map_or(0, |day| query.on(day))
    };
    let mut wanted = |text: &str, at: &str| {
        let day = dated.then(|| at.get(..10)?.parse().ok()).flatten();
        let met = met(text, day);
        met != 0 && met | possible == all
    };
    let mut looked = 0;
    let mut more = false;
    let mut each = |line: Line| -> Result<bool, AppError> {
        let Some((about, text)) = line.holds.as_ref().and_then(said) else {
            return Ok(true);
        };
        let mut now = met(text, Some(line.happened.local.date()));
        if now != all && now != 0 {
            looked += 1;
            if looked > LOOKED {
                more = true;
                return Ok(true);
            }
            now |= met_by(known, about)?;
        }
        if now == all {
            let note = FoundNote {
                entry: line.entry.id.to_string(),
                text: text.to_owned(),
                at: line.happened.local,
                about: if found.len() < MOST {
                    shown(known, about)?
                } else {
                    None
                },
            };
            let mut full = false;
            add(found, note, &mut full);
            more |= full;
            return Ok(!full);
        }
        Ok(true)
    };
    journal.notes(&mut wanted, &mut each)?;
    Ok(more)
}

fn said(content: &Content) -> Option<(Subject, &str)> {
    match content {
        Content::Noted(note) => Some((note.about, &note.text)),
        Content::Explained(it) => Some((Subject::Sowing(it.sowing), &it.text)),
        _ => None,
    }
}

/// What is met by what a note is about.
fn met_by(known: &mut Known<'_>, about: Subject) -> Result<u32, AppError> {
    let of_plants = |known: &mut Known<'_>, plants: Plants| {
        let of = known.plants(plants)?.map(|of| (of.met, of.tray));
        Ok::<_, AppError>(match of {
            Some((met, tray)) => met | known.own(tray)?,
            None => 0,
        })
    };
    match about {
        Subject::Tray(id) => known.met_by_tray(id),
        Subject::Sowing(id) => of_plants(known, Plants::Sowing(id)),
        Subject::Batch(id) => of_plants(known, Plants::Batch(id)),
        Subject::Packet(id) => Ok(known.packets.get(&id).map_or(0, |packet| packet.met)),
        Subject::Place(id) => Ok(known.places.get(&id).map_or(0, |place| place.met)),
        Subject::Plan(id) => Ok(known.plans.get(&id).map_or(0, |plan| plan.met)),
        Subject::Item(id) => Ok(known.items.get(&id).map_or(0, |item| item.met)),
        Subject::Garden | Subject::Test(_) | Subject::Reservation(_) => Ok(0),
    }
}

/// Where a note is read, and what that is called.
fn shown(known: &mut Known<'_>, about: Subject) -> Result<Option<NoteAbout>, AppError> {
    let page = |page: &str, id: String, name: String, plants: Vec<PlantName>| NoteAbout {
        page: page.to_owned(),
        id,
        name,
        plants,
    };
    let of_tray = |known: &mut Known<'_>, id: TrayId, name: Option<PlantName>| {
        let code = known.code(id)?;
        Ok::<_, AppError>(page(
            "tray",
            id.to_string(),
            code,
            name.into_iter().collect(),
        ))
    };
    let of_plants = |known: &mut Known<'_>, plants: Plants| {
        let of = known.plants(plants)?.map(|of| (of.tray, of.name.clone()));
        of.map(|(tray, name)| of_tray(known, tray, Some(name)))
            .transpose()
    };
    let packet = |known: &Known<'_>, id| {
        let name = known.packet_name(id)?;
        Some(page("packet", id.to_string(), String::new(), vec![name]))
    };
    Ok(match about {
        Subject::Tray(id) => match known.tray_brief(id)? {
            Some(brief) => Some(page("tray", brief.tray, brief.code, brief.plants)),
            None => None,
        },
        Subject::Sowing(id) => of_plants(known, Plants::Sowing(id))?,
        Subject::Batch(id) => of_plants(known, Plants::Batch(id))?,
        Subject::Packet(id) => packet(known, id),
        Subject::Test(id) => known
            .journal
            .test(id)?
            .and_then(|test| packet(known, test.packet)),
        Subject::Place(id) => {
            let place = known.places.get(&id);
            place.map(|place| page("settings", String::new(), place.name.clone(), Vec::new()))
        }
        Subject::Item(id) => {
            let item = known.items.get(&id);
            let plants = item.map(|item| name(&item.of.crop, &item.of.variety));
            let plants = plants.into_iter().collect();
            Some(page("seed", "buy".to_owned(), String::new(), plants))
        }
        Subject::Plan(id) => {
            let plan = known.plans.get(&id);
            let listed = plan.filter(|plan| plan.listed);
            let at = listed.map_or_else(String::new, |_| id.to_string());
            let plants = plan.map(|plan| name(&plan.of.crop, &plan.of.variety));
            Some(page(
                "year",
                at,
                String::new(),
                plants.into_iter().collect(),
            ))
        }
        Subject::Reservation(_) => Some(page("year", String::new(), String::new(), Vec::new())),
        Subject::Garden => None,
    })
}

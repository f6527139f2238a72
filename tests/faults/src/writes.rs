//! Numbered acts that can be asked for again by their number.

use crate::chance::Chance;
use chrono::{Duration, TimeZone, Utc};
use plumule_journal::content::{
    Content, PacketDescribed, PhotoTaken, PlaceDescribed, RangeC, TrayDescribed,
};
use plumule_journal::id::{PacketId, PlaceId, TrayId};
use plumule_journal::stamp::Stamp;
use plumule_journal::words::{Compost, Container, Light, PlaceKind, Storage};
use plumule_journal::{Answer, Error, Journal, Wish, photos};
use uuid::Uuid;

/// The stamp of an act: some minutes into a made-up season, with chance of its
/// own.
pub fn stamp(n: u64) -> Stamp {
    let mut entropy = [7; 16];
    entropy[..8].copy_from_slice(&n.to_be_bytes());
    Stamp {
        now: Utc.with_ymd_and_hms(2026, 4, 1, 7, 0, 0).unwrap()
            + Duration::minutes(i64::try_from(n).unwrap()),
        zone: chrono_tz::Europe::Berlin,
        entropy,
    }
}

fn id(n: u64) -> Uuid {
    Uuid::from_u128(u128::from(n) + 1)
}

fn content(n: u64) -> Content {
    match n % 3 {
        0 => Content::PlaceDescribed(PlaceDescribed {
            place: PlaceId(id(n)),
            name: format!("Sill {n}"),
            kind: PlaceKind::Windowsill,
            usual: RangeC {
                min_c: 14.0,
                max_c: 22.0,
            },
            unheated: None,
            light: Light::Bright,
            covered: false,
            position: 0,
            retired: false,
        }),
        1 => Content::TrayDescribed(TrayDescribed {
            tray: TrayId(id(n)),
            code: format!("T{n}"),
            container: Container::Cells,
            rows: 4,
            columns: 6,
            compost: Compost::Seed,
        }),
        _ => Content::PacketDescribed(PacketDescribed {
            packet: PacketId(id(n)),
            crop: "tomato".into(),
            variety: format!("Evening Red {n}"),
            packed_year: Some(2025),
            harvested_year: None,
            sow_by: None,
            stated_germination: Some(0.9),
            stated_days: None,
            seeds: Some(200),
            storage: Storage::CoolCupboard,
            treated: false,
            source: String::new(),
            note: String::new(),
            f1: false,
            saved_from: None,
            price: String::new(),
            retired: false,
        }),
    }
}

/// Does an act; it is confirmed when this returns.
///
/// # Errors
/// As the journal's.
pub fn act(journal: &mut Journal, n: u64) -> Result<(), Error> {
    let wish = Wish {
        contents: vec![content(n)],
        happened: None,
        hand: String::new(),
        confirmed: true,
    };
    match journal.write(&stamp(n), wish)? {
        Answer::Written { .. } => Ok(()),
        Answer::AsksFirst(_) => unreachable!("it was confirmed"),
    }
}

/// Whether what an act described is there.
///
/// # Errors
/// As the journal's.
pub fn is_there(journal: &Journal, n: u64) -> Result<bool, Error> {
    Ok(match n % 3 {
        0 => journal.place(PlaceId(id(n)))?.is_some(),
        1 => journal.tray(TrayId(id(n)))?.is_some(),
        _ => journal.packet(PacketId(id(n)))?.is_some(),
    })
}

/// Takes in a photo of some 200 kB that is the same for the same number, and
/// names it by an entry.
///
/// # Errors
/// As the journal's.
pub fn photo(journal: &mut Journal, n: u64) -> Result<(), Error> {
    let mut chance = Chance(n);
    let bytes: Vec<u8> = (0..25_000)
        .flat_map(|_| chance.draw().to_le_bytes())
        .collect();
    let photo = photos::keep(journal.home(), &bytes)?;
    let wish = Wish {
        contents: vec![Content::PhotoTaken(PhotoTaken {
            photo,
            about: None,
            taken: None,
        })],
        happened: None,
        hand: String::new(),
        confirmed: true,
    };
    journal.write(&stamp(700 + n), wish).map(drop)
}

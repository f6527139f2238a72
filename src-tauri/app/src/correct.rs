//! Correcting a line of the journal: what it said stays in it, what is said
//! now holds.

use crate::App;
use crate::act::{known, maybe, seeds, up, way_of_leaving};
use crate::app::{answer, entry};
use crate::error::AppError;
use crate::line;
use crate::names::Names;
use crate::view::{Answer, CorrectRequest, Fix, RangeView};
use crate::{act::Made, acts};
use plumule_journal::content::{Content, Felt, Leaving, Left, Seeds, Shown, Up};
use plumule_journal::stamp::{Happened, Stamp};

impl App {
    /// Corrects an entry, or brings a withdrawn one back.
    ///
    /// # Errors
    /// If there is no such entry, the correction does not fit its kind, or the
    /// journal refuses.
    pub fn correct(&mut self, stamp: &Stamp, request: &CorrectRequest) -> Result<Answer, AppError> {
        let root = entry(&request.entry)?;
        let line = self.journal.entry(root)?;
        let line = line.ok_or_else(|| AppError::bad_request(&request.entry))?;
        let said = line.holds.or(line.entry.content);
        let said = said.ok_or_else(|| AppError::refused("entry_not_understood"))?;
        let content = match &request.fix {
            Some(fix) => fixed(said, fix)?,
            None => said,
        };
        let zone = self.zone(stamp)?;
        let happened = request
            .happened
            .map(|local| Happened::at_local(local, zone));
        let hand = self.hand(&request.hand)?;
        let confirmed = request.confirmed;
        let door =
            self.journal
                .correct(stamp, root, content.clone(), happened, &hand, confirmed)?;
        let names = Names(&self.journal);
        let say = line::line(&names, &content)?;
        Ok(answer(door, say, &Made::default()))
    }
}

/// What can be corrected of a content, as it is; none: nothing but when.
pub(crate) fn fix(content: &Content) -> Option<Fix> {
    Some(match content {
        Content::Felt(felt) => Fix::Felt {
            feel: felt.feel.map(|feel| feel.as_str().to_owned()),
            water: felt.water.map(|water| water.as_str().to_owned()),
        },
        Content::ReadingTaken(reading) => {
            let of = reading.of.as_str().to_owned();
            match reading.shown {
                Shown::LowHigh { min_c, max_c } => Fix::Read {
                    of,
                    range: RangeView { min_c, max_c },
                },
                Shown::Now { temperature_c } => Fix::ReadNow { of, temperature_c },
            }
        }
        Content::Counted(counted) => Fix::Counted {
            up: match counted.up {
                Up::Number(number) => acts::UpAnswer::Number(number),
                Up::Few => acts::UpAnswer::Few,
                Up::Half => acts::UpAnswer::Half,
                Up::NearlyAll => acts::UpAnswer::NearlyAll,
            },
        },
        Content::Sown(sown) => Fix::Sown {
            packet: sown.packet.to_string(),
            tray: sown.tray.to_string(),
            cells: sown.cells.iter().copied().collect(),
            seeds: match sown.seeds {
                Seeds::Exact(number) => acts::SeedsAnswer::Exact(number),
                Seeds::About(number) => acts::SeedsAnswer::About(number),
                Seeds::Pinch => acts::SeedsAnswer::Pinch,
            },
            depth_mm: sown.depth_mm,
            wanted: sown.wanted,
        },
        Content::Noted(note) => Fix::Noted {
            text: note.text.clone(),
        },
        Content::Left(left) => left_fix(left),
        Content::TrayMoved(moved) => Fix::Moved {
            place: moved.place.to_string(),
        },
        _ => return None,
    })
}

fn left_fix(left: &Left) -> Fix {
    let (how, cause) = match left.how {
        Leaving::Thinned => ("thinned", None),
        Leaving::Lost(cause) => ("lost", Some(cause.as_str().to_owned())),
        Leaving::PlantedOut => ("planted_out", None),
        Leaving::Sold => ("sold", None),
        Leaving::GivenAway => ("given_away", None),
    };
    Fix::Left {
        number: left.number,
        how: how.to_owned(),
        cause,
    }
}

/// A content with a correction in it.
fn fixed(said: Content, fix: &Fix) -> Result<Content, AppError> {
    Ok(match (said, fix) {
        (Content::Felt(felt), Fix::Felt { feel, water }) => Content::Felt(Felt {
            feel: maybe(feel.as_deref())?,
            water: maybe(water.as_deref())?,
            ..felt
        }),
        (Content::ReadingTaken(mut reading), Fix::Read { of, range }) => {
            reading.of = known(of)?;
            reading.shown = Shown::LowHigh {
                min_c: range.min_c,
                max_c: range.max_c,
            };
            Content::ReadingTaken(reading)
        }
        (Content::ReadingTaken(mut reading), Fix::ReadNow { of, temperature_c }) => {
            reading.of = known(of)?;
            reading.shown = Shown::Now {
                temperature_c: *temperature_c,
            };
            Content::ReadingTaken(reading)
        }
        (Content::Counted(mut counted), Fix::Counted { up: said }) => {
            counted.up = up(*said);
            Content::Counted(counted)
        }
        (
            Content::Sown(mut sown),
            Fix::Sown {
                packet,
                tray: _,
                cells,
                seeds: said,
                depth_mm,
                wanted,
            },
        ) => {
            sown.packet = known(packet)?;
            sown.cells = cells.iter().copied().collect();
            sown.seeds = seeds(*said);
            sown.depth_mm = *depth_mm;
            sown.wanted = *wanted;
            Content::Sown(sown)
        }
        (Content::Noted(mut note), Fix::Noted { text }) => {
            note.text.clone_from(text);
            Content::Noted(note)
        }
        (Content::Left(left), Fix::Left { number, how, cause }) => Content::Left(Left {
            number: *number,
            how: way_of_leaving(how, cause.as_deref())?,
            ..left
        }),
        (Content::TrayMoved(mut moved), Fix::Moved { place }) => {
            moved.place = known(place)?;
            Content::TrayMoved(moved)
        }
        _ => return Err(AppError::refused("correction_of_another_kind")),
    })
}

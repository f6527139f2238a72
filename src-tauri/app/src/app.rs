//! The use cases, as the shell calls them: each loads what it needs, asks a
//! pure function and hands the answer on.

use crate::act::{Made, Maker};
use crate::acts::ActRequest;
use crate::error::{AppError, asked};
use crate::names::Names;
use crate::notices::{NoticePlan, notice_plan};
use crate::picture::Picture;
use crate::round::round_view;
use crate::say::Say;
use crate::view::{
    Answer, BenchView, DeviceForm, RoundView, SeedView, SettingsView, TrayView, TraysView,
};
use crate::{bench, device, line, seed, settings, tray_page, trays};
use chrono_tz::Tz;
use plumule_journal::content::{Content, GardenDescribed};
use plumule_journal::id::EntryId;
use plumule_journal::stamp::{Happened, Stamp};
use plumule_journal::{Answer as Door, Device, Journal, Wish};
use std::path::Path;

/// A journal and the habits of the device it is read on.
#[derive(Debug)]
pub struct App {
    journal: Journal,
    device: Device,
}

impl App {
    /// Opens a home, or makes one: the journal and the device's own file.
    ///
    /// # Errors
    /// If either cannot be opened.
    pub fn open(home: &Path, stamp: &Stamp) -> Result<Self, AppError> {
        Ok(Self {
            journal: Journal::open(home, stamp)?,
            device: Device::open(home, stamp)?,
        })
    }

    /// Begins an own, empty journal: the garden in the zone of the device and
    /// nothing else. Does nothing to a garden that was described before.
    ///
    /// # Errors
    /// If it cannot be written.
    pub fn begin(&mut self, stamp: &Stamp) -> Result<(), AppError> {
        if self.journal.garden()?.described.is_some() {
            return Ok(());
        }
        let wish = Wish {
            contents: vec![Content::GardenDescribed(GardenDescribed {
                zone: stamp.zone.name().to_owned(),
                ..settings::usual_garden()
            })],
            happened: None,
            hand: String::new(),
            confirmed: false,
        };
        self.journal.write(stamp, wish)?;
        Ok(())
    }

    /// The round: what is due now.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn round(&self, stamp: &Stamp) -> Result<RoundView, AppError> {
        let picture = Picture::of_the_living(&self.journal, stamp)?;
        Ok(round_view(&picture, picture.now(stamp)))
    }

    /// The living trays by place, those set aside, and the past ones.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn trays(&self, stamp: &Stamp) -> Result<TraysView, AppError> {
        trays::view(&self.journal, stamp)
    }

    /// One tray's page.
    ///
    /// # Errors
    /// If there is no such tray or the journal cannot be read.
    pub fn tray(&self, stamp: &Stamp, id: &str) -> Result<TrayView, AppError> {
        tray_page::view(&self.journal, stamp, id)
    }

    /// The packets.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn seed(&self, stamp: &Stamp) -> Result<SeedView, AppError> {
        seed::view(&self.journal, stamp)
    }

    /// The Sow screen, with what would come of a packet if one is chosen.
    ///
    /// # Errors
    /// If there is no such packet or the journal cannot be read.
    pub fn bench(&self, stamp: &Stamp, packet: Option<&str>) -> Result<BenchView, AppError> {
        bench::view(&self.journal, stamp, packet)
    }

    /// The notices wanted in the days to come, and when to plan again.
    ///
    /// # Errors
    /// If the journal or the device's file cannot be read.
    pub fn notices(&self, stamp: &Stamp) -> Result<NoticePlan, AppError> {
        let picture = Picture::of_the_living(&self.journal, stamp)?;
        let device = self.device()?;
        let delivered = |key: &str| self.device.delivered(key).unwrap_or(false);
        Ok(notice_plan(&picture, &device, stamp.now, &delivered))
    }

    /// A notice was delivered: it is not wanted again.
    ///
    /// # Errors
    /// If that cannot be kept.
    pub fn delivered(&mut self, stamp: &Stamp, key: &str) -> Result<(), AppError> {
        self.device.mark_delivered(key, stamp.now)?;
        Ok(())
    }

    /// What the settings screen shows. `demo`: whether this is the demo journal.
    ///
    /// # Errors
    /// If the journal cannot be read.
    pub fn settings(&self, stamp: &Stamp, demo: bool) -> Result<SettingsView, AppError> {
        settings::view(&self.journal, self.device()?, stamp, demo)
    }

    /// Habits of this device.
    ///
    /// # Errors
    /// If they cannot be read.
    pub fn device(&self) -> Result<DeviceForm, AppError> {
        device::load(&self.device)
    }

    /// Sets the habits of this device.
    ///
    /// # Errors
    /// A word that is none of its set, a time that is none, initials too long.
    pub fn set_device(&mut self, form: &DeviceForm) -> Result<(), AppError> {
        device::save(&self.device, form)
    }

    /// Writes an act, or says what is odd about it.
    ///
    /// # Errors
    /// If the journal refuses it or a word of it is unknown.
    pub fn act(&mut self, stamp: &Stamp, request: ActRequest) -> Result<Answer, AppError> {
        let zone = self.zone(stamp)?;
        let made = Maker::new(&self.journal, stamp, zone)?.make(&request.act)?;
        let happened = match request.happened {
            Some(local) => Happened::at_local(local, zone),
            None => Happened::at(stamp.now, zone),
        };
        let wish = Wish {
            contents: made.contents.clone(),
            happened: Some(happened),
            hand: self.hand(&request.hand)?,
            confirmed: request.confirmed,
        };
        let door = self.journal.write(stamp, wish)?;
        let say = line::act(&Names(&self.journal), &made.contents)?;
        Ok(answer(door, say, &made))
    }

    /// Takes an act back, or brings it back if it was.
    ///
    /// # Errors
    /// If there is no such act or the journal refuses.
    pub fn undo(&mut self, stamp: &Stamp, act: &str, confirmed: bool) -> Result<Answer, AppError> {
        let (act, hand) = (entry(act)?, self.hand("")?);
        let door = self.journal.undo(stamp, act, &hand, confirmed)?;
        Ok(answer(door, Say::new("line-undone"), &Made::default()))
    }

    /// Withdraws one entry.
    ///
    /// # Errors
    /// If there is no such entry or the journal refuses.
    pub fn withdraw(
        &mut self,
        stamp: &Stamp,
        id: &str,
        confirmed: bool,
    ) -> Result<Answer, AppError> {
        let (root, hand) = (entry(id)?, self.hand("")?);
        let door = self.journal.withdraw(stamp, root, &hand, confirmed)?;
        Ok(answer(door, Say::new("line-withdrawn"), &Made::default()))
    }

    /// The zone of the garden; of the device until the garden has one.
    fn zone(&self, stamp: &Stamp) -> Result<Tz, AppError> {
        let garden = self.journal.garden()?;
        Ok(garden
            .described
            .and_then(|garden| garden.zone.parse().ok())
            .unwrap_or(stamp.zone))
    }

    /// The hand that was named, else the device's initials.
    fn hand(&self, named: &str) -> Result<String, AppError> {
        let named = named.trim();
        Ok(if named.is_empty() {
            self.device()?.initials
        } else {
            named.to_owned()
        })
    }
}

fn entry(id: &str) -> Result<EntryId, AppError> {
    id.parse().map_err(|_| AppError::bad_request(id))
}

fn answer(door: Door, say: Say, made: &Made) -> Answer {
    match door {
        Door::Written { act, .. } => Answer::Written {
            act: act.to_string(),
            say,
            tray: made.tray.map(|id| id.to_string()),
            sowing: made.sowing.map(|id| id.to_string()),
            packet: made.packet.map(|id| id.to_string()),
            place: made.place.map(|id| id.to_string()),
        },
        Door::AsksFirst(questions) => Answer::AsksFirst {
            questions: questions.iter().map(asked).collect(),
        },
    }
}
